package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// foldReply is where the fold lies.
func (c *turn) foldReply(p *engine.Plan) (State, Reply) {
	if p.LayerRows == 0 {
		return c.s, c.reply("number", c.notYet([]engine.Key{engine.LayerRows}))
	}
	c.answer(engine.LayerRows, p.LayerRows)
	text := foldLies(p)
	if w, ok := c.atMachine(); ok && p.Doubled && !c.s.OnTable {
		switch left := p.LayerRows - w.m.Row; {
		case left > 0 && w.m.Row > 0:
			text += fmt.Sprintf(" %s knitted, %d to the fold.", title(rowsWord(w.m.Row)), left)
		case left == 0:
			text += " You are there."
		}
	}
	return c.s, c.reply("number", text)
}

// foldLies is where the fold of a band lies, in a sentence.
func foldLies(p *engine.Plan) string {
	switch {
	case !p.Doubled:
		return fmt.Sprintf("A single layer has no fold: it is %s and its edge.", rowsWord(p.LayerRows))
	case p.FoldRow > 0:
		return fmt.Sprintf("**Row %d** is the fold row, %s.", p.LayerRows+1, answer.DialNow(p.Tension()[p.LayerRows]))
	}
	return fmt.Sprintf("The fold lies between rows %d and %d.", p.LayerRows, p.LayerRows+1)
}

// foldHere answers whether the fold is at the row that is named, or at the one
// that comes now.
func (c *turn) foldHere(w where) (State, Reply) {
	p, row := w.whole, c.m.Move.Row
	if w.amongFronts() {
		return c.frontFold(w)
	}
	c.answer(engine.LayerRows, p.LayerRows)
	named := row > 0
	if !named {
		row = w.m.Row + 1
	}
	fold, is := p.LayerRows+1, ""
	switch {
	case !p.Doubled:
	case row == fold && p.FoldRow > 0:
		is = "Yes. "
	case row == fold && !named:
		is = "Yes, you are there. "
	case row == fold:
		is = fmt.Sprintf("Nearly: right before row %d. ", row)
	case row == fold-1 && p.FoldRow == 0:
		is = fmt.Sprintf("Right after row %d. ", row)
	case named || w.m.Row == 0:
		is = "No. "
	case row > fold:
		is = "No, it is behind you. "
	default:
		is = fmt.Sprintf("No, row %d comes now, the first of %d to the fold. ", row, fold-row)
		if row == fold-1 {
			is = fmt.Sprintf("No, row %d comes first. ", row)
		}
	}
	return c.s, c.reply("number", is+foldLies(p))
}

// frontFold is foldHere at the front bands, whose rows are counted by
// themselves.
func (c *turn) frontFold(w where) (State, Reply) {
	f := w.p.Front
	switch {
	case f.Layers < 2:
		return c.s, c.reply("number", "The front bands are a single layer and have no fold.")
	case f.FoldRow:
		return c.s, c.reply("number", fmt.Sprintf("**Row %d** is the front band's fold row; %s knitted.", f.LayerRows+1, rowsWord(w.m.Done)))
	}
	return c.s, c.reply("number", fmt.Sprintf("The front band's fold lies between rows %d and %d; %s knitted.", f.LayerRows, f.LayerRows+1, rowsWord(w.m.Done)))
}
