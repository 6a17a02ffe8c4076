package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// value turns a quantity into the unit of key k. A bare number takes the unit
// that makes it plausible there; where both do, the knitter's own, else cm.
func (x *Lexicon) value(k engine.Key, q *quantity.Quantity, ctx Context) (Set, Problem) {
	s := Set{Value: q.Value, Unit: q.Unit, Hedged: q.Hedged}
	p := Problem{Key: k, Low: q.Value, High: q.High, Unit: q.Unit}
	switch {
	case q.Problem != "":
		p.Code = q.Problem
		return s, p
	case q.Range:
		p.Code = "range"
		return s, p
	case q.Sign < 0 && x.spans[k].Possible[0].Sign() >= 0: // only the ease may be less than nothing
		p.Code = "negative"
		return s, p
	}
	card := x.spans[k]
	switch card.Dimension {
	case rules.Girth, rules.Length, rules.PerStitch:
		return x.length(s, q, card, ctx), Problem{}
	case rules.Millimetres:
		return millimetres(s, q), Problem{}
	case rules.Gauge:
		return x.gauge(s, q, card, ctx), Problem{}
	case rules.YarnCount:
		if v, ok := q.MetresPer100g(); ok {
			s.Value = v
		}
	case rules.Grams:
		if v, ok := q.Grams(); ok {
			s.Value = v
		}
	case rules.Ratio:
		if q.Unit == "%" {
			s.Value = share(k, q.Value.Div(engine.Int(100)))
		}
	case rules.Stitches:
		if cm, ok := q.Length(); ok && isLength(q.Unit) && k == engine.HoleMargin {
			s.Value, s.Unit, s.Wide = cm, unitSystem(q.Unit), true
			return s, Problem{}
		}
		fallthrough
	case rules.Rows, rules.Needles, rules.Bumps, rules.LayersDim, rules.Clicks, rules.Count:
		if !q.Value.IsInt() {
			p.Code = "not-whole"
			return s, p
		}
	}
	return s, Problem{}
}

// share is a percentage as the factor it means: an edge that stretches 30 %
// comes to 1.3, a rib that draws in 30 % to 0.70.
func share(k engine.Key, v engine.Num) engine.Num {
	one := engine.Int(1)
	switch {
	case (k == engine.EdgeStretch || k == engine.RibStretch) && v.Less(one):
		return one.Add(v)
	case k == engine.RibDraw && v.Cmp(engine.Frac(1, 2)) <= 0:
		return one.Sub(v)
	}
	return v
}

var (
	inch = engine.Frac(254, 100)
	ten  = engine.Int(10)
)

func (x *Lexicon) length(s Set, q *quantity.Quantity, card rules.KeyCard, ctx Context) Set {
	if v, ok := q.Length(); ok && q.Unit != "" {
		s.Value, s.Unit = v, unitSystem(q.Unit)
		return s
	}
	s.Bare = true
	s.Unit = pickUnit(card, ctx, q.Value, q.Value.Mul(inch))
	if s.Unit == "in" {
		s.Value = q.Value.Mul(inch)
	}
	return s
}

// pickUnit chooses between cm and inches by plausibility.
func pickUnit(card rules.KeyCard, ctx Context, asCm, asIn engine.Num) quantity.Unit {
	own := ctx.Unit
	if own == "" {
		own = "cm"
	}
	if !card.HasSpan {
		return own
	}
	for _, span := range [][2]engine.Num{card.Usual, card.Possible} {
		cm, in := within(asCm, span), within(asIn, span)
		switch {
		case cm && in:
			return own
		case cm:
			return "cm"
		case in:
			return "in"
		}
	}
	return own
}

func within(v engine.Num, span [2]engine.Num) bool {
	return v.Cmp(span[0]) >= 0 && v.Cmp(span[1]) <= 0
}

func unitSystem(u quantity.Unit) quantity.Unit {
	switch u {
	case "in", "ft", "yd":
		return "in"
	}
	return "cm"
}

func millimetres(s Set, q *quantity.Quantity) Set {
	if v, ok := q.Length(); ok && q.Unit != "" {
		s.Value = v.Mul(ten)
		return s
	}
	s.Bare = true
	s.Unit = "mm"
	return s
}

// gauge turns "28", "7 per inch" or "40 over 14.2 cm" into stitches or rows
// per 10 cm. A count without a length is over 10 cm, one inch or 4 inches,
// whichever is plausible.
func (x *Lexicon) gauge(s Set, q *quantity.Quantity, card rules.KeyCard, ctx Context) Set {
	if v, ok := q.Per10cm(); ok {
		s.Value, s.Unit = v, unitSystem(q.OverUnit)
		return s
	}
	s.Bare = true
	perInch := q.Value.Mul(ten).Div(inch)
	s.Unit = pickUnit(card, ctx, q.Value, perInch)
	switch {
	case s.Unit == "in" && (within(perInch, card.Usual) || !within(q.Value, card.Usual) && within(perInch, card.Possible)):
		s.Value = perInch
	case s.Unit == "in" && within(q.Value.Div(engine.Frac(1016, 1000)), card.Possible):
		s.Value = q.Value.Mul(ten).Div(engine.Frac(1016, 100)) // over 4 inches
	}
	return s
}
