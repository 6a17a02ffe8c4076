package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// onBackwards answers a question that brings its own value, which serves this
// answer only.
func (c *turn) onBackwards() (State, Reply) {
	switch c.m.Topic {
	case "deepest":
		return c.deepest()
	case "longest":
		return c.longest()
	case "gauge":
		return c.gaugeSpan()
	case "smallest-neck":
		return c.smallestNeck()
	case "largest-button":
		return c.largestButton()
	case "even-margin":
		return c.evenMargin()
	case "fewest", "first":
		return c.yokeBackwards()
	}
	var plain []listen.Set
	stitches := 0
	for _, s := range c.m.Sets {
		if s.Key == engine.BandStitches {
			if stitches = s.Value.Floor(); stitches <= 0 {
				return c.onUnclear(listen.Problem{Code: "span", Key: s.Key, Low: s.Value})
			}
			continue
		}
		plain = append(plain, s)
	}
	a := c.apply(c.base(), plain)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	if stitches > 0 && hasKey(c.m.Keys, engine.KeyRib) {
		return c.ribsFor(a.in, stitches)
	}
	if stitches == 0 && hasKey(c.m.Keys, engine.StitchGauge) && hasKey(a.keys, engine.Neck) {
		stitches = c.plan().BandStitches // "what gauge gives neck 42"
	}
	if stitches > 0 {
		if next, r, ok := c.fromStitches(a.in, stitches); ok {
			return next, r
		}
	}
	return c.forValues(a)
}

// fromStitches: the neck, or the gauge, that so many stitches give.
func (c *turn) fromStitches(in engine.Inputs, n int) (State, Reply, bool) {
	full := c.filled(in)
	down, up, closes := engine.Closing(full, n)
	note := ""
	if !closes && full.Rib.IsSet() {
		note = fmt.Sprintf(" %d does not close a %s rib; %d and %d do.", n, full.Rib, down, up)
	}
	if hasKey(c.m.Keys, engine.StitchGauge) {
		g, ok := engine.GaugeFor(full, n)
		if !ok {
			return c.s, Reply{}, false
		}
		if c.judge(engine.StitchGauge, g) == impossible {
			note += " " + c.beyond(engine.StitchGauge)
		}
		c.answer(engine.StitchGauge, round4(g.Float()))
		return c.s, c.reply("backwards", fmt.Sprintf("%d stitches make a neck of %s at **%s**.%s", n, c.voice().Value(engine.Solve(full), engine.Neck), c.voice().Figure(engine.StitchGauge, g.Float()), note)), true
	}
	neck, ok := engine.NeckOf(full, n)
	if !ok {
		return c.s, Reply{}, false
	}
	c.answer(engine.NeckResult, round4(neck.Float()))
	if c.judge(engine.Neck, neck) == impossible {
		note += " " + c.beyond(engine.Neck)
	} else if say, ok := c.neckThatGives(full, neck, n); ok && closes && n != c.plan().BandStitches && c.open(c.s) == "" {
		note += fmt.Sprintf(" Say *neck %s* to take them.", c.voice().Exact(say, c.voice().Unit))
	}
	return c.s, c.reply("backwards", fmt.Sprintf("%d stitches give a neck of **%s**.%s", n, c.voice().Both(neck.Float()), note)), true
}

// neckThatGives is a neck that is easy to say and gives n stitches; near is
// the exact one. ok is false where only an odd figure would do.
func (c *turn) neckThatGives(full engine.Inputs, near engine.Num, n int) (engine.Num, bool) {
	neck := c.easy(near, engine.Frac(1, 10), engine.Frac(1, 8))
	return neck, engine.Solve(full.Without(engine.NeckBody).With(engine.Neck, neck)).BandStitches == n
}

// easy is a length in cm rounded to a step that is easy to say, in cm or, for
// a knitter in inches, in inches.
func (c *turn) easy(length, cm, in engine.Num) engine.Num {
	step := cm
	if c.voice().Unit == "in" {
		step = in.Mul(engine.Frac(254, 100))
	}
	return engine.Int(int64(length.Div(step).Round())).Mul(step)
}

// beyond says that a value which came out of a question could not be planned.
func (c *turn) beyond(k engine.Key) string {
	card, _ := c.book.Key(k)
	return fmt.Sprintf("No plan goes so far: the %s can be %s.", card.Label, c.span(k, card.Possible))
}

// ribsFor lists the ribs that close symmetrically on n stitches with the edge
// stitches as they stand.
func (c *turn) ribsFor(in engine.Inputs, n int) (State, Reply) {
	var fit []string
	for _, card := range c.book.Ribs {
		if card.Rib.IsPlain() {
			continue
		}
		if _, _, closes := engine.Closing(c.filled(in.WithRib(card.Rib)), n); closes {
			fit = append(fit, card.Rib.String())
		}
	}
	c.answer(engine.KeyRib, fit)
	edge := answer.Count(c.filled(in).Int(engine.EdgeStitches), "edge stitch", "edge stitches")
	text := fmt.Sprintf("On **%d stitches** with %s at each end these ribs close the same at both ends: **%s**. Plain closes on any count.", n, edge, strings.Join(fit, ", "))
	if len(fit) == 0 {
		text = fmt.Sprintf("No rib that I know closes on %d stitches with %s at each end. Plain closes on any count; another count of edge stitches may help.", n, edge)
	}
	return c.s, c.reply("backwards", text)
}

// forValues answers the asked keys from a plan with the values put in.
func (c *turn) forValues(a applied) (State, Reply) {
	p := c.solve(a.in)
	var lines []string
	block := c.frontText(p, c.m.Keys)
	for _, k := range c.m.Keys {
		if hasKey(a.keys, k) || block != "" && blockOf(k) != "" {
			continue
		}
		if r := resultOf(k); r != "" {
			k = r
		}
		v, ok := valueJSON(p, k)
		if !ok {
			continue
		}
		c.answer(k, v)
		lines = append(lines, fmt.Sprintf("%s: **%s**.", title(c.voice().Label(k)), c.voice().Value(p, k)))
	}
	if block == "" && len(lines) == 0 && !asksFronts(c.m.Keys) {
		for _, k := range []engine.Key{engine.BandStitches, engine.NeckResult, engine.DepthResult} {
			if v, ok := valueJSON(p, k); ok {
				c.answer(k, v)
			}
		}
		if short := c.voice().Short(p); short != "" {
			lines = append(lines, title(short)+".")
		}
	}
	if block == "" && len(lines) == 0 {
		return c.s, c.reply("backwards", c.notYet(c.m.Keys))
	}
	var told []string
	for _, k := range a.keys {
		name := answer.Setting(k, p.In.Int(k))
		if name == "" || !engine.IsNumber(k) {
			name = c.voice().Label(k) + " " + c.voice().Value(p, k)
		}
		told = append(told, name)
	}
	text := "With " + strings.Join(told, ", ") + ":"
	for _, l := range lines {
		text += " " + l
	}
	if block != "" {
		text += "\n\n" + block
	}
	text += c.headWords(p, a.keys)
	if c.open(c.s) == "" && !c.stands(a) {
		text += "\n\nThe plan is not changed; say *" + strings.Join(told, ", ") + "* to set it."
	}
	return c.s, c.reply("backwards", text)
}

// stands reports whether all that the question brought is what stands already.
func (c *turn) stands(a applied) bool {
	for _, k := range a.keys {
		if !c.base().Has(k) || !a.in.Same(c.base(), k) {
			return false
		}
	}
	return true
}

// headWords says whether the opening passes the head that was asked about.
func (c *turn) headWords(p *engine.Plan, keys []engine.Key) string {
	if !hasKey(keys, engine.Head) && !hasKey(keys, engine.KeyWearer) {
		return ""
	}
	passes, ok := p.HeadPasses()
	switch {
	case !ok:
		return " A cardigan opens in front, so nothing has to pass the head."
	}
	need, _ := p.HeadNeeds()
	low, _, spread := p.Spread(engine.HeadOpening, c.voice().Spans(p))
	switch {
	case passes && spread && low < need.Float():
		return " It passes by the estimate, which is wide: try it on before the ends are closed. " + title(weakerEdge(p)) + " is the weaker edge."
	case passes:
		return " It passes; " + weakerEdge(p) + " is the weaker edge."
	}
	return fmt.Sprintf(" It does not pass: %s is wanted, and %s is the weaker edge. A slit of %s would let it through.",
		c.voice().Len(need.Float()), weakerEdge(p), c.voice().Slit(p.SlitExact.Float()))
}

// resultOf is the result that answers a question about an input.
func resultOf(k engine.Key) engine.Key {
	switch k {
	case engine.Neck, engine.NeckBody:
		return engine.NeckResult
	case engine.Depth:
		return engine.DepthResult
	case engine.DepthRows:
		return engine.LayerRows
	case engine.Head:
		return engine.HeadOpening
	}
	return ""
}

// deepest: the deepest band that the yarn left allows.
func (c *turn) deepest() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	in := c.filled(a.in)
	if s := c.yarnMissing(in); s != "" {
		return c.s, c.reply("backwards", s)
	}
	p, ok := engine.DeepestBand(in, in.Num(engine.YarnLeft))
	if !ok {
		return c.s, c.reply("backwards", c.voice().Value(c.solve(a.in), engine.YarnLeft)+" is not enough for even three rows a layer, with a tenth to spare."+c.frontShare(c.solve(a.in)))
	}
	if r, ok := c.deeperThanAny(in, p); ok {
		return c.s, r
	}
	for _, k := range []engine.Key{engine.DepthResult, engine.LayerRows} {
		v, _ := valueJSON(p, k)
		c.answer(k, v)
	}
	return c.s, c.reply("backwards", fmt.Sprintf("From %s: at most **%s a layer, %s deep**, counted at the high end of the estimate and with a tenth to spare.",
		c.voice().Value(p, engine.YarnLeft), answer.Count(p.LayerRows, "row", "rows"), c.voice().Len(p.DepthResult.Float()))+c.frontShare(p))
}

// longest: the longest neck that the bed takes in one piece.
func (c *turn) longest() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	p, ok := engine.LongestNeck(c.filled(a.in))
	if !ok {
		return c.s, c.reply("backwards", c.notYet([]engine.Key{engine.NeckResult}))
	}
	for _, k := range []engine.Key{engine.NeckResult, engine.BandStitches} {
		v, _ := valueJSON(p, k)
		c.answer(k, v)
	}
	return c.s, c.reply("backwards", fmt.Sprintf("Your %s hold at most **%d stitches, a neck of %s**.",
		c.voice().Value(p, engine.BedNeedles), p.BandStitches, c.voice().Both(p.NeckResult.Float())))
}

// gaugeSpan: the loosest and tightest gauge for which the count still holds.
func (c *turn) gaugeSpan() (State, Reply) {
	in := c.filled(c.base())
	low, high, ok := engine.GaugeSpan(in)
	if !ok {
		return c.s, c.reply("backwards", c.notYet([]engine.Key{engine.BandStitches}))
	}
	p := engine.Solve(in)
	c.answer(engine.StitchGauge, []float64{round4(low.Float()), round4(high.Float())})
	return c.s, c.reply("backwards", fmt.Sprintf("%d stitches stay right from **%s** to just under **%s**.", p.BandStitches,
		c.voice().Figure(engine.StitchGauge, low.Float()), c.voice().Figure(engine.StitchGauge, high.Float())))
}
