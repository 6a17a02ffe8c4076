package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// FrontLatch names the needles to latch of a front band, piece by piece where
// the bed does not take it at once. What all pieces have alike, their step, is
// said once, since a step at the machine has few lines.
func FrontLatch(p *engine.Plan) string {
	cols := p.FrontRibColumns()
	if len(cols) == 0 {
		return ""
	}
	pieces := p.Front.Parts
	if len(pieces) == 1 {
		return NeedleRuns(pieces[0].Columns(cols), pieces[0].Needles())
	}
	var all []needleRun
	var long, short []string
	for i, t := range pieces {
		here, n := t.Columns(cols), t.Needles()
		long = append(long, fmt.Sprintf("piece %d: %s", i+1, NeedleRuns(here, n)))
		rs := runs(here)
		if len(rs) != 1 || rs[0].groups < 2 || len(all) > 0 && (rs[0].width != all[0].width || rs[0].step != all[0].step) {
			continue
		}
		all = append(all, rs[0])
		short = append(short, fmt.Sprintf("piece %d from %s to %s (%s)", i+1, engine.NeedleName(here[0], n), engine.NeedleName(here[len(here)-1], n), rs[0].count()))
	}
	if len(short) < len(pieces) {
		return strings.Join(long, ". ")
	}
	every := fmt.Sprintf("every %s needle: ", Ordinal(all[0].step))
	if all[0].width > 1 {
		every = fmt.Sprintf("%d side by side at every %s needle: ", all[0].width, Ordinal(all[0].step))
	}
	return every + strings.Join(short, "; ")
}

// count is how many needles, or groups of them, a stretch has.
func (r needleRun) count() string {
	if r.width == 1 {
		return fmt.Sprintf("%d needles", r.groups)
	}
	return fmt.Sprintf("%d groups", r.groups)
}
