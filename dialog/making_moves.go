package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// rows takes rows said as done ("done 3 rows") or the row she is on.
func (c *turn) rows(w where) (State, Reply) {
	mv := c.m.Move
	first, last := w.rowSteps()
	total := w.p.TotalRows
	n := mv.Row
	switch {
	case mv.What == "done" && w.at < first && w.card().Fields["needles"] == "" && w.at > 0,
		mv.What == "done" && w.at > last:
		// rows of the waste yarn, the plain row, the closing row
		return c.forward(w)
	case mv.What == "done":
		n = w.m.Row + mv.Count
	case !rowIsDone(c.said):
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
	return c.moved(w.atRow(n), c.dialCheck(w, n))
}

// rowIsDone tells "row 7 finished" and a counter, which shows the rows behind
// it, from "on row 7", which is being knitted.
func rowIsDone(said string) bool {
	for _, word := range strings.FieldsFunc(strings.ToLower(said), notLetter) {
		switch word {
		case "done", "finished", "knitted", "knit", "completed", "complete", "counter", "finish", "through":
			return true
		}
	}
	return false
}

func notLetter(r rune) bool { return (r < 'a' || r > 'z') && r != '\'' }

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
	i := c.stepAlong(w)
	if i < 0 {
		return c.unsure("No step here goes along the needles. You are at: " + c.whereText())
	}
	note := ""
	if i != w.at {
		note, w = w.skipped(i), w.enter(i)
	}
	cols, n := w.along(), w.p.BandStitches
	if c.m.Move.Needle == "" {
		if c.m.Move.Count < 1 || c.m.Move.Count > len(cols) {
			return c.unsure(fmt.Sprintf("There are %d here. Say the last one done: *up to %s*.", len(cols), engine.NeedleName(n-1, n)))
		}
		return c.moved(w.reach(c.m.Move.Count), note)
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
	return c.moved(w.reach(w.doneUpTo(col)), note)
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

// stepAlong is the step along the needles that the line speaks of, by its
// verb, or the one she is at, or the next one; -1 where there is none.
func (c *turn) stepAlong(w where) int {
	s := strings.ToLower(c.said)
	has := func(words ...string) bool {
		for _, x := range words {
			if strings.Contains(s, x) {
				return true
			}
		}
		return false
	}
	kind := ""
	switch {
	case has("sew", "stitched", "cast", "bind", "bound"):
		kind = "sew"
	case has("latch", "drop", "column", "ladder", "rib"):
		kind = "latch"
	case has("rehung", "rehang", "hang again"):
		kind = "rehang"
	case has("hem", "bump"):
		kind = "hem"
	case has("hung", "hang"):
		kind = "hem"
		if first, _ := w.rowSteps(); w.at < first {
			kind = "rehang"
		}
	}
	for i, card := range w.order {
		if k := card.Fields["needles"]; k != "" && (k == kind || kind == "" && i >= w.at) {
			return i
		}
	}
	return -1
}

// finishedStep is the step that the line says is done, by name ("the hem is
// hung", "all latched"); "" where it names none.
func finishedStep(said string) string {
	words := strings.FieldsFunc(strings.ToLower(said), notLetter)
	has := func(any ...string) bool {
		for _, w := range words {
			for _, a := range any {
				if w == a {
					return true
				}
			}
		}
		return false
	}
	if strings.HasSuffix(strings.TrimSpace(said), "?") || has("what", "how", "next") ||
		!has("done", "finished", "complete", "hung", "latched", "sewn", "rehung", "knitted") {
		return ""
	}
	switch {
	case has("rehung", "rehanging"):
		return "hang-again"
	case has("hem", "bumps"):
		return "hem"
	case has("sewn", "sewing", "backstitch"):
		return "sew-off"
	case has("latched", "latching", "columns", "rib"):
		return "latch-columns"
	case has("closing"):
		return "close"
	case has("fold"):
		return "fold"
	case has("outer"):
		return "outer-rows"
	case has("inner"):
		return "inner-rows"
	}
	return ""
}
