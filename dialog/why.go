package dialog

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// onWhy tells how a number came about, why another one would not do, or where
// an assumption comes from; asked again it goes to what that rests on.
func (c *turn) onWhy() (State, Reply) {
	p := c.plan()
	switch c.m.Topic {
	case "not":
		return c.whyNot(p)
	case "choice":
		return c.whyChoice(p, c.m.Keys[0], c.m.Name)
	case "ratio":
		return c.whyRatio(p)
	}
	if i := c.stageWhy(p); i >= 0 {
		return c.whyStage(p, i)
	}
	keys := c.whyKeys(p)
	switch {
	case len(keys) == 0 && c.m.HasFig:
		return c.noSuchFigure(p)
	case len(keys) > 1:
		var names []string
		for _, k := range keys {
			names = append(names, c.voice().Label(k))
		}
		return c.s, c.reply("unclear", "That figure stands for more than one thing: "+strings.Join(names, ", ")+". Which one? For example: *why "+names[0]+"*.")
	case len(keys) == 0:
		return c.s, c.reply("why", "Tell me which number. For example: *why the stitches*, or *why 1x1*.")
	}
	k := keys[0]
	if k == engine.Slit && !p.In.Has(k) {
		k = engine.SlitLength // the one that the head asks for
	}
	if v := c.choiceStanding(p, k); v != "" {
		return c.whyChoice(p, k, v)
	}
	if _, ok := p.Value(engine.FrontRatio); k == engine.FrontRatio && !ok && p.PickTotal > 0 {
		k = engine.PickTotal // picked up round the neck, not along a front
	}
	deeper := len(c.m.Keys) == 0 && !c.m.HasFig && len(c.m.Sets) == 0 && c.s.WhyKey == k
	text, ok := c.voice().Why(p, c.base(), k)
	if deeper {
		text, ok = c.voice().WhyDeeper(p, c.base(), k)
	}
	if !ok {
		return c.s, c.reply("why", c.notYet([]engine.Key{k}))
	}
	if good := c.book.RibFactors(p.In.Rib).GoodFor; k == engine.KeyRib && good != "" && !deeper && c.base().Same(p.In, k) {
		text += fmt.Sprintf(" A %s rib is good for %s.", p.In.Rib, good)
	}
	c.s.WhyKey, c.s.Topic = k, k
	if v, ok := valueJSON(p, k); ok {
		c.answer(k, v)
	}
	return c.s, c.reply("why", text)
}

// whyKeys is what the question is about: what it names, what it says, the
// figure in it, or what was spoken of last.
func (c *turn) whyKeys(p *engine.Plan) []engine.Key {
	if c.m.HasFig && c.m.FigUnit == "number" && p.In.Num(engine.StartClicks).Equal(c.m.Figure.Mul(p.In.Num(engine.ClicksPerNumber))) {
		return []engine.Key{engine.StartClicks} // "why four numbers tighter"
	}
	if c.m.HasFig {
		named := c.m.Keys
		hits := c.bearing(p, named)
		if len(hits) > 0 {
			return hits[:1]
		}
		if hits = c.bearing(p, c.candidates()); len(hits) == 0 && c.onDial(p) {
			return []engine.Key{engine.Tension}
		}
		return hits
	}
	if c.m.Needle != "" {
		return c.needleKeys(p)
	}
	switch {
	case len(c.m.Keys) > 0:
		return c.m.Keys[:1]
	case len(c.m.Sets) > 0:
		return []engine.Key{c.m.Sets[0].Key}
	case c.s.WhyKey != "" || c.s.Topic != "" && !c.base().Has(c.s.Topic):
		if c.s.WhyKey != "" && (c.s.Topic == "" || c.base().Has(c.s.Topic)) {
			return []engine.Key{c.s.WhyKey}
		}
		return []engine.Key{c.s.Topic}
	case p.BandStitches > 0:
		return []engine.Key{engine.BandStitches}
	}
	return nil
}

// needleKeys is what a needle is in the plan: an end, a latched one, one of
// the hem, one that carries two.
func (c *turn) needleKeys(p *engine.Plan) []engine.Key {
	n := p.BandStitches
	at, ok := engine.NeedleColumn(c.m.Needle, n)
	switch {
	case !ok:
		return nil
	case at == 0:
		return []engine.Key{engine.LeftNeedle}
	case at == n-1:
		return []engine.Key{engine.RightNeedle}
	case slices.Contains(p.RibColumns, at):
		return []engine.Key{engine.RibColumns}
	case slices.Contains(p.HemColumns, at):
		return []engine.Key{engine.HemNeedles}
	}
	return nil
}

func (c *turn) candidates() []engine.Key {
	return append(engine.ResultKeys(), engine.InputKeys()...)
}

// bearing is those of the keys whose value is the figure asked about, in the
// unit that was said or in the one it is shown in.
func (c *turn) bearing(p *engine.Plan, keys []engine.Key) []engine.Key {
	var out []engine.Key
	fig := c.m.Figure.Float()
	for _, k := range keys {
		f, ok := p.Float(k)
		if !ok || !answer.UnitFits(c.voice(), k, string(c.m.FigUnit)) {
			continue
		}
		if answer.Shows(c.voice(), k, f, fig, string(c.m.FigUnit)) {
			out = append(out, k)
		}
	}
	if len(out) > 1 { // the widest row is the band, or the yoke, once more
		out = engine.WithoutKey(out, engine.MostNeedles)
	}
	return out
}

// onDial reports whether the figure is the dial number of some row.
func (c *turn) onDial(p *engine.Plan) bool {
	return c.m.FigUnit != quantity.Stitch && slices.ContainsFunc(p.Tension(), func(r engine.TensionRow) bool {
		return r.Dial != nil && math.Abs(*r.Dial-c.m.Figure.Float()) < 1e-6
	})
}

func (c *turn) noSuchFigure(p *engine.Plan) (State, Reply) {
	if s := c.whyEstimate(p); s != "" {
		return c.s, c.reply("why", s)
	}
	if c.m.Figure.IsInt() && slices.Contains(p.Shares, c.m.Figure.Floor()) {
		c.answersOf(p, engine.BandShares)
		return c.s, c.reply("why", c.whyPieces(p))
	}
	down, up, _ := engine.Closing(p.In, c.m.Figure.Floor())
	text := fmt.Sprintf("No number of the plan is %s.", trimNum(c.m.Figure))
	if p.BandStitches > 0 && c.m.Figure.IsInt() && (down > 0 || up > 0) {
		c.answer(engine.BandStitches, p.BandStitches)
		text += fmt.Sprintf(" The band has %d stitches; ask *why %d*, or *why not %s*.", p.BandStitches, p.BandStitches, trimNum(c.m.Figure))
	}
	return c.s, c.reply("why", text)
}

func trimNum(n engine.Num) string {
	if n.IsInt() {
		return fmt.Sprint(n.Floor())
	}
	return strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.3f", n.Float()), "0"), ".")
}

// whyNot names the first rule that another number breaks, or what would
// differ.
func (c *turn) whyNot(p *engine.Plan) (State, Reply) {
	if len(c.m.Sets) > 0 && !c.countAsked() {
		return c.whyNotValue(p)
	}
	if !c.m.HasFig {
		if len(c.m.Keys) > 0 {
			c.m.Topic = ""
			return c.onWhy()
		}
		return c.s, c.reply("why", "Not what? For example: *why not 100*, or *why not 2x2*.")
	}
	n := c.m.Figure.Floor()
	if p.BandStitches == 0 || !c.m.Figure.IsInt() || n < 1 {
		return c.s, c.reply("why", c.notYet([]engine.Key{engine.BandStitches}))
	}
	c.s.Topic, c.s.WhyKey = engine.BandStitches, engine.BandStitches
	c.answer(engine.BandStitches, p.BandStitches)
	if n == p.BandStitches {
		return c.s, c.reply("why", fmt.Sprintf("%d is what the plan has. Ask *why %d* for the reason.", n, n))
	}
	down, up, closes := engine.Closing(p.In, n)
	if !closes {
		return c.s, c.reply("why", fmt.Sprintf("%d does not close: a %s rib with %s at each end closes on %d and %d. The nearest to the %s wanted is %d.",
			n, p.In.Rib, answer.Count(p.In.Int(engine.EdgeStitches), "edge stitch", "edge stitches"), down, up, trimFloat(p.WantedStitches.Float()), p.BandStitches))
	}
	text := fmt.Sprintf("%d would close too, but %d is nearer to the %s wanted.", n, p.BandStitches, trimFloat(p.WantedStitches.Float()))
	if neck, ok := engine.NeckOf(p.In, n); ok {
		text += fmt.Sprintf(" %d gives a neck of %s, not %s.", n, c.voice().Len(neck.Float()), c.voice().Len(p.NeckResult.Float()))
	}
	if n > p.In.Int(engine.BedNeedles) {
		text += fmt.Sprintf(" And it is more than your %d needles.", p.In.Int(engine.BedNeedles))
	}
	return c.s, c.reply("why", text)
}

// countAsked: "why not 100" and "why not 100 stitches" mean the count, even
// where the words could set something.
func (c *turn) countAsked() bool {
	return c.m.HasFig && (c.m.FigUnit == "" || c.m.FigUnit == "st") && len(c.m.Keys) == 0
}

func trimFloat(f float64) string { return strings.TrimSuffix(fmt.Sprintf("%.1f", f), ".0") }

// whyNotValue answers "why not 2x2": nothing forbids it, and what would
// differ.
func (c *turn) whyNotValue(p *engine.Plan) (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	other := c.solve(a.in)
	d := c.voice().Differences(p, other)
	if s := c.frontOpen(other); s != "" && !p.In.Same(other.In, engine.FrontCount) {
		return c.s, c.reply("why", s+" It would change this:\n\n"+d)
	}
	switch good := c.goodOf(c.m.Sets); {
	case good != "":
		if !c.hasAlready(p, a) {
			good = "Nothing forbids it. " + good
		}
		return c.s, c.reply("why", strings.TrimSpace(good+"\n\n"+d))
	case c.hasAlready(p, a):
		return c.s, c.reply("why", "That is what the plan has.")
	case d == "":
		return c.s, c.reply("why", "It would do just as well: nothing in the plan would change.")
	}
	return c.s, c.reply("why", "Nothing forbids it; you chose otherwise. It would change this:\n\n"+d)
}

// hasAlready reports whether the plan stands as the line would have it.
func (c *turn) hasAlready(p *engine.Plan, a applied) bool {
	for _, k := range a.keys {
		rows := k == engine.DepthRows && a.in.Int(k) == p.LayerRows
		if !rows && !p.In.Same(a.in, k) {
			return false
		}
	}
	return true
}
