package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
)

// places are the lines that lead to places at the machine which the tables of
// lines do not come to.
var places = map[string][]string{
	"fold row":     {"cardigan", "28 stitches and 40 rows per 10 cm", "40 cm", "1x1", "3 cm", "fold row of 1 click", "start knitting", "I'm on row 13"},
	"single":       {"cardigan", "28 stitches and 40 rows per 10 cm", "40 cm", "1x1", "3 cm", "single layer", "start knitting", "I'm on row 3"},
	"hanging":      {"cardigan", "28 stitches and 40 rows per 10 cm", "40 cm", "1x1", "3 cm", "132 stitches on the yoke", "start knitting", "start from hang again"},
	"sewing":       {"cardigan", "28 stitches and 40 rows per 10 cm", "40 cm", "1x1", "3 cm", "start knitting", "start from the sewing off"},
	"pieces":       {"cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "the bed has 100 needles", "180 stitches on the yoke", "start knitting", "I'm on row 5"},
	"pieces apart": {"cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "the bed has 100 needles", "start knitting", "start from joining the pieces"},
	"front rows":   {"cardigan", "28 stitches and 40 rows in 10 cm", "42 cm", "2x2", "3 cm", "the front edge is 50 cm", "7 buttons", "start knitting", "start from the front bands", "next", "done 4 rows"},
	"front pieces": {"cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "the bed has 100 needles", "the front edge is 50 cm", "7 buttons", "start knitting", "start from the front bands", "next", "done 4 rows"},
	"hole row":     {"cardigan", "28 stitches and 40 rows in 10 cm", "42 cm", "2x2", "3 cm", "the front edge is 50 cm", "7 buttons", "start knitting", "first front done", "next", "next", "done 5 rows"},
}

// TestWholeLines: short lines at the machine that sound like something else are
// answered for the place she is at; only what is told as done moves it.
func TestWholeLines(t *testing.T) {
	tk := talk(t)
	for _, c := range []struct{ at, said, want, then string }{
		{"making rows", "is this the fold", "No, row 5 comes now, the first of 9 to the fold. The fold lies between rows 13 and 14.", "row 5 of"},
		{"making rows", "is row 13 the fold", "Right after row 13", "row 5 of"},
		{"fold row", "is this the fold?", "No, row 13 comes first.", "row 13 of"},
		{"fold row", "is row 14 the fold row", "Yes. **Row 14** is the fold row", "row 13 of"},
		{"single", "is this the fold", "A single layer has no fold", "row 3 of"},
		{"making latch", "is this the fold", "it is behind you", "Columns 1 to"},
		{"making latch", "first column?", "The first column is **L51**, the last **R50**", "Columns 1 to"},
		{"making rows", "last rib needle", "the last **R50**", "row 5 of"},
		{"making hem", "first bump?", "**L52** and **R51**", "L52, R51, R1"},
		{"hanging", "first needle to hang", "**L53**", "Hang L53"},
		{"making latch", "all but the last one", "Column 51 of 51: R50", "Column 51 of 51"},
		{"making latch", "all but the last one?", "Columns 1 to", "Columns 1 to"},
		{"making rows", "all but the last row", "The last row of this layer, or of the band?", "row 5 of"},
		{"single", "all but the last row", "row 13 of 13", "row 13 of 13"},
		{"making rows", "still 5 rows to go", "Is it 5 to the fold? Say *row 8 done*; in all, *row 21 done*.", "row 5 of"},
		{"making rows", "still 9 rows to go", "(Right: 4 rows knitted, 9 to go in this layer, 22 in all.)", "row 5 of"},
		{"front rows", "still 20 rows to go", "(Right: 4 rows knitted, 20 to go.)", "row 5 of 24"},
		{"making rows", "I skipped row 3", "is counted as knitted; if it was not", "row 5 of"},
		{"making rows", "I skipped row 5", "(Row 5 is not counted yet: it comes now.)", "row 5 of"},
		{"making rows", "half of row 5", "(Row 5 counts when it is whole; nothing is counted.)", "row 5 of"},
		{"making latch", "half of row 5", "To go back to it say *I'm on row 5*.", "Columns 1 to"},
		{"making rows", "can I go to row 3", "(Yes, by taking out 2 rows", "row 5 of"},
		{"making rows", "can I go on to row 9?", "(Not yet: 4 rows to knit before it.", "row 5 of"},
		{"making latch", "may I go on to the hem", "(That is step 8; first finish this one, or say *step 8*.)", "Columns 1 to"},
		{"making latch", "next 3", "The next: L51, L49, L47.", "Columns 1 to"},
		{"making rows", "next 3 rows", "Nothing counted: say *3 rows done*", "row 5 of"},
		{"making hem", "ends done", "Bump 3 of 52: R1", "Bump 3 of 52"},
		{"making hem", "both ends and the middle hung", "Bumps 4 to 8", "Bumps 4 to 8"},
		{"making hem", "both ends hung?", "The ends, then the middle", "The ends, then"},
		{"making hem", "the hem's on", "Knit the closing row", "Knit the closing row"},
		{"sewing", "sewn 40 stitches", "Say the last one sewn: *sewn up to L20*.", "Sew the stitches off"},
		{"pieces", "sewn off, next piece", "(Piece 1 taken as sewn off.)", "piece 2 of 2"},
		{"pieces", "is piece 1 done", "(Not yet: you are at piece 1.)", "piece 1 of 2"},
		{"pieces apart", "is piece 2 done?", "(Yes, piece 2 is counted as done.)", "Join the pieces"},
		{"pieces", "piece 2 row 5", "(Piece 1 taken as sewn off. Hanging again was not told; taken as done.", "piece 2 of 2: row 5"},
		{"pieces", "how do I join them", "the right end of piece 1 to the left end of piece 2", "row 5 of"},
		{"pieces", "which yoke stitches go on piece 2", "stitches 90 to 180 of the yoke", "row 5 of"},
		{"pieces", "is R28 in the join", "**Yes.** R28 goes into the join.", "row 5 of"},
		{"pieces", "is L28 in the join?", "**No.** R28 goes into the join.", "row 5 of"},
		{"pieces apart", "joined", "Set the rib", "Set the rib"},
		{"pieces", "joined", "(Joining the pieces is step 13; nothing is counted.)", "row 5 of"},
		{"making latch", "can I do it from the right", "(Yes: say *from the right*", "Columns 1 to"},
		{"sewing", "can I sew from the left?", "(From the end where the yarn hangs.)", "Sew the stitches off"},
		{"making latch", "how many bars", "**26 bars in each column**", "Columns 1 to"},
		{"front rows", "is it doubled", "The front band is **doubled**: 12 rows a layer, 24 in all.", "row 5 of 24"},
		{"making rows", "is it doubled?", "The neckband is **doubled**: 13 rows a layer, 26 in all.", "row 5 of"},
		{"front rows", "done with the first front", "(All steps of that front band taken as done.)", "Mark the places"},
		{"making rows", "done with the first front", "The front bands are not planned yet.", "row 5 of"},
		{"front rows", "holes done", "Not in this step.", "row 5 of 24"},
		{"hole row", "holes done", "(Noted. With all of them made, row 6 comes next.)", "row 6 of 24"},
		{"hole row", "hole at L72 done", "(Noted.", "row 6 of 24"},
		{"hole row", "hole at L70 done", "(L70 is not among the needles of the holes.)", "row 6 of 24"},
		{"making hem", "do I hang the latched ones too", "**No.** A latched column has no bump toward you", "L52, R51, R1"},
		{"hanging", "one stitch left over", "Stitches are left over after hanging again", "Hang L53"},
		{"making rows", "one stitch left over", "The count is one out", "row 5 of"},
		{"hanging", "one needle left empty", "Needles are left empty after hanging again", "Hang L53"},
		{"front rows", "forgot a hole", "A buttonhole was forgotten", "row 5 of 24"},
		{"making rows", "carriage on the wrong side", "The carriage stands on the wrong side", "row 5 of"},
		{"hanging", "is L52 a double", "**Two** on L52.", "Hang L53"},
		{"hanging", "is L53 a double?", "**One** on L53.", "Hang L53"},
	} {
		s := stand(t, tk, c.at)
		s, r := tk.Turn(s, c.said)
		require.Contains(t, r.Markdown, c.want, "%s: %s", c.at, c.said)
		_, r = tk.Turn(s, "where am I")
		require.Contains(t, r.Markdown, c.then, "%s: %s, and then", c.at, c.said)
	}
}

// TestToldWhole: what is told as done in short moves the place where it belongs
// to the step; elsewhere, and as a question, it counts nothing.
func TestToldWhole(t *testing.T) {
	tk := talk(t)
	for _, c := range []struct{ at, said, want, then string }{
		{"making", "I've got everything on the table", "One plain row in the main colour", "One plain row"},
		{"making rows", "ok ready", "(That is not of this step; nothing is counted.)", "row 5 of"},
		{"making", "I knitted the plain row", "Take the yoke off on waste yarn", "Take the yoke off"},
		{"making rows", "I've knitted 8 rows of waste yarn", "(Waste rows are not counted.", "row 5 of"},
		{"making rows", "now what?", "(This comes now. Done already? Say *done*.)", "row 5 of"},
		{"making rows", "what's next", "(This comes now.", "row 5 of"},
		{"making rows", "done, what now?", "row 7 of", "row 7 of"},
		{"making hem", "which one comes next", "L52, R51, R1", "The ends, then"},
		{"making rows", "I've hung the first ten", "No needles are counted in this step.", "row 5 of"},
		{"making rows", "r7", "Row 7, or needle R7?", "row 5 of"},
		{"making latch", "got it back", "(Good; your place is kept.)", "Columns 1 to"},
		{"hanging", "hung it back on the needle", "(Good; your place is kept.)", "Hang L53"},
		{"making latch", "I've knitted the first two rows", "", "Columns 1 to"},
		{"making rows", "knitted 6 of the inner rows", "(Row 6 of the inner layer is row 19.", "row 20 of"},
		{"making rows", "I'm on row 12 of the inner layer", "(Row 12 of the inner layer is row 25.", "row 25 of"},
		{"making rows", "knitted 6 of the outer rows", "row 7 of", "row 7 of"},
		{"making rows", "all 26 rows done", "Drop and latch", "Drop and latch"},
		{"making rows", "all rows done!", "row 14 of", "row 14 of"},
		{"making rows", "rows done?", "row 5 of", "row 5 of"},
		{"making rows", "the last four are done", "4 rows knitted by the count", "row 5 of"},
		{"making rows", "the last nine are done", "row 14 of", "row 14 of"},
		{"making rows", "rest done", "row 14 of", "row 14 of"},
		{"making latch", "rest done", "Hang the hem", "Hang the hem"},
		{"making latch", "skip this one", "Say which one is left: *all but L51*", "Columns 1 to 4"},
		{"making rows", "just finished the tenth", "row 11 of", "row 11 of"},
		{"making rows", "L26 to L10 done", "No needles are counted in this step.", "row 5 of"},
		{"making latch", "I've done L51 to L45", "L43", "L43"},
		{"making latch", "to L45", "L43", "L43"},
		{"making latch", "L51 L49", "L47", "L47"},
		{"making latch", "I dropped L49", "L49", "L49"},
		{"making rows", "25 of 26", "row 26 of", "row 26 of"},
		{"making rows", "25 of 30", "I cannot tell of what.", "row 5 of"},
		{"making hem", "I hung both ends", "Bump 3 of 52", "Bump 3 of"},
		{"making hem", "hem hung", "Knit the closing row", "Knit the closing row"},
		{"single", "hem hung", "This plan has no such step; nothing is counted.", "row 3 of"},
		{"sewing", "sewn it all off", "Check before anything is pulled", "Check before"},
		{"sewing", "sewn off?", "Sew the stitches off", "Sew the stitches off"},
		{"making off", "pulled out the cord", "(That lies behind you; you are here.)", "Set the rib"},
		{"making rows", "the cord is out", "The waste yarn was pulled too early", "row 5 of"},
		{"making off", "it is drying", "(Take your time; your place is kept.)", "Set the rib"},
		{"making off", "it's dry", "Go on to the front bands", "Go on to the front bands"},
		{"making rows", "fold?", "The fold lies between rows 13 and 14.", "row 5 of"},
		{"making latch", "which needle first", "The first column is **L51**", "Columns 1 to"},
		{"making rows", "closing dial?", "The closing row:", "row 5 of"},
		{"making rows", "tea break", "(Take your time; your place is kept.)", "row 5 of"},
		{"sewing", "how long a piece of yarn", "**235 cm**", "Sew the stitches off"},
		{"sewing", "undid the closing row", "Knit the closing row", "Knit the closing row"},
		{"sewing", "not sewn off yet", "Sew the stitches off", "Sew the stitches off"},
		{"sewing", "I haven't sewn it off", "Nothing counted", "Sew the stitches off"},
		{"making hem", "ends not done", "Nothing counted", "The ends, then"},
		{"making off", "it's not dry yet", "Nothing counted", "Set the rib"},
		{"making off", "is it sewn off?", "(Yes, that step is counted as done.)", "Set the rib"},
		{"making hem", "should I pull the cord out", "(No, that step is still to come.)", "The ends, then"},
		{"making rows", "4", "4 rows more, or row 4? Say *4 rows done* or *row 4 done*.", "row 5 of"},
		{"front rows", "r5", "Row 5, or needle R5?", "row 5 of 24"},
		{"making hem", "ends ok", "Bump 3 of 52", "Bump 3 of"},
		{"making hem", "mid ok", "Bumps 4 to 8", "Bumps 4 to 8"},
		{"making latch", "wait no, only up to L45", "L43", "L43"},
		{"making rows", "sew", "(This comes now. Done already?", "row 5 of"},
		{"front rows", "buttons on", "That is the last step, 25, and there are others before it.", "row 5 of 24"},
		{"front rows", "next piece", "The front band hangs in one piece.", "row 5 of 24"},
		{"front pieces", "next piece", "(The next piece goes through these steps again.)", "in pieces"},
		{"front pieces", "piece 2 row 6", "counted from 1", "row 5 of 24"},
		{"front pieces", "piece 1 done", "Pieces of a front band are not counted", "row 5 of 24"},
		{"pieces", "piece 1 is wrong, back to piece 1", "*back to piece 1*", "row 5 of"},
		{"pieces apart", "sewed the wrong ends together", "The wrong ends were joined", "Join the pieces"},
		{"front pieces", "how many stitches on piece 1", "The front band: 78 (L39 to R39) and 73 (L37 to R36)", "row 5 of 24"},
		{"front rows", "the second front is on", "Sew on the buttons", "Sew on the buttons"},
		{"front rows", "closed it", "(That is not of this step; nothing is counted.)", "row 5 of 24"},
		{"making rows", "I closed it", "(That is not of this step; nothing is counted.)", "row 5 of"},
		{"hole row", "made the second holes", "(Noted.", "row 6 of 24"},
		{"pieces apart", "joined again", "Set the rib", "Set the rib"},
	} {
		s := stand(t, tk, c.at)
		s, r := tk.Turn(s, c.said)
		require.Contains(t, r.Markdown, c.want, "%s: %s", c.at, c.said)
		_, r = tk.Turn(s, "where am I")
		require.Contains(t, r.Markdown, c.then, "%s: %s, and then", c.at, c.said)
	}
}

// stand is a place at the machine, of the tables of lines or of places.
func stand(t *testing.T, tk *dialog.Talk, at string) dialog.State {
	if places[at] == nil {
		return arrive(t, tk, at)
	}
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, places[at]...)
	return s
}
