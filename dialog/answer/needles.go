package answer

import (
	"fmt"
	"strconv"
	"strings"

	"foldrow/engine"
)

// needleRun is a stretch of a list of columns: groups of side by side needles
// at an equal step.
type needleRun struct {
	first, width, step, groups int
}

// runs cuts ascending columns into stretches of equal groups.
// Any list can be written so.
func runs(cols []int) []needleRun {
	blocks := make([][2]int, 0, len(cols)) // first, width
	for i := 0; i < len(cols); {
		j := i + 1
		for j < len(cols) && cols[j] == cols[j-1]+1 {
			j++
		}
		blocks = append(blocks, [2]int{cols[i], j - i})
		i = j
	}
	var out []needleRun
	for i := 0; i < len(blocks); {
		r := needleRun{first: blocks[i][0], width: blocks[i][1], groups: 1}
		j := i + 1
		for j < len(blocks) && blocks[j][1] == r.width {
			step := blocks[j][0] - blocks[j-1][0]
			if r.groups > 1 && step != r.step {
				break
			}
			r.step = step
			r.groups++
			j++
		}
		out = append(out, r)
		i = j
	}
	return out
}

// fewRuns is how many stretches are told one by one. A longer list that takes
// a third of its needles or more is told by what to take and what to leave;
// a sparser one is walked in turns of its steps.
const fewRuns = 4

// NeedleRuns names the needles of a list of columns, from the left: "L51,
// then every 2nd needle to R50 (51)".
func NeedleRuns(cols []int, stitches int) string {
	if len(cols) == 0 {
		return ""
	}
	var parts []string
	rs := runs(cols)
	if span := cols[len(cols)-1] - cols[0] + 1; len(rs) > fewRuns && 3*len(cols) >= span {
		return takeAndLeave(cols, stitches)
	}
	if len(rs) > fewRuns {
		m := make([]int, stitches)
		for _, c := range cols {
			m[c] = 2
		}
		return walk(m, stitches)
	}
	for _, r := range rs {
		parts = append(parts, r.words(stitches))
	}
	return strings.Join(parts, "; ")
}

func (r needleRun) words(n int) string {
	name := func(c int) string { return engine.NeedleName(c, n) }
	group := func(c int) string { return sideBySide(c, r.width, n) }
	last := r.first + (r.groups-1)*r.step
	switch {
	case r.groups == 1:
		return group(r.first)
	case r.groups == 2:
		return group(r.first) + " and " + group(last)
	case r.width == 1:
		return fmt.Sprintf("every %s needle from %s to %s (%d needles)", Ordinal(r.step), name(r.first), name(last), r.groups)
	}
	return fmt.Sprintf("%d side by side at every %s needle, first %s, last %s (%d groups)",
		r.width, Ordinal(r.step), group(r.first), group(last), r.groups)
}

// Ordinal is "2nd", "3rd", "11th".
func Ordinal(n int) string {
	suffix := "th"
	if n%100 < 11 || n%100 > 13 {
		switch n % 10 {
		case 1:
			suffix = "st"
		case 2:
			suffix = "nd"
		case 3:
			suffix = "rd"
		}
	}
	return strconv.Itoa(n) + suffix
}

// RehangWords says where two stitches go on one needle, hanging by hanging
// and piece by piece where there is more than one.
func RehangWords(p *engine.Plan) string { return byPiece(p, rehangOf) }

func rehangOf(p *engine.Plan) string {
	if len(p.Hangings) > 0 {
		return fmt.Sprintf("%d hangings with a plain row between, since no needle takes more than two. ", p.Stages) + hangingsWords(p)
	}
	doubled := Doubled(p)
	n := p.BandStitches
	switch {
	case p.Rehang == nil:
		return ""
	case len(doubled) == 0:
		return fmt.Sprintf("one stitch on every needle, %s to %s", engine.NeedleName(0, n), engine.NeedleName(n-1, n))
	case len(doubled) == n:
		return "two on every needle"
	case 2*len(doubled) > n:
		return "one only on " + walkOrList(engine.Singles(p.Rehang), n) + "; two on all the rest"
	}
	return "two on " + walkOrList(p.Rehang, n) + "; one on all the rest"
}

// mostListed is how many needles are named one by one; more are told as a walk.
const mostListed = 48

// walkOrList is the walk where its steps are even, and each needle by its name
// where they change in turns: a list is followed with a finger, turns are not.
func walkOrList(m []int, n int) string {
	var cols []int
	for c, s := range m {
		if s == 2 {
			cols = append(cols, c)
		}
	}
	words := walk(m, n)
	if len(cols) > mostListed || !strings.Contains(words, " in turn ") {
		return words
	}
	names := make([]string, len(cols))
	for i, c := range cols {
		names[i] = engine.NeedleName(c, n)
	}
	return strings.Join(names, ", ")
}

// walk leads from the first doubled needle to the last as a knitter counts:
// "L47, then every 4th needle 26 times, to R52".
func walk(m []int, n int) string {
	first, phrases := engine.Phrases(m)
	if first < 0 {
		return "none"
	}
	out, at := []string{engine.NeedleName(first, n)}, first
	for _, ph := range phrases {
		steps := make([]string, len(ph.Steps))
		for i, s := range ph.Steps {
			steps[i] = Ordinal(s)
			at += s * ph.Times
		}
		part := "every " + steps[0] + " needle"
		if len(steps) > 1 {
			part = "the " + strings.Join(steps[:len(steps)-1], ", ") + " and " + steps[len(steps)-1] + " in turn"
		}
		out = append(out, fmt.Sprintf("then %s %s (to %s)", part, times(ph.Times), engine.NeedleName(at, n)))
	}
	return strings.Join(out, ", ")
}

func times(n int) string {
	switch n {
	case 1:
		return "once"
	case 2:
		return "twice"
	}
	return strconv.Itoa(n) + " times"
}

// Doubled lists the columns that carry two stitches.
func Doubled(p *engine.Plan) []int {
	var out []int
	for c, s := range p.Rehang {
		if s == 2 {
			out = append(out, c)
		}
	}
	return out
}

// needleList is a result that names needles, piece by piece where the bed does
// not take the band at once; false where k is none.
func needleList(p *engine.Plan, k engine.Key) (string, bool) {
	switch k {
	case engine.RibColumns:
		return Latch(p), true
	case engine.HemNeedles:
		return HemBumps(p), true
	case engine.EmptyNeedles:
		return Empty(p), true
	case engine.Rehang:
		return RehangWords(p), true
	case engine.YokePlaces:
		return YokePlaces(p), true
	case engine.WorkNeedles:
		return WorkNeedles(p), true
	case engine.HoleNeedles:
		return HoleNeedleList(p.Front), true
	case engine.FrontColumns:
		return FrontLatch(p), true
	}
	return "", false
}
