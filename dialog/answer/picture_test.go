package answer

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"foldrow/engine"
)

// drawn is the lines of a picture's block and what is written under it.
func drawn(t require.TestingT, text string) (lines []string, legend string) {
	_, text, ok := strings.Cut(text, "```picture")
	require.True(t, ok, "no picture")
	block, rest, _ := strings.Cut(text, "\n```\n")
	_, rest, _ = strings.Cut(rest, "```legend\n")
	legend, _, _ = strings.Cut(rest, "\n```")
	return strings.Split(block, "\n")[1:], legend
}

// TestTheStripGivesTheNeedlesBack reads the bed from its picture alone: the
// figures over the columns and the signs under them.
func TestTheStripGivesTheNeedlesBack(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p := drawnPlan(rt)
		lines, legend := drawn(rt, Strip(p))
		needles, centre := strings.Split(lines[1], ""), strings.IndexByte(lines[1], '|')
		var at []int // columns of the picture, one for each needle
		for x := bedLabel; x < len(needles); x++ {
			if needles[x] >= "0" && needles[x] <= "9" {
				at = append(at, x)
			}
		}
		require.Len(rt, at, p.BandStitches)
		for c, x := range at {
			name := engine.NeedleName(c, p.BandStitches)
			require.Equal(rt, name[len(name)-1:], needles[x])
			require.Equal(rt, name[0] == 'L', x < centre, name)
		}
		for _, line := range lines[2:] {
			name, sign := strings.Fields(line)[0], ""
			var want []int
			switch name {
			case "two":
				want, sign = Doubled(p), "="
			case "latch":
				want, sign = slices.Sorted(slices.Values(p.RibColumns)), "v"
			case "hem":
				want, sign = slices.Sorted(slices.Values(p.HemColumns)), "u"
			}
			require.Contains(rt, legend, " "+sign+" ")
			var got []int
			for c, x := range at {
				if line[x:x+1] == sign {
					got = append(got, c)
				} else {
					require.Equal(rt, ".", line[x:x+1])
				}
			}
			require.Equal(rt, want, got, name)
		}
		for _, name := range strings.Fields(lines[0]) {
			c, ok := engine.NeedleColumn(name, p.BandStitches)
			require.True(rt, ok, name)
			x := strings.Index(lines[0], name)
			require.True(rt, at[c] >= x && at[c] < x+len(name), "%s stands over its needle", name)
		}
	})
}

// TestTheTensionIsDrawn reads every row's setting from the picture.
func TestTheTensionIsDrawn(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p := drawnPlan(rt)
		in := p.In.With(engine.FoldRow, engine.Int(int64(rapid.IntRange(0, 3).Draw(rt, "fold")))).
			With(engine.RowsPerClick, engine.Int(int64(rapid.IntRange(0, 4).Draw(rt, "every")))).
			With(engine.NumberEffect, engine.Int(4)).With(engine.ClicksPerNumber, engine.Int(2)).
			With(engine.Layers, engine.Int(int64(rapid.IntRange(1, 2).Draw(rt, "layers"))))
		if rapid.Bool().Draw(rt, "dial") {
			in = in.With(engine.MainTension, engine.Int(7)).With(engine.DialMin, engine.Int(1))
		}
		p = engine.Solve(in)
		lines, _ := drawn(rt, tensionPicture(p))
		var got []string
		for x := range slices.MaxFunc(lines, func(a, b string) int { return len(a) - len(b) }) {
			for _, line := range lines {
				if x < len(line) && line[x] == '#' {
					got = append(got, strings.Fields(line)[0])
				}
			}
		}
		var want []string
		for _, r := range p.Tension() {
			want = append(want, strings.Fields(setting(r))[0])
		}
		require.Equal(rt, want, got)
	})
}

// TestTheBandLeans: the picture stands as steep as the number says, as far as
// characters go, and never leaves its room.
func TestTheBandLeans(t *testing.T) {
	for _, lean := range []float64{0, 10, 20, 35, 50, 70, 85, 90} {
		for _, neck := range []int64{25, 42, 60} {
			for _, deep := range []int64{2, 4, 20} {
				p := engine.Solve(engine.Inputs{}.WithGarment(engine.Pullover).WithRib(engine.Rib{Knit: 1, Purl: 1}).
					With(engine.StitchGauge, engine.Int(28)).With(engine.RowGauge, engine.Int(40)).
					With(engine.Neck, engine.Int(neck)).With(engine.Depth, engine.Int(deep)).With(engine.Layers, engine.Int(1)))
				lines := sideView(p, lean, "edge")
				require.LessOrEqual(t, len(lines), sideHigh+4)
				top, tip := len(lines), 0
				seam := len(lines) - 2
				for y := 0; y <= seam; y++ {
					line, _, _ := strings.Cut(lines[y], ":")
					require.LessOrEqual(t, len(lines[y]), 40)
					line = strings.Replace(line, "edge", "    ", 1)
					if y < seam {
						line = strings.Replace(line, "yoke", "    ", 1)
					}
					if x := strings.LastIndexAny(line, "|/_"); x >= 0 && y < top {
						top, tip = y, x
					}
				}
				up, across := float64(seam-top)*2, float64(tip-sideYoke)
				if long := math.Hypot(up, across); long > 8 {
					require.InDelta(t, lean, math.Atan2(across, up)*180/math.Pi, 100/long+4, "neck %d deep %d:\n%s", neck, deep, strings.Join(lines, "\n"))
				}
			}
		}
	}
}
