package engine_test

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
	"foldrow/rules"
)

// tableWays are about bodies: what the rules carry, and what the engine makes
// of surveys and growth references.
func tableWays() map[string]way {
	spread := func(g *given, find func(rules.Tables, rules.Wearer) (rules.Spread, bool)) string {
		s, ok := find(g.book().Tables, rules.Wearer{Years: g.num("years")})
		require.True(g.t, ok)
		return floats(s.Low.Float(), s.Mid.Float(), s.High.Float())
	}
	return map[string]way{
		"womens size": func(g *given) string {
			s, ok := g.book().Tables.WomansSize(g.text("size"))
			require.True(g.t, ok)
			return floats(s.Head.Float(), s.NeckBase.Float(), s.MidNeck.Float(), s.Bust.Float())
		},
		"published head": func(g *given) string { return spread(g, rules.Tables.Heads) },
		"published neck": func(g *given) string { return spread(g, rules.Tables.Necks) },
		"growth percentiles": func(g *given) string {
			r := engine.LMS{L: g.float("L"), M: g.float("M"), S: g.float("S")}
			return percentiles(g, r.Percentile)
		},
		"survey percentiles": func(g *given) string { return percentiles(g, survey(g).Percentile) },
		"survey moments": func(g *given) string {
			mean, sd := survey(g).Moments()
			return floats(mean, sd)
		},
		"yarn class": func(g *given) string {
			var names []string
			for _, y := range g.book().Tables.YarnsForGauge(g.num("stitch_gauge")) {
				names = append(names, y.Name)
			}
			return strings.Join(names, " + ")
		},
	}
}

func percentiles(g *given, at func(float64) float64) string {
	var list []float64
	for _, p := range strings.Fields(g.text("percent")) {
		percent, err := strconv.ParseFloat(p, 64)
		require.NoError(g.t, err)
		list = append(list, at(percent/100))
	}
	return floats(list...)
}

// survey is the people of one sex by one girth in mm, from the published
// counts.
func survey(g *given) engine.Histogram {
	f, err := os.Open("../testdata/published/ansur2-neck-head-histogram.csv")
	require.NoError(g.t, err)
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(g.t, err)
	sex, measure := g.text("sex"), g.text("measure")
	var h engine.Histogram
	for _, row := range rows[1:] {
		if row[0] != sex || row[1] != measure {
			continue
		}
		mm, err := strconv.ParseFloat(row[2], 64)
		require.NoError(g.t, err)
		count, err := strconv.Atoi(row[3])
		require.NoError(g.t, err)
		h = append(h, engine.Bin{Value: mm, Count: count})
	}
	require.NotEmpty(g.t, h)
	return h
}

// yarnWays are about yarn counts, and measures said in different units.
func yarnWays() map[string]way {
	return map[string]way{
		"yarn count": func(g *given) string {
			tex, ok := engine.Tex(engine.YarnCount(g.text("count")), g.num("value"), g.int("plies"))
			require.True(g.t, ok)
			v, ok := engine.FromTex(tex, engine.YarnCount(g.text("to")))
			require.True(g.t, ok)
			return floats(v.Float())
		},
		"tightness factor": func(g *given) string {
			if g.has("loop_mm") {
				return floats(engine.TightnessFactor(g.num("tex"), g.float("loop_mm")/10))
			}
			loop, ok := g.plan().Float(engine.LoopLength)
			require.True(g.t, ok)
			return floats(engine.TightnessFactor(g.num("tex"), loop))
		},
		"said in another unit": func(g *given) string {
			v := measured(g.t, g.text("said")).Div(measured(g.t, g.text("unit"))).Float()
			require.False(g.t, math.IsNaN(v))
			return floats(v)
		},
		"button lines": func(g *given) string { // mm
			return floats(10 * engine.LineSize(g.num("lines")).Float())
		},
	}
}
