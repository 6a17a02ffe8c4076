package dialog

import (
	"fmt"
	"strings"

	"foldrow/engine"
	"foldrow/rules"
)

// machineFit answers which class of machine suits the yarn or the gauge: for
// each class how a stitch sits on its needles. What the question brings serves
// this answer only.
func (c *turn) machineFit() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	low, high, of := c.gaugeToFit(a.in)
	if low.Sign() <= 0 {
		return c.s, c.reply("number", "Tell me the gauge (\"28 stitches in 10 cm\") or the yarn by its trade name (\"which machine for DK\") and I will say which bed suits it.")
	}
	card, _ := c.book.Key(engine.KeyMachine)
	lines := []string{fmt.Sprintf("For %s, by the width of a stitch over the needle pitch (0.6 to 0.85 is usual, common practice):", of), ""}
	var best []string
	for _, class := range card.Choices {
		in, _ := engine.Inputs{}.WithText(engine.KeyMachine, class.Value)
		pitch := c.book.Filled(in).Num(engine.NeedlePitch)
		lines = append(lines, "- "+c.bedLine(class, pitch, low, high))
		if c.sits(low, high, pitch) {
			best = append(best, class.Label)
		}
	}
	switch p := c.solve(a.in); {
	case len(best) == 0:
		lines = append(lines, "", "None sits as is usual; knit a swatch on the nearest.")
	case p.In.Has(engine.StitchGauge):
		if v, ok := valueJSON(p, engine.StitchPitch); ok {
			c.answer(engine.StitchPitch, v)
			lines = append(lines, "", fmt.Sprintf("Your bed of %s stands at %s.", c.voice().Value(p, engine.NeedlePitch), c.voice().Value(p, engine.StitchPitch)))
		}
	}
	return c.s, c.reply("number", strings.Join(lines, "\n"))
}

// gaugeToFit is the stitch gauge, or the two ends of a trade name's class, and
// what to call it.
func (c *turn) gaugeToFit(in engine.Inputs) (low, high engine.Num, of string) {
	t := c.book.Tables
	for _, y := range t.YarnNames {
		if y.Name == c.m.Name && y.Name != "" {
			class, ok := t.Class(y.Category)
			if !ok {
				break
			}
			if !class.HasLow {
				class.Low = class.High
			}
			return class.Low, class.High, fmt.Sprintf("%s, %s to %s (%s)", y.Name, trimNum(class.Low),
				c.voice().Figure(engine.StitchGauge, class.High.Float()), "the published yarn table")
		}
	}
	g := in.Num(engine.StitchGauge)
	of = c.voice().Figure(engine.StitchGauge, g.Float())
	var names []string
	for _, y := range t.YarnsForGauge(g) {
		names = append(names, y.Name)
	}
	if len(names) > 0 {
		of += " (" + strings.Join(names, " or ") + " in the published yarn table)"
	}
	return g, g, of
}

// bedLine is one class of bed with its ratio and what that means.
func (c *turn) bedLine(class rules.ChoiceCard, pitch, low, high engine.Num) string {
	a, b := engine.PitchOf(high, pitch), engine.PitchOf(low, pitch)
	ratio := fmt.Sprintf("%.2f", a.Float())
	if !a.Equal(b) {
		ratio += fmt.Sprintf(" to %.2f", b.Float())
	}
	verdict := "suits it"
	if !c.sits(low, high, pitch) {
		side, possible := engine.SuitsBed(a.Add(b).Div(engine.Int(2)))
		word := map[int]string{-1: "too coarse for it", 1: "too fine for it", 0: "at the edge of it"}[side]
		verdict = word
		if possible && side != 0 {
			verdict = "possible, but rather " + word
		}
	}
	return fmt.Sprintf("%s, %s: **%s**, %s", class.Label, c.voice().Figure(engine.NeedlePitch, pitch.Float()), ratio, verdict)
}

// sits: the middle of the gauges is within the usual span on that pitch.
func (c *turn) sits(low, high, pitch engine.Num) bool {
	middle := engine.PitchOf(high, pitch).Add(engine.PitchOf(low, pitch)).Div(engine.Int(2))
	side, _ := engine.SuitsBed(middle)
	return side == 0
}

// smallestNeck answers the smallest neck whose band passes a head.
func (c *turn) smallestNeck() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	in := c.filled(a.in)
	switch {
	case in.Garment == engine.Cardigan:
		return c.s, c.reply("backwards", "A cardigan opens in front, so any neck passes the head.")
	case !in.Has(engine.Head):
		c.wanted = engine.Head
		return c.s, c.reply("backwards", "Tell me the head with it, or whom it is for: *smallest neck that passes a 56 cm head*.")
	}
	p, ok := engine.SmallestNeck(in, in.Num(engine.Head))
	if !ok {
		return c.s, c.reply("backwards", c.notYet([]engine.Key{engine.HeadNeeded}))
	}
	v := c.voice()
	for _, k := range []engine.Key{engine.NeckResult, engine.BandStitches, engine.HeadOpening} {
		if f, ok := valueJSON(p, k); ok {
			c.answer(k, f)
		}
	}
	text := fmt.Sprintf("A head of %s needs %s. The smallest neck that opens so far is **%s**, %s: it opens to %s, and %s decides. With %d stitches it no longer passes.",
		v.Value(p, engine.Head), v.Value(p, engine.HeadNeeded), v.Both(p.NeckResult.Float()), v.Value(p, engine.BandStitches),
		v.Value(p, engine.HeadOpening), weakerEdge(p), p.Smaller.Stitches)
	text += " The stretch of rib and edge are estimates, so try it on. The plan is not changed; say *neck " + v.Len(p.NeckResult.Float()) + "* to set it."
	return c.s, c.reply("backwards", text)
}

// weakerEdge is which of the two edges decides how far the neck opens.
func weakerEdge(p *engine.Plan) string {
	switch {
	case p.EdgeIsTighter:
		return "the sewn-off edge"
	case p.Doubled:
		return "the rib at the fold"
	}
	return "the rib at the top"
}
