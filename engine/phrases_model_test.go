package engine

// Run is a group of doubled needles: Count of them, the first at column First
// from the left, each Step columns after the one before. Step is 0 where the
// group is a single needle.
type Run struct{ First, Step, Count int }

// FromPhrases is the map on that many needles which Phrases described, nil
// where a step leaves the needles or goes nowhere. A negative first is a map
// with no doubled needle.
func FromPhrases(first int, phrases []Phrase, needles int) []int {
	var runs []Run
	if first >= 0 {
		runs = append(runs, Run{First: first, Count: 1})
	}
	at := first
	for _, p := range phrases {
		for range p.Times {
			for _, step := range p.Steps {
				at += step
				runs = append(runs, Run{First: at, Count: 1})
			}
		}
	}
	return FromRuns(runs, needles)
}

// Runs describes a map of Spread in the fewest groups that follow each other
// from left to right, so that words made from them give the map again.
// Columns that do not carry two are left out.
func Runs(m []int) []Run {
	var runs []Run
	last := 0
	for col, stitches := range m {
		if stitches != 2 {
			continue
		}
		n := len(runs) - 1
		switch {
		case n >= 0 && runs[n].Count == 1:
			runs[n].Step, runs[n].Count = col-last, 2
		case n >= 0 && runs[n].Step == col-last:
			runs[n].Count++
		default:
			runs = append(runs, Run{First: col, Count: 1})
		}
		last = col
	}
	return runs
}

// FromRuns is the map on that many needles which Runs described, nil where a
// group leaves the needles or two groups meet on one needle.
func FromRuns(runs []Run, needles int) []int {
	m := make([]int, needles)
	for i := range m {
		m[i] = 1
	}
	for _, r := range runs {
		for i := range r.Count {
			col := r.First + i*r.Step
			if col < 0 || col >= needles || m[col] == 2 {
				return nil
			}
			m[col] = 2
		}
	}
	return m
}
