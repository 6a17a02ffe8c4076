package engine

import "math"

// StitchWeight is the weight of one stitch of a weighed swatch, mg: the grams of a
// thousand.
const StitchWeight Key = "stitch_weight"

// Yarn beyond the band: its closing row, and how thick the yarn is.
const (
	ClosingYarn Key = "closing_yarn" // m
	YarnTex     Key = "yarn_tex"     // g in 1000 m
	Tightness   Key = "tightness"    // square root of tex over the loop length in mm
)

// yarnRate is the metres in 100 g: said, or from a weighed swatch, in which so
// many stitches of a known loop weigh so much.
func (p *Plan) yarnRate() (Num, bool) {
	if p.In.Num(YarnLength).Sign() > 0 {
		return p.In.Num(YarnLength), true
	}
	weight := p.In.Num(StitchWeight)
	if weight.Sign() <= 0 || !p.has.loop {
		return Num{}, false
	}
	return loopNum(p.LoopLength * 1000 / weight.Float()), true
}

// loopNum is an estimate as a number with six decimals.
func loopNum(f float64) Num { return Frac(int64(math.Round(f*1e6)), 1e6) }

// StitchWeightOf is the weight of a thousand stitches, g, from a weighed
// swatch; ok is false where there is no swatch.
func StitchWeightOf(grams Num, stitches, rows int) (perThousand Num, ok bool) {
	if grams.Sign() <= 0 || stitches <= 0 || rows <= 0 {
		return Num{}, false
	}
	return grams.Mul(Int(1000)).Div(wholeNum(stitches).Mul(wholeNum(rows))), true
}

// frontYarn is metres for both front bands, each with its closing row and
// sewn off as the neckband is.
func (p *Plan) frontYarn() {
	f := p.Front
	own := p.frontNum(FrontGauge).Mul(p.frontNum(FrontRowGauge))
	main := p.In.Num(StitchGauge).Mul(p.In.Num(RowGauge))
	if !f.has.count || !f.has.rows || !p.has.loop || !p.In.Has(NeedlePitch) || own.Sign() <= 0 {
		return
	}
	f.scale = 1
	if main.Sign() > 0 && !main.Equal(own) {
		f.scale = math.Sqrt(main.Div(own).Float())
	}
	f.OffYarn = p.In.Num(NeedlePitch).Mul(wholeNum(offWidths * f.knitted())).Div(Int(10)).Add(wholeNum(offTails * len(f.Parts)))
	f.Yarn, f.has.yarn = f.yarnAt(p.LoopLength), true
	if p.has.rate {
		f.Grams, f.has.grams = p.grams(f.Yarn, p.LoopLength), true
	}
}

// yarnAt is metres for both bands where the garment's loop is that long, cm.
// In the front band's own gauge it is scaled: loop length goes with one over
// the square root of the stitches in an area (Munden, as for loopLength).
func (f *Front) yarnAt(loop float64) float64 {
	return 2 * (float64(f.knitted()*f.yarnRows())*loop*f.scale + f.OffYarn.Float()) / 100
}

// knitted is the stitches of one front band as they hang on needles.
func (f *Front) knitted() int { return knitted(f.Stitches, f.Parts) }

// yarnRows is the rows of one front band with its closing row.
func (f *Front) yarnRows() int {
	if f.Layers > 1 {
		return f.TotalRows + 1
	}
	return f.TotalRows
}

// AllYarnState is whether what is left is enough for the neckband and both
// front bands, as Yarn is for the neckband; YarnUnknown where either is not
// known.
func (p *Plan) AllYarnState() YarnState {
	if p.Front == nil || !p.Front.has.grams || !p.has.grams {
		return YarnUnknown
	}
	return p.stateOf(p.allNeeds())
}

// allNeeds is yarnNeeds for the neckband and the front bands together.
func (p *Plan) allNeeds() (low, high float64) {
	low, high = p.yarnNeeds()
	low += yarnMargin * p.grams(p.Front.yarnAt(p.loopLow), p.loopLow)
	high += yarnMargin * p.grams(p.Front.yarnAt(p.loopHigh), p.loopHigh)
	return low, high
}
