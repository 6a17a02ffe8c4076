package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
)

// progress is how far something is that a line names.
type progress int

const (
	unnamed progress = iota // nothing was named
	unknown                 // it is not among those of the step
	toCome
	isNext
	counted
)

// undone: something is told as not done yet. A row that was counted is counted
// no more; a needle that was passed is to be done now, and the place is kept,
// since those after it are done.
func (c *turn) undone(w where) (State, Reply) {
	mv := c.m.Move
	if mv.Needle != "" {
		switch c.needleProgress(w, mv.Needle) {
		case unknown:
			return c.stepReply("(" + mv.Needle + " is not among those of this step.)")
		case counted:
			return c.stepReply("(" + mv.Needle + " was counted already: do it now, then go on here.)")
		}
		return c.stepReply("(" + mv.Needle + " is still to come.)")
	}
	if at := w.index(mv.Step); mv.Step != "" && at >= 0 && at < w.at {
		return c.stepReply("(It was counted as done. Say where you are: *I am on row 9*, *up to L20*.)")
	}
	switch w.rowProgress(mv.Row) {
	case counted:
		if w.onFront() {
			return c.moved(w.withDone(mv.Row-1), "")
		}
		if _, last := w.rowSteps(); w.at > last && mv.What == "half-row" {
			return c.unsure(fmt.Sprintf("All %s are counted as knitted; nothing is changed. To go back to it say *I'm on row %d*.", rowsWord(w.p.TotalRows), mv.Row))
		}
		return c.moved(w.atRow(mv.Row-1), "")
	case isNext:
		return c.stepReply(fmt.Sprintf("(Row %d counts when it is whole; nothing is counted.)", mv.Row))
	case toCome:
		done, _ := w.counted()
		return c.stepReply(fmt.Sprintf("(Nothing counted: %s knitted so far. When it is true, say *row %d done*.)", answer.Count(done, "row is", "rows are"), max(mv.Row-1, 1)))
	}
	if s, _ := w.part(); len(w.along()) > 0 && s.to > w.m.Done {
		return c.stepReply("(Nothing counted. Say the last one done: *up to " + w.needle(s.to-1) + "*.)")
	}
	return c.stepReply("(Nothing counted; your place is kept.)")
}

// whether answers if a row, a needle or a step is done, from what was counted.
func (c *turn) whether(w where) (State, Reply) {
	mv := c.m.Move
	what, is := mv.Needle, unnamed
	switch at := w.index(mv.Step); {
	case mv.Needle != "":
		is = c.needleProgress(w, mv.Needle)
	case mv.Row > 0:
		what, is = fmt.Sprintf("row %d", mv.Row), w.rowProgress(mv.Row)
	case mv.Step != "" && at >= 0:
		what, is = "that step", stepProgress(w, at)
	}
	switch is {
	case counted:
		return c.stepReply("(Yes, " + what + " is counted as done.)")
	case isNext:
		return c.stepReply("(Not yet: " + what + " is to be done now.)")
	case toCome:
		return c.stepReply("(No, " + what + " is still to come.)")
	case unknown:
		return c.stepReply("(" + title(what) + " is not among those of this step.)")
	}
	return c.whereReply(w)
}

func stepProgress(w where, at int) progress {
	switch {
	case at < w.at || w.m.Over:
		return counted
	case at == w.at:
		return isNext
	}
	return toCome
}

// rowProgress is how far a row is of the band she is at.
func (w where) rowProgress(row int) progress {
	_, last := w.rowSteps()
	done, total := w.counted()
	switch {
	case row < 1:
		return unnamed
	case row > total:
		return unknown
	case row <= done || w.at > last && !w.onFront():
		return counted
	case row == done+1:
		return isNext
	}
	return toCome
}

// needleProgress is how far a needle is in the step that the line speaks of,
// or in the one she is at.
func (c *turn) needleProgress(w where, name string) progress {
	i := c.stepAlong(w)
	if i < 0 {
		return unknown
	}
	there := w
	if i != w.at {
		there = w.enter(i)
	}
	at := there.placeOf(name)
	switch {
	case at < 0:
		return unknown
	case i < w.at, i == w.at && at < w.m.Done:
		return counted
	case i == w.at && at == w.m.Done:
		return isNext
	}
	return toCome
}

// placeOf is the place of a needle in the working order of the step, -1 where
// it is not one of those.
func (w where) placeOf(name string) int {
	for i := range w.along() {
		if w.needle(i) == name {
			return i
		}
	}
	return -1
}

// allBut keeps the place where all of a step is told as done but some needles:
// the count knows one place alone.
func (c *turn) allBut(w where) (State, Reply) {
	i := c.stepAlong(w)
	if i < 0 {
		return c.unsure("No step here goes along the needles. You are at: " + c.whereText())
	}
	all := map[string]string{"latch": "all latched", "hem": "all hung", "rehang": "all rehung", "sew": "all sewn"}[w.order[i].Fields["needles"]]
	return c.stepReply("(Not counted yet: do " + strings.Join(c.m.Move.Except, ", ") + " now, then say *" + all + "*.)")
}

// leftOut names the needles that a line leaves out of the first so many, which
// it counts.
func (c *turn) leftOut(w where, done int) string {
	var here, apart []string
	for _, name := range c.m.Move.Except {
		switch at := w.placeOf(name); {
		case at < 0:
			apart = append(apart, name)
		case at < done:
			here = append(here, name)
		}
	}
	switch {
	case len(apart) > 0:
		return "(Not among those of this step: " + strings.Join(apart, ", ") + ".)"
	case len(here) > 0:
		return "(Left out: " + strings.Join(here, ", ") + ". Do that now, then go on here.)"
	}
	return ""
}
