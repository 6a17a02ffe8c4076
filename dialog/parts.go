package dialog

import "foldrow/engine"

// known is a number of the plan that was said or has a default, 0 where not.
func (c *turn) known(k engine.Key) engine.Num {
	in := c.filled(c.base())
	if !in.Has(k) {
		return engine.Num{}
	}
	return in.Num(k)
}
