package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
	"foldrow/rules"
)

// yarnCount tells a yarn's thickness in another count.
func (c *turn) yarnCount() string {
	t := c.m.Thread
	tex, ok := engine.Tex(t.Count, t.Value, t.Plies)
	if !ok {
		return "That is no yarn count that I know. For example: *2/24 worsted count in metres per 100 g*."
	}
	metres, _ := engine.FromTex(tex, engine.MetresPer)
	c.answer(engine.YarnTex, round4(tex.Float()))
	c.answer(engine.YarnLength, round4(metres.Float()))
	to := t.To
	if to == "" {
		to = engine.MetresPer
	}
	value, _ := engine.FromTex(tex, to)
	if to != engine.MetresPer && to != engine.TexCount {
		c.answer("yarn_count", round4(value.Float()))
	}
	return answer.YarnCount(t.Count, t.Value, t.Plies, to, value, tex, metres)
}

// yarnVerdict says whether what is left is enough for everything.
func (c *turn) yarnVerdict(p *engine.Plan) string {
	state := p.AllYarnState()
	if state == engine.YarnUnknown {
		if p.In.Has(engine.YarnLeft) {
			return ""
		}
		return "\n\nTell me the metres in 100 g and the grams you have (\"350 m per 100 g, 60 g left\") and I will say whether it lasts."
	}
	word := map[engine.YarnState]string{engine.YarnEnough: "Yes, it lasts", engine.YarnTight: "It is tight", engine.YarnShort: "No, it will not last"}[state]
	return fmt.Sprintf("\n\n%s for all of it: a tenth more should be there, and you have %s.", word, c.voice().Value(p, engine.YarnLeft))
}

// lasts says whether the yarn left is enough for what is planned, "" where
// that is not known, or a caution says it.
func (c *turn) lasts(p *engine.Plan) string {
	all := p.AllYarnState()
	switch {
	case all == engine.YarnEnough:
		return "That is enough for the neckband and both front bands, with a tenth to spare."
	case all == engine.YarnUnknown && p.Yarn == engine.YarnEnough:
		return "That is enough for the band, with a tenth to spare." + neckbandOnly(p)
	}
	return ""
}

// yarnRight holds the yarn against the gauge: by the published yarn table, by
// the trade names of its length, and by the tightness factor.
func (c *turn) yarnRight() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	p := c.solve(a.in)
	gauge := p.In.Num(engine.StitchGauge)
	if gauge.Sign() <= 0 {
		return c.s, c.reply("number", "For that I need your gauge: *28 stitches and 40 rows in 10 cm*.")
	}
	v, t := c.voice(), c.book.Tables
	byGauge := t.YarnsForGauge(gauge)
	c.answer("yarn_classes", classNames(byGauge))
	parts := []string{v.YarnClasses(gauge, byGauge)}
	if p.YarnRate.Sign() <= 0 {
		parts = append(parts, "Tell me the yarn and I will hold it against that: *350 m per 100 g*, *Nm 2/30*, or a weighed swatch.")
	} else {
		c.answersOf(p, engine.YarnLength, engine.YarnTex, engine.Tightness)
		parts = append(parts, v.YarnNames(t, p.YarnRate, byGauge))
		if k, ok := p.Float(engine.Tightness); ok {
			parts = append(parts, answer.TightnessWords(k))
		}
	}
	return c.s, c.reply("number", strings.Join(parts, "\n\n"))
}

// yarnNamed says what a yarn of that trade name is knitted at and how long it
// runs, beside the swatch.
func (c *turn) yarnNamed(p *engine.Plan) (State, Reply) {
	t := c.book.Tables
	for _, y := range t.YarnNames {
		if y.Name != c.m.Name {
			continue
		}
		class, _ := t.Class(y.Category)
		c.answer("yarn_classes", classNames([]rules.YarnWeight{class}))
		c.wanted = engine.YarnLength
		return c.s, c.reply("number", c.voice().YarnNamed(y, class, p.In.Num(engine.StitchGauge)))
	}
	return c.yarnRight()
}

func classNames(list []rules.YarnWeight) []string {
	names := []string{}
	for _, y := range list {
		names = append(names, y.Name)
	}
	return names
}

// yarnAllows is the deepest band that the yarn left allows, rib by rib.
func (c *turn) yarnAllows() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	p := c.solve(a.in)
	if m := c.yarnMissing(p.In); m != "" {
		return c.s, c.reply("backwards", m)
	}
	rows := []string{"| rib | stitches | rows a layer | depth |", "| --- | --- | --- | --- |"}
	deepest := map[string]any{}
	for _, r := range []engine.Rib{{Knit: 1, Purl: 1}, {Knit: 2, Purl: 1}, {Knit: 2, Purl: 2}, engine.Plain()} {
		best, ok := engine.DeepestBand(c.filled(a.in.WithRib(r)), p.In.Num(engine.YarnLeft))
		if !ok {
			rows = append(rows, fmt.Sprintf("| %s | - | - | not three rows |", r))
			continue
		}
		deepest[r.String()] = round4(best.DepthResult.Float())
		rows = append(rows, fmt.Sprintf("| %s | %d | %d | %s |", r, best.BandStitches, best.LayerRows, c.voice().Len(best.DepthResult.Float())))
	}
	c.answer("deepest", deepest)
	share := c.frontShare(p)
	if len(deepest) == 0 {
		return c.s, c.reply("backwards", fmt.Sprintf("%s is not enough for even three rows a layer, with a tenth to spare.", c.voice().Value(p, engine.YarnLeft))+share)
	}
	text := fmt.Sprintf("From %s, at the high end of the estimate and with a tenth to spare, at most:\n\n", c.voice().Value(p, engine.YarnLeft)) + strings.Join(rows, "\n")
	return c.s, c.reply("backwards", text+"\n\n"+strings.TrimSpace(share+" The rib changes the count by a stitch or two only: the depth is what the yarn decides."))
}

// deeperThanAny answers where the yarn is enough for the deepest band that can
// be planned at all: then that is the limit, and the yarn is none.
func (c *turn) deeperThanAny(in engine.Inputs, most *engine.Plan) (Reply, bool) {
	card, _ := c.book.Key(engine.Depth)
	limit := card.Possible[1]
	if most.DepthResult.Less(limit) && most.LayerRows < engine.MaxRows {
		return Reply{}, false
	}
	p := most
	if !most.DepthResult.Less(limit) {
		p = engine.Solve(in.Without(engine.DepthRows).With(engine.Depth, limit))
	}
	c.answersOf(p, engine.DepthResult, engine.LayerRows, engine.BandYarnGrams)
	v := c.voice()
	return c.reply("backwards", fmt.Sprintf("%s last for more than any band: the limit is **%s deep, %s a layer**, the deepest that is planned here, and that takes about %s. The yarn does not decide it; usual are %s.%s",
		v.Value(most, engine.YarnLeft), v.Len(p.DepthResult.Float()), answer.Count(p.LayerRows, "row", "rows"), v.Value(p, engine.BandYarnGrams),
		c.span(engine.Depth, card.Usual), c.frontShare(p))), true
}

// yarnAfter is the grams that remain of the yarn left when all that is planned
// is knitted.
func (c *turn) yarnAfter(p *engine.Plan) (State, Reply) {
	if m := c.yarnMissing(p.In); m != "" {
		return c.s, c.reply("number", m)
	}
	k, what := engine.BandYarnGrams, "the neckband"
	if p.AllYarnState() != engine.YarnUnknown {
		k, what = engine.AllYarnGrams, "the neckband and both front bands"
	}
	needs, _ := p.Float(k)
	c.answersOf(p, k, engine.YarnLeft)
	have := p.In.Num(engine.YarnLeft).Float()
	c.answer("yarn_after", round4(have-needs))
	text := fmt.Sprintf("About **%s g** stay: %s less about %s for %s.", answer.Trim(have-needs, 0), c.voice().Value(p, engine.YarnLeft), c.voice().Value(p, k), what)
	if have < needs {
		text = fmt.Sprintf("None: %s takes about %s and you have %s.", what, c.voice().Value(p, k), c.voice().Value(p, engine.YarnLeft))
	}
	return c.s, c.reply("number", text+" An estimate; keep a tenth of what the work takes as a reserve."+neckbandOnly(p))
}

// neckbandOnly says that a cardigan's front bands are not counted in, "" where
// they are, or there are none; it opens with a space.
func neckbandOnly(p *engine.Plan) string {
	if p.In.Garment != engine.Cardigan || p.AllYarnState() != engine.YarnUnknown {
		return ""
	}
	return " That is for the neckband only: the front bands are not planned yet (*the front edge is ...* with your length)."
}

// yarnMissing asks for what the deepest band from the yarn left cannot be
// worked out without, "" where all is known.
func (c *turn) yarnMissing(in engine.Inputs) string {
	p := engine.Solve(in)
	var want []string
	if p.BandStitches == 0 {
		return c.notYet([]engine.Key{engine.BandStitches})
	}
	if p.YarnRate.Sign() <= 0 && !in.Has(engine.StitchWeight) {
		want = append(want, "how many metres are in 100 g (*350 m per 100 g*), or what a swatch weighs (*a swatch of 50 stitches and 60 rows weighs 9 g*)")
	}
	if !in.Has(engine.YarnLeft) {
		want = append(want, "how many grams are left (*25 g left*)")
	}
	if len(want) == 0 {
		return ""
	}
	return "For that I need " + strings.Join(want, ", and ") + "."
}

// frontShare says what the front bands take of the yarn before the neckband
// has any; it opens with a space, and is "" where none are planned.
func (c *turn) frontShare(p *engine.Plan) string {
	if p.Front == nil || p.AllYarnState() == engine.YarnUnknown {
		return ""
	}
	if g := c.voice().Value(p, engine.FrontYarnGrams); g != "" {
		return " Both front bands have their share first, about " + g + "."
	}
	return " Both front bands have their share first."
}

// tightness tells what a tightness factor means: the one asked about, or the
// plan's own.
func (c *turn) tightness(p *engine.Plan) (State, Reply) {
	k, ok := p.Float(engine.Tightness)
	if c.m.HasFig {
		k, ok = c.m.Figure.Float(), true
	}
	card, _ := c.book.Result(engine.Tightness)
	text := title(card.Meaning) + "."
	if !ok {
		return c.s, c.reply("number", text+" Yours needs the gauge and the yarn: *350 m per 100 g*, *Nm 2/30*, or a weighed swatch.")
	}
	if !c.m.HasFig {
		c.answersOf(p, engine.Tightness)
	}
	return c.s, c.reply("number", answer.TightnessWords(k)+" "+text)
}
