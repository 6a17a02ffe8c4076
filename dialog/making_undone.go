package dialog

import (
	"slices"

	"foldrow/engine"
)

// undone: something is told as not done yet. A row that was counted is counted
// no more; a needle that was passed is to be done now, and the place is kept,
// since those after it are done.
func (c *turn) undone(w where) (State, Reply) {
	mv := c.m.Move
	_, last := w.rowSteps()
	if mv.Needle == "" {
		if mv.Row > 0 && mv.Row <= w.m.Row && w.at <= last {
			return c.moved(w.atRow(mv.Row-1), "")
		}
		return c.stepReply("(Nothing counted; your place is kept.)")
	}
	cols := w.along()
	col, ok := engine.NeedleColumn(mv.Needle, w.p.BandStitches)
	at := slices.Index(cols, col)
	switch {
	case !ok:
		return c.unsure(mv.Needle + " is not in work.")
	case len(cols) == 0:
		return c.stepReply("(Nothing counted; your place is kept.)")
	case at < 0:
		return c.stepReply("(" + mv.Needle + " is not among those of this step.)")
	case at >= w.m.Done:
		return c.stepReply("(" + mv.Needle + " is still to come.)")
	}
	return c.stepReply("(" + mv.Needle + " was counted already: do it now, then go on here.)")
}
