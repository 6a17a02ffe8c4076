package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// longestTurn is how many times "take some, leave some" make a turn that can
// be kept in the head at the machine.
const longestTurn = 5

// takeLeave is one stretch of needles: so many to take, then so many to leave.
type takeLeave struct{ take, leave int }

// takeAndLeave tells a dense list of columns, ascending, as a knitter counts
// along the bed: "the needles from L53: take 1, leave 1, take 2, leave 2, 9
// times (to R1); then R2+R3". What does not repeat is named needle by needle.
func takeAndLeave(cols []int, n int) string {
	pairs := takes(cols)
	steps := make([]int, len(pairs))
	for i, p := range pairs {
		steps[i] = p.take*n + p.leave // leave < n: the two cannot be confused
	}
	var parts, names []string
	at, i := cols[0], 0
	name := func(c int) string { return engine.NeedleName(c, n) }
	for _, turn := range engine.Turns(steps, longestTurn) {
		from := at
		var words []string
		for _, p := range pairs[i : i+len(turn.Steps)] {
			words = append(words, fmt.Sprintf("take %d, leave %d", p.take, p.leave))
			at += p.take + p.leave
		}
		if turn.Times == 1 {
			for _, p := range pairs[i : i+len(turn.Steps)] {
				names = append(names, sideBySide(from, p.take, n))
				from += p.take + p.leave
			}
			i += len(turn.Steps)
			continue
		}
		if names != nil {
			parts, names = append(parts, strings.Join(names, ", ")), nil
		}
		at = from + (at-from)*turn.Times
		parts = append(parts, fmt.Sprintf("from %s: %s, %s (to %s)", name(from), strings.Join(words, ", "), times(turn.Times), name(at-1)))
		i += len(turn.Steps) * turn.Times
	}
	if names != nil {
		parts = append(parts, strings.Join(names, ", "))
	}
	text := strings.Join(parts, "; then ")
	if strings.HasPrefix(text, "from ") {
		return "the needles " + text // it follows a word like "on"
	}
	return text
}

// takes cuts the columns into what is taken side by side and what is left
// after it; nothing is left after the last.
func takes(cols []int) []takeLeave {
	var out []takeLeave
	for i, c := range cols {
		if i > 0 && c == cols[i-1]+1 {
			out[len(out)-1].take++
			continue
		}
		if i > 0 {
			out[len(out)-1].leave = c - cols[i-1] - 1
		}
		out = append(out, takeLeave{take: 1})
	}
	return out
}

// sideBySide names so many needles from column c: "L3", "L3+L2", "L5 to L3".
func sideBySide(c, width, n int) string {
	switch width {
	case 1:
		return engine.NeedleName(c, n)
	case 2:
		return engine.NeedleName(c, n) + "+" + engine.NeedleName(c+1, n)
	}
	return engine.NeedleName(c, n) + " to " + engine.NeedleName(c+width-1, n)
}
