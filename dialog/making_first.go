package dialog

import (
	"fmt"
	"slices"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// wholeLine does what the whole lines of rules/machine.md ask for or tell; a
// line it does not know repeats the step. What is only asked moves nothing.
func (c *turn) wholeLine(w where) (State, Reply) {
	does := map[string]func(where) (State, Reply){
		"fold-here": c.foldHere, "end-needle": c.endNeedle, "next-n": c.nextSome, "bars": c.barsReply,
		"double-asked": c.doubleAsked, "hem-latched": c.hemLatched, "way-asked": c.wayAsked, "layers-asked": c.layersReply,
		"all-but-last": c.allButLast, "rows-left": c.rowsLeft, "row-skipped": c.rowSkipped, "half-row": c.undone,
		"may-go": c.mayGo, "hem-ends": c.hemEnds, "piece-whether": c.pieceWhether, "piece-row": c.pieceRow,
		"joined": c.joined, "in-join": c.inJoin, "front-done": c.frontDone, "holes-done": c.holesDone,
		"piece-wrong": c.pieceWrong, "lone": c.lone, "skip-needle": c.skipNeedle,
		"not-here": c.notHere, "now-what": c.nowWhat, "waste-rows": c.wasteRows, "mended": c.mended, "carriage-where": c.carriageWhere, "close-dial": c.closeDial,
		"rows-done": c.rowsDone, "last-done": c.lastDone, "rest-done": c.restDone, "layer-row": c.layerRow, "row-of": c.rowOf,
	}[c.m.Move.What]
	if does == nil {
		return c.stepReply("")
	}
	return does(w)
}

// endNeedle names the first and the last needle of the step that the line
// speaks of, in the order in which they are worked.
func (c *turn) endNeedle(w where) (State, Reply) {
	if w.amongFronts() && !w.m.Over {
		return c.needlesReply(w)
	}
	i := c.stepAlong(w)
	if i < 0 {
		return c.needlesReply(w)
	}
	if i != w.at {
		w = w.enter(i)
	}
	cols, text := w.along(), ""
	switch needles := w.card().Fields["needles"]; {
	case needles == "sew":
		text = fmt.Sprintf("Sew from the end where the yarn hangs: from %s or from %s.", engine.NeedleName(0, w.p.BandStitches), engine.NeedleName(w.p.BandStitches-1, w.p.BandStitches))
	case len(cols) == 0:
		return c.needlesReply(w)
	case needles == "hem" && len(cols) > 3:
		text = fmt.Sprintf("First bumps: **%s** and **%s**, the two ends, then %s in the middle. The last is %s.", w.needle(0), w.needle(1), w.needle(2), w.needle(len(cols)-1))
	default:
		what := map[string]string{"latch": "column", "rehang": "needle", "hem": "bump"}[needles]
		text = fmt.Sprintf("The first %s is **%s**, the last **%s**. %s", what, w.needle(0), w.needle(len(cols)-1), w.orderWords())
	}
	if key, ok := map[string]engine.Key{"latch": engine.RibColumns, "hem": engine.HemNeedles}[w.card().Fields["needles"]]; ok {
		c.answersOf(w.p, key)
	}
	return c.s, c.reply("number", answer.Screen(w.title(), text))
}

// orderWords is the side from which the needles of the step are told.
func (w where) orderWords() string {
	if w.card().Fields["needles"] == "latch" {
		return wayText(w.m.Way)
	}
	return "From the left."
}

// nextSome names the next so many needles or rows; nothing is counted.
func (c *turn) nextSome(w where) (State, Reply) {
	n := c.m.Move.Count
	switch cols := w.along(); {
	case n < 1:
		return c.stepReply("")
	case w.card().Fields["rows"] != "":
		to := min(w.m.Row+n, w.p.TotalRows)
		return c.s, c.reply("step", answer.Screen(w.title(), answer.KnitRows(w.p.Tension(), w.m.Row, to, false), fmt.Sprintf("Nothing counted: say *%s done* when they are.", rowsWord(to-w.m.Row))))
	case len(cols) > 0 && c.m.FigUnit != "row":
		to, stitches := min(w.m.Done+n, len(cols)), w.p.BandStitches
		if w.card().Fields["needles"] == "rehang" {
			h, before := w.hangingAt(w.m.Done)
			to = min(to, before+len(h.Map))
			return c.s, c.reply("step", answer.Screen(w.title(), w.hangNow(w.m.Done, to), "Nothing counted: say *up to "+w.needle(to-1)+"* when they hang."))
		}
		return c.s, c.reply("step", answer.Screen(w.title(), "The next: "+answer.Needles(cols[w.m.Done:to], stitches)+".", "Nothing counted: say *up to "+w.needle(to-1)+"* when they are done."))
	}
	return c.stepReply("(Nothing counted.)")
}

// barsReply is how many bars each column has.
func (c *turn) barsReply(w where) (State, Reply) {
	rows, columns, band, of := w.p.TotalRows, len(w.p.RibColumns), "", w.ofPiece()
	if w.amongFronts() {
		rows, columns, band, of = w.p.Front.TotalRows, len(w.p.FrontRibColumns()), " of the front band", ""
	}
	if columns == 0 || len(w.p.EmptyColumns) > 0 && band == "" {
		return c.s, c.reply("step", "No columns are latched"+band+", so there are no bars to count.")
	}
	return c.s, c.reply("step", fmt.Sprintf("**%d bars in each column**, one for each row%s; %s, %d bars in all.%s", rows, band, answer.Count(columns, "column", "columns"), rows*columns, of))
}

// doubleAsked tells how many stitches a needle takes when they are hung again.
func (c *turn) doubleAsked(w where) (State, Reply) {
	if _, _, told := w.p.Waiting(); !told {
		return c.s, c.reply("number", "Tell me how many stitches wait on the waste yarn (\"132 stitches on the yoke\") and I will spread the decreases.")
	}
	h, _ := w.hangingAt(0)
	if w.card().Fields["needles"] == "rehang" {
		h, _ = w.hangingAt(w.m.Done)
	}
	n := len(h.Map)
	col, ok := engine.NeedleColumn(c.m.Move.Needle, n)
	switch name := c.m.Move.Needle; {
	case !ok:
		return c.s, c.reply("number", fmt.Sprintf("%s is not in work: needles %s to %s are.%s", name, engine.NeedleName(0, n), engine.NeedleName(n-1, n), w.ofPiece()))
	case h.Map[col] == 2:
		return c.s, c.reply("number", fmt.Sprintf("**Two** on %s.%s", name, w.ofPiece()))
	default:
		return c.s, c.reply("number", fmt.Sprintf("**One** on %s.%s", name, w.ofPiece()))
	}
}

// hemLatched tells whether the hem takes the bumps of latched columns.
func (c *turn) hemLatched(w where) (State, Reply) {
	both := 0
	for _, col := range w.p.HemColumns {
		if slices.Contains(w.p.RibColumns, col) {
			both++
		}
	}
	c.answersOf(w.p, engine.HemNeedles)
	switch n := len(w.p.HemColumns); {
	case n == 0:
		return c.s, c.reply("number", "This band has no hem to hang.")
	case both > 0:
		return c.s, c.reply("number", fmt.Sprintf("**Yes**, every bump: %d of the %d are of latched columns.", both, n))
	default:
		return c.s, c.reply("number", fmt.Sprintf("**No.** A latched column has no bump toward you: a neighbour takes it. None of the %d needles of the hem is a latched one.", n))
	}
}

// ofPiece names the piece that an answer is about, where there are several.
func (w where) ofPiece() string {
	if len(w.pieces) < 2 {
		return ""
	}
	return fmt.Sprintf(" (Piece %d of %d.)", w.m.Piece+1, len(w.pieces))
}

// wayAsked answers from which side the step can be worked.
func (c *turn) wayAsked(w where) (State, Reply) {
	way := c.m.Move.Way
	switch needles := w.card().Fields["needles"]; {
	case w.amongFronts() && !w.onFront():
		return c.stepReply("(From either end, as the needles are told.)")
	case needles == "latch" && w.m.Done > 0:
		return c.stepReply(fmt.Sprintf("(%s done: finish as you began.)", answer.Count(w.m.Done, "column is", "columns are")))
	case needles == "latch" && way != "":
		return c.stepReply("(Yes: say *from the " + way + "*, and the list goes so.)")
	case needles == "latch":
		return c.stepReply("(Yes: say *from the right* or *from the centre*.)")
	case needles == "hem":
		return c.stepReply("(The ends and the middle first, the rest from either side.)")
	case needles == "rehang":
		return c.stepReply("(Yes, the same needles carry two; the list goes from the left.)")
	case needles == "sew":
		return c.stepReply("(From the end where the yarn hangs.)")
	}
	return c.stepReply("(There is no side to choose in this step.)")
}

// layersReply tells whether the neckband, or the front band, is doubled.
func (c *turn) layersReply(w where) (State, Reply) {
	name, layers, rows, total := "The neckband", 1, w.p.LayerRows, w.p.TotalRows
	if w.p.Doubled {
		layers = 2
	}
	if f := w.p.Front; f != nil && f.TotalRows > 0 && (w.amongFronts() || c.m.Part == "front") && c.m.Part != "neck" {
		name, layers, rows, total = "The front band", f.Layers, f.LayerRows, f.TotalRows
		c.answersOf(w.p, engine.FrontLayers)
	} else {
		c.answer(engine.Layers, layers)
	}
	if layers == 2 {
		return c.s, c.reply("number", fmt.Sprintf("%s is **doubled**: %s a layer, %d in all.", name, rowsWord(rows), total))
	}
	return c.s, c.reply("number", fmt.Sprintf("%s is a **single layer** of %s.", name, rowsWord(total)))
}

// allButLast takes a step as done but for its last needles; of rows it is asked
// whether the layer or the band is meant.
func (c *turn) allButLast(w where) (State, Reply) {
	left := max(1, c.m.Move.Count)
	cols := w.along()
	switch kinds := strings.Fields(c.m.Move.Along); {
	case w.onFront():
		c.m.Move.What, c.m.Move.Row, c.m.Move.Done = "row", w.p.Front.TotalRows-left, true
		return c.frontRow(w)
	case w.card().Fields["rows"] != "":
		end := w.rowsOf(w.at).to
		if end < w.p.TotalRows {
			return c.unsure(fmt.Sprintf("The last row of this layer, or of the band? Say *row %d done*, or *row %d done*. Nothing is counted.", end-left, w.p.TotalRows-left))
		}
		c.m.Move.What, c.m.Move.Row, c.m.Move.Done = "row", end-left, true
		return c.rows(w, "")
	case len(cols) <= left || len(kinds) > 0 && kinds[0] != w.card().Fields["needles"]:
		return c.stepReply("(Nothing counted; your place is kept.)")
	case w.m.Done >= len(cols)-left:
		return c.stepReply("")
	}
	return c.reached(w, len(cols)-left, "")
}

// hemEnds takes the ends of the hem, and its middle, as hung, or the band's ends
// as closed.
func (c *turn) hemEnds(w where) (State, Reply) {
	switch n := c.m.Move.Count; {
	case w.card().Fields["needles"] != "hem":
		return c.moved(w.past(), "")
	case len(w.along()) <= 3:
		return c.unsure(w.leftOf(w.at) + " Say the last one hung: *up to " + w.needle(len(w.along())-1) + "*.")
	case w.m.Done >= n:
		return c.stepReply("(The ends were counted already.)")
	default:
		return c.reached(w, n, "")
	}
}
