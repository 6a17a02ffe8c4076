package engine

// The percentage system for round yokes counts everything from K, the body's
// stitches. Figures in percent of K: sleeve 33, underarm 8 at each of its
// places, neck 40 (a published summary of two yoke handbooks,
// handmadestitchbystitch.wordpress.com; a published pullover has sleeves of
// 36-38 and underarms of 8.3-9.3, knitty.com winter 2005).
const (
	SleevePercent   = 33
	UnderarmPercent = 8
	NeckPercent     = 40
)

// PercentOf is percent of k stitches, whole, a half going up.
func PercentOf(k int, percent Num) int {
	return percent.Mul(Frac(int64(k), 100)).Round()
}

// Joined is how many stitches a yoke begins with where body and two sleeves
// meet: every underarm is set aside twice from the body and once from each
// sleeve.
func Joined(body, sleeve, underarm int) int {
	return body + 2*sleeve - 4*underarm
}

// YokeBase is Joined by the percentage system: 134 % of the body, but for the
// rounding of sleeve and underarm to whole stitches.
func YokeBase(body int) int {
	return Joined(body, PercentOf(body, Int(SleevePercent)), PercentOf(body, Int(UnderarmPercent)))
}

// Wearer is whom the neck is for.
type Wearer string

// The wearers for whom neck percentages are published.
const (
	Adult     Wearer = "adult"
	Child     Wearer = "child"
	Infant    Wearer = "infant"
	Oversized Wearer = "oversized"
)

// NeckPercents are the published lowest and highest neck in percent of the
// body's stitches: adult 40-45, child 50, infant up to 60, an oversized body
// 35 (cs.oswego.edu/~ebozak, two designers' articles of the 1990s). ok is
// false for a wearer not listed.
func NeckPercents(w Wearer) (low, high int, ok bool) {
	switch w {
	case Adult:
		return 40, 45, true
	case Child:
		return 50, 50, true
	case Infant:
		return 50, 60, true
	case Oversized:
		return 35, 35, true
	}
	return 0, 0, false
}

// PercentNeck is percent of the body's stitches, fitted to a multiple of step plus
// edge; step 2 and edge 0 for an even count.
func PercentNeck(body int, percent Num, step, edge int) int {
	return closing{first: edge, step: max(step, 1)}.nearest(percent.Mul(Frac(int64(body), 100)))
}

// Rounds is how many decrease rounds of perRound stitches lie between two
// counts, and how many stitches are then still to lose: the half step that a
// division on paper hides. Both are 0 where perRound is below 1.
func Rounds(from, to, perRound int) (rounds, left int) {
	if perRound < 1 || from < to {
		return 0, 0
	}
	return (from - to) / perRound, (from - to) % perRound
}

// StageRows are the rows of each of n stages that share a depth in cm at a
// row gauge to 10 cm; what does not divide is spread over them. nil where n is
// below 1 or the depth is not over 0.
func StageRows(depth, rowGauge Num, n int) []int {
	if n < 1 || depth.Sign() <= 0 {
		return nil
	}
	return evenGaps(depth.Mul(rowGauge).Div(Int(10)).Round(), n)
}
