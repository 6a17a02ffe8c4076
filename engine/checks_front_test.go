package engine_test

import (
	"math"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
)

// frontWays are about yarn that is counted by stitches or weighed.
func frontWays() map[string]way {
	return map[string]way{
		"yarn of stitches": func(g *given) string { // yards, from the yarn in a row of some
			per, ok := engine.RowYarnOf(g.num("row_yarn"), g.int("row_stitches"))
			require.True(g.t, ok)
			return floats(per.Mul(g.num("stitches")).Div(engine.Frac(9144, 100)).Float())
		},
		"tex of a weighed square": func(g *given) string { // a square metre of so many wales and courses to the inch
			toMetre := engine.Frac(10000, 254)
			wales, courses := g.num("wpi").Mul(toMetre), g.num("cpi").Mul(toMetre)
			w, ok := engine.StitchWeightOf(g.num("grams"), wales.Round(), courses.Round())
			require.True(g.t, ok)
			p := engine.Solve(engine.Inputs{}.With(engine.StitchWeight, w).With(engine.RowYarn, g.num("loop_mm").Div(engine.Int(10))))
			tex, ok := p.Float(engine.YarnTex)
			require.True(g.t, ok)
			return floats(tex)
		},
		"mass of a mill's knitting": func(g *given) string { // kg in a day, from needles and courses
			tex, ok := engine.Tex(engine.CottonCount, g.num("ne"), 1)
			require.True(g.t, ok)
			metres, ok := engine.FromTex(tex, engine.MetresPer)
			require.True(g.t, ok)
			needles := math.Pi * g.float("inches") * g.float("cut")
			courses := g.float("feeds") * g.float("rpm") * 60 * 24 * g.float("efficiency") * g.float("machines")
			length := needles * courses * g.float("loop_mm") / 1000
			return floats(length * 100 / metres.Float() / 1000)
		},
	}
}
