package engine

// Formulas of published tables that no plan needs. The tables hold them, and
// they hold what the tables say against each other.

// Wearer is whom the neck is for.
type Wearer string

// The wearers for whom neck percentages are published.
const (
	Adult     Wearer = "adult"
	Child     Wearer = "child"
	Infant    Wearer = "infant"
	Oversized Wearer = "oversized"
)

// HolePlaces are n places at equal distances from first to last, in the
// unit of both; one place is first.
func HolePlaces(first, last Num, n int) []Num {
	var at []Num
	for i := range n {
		along := Frac(int64(i), int64(max(n-1, 1)))
		at = append(at, first.Add(last.Sub(first).Mul(along)))
	}
	return at
}

// LineSize is the diameter in cm of a button of so many lines: 40 lines to
// the inch (from memory).
func LineSize(lines Num) Num { return lines.Mul(Frac(254, 4000)) }

// PickUpBy is what of in every every rows gives over so many rows, a half
// going up; 0 where every is below 1.
func PickUpBy(of, every, rows int) int {
	return Frac(int64(of)*int64(rows), int64(every)).Round()
}

// FrontLess is the width of a front under a band of so many stitches:
// half the band comes off each front, since the bands overlap (a knitting
// forum's worked example, forum.knittinghelp.com 84562).
func FrontLess(front, band int) Num {
	return Int(int64(front)).Sub(Frac(int64(band), 2))
}

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
