package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// Plan is the whole plan on one screen: numbers first, in the order of the
// work, then what was assumed. Every row, every needle and the pictures are
// shown on request.
func (v Voice) Plan(p *engine.Plan, said engine.Inputs) string {
	lines := []planLine{
		{v.yokePart(p), v.briefYoke(p), partsRank},
		{full: v.stitchPart(p)},
		{full: v.pickPart(p)},
		{v.rehangPart(p), v.briefRehang(p), rehangRank},
		{full: v.rowPart(p)},
		{v.ribPart(p), v.briefRib(p), ribRank},
		{v.mockPart(p), v.briefMock(p), ribRank},
		{v.hemPart(p), v.briefHem(p), hemRank},
		{v.sizePart(p), v.briefSize(p), sizesRank},
		{full: v.topPart(p)},
		{v.yarnPart(p), v.briefYarn(p), ribRank},
		{full: v.settingPart(p)},
		{v.frontPart(p), v.briefFront(p), partsRank},
	}
	var cautions []planLine
	for _, c := range v.Cautions(p) {
		cautions = append(cautions, planLine{full: "**Caution:** " + c})
	}
	list := v.assumed(p, said)
	return fit("# The neckband", lines, cautions, planLine{assumedLine(list), assumedBrief(list), assumedRank})
}

// yokePart is the yoke in one line, where one is planned.
func (v Voice) yokePart(p *engine.Plan) string {
	if p.Yoke == nil || p.Yoke.Stages == nil {
		return ""
	}
	return "**Yoke:** " + StageCounts(p.Yoke.Stages) + ". Say *show the yoke* for its stages."
}

func (v Voice) stitchPart(p *engine.Plan) string {
	if p.BandStitches == 0 {
		return ""
	}
	var b strings.Builder
	fmt.Fprintf(&b, "**%d stitches**, %s: neck %s", p.BandStitches, Span(p), v.Both(p.NeckResult.Float()))
	if d := p.NeckResult.Sub(p.NeckWanted); d.Sign() != 0 {
		fmt.Fprintf(&b, ", you want %s", v.Len(p.NeckWanted.Float()))
	}
	var near []string
	for _, c := range []engine.Choice{p.Smaller, p.Larger} {
		if c.Stitches > 0 {
			near = append(near, fmt.Sprintf("%d gives %s", c.Stitches, v.Len(c.Neck.Float())))
		}
	}
	if len(near) > 0 {
		fmt.Fprintf(&b, "; %s", strings.Join(near, ", "))
	}
	b.WriteString(".")
	if p.FitsBed {
		fmt.Fprintf(&b, " Fits your %s needles.", trim(p.In.Num(engine.BedNeedles).Float(), 0))
	}
	return b.String()
}

func (v Voice) rehangPart(p *engine.Plan) string {
	n, planned, ok := p.Waiting()
	if !ok || p.BandStitches == 0 || p.YokeDecreases < 0 {
		return ""
	}
	if p.YokeDecreases == 0 {
		return fmt.Sprintf("**Hang again** the yoke's %d stitches one to a needle, no decreases.", p.BandStitches)
	}
	s := fmt.Sprintf("**%s** in hanging again", Count(p.YokeDecreases, "decrease", "decreases"))
	if planned {
		s += fmt.Sprintf(" from the %d of the yoke's last stage", n)
	}
	s += ": "
	return s + RehangWords(p) + "."
}

func (v Voice) rowPart(p *engine.Plan) string {
	if p.LayerRows == 0 {
		return ""
	}
	layer := fmt.Sprintf("a layer**, %d in all", p.TotalRows)
	if !p.Doubled {
		layer = "in the single layer**"
	}
	return fmt.Sprintf("**%s %s: %s deep. %s.", Count(p.LayerRows, "row", "rows"), layer,
		v.Both(p.DepthResult.Float()), upper(gradingWords(p, p.Tension())))
}

func (v Voice) ribPart(p *engine.Plan) string {
	if len(p.RibColumns) == 0 {
		if p.In.Rib.IsPlain() && p.BandStitches > 0 {
			return "**No rib columns:** the band stays plain."
		}
		return ""
	}
	s := fmt.Sprintf("**%s to drop and latch** (%s rib): %s", Count(columns(p), "column", "columns"), p.In.Rib, Latch(p))
	if p.TotalRows == 0 {
		return s + "." // how many loops that is hangs on the rows
	}
	return s + fmt.Sprintf("; %d loops.", columns(p)*p.TotalRows)
}

func (v Voice) hemPart(p *engine.Plan) string {
	if len(p.HemColumns) == 0 {
		return ""
	}
	return fmt.Sprintf("**%s to hang** for the hem: %s.", Count(bumps(p), "bump", "bumps"), HemBumps(p))
}

// sizePart is how wide the band is where it is seen and worn, each estimate
// with its spread.
func (v Voice) sizePart(p *engine.Plan) string {
	if p.LayerRows == 0 || p.BandStitches == 0 {
		return ""
	}
	end := "fold"
	if !p.Doubled {
		end = "edge"
	}
	s := "**" + v.Value(p, engine.FoldCircumference) + " round** at the " + end + v.spreadText(p, engine.FoldCircumference)
	if !p.In.Rib.IsPlain() {
		s += ", in the rib " + v.Value(p, engine.RelaxedCircumference) + " at rest" + v.spreadText(p, engine.RelaxedCircumference) +
			" and " + v.Value(p, engine.StretchedCircumference) + " stretched" + v.spreadText(p, engine.StretchedCircumference)
	}
	if lean := v.Value(p, engine.LeanDegrees); lean != "" {
		s += ". It leans in " + lean + v.spreadText(p, engine.LeanDegrees)
	}
	if head := v.Value(p, engine.HeadOpening); head != "" {
		s += ". It opens to " + head + v.spreadText(p, engine.HeadOpening) + " for the head"
	}
	if v.KindNote(p) != "" {
		return s + ". Estimates; nothing is published for a mock rib, its draw-in and stretch are our own."
	}
	return s + ". Estimates."
}

// spreadText is how far an estimate may be out.
func (v Voice) spreadText(p *engine.Plan, k engine.Key) string {
	low, high, ok := p.Spread(k, v.Spans(p))
	if !ok || high-low < 1e-9 {
		return ""
	}
	if v.Figure(k, low) == v.Figure(k, high) {
		return ""
	}
	return " (" + v.span(k, low, high) + ")"
}

// span is two figures with their unit said once.
func (v Voice) span(k engine.Key, low, high float64) string {
	a, b := v.Figure(k, low), v.Figure(k, high)
	if unit := a[strings.LastIndexByte(a, ' ')+1:]; unit != a && strings.HasSuffix(b, " "+unit) {
		a = strings.TrimSuffix(a, " "+unit)
	}
	return a + " to " + b
}

// Spans is how far this plan's estimates may be out: what the knitter has
// measured is certain.
func (v Voice) Spans(p *engine.Plan) engine.Spans {
	r := v.Book.Factors(p.In)
	s := engine.Spans{DrawLow: r.DrawLow, DrawHigh: r.DrawHigh, StretchLow: r.StretchLow, StretchHigh: r.StretchHigh}
	base := v.Book.Defaults(p.In.Rib).With(engine.RibDraw, r.Draw).With(engine.RibStretch, r.Stretch)
	for _, k := range []engine.Key{engine.RibDraw, engine.RibStretch, engine.NumberEffect, engine.EdgeStretch} {
		if !p.In.Same(base, k) {
			s = s.Measured(k, p.In.Num(k))
		}
	}
	return s
}

func (v Voice) yarnPart(p *engine.Plan) string {
	off, ok := p.Float(engine.OffYarn)
	if !ok {
		return ""
	}
	s := "**" + v.cut(off) + " of yarn** to cut for the backstitch"
	if p.Pieces > 1 {
		s = "**Yarn** to cut for the backstitch: " + byPiece(p, func(q *engine.Plan) string { return v.cut(q.OffYarn.Float()) })
	}
	low, lowOK := p.Float(engine.BandYarnLow)
	high, _ := p.Float(engine.BandYarnHigh)
	mid, midOK := p.Float(engine.BandYarn)
	switch {
	case midOK && lowOK && v.metres(low) != v.metres(high):
		s += fmt.Sprintf("; the whole band takes %s (estimate)", v.span(engine.BandYarn, low, high))
	case midOK:
		s += fmt.Sprintf("; the whole band takes about %s", v.metres(mid))
	}
	if g, ok := p.Float(engine.BandYarnGrams); ok {
		s += ", about " + trim(g, 0) + " g"
	}
	return s + "."
}

// AddsNothing reports an assumption that adds nothing to the plan: the band begins at
// the garment's tension, and has no fold row.
func AddsNothing(k engine.Key, p *engine.Plan) bool {
	return (k == engine.StartClicks || k == engine.FoldRow) && p.In.Int(k) == 0
}

// plainValue is the value of an input without repeating its label's noun.
func (v Voice) plainValue(p *engine.Plan, k engine.Key) string {
	f, ok := p.Float(k)
	switch v.unit(k) {
	case "stitches", "rows", "needles", "layers", "clicks", "bumps", "":
		if ok {
			return trim(f, 2)
		}
	}
	return v.Value(p, k)
}

// Matters reports whether an assumption touches this plan.
func Matters(k engine.Key, p *engine.Plan) bool {
	switch k {
	case engine.FrontBand:
		return p.In.Garment == engine.Cardigan
	case engine.EdgeStretch:
		return p.In.Garment == engine.Pullover
	case engine.HemEvery, engine.FoldRow:
		return p.Doubled
	case engine.EdgeStitches, engine.RibDraw, engine.RibStretch:
		return !p.In.Rib.IsPlain()
	case engine.NumberEffect:
		return !p.In.Has(engine.ClickEffect)
	case engine.DialMin:
		return p.In.Has(engine.MainTension)
	case engine.HoleMargin:
		return p.Front.HasHoles()
	case engine.Ease:
		return p.In.Has(engine.NeckBody)
	case engine.NeckFactor:
		return false // it serves the offer of a neck alone
	case engine.RestHours, engine.KeySetMethod:
		return false // told under how the band is set
	case engine.Head:
		return p.In.Garment == engine.Pullover
	}
	return true
}

// Short is the plan's headline: the numbers she will hang, knit and hear.
func (v Voice) Short(p *engine.Plan) string {
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return ""
	}
	where := ends(p.BandStitches)
	if n := len(p.OnBed()); n > 1 {
		where = fmt.Sprintf("in %d pieces", n)
	}
	return fmt.Sprintf("%d stitches (%s), %s a layer, neck %s, %s deep", p.BandStitches, where, Count(p.LayerRows, "row", "rows"), v.Len(p.NeckResult.Float()), v.Len(p.DepthResult.Float()))
}
