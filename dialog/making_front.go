package dialog

import (
	"cmp"
	"fmt"
	"slices"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// The rows of a front band, counted by themselves from 1. Those of the band
// that gets the buttonholes stop where a hole is made.

// onFront reports whether the present step counts the rows of a front band.
func (w where) onFront() bool { return w.card().Fields["counts"] != "" }

// amongFronts reports whether she is at the front bands.
func (w where) amongFronts() bool {
	i := w.index("front-hang")
	return i >= 0 && w.at >= i
}

// frontRows is the step whose rows are told at the front bands: the present
// one, or the next while its stitches are being hung; false where no rows are
// being counted.
func (w where) frontRows() (where, bool) {
	first, second := w.index("front-rows"), w.index("second-rows")
	switch {
	case w.onFront():
		return w, true
	case w.amongFronts() && w.at < first:
		return w.enter(first), true
	case w.amongFronts() && w.at >= w.index("second-hang") && w.at < second:
		return w.enter(second), true
	}
	return w, false
}

// holeRows is the rows of the present step before which holes are made.
func (w where) holeRows() []int {
	if w.card().Fields["counts"] != "holes" || !w.p.Front.HasHoles() {
		return nil
	}
	return w.p.Front.HoleRows
}

// frontParts are the rows of a front band between its stops: each row of
// holes and a fold row stand alone.
func (w where) frontParts() []span {
	f := w.p.Front
	stops := slices.Clone(w.holeRows())
	if f.FoldRow {
		stops = append(stops, f.LayerRows+1)
	}
	slices.Sort(stops)
	var out []span
	from := 0
	for _, row := range stops {
		if row-1 > from {
			out = append(out, span{from, row - 1})
		}
		out, from = append(out, span{row - 1, row}), row
	}
	if from < f.TotalRows {
		out = append(out, span{from, f.TotalRows})
	}
	return out
}

// frontNow says what to knit now of a front band, and the stop before it
// comes.
func (w where) frontNow(s span) []string {
	f, from := w.p.Front, max(s.from, w.m.Done)
	row := from + 1
	dial := ""
	switch {
	case f.FoldRow && row == f.LayerRows+1:
		dial = fmt.Sprintf("Turn %s looser. ", answer.Count(w.p.In.Int(engine.FoldRow), "click", "clicks"))
	case f.FoldRow && row == f.LayerRows+2:
		dial = "Turn back to " + w.frontDial() + ". "
	case from == 0:
		dial = title(w.frontDial()) + ", for every row. "
	}
	if slices.Contains(w.holeRows(), row) {
		return []string{w.makeHoles(row) + fmt.Sprintf(" %sThen knit row %d.", dial, row)}
	}
	text := dial + "Knit " + answer.RowSpan(row, s.to) + "."
	switch {
	case slices.Contains(w.holeRows(), s.to+1):
		text += fmt.Sprintf(" Stop there: the holes come before row %d.", s.to+1)
	case s.to == f.TotalRows:
		text += fmt.Sprintf(" Row %d is the last.", s.to)
	}
	return []string{text}
}

// frontDial is the dial at which a front band is knitted: the gauge that its
// plan counts with was knitted at it.
func (w where) frontDial() string {
	switch {
	case w.p.In.Has(engine.FrontGauge) || w.p.In.Has(engine.FrontRowGauge):
		return "the dial of your front band's swatch"
	case w.p.In.Has(engine.MainTension):
		return setting(w.p, 0) + ", the garment's"
	}
	return setting(w.p, 0)
}

// makeHoles is how the holes are made before row. A latched column cannot run
// down past a hole, so what lies below it is latched first.
func (w where) makeHoles(row int) string {
	f := w.p.Front
	on := "lower end left: " + answer.HoleNeedleList(f)
	text := fmt.Sprintf("Before row %d the holes, %s. ", row, on)
	if max(f.Spec.Size, 1) == 1 {
		text += "Move each stitch to its neighbour; leave its needle working."
	} else {
		text += "Knit just these stitches by hand with contrast yarn."
	}
	if !w.p.FrontRib().IsPlain() {
		return "First latch the rib columns there up to here. " + text
	}
	return text
}

// frontRow takes rows of a front band told as knitted, or taken out.
func (c *turn) frontRow(w where) (State, Reply) {
	mv, total := c.m.Move, w.p.Front.TotalRows
	n := mv.Row
	switch {
	case mv.What == "ripped":
		n = w.m.Done - mv.Count
	case mv.What == "done":
		n = w.m.Done + mv.Count
	case !mv.Done:
		n--
	}
	switch {
	case n < 0:
		return c.unsure(fmt.Sprintf("The count of this front band stands at %s. Say the row that comes next: *I'm on row 5*.", rowsWord(w.m.Done)))
	case n > total:
		return c.unsure(fmt.Sprintf("That would be %s, but a front band has %d. The count here stands at %d; say *row 5 done* with your number.", rowsWord(n), total, w.m.Done))
	}
	note := ""
	for _, row := range w.holeRows() {
		if w.m.Done < row && row <= n {
			note = fmt.Sprintf("(Check: the holes made before row %d?)", row)
		}
	}
	if n == total {
		return c.moved(w.past(), note)
	}
	return c.moved(w.withDone(n), note)
}

// frontDialReply is the dial of the front band she knits.
func (c *turn) frontDialReply(w where) (State, Reply) {
	text := fmt.Sprintf("Every row of the front band: %s. No grading; its plan counts with that gauge.", w.frontDial())
	if f := w.p.Front; f.FoldRow {
		text += fmt.Sprintf(" Only row %d, the fold, is %s looser.", f.LayerRows+1, answer.Count(w.p.In.Int(engine.FoldRow), "click", "clicks"))
	}
	return c.s, c.reply("step", answer.Screen(w.title(), text,
		"One published buttonhole band is 1 to 2 numbers tighter than the garment: knit a swatch at that, and tell its gauge first (*the front band has 30 stitches in 10 cm*)."))
}

// holesNow answers whether the holes are made now.
func (c *turn) holesNow(w where) (State, Reply) {
	at := w.index("second-rows")
	if at < 0 || !w.p.Front.HasHoles() {
		return c.s, c.reply("step", cmp.Or(c.frontNotYet(engine.Holes), c.whereText()))
	}
	f := w.p.Front
	c.answersOf(w.p, engine.HoleRows, engine.HoleNeedles)
	rows := "row " + answer.Counts(f.HoleRows)
	if len(f.HoleRows) > 1 {
		rows = "rows " + answer.Counts(f.HoleRows)
	}
	there := fmt.Sprintf("The holes are made before %s of the second front band, step %d.", rows, at+1)
	if w.at != at {
		return c.s, c.reply("step", answer.Screen(w.title(), "Not in this step. "+there, "How: *how do I make the hole*."))
	}
	now := "No row of holes is left in this band."
	for _, row := range f.HoleRows {
		if row == w.m.Done+1 {
			now = fmt.Sprintf("Yes, now, before row %d.", row)
			break
		}
		if row > w.m.Done {
			now = fmt.Sprintf("Not yet: row %d comes next, the holes before row %d.", w.m.Done+1, row)
			break
		}
	}
	return c.s, c.reply("step", answer.Screen(w.title(), now, there, "How: *how do I make the hole*."))
}

// frontNeedles is the needles of a front band that the present step is about.
func (w where) frontNeedles() string {
	if w.at == w.index("front-latch") {
		return title(answer.FrontLatch(w.p)) + "."
	}
	return w.frontNeedlesOf()
}

// frontNeedlesOf is the needles on which a front band hangs.
func (w where) frontNeedlesOf() string {
	if f := w.p.Front; len(f.Parts) > 0 {
		return fmt.Sprintf("The front band: %s.", answer.PartsSpan(f.Parts))
	}
	return ""
}

// likeFront: she is at the step of the first front band that does what step id
// of the neckband did ("all latched", "the hem is hung").
func (w where) likeFront(id string) bool {
	front, ok := map[string]string{"latch-columns": "front-latch", "hem": "front-hem", "sew-off": "front-off", "hang-again": "front-hang"}[id]
	return ok && w.amongFronts() && w.at == w.index(front)
}
