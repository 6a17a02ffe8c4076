package dialog

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// repeatsFit is the pattern repeats that go into a count without a rest: into
// the one asked about, or into each stage's.
func (c *turn) repeatsFit(p *engine.Plan) string {
	edge := p.In.Int(engine.StageEdge)
	if n := c.m.Count; n > 0 {
		return repeatsInto(n, edge) + "."
	}
	if p.Yoke == nil || p.Yoke.Stages == nil {
		return "Into which count? For example: *which repeats fit 226*. With a yoke planned I tell it for each stage: *yoke of 264 stitches in 4 stages*."
	}
	var lines []string
	for i, s := range p.Yoke.Stages[:len(p.Yoke.Stages)-1] {
		lines = append(lines, fmt.Sprintf("- stage %d, %s", i+1, repeatsInto(s.Count, edge)))
	}
	return strings.Join(lines, "\n")
}

// mostRepeatsNamed keeps a count with many divisors on one line.
const mostRepeatsNamed = 12

// repeatsInto is "226 stitches: repeats of 2 or 113", and what one stitch more
// would allow where no repeat goes into it.
func repeatsInto(n, edge int) string {
	text := fmt.Sprintf("**%d stitches**", n)
	if edge > 0 {
		text += fmt.Sprintf(", %d of them at the edge", edge)
	}
	if fit := engine.RepeatsOf(n, edge); len(fit) > 0 {
		return text + ": repeats of " + repeatList(fit)
	}
	text += ": no repeat fits"
	for _, near := range []int{n + 1, n - 1} {
		if fit := engine.RepeatsOf(near, edge); len(fit) > 0 {
			text += fmt.Sprintf("; %d would take %s", near, repeatList(fit))
		}
	}
	return text
}

func repeatList(fit []int) string {
	var names []string
	for i, r := range fit {
		if i == mostRepeatsNamed {
			return strings.Join(names, ", ") + " and more"
		}
		names = append(names, fmt.Sprint(r))
	}
	if len(names) == 1 {
		return names[0]
	}
	return strings.Join(names[:len(names)-1], ", ") + " or " + names[len(names)-1]
}
