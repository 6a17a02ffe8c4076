package engine

// Phrase is a stretch of a map as a knitter counts it: from the last doubled
// needle go on by each of Steps, and do all of Steps Times times. Steps {3, 2}
// and Times 4 is "every third and second needle in turn, four times".
type Phrase struct {
	Steps []int
	Times int
}

// maxPhraseSteps is the longest turn that is still easy to keep in the head.
const maxPhraseSteps = 6

// Phrases describes a map of Spread as the column of its first doubled needle
// and phrases that lead from there to every other one. It is shorter than
// Runs where steps alternate. first is -1 where no needle carries two.
//
// Of all ways to cut the steps into phrases it takes one with the least to
// say: a phrase costs one for each of its steps and one for itself.
func Phrases(m []int) (first int, phrases []Phrase) {
	first, last := -1, -1
	var steps []int
	for col, stitches := range m {
		if stitches != 2 {
			continue
		}
		if last < 0 {
			first = col
		} else {
			steps = append(steps, col-last)
		}
		last = col
	}
	return first, Turns(steps, maxPhraseSteps)
}

// Turns cuts steps of any meaning into turns of at most so many steps that are
// repeated. It finds, from the right end, the cheapest way to say each tail of
// steps; ties go to the shorter turn, then to the longer stretch.
func Turns(steps []int, most int) []Phrase {
	n := len(steps)
	cost := make([]int, n+1)
	best := make([]Phrase, n)
	for i := n - 1; i >= 0; i-- {
		cost[i] = n*(most+1) + 1
		for turn := 1; turn <= min(most, n-i); turn++ {
			for times := repeats(steps[i:], turn); times > 0; times-- {
				if c := 1 + turn + cost[i+turn*times]; c < cost[i] {
					cost[i] = c
					best[i] = Phrase{Steps: steps[i : i+turn], Times: times}
				}
			}
		}
	}
	var phrases []Phrase
	for i := 0; i < n; i += len(best[i].Steps) * best[i].Times {
		phrases = append(phrases, best[i])
	}
	return phrases
}

// repeats is how many times in a row the first turn of steps is there.
func repeats(steps []int, turn int) int {
	i := turn
	for i < len(steps) && steps[i] == steps[i-turn] {
		i++
	}
	return i / turn
}

// Singles turns a map of Spread around: what carries two carries one, and the
// other way. Where most needles carry two it is shorter to name those that
// carry one.
func Singles(m []int) []int {
	turned := make([]int, len(m))
	for i, stitches := range m {
		turned[i] = 3 - stitches
	}
	return turned
}
