package dialog

import "fmt"

// counted is the rows knitted and all of them, of the band she is at.
func (w where) counted() (done, total int) {
	if w.onFront() {
		return w.m.Done, w.p.Front.TotalRows
	}
	return w.m.Row, w.p.TotalRows
}

// rowsLeft holds the rows she says are left against those that are.
func (c *turn) rowsLeft(w where) (State, Reply) {
	done, total := w.counted()
	here := total
	if w.card().Fields["rows"] != "" {
		here = w.rowsOf(w.at).to
	} else if !w.onFront() {
		return c.stepReply("(No rows are counted in this step.)")
	}
	left := fmt.Sprintf("%d to go", total-done)
	if here < total {
		left = fmt.Sprintf("%d to go in this layer, %d in all", here-done, total-done)
	}
	n := c.m.Move.Count
	if n == here-done || n == total-done {
		return c.stepReply(fmt.Sprintf("(Right: %s knitted, %s.)", rowsWord(done), left))
	}
	hint := ""
	switch {
	case n < here && here < total:
		hint = fmt.Sprintf(" Is it %d to the fold? Say *row %d done*; in all, *row %d done*.", n, here-n, total-n)
	case n < total:
		hint = fmt.Sprintf(" Is it %d? Then say *row %d done*.", n, total-n)
	}
	return c.stepReply(fmt.Sprintf("(%s knitted by the count: %s.%s)", title(rowsWord(done)), left, hint))
}

// rowSkipped: a row cannot be left out and the next knitted; what may be out is
// the count.
func (c *turn) rowSkipped(w where) (State, Reply) {
	row := c.m.Move.Row
	done, _ := w.counted()
	switch w.rowProgress(row) {
	case counted:
		return c.unsure(fmt.Sprintf("Row %d is counted as knitted; if it was not, the fabric is a row short. Count the rows on it and say *row %d done* with your number. Nothing is changed.", row, max(1, done-1)))
	case isNext:
		return c.stepReply(fmt.Sprintf("(Row %d is not counted yet: it comes now.)", row))
	}
	return c.stepReply(fmt.Sprintf("(Row %d is not counted yet.)", row))
}

// mayGo answers whether she can go to a row or a step: what lies between.
func (c *turn) mayGo(w where) (State, Reply) {
	row, at := c.m.Move.Row, w.index(c.m.Move.Step)
	done, total := w.counted()
	switch {
	case row > 0: // the rows tell
	case at >= 0 && at < w.at:
		return c.stepReply(fmt.Sprintf("(That is step %d, counted as done; *step %d* takes you back.)", at+1, at+1))
	case at == w.at:
		return c.stepReply("(Yes, you are at it.)")
	case at > w.at:
		return c.stepReply(fmt.Sprintf("(That is step %d; first finish this one, or say *step %d*.)", at+1, at+1))
	}
	switch w.rowProgress(row) {
	case counted:
		if w.card().Fields["rows"] == "" && !w.onFront() {
			return c.stepReply("(All " + rowsWord(total) + " are knitted; *how do I unravel a row* tells the way back.)")
		}
		return c.stepReply(fmt.Sprintf("(Yes, by taking out %s: *unravel a row* tells how. Then say *I'm on row %d*.)", rowsWord(done+1-row), row))
	case isNext:
		return c.stepReply(fmt.Sprintf("(Yes: row %d comes now.)", row))
	case toCome:
		return c.stepReply(fmt.Sprintf("(Not yet: %s to knit before it. Knitted? Say *row %d done*.)", rowsWord(row-1-done), row-1))
	}
	return c.stepReply(fmt.Sprintf("(The rows here count from 1 to %d.)", total))
}
