package dialog

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// pieceHere is the piece that goes through the steps now, from 1; 0 before the
// first, one more than there are after the last.
func (w where) pieceHere() int {
	switch first, last := w.pieceSteps(); {
	case w.at > last || w.m.Over:
		return len(w.pieces) + 1
	case w.at < first:
		return 0
	}
	return w.m.Piece + 1
}

// pieceWhether answers whether a piece is done.
func (c *turn) pieceWhether(w where) (State, Reply) {
	n, all := c.m.Move.Count, len(w.pieces)
	if n < 0 {
		n = all
	}
	switch here := w.pieceHere(); {
	case all < 2:
		return c.stepReply("(The band hangs in one piece.)")
	case n > all:
		return c.stepReply(fmt.Sprintf("(The band has %d pieces.)", all))
	case n < here:
		return c.stepReply(fmt.Sprintf("(Yes, piece %d is counted as done.)", n))
	case n == here:
		return c.stepReply(fmt.Sprintf("(Not yet: you are at piece %d.)", n))
	}
	return c.stepReply(fmt.Sprintf("(No, piece %d is still to come.)", n))
}

// pieceRow takes the piece and the row of it that she is on.
func (c *turn) pieceRow(w where) (State, Reply) {
	n, all := c.m.Move.Count, len(w.pieces)
	first, _ := w.pieceSteps()
	switch {
	case w.amongFronts():
		return c.unsure("The rows of each piece of a front band are counted from 1: say *row 5 done*. You are at: " + c.whereText())
	case all < 2:
		return c.unsure("The band hangs in one piece. You are at: " + c.whereText())
	case n > all:
		return c.unsure(fmt.Sprintf("The band has %d pieces. For example: *I'm on piece 2*.", all))
	}
	lead := ""
	if here := w.pieceHere(); n != here {
		w = w.onPiece(n - 1).enter(first)
		if n > max(here, 1) {
			lead = fmt.Sprintf("(Piece %d taken as sewn off.)", n-1)
		}
	}
	c.m.Move.What = "row"
	return c.rows(w, lead)
}

// joined takes a join as sewn, or all of them.
func (c *turn) joined(w where) (State, Reply) {
	id := w.card().ID
	switch at := w.index("join-pieces"); {
	case w.joins() && c.m.Move.Count > 0:
		return c.moved(w.reachJoin(c.m.Move.Count), "")
	case w.joins() && c.m.Part != "all":
		return c.moved(w.next(), "")
	case w.joins(), id == "front-join", id == "second-join":
		return c.moved(w.past(), "")
	case at < 0:
		return c.stepReply("(No pieces are joined in this plan.)")
	case at < w.at:
		return c.stepReply("(The pieces are counted as joined.)")
	default:
		return c.stepReply(fmt.Sprintf("(Joining the pieces is step %d; nothing is counted.)", at+1))
	}
}

// reachJoin is w with n joins sewn; all of them end the step.
func (w where) reachJoin(n int) where {
	if n >= len(w.pieces)-1 {
		return w.past()
	}
	return w.withDone(n)
}

// inJoin tells whether a needle holds what a join takes up, or which do.
func (c *turn) inJoin(w where) (State, Reply) {
	part, of := engine.Part{}, w.ofPiece()
	switch {
	case w.amongFronts() && len(w.p.Front.Parts) > 1:
		return c.frontInJoin(w)
	case w.amongFronts() || len(w.pieces) < 2:
		return c.s, c.reply("number", "The band is in one piece, so it has no join.")
	default:
		part = w.p.Piece.Part
	}
	seam, n := title(answer.SeamNeedles(part))+".", part.Needles()
	name := c.m.Move.Needle
	if name == "" {
		return c.s, c.reply("number", seam+of)
	}
	col, ok := engine.NeedleColumn(name, n)
	switch {
	case !ok:
		return c.s, c.reply("number", fmt.Sprintf("%s is not in work: the piece runs from %s to %s.%s", name, engine.NeedleName(0, n), engine.NeedleName(n-1, n), of))
	case col < part.Left || col >= n-part.Right:
		return c.s, c.reply("number", "**Yes.** "+seam+of)
	}
	return c.s, c.reply("number", "**No.** "+seam+of)
}

// frontInJoin is inJoin for the pieces of a front band, which are all told.
func (c *turn) frontInJoin(w where) (State, Reply) {
	var parts []string
	for i, t := range w.p.Front.Parts {
		if s := answer.SeamNeedles(t); s != "" {
			parts = append(parts, fmt.Sprintf("Piece %d: %s.", i+1, s))
		}
	}
	return c.s, c.reply("number", cmp.Or(strings.Join(parts, " "), "No needles go into the joins."))
}

// frontDone takes a whole front band as done.
func (c *turn) frontDone(w where) (State, Reply) {
	if w.index("front-hang") < 0 {
		return c.unsure("The front bands are not planned yet. " + c.frontNotYet(engine.FrontStitches))
	}
	next := w.index("buttons-on")
	if c.m.Move.Count == 1 {
		next = max(w.index("front-marks"), 0)
		if next == 0 {
			next = w.index("second-hang")
		}
	}
	switch {
	case next < 0: // nothing comes after the second
		return c.forward(w.enter(len(w.order) - 1).atEnd())
	case next <= w.at:
		return c.stepReply("(Counted as done already.)")
	}
	note := w.skipped(next)
	if next > w.at+1 && note == "" {
		note = "(All steps of that front band taken as done.)"
	}
	return c.moved(w.enter(next), note)
}

// holesDone: the holes are told as made. The row over them is what counts.
func (c *turn) holesDone(w where) (State, Reply) {
	f := w.p.Front
	if f == nil || !slices.Contains(w.holeRows(), w.m.Done+1) {
		return c.holesNow(w)
	}
	if name := c.m.Move.Needle; name != "" && !slices.Contains(strings.FieldsFunc(answer.HoleNeedleList(f), func(r rune) bool { return strings.ContainsRune(" ,;+:", r) }), name) {
		return c.stepReply("(" + name + " is not among the needles of the holes.)")
	}
	return c.stepReply(fmt.Sprintf("(Noted. With all of them made, row %d comes next.)", w.m.Done+1))
}
