package dialog

import (
	"fmt"

	"foldrow/engine"
)

// yokeTooSmall is why the band cannot be hung from the yoke, with what can be
// said about it; "" where it can, and where it hangs already.
func (c *turn) yokeTooSmall(p *engine.Plan) string {
	waiting, _, ok := p.Waiting()
	if !ok || p.FitsYoke {
		return ""
	}
	if w, making := c.atMachine(); making && w.at > w.index("hang-again") {
		return ""
	}
	if mv := c.m.Move.What; mv == "row" || mv == "done" || mv == "latched" {
		return "" // told from a band that hangs
	}
	text := fmt.Sprintf("%d stitches on the yoke are fewer than the band's %d, and hanging again can only take stitches away, so there is nothing to make yet. Count them again and say the number, for example *%d on the yoke*",
		waiting, p.BandStitches, p.BandStitches)
	if n := p.YokeChoice.Stitches; n > 0 {
		neck := c.voice().Len(p.YokeChoice.Neck.Float())
		text += fmt.Sprintf("; or take %d, the most that the yoke fills: *neck %s*", n, neck)
	}
	return text + "; or give the last stage of the yoke more stitches."
}
