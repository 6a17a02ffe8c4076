package dialog

import (
	"fmt"

	"foldrow/engine"
)

// bare tells whether the measures of a line are of the knitted piece, before
// the front bands and their overlap: as it was said, else as the neck lies
// near the one or the other, else by where she stands. doubt is a neck near
// neither, where a guess would turn the overlap into an error of the gauge.
func (c *turn) bare(p *engine.Plan) (bare, doubt bool) {
	neck, said := c.m.After.Neck, c.m.After.Fronts
	switch {
	case p.Overlap().Sign() == 0:
		return false, false
	case said != "":
		return said == "off", false
	case neck == nil:
		return c.beforeFronts(), false
	}
	open, closed := near(p.SeamWidth, *neck), near(p.NeckResult, *neck)
	if open != closed {
		return open, false
	}
	return c.beforeFronts(), !open
}

func near(planned, came engine.Num) bool {
	return !within.Mul(planned).Less(came.Sub(planned).Abs())
}

// beforeFronts: she stands at a step before the front bands.
func (c *turn) beforeFronts() bool {
	w, ok := c.atMachine()
	return ok && !w.m.Over && w.at <= w.index("bands-next")
}

// askFronts asks which of the two was measured.
func (c *turn) askFronts(p *engine.Plan, neck engine.Num) string {
	v := c.voice()
	came := v.Len(neck.Float())
	return fmt.Sprintf("Is %s the knitted piece, end to end, or the neck closed with the front bands? They overlap by %s, so the piece is planned at %s and the closed neck at %s. "+
		"Say *it measures %s without the front bands* or *it measures %s with the front bands*; nothing is kept yet.",
		came, v.Len(p.Overlap().Float()), v.Len(p.SeamWidth.Float()), v.Len(p.NeckResult.Float()), came, came)
}
