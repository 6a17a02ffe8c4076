package engine

// wobble is how far the two edges of a measured swatch are out together, cm:
// about 2 mm a side (own estimate).
var wobble = Frac(2, 5)

// SwatchFor is the smallest swatch, in stitches and in cm, that keeps the neck
// within so many cm when the swatch's edges wobble by about 4 mm in all: the
// error of one stitch is the wobble over the swatch's stitches, and the band
// repeats it at every stitch. ok is false without a band.
func SwatchFor(in Inputs, within Num) (stitches int, cm Num, ok bool) {
	p := Solve(in)
	if !p.has.band || within.Sign() <= 0 {
		return 0, Num{}, false
	}
	gauge := in.Num(StitchGauge).Div(Int(10))
	stitches = p.SeamWidth.Mul(gauge).Mul(wobble).Div(within).Ceil()
	return stitches, wholeNum(stitches).Div(gauge), true
}

// WidthOf is how wide so many stitches lie in plain knitting, cm. ok is false
// without a stitch gauge.
func WidthOf(stitches int, in Inputs) (cm Num, ok bool) {
	gauge := in.Num(StitchGauge)
	if gauge.Sign() <= 0 || stitches < 1 {
		return Num{}, false
	}
	return wholeNum(stitches).Mul(Int(10)).Div(gauge), true
}

// Calibrate is the change in stitch size for one click, percent, from the
// stitch gauges of two swatches at two dial numbers: stitch width is one over
// the gauge, and the looser swatch is the whole. ok is false where the dial
// did not move, or the tighter swatch is not the tighter one.
func Calibrate(gaugeA, dialA, gaugeB, dialB Num, clicksPerNumber int) (clickEffectPercent Num, ok bool) {
	if dialA.Less(dialB) {
		gaugeA, dialA, gaugeB, dialB = gaugeB, dialB, gaugeA, dialA
	}
	clicks := dialA.Sub(dialB).Mul(wholeNum(clicksPerNumber))
	if clicks.Sign() <= 0 || gaugeA.Sign() <= 0 || !gaugeA.Less(gaugeB) {
		return Num{}, false
	}
	return Int(1).Sub(gaugeA.Div(gaugeB)).Div(clicks).Mul(Int(100)), true
}

// RibFactors is the rib's two factors from a rib swatch and a plain one of the
// same stitches: its relaxed width over the plain width, and its stretched
// width over the relaxed. ok is false for widths that are none.
func RibFactors(plainWidth, relaxed, stretched Num) (draw, stretch Num, ok bool) {
	if plainWidth.Sign() <= 0 || relaxed.Sign() <= 0 || stretched.Less(relaxed) {
		return Num{}, Num{}, false
	}
	return relaxed.Div(plainWidth), stretched.Div(relaxed), true
}

// RowYarnOf is the yarn in one stitch, cm, from the yarn pulled out of one row
// of a swatch; ok is false where there is no row.
func RowYarnOf(length Num, stitches int) (perStitch Num, ok bool) {
	if stitches <= 0 || length.Sign() <= 0 {
		return Num{}, false
	}
	return length.Div(wholeNum(stitches)), true
}
