package engine

// Warning is one caution about a plan: a code and the numbers it speaks of.
// The words for people are elsewhere.
type Warning struct {
	Code   string
	Values map[string]Num
}

// The cautions and the values each carries.
const (
	BandOverNeck    = "band-over-neck"     // neck, front_band: nothing is left to knit
	BedTooSmall     = "bed-too-small"      // band_stitches, bed_needles, pieces, choice, choice_neck
	YokeTooSmall    = "yoke-too-small"     // band_stitches, yoke_stitches, choice, choice_neck
	TwoStages       = "two-stages"         // yoke_decreases, band_stitches, stages
	SwatchRatio     = "swatch-ratio"       // ratio: rows over stitches
	PitchRatio      = "pitch"              // ratio: stitch width over needle pitch
	LeanHeld        = "lean-clamped"       // none
	TensionHeld     = "tension-held"       // row: the first held; clicks: where; by_dial: 1 if the dial ends there
	DepthOutOfReach = "depth-out-of-reach" // layer_rows; depth_result, and depth or depth_rows as said
	YarnIsShort     = "yarn-short"         // need_low, need_high (g, margin in), yarn_left
	YarnIsTight     = "yarn-tight"         // as yarn-short
	HeadTight       = "head-tight"         // head_opening, needed, edge: 1 if the sewn edge decides
	HeadUnknown     = "head-unknown"       // none
	FibreHeat       = "fibre-heat"         // none: steam on a fibre that heat spoils
	FrontOverBed    = "front-over-bed"     // front_stitches, bed_needles, pieces, choice
	FrontCrowded    = "front-crowded"      // front_stitches, front_rows: more than two stitches to a row
	HolesTooMany    = "holes-too-many"     // buttonholes, most, front_stitches
	ButtonOverBand  = "button-over-band"   // button (mm), front_band, overlap_low
)

// Usual spans, outside of which a caution is due: rows over stitches of a
// plain, rested swatch (published swatches run from 1.13 to 1.71, Munden's
// constants give 1.3), and stitch width over needle pitch (common practice).
var (
	swatchLow, swatchHigh = Frac(11, 10), Frac(8, 5)
	pitchLow, pitchHigh   = Frac(1, 2), Int(1)
)

// Warnings lists what the knitter should hear about the plan, in the order in
// which the work meets it.
func (p *Plan) Warnings() []Warning {
	var w warnings
	p.warnSwatch(&w)
	p.warnStitches(&w)
	p.warnRows(&w)
	p.warnHead(&w)
	p.warnFronts(&w)
	p.warnYarn(&w)
	if p.In.Text(KeySetMethod) == SetSteam && HeatHurts(p.In.Text(KeyFibre)) {
		w.add(FibreHeat, nil)
	}
	return w
}

type warnings []Warning

func (w *warnings) add(code string, values map[string]Num) {
	*w = append(*w, Warning{Code: code, Values: values})
}

func outside(v, low, high Num) bool { return v.Less(low) || high.Less(v) }

func (p *Plan) warnSwatch(w *warnings) {
	stitches, rows, pitch := p.In.Num(StitchGauge), p.In.Num(RowGauge), p.In.Num(NeedlePitch)
	if stitches.Sign() <= 0 {
		return
	}
	if r := rows.Div(stitches); rows.Sign() > 0 && outside(r, swatchLow, swatchHigh) {
		w.add(SwatchRatio, map[string]Num{"ratio": r})
	}
	if r := Int(100).Div(stitches).Div(pitch); pitch.Sign() > 0 && outside(r, pitchLow, pitchHigh) {
		w.add(PitchRatio, map[string]Num{"ratio": r})
	}
}

func (p *Plan) warnStitches(w *warnings) {
	if p.bandTooWide {
		w.add(BandOverNeck, map[string]Num{"neck": p.NeckWanted, "front_band": p.In.Num(FrontBand)})
	}
	if !p.has.band {
		return
	}
	if !p.FitsBed {
		w.add(BedTooSmall, map[string]Num{"band_stitches": wholeNum(p.BandStitches),
			"bed_needles": p.In.Num(BedNeedles), "pieces": wholeNum(p.Pieces),
			"choice": wholeNum(p.BedChoice.Stitches), "choice_neck": p.BedChoice.Neck})
	}
	switch {
	case !p.FitsYoke:
		w.add(YokeTooSmall, map[string]Num{"band_stitches": wholeNum(p.Knitted()),
			"yoke_stitches": wholeNum(p.YokeDecreases + p.Knitted()),
			"choice":        wholeNum(p.YokeChoice.Stitches), "choice_neck": p.YokeChoice.Neck})
	case p.Stages > 1:
		w.add(TwoStages, map[string]Num{"yoke_decreases": wholeNum(p.YokeDecreases),
			"band_stitches": wholeNum(p.BandStitches), "stages": wholeNum(p.Stages)})
	}
}

func (p *Plan) warnRows(w *warnings) {
	if !p.has.rows {
		return
	}
	if p.TensionHeld {
		g := p.grading
		row := 1
		for g.wanted(row) <= g.limit {
			row++
		}
		w.add(TensionHeld, map[string]Num{"row": wholeNum(row), "clicks": wholeNum(g.limit),
			"by_dial": flag(g.byDial)})
	}
	if !p.DepthReachable {
		said := Depth
		if p.In.Has(DepthRows) {
			said = DepthRows
		}
		w.add(DepthOutOfReach, map[string]Num{"layer_rows": wholeNum(p.LayerRows),
			"depth_result": p.DepthResult, string(said): p.In.Num(said)})
	}
	if p.LeanClamped {
		w.add(LeanHeld, nil)
	}
}

func (p *Plan) warnHead(w *warnings) {
	if p.In.Garment != Pullover {
		return
	}
	if !p.In.Has(Head) {
		w.add(HeadUnknown, nil)
		return
	}
	if passes, ok := p.HeadPasses(); ok && !passes {
		needs, _ := p.HeadNeeds()
		w.add(HeadTight, map[string]Num{"head_opening": p.HeadOpening, "needed": needs, "slit": p.SlitExact,
			"edge": flag(p.EdgeIsTighter)})
	}
}

func (p *Plan) warnYarn(w *warnings) {
	state, need := p.Yarn, p.yarnNeeds
	if all := p.AllYarnState(); all != YarnUnknown {
		state, need = all, p.allNeeds
	}
	code := map[YarnState]string{YarnTight: YarnIsTight, YarnShort: YarnIsShort}[state]
	if code == "" {
		return
	}
	low, high := need()
	values := map[string]Num{"need_low": tenths(low), "need_high": tenths(high), "yarn_left": p.In.Num(YarnLeft)}
	if p.AllYarnState() != YarnUnknown {
		values["fronts"] = Int(1)
	}
	w.add(code, values)
}

func (p *Plan) warnFronts(w *warnings) {
	f := p.Front
	if f == nil {
		return
	}
	count := wholeNum(f.Stitches)
	if f.Pieces > 1 {
		w.add(FrontOverBed, map[string]Num{"front_stitches": count, "bed_needles": p.In.Num(BedNeedles),
			"pieces": wholeNum(f.Pieces), "choice": wholeNum(f.BedChoice)})
	}
	if f.Rows > 0 && f.Stitches > 2*f.Rows {
		w.add(FrontCrowded, map[string]Num{"front_stitches": count, "front_rows": wholeNum(f.Rows)})
	}
	if f.Fault != nil {
		w.add(HolesTooMany, map[string]Num{"buttonholes": wholeNum(f.Fault.Holes), "most": wholeNum(f.Fault.Most), "front_stitches": count})
	}
	if f.has.button && p.In.Has(FrontBand) && p.In.Num(FrontBand).Less(f.Fit.BandLow) {
		w.add(ButtonOverBand, map[string]Num{"button": p.In.Num(Button), "front_band": p.In.Num(FrontBand), "overlap_low": f.Fit.BandLow})
	}
}

// flag is 1 for true.
func flag(b bool) Num {
	if b {
		return Int(1)
	}
	return Int(0)
}

// tenths is grams as people weigh them, rounded up: a need is not rounded away.
func tenths(g float64) Num {
	t := int64(g * 10)
	if float64(t) < g*10 {
		t++
	}
	return Frac(t, 10)
}
