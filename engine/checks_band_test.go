package engine_test

import (
	"github.com/stretchr/testify/require"

	"foldrow/engine"
)

// inch is one inch in cm.
func inch() engine.Num { return engine.Frac(254, 100) }

// bandWays are about the stitches of the band and the needles they hang on.
func bandWays() map[string]way {
	return map[string]way{
		"closing counts": func(g *given) string {
			in, first, last := g.inputs(), g.int("from"), g.int("to")
			var list []int
			for n := first; n <= last; n++ {
				if _, _, closes := engine.Closing(in, n); closes {
					list = append(list, n)
				}
			}
			return ints(list...)
		},
		"neck of a count": func(g *given) string { // inches
			neck, ok := engine.NeckOf(g.inputs(), g.int("stitches"))
			require.True(g.t, ok)
			return floats(neck.Div(inch()).Float())
		},
		"pieces on the bed": func(g *given) string { return ints(g.plan().Pieces) },
		"end needles": func(g *given) string {
			n := g.int("stitches")
			return engine.NeedleName(0, n) + " " + engine.NeedleName(n-1, n)
		},
		"first latched stitch": func(g *given) string { return ints(g.plan().RibColumns[0] + 1) },
		"hem by stitch": func(g *given) string {
			var list []int
			for _, c := range g.plan().HemColumns {
				list = append(list, c+1)
			}
			return ints(list...)
		},
		"swatch stitches": func(g *given) string {
			n, _, ok := engine.SwatchFor(g.inputs(), g.num("within"))
			require.True(g.t, ok)
			return ints(n)
		},
		"default": func(g *given) string {
			return floats(g.inputs().Num(engine.Key(g.text("key"))).Float())
		},
	}
}

// rowWays are about rows, tension and the yarn that goes into them.
func rowWays() map[string]way {
	return map[string]way{
		"dial by row": func(g *given) string {
			var list []float64
			for _, r := range g.plan().Tension() {
				list = append(list, *r.Dial)
			}
			return floats(list...)
		},
		"gauge at the fold": func(g *given) string { // of a band without seams
			p := g.plan()
			return floats(10 * float64(p.BandStitches) / p.FoldWidth.Float())
		},
		"calibrated number": func(g *given) string {
			v, ok := engine.Calibrate(g.num("gauge_a"), g.num("dial_a"), g.num("gauge_b"), g.num("dial_b"), 1)
			require.True(g.t, ok)
			return floats(v.Float())
		},
		"loop length": loopLength,
		"sewing-off yarn": func(g *given) string { // without the tails: what twice the band takes more
			one, two := g.inputs(), g.inputs()
			two = two.With(engine.Neck, two.Num(engine.Neck).Mul(engine.Int(2)))
			return floats(engine.Solve(two).OffYarn.Sub(engine.Solve(one).OffYarn).Float())
		},
		"row yarn": func(g *given) string { // inches; ten stitches to the inch
			gauge := engine.Int(100).Div(inch())
			row := make([]bool, g.int("width_in")*10)
			yarn := engine.Row(row, engine.RowSpec{Gauge: gauge}).MainYarn
			return floats(yarn.Div(inch()).Add(g.num("tails_in")).Float())
		},
		"two-colour row yarn": func(g *given) string {
			var row []bool
			for _, r := range g.text("row") {
				row = append(row, r == 'x')
			}
			c := engine.Row(row, engine.RowSpec{Gauge: g.num("stitch_gauge")})
			return floats(c.MainYarn.Float(), c.ContrastYarn.Float())
		},
		"colourwork numbers looser": func(*given) string { return ints(engine.ColourworkNumbers) },
	}
}

// loopLength is the plan's loop in mm: its middle for washed knitting, and the
// ends of its spread for dry and for fully relaxed.
func loopLength(g *given) string {
	p := g.plan()
	mid, ok := p.Float(engine.LoopLength)
	require.True(g.t, ok)
	low, high, ok := p.Spread(engine.LoopLength, engine.Spans{})
	require.True(g.t, ok)
	loop, ok := map[string]float64{"dry relaxed": low, "washed": mid, "fully relaxed": high}[g.text("state")]
	require.True(g.t, ok, "no such state")
	return floats(10 * loop)
}
