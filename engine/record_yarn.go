package engine

import "fmt"

func (p *Plan) recordYarn(k Key) (Record, bool) {
	switch k {
	case LoopLength:
		if p.In.Num(RowYarn).Sign() > 0 {
			return p.said(LoopLength, RowYarn), true
		}
		if p.loopMeasured() {
			return Record{Rule: RuleLoopWeight, From: []Key{StitchWeight, YarnLength}, Value: p.LoopLength,
				Expr: p.num(StitchWeight) + " * " + p.num(YarnLength) + " / 1000"}, true
		}
		return Record{Rule: RuleLoop, From: []Key{StitchGauge, RowGauge}, Expr: p.loopExpr(ksMid),
			Value: p.LoopLength}, p.has.loop
	case OffYarn:
		return Record{Rule: RuleOff, From: []Key{BandStitches, NeedlePitch},
			Expr: fmt.Sprintf("%d * %d * %s / 10 + %s", offWidths, p.Knitted(),
				p.num(NeedlePitch), tailsExpr(p.Parts)),
			Value: p.OffYarn.Float()}, p.has.off
	}
	if !p.has.yarn {
		return Record{}, false
	}
	switch k {
	case BandYarn:
		return p.recordBandYarn(figure(p.LoopLength), p.BandYarn, LoopLength), true
	case BandYarnLow:
		return p.recordBandYarn(p.loopExpr(ksLow), p.BandYarnLow, StitchGauge, RowGauge), p.has.yarnSpan
	case BandYarnHigh:
		return p.recordBandYarn(p.loopExpr(ksHigh), p.BandYarnHigh, StitchGauge, RowGauge), p.has.yarnSpan
	case BandYarnGrams:
		return Record{Rule: RuleGrams, From: []Key{BandYarn, YarnLength},
			Expr:  p.gramsExpr(BandYarn),
			Value: p.BandYarnGrams}, p.has.grams
	}
	return Record{}, false
}

func (p *Plan) loopExpr(ks float64) string {
	return fmt.Sprintf("sqrt(%s * 100 / (%s * %s))", figure(ks), p.num(StitchGauge), p.num(RowGauge))
}

// recordBandYarn is the yarn of all rows and of sewing off, m, with the loop
// length written as loop.
func (p *Plan) recordBandYarn(loop string, v float64, loopFrom ...Key) Record {
	rows := fmt.Sprintf("%d * %s", p.layers, p.layerExpr())
	from := append([]Key{BandStitches}, loopFrom...)
	from = append(from, LayerRows, Layers, Tension, ClickEffect)
	if p.FoldRow > 0 {
		rows += fmt.Sprintf(" + 1 + %d * %s", p.FoldRow, p.percent())
		from = append(from, FoldRow)
	}
	if p.has.mock {
		return p.recordMockYarn(loop, rows, from, v)
	}
	if p.Doubled {
		rows += " + 1" // the closing row
	}
	return Record{Rule: RuleYarn, From: append(from, OffYarn), Value: v,
		Expr: fmt.Sprintf("(%d * %s * (%s) + %s) / 100", p.Knitted(), loop, rows, fig(p.OffYarn))}
}

// tailsExpr is the tails of the yarn to sew off, of every piece.
func tailsExpr(parts []Part) string {
	if len(parts) < 2 {
		return itoa(offTails)
	}
	return fmt.Sprintf("%d * %d", len(parts), offTails)
}
