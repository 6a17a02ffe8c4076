package page

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// rehang says how the yoke is hung again, "" where the yoke is not known or
// too small.
func rehang(p *engine.Plan) string {
	yoke, _, ok := p.Waiting()
	if !ok || p.BandStitches == 0 || p.YokeDecreases < 0 {
		return ""
	}
	if p.Rehang != nil || p.YokeDecreases == 0 {
		return fmt.Sprintf("%d stitches on %d needles: %s.", yoke, p.BandStitches, answer.RehangWords(p))
	}
	stages := engine.SpreadStages(yoke, p.BandStitches)
	parts := make([]string, len(stages))
	for i, m := range stages {
		parts[i] = fmt.Sprintf("Hanging %d, %d stitches on %d needles: %s.", i+1, carried(m), len(m), stageWords(m))
	}
	return strings.Join(parts, " ") + " Knit a plain row between the hangings."
}

func carried(m []int) int {
	n := 0
	for _, stitches := range m {
		n += stitches
	}
	return n
}

// stageWords names what carries two, or what carries one where that is shorter.
func stageWords(m []int) string {
	two, one := columns(m, 2), columns(m, 1)
	switch {
	case len(one) == 0:
		return "two on every needle"
	case len(two) > len(one):
		return "two on every needle except one on " + answer.NeedleRuns(one, len(m))
	}
	return "two on " + answer.NeedleRuns(two, len(m)) + "; one on every other needle"
}

// columns are those that carry so many stitches.
func columns(m []int, stitches int) []int {
	var cols []int
	for c, s := range m {
		if s == stitches {
			cols = append(cols, c)
		}
	}
	return cols
}
