package engine

import "fmt"

func (p *Plan) recordRows(k Key) (Record, bool) {
	if k == ClickEffect {
		v, ok := p.Float(ClickEffect)
		return Record{Rule: RuleClick, From: []Key{NumberEffect, ClicksPerNumber}, Value: v,
			Expr: p.num(NumberEffect) + " / " + p.num(ClicksPerNumber)}, ok
	}
	if !p.has.rows {
		return Record{}, false
	}
	switch k {
	case LayerRows:
		return p.recordLayer(), true
	case TotalRows:
		r := Record{Rule: RuleTotal, From: []Key{LayerRows, Layers, FoldRow}, Value: float64(p.TotalRows),
			Expr: fmt.Sprintf("%d * %d", p.layers, p.LayerRows)}
		if p.FoldRow > 0 {
			r.Expr += " + 1"
		}
		return r, true
	case DepthResult:
		return Record{Rule: RuleDepth, From: []Key{LayerRows, Tension, ClickEffect, RowGauge},
			Expr:  p.layerExpr() + " * 10 / " + p.num(RowGauge),
			Value: p.DepthResult.Float()}, p.has.depth
	case FoldClicks:
		return Record{Rule: RuleFoldClicks, From: []Key{LayerRows, StartClicks, RowsPerClick},
			Expr: p.foldExpr(), Value: float64(p.FoldClicks)}, p.Doubled
	}
	return Record{}, false
}

// recordLayer: the rows of a wanted depth are its rows at the garment's
// tension and what the tighter rows fall short of.
func (p *Plan) recordLayer() Record {
	if p.In.Has(DepthRows) {
		r := p.said(LayerRows, DepthRows)
		r.Value = float64(p.LayerRows)
		if !p.DepthReachable {
			r.Rounding = RoundRowsHeld
		}
		return r
	}
	rows := p.In.Num(Depth).Mul(p.In.Num(RowGauge)).Div(Int(10))
	r := Record{Rule: RuleRows, From: []Key{Depth, RowGauge, Tension, ClickEffect}, Rounding: RoundRows,
		Expr: fmt.Sprintf("%s * %s / 10 + %d * %s", p.num(Depth), p.num(RowGauge),
			p.LayerClicks, p.percent()),
		Value:     float64(p.LayerRows),
		Unrounded: rows.Add(p.Click.Mul(wholeNum(p.LayerClicks))).Float()}
	if !p.DepthReachable {
		r.Rounding = RoundRowsHeld
	}
	return r
}

// layerExpr is one layer's height in rows at the garment's tension.
func (p *Plan) layerExpr() string {
	return fmt.Sprintf("(%d - %d * %s)", p.LayerRows, p.LayerClicks, p.percent())
}

func (p *Plan) foldExpr() string {
	g := p.grading
	expr := fig(wholeNum(g.start))
	if g.every > 0 {
		expr = fmt.Sprintf("%s + floor((%d - 1) / %d)", expr, p.LayerRows, g.every)
	}
	if p.TensionHeld {
		expr = fmt.Sprintf("min(%d, %s)", g.limit, expr)
	}
	return expr
}
