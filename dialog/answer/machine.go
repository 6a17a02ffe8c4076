package answer

import (
	"fmt"
	"slices"
	"strings"

	"foldrow/engine"
)

// mostChanged is how long the needles that a change moves are told; a longer
// list pushes the table above it off the window.
const mostChanged = 5 * planWidth

// atTheMachine says in a few words what changes under her hands.
func (v Voice) atTheMachine(before, after *engine.Plan) string {
	if text := v.handsOn(before, after, false); len(text) <= mostChanged {
		return text
	}
	return v.handsOn(before, after, true) + " *Show the needles* names each."
}

// handsOn lists what changes; in brief with how many needles, not which.
func (v Voice) handsOn(before, after *engine.Plan, brief bool) string {
	tell := func(words string, list string, n int) string {
		if brief && len(list) > planWidth {
			return fmt.Sprintf("%s %s", words, Count(n, "needle", "needles"))
		}
		return words + " " + list
	}
	var parts []string
	moved := before.BandStitches != after.BandStitches || before.Pieces != after.Pieces
	if moved && after.BandStitches > 0 {
		parts = append(parts, Span(after))
	}
	if (moved || !slices.Equal(before.RibColumns, after.RibColumns)) && len(after.RibColumns) > 0 {
		parts = append(parts, tell("latch", Latch(after), columns(after)))
	}
	if (moved || !slices.Equal(before.EmptyColumns, after.EmptyColumns)) && len(after.EmptyColumns) > 0 {
		parts = append(parts, tell("leave out of work", Empty(after), empties(after)))
	}
	if (moved || !slices.Equal(before.HemColumns, after.HemColumns)) && len(after.HemColumns) > 0 {
		parts = append(parts, tell("hang the hem on", HemBumps(after), bumps(after)))
	}
	if rows := after.Tension(); len(rows) > 0 && !slices.EqualFunc(before.Tension(), rows, sameDial) {
		parts = append(parts, gradingWords(after, rows)+" (*show tension* lists every row)")
	}
	if a := v.yokeAtTheMachine(before, after); a != "" {
		parts = append(parts, a)
	}
	if b, a := RehangWords(before), RehangWords(after); a != b && a != "" {
		if brief && len(a) > planWidth {
			a = "lose " + Count(after.YokeDecreases, "stitch", "stitches")
		}
		parts = append(parts, "hang again: "+a)
	}
	if len(parts) == 0 {
		return ""
	}
	return "At the machine: " + strings.Join(parts, "; ") + "."
}

// bumps, columns and empties are how many needles a hem is hung on, a rib is
// latched on and a mock rib leaves out, those of each piece where there is more
// than one: pieces have ends of their own.
func bumps(p *engine.Plan) int   { return onBed(p, func(q *engine.Plan) []int { return q.HemColumns }) }
func columns(p *engine.Plan) int { return onBed(p, func(q *engine.Plan) []int { return q.RibColumns }) }
func empties(p *engine.Plan) int {
	return onBed(p, func(q *engine.Plan) []int { return q.EmptyColumns })
}

func onBed(p *engine.Plan, cols func(*engine.Plan) []int) int {
	n := 0
	for _, q := range p.OnBed() {
		n += len(cols(q))
	}
	return n
}
