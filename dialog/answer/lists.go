package answer

import (
	"strconv"
	"strings"

	"foldrow/engine"
)

// listed is a result that is a list by stage or by row, in one line; "" for
// anything else.
func (v Voice) listed(k engine.Key, val any) string {
	var parts []string
	switch list := val.(type) {
	case []int:
		for _, n := range list {
			parts = append(parts, strconv.Itoa(n))
		}
	case []float64:
		for _, f := range list {
			parts = append(parts, v.listedFigure(k, f))
		}
	case [][]string:
		for _, pieces := range list {
			parts = append(parts, strings.Join(pieces, " and "))
		}
	}
	return strings.Join(parts, ", ")
}

func (v Voice) listedFigure(k engine.Key, f float64) string {
	switch k {
	case engine.StageErrors:
		if f > 0 {
			return "+" + trim(f, 2)
		}
		return trim(f, 2)
	case engine.ChartMainYarn, engine.ChartSecondYarn:
		return v.yarnLength(f)
	}
	return trim(f, 1) + " %"
}

// heights is a list of lengths in the knitter's unit.
func (v Voice) heights(s string) string {
	var parts []string
	for _, w := range strings.Fields(s) {
		if n, ok := engine.ParseNum(w); ok {
			parts = append(parts, v.Len(n.Float()))
		}
	}
	return strings.Join(parts, ", ")
}

// hadWords is "131 on stage 2, 98 on stage 3".
func hadWords(s string) string {
	var parts []string
	for _, w := range strings.Fields(s) {
		if stage, count, ok := strings.Cut(w, "="); ok {
			parts = append(parts, count+" on stage "+stage)
		}
	}
	return strings.Join(parts, ", ")
}

// yokeAtTheMachine names the hangings that change between two plans, in short.
func (v Voice) yokeAtTheMachine(before, after *engine.Plan) string {
	y := after.Yoke
	if y == nil || y.Stages == nil || v.Value(before, engine.StageCounts) == v.Value(after, engine.StageCounts) {
		return ""
	}
	return Count(len(y.Stages)-1, "hanging", "hangings") + " of the yoke, each on the needles of its stage (*how do I hang stage 2*)"
}
