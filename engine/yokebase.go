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

// StageRows are the rows of each of n stages that share a depth in cm at a
// row gauge to 10 cm; what does not divide is spread over them. nil where n is
// below 1 or the depth is not over 0.
func StageRows(depth, rowGauge Num, n int) []int {
	if n < 1 || depth.Sign() <= 0 {
		return nil
	}
	return evenGaps(depth.Mul(rowGauge).Div(Int(10)).Round(), n)
}
