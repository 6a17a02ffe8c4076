package dialog

import "fmt"

// toPiece takes her to the first step of a piece she names, or of the one
// after the piece that is told as done; the pieces before it are taken as made.
// A line without a number means the piece after this one.
func (c *turn) toPiece(w where) (State, Reply) {
	n, all := c.m.Move.Count, len(w.pieces)
	if w.amongFronts() && !w.m.Over {
		return c.frontPiece(w)
	}
	first, last := w.pieceSteps()
	here := w.m.Piece + 1 // of those that go through the steps by themselves
	switch {
	case w.at > last || w.m.Over:
		here = all + 1
	case w.at < first:
		here = 0
	}
	done := c.m.Move.What == "piece-done"
	switch {
	case all < 2:
		return c.unsure("The band hangs in one piece. You are at: " + c.whereText())
	case n == 0:
		n = here + 1
	case n > all:
		return c.unsure(fmt.Sprintf("The band has %d pieces. For example: *I'm on piece 2*.", all))
	case done && n < here:
		return c.stepReply(fmt.Sprintf("(Piece %d is counted as done.)", n))
	case done:
		n++
	case n == here:
		return c.stepReply("")
	}
	switch {
	case n > all && here > all:
		return c.stepReply(fmt.Sprintf("(All %d pieces are counted as done.)", all))
	case n > all:
		return c.moved(w.onPiece(all-1).enter(last+1), fmt.Sprintf("(All %d pieces taken as sewn off.)", all))
	case n == 1 || n <= here:
		return c.moved(w.onPiece(n-1).enter(first), "")
	}
	return c.moved(w.onPiece(n-1).enter(first), fmt.Sprintf("(Piece %d taken as sewn off.)", n-1))
}

// frontPiece goes back to the hanging for the next piece of a front band, whose
// steps are told once for all of them.
func (c *turn) frontPiece(w where) (State, Reply) {
	parts, hang := len(w.p.Front.Parts), w.index("front-hang")
	if second := w.index("second-hang"); w.at >= second {
		hang = second
	}
	switch {
	case parts < 2:
		return c.unsure("The front band hangs in one piece. You are at: " + c.whereText())
	case c.m.Move.Count > parts:
		return c.unsure(fmt.Sprintf("The front band has %d pieces. You are at: %s", parts, c.whereText()))
	case c.m.Move.What == "piece-done":
		return c.s, c.reply("step", "Pieces of a front band are not counted: say *next piece*, or *done* after the last. You are at: "+c.whereText()+" *Repeat* shows it again.")
	}
	return c.moved(w.enter(hang), "(The next piece goes through these steps again.)")
}
