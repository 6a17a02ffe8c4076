package engine

// resultKeys lists the results in the order in which they are shown.
var resultKeys = [...]Key{
	WantedStitches, BandStitches, NeckResult, YokeDecreases, Rehang, BandHangings, BandShares, BandPieces, BandJoins,
	YokeParts, YokePlaces, WorkNeedles, MostNeedles, LeftNeedle,
	RightNeedle, LayerRows, TotalRows, DepthResult, Tension, FoldClicks,
	SeamWidth, FoldCircumference, RelaxedCircumference, StretchedCircumference,
	LeanDegrees, RibColumns, ColumnCount, LoopsToLatch, HemNeedles, HemCount,
	OffYarn, BandYarn, BandYarnLow, BandYarnHigh, BandYarnGrams, LoopLength,
	HeadOpening,
	HeadLargest, HeadNeeded, HeadMissing, SlitLength, NeckBase, TopRoom, BandSlope, StitchPitch,
	WorkStitches, EmptyNeedles, PickFront, PickBack, PickSleeves, PickTotal, PickDifference,
	StageCounts, StageDecreases, StageErrors, StageCuts, StagePieces, StageNeedles,
	StageRehang, StageRowsKey, LargestCut, DoubledGap, OnePieceFrom, YokeRowsResult,
	YokeDepthResult, YokeDepthLow, YokeDepthHigh, YokeDepthRule, YokeSlope,
	ChartRows, ChartRepeat, ChartWidth, ChartNeedles, ChartContrast, ChartMain,
	ChartCatches, FloatLongest, FloatLongestCm, FloatMost, ColourDial, MainYarn,
	ContrastYarn, MainGrams, ContrastGrams, ChartMainYarn, ChartSecondYarn,
}

// ResultKeys lists every result in the order in which results are shown.
func ResultKeys() []Key {
	return append(resultKeys[:len(resultKeys):len(resultKeys)], frontResults[:]...)
}

// Value is result k as JSON writes it: an int, a float64, a needle's name, a
// list of names, a list of stitches per needle or of TensionRow. false where
// k is no result or is not known yet.
func (p *Plan) Value(k Key) (any, bool) {
	if v, ok := p.needles(k); ok {
		return v, true
	}
	if i, ok := p.count(k); ok {
		return i, true
	}
	if f, ok := p.measure(k); ok {
		return f, true
	}
	return nil, false
}

// needles is a result that names needles, or lists something by needle or row.
func (p *Plan) needles(k Key) (any, bool) {
	whole := len(p.Parts) < 2 // a band in pieces has needles for each of them, see OnBed
	switch k {
	case LeftNeedle:
		return NeedleName(0, p.BandStitches), p.has.band && whole
	case RightNeedle:
		return NeedleName(p.BandStitches-1, p.BandStitches), p.has.band && whole
	case RibColumns:
		return needleNames(p.RibColumns, p.BandStitches), p.has.band && whole
	case HemNeedles:
		return needleNames(p.HemColumns, p.BandStitches), p.has.hem && whole
	case EmptyNeedles:
		return needleNames(p.EmptyColumns, p.BandStitches), p.has.mock && whole
	case Rehang:
		return p.Rehang, p.Rehang != nil && whole
	case BandShares:
		return p.Shares, !whole
	case YokePlaces:
		places, ok := p.yokePlaces()
		return places, ok
	case WorkNeedles:
		return p.workNeedles(), p.has.band
	case BandHangings:
		return hangingMaps(p.Hangings), len(p.Hangings) > 0 && whole
	case Tension:
		return p.Tension(), p.has.rows
	}
	if v, ok := p.frontList(k); ok {
		return v, true
	}
	if v, ok := p.yokeList(k); ok {
		return v, true
	}
	return p.chartList(k)
}

// Float is a number of the plan: a result that is one number, or an input.
// A neck that follows from the body's, and a click's effect that follows from
// a whole number's, count as inputs that are there.
func (p *Plan) Float(k Key) (float64, bool) {
	if IsNumber(k) {
		if n, ok := p.input(k); ok {
			return n.Float(), true
		}
	}
	if i, ok := p.count(k); ok {
		return float64(i), true
	}
	return p.measure(k)
}

// input is number k of the inputs, said or following from another input.
func (p *Plan) input(k Key) (Num, bool) {
	switch {
	case p.In.Has(k):
		return p.In.Num(k), IsNumber(k)
	case k == Neck:
		return p.NeckWanted, p.has.neck
	case k == ClickEffect:
		return p.Click.Mul(Int(100)), p.In.Has(NumberEffect) && p.In.Has(ClicksPerNumber)
	case k == YarnLength:
		return p.YarnRate, p.has.rate
	}
	if n, ok := p.frontInput(k); ok {
		return n, true
	}
	return p.partInput(k)
}

// count is a result that is a whole number.
func (p *Plan) count(k Key) (int, bool) {
	switch k {
	case BandStitches:
		return p.BandStitches, p.has.band
	case YokeDecreases:
		return p.YokeDecreases, p.has.yoke
	case LayerRows:
		return p.LayerRows, p.has.rows
	case TotalRows:
		return p.TotalRows, p.has.rows
	case FoldClicks:
		return p.FoldClicks, p.has.rows && p.Doubled
	case ColumnCount:
		return len(p.RibColumns), p.has.band
	case LoopsToLatch:
		return len(p.RibColumns) * p.TotalRows, p.has.band && p.has.rows
	case HemCount:
		return p.hemCount(), p.has.hem
	case BandPieces:
		return len(p.Parts), len(p.Parts) > 1
	case BandJoins:
		return p.Joins(), len(p.Parts) > 1
	case YokeParts:
		n := len(p.WaitingParts())
		return n, n > 1
	case MostNeedles:
		return p.mostNeedles(), p.has.band
	case WorkStitches:
		return p.WorkStitches, p.has.mock
	case PickFront:
		return p.PickFront, p.has.front
	case PickBack:
		return p.PickBack, p.has.back
	case PickSleeves:
		return p.PickSleeves, p.has.picks && p.In.Has(SleeveHeld)
	case PickTotal:
		return p.PickTotal, p.has.picks
	case PickDifference:
		return p.PickDifference, p.has.front && p.has.back && p.has.band // else part of the edge is not told
	}
	if n, ok := p.frontCount(k); ok {
		return n, true
	}
	return p.partCount(k)
}

// measure is a result that is a real number.
func (p *Plan) measure(k Key) (float64, bool) {
	switch k {
	case WantedStitches:
		return p.WantedStitches.Float(), p.has.wanted
	case NeckResult:
		return p.NeckResult.Float(), p.has.band
	case DepthResult:
		return p.DepthResult.Float(), p.has.depth
	case SeamWidth:
		return p.SeamWidth.Float(), p.has.band
	case FoldCircumference:
		return p.FoldCircumference.Float(), p.has.fold
	case RelaxedCircumference:
		return p.RelaxedCircumference.Float(), p.has.relaxed
	case StretchedCircumference:
		return p.StretchedCircumference.Float(), p.has.stretched
	case LeanDegrees:
		return p.LeanDegrees, p.has.fold && p.has.depth
	case OffYarn:
		return p.OffYarn.Float(), p.has.off
	case BandYarn:
		return p.BandYarn, p.has.yarn
	case BandYarnLow:
		return p.BandYarnLow, p.has.yarnSpan
	case BandYarnHigh:
		return p.BandYarnHigh, p.has.yarnSpan
	case BandYarnGrams:
		return p.BandYarnGrams, p.has.grams
	case LoopLength:
		return p.LoopLength, p.has.loop
	case HeadOpening:
		return p.HeadOpening.Float(), p.has.head
	}
	return p.comfort(k)
}

// comfort is a real number about the wearer or the bed.
func (p *Plan) comfort(k Key) (float64, bool) {
	switch k {
	case HeadNeeded:
		return p.HeadNeeded.Float(), p.has.needed
	case HeadLargest:
		return p.HeadOpening.Sub(headRoom).Float(), p.has.head
	case HeadMissing:
		return p.HeadMissing.Float(), p.has.needed && p.has.head
	case SlitLength:
		return p.SlitLength.Float(), p.has.needed && p.has.head
	case NeckBase:
		return p.NeckBase.Float(), p.has.neckBase
	case TopRoom:
		return p.TopRoom.Float(), p.has.topRoom
	case BandSlope:
		return p.BandSlope, p.has.slope
	case StitchPitch:
		return p.PitchRatio.Float(), p.has.pitch
	}
	if f, ok := p.frontMeasure(k); ok {
		return f, true
	}
	return p.partMeasure(k)
}
