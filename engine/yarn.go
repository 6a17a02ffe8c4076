package engine

import "math"

// Area constants of plain knit, stitches per area times loop length squared,
// after Munden 1959 as quoted in Spencer, Knitting Technology, ch. 22: dry
// relaxed, washed and dried flat, fully relaxed.
const (
	ksLow  = 19.0
	ksMid  = 21.6
	ksHigh = 23.1
)

// Backstitch goes two needles on and one back, so the yarn is three times the
// width (common practice; knitca.com 2010 has the same factor). The tails are
// to thread and to weave in.
const (
	offWidths = 3
	offTails  = 30 // cm
)

// yarnMargin is what is added to a need before it is held against what is
// left: 10 %, the low end of the usual allowance for waste (apparelscience.com
// gives 10 to 15 %).
const yarnMargin = 1.1

// loopLength is the yarn in one stitch, cm, from gauges per 10 cm and an area
// constant: l = sqrt(Ks / (wales per cm * courses per cm)).
func loopLength(stitches, rows Num, ks float64) float64 {
	return math.Sqrt(ks * 100 / (stitches.Float() * rows.Float()))
}

// YarnState is whether what is left of the yarn is enough.
type YarnState int

// The states; YarnUnknown where the need or the rest is not known.
const (
	YarnUnknown YarnState = iota
	YarnEnough
	YarnTight // enough at the low end of the estimate, not at the high end
	YarnShort
)

// solveYarn fills in loop length, the yarn for the band and for sewing off.
func (p *Plan) solveYarn() {
	in := p.In
	sg, rg := in.Num(StitchGauge), in.Num(RowGauge)
	measured := p.loopMeasured()
	var low, high float64
	switch {
	case in.Num(RowYarn).Sign() > 0:
		p.LoopLength = in.Num(RowYarn).Float()
	case measured:
		p.LoopLength = in.Num(StitchWeight).Mul(in.Num(YarnLength)).Float() / 1000
	case sg.Sign() > 0 && rg.Sign() > 0:
		p.LoopLength = loopLength(sg, rg, ksMid)
		low, high = loopLength(sg, rg, ksLow), loopLength(sg, rg, ksHigh)
	}
	p.has.loop = p.LoopLength > 0
	p.loopLow, p.loopHigh = low, high
	if measured {
		p.loopLow, p.loopHigh = p.LoopLength, p.LoopLength
	}
	p.YarnRate, p.has.rate = p.yarnRate()
	if p.has.band && in.Has(NeedlePitch) {
		p.has.off = true
		p.OffYarn = p.offYarn()
	}
	if !p.has.off || !p.has.rows || !p.has.loop {
		return
	}
	p.has.yarn, p.has.yarnSpan = true, !measured
	p.YarnRows = p.yarnRows()
	p.BandYarn = p.bandYarn(p.LoopLength)
	if !measured {
		p.BandYarnLow, p.BandYarnHigh = p.bandYarn(low), p.bandYarn(high)
	}
	if p.has.rate {
		p.has.grams = true
		p.BandYarnGrams = p.grams(p.BandYarn, p.LoopLength)
		p.Yarn = p.stateOf(p.yarnNeeds())
	}
}

// offYarn is the yarn, cm, to sew off the band's stitches; each piece has tails
// of its own.
func (p *Plan) offYarn() Num {
	width := p.In.Num(NeedlePitch).Mul(wholeNum(p.Knitted())).Div(Int(10))
	return width.Mul(Int(offWidths)).Add(wholeNum(offTails * max(1, len(p.Parts))))
}

// loopMeasured reports whether the yarn in a stitch was measured: one row
// pulled out, or a weighed swatch of a yarn whose metres are known.
func (p *Plan) loopMeasured() bool {
	return p.In.Num(RowYarn).Sign() > 0 || p.In.Num(StitchWeight).Sign() > 0 && p.In.Num(YarnLength).Sign() > 0
}

// yarnRows is the rows of the band in rows at the garment's tension: a tighter
// row takes less. A doubled band has its closing row too.
func (p *Plan) yarnRows() Num {
	rows := p.layerHeight().Mul(wholeNum(p.layers))
	if p.FoldRow > 0 {
		rows = rows.Add(Int(1)).Add(p.Click.Mul(wholeNum(p.FoldRow)))
	}
	if p.Doubled {
		rows = rows.Add(Int(1))
	}
	return rows
}

// bandYarn is metres for the band and for sewing it off, loop in cm.
func (p *Plan) bandYarn(loop float64) float64 {
	if p.has.mock {
		return p.mockYarn(loop)
	}
	return (float64(p.Knitted())*loop*p.YarnRows.Float() + p.OffYarn.Float()) / 100
}

// grams is the weight of so many metres. Where a weighed swatch stands for the
// label the metres in 100 g grow with the loop they were reckoned with, so the
// weight of a stitch stays as it was measured.
func (p *Plan) grams(metres, loop float64) float64 {
	rate := p.YarnRate.Float()
	if !p.In.Has(YarnLength) {
		rate *= loop / p.LoopLength
	}
	return metres * 100 / rate
}

// yarnNeeds is the grams to have at hand for the band, with the margin, at the
// low and the high end of the estimate; both are the same where the loop was
// measured.
func (p *Plan) yarnNeeds() (low, high float64) {
	return yarnMargin * p.grams(p.bandYarn(p.loopLow), p.loopLow), yarnMargin * p.grams(p.bandYarn(p.loopHigh), p.loopHigh)
}

// stateOf holds needs at both ends of an estimate against what is left.
func (p *Plan) stateOf(low, high float64) YarnState {
	if !p.In.Has(YarnLeft) {
		return YarnUnknown
	}
	switch left := p.In.Num(YarnLeft).Float(); {
	case left >= high:
		return YarnEnough
	case left >= low:
		return YarnTight
	}
	return YarnShort
}
