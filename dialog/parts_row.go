package dialog

import (
	"fmt"

	"foldrow/engine"
)

// rowSpec is what a colour row is judged by, from the plan.
func (c *turn) rowSpec() engine.RowSpec {
	s := engine.RowSpec{Gauge: c.partGauge(c.m.Parts), Loop: c.known(engine.RowYarn)}
	if l := c.m.Parts.Length; l.Sign() > 0 && l.Less(engine.Int(20)) {
		s.LimitLength = l
	}
	return s
}

// colourRow is the card of one colour row.
func (c *turn) colourRow() (string, []string) {
	p := c.m.Parts
	switch n := p.Stitches; {
	case len(p.Pattern) == 0:
		return "For a row card I need the row. For example: *contrast every fourth over 105 stitches*, or *x..x.. over 105*, x being contrast.", nil
	case n == 0:
		return "Over how many stitches does that row run? For example: *contrast every fourth over 105 stitches*.", nil
	case n < len(p.Pattern):
		return fmt.Sprintf("One repeat is %d stitches, more than the %d of the row. The least that works is %d.", len(p.Pattern), n, len(p.Pattern)), nil
	}
	n, length := p.Stitches, len(p.Pattern)
	if bed := c.known(engine.BedNeedles).Floor(); n > bed {
		if bed < length {
			return fmt.Sprintf("One repeat of %d stitches is wider than your %d needles.", length, bed), nil
		}
		return fmt.Sprintf("%d stitches do not fit your %d needles at once. Say the stitches of one piece: with whole repeats of %d at most %d.", n, bed, length, bed/length*length), nil
	}
	row, balanced := engine.Tile(p.Pattern, n, p.Anchor)
	card := engine.Row(row, c.rowSpec())
	c.answer("row_needles", append(names(card.Left, n), names(card.Right, n)...))
	c.answer("main_stitches", card.Main)
	c.answer("contrast_stitches", card.Contrast)
	c.answer("float_longest", max(card.LongestMain.Stitches, card.LongestContrast.Stitches))
	c.answer("float_limit", card.Limit)
	if card.Width.Sign() > 0 {
		c.answer("float_longest_cm", round4(max(card.LongestMain.Length.Float(), card.LongestContrast.Length.Float())))
		c.answer("main_yarn", round4(card.MainYarn.Float()))
		c.answer("contrast_yarn", round4(card.ContrastYarn.Float()))
	}
	var cautions []string
	if len(card.Over) > 0 {
		cautions = c.caution("loose-floats")
	}
	return c.voice().RowCard(card, p.Anchor, n, length, balanced, cautions), cautions
}

// names are the needles of columns.
func names(cols []int, n int) []string {
	out := make([]string, len(cols))
	for i, col := range cols {
		out[i] = engine.NeedleName(col, n)
	}
	return out
}

// floatLimit is the longest float that is left alone.
func (c *turn) floatLimit() (string, []string) {
	spec := c.rowSpec()
	card := engine.Row(nil, spec)
	c.answer("float_limit", card.Limit)
	cautions := c.caution("loose-floats")
	return c.voice().FloatLimit(card.Limit, spec, cautions), cautions
}
