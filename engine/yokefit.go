package engine

// counts are the stitches of every stage and the neck: the first as given,
// each between at the nearest whole repeats, the neck as given.
func (y YokeSpec) counts(exact []Num) ([]int, error) {
	n := len(y.Stages)
	out := make([]int, n+1)
	out[0], out[n] = exact[0].Round(), y.Neck
	for i := range out {
		if had := y.Had[i]; had > 0 && had < y.Neck {
			return nil, &HadError{Stage: i, Had: had, Least: y.Neck}
		}
	}
	falls := y.hung(0, out[0]) >= y.Neck
	for i := 1; i < n; i++ {
		out[i] = y.Stages[i].counts().nearest(exact[i])
		falls = falls && out[i] <= y.hung(i-1, out[i-1]) && out[i] >= y.Neck
	}
	if falls {
		return out, nil
	}
	return y.bestFit(exact, out[0])
}

// hung is what the stage after i is hung from where i is planned on count.
func (y YokeSpec) hung(i, count int) int {
	if had := y.Had[i]; had > 0 {
		return had
	}
	return count
}

// bestFit is the falling set of counts with whole repeats whose squared
// distances from exact come to the least, the larger counts on a tie. It
// goes through the stages once, keeping for every count of a stage the best
// way to it: the work grows with stages times stitches.
func (y YokeSpec) bestFit(exact []Num, first int) ([]int, error) {
	n := len(y.Stages)
	type way struct {
		count, from int
		cost        float64
	}
	ways := make([][]way, n)
	ways[0] = []way{{count: first}}
	for i := 1; i < n; i++ {
		before := ways[i-1]
		counts := y.Stages[i].counts()
		at, best := exact[i].Float(), -1
		// Counts from the largest down; the ways before that are large enough
		// only grow more.
		next := 0
		top := 0
		for _, w := range before {
			top = max(top, y.hung(i-1, w.count))
		}
		for c := counts.atMost(top); c >= max(y.Neck, counts.first); c -= counts.step {
			for next < len(before) && y.hung(i-1, before[next].count) >= c {
				if best < 0 || before[next].cost < before[best].cost-1e-9 {
					best = next
				}
				next++
			}
			if best >= 0 {
				d := float64(c) - at
				ways[i] = append(ways[i], way{c, best, before[best].cost + d*d})
			}
		}
		if len(ways[i]) == 0 {
			return nil, &RepeatError{
				Stage: i, Repeat: counts.step, Edge: y.Stages[i].Edge, Least: y.Neck, Most: top,
				Lower: counts.atMost(y.Neck - 1), Higher: counts.above(top),
			}
		}
	}
	best := 0
	for j, w := range ways[n-1] {
		if w.cost < ways[n-1][best].cost-1e-9 {
			best = j
		}
	}
	out := make([]int, n+1)
	out[n] = y.Neck
	for i := n - 1; i >= 0; i-- {
		out[i], best = ways[i][best].count, ways[i][best].from
	}
	return out, nil
}
