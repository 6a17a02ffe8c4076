package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// What is asked at the machine is answered for the step she is at, and moves
// her nowhere. The plan: 105 stitches, L53 to R52, 11 rows a layer, 51 columns.
func TestAskedAtTheStep(t *testing.T) {
	tests := []struct{ at, said, want string }{
		{"I'm on row 5", "which needles", "All 105 needles, L53 to R52."},
		{"start from the latching", "which needles", "Columns 1 to 4 of 51: L51, L49, L47, L45."},
		{"hung the hem up to L40", "which bumps", "Bumps 10 to 13 of 52: L38, L36, L34, L32."},
		{"I'm on row 5", "how many columns left", "51 columns, none of them done yet."},
		{"latched up to L40", "how many left", "45 of 51 columns are left, 6 done."},
		{"start from the hem", "columns left", "All 51 columns are done."},
		{"hung the hem up to L40", "how many more bumps", "43 of 52 bumps are left, 9 done."},
		{"I'm on row 5", "how many left", "4 rows knitted, 18 to go."},
		{"start from taking out the waste yarn", "how many left", "2 steps come after this one."},
		{"next", "dial?", "Now: dial 5. Row 1 of the band: dial 5. Next change: before row 3, turn to 4.5."},
		{"I'm on row 5", "what's the next dial change", "Row 5: dial 4. Next change: before row 7, turn to 3.5."},
		{"row 21 done", "dial?", "Row 22: dial 5. No change after that."},
		{"start from the hem", "what's the dial", "Nothing is knitted in this step. The closing row comes at dial 5."},
		{"start from the closing row", "dial?", "The closing row: dial 5."},
		{"start from sewing off", "dial?", "Nothing more is knitted"},
		{"I'm on row 5", "what's left", "4 rows knitted, 18 to go.\n\nThen: 6 knit the inner layer (11 rows); 7 drop and latch the rib columns (51 columns); 8 hang the hem (52 bumps);"},
		{"I'm on row 5", "what is step 9", "9 of 14. Knit the closing row"},
		{"I'm on row 5", "?", "4 rows knitted, 18 to go."},
		{"I'm on row 5", "hang on", "(Take your time; your place is kept.)"},
		{"I'm on row 5", "dial is at 4", "(Right: row 5 is at dial 4.)"},
		{"I'm on row 5", "phone rang, where was I", "4 rows knitted, 18 to go."},
	}
	tk := talk(t)
	begin, _ := tk.Begin()
	for _, tt := range tests {
		s, _ := say(t, tk, begin, append(append([]string(nil), bandPlan...), "start knitting", tt.at)...)
		after, r := tk.Turn(s, tt.said)
		require.Equal(t, "step", r.Kind, "%s: %s", tt.said, r.Markdown)
		require.Contains(t, r.Markdown, tt.want, "%s, %s", tt.at, tt.said)
		require.Equal(t, s.Making, after.Making, tt.said)
		require.Equal(t, s.Depth, after.Depth, "nothing to undo")
	}
}

// Moves said by a number, or back to the beginning, can be taken back.
func TestMovesByNumber(t *testing.T) {
	tests := []struct{ at, said, kind, want string }{
		{"next", "I'm on step 5", "step", "**5 of 14. Knit the outer layer: row 1 of 22**"},
		{"I'm on row 5", "step 9", "step", "(Taken as done: rows 5 to 22, 51 columns, 52 bumps.)"},
		{"I'm on row 5", "step 15", "unclear", "The steps count from 1 to 14."},
		{"I'm on row 5", "start over", "step", "**1 of 14. Lay everything ready**"},
		{"latched up to L40", "3 done", "step", "Columns 10 to 13 of 51: L33"},
		{"latched up to L40", "46 done", "unclear", "45 of 51 columns are left"},
		{"I'm on row 5", "ripped 5 rows", "unclear", "more than the 4 rows"},
		{"hung up to L20", "I'm on row 5", "step", "(Hanging again was not finished, L20 was the last needle told; taken as done."},
		{"hung up to L20", "done 3 rows", "step", "L20 was the last needle told"},
		{"I'm on row 5", "dial is at 3", "unclear", "Row 5 is to be at dial 4, not 3; nothing is changed."},
		{"I'm on row 5", "go back to the start of this step", "step", "5 of 14. Knit the outer layer: row 1 of 22"},
		{"I'm on row 5", "I'm at the fold", "step", "row 12 of 22"},
		{"I'm on row 5", "done with the outer layer", "step", "row 12 of 22"},
		{"latched up to L40", "all columns done", "step", "8 of 14. Hang the hem"},
		{"start from the latching", "L45 done", "step", "L43"},
		{"latched up to L40", "hem is hung and all sewn off", "step", "Check before anything is pulled"},
	}
	tk := talk(t)
	begin, _ := tk.Begin()
	for _, tt := range tests {
		s, _ := say(t, tk, begin, append(append([]string(nil), bandPlan...), "start knitting", tt.at)...)
		after, r := tk.Turn(s, tt.said)
		require.Equal(t, tt.kind, r.Kind, "%s: %s", tt.said, r.Markdown)
		require.Contains(t, r.Markdown, tt.want, "%s, %s", tt.at, tt.said)
		if r.Kind == "unclear" {
			require.Equal(t, s.Making, after.Making, tt.said)
			continue
		}
		back, _ := tk.Turn(after, "undo")
		require.Equal(t, s.Making, back.Making, tt.said)
	}
}

// Where the fold lies is known before the machine as well.
func TestWhereTheFoldLies(t *testing.T) {
	tk := talk(t)
	for _, tt := range []struct {
		change, said, want string
	}{
		{"11 rows a layer", "which row is the fold", "The fold lies between rows 11 and 12."},
		{"fold row 2 clicks looser", "where is the fold", "**Row 14** is the fold row"},
		{"single layer", "which row is the fold", "A single layer has no fold"},
	} {
		s, _ := say(t, tk, arrive(t, tk, "plan"), tt.change)
		after, r := tk.Turn(s, tt.said)
		require.Equal(t, "number", r.Kind, r.Markdown)
		require.Contains(t, r.Markdown, tt.want)
		require.Equal(t, s.Said, after.Said)
	}
}

// "Drop 2 rows" may mean three things: it is asked, and what is offered works.
func TestDropRows(t *testing.T) {
	tk := talk(t)
	s, _ := say(t, tk, arrive(t, tk, "making"), "I'm on row 8")
	after, r := tk.Turn(s, "drop 2 rows")
	require.Equal(t, "unclear", r.Kind)
	require.Equal(t, s.Making, after.Making)
	for _, offered := range []string{"2 rows fewer a layer", "took out 2 rows", "dropped a stitch"} {
		require.Contains(t, r.Markdown, "*"+offered+"*")
		_, r := tk.Turn(after, offered)
		require.NotEqual(t, "unclear", r.Kind, "%s: %s", offered, r.Markdown)
	}
}

// Lines that mean a move only where she stands.
func TestHeardAtTheStep(t *testing.T) {
	tests := []struct{ at, said, want string }{
		{"start from the latching", "from the centre", "Columns 1 to 4 of 51: R2, R4, R6, R8. From the centre, right half first."},
		{"start from the latching", "from the right", "Columns 1 to 4 of 51: R50, R48, R46, R44. From the right."},
		{"start from the latching", "what can go wrong", "What spoils it: Dropping first"},
		{"start from the hem", "what can go wrong", "One bump to the side"},
		{"I'm on row 8", "took out 2 rows", "row 6 of 22"},
		{"I'm on row 8", "ripped 7 rows", "row 1 of 22"},
	}
	tk := talk(t)
	begin, _ := tk.Begin()
	for _, tt := range tests {
		s, r := say(t, tk, begin, append(append([]string(nil), bandPlan...), "start knitting", tt.at, tt.said)...)
		require.Equal(t, "step", r.Kind, r.Markdown)
		require.Contains(t, r.Markdown, tt.want)
		require.NotEmpty(t, s.Making.Step)
	}
	// begun from one side it is finished from there
	s, _ := say(t, tk, begin, append(append([]string(nil), bandPlan...), "start knitting", "start from the latching", "from the centre", "latched up to R20")...)
	require.Equal(t, 10, s.Making.Done)
	_, r := tk.Turn(s, "from the right")
	require.Equal(t, "unclear", r.Kind, r.Markdown)
	// and the left half comes after the whole right half
	s, _ = say(t, tk, s, "latched up to L9")
	require.Equal(t, 25+5, s.Making.Done)
}
