package dialog

import (
	"fmt"
	"slices"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// rows takes rows said as done ("done 3 rows") or the row she is on; lead is a
// note on how she came to them.
func (c *turn) rows(w where, lead string) (State, Reply) {
	mv := c.m.Move
	first, last := w.rowSteps()
	total := w.p.TotalRows
	n := mv.Row
	switch {
	case mv.What == "done" && mv.Count > 0 && c.m.FigUnit != quantity.Row && len(w.along()) > 0:
		// columns, bumps, needles
		if left := len(w.along()) - w.m.Done; mv.Count > left {
			return c.unsure(w.leftOf(w.at) + " Say the last needle done: *up to L20*.")
		}
		return c.moved(w.reach(w.m.Done+mv.Count), "")
	case mv.What == "done" && w.at > last && len(w.along()) > 0:
		return c.unsure(fmt.Sprintf("All %d rows of the band are knitted. You are at: %s", total, c.whereText()))
	case mv.What == "done" && w.at < first && w.card().Fields["needles"] == "" && w.at > 0,
		mv.What == "done" && w.at > last:
		// rows of the waste yarn, the plain row, the closing row
		return c.forward(w)
	case mv.What == "done":
		n = w.m.Row + mv.Count
	case !mv.Done:
		n--
	}
	switch {
	case n < 0:
		return c.unsure("The rows count from 1.")
	case n > total:
		return c.unsure(fmt.Sprintf("That would be %s knitted, but the band has %d in all. The count here stands at %d; count on the fabric from the waste yarn up and say *row 5 done* with your number.",
			answer.Count(n, "row", "rows"), total, w.m.Row))
	case n == total && w.at > last:
		return c.stepReply("")
	}
	return c.moved(w.atRow(n), joinNotes(joinNotes(lead, w.unhung(first, n)), c.dialCheck(w, n)))
}

// unhung says that the band was not told as hung where rows of it are told as
// knitted; "" at the first step, where nothing was told of the way yet.
func (w where) unhung(first, rows int) string {
	if w.at == 0 || w.at >= first || rows < 1 {
		return ""
	}
	switch hang := w.index("hang-again"); {
	case w.at == hang && w.m.Column != "":
		return "(Hanging again was not finished, " + w.m.Column + " was the last needle told; taken as done.)"
	case w.at <= hang:
		return "(Hanging again was not told; taken as done.)"
	}
	return ""
}

// joinNotes is two notes in one pair of brackets; either may be "".
func joinNotes(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return strings.TrimSuffix(a, ")") + " " + strings.TrimPrefix(b, "(")
}

// rowsOut takes rows told as taken out again.
func (c *turn) rowsOut(w where) (State, Reply) {
	n := w.m.Row - c.m.Move.Count
	if n < 0 {
		return c.unsure(fmt.Sprintf("That is more than the %s the count here stands at. Say the row that comes next: *I'm on row 5*.", rowsWord(w.m.Row)))
	}
	return c.moved(w.atRow(n), "")
}

// dialCheck names the changes that fell into rows told in one go, so that one
// that was missed is noticed.
func (c *turn) dialCheck(w where, n int) string {
	rows := w.p.Tension()
	var changes []string
	last := ""
	for i := max(w.m.Row+1, 1); i < n; i++ {
		if rows[i].Clicks != rows[i-1].Clicks {
			changes = append(changes, fmt.Sprintf("row %d", rows[i].Row))
			last = answer.DialAt(rows[i])
		}
	}
	switch len(changes) {
	case 0:
		return ""
	case 1:
		return "(Check: turned to " + last + " before " + changes[0] + "?)"
	case 2:
		return "(Check: the dial turned before " + changes[0] + " and " + changes[1] + "?)"
	}
	return fmt.Sprintf("(Check: the dial turned %d times on the way, last before %s?)", len(changes), changes[len(changes)-1])
}

// upTo takes the needle she has come to.
func (c *turn) upTo(w where) (State, Reply) {
	if n, row := strings.CutPrefix(c.m.Move.Needle, "R"); row && w.onFront() {
		return c.unsure(rowOrNeedle(n))
	}
	if w.amongFronts() && !w.m.Over { // the steps along the needles are the neckband's
		return c.stepReply("(No needles counted here; say *next* when done.)")
	}
	i := c.stepAlong(w)
	if i < 0 {
		return c.unsure("No step here goes along the needles. You are at: " + c.whereText())
	}
	note := ""
	if first, _ := w.rowSteps(); i != w.at && w.at >= first && c.m.Move.Along == "" {
		name := c.m.Move.Needle
		if n, row := strings.CutPrefix(name, "R"); row && w.card().Fields["rows"] != "" {
			return c.unsure(rowOrNeedle(n))
		}
		return c.unsure("No needles are counted in this step. You are at: " + c.whereText())
	}
	if i != w.at {
		note, w = w.skipped(i), w.enter(i)
	}
	cols, n, before := w.along(), w.p.BandStitches, 0
	if w.card().Fields["needles"] == "rehang" {
		var h engine.Hanging
		h, before = w.hangingAt(w.m.Done)
		n = len(h.Map)
	}
	if c.m.Move.Needle == "" && cols == nil {
		return c.unsure("The place here is a needle, not a count. Say the last one sewn: *sewn up to L20*.")
	}
	if c.m.Move.Needle == "" {
		if c.m.Move.Count < 1 || c.m.Move.Count > len(cols) {
			return c.unsure(fmt.Sprintf("There are %d here. Say the last one done: *up to %s*.", len(cols), engine.NeedleName(n-1, n)))
		}
		return c.reached(w, c.m.Move.Count, note)
	}
	col, ok := engine.NeedleColumn(c.m.Move.Needle, n)
	if !ok {
		return c.unsure(fmt.Sprintf("%s is not in work: the band runs from %s to %s.", c.m.Move.Needle,
			engine.NeedleName(0, n), engine.NeedleName(n-1, n)))
	}
	if cols == nil { // sewing off: the place is kept, nothing is counted
		w.m.Column = c.m.Move.Needle
		return c.moved(w, note)
	}
	if w.card().Fields["needles"] == "rehang" {
		return c.reached(w, before+col+1, note)
	}
	if at := w.placeOf(c.m.Move.Needle); at >= 0 && c.m.Move.Begun {
		return c.reached(w, at, note)
	}
	return c.reached(w, w.doneUpTo(col), note)
}

// rowOrNeedle asks what "r7" is where rows are counted.
func rowOrNeedle(n string) string {
	return fmt.Sprintf("Row %s, or needle R%s? No needles are counted in this step: say *row %s*. Nothing is counted.", n, n, n)
}

// reached is the place with n needles of the step done but those left out.
func (c *turn) reached(w where, n int, note string) (State, Reply) {
	return c.moved(w.reach(n), joinNotes(note, c.leftOut(w, n)))
}

// reach is w with n of its needles done; all of them end the step.
func (w where) reach(n int) where {
	if n >= len(w.along()) {
		return w.past()
	}
	return w.withDone(n)
}

// doneUpTo is how many are done when she has come to column col.
func (w where) doneUpTo(col int) int {
	n, way, first := w.p.BandStitches, w.m.Way, 0
	cols := w.along()
	if w.card().Fields["needles"] != "latch" {
		way = fromLeft
	}
	if w.card().Fields["needles"] == "hem" && len(cols) > 3 {
		if col >= cols[1] {
			return len(cols)
		}
		first = 3 // the ends and the middle come first
	}
	done := first
	for _, c := range cols[first:] {
		if rank(c, n, way) <= rank(col, n, way) {
			done++
		}
	}
	return done
}

// stepAlong is the step along the needles that the line speaks of, or the one
// she is at, or the next one; -1 where there is none.
func (c *turn) stepAlong(w where) int {
	kinds := strings.Fields(c.m.Move.Along)
	for i, card := range w.order {
		if k := card.Fields["needles"]; k != "" && (slices.Contains(kinds, k) || len(kinds) == 0 && i >= w.at) {
			return i
		}
	}
	return -1
}
