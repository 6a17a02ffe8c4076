package engine

import "fmt"

// recordFront is how a number of the front bands came about, whether it is a
// result or an input that follows from others.
func (p *Plan) recordFront(k Key) (Record, bool) {
	if p.Front == nil {
		return Record{}, false
	}
	for _, part := range [...]func(Key) (Record, bool){p.recordPickUp, p.recordFrontRows, p.recordHoles, p.recordFrontInput} {
		if r, ok := part(k); ok {
			_, ok = p.Float(k)
			return r, ok
		}
	}
	return Record{}, false
}

// fnum is number k of the front bands as it is written in an expression.
func (p *Plan) fnum(k Key) string { return fig(p.frontNum(k)) }

// value is result or input k of the plan, 0 where it is not there.
func (p *Plan) value(k Key) float64 { f, _ := p.Float(k); return f }

func (p *Plan) recordPickUp(k Key) (Record, bool) {
	f := p.Front
	switch k {
	case FrontStitches:
		return p.recordFrontStitches(), true
	case FrontRatio:
		rows, from := itoa(f.Rows), []Key{FrontStitches, EdgeRows}
		if end := p.PickUpEdge().NeckbandRows; end > 0 && f.Rows > end {
			rows, from = fmt.Sprintf("(%d + %d)", f.Rows-end, end), append(from, LayerRows)
		}
		return Record{Rule: RuleFraction, From: from, Rounding: RoundFraction,
			Expr:  fmt.Sprintf("%d / %s", f.Stitches, rows),
			Value: f.ratio().Float(), Unrounded: Frac(int64(f.Stitches), int64(max(f.Rows, 1))).Float()}, true
	case FrontRatioError:
		return Record{Rule: RuleFractionOff, From: []Key{FrontRatio, EdgeRows, FrontStitches},
			Expr: fmt.Sprintf("%d * %d / %d - %d", f.Of, f.Rows, f.Every, f.Stitches), Value: f.Off.Float()}, true
	case FrontLength:
		r := Record{Rule: RuleFrontLength, From: []Key{FrontStitches, FrontGauge}, Value: f.Length.Float(),
			Expr: fmt.Sprintf("%d * 10 / %s", f.Stitches, p.fnum(FrontGauge))}
		if e := p.PickUpEdge(); e.NeckbandRows > 0 {
			r.Expr, r.From = r.Expr+" - "+fig(e.NeckbandDepth), append(r.From, DepthResult, NeckbandEnd)
		}
		return r, true
	case FrontPieces:
		return p.recordPieces(f.Stitches, f.Pieces, FrontStitches), true
	}
	return Record{}, false
}

// recordFrontStitches has two sums, as the neckband's count: the stitches that
// the edge needs, and the count that closes in the rib.
func (p *Plan) recordFrontStitches() Record {
	f, e := p.Front, p.PickUpEdge()
	if p.In.Has(FrontCount) {
		return p.said(FrontStitches, FrontCount)
	}
	length, from := p.fnum(FrontEdge), []Key{FrontEdge, FrontGauge}
	if e.NeckbandRows > 0 {
		length, from = fmt.Sprintf("(%s + %s)", length, fig(e.NeckbandDepth)), append(from, DepthResult, NeckbandEnd)
	}
	r := Record{Rule: RulePickUp, From: from, Rounding: RoundClosing,
		Expr:  length + " * " + p.fnum(FrontGauge) + " / 10",
		Check: itoa(f.Stitches), Value: float64(f.Stitches), Unrounded: f.Wanted.Float()}
	if rib := e.Rib; rib.Purl > 0 {
		groups := (f.Stitches - 2*e.EdgeStitches + rib.Knit) / (rib.Knit + rib.Purl)
		r.Check = fmt.Sprintf("2 * %d + %d * %d + %d * %d", e.EdgeStitches, groups, rib.Purl, groups-1, rib.Knit)
		r.From = append(r.From, EdgeStitches)
	}
	return r
}

func (p *Plan) recordFrontRows(k Key) (Record, bool) {
	f := p.Front
	switch k {
	case FrontLayerRows:
		wanted := p.In.Num(FrontBand).Mul(p.frontNum(FrontRowGauge)).Div(Int(10))
		r := Record{Rule: RuleFrontRows, From: []Key{FrontBand, FrontRowGauge}, Rounding: RoundRows,
			Expr:  p.num(FrontBand) + " * " + p.fnum(FrontRowGauge) + " / 10",
			Value: float64(f.LayerRows), Unrounded: wanted.Float()}
		if wanted.Round() != f.LayerRows {
			r.Rounding = RoundRowsHeld
		}
		return r, true
	case FrontTotalRows:
		r := Record{Rule: RuleFrontTotal, From: []Key{FrontLayerRows, FrontLayers, FoldRow},
			Expr: fmt.Sprintf("%d * %d", f.Layers, f.LayerRows), Value: float64(f.TotalRows)}
		if f.FoldRow {
			r.Expr += " + 1"
		}
		return r, true
	case FrontWidth:
		return Record{Rule: RuleFrontWidth, From: []Key{FrontLayerRows, FrontRowGauge}, Value: f.Width.Float(),
			Expr: fmt.Sprintf("%d * 10 / %s", f.LayerRows, p.fnum(FrontRowGauge))}, true
	}
	return Record{}, false
}

func (p *Plan) recordHoles(k Key) (Record, bool) {
	f, s := p.Front, p.Front.Spec
	gap := fmt.Sprintf("(%d - 2 * %d - %d * %d) / (%d - 1)", s.Stitches, s.Start, s.Holes, s.Size, s.Holes)
	from := []Key{FrontStitches, HoleMargin, Holes, HoleStitches}
	switch k {
	case HoleGap:
		return Record{Rule: RuleHoleGap, From: from, Expr: gap, Value: f.Holes.Gap.Float()}, true
	case HoleDistance:
		return Record{Rule: RuleHoleDistance, From: append(from, FrontGauge), Value: f.Distance.Float(),
			Expr: fmt.Sprintf("(%s + %d) * 10 / %s", gap, s.Size, p.fnum(FrontGauge))}, true
	case HoleLength:
		return Record{Rule: RuleButton, From: []Key{Button}, Expr: p.fnum(Button) + " / 10 + 0.3", Value: f.Fit.Hole.Float()}, true
	case OverlapLow:
		return Record{Rule: RuleButton, From: []Key{Button}, Expr: p.fnum(Button) + " / 10", Value: f.Fit.BandLow.Float()}, true
	case OverlapHigh:
		return Record{Rule: RuleButton, From: []Key{Button}, Expr: p.fnum(Button) + " / 10 + 1.27", Value: f.Fit.BandHigh.Float()}, true
	}
	return Record{}, false
}

// recordFrontInput is an input of the front bands that was not said.
func (p *Plan) recordFrontInput(k Key) (Record, bool) {
	r := Record{Rule: RuleFollows, Value: p.value(k)}
	switch k {
	case FrontGauge:
		r.From, r.Expr = []Key{StitchGauge}, p.num(StitchGauge)
	case FrontRowGauge:
		r.From, r.Expr = []Key{RowGauge}, p.num(RowGauge)
	case FrontLayers:
		r.From, r.Expr = []Key{Layers}, p.num(Layers)
	case FrontEdge:
		r.Rule, r.From, r.Expr = RuleFrontEdge, []Key{EdgeRows, RowGauge}, p.num(EdgeRows)+" * 10 / "+p.num(RowGauge)
	case EdgeRows:
		r.Rule, r.From, r.Expr = RuleFrontEdge, []Key{FrontEdge, RowGauge}, p.num(FrontEdge)+" * "+p.num(RowGauge)+" / 10"
		r.Rounding, r.Unrounded = RoundNearest, p.In.Num(FrontEdge).Mul(p.In.Num(RowGauge)).Div(Int(10)).Float()
	case HoleStitches:
		if !p.In.Has(Button) || p.frontNum(FrontGauge).Sign() <= 0 {
			r.Rule, r.From, r.Expr = RuleUsual, []Key{k}, p.fnum(k)
			break
		}
		wanted := p.Front.Fit.Hole.Mul(p.frontNum(FrontGauge)).Div(Int(10))
		r.Rule, r.From = RuleButton, []Key{Button, FrontGauge}
		r.Expr = fmt.Sprintf("max(1, (%s / 10 + 0.3) * %s / 10)", p.fnum(Button), p.fnum(FrontGauge))
		r.Rounding, r.Unrounded = RoundNearest, max(wanted.Float(), 1)
	case Holes:
		s, apart := p.holeSpec(0), p.In.Num(HoleSpacing)
		r.Rule, r.From = RuleHolesAt, []Key{FrontStitches, HoleMargin, HoleStitches, FrontGauge, HoleSpacing}
		r.Expr = fmt.Sprintf("max(0, (%d - 2 * %d - %d) * 10 / %s / %s) + 1", s.Stitches, s.Start, s.Size, p.fnum(FrontGauge), fig(apart))
		r.Rounding, r.Unrounded = RoundNearest, max(p.holeSpan().Div(apart).Float(), 0)+1
	default:
		return Record{}, false
	}
	return r, true
}
