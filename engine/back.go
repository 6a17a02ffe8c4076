package engine

// NeckOf is the finished neck that a band of that many stitches gives, also
// for a count that does not close. ok is false without a garment and a gauge,
// or where the seams leave nothing of the band.
func NeckOf(in Inputs, stitches int) (neck Num, ok bool) {
	if !in.Has(KeyGarment) || in.Num(StitchGauge).Sign() <= 0 {
		return Num{}, false
	}
	return choice(in, stitches).Neck, seamWidth(in, stitches).Sign() > 0
}

// Closing is the next closing counts below and above n in in's rib, down 0
// where there is none, and whether n itself closes.
func Closing(in Inputs, n int) (down, up int, closes bool) {
	if !in.Has(KeyRib) {
		return 0, 0, false
	}
	counts := closingOf(in)
	return counts.atMost(n - 1), counts.above(n), n > 0 && counts.atMost(n) == n
}

// GaugeFor is the stitch gauge that gives the wanted neck with just that many
// stitches; ok is false where the neck or the garment is not known, or nothing
// is left between the seams.
func GaugeFor(in Inputs, stitches int) (gauge Num, ok bool) {
	return gaugeWanting(in, wholeNum(stitches))
}

// gaugeWanting is the stitch gauge at which wanted stitches are just that.
// Wanted stitches grow evenly with the gauge, so two solved plans fix it.
func gaugeWanting(in Inputs, wanted Num) (Num, bool) {
	one := Solve(in.With(StitchGauge, Int(1)))
	two := Solve(in.With(StitchGauge, Int(2)))
	if !one.has.wanted {
		return Num{}, false
	}
	slope := two.WantedStitches.Sub(one.WantedStitches)
	g := wanted.Sub(one.WantedStitches).Div(slope).Add(Int(1))
	return g, g.Sign() > 0
}

// GaugeSpan is the stitch gauges between which the band keeps its count: low
// still gives it, high no longer. low is 0 where the count is the smallest
// there is. ok is false where there is no count yet.
func GaugeSpan(in Inputs) (low, high Num, ok bool) {
	p := Solve(in)
	if !p.has.band {
		return Num{}, Num{}, false
	}
	half := Frac(1, 2)
	if p.Smaller.Stitches > 0 {
		low, _ = gaugeWanting(in, wholeNum(p.Smaller.Stitches+p.BandStitches).Mul(half))
	}
	high, _ = gaugeWanting(in, wholeNum(p.Larger.Stitches+p.BandStitches).Mul(half))
	return low, high, true
}

// LongestNeck is the plan of the longest neck whose band the bed holds in one
// piece; ok is false without a bed, a garment, a gauge and a rib.
func LongestNeck(in Inputs) (p *Plan, ok bool) {
	most := Solve(in).BedChoice
	if most.Stitches == 0 {
		return nil, false
	}
	return Solve(in.Without(NeckBody).With(Neck, most.Neck)), true
}

// DeepestBand is the plan with the most rows that so many grams of yarn are
// enough for, with the margin and at the high end of the estimate, as Yarn
// reckons; front bands that are planned have their share first. ok is false where the yarn's length or the band is not known, or
// the fewest rows need more.
func DeepestBand(in Inputs, grams Num) (p *Plan, ok bool) {
	enough := func(rows int) bool {
		p = Solve(in.Without(Depth).With(YarnLeft, grams).With(DepthRows, wholeNum(rows)))
		return p.yarnLasts()
	}
	low, high := MinRows, MaxRows
	if !enough(low) {
		return nil, false
	}
	for low < high { // low is always enough
		mid := (low + high + 1) / 2
		if enough(mid) {
			low = mid
		} else {
			high = mid - 1
		}
	}
	return p, enough(low)
}

// yarnLasts reports whether the yarn left is enough, with the margin, for all
// that is planned.
func (p *Plan) yarnLasts() bool {
	if all := p.AllYarnState(); all != YarnUnknown {
		return all == YarnEnough
	}
	return p.Yarn == YarnEnough
}

// MostBalls is how many balls are reckoned with at most.
const MostBalls = 100

// BallsFor is the fewest balls of so many grams that are enough for all that
// is planned, with the margin and at the high end of the estimate, as Yarn
// reckons. ok is false where the yarn's length or the band is not known.
func BallsFor(in Inputs, grams Num) (n int, ok bool) {
	for n = 1; n <= MostBalls; n++ {
		if Solve(in.With(YarnLeft, grams.Mul(wholeNum(n)))).yarnLasts() {
			return n, true
		}
	}
	return 0, false
}
