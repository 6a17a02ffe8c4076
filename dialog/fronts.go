package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// The blocks in which the front bands are told: one text for several results.
const (
	pickUpBlock = "pick-up"
	holeBlock   = "holes"
	buttonBlock = "button"
	bandBlock   = "band"
)

// blockOf is the block that tells of k, an input or a result; "" where k is
// told by a line of its own.
func blockOf(k engine.Key) string {
	switch k {
	case engine.FrontStitches, engine.FrontRatio, engine.FrontEdge, engine.EdgeRows,
		engine.FrontCount, engine.FrontGauge, engine.NeckbandEnd, engine.KeyFrontRib:
		return pickUpBlock
	case engine.HolePositions, engine.HoleNeedles, engine.HoleGaps, engine.Holes, engine.HoleSpacing, engine.HoleStitches, engine.HoleMargin:
		return holeBlock
	case engine.HoleLength, engine.OverlapLow, engine.OverlapHigh, engine.Button:
		return buttonBlock
	case engine.FrontLayerRows, engine.FrontTotalRows, engine.FrontRowGauge, engine.FrontLayers:
		return bandBlock
	}
	return ""
}

// frontText tells the blocks that keys belong to, once each, and notes their
// numbers as answers. It is "" where the plan has none of them.
func (c *turn) frontText(p *engine.Plan, keys []engine.Key) string {
	var told, parts []string
	for _, k := range keys {
		b := blockOf(k)
		if b == "" || p.Front == nil || listed(told, b) {
			continue
		}
		told = append(told, b)
		if s := c.frontBlock(p, b); s != "" {
			parts = append(parts, s)
		}
	}
	return strings.Join(parts, "\n\n")
}

func listed(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

func (c *turn) frontBlock(p *engine.Plan, block string) string {
	v := c.voice()
	_, counted := p.Value(engine.FrontStitches)
	switch {
	case block == pickUpBlock && counted:
		c.answersOf(p, engine.FrontStitches, engine.FrontRatio, engine.FrontRatioError, engine.FrontLength)
		return strings.TrimSpace(v.PickUp(p) + "\n\n" + c.frontOpen(p))
	case block == holeBlock && p.Front.HasHoles():
		c.answersOf(p, engine.Holes, engine.HolePositions, engine.HoleGaps, engine.HoleDistance, engine.HoleNeedles, engine.HoleRows)
		c.also("buttons-children")
		return v.Buttonholes(p, c.told(p))
	case block == holeBlock && p.Front.Fault != nil:
		for _, w := range p.Warnings() {
			if w.Code == engine.HolesTooMany {
				return v.Warning(w)
			}
		}
	case block == buttonBlock && p.Front.HasButton():
		c.answersOf(p, engine.HoleLength, engine.OverlapLow, engine.OverlapHigh)
		c.also("buttons-children")
		return v.ButtonFit(p)
	case block == bandBlock:
		c.answersOf(p, engine.FrontLayerRows, engine.FrontTotalRows, engine.FrontWidth)
		return v.FrontBand(p)
	}
	return ""
}

// told is what of p was said rather than assumed: the inputs that do not
// stand as their defaults do.
func (c *turn) told(p *engine.Plan) engine.Inputs {
	in := p.In
	for _, k := range engine.InputKeys() {
		if card, ok := c.book.Key(k); ok && card.HasDefault && in.Num(k).Equal(card.Default) && !c.base().Has(k) {
			in = in.Without(k)
		}
	}
	return in
}

// answersOf notes the values under keys that the plan has.
func (c *turn) answersOf(p *engine.Plan, keys ...engine.Key) {
	for _, k := range keys {
		if v, ok := valueJSON(p, k); ok {
			c.answer(k, v)
		}
	}
}

// also adds a caution of rules/cautions.md to the reply, once.
func (c *turn) also(id string) {
	for _, text := range c.caution(id) {
		if !listed(c.more, text) {
			c.more = append(c.more, text)
		}
	}
}

// frontRatio is the ratio by gauge alone, where no edge was said.
func (c *turn) frontRatio() (string, bool) {
	g, r := c.known(engine.StitchGauge), c.known(engine.RowGauge)
	if g.Sign() <= 0 || r.Sign() <= 0 {
		return "", false
	}
	of, every := engine.BestFraction(g.Div(r), 10)
	c.answer(engine.FrontRatio, fmt.Sprintf("%d of %d", of, every))
	return fmt.Sprintf("Pick up **%d of every %d rows**: stitch gauge over row gauge is %s. Say the length of the edge (*the front edge is 52 cm*) and I will give the count and the map.",
		of, every, answer.Decimal(g.Div(r).Float(), 3)), true
}

// frontNotYet says what is missing before k of the front bands can be known.
func (c *turn) frontNotYet(k engine.Key) string {
	p := c.plan()
	_, counted := p.Value(engine.FrontStitches)
	gauged := c.known(engine.StitchGauge).Sign() > 0
	switch blockOf(k) {
	case holeBlock:
		if !counted {
			return "For the buttonholes I need the stitches of the band first: the edge (*the front edge is 52 cm*) or your own count (*96 stitches on the front band*)."
		}
		return "Tell me how many: *seven buttonholes*, or *buttons 8 cm apart*."
	case buttonBlock:
		return fmt.Sprintf("The fronts overlap by one front band, %s here. What a button asks for depends on its size. Tell me the button: *20 mm buttons*.", c.voice().Value(p, engine.FrontBand))
	}
	switch {
	case k == engine.FrontYarn || k == engine.FrontYarnGrams || counted:
		return fmt.Sprintf("The %s is not known yet. Tell the edge (*the front edge is 52 cm*), the gauge, and for grams the metres in 100 g.", c.voice().Label(k))
	case !gauged:
		return "For that I need the stitch gauge, and the edge: *the front edge is 52 cm*."
	}
	c.wanted = engine.FrontEdge
	return "For that I need the edge: *the front edge is 52 cm*, or *208 rows along the edge*."
}

// evenMargin: the margin nearest to the standing one that makes all gaps equal.
func (c *turn) evenMargin() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	p := c.solve(a.in)
	if !p.Front.HasHoles() {
		return c.s, c.reply("backwards", c.frontNotYet(engine.Holes))
	}
	s := p.Front.Spec
	m, ok := engine.EvenMargin(s)
	if !ok {
		return c.s, c.reply("backwards", fmt.Sprintf("No margin does: %d stitches less %s of %d leave an odd number for %d gaps whatever the margins. One stitch more or fewer on the band changes that.",
			s.Stitches, answer.Count(s.Holes, "hole", "holes"), s.Size, s.Holes-1))
	}
	c.answer(engine.HoleMargin, m)
	with := c.solve(a.in.With(engine.HoleMargin, engine.Int(int64(m))))
	c.answersOf(with, engine.HoleGap)
	text := fmt.Sprintf("Margins of **%s** make the %d gaps even: %s each.", answer.Count(m, "stitch", "stitches"), s.Holes-1,
		answer.Count(with.Front.Holes.Gap.Floor(), "stitch", "stitches"))
	if m != s.Start {
		text += fmt.Sprintf(" The plan is not changed; say *margins of %d* to set it.", m)
	}
	return c.s, c.reply("backwards", text)
}

// asksFronts reports whether all keys are about the front bands.
func asksFronts(keys []engine.Key) bool {
	for _, k := range keys {
		if !engine.AboutFronts(k) {
			return false
		}
	}
	return len(keys) > 0
}

// frontChange is what a change of the front bands does besides what its own
// answer tells: where the holes go, and what is now to be heard.
func (c *turn) frontChange(before, after *engine.Plan, keys []engine.Key) string {
	own := true
	for _, k := range keys {
		own = own && (blockOf(k) == holeBlock || !after.Front.HasHoles() || !before.Front.HasHoles())
	}
	if !own {
		return c.voice().Differences(before, after)
	}
	return strings.TrimSpace(answer.Cautioned(answer.NewCautions(c.voice().Cautions(before), c.voice().Cautions(after))))
}

// frontOpen says that a count of the front band does not close in its rib, or
// does not fit the bed, "" where neither is so.
func (c *turn) frontOpen(p *engine.Plan) string {
	n := p.In.Int(engine.FrontCount)
	down, up, closes := p.FrontClosing(n)
	text := ""
	if n > 0 && !closes {
		text = fmt.Sprintf("%d does not close the front band's %s rib: it closes on %d and %d.", n, p.FrontRib(), down, up)
	}
	return text
}
