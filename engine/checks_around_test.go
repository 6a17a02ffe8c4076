package engine_test

import (
	"github.com/stretchr/testify/require"

	"foldrow/engine"
)

// aroundWays are about the wearer, the setting, the kind of band and the bed.
func aroundWays() map[string]way {
	return map[string]way{
		"way of setting": func(g *given) string { return g.inputs().Text(engine.KeySetMethod) },
		"numbers tighter": func(g *given) string {
			in := g.inputs()
			return floats(in.Num(engine.StartClicks).Div(in.Num(engine.ClicksPerNumber)).Float())
		},
		"bed suits": func(g *given) string {
			side, possible := engine.SuitsBed(engine.PitchOf(g.num("stitch_gauge"), g.inputs().Num(engine.NeedlePitch)))
			switch {
			case side == 0:
				return "suits"
			case possible:
				return "possible"
			}
			return "no"
		},
		"smallest neck": func(g *given) string {
			p, ok := engine.SmallestNeck(g.inputs(), g.num("head"))
			require.True(g.t, ok)
			return ints(p.BandStitches)
		},
	}
}

// smallestNeckByTrying goes up through every neck in millimetres until the
// opening reaches the head and 2 cm.
func smallestNeckByTrying(g *given) string {
	in := g.inputs()
	for mm := int64(50); mm < 2000; mm++ {
		p := engine.Solve(in.With(engine.Neck, engine.Frac(mm, 10)))
		if open, ok := p.Float(engine.HeadOpening); ok && open >= g.float("head")+2-1e-9 {
			return ints(p.BandStitches)
		}
	}
	return "none"
}
