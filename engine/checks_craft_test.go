package engine_test

import (
	"fmt"
	"slices"
	"strings"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
)

// yokeWays are about the yoke and its decreases.
func yokeWays() map[string]way {
	return map[string]way{
		"yoke base":           func(g *given) string { return ints(engine.YokeBase(g.int("body"))) },
		"percent of stitches": func(g *given) string { return ints(engine.PercentOf(g.int("stitches"), g.num("percent"))) },
		"percent neck": func(g *given) string {
			step := 1
			if g.has("step") {
				step = g.int("step")
			}
			return ints(engine.PercentNeck(g.int("body"), g.num("percent"), step, 0))
		},
		"neck percentages": func(g *given) string {
			low, high, ok := engine.NeckPercents(engine.Wearer(g.text("wearer")))
			require.True(g.t, ok)
			return ints(low, high)
		},
		"rounds and stitches left": func(g *given) string {
			return ints(slice(engine.Rounds(g.int("from"), g.int("to"), g.int("per_round")))...)
		},
		"quarter rule": func(g *given) string { // inches
			return floats(engine.YokeDepthFor(g.num("bust")).Rule.Div(inch()).Float())
		},
		"yoke depth, pattern 1": func(g *given) string { return publishedDepth(g, 1) },
		"yoke depth, pattern 2": func(g *given) string { return publishedDepth(g, 2) },
		"stage rows": func(g *given) string {
			return ints(engine.StageRows(g.num("depth"), g.num("row_gauge"), g.int("stages"))...)
		},
		"joined stitches": func(g *given) string {
			return ints(engine.Joined(g.int("body"), g.int("sleeve"), g.int("underarm")))
		},
		"yoke stages": yokeStages,
		"even decreases": func(g *given) string {
			edge := g.int("edge")
			n, d := g.int("stitches")-edge, g.int("decreases")
			m := engine.Spread(n, n-d)
			groups := around(m, 2)
			for i := range groups {
				groups[i]++ // a step of s needles holds s+1 stitches: its last carries two
			}
			return fmt.Sprintf("%d left: %s", len(m)+edge, counted(groups))
		},
		"steps between doubled needles": func(g *given) string {
			return ints(around(engine.Spread(g.int("stitches"), g.int("needles")), 2)...)
		},
	}
}

// publishedDepth is the end of the published span that a pattern stands at, at
// the busts of its own sizes: the first pattern is nowhere the deeper.
func publishedDepth(g *given, pattern int) string {
	d := engine.YokeDepthFor(g.num("bust"))
	if pattern == 1 {
		return floats(d.Low.Float())
	}
	return floats(d.High.Float())
}

func yokeStages(g *given) string {
	outside := g.int("outside")
	stages, err := engine.Stages(engine.YokeSpec{
		Start: g.int("start") - outside, Neck: g.int("neck") - outside,
		Method: engine.YokeMethod(g.text("method")), Stages: make([]engine.StageSpec, g.int("stages")),
	})
	require.NoError(g.t, err)
	var list []int
	for _, s := range stages {
		list = append(list, s.Count+outside)
	}
	return ints(list...)
}

func slice(list ...int) []int { return list }

// around are the sorted steps from one place that holds mark to the next, the
// last one around to the first.
func around(m []int, mark int) []int {
	var at []int
	for i, v := range m {
		if v == mark {
			at = append(at, i)
		}
	}
	steps := make([]int, len(at))
	for i := range at {
		next := len(m) + at[0]
		if i+1 < len(at) {
			next = at[i+1]
		}
		steps[i] = next - at[i]
	}
	slices.Sort(steps)
	return steps
}

// counted tells sizes as "5 of 8 + 8 of 7", the largest first.
func counted(sizes []int) string {
	sizes = slices.Clone(sizes)
	slices.Sort(sizes)
	slices.Reverse(sizes)
	var parts []string
	for i := 0; i < len(sizes); {
		n := i
		for n < len(sizes) && sizes[n] == sizes[i] {
			n++
		}
		parts = append(parts, fmt.Sprintf("%d of %d", n-i, sizes[i]))
		i = n
	}
	return strings.Join(parts, " + ")
}

// edgeWays are about what is picked up along the fronts, and buttonholes.
func edgeWays() map[string]way {
	holes := func(g *given) engine.Buttonholes {
		b, err := engine.SpaceHoles(engine.HoleSpec{
			Stitches: g.int("stitches"), Holes: g.int("holes"), Size: g.int("size"), Start: g.int("start"), End: g.int("end"),
		})
		require.NoError(g.t, err)
		return b
	}
	return map[string]way{
		"pick-up groups": func(g *given) string { // rows from one that is passed over to the next
			return ints(around(engine.PickUpMap(g.int("stitches"), g.int("rows")), 0)...)
		},
		"pick-up by fraction": func(g *given) string {
			return ints(engine.PickUpBy(g.int("of"), g.int("every"), g.int("rows")))
		},
		"best fraction": func(g *given) string {
			return ints(slice(engine.BestFraction(engine.Frac(int64(g.int("stitches")), int64(g.int("rows"))), 10))...)
		},
		"front less half the band": func(g *given) string {
			return floats(engine.FrontLess(g.int("front"), g.int("band")).Float())
		},
		"buttonhole gaps": func(g *given) string { return counted(holes(g).Gaps) },
		"middle hole": func(g *given) string {
			b := holes(g)
			return ints(b.First[len(b.First)/2])
		},
		"buttonhole heights": func(g *given) string {
			var list []float64
			for _, h := range engine.HolePlaces(g.num("first"), g.num("last"), g.int("holes")) {
				list = append(list, h.Float())
			}
			return floats(list...)
		},
	}
}
