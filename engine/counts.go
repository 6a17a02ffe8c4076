package engine

import "math"

// YarnCount is a way of telling how thick a yarn is.
type YarnCount string

// The counts. The first four are weight for length and grow with the yarn;
// the others are length for weight and shrink as it grows. What a unit is
// stands beside it; the pound and the yard are exact (453.59237 g, 0.9144 m).
const (
	TexCount     YarnCount = "tex"     // g in 1000 m
	Decitex      YarnCount = "dtex"    // g in 10000 m
	Denier       YarnCount = "denier"  // g in 9000 m
	MetricCount  YarnCount = "nm"      // m in 1 g
	CottonCount  YarnCount = "ne"      // 840 yd in 1 lb
	WorstedNeK   YarnCount = "nek"     // 560 yd in 1 lb
	WoollenSkein YarnCount = "ny"      // Yorkshire skein: 256 yd in 1 lb
	WoollenRun   YarnCount = "run"     // American run: 1600 yd in 1 lb
	LinenLea     YarnCount = "lea"     // 300 yd in 1 lb, also the American cut
	Typp         YarnCount = "typp"    // 1000 yd in 1 lb
	MetresPer    YarnCount = "m/100g"  // m in 100 g
	MetresKilo   YarnCount = "m/kg"    // m in 1 kg
	YardsOunce   YarnCount = "yd/oz"   // yd in 1 oz
	YardsPound   YarnCount = "yd/lb"   // yd in 1 lb
	YardsPer100  YarnCount = "yd/100g" // yd in 100 g
)

// factor is the tex of one unit (direct) or tex times count (not direct), and
// false for a count not listed.
func (c YarnCount) factor() (f Num, direct, ok bool) {
	perPound := func(yards int64) Num {
		// g in 1000 m where so many yards weigh a pound.
		return Frac(45359237, 100000).Mul(Int(1000)).Div(Frac(9144, 10000).Mul(Int(yards)))
	}
	switch c {
	case TexCount:
		return Int(1), true, true
	case Decitex:
		return Frac(1, 10), true, true
	case Denier:
		return Frac(1, 9), true, true
	case MetricCount:
		return Int(1000), false, true
	case MetresPer:
		return Int(100000), false, true
	case MetresKilo:
		return Int(1000000), false, true
	case CottonCount:
		return perPound(840), false, true
	case WorstedNeK:
		return perPound(560), false, true
	case WoollenSkein:
		return perPound(256), false, true
	case WoollenRun:
		return perPound(1600), false, true
	case LinenLea:
		return perPound(300), false, true
	case Typp:
		return perPound(1000), false, true
	case YardsPound:
		return perPound(1), false, true
	case YardsOunce:
		return perPound(1).Div(Int(16)), false, true
	case YardsPer100:
		return Int(100000).Div(Frac(9144, 10000)), false, true
	}
	return Num{}, false, false
}

// Tex is the thickness in tex (g in 1000 m) of plies threads of that count
// together: counts of length for weight are divided by the plies (Nm 2/30 is
// Nm 15), those of weight for length multiplied. Plies below 1 count as 1.
// ok is false for a count not listed, or a value that is not over 0. The
// take-up of twisting is not counted.
func Tex(c YarnCount, value Num, plies int) (tex Num, ok bool) {
	f, direct, ok := c.factor()
	if !ok || value.Sign() <= 0 {
		return Num{}, false
	}
	tex = f.Div(value)
	if direct {
		tex = f.Mul(value)
	}
	return tex.Mul(Int(int64(max(plies, 1)))), true
}

// FromTex is a thickness in tex told in another count, as a single thread; ok
// as for Tex.
func FromTex(tex Num, c YarnCount) (value Num, ok bool) {
	f, direct, ok := c.factor()
	switch {
	case !ok || tex.Sign() <= 0:
		return Num{}, false
	case direct:
		return tex.Div(f), true
	}
	return f.Div(tex), true
}

// TightnessFactor is the tightness factor of plain knitting, the square root of tex
// over the loop length in mm; loop is in cm. Most machine-knit worsted lies
// at 1.4 to 1.5, hand yarns at 1.0 to 1.5 (a knitting technology handbook's
// table; the hand band is our own reckoning from usual gauges). It is 0 where
// either is not over 0.
func TightnessFactor(tex Num, loop float64) float64 {
	if tex.Sign() <= 0 || loop <= 0 {
		return 0
	}
	return math.Sqrt(tex.Float()) / (10 * loop)
}
