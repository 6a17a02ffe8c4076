package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
)

// notHere: something is told as done that this step does not do.
func (c *turn) notHere(where) (State, Reply) {
	return c.stepReply("(That is not of this step; nothing is counted.)")
}

// nowWhat shows what is to be done now: a question counts nothing.
func (c *turn) nowWhat(where) (State, Reply) {
	return c.stepReply("(This comes now. Done already? Say *done*.)")
}

// wasteRows: rows of waste yarn are none of the band.
func (c *turn) wasteRows(where) (State, Reply) {
	return c.stepReply("(Waste rows are not counted. Off the needles? Say *it is off*.)")
}

// mended: what had gone wrong is right again.
func (c *turn) mended(where) (State, Reply) {
	return c.stepReply("(Good; your place is kept.)")
}

// carriageWhere: the side of the carriage tells odd rows from even ones.
func (c *turn) carriageWhere(w where) (State, Reply) {
	done, _ := w.counted()
	return c.stepReply(fmt.Sprintf("(Each row ends on the other side; %s knitted by the count.)", answer.Count(done, "row is", "rows are")))
}

// closeDial is the dial of the closing row.
func (c *turn) closeDial(w where) (State, Reply) {
	if w.index("close") < 0 {
		return c.s, c.reply("step", "A single layer has no closing row.")
	}
	return c.s, c.reply("step", fmt.Sprintf("The closing row: %s.", setting(w.p, 0)))
}

// rowsDone takes all rows of the present layer, or of the front band, as knitted.
func (c *turn) rowsDone(w where) (State, Reply) {
	switch {
	case w.onFront():
		return c.rowTold(w, w.p.Front.TotalRows, "")
	case w.card().Fields["rows"] != "":
		return c.rowTold(w, w.rowsOf(w.at).to, "")
	}
	return c.stepReply("(No rows are counted in this step.)")
}

// rowTold takes row n as knitted, of the band she is at.
func (c *turn) rowTold(w where, n int, lead string) (State, Reply) {
	c.m.Move.What, c.m.Move.Row, c.m.Move.Done = "row", n, true
	if w.onFront() {
		return c.frontRow(w)
	}
	return c.rows(w, lead)
}

// lastDone takes the last ones of a step as done where as many are left.
func (c *turn) lastDone(w where) (State, Reply) {
	n := max(1, c.m.Move.Count)
	done, total := w.counted()
	switch left := len(w.along()) - w.m.Done; {
	case w.onFront() && n == total-done:
		return c.rowsDone(w)
	case w.card().Fields["rows"] != "" && (n == total-done || n == w.rowsOf(w.at).to-done):
		return c.rowTold(w, done+n, "")
	case w.card().Fields["rows"] != "" || w.onFront():
		return c.rowsLeft(w)
	case len(w.along()) > 0 && n == left:
		return c.moved(w.past(), "")
	case len(w.along()) > 0:
		return c.stepReply("(By the count: " + lower(w.leftOf(w.at)) + ")")
	}
	return c.notHere(w)
}

// restDone takes what is left of the present step as done.
func (c *turn) restDone(w where) (State, Reply) {
	if w.card().Fields["rows"] != "" || w.onFront() {
		return c.rowsDone(w)
	}
	return c.finish(w, w.card().ID)
}

// layerRow takes a row that is counted within its layer: the inner ones begin
// after the fold.
func (c *turn) layerRow(w where) (State, Reply) {
	layers, rows, total := 1, w.p.LayerRows, w.p.TotalRows
	if w.p.Doubled {
		layers = 2
	}
	if w.amongFronts() {
		layers, rows, total = w.p.Front.Layers, w.p.Front.LayerRows, w.p.Front.TotalRows
		if !w.onFront() {
			return c.unsure("No rows are counted in this step. You are at: " + c.whereText())
		}
	}
	n, lead := c.m.Move.Row, ""
	switch {
	case layers < 2:
		return c.unsure("This band is a single layer. You are at: " + c.whereText())
	case n > rows && c.m.Part == "outer":
		return c.unsure(fmt.Sprintf("The outer layer has %s. You are at: %s", rowsWord(rows), c.whereText()))
	case n <= rows && c.m.Part == "inner":
		lead = fmt.Sprintf("(Row %d of the inner layer is row %d.)", n, total-rows+n)
		n += total - rows
	}
	if c.m.Move.What, c.m.Move.Row = "row", n; w.onFront() {
		return c.frontRow(w)
	}
	return c.rows(w, lead)
}

// rowOf takes "25 of 26": so many of all rows, or of all needles of the step.
func (c *turn) rowOf(w where) (State, Reply) {
	n, of := c.m.Move.Row, c.m.Move.Count
	_, total := w.counted()
	switch along := len(w.along()); {
	case n > of:
	case (w.card().Fields["rows"] != "" || w.onFront()) && of == total:
		return c.rowTold(w, n, "")
	case along > 0 && of == along && n > 0:
		return c.reached(w, n, "")
	}
	return c.unsure("I cannot tell of what. You are at: " + c.whereText())
}

// lone asks what a number alone is where rows are counted.
func (c *turn) lone(where) (State, Reply) {
	n := c.m.Move.Row
	return c.unsure(fmt.Sprintf("%s more, or row %d? Say *%s done* or *row %d done*. Nothing is counted.", title(rowsWord(n)), n, rowsWord(n), n))
}

// skipNeedle leaves a needle for later.
func (c *turn) skipNeedle(where) (State, Reply) {
	return c.stepReply("(" + c.m.Move.Needle + " is left for later; nothing is counted.)")
}

// pieceWrong asks what is wrong with a piece.
func (c *turn) pieceWrong(w where) (State, Reply) {
	if len(w.pieces) < 2 {
		return c.unsure("The band hangs in one piece. What is wrong with it? Say what you see.")
	}
	return c.unsure(fmt.Sprintf("What is wrong with it? Say what you see, or *back to piece %d* to make it again.", c.m.Move.Count))
}
