package engine

import "fmt"

// recordYarns is how the yarn beyond the neckband's rows came about: its
// closing row, the front bands, all together, and how thick the yarn is.
func (p *Plan) recordYarns(k Key) (Record, bool) {
	v, ok := p.Float(k)
	if !ok {
		return Record{}, false
	}
	r := Record{Value: v}
	switch k {
	case YarnLength:
		r.Rule, r.From = RuleFromWeight, []Key{LoopLength, StitchWeight}
		r.Expr = figure(p.LoopLength) + " * 1000 / " + p.num(StitchWeight)
	case ClosingYarn:
		r.Rule, r.From = RuleClosing, []Key{BandStitches, LoopLength}
		r.Expr = fmt.Sprintf("%d * %s / 100", p.Knitted(), figure(p.LoopLength))
	case FrontYarn:
		r.Rule, r.From, r.Expr = RuleFrontYarn, []Key{FrontStitches, LoopLength, FrontTotalRows, FrontLayers, NeedlePitch}, p.frontYarnExpr()
		if p.Front.scale != 1 {
			r.From = append(r.From, StitchGauge, RowGauge, FrontGauge, FrontRowGauge)
		}
	case FrontYarnGrams:
		r.Rule, r.From, r.Expr = RuleGrams, []Key{FrontYarn, YarnLength}, p.gramsExpr(FrontYarn)
	case AllYarn:
		r.Rule, r.From = RuleAllYarn, []Key{BandYarn, FrontYarn}
		r.Expr = figure(p.BandYarn) + " + " + figure(p.Front.Yarn)
	case AllYarnGrams:
		r.Rule, r.From, r.Expr = RuleGrams, []Key{AllYarn, YarnLength}, p.gramsExpr(AllYarn)
	case YarnTex:
		r.Rule, r.From, r.Expr = RuleTex, []Key{YarnLength}, "100000 / "+fig(p.YarnRate)
	case Tightness:
		r.Rule, r.From = RuleTightness, []Key{YarnTex, LoopLength}
		r.Expr = fmt.Sprintf("sqrt(%s) / (10 * %s)", figure(p.value(YarnTex)), figure(p.LoopLength))
	default:
		return Record{}, false
	}
	return r, true
}

// gramsExpr is the weight of the metres under k.
func (p *Plan) gramsExpr(k Key) string { return figure(p.value(k)) + " * 100 / " + fig(p.YarnRate) }

func (p *Plan) frontYarnExpr() string {
	f, loop := p.Front, figure(p.LoopLength)
	if f.scale != 1 {
		loop += fmt.Sprintf(" * sqrt(%s * %s / (%s * %s))", p.num(StitchGauge), p.num(RowGauge), p.fnum(FrontGauge), p.fnum(FrontRowGauge))
	}
	rows := itoa(f.TotalRows)
	if f.Layers > 1 {
		rows = fmt.Sprintf("(%d + 1)", f.TotalRows)
	}
	return fmt.Sprintf("2 * (%d * %s * %s + %d * %d * %s / 10 + %s) / 100", f.knitted(), loop, rows,
		offWidths, f.knitted(), p.num(NeedlePitch), tailsExpr(f.Parts))
}
