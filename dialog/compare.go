package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// onCompare sets two or more choices side by side; with one choice the other
// is the plan as it stands. Nothing is changed.
func (c *turn) onCompare() (State, Reply) {
	choices := c.m.Choices
	if len(choices) == 0 && hasKey(c.m.Keys, engine.KeyRib) {
		for _, r := range []engine.Rib{{Knit: 1, Purl: 1}, {Knit: 2, Purl: 1}, {Knit: 2, Purl: 2}} {
			choices = append(choices, []listen.Set{{Key: engine.KeyRib, Rib: r}})
		}
	}
	if c.m.Topic == "with-without" {
		choices = c.withAndWithout(c.m.Keys[0])
	}
	var sides []answer.Side
	if len(choices) == 1 {
		sides = append(sides, c.side(c.plan(), choices[0]))
	}
	around := c.apply(c.base(), c.m.Sets)
	if around.problem.Code != "" {
		return c.onUnclear(around.problem)
	}
	for _, sets := range choices {
		a := c.apply(around.in, sets)
		if a.problem.Code != "" {
			return c.onUnclear(a.problem)
		}
		sides = append(sides, c.side(c.solve(a.in), sets))
	}
	if c.m.Topic == "with-without" {
		card, _ := c.book.Key(c.m.Keys[0])
		sides[1].Good = c.voice().Fill(card.Why+" "+card.UsualText, sides[1].Plan)
	}
	if len(sides) < 2 {
		return c.s, c.reply("compare", "Compare what with what? For example: *compare 1x1 and 2x2*.")
	}
	if q := c.open(c.s); q != "" && q != "keep" && sides[0].Plan.BandStitches == 0 {
		return c.s, c.reply("compare", c.goodFor(sides))
	}
	c.answerSides(sides)
	return c.s, c.reply("compare", c.voice().Compare(sides)+c.bestOf(sides)+c.choiceNote(sides)+"\n\nNothing is changed; say the one you want to take it.")
}

// bestOf says which side does best in what was asked for, "" where nothing
// was.
func (c *turn) bestOf(sides []answer.Side) string {
	key, sign, told := engine.ColumnCount, -1.0, "**%s** has the fewest columns to latch, and that is most of the work: %s."
	switch c.m.Topic {
	case "least-work":
	case "most-stretch":
		key, sign, told = engine.RibStretch, 1, "**%s** stretches furthest for its width: to %s its width at rest."
	case "least-stretch":
		key, sign, told = engine.RibStretch, -1, "**%s** is the firmest of them: it stretches to %s its width at rest."
	default:
		return ""
	}
	if _, opens := sides[0].Plan.Float(engine.HeadOpening); opens && c.m.Topic == "most-stretch" {
		return c.widestOpen(sides)
	}
	best, most := -1, 0.0
	for i, s := range sides {
		if f, ok := s.Plan.Float(key); ok && (best < 0 || sign*f > most) {
			best, most = i, sign*f
		}
	}
	if best < 0 {
		return ""
	}
	return "\n\n" + fmt.Sprintf(told, sides[best].Name, c.voice().Value(sides[best].Plan, key))
}

// widestOpen says which side opens furthest for the head, and whether each
// passes the one that is known.
func (c *turn) widestOpen(sides []answer.Side) string {
	best, most := 0, 0.0
	var passing []string
	for i, s := range sides {
		if f, ok := s.Plan.Float(engine.HeadOpening); ok && f > most {
			best, most = i, f
		}
		if passes, ok := s.Plan.HeadPasses(); ok && passes {
			passing = append(passing, s.Name)
		}
	}
	text := fmt.Sprintf("\n\n**%s** opens furthest for a head: %s.", sides[best].Name, c.voice().Value(sides[best].Plan, engine.HeadOpening))
	need, known := sides[best].Plan.HeadNeeds()
	switch {
	case !known:
		return text + " Say the head girth, or whom it is for, and I can tell which pass."
	case len(passing) == 0:
		return text + fmt.Sprintf(" None of them reaches the %s that the head asks for: a wider neck or a slit is needed with each.", c.voice().Len(need.Float()))
	case len(passing) == len(sides):
		return text + fmt.Sprintf(" All of them reach the %s that the head asks for.", c.voice().Len(need.Float()))
	}
	return text + fmt.Sprintf(" The head asks for %s: only %s reach it.", c.voice().Len(need.Float()), strings.Join(passing, ", "))
}

// side is one choice, named by all that it sets.
func (c *turn) side(p *engine.Plan, sets []listen.Set) answer.Side {
	s := answer.Side{Plan: p}
	var names []string
	for _, set := range sets {
		name := c.voice().Value(p, set.Key)
		if strings.Trim(name, "0123456789.") == "" { // "2" alone says nothing
			name = c.voice().Echo(set.Key, p.In.Num(set.Key), name)
		}
		names = append(names, name)
		if set.Key == engine.KeyRib {
			s.Good = "good for " + c.book.RibFactors(p.In.Rib).GoodFor
		}
		if good := c.choiceGood(set.Key, set.Text); good != "" {
			s.Good, s.Brings = good+c.heatCautions(set.Key, p.In), engine.WithoutKey(presupposes(set.Key), set.Key)
		}
	}
	s.Name = strings.Join(names, ", ")
	return s
}

// goodFor is a comparison before there are numbers: what each is good for.
func (c *turn) goodFor(sides []answer.Side) string {
	text := ""
	for _, s := range sides {
		if s.Good != "" {
			text += "**" + s.Name + ":** " + strings.TrimSuffix(s.Good, ".") + ".\n\n"
		}
	}
	return text + "Ask for the numbers again once the questions are answered."
}

// shakeStep is by how much each estimate or measurement is shaken where no
// amount was said.
func shakeStep(k engine.Key) engine.Num {
	switch k {
	case engine.StitchGauge, engine.RowGauge:
		return engine.Frac(1, 2)
	case engine.RibDraw, engine.RibStretch, engine.EdgeStretch:
		return engine.Frac(5, 100)
	case engine.Neck, engine.Depth, engine.Head, engine.NeckBody:
		return engine.Int(1)
	case engine.NumberEffect, engine.ClickEffect:
		return engine.Int(1)
	}
	return engine.Int(1)
}

// onShake shows what a small error does to neck, depth and yarn: the same
// stitches and rows, knitted at the other gauge.
func (c *turn) onShake() (State, Reply) {
	if c.m.Topic == "swatch" {
		return c.swatch()
	}
	k := engine.StitchGauge
	for i := len(c.m.Keys) - 1; i >= 0; i-- {
		// "how sensitive is the neck to the gauge": what may be out is the
		// measured thing, not what comes of it
		if x := c.m.Keys[i]; engine.IsNumber(x) && (k == engine.StitchGauge && !hasKey(c.m.Keys, k) || x == engine.RowGauge || x == engine.StitchGauge) {
			k = x
		}
	}
	p := c.plan()
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return c.s, c.reply("shake", c.notYet([]engine.Key{engine.BandStitches}))
	}
	sure := ""
	switch k { // wishes, which cannot be out: what was measured for them can
	case engine.Depth, engine.DepthRows:
		k, sure = engine.RowGauge, c.spreadWords(p, engine.DepthResult)
	case engine.Neck:
		if !c.m.HasFig {
			k = engine.StitchGauge
		}
	}
	delta := shakeStep(k)
	if c.m.HasFig && c.m.Figure.Sign() > 0 {
		delta = c.shakeDelta(k)
	}
	if v := p.In.Num(k).Sub(delta); p.In.Has(k) && c.judge(k, v) == impossible {
		return c.onUnclear(listen.Problem{Code: "span", Key: k, Low: v})
	}
	down, up := c.shaken(p, k, delta)
	for _, r := range []engine.Key{engine.NeckResult, engine.DepthResult} {
		a, _ := down.Float(r)
		b, _ := up.Float(r)
		c.answer(r, []float64{round4(a), round4(b)})
	}
	v := c.voice()
	text := sure + fmt.Sprintf("If the %s is %s out and you knit the plan as it stands (%d stitches, %d rows a layer):\n\n",
		v.Label(k), c.amount(k, delta), p.BandStitches, p.LayerRows)
	text += "| | a little less | as planned | a little more |\n| --- | --- | --- | --- |\n"
	for _, r := range []engine.Key{k, engine.NeckResult, engine.DepthResult, engine.BandYarn, engine.StretchedCircumference, engine.HeadOpening} {
		if v.Value(p, r) != "" {
			text += fmt.Sprintf("| %s | %s | %s | %s |\n", v.Label(r), v.Value(down, r), v.Value(p, r), v.Value(up, r))
		}
	}
	return c.s, c.reply("shake", text+"\nA larger swatch makes the error smaller: ask *how big a swatch*.")
}

// spreadWords is how far the estimates in the plan leave result k open, "" where
// none does.
func (c *turn) spreadWords(p *engine.Plan, k engine.Key) string {
	v := c.voice()
	low, high, ok := p.Spread(k, v.Spans(p))
	if !ok || high-low < 1e-9 {
		return ""
	}
	return fmt.Sprintf("%s: **%s**. The estimates in the plan leave it between %s and %s.\n\n",
		title(v.Label(k)), v.Value(p, k), v.Figure(k, low), v.Figure(k, high))
}

// amount is the size of an error in words; a gauge's is said over 10 cm, as
// the swatch is measured.
func (c *turn) amount(k engine.Key, delta engine.Num) string {
	switch k {
	case engine.StitchGauge, engine.RowGauge:
		v := c.voice()
		v.Unit = "cm"
		return v.Figure(k, delta.Float()) + " (4 in)"
	}
	return c.voice().Figure(k, delta.Float())
}

// shakeDelta is the amount she said, in the unit of k.
func (c *turn) shakeDelta(k engine.Key) engine.Num {
	card, _ := c.book.Key(k)
	switch c.m.FigUnit {
	case "in":
		return c.m.Figure.Mul(engine.Frac(254, 100))
	case "mm":
		return c.m.Figure.Div(engine.Int(10))
	}
	if card.Unit == "cm" && c.s.Unit == "in" && c.m.FigUnit == "" {
		return c.m.Figure.Mul(engine.Frac(254, 100))
	}
	return c.m.Figure
}

// shaken is the plan knitted as it stands with k a little less and more: the
// count and the rows stay, what they come to moves.
func (c *turn) shaken(p *engine.Plan, k engine.Key, delta engine.Num) (down, up *engine.Plan) {
	in := p.In.Without(engine.Depth).With(engine.DepthRows, engine.Int(int64(p.LayerRows)))
	down, up = engine.Shake(in, k, delta)
	if k == engine.Neck || k == engine.NeckBody || k == engine.Head {
		return down, up // measured on the body: another neck wants another count
	}
	return sameCount(down, p), sameCount(up, p)
}

// sameCount is the plan whose neck is the one that p's own count gives at the
// shaken gauge.
func sameCount(shaken, p *engine.Plan) *engine.Plan {
	neck, ok := engine.NeckOf(shaken.In, p.BandStitches)
	if !ok {
		return shaken
	}
	return engine.Solve(shaken.In.Without(engine.NeckBody).With(engine.Neck, neck))
}

// swatch: how large a swatch keeps the neck within a centimetre, or within the
// length she said.
func (c *turn) swatch() (State, Reply) {
	within := engine.Int(1)
	if u := c.m.FigUnit; c.m.HasFig && (u == "cm" || u == "mm" || u == "in") {
		within = c.shakeDelta(engine.Neck)
	}
	n, cm, ok := engine.SwatchFor(c.filled(c.base()), within)
	if !ok {
		return c.s, c.reply("shake", "A swatch of at least 40 stitches and 40 rows between the marks serves most necks. Once the plan stands I can say it for yours.")
	}
	c.answer(swatchStitches, n)
	c.answer(swatchWidth, round4(cm.Float()))
	return c.s, c.reply("shake", fmt.Sprintf("To keep your neck within %s, measure over at least **%d stitches, %s**: the edges of a measured patch wobble by about 4 mm in all, and the band repeats the error at every stitch.",
		c.voice().Len(within.Float()), n, c.voice().Len(cm.Float())))
}
