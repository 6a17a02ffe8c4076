package dialog

import (
	"cmp"
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// onStep moves through the making. The plan is the kept one: a what-if on the
// table is not knitted.
func (c *turn) onStep() (State, Reply) {
	if q := c.open(c.s); c.m.Move.What == "skip" && !c.s.Making.On && q != "" && q != "keep" {
		return c.skipQuestion()
	}
	c.about = &c.s.Said
	p := c.kept()
	if s, r, ok := c.chartStep(p); ok {
		return s, r
	}
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return c.s, c.reply("step", "There is no whole plan to knit from yet; the questions come first.")
	}
	if why := c.yokeTooSmall(p); why != "" {
		return c.s, c.reply("step", why)
	}
	if !c.s.Making.On {
		return c.setOut(p)
	}
	return c.move(c.standing(p))
}

// setOut begins the making, at the first step or at the place she names.
func (c *turn) setOut(p *engine.Plan) (State, Reply) {
	switch c.m.Move.What {
	case "row", "done", "latched", "goto":
		before := c.s // a place that cannot be begins nothing
		c.s.Making.On = true
		w := c.standing(p)
		c.s = before
		return c.move(w)
	case "start":
		return c.moved(c.standingAt(p, Making{On: true}), "")
	case "next": // "what now?": she may not have meant to begin
		return c.moved(c.standingAt(p, Making{On: true}), "(The plan is made, so the making begins; it can still be changed.)")
	}
	return c.s, c.reply("step", "You are not at the machine yet: say *start knitting*, or where you are: *I'm on row 5*, *start from the hem*.")
}

// move goes where the line says.
func (c *turn) move(w where) (State, Reply) {
	switch c.m.Move.What {
	case "next":
		return c.forward(w)
	case "finished":
		return c.finish(w, c.m.Move.Step)
	case "back":
		return c.backward(w)
	case "skip-one":
		return c.stepReply("(Nothing counted. Say which one is left: *all but " + w.needle(w.m.Done) + "*.)")
	case "skip":
		return c.moved(w.past(), "(Counted as done; nothing was checked.)")
	case "start":
		if w.m.Over {
			return c.moved(c.standingAt(w.p, Making{On: true, Way: w.m.Way}), "")
		}
		return c.stepReply("(You have begun already.)")
	case "goto":
		return c.jump(w)
	case "row", "done", "ripped":
		if at, ok := w.frontRows(); ok {
			return c.frontRow(at)
		}
		if w.amongFronts() && c.m.Move.What != "done" {
			return c.unsure("No rows are counted in this step. You are at: " + c.whereText())
		}
		if c.m.Move.What != "ripped" {
			return c.rows(w, "")
		}
		return c.rowsOut(w)
	case "latched":
		return c.upTo(w)
	case "piece", "piece-done":
		return c.toPiece(w)
	case "all-but":
		return c.allBut(w)
	case "whether":
		return c.whether(w)
	case "undone":
		return c.undone(w)
	case "way":
		return c.chooseWay(w)
	case "where":
		return c.whereReply(w)
	case "needles":
		return c.needlesReply(w)
	case "left":
		return c.leftReply(w)
	case "list":
		return c.listReply(w)
	case "dial":
		return c.dialReply(w)
	case "step", "look":
		return c.goTo(w)
	case "holes":
		return c.holesNow(w)
	case "dial-at":
		return c.dialAt(w)
	case "wait":
		return c.stepReply("(Take your time; your place is kept.)")
	case "begin":
		return c.moved(w.enter(w.at), "")
	case "restart":
		return c.restart(w)
	case "spoils":
		return c.spoilsReply(w)
	case "about":
		return c.aboutReply(w)
	case "right":
		return c.rightReply(w)
	}
	return c.wholeLine(w)
}

// moved makes w the place where she stands, so that undo takes it back, and
// shows what is next there.
func (c *turn) moved(w where, note string) (State, Reply) {
	next := c.s
	next.Making, next.Last = w.m, nil
	c.reset, c.came = w.m.Row < c.s.Making.Row, true
	c.s = c.s.changed(next)
	if c.s.OnTable {
		// what has now been knitted may rule out the what-if
		if why := c.blockedByMaking(applied{in: c.s.Table}); why != "" {
			c.s = c.s.asBefore()
			note += " The what-if is off the table. " + why
		}
	}
	c.about = &c.s.Said
	return c.stepReply(note)
}

// unsure refuses a place and changes nothing.
func (c *turn) unsure(text string) (State, Reply) {
	return c.s, c.reply("unclear", text)
}

func (c *turn) forward(w where) (State, Reply) {
	if w.m.Over {
		return c.s, c.reply("step", c.overText(w))
	}
	if last := w.at == len(w.order)-1; last && w.lastPart() {
		w.m.Over = true
		next := c.s
		next.Making, next.Last = w.m, nil
		c.s = c.s.changed(next)
		return c.s, c.reply("step", c.overText(w))
	}
	return c.moved(w.next(), "")
}

func (c *turn) backward(w where) (State, Reply) {
	n := w.back()
	for i := 1; i < min(c.m.Move.Count, len(w.order)); i++ {
		n = n.back()
	}
	if n.m == w.m {
		return c.stepReply("(This is the first step.)")
	}
	return c.moved(n, "")
}

// finish takes a step as done that the line names ("the hem is hung").
func (c *turn) finish(w where, id string) (State, Reply) {
	i := w.index(id)
	switch {
	case i < 0 && id == "fold":
		return c.toFold(w)
	case i < 0 && id != "":
		return c.s, c.reply("step", "This plan has no such step; nothing is counted. You are at: "+c.whereText()+" *Repeat* shows it again.")
	case i < 0:
		return c.forward(w)
	case i < w.at && w.likeFront(id):
		return c.moved(w.past(), "")
	case i < w.at:
		return c.stepReply("(That lies behind you; you are here.)")
	case i == len(w.order)-1 && i > w.at+1:
		return c.unsure(fmt.Sprintf("That is the last step, %d, and there are others before it. You are at: %s If they are done say *step %d*.", i+1, c.whereText(), i+1))
	case i == len(w.order)-1:
		return c.forward(w.enter(i).atEnd())
	}
	next := w.enter(i).past()
	return c.moved(next, w.passed(i, w.rowsOf(next.at).from))
}

// jump begins at the named step: all before it is taken as done.
func (c *turn) jump(w where) (State, Reply) {
	i := w.index(c.m.Move.Step)
	if i < 0 && c.m.Move.Step == "fold" {
		return c.toFold(w)
	}
	if i < 0 {
		card, ok := c.book.Card("steps", c.m.Move.Step)
		if !ok {
			return c.onUnclear(listen.Problem{Code: "not-understood"})
		}
		if c.m.Move.Step == "front-hang" {
			return c.unsure("The front bands are not planned yet. " + c.frontNotYet(engine.FrontStitches))
		}
		return c.unsure(fmt.Sprintf("This plan has no step *%s*. You are at: %s", card.Fields["title"], c.whereText()))
	}
	return c.moved(w.enter(i), w.skipped(i))
}

// chooseWay takes the side from which the columns are worked.
func (c *turn) chooseWay(w where) (State, Reply) {
	way := c.m.Move.Way
	if way == "" {
		return c.stepReply("(" + strings.TrimSuffix(wayText(w.m.Way), ".") + "; *from the right* works as well.)")
	}
	if w.card().Fields["needles"] == "latch" && w.m.Done > 0 && way != cmp.Or(w.m.Way, fromLeft) {
		return c.unsure(fmt.Sprintf("%s done from the other side: finish as you began, or say *start from the latching* first.",
			answer.Count(w.m.Done, "column is", "columns are")))
	}
	w.m.Way = way
	return c.moved(w, "")
}
