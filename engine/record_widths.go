package engine

import "fmt"

func (p *Plan) recordWidths(k Key) (Record, bool) {
	if !p.has.fold {
		return Record{}, false
	}
	from := []Key{SeamWidth, FoldClicks, ClickEffect}
	if !p.Doubled { // no fold: the clicks of the last row
		from[1] = Tension
	}
	fold := p.foldWidthExpr()
	switch k {
	case FoldCircumference:
		return p.circumference(RuleFold, fold, from, p.FoldCircumference), true
	case RelaxedCircumference:
		return p.circumference(RuleRelaxed, fold+" * "+p.num(RibDraw), append(from, RibDraw),
			p.RelaxedCircumference), p.has.relaxed
	case StretchedCircumference:
		return p.circumference(RuleStretched, fold+" * "+p.num(RibDraw)+" * "+p.num(RibStretch),
			append(from, RibDraw, RibStretch), p.StretchedCircumference), p.has.stretched
	case LeanDegrees:
		return Record{Rule: RuleLean, From: append(from, DepthResult), Expr: p.leanExpr(),
			Value: p.LeanDegrees}, p.has.depth
	case HeadOpening:
		edge := fig(p.SeamWidth)
		if !p.Doubled {
			edge = fold
		}
		r := Record{Rule: RuleHead, From: append(from, RibDraw, RibStretch, EdgeStretch),
			Expr: fmt.Sprintf("min(%s * %s * %s, %s * %s)", fold, p.num(RibDraw),
				p.num(RibStretch), edge, p.num(EdgeStretch)),
			Value: p.HeadOpening.Float()}
		if p.In.Num(Slit).Sign() > 0 {
			r.Expr, r.From = r.Expr+" + 2 * "+p.num(Slit), append(r.From, Slit)
		}
		return r, p.has.head
	}
	return Record{}, false
}

// circumference closes a width to a round, over the fronts' overlap.
func (p *Plan) circumference(rule, expr string, from []Key, v Num) Record {
	expr, from = p.overlapped(expr, from)
	return Record{Rule: rule, From: from, Expr: expr, Value: v.Float()}
}

// foldWidthExpr is the sum for the width of the fold edge.
func (p *Plan) foldWidthExpr() string {
	return fmt.Sprintf("%s * (1 - %s * %s)", fig(p.SeamWidth), fig(wholeNum(p.FoldClicks)), p.percent())
}

func (p *Plan) leanExpr() string {
	x := fmt.Sprintf("%s * %s * %s / (2 * 3.1416 * %s)", fig(p.SeamWidth),
		fig(wholeNum(p.FoldClicks)), p.percent(), fig(p.DepthResult))
	if p.LeanClamped {
		x = "max((-1), min(1, " + x + "))"
	}
	return "asin(" + x + ") * 180 / 3.1416"
}
