package dialog

import "foldrow/engine"

// caution is the text of a card of rules/cautions.md, nil where it is not
// there.
func (c *turn) caution(id string) []string {
	if card, ok := c.book.Card("cautions", id); ok {
		return []string{card.Text}
	}
	return nil
}

// known is a number of the plan that was said or has a default, 0 where not.
func (c *turn) known(k engine.Key) engine.Num {
	in := c.filled(c.base())
	if !in.Has(k) {
		return engine.Num{}
	}
	return in.Num(k)
}
