package engine

import "math"

// Spread is how many stitches each needle carries, from the left, when
// stitches are hung on fewer needles: d = stitches - needles of them carry
// two, the others one. It is nil unless needles <= stitches <= 2*needles.
//
// The rules are those of an even row of decreases with free edges:
//
//   - the gaps between doubled needles differ by at most one;
//   - each end gap is half a gap, to the nearest needle, so both edges stay
//     single whenever needles >= 2d+2;
//   - the row is its own mirror image. Only an odd number of doubled needles
//     on an even number of needles cannot be: no pair of them is then out by
//     more than one needle.
//
// Where the gaps have two sizes, the larger ones are spread among the smaller
// by the same rules, so no part of the row draws in more than another.
func Spread(stitches, needles int) []int {
	d := stitches - needles
	if needles < 1 || d < 0 || d > needles {
		return nil
	}
	m := make([]int, needles)
	for i := range m {
		m[i] = 1
	}
	for _, p := range spreadColumns(d, needles) {
		m[p] = 2
	}
	return m
}

// spreadColumns are the columns of d marks spread over n places.
//
// E single places lie at the two ends together, the d-1 gaps share the other
// n-d-E. E is the even number nearest to one average gap, (n-d)/d, so that
// the ends are equal. Odd d on even n has no mirror image; there, if d divides
// n, all steps are made equal and the left end has one place more.
func spreadColumns(d, n int) []int {
	if d == 0 {
		return nil
	}
	ends := nearestEven(n-d, d)
	if d%2 == 1 && n%(2*d) == 0 {
		ends = n/d - 1
	}
	cols := make([]int, 0, d)
	at := (ends + 1) / 2
	for _, gap := range evenGaps(n-d-ends, d-1) {
		cols = append(cols, at)
		at += gap + 1
	}
	return append(cols, at)
}

// evenGaps shares total among n gaps; those one larger are themselves spread.
func evenGaps(total, n int) []int {
	if n == 0 {
		return nil
	}
	gaps := make([]int, n)
	for i := range gaps {
		gaps[i] = total / n
	}
	for _, i := range spreadColumns(total%n, n) {
		gaps[i]++
	}
	return gaps
}

// nearestEven is the even number nearest to a/b, the larger on a tie; a >= 0
// and b > 0.
func nearestEven(a, b int) int { return (a + b) / (2 * b) * 2 }

// SpreadStages is Spread for any number of stitches from needles upwards: a
// needle never takes more than two at a hanging, so more than twice as many
// need two hangings or more, with a row knitted between. Every map hangs what
// the one before left; the last leaves needles. The counts between fall by an
// equal share each time. No hanging is needed, and nil returned, where
// stitches are not more than needles.
func SpreadStages(stitches, needles int) [][]int { return spreadRounds(stitches, needles, 0) }

// spreadRounds is SpreadStages with the counts between held to the needles of
// the bed where two on each of them are enough; bed is 0 where it is not known.
func spreadRounds(stitches, needles, bed int) [][]int {
	if needles < 1 || stitches <= needles {
		return nil
	}
	left := 1
	for c := needles; c < (stitches+1)/2; c *= 2 {
		left++
	}
	var stages [][]int
	for ; left > 0; left-- {
		share := math.Pow(float64(needles)/float64(stitches), 1/float64(left))
		next := int(math.Round(float64(stitches) * share))
		// What is left must fit the hangings to come, and this one.
		next = min(next, needles<<(left-1))
		if bed > 0 {
			next = min(next, bed)
		}
		next = max(needles, (stitches+1)/2, next)
		stages = append(stages, Spread(stitches, next))
		stitches = next
	}
	return stages
}
