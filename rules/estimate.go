package rules

import "foldrow/engine"

// What is published about rib widths: 1x1 relaxes to about 0.70 of plain and
// stretches 1.96-fold, 2x2 stretches 2.23-fold; wider even ribs relax
// narrower; plain stretches about 1.2-fold. The rest is interpolated.
var (
	draw1x1     = engine.Frac(70, 100)
	stretch1x1  = engine.Frac(196, 100)
	stretch2x2  = engine.Frac(223, 100)
	stretchTop  = engine.Frac(240, 100) // the upper end of what is published
	stretchFlat = engine.Frac(120, 100) // plain
	one         = engine.Int(1)
)

// estimate is our own interpolation for an a x b rib:
//
//	m = 2ab/(a+b), the harmonic mean column: the narrow column decides
//	even stretch = 1.96 + (m-1)(2.23-1.96), at most 2.40
//	opened width = 0.70 * 1.96 of plain, the same for all even ribs
//	even draw    = opened width / even stretch
//	u = |a-b| / (2(a+b)): half of the surplus stitches lie flat, as plain
//	draw    = even draw*(1-u) + u
//	stretch = (opened width*(1-u) + 1.2u) / draw
//
// Both are rounded to hundredths. The spans are those published for 1x1 and
// 2x2, the upper draw raised with the surplus.
func estimate(rib engine.Rib) RibCard {
	a, b := int64(rib.Knit), int64(rib.Purl)
	m := engine.Frac(2*a*b, a+b)
	even := stretch1x1.Add(m.Sub(one).Mul(stretch2x2.Sub(stretch1x1)))
	if stretchTop.Less(even) {
		even = stretchTop
	}
	surplus := engine.Frac(max(a-b, b-a), 2*(a+b))
	rest := one.Sub(surplus)
	opened := draw1x1.Mul(stretch1x1)
	draw := opened.Div(even).Mul(rest).Add(surplus)
	stretch := opened.Mul(rest).Add(stretchFlat.Mul(surplus)).Div(draw)
	return RibCard{
		Rib: rib, Label: rib.String() + " rib", Words: []string{rib.String()},
		Draw: hundredths(draw), DrawLow: engine.Frac(1, 2),
		DrawHigh: hundredths(engine.Frac(75, 100).Add(surplus.Mul(engine.Frac(4, 10)))),
		Stretch:  hundredths(stretch), StretchLow: engine.Frac(14, 10), StretchHigh: stretchTop,
		GoodFor: "a rib without published figures: knit a swatch of it",
		Text: "Nothing is published for this rib. Its two factors are our own estimate, laid between the 1x1 and 2x2 ribs " +
			"and plain knitting. A rib swatch, measured relaxed and stretched, is better.",
		Source: []string{"own"},
	}
}

func hundredths(n engine.Num) engine.Num {
	return engine.Frac(int64(n.Mul(engine.Int(100)).Round()), 100)
}
