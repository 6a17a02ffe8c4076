package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// onAfter holds the finished band against the plan: what came out beside what
// was reckoned, a judgement, and the numbers for the next one. The measures
// are kept; what the edge tells of the rib becomes the plan's own factor.
// Measures are cm, nil where not said.
func (c *turn) onAfter() (State, Reply) {
	p := c.kept()
	neck, depth, edge, full := c.m.After.Neck, c.m.After.Depth, c.m.After.Edge, c.m.After.Full
	bare, doubt := c.bare(p)
	if doubt {
		return c.unsure(c.askFronts(p, *neck))
	}
	next := c.s
	var parts []string
	if neck != nil {
		next.Making.After.Neck, next.Making.After.Bare = neck.String(), bare
		parts = append(parts, c.afterNeck(p, *neck, bare))
	}
	if depth != nil {
		next.Making.After.Depth = depth.String()
		parts = append(parts, c.afterDepth(p, *depth))
	}
	if edge != nil {
		next.Making.After.Edge = edge.String()
	}
	if edge != nil || full != nil {
		parts = append(parts, c.afterEdge(p, edge, full, bare, &next))
	}
	next.Last = nil
	c.s = c.s.changed(next)
	kind := "step"
	if len(c.changes) > 0 {
		kind = "change"
	}
	return c.s, c.reply(kind, strings.Join(parts, "\n\n"))
}

// within is how far a measure may be out and still be as planned: 2 % for the
// tape and the fabric (common practice).
var within = engine.Frac(2, 100)

// beside is "planned 39.8 cm, came out 38 cm: 1.8 cm (5 %) less".
func (c *turn) beside(what string, planned, came engine.Num) (string, bool) {
	v := c.voice()
	diff := came.Sub(planned)
	text := fmt.Sprintf("**%s:** planned %s, came out %s", what, v.Len(planned.Float()), v.Len(came.Float()))
	if !within.Mul(planned).Less(diff.Abs()) {
		return text + ": as planned.", true
	}
	word := "more"
	if diff.Sign() < 0 {
		word = "less"
	}
	return text + fmt.Sprintf(": %s (%.0f %%) %s.", v.Len(diff.Abs().Float()), 100*diff.Abs().Div(planned).Float(), word), false
}

// afterNeck gives the band's own gauge, and the count for the next one.
func (c *turn) afterNeck(p *engine.Plan, neck engine.Num, bare bool) string {
	what, planned := "Neck at the join", p.NeckResult
	if bare {
		what, planned = "Knitted piece at the join, before the front bands", p.SeamWidth
	}
	text, fits := c.beside(what, planned, neck)
	neck = neck.Add(p.NeckResult.Sub(planned))
	if fits {
		return text + " The gauge holds for the next one."
	}
	g, ok := engine.GaugeFor(p.In.Without(engine.NeckBody).With(engine.Neck, neck), p.BandStitches)
	if !ok {
		return text
	}
	q := engine.Solve(p.In.With(engine.StitchGauge, g))
	return text + fmt.Sprintf(" So %d stitches were knitted at %s, not %s. For the same neck the next band takes **%d stitches**; say *%s* when you plan it. It is kept with this project.",
		p.BandStitches, c.voice().Figure(engine.StitchGauge, g.Float()), c.voice().Value(p, engine.StitchGauge), q.BandStitches, c.voice().Figure(engine.StitchGauge, g.Float()))
}

// afterDepth gives the rows as they came out, and how many the next one takes.
func (c *turn) afterDepth(p *engine.Plan, depth engine.Num) string {
	text, fits := c.beside("Depth", p.DepthResult, depth)
	if fits {
		return text + " The rows hold for the next one."
	}
	r := p.In.Num(engine.RowGauge).Mul(p.DepthResult).Div(depth)
	want := p.DepthResult
	if p.In.Has(engine.Depth) {
		want = p.In.Num(engine.Depth)
	}
	q := engine.Solve(p.In.Without(engine.DepthRows).With(engine.RowGauge, r).With(engine.Depth, want))
	return text + fmt.Sprintf(" So the rows came out at %s, not %s. For %s the next band takes **%s a layer**, not %d; say *%s* when you plan it. It is kept with this project.",
		c.voice().Figure(engine.RowGauge, r.Float()), c.voice().Value(p, engine.RowGauge), c.voice().Len(want.Float()),
		rowsWord(q.LayerRows), p.LayerRows, c.voice().Figure(engine.RowGauge, r.Float()))
}

// afterEdge gives the rib's own factors from the free edge and keeps them: they
// change no count, only what the next edge is reckoned to measure.
func (c *turn) afterEdge(p *engine.Plan, edge, full *engine.Num, bare bool, next *State) string {
	what, band := "Free edge", p.Overlap()
	if bare {
		what, band = "Free edge before the front bands", engine.Num{}
	}
	off := p.Overlap().Sub(band)
	relaxed := p.RelaxedCircumference.Sub(off)
	var parts []string
	if edge != nil {
		relaxed = *edge
		text, _ := c.beside(what+", at rest", p.RelaxedCircumference.Sub(off), *edge)
		parts = append(parts, text)
	}
	stretched := relaxed
	if full != nil {
		stretched = *full
		text, _ := c.beside(what+", stretched", p.StretchedCircumference.Sub(off), *full)
		parts = append(parts, text)
	}
	draw, stretch, ok := engine.RibFactors(p.FoldWidth, relaxed.Sub(band), stretched.Sub(band))
	if !ok || p.In.Rib.IsPlain() {
		return strings.Join(parts, " ")
	}
	if edge != nil && c.judge(engine.RibDraw, draw) != impossible {
		next.Said = next.Said.With(engine.RibDraw, draw)
		c.change(engine.RibDraw, next.Said)
		parts = append(parts, fmt.Sprintf("Your %s rib relaxes to **%s** of its plain width; that is now the plan's own figure.", p.In.Rib, answer.Trim(draw.Float(), 2)))
	}
	if full != nil && c.judge(engine.RibStretch, stretch) != impossible {
		next.Said = next.Said.With(engine.RibStretch, stretch)
		c.change(engine.RibStretch, next.Said)
		parts = append(parts, fmt.Sprintf("It stretches **%s times**; kept too.", answer.Trim(stretch.Float(), 2)))
	}
	return strings.Join(parts, " ")
}
