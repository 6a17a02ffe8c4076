package engine

import "strconv"

// frontResults lists the results of the front bands and of the yarn beyond
// the neckband, in the order in which they are shown.
var frontResults = [...]Key{
	FrontStitches, FrontRatio, FrontRatioError, FrontMap, FrontLength, FrontPieces, FrontShares, FrontLeft, FrontRight, FrontColumns,
	FrontLayerRows, FrontTotalRows, FrontWidth, HolePositions, HoleMiddles, HoleGap, HoleGaps,
	HoleDistance, HoleNeedles, HoleRows, HoleLength, OverlapLow, OverlapHigh,
	ClosingYarn, FrontYarn, FrontYarnGrams, AllYarn, AllYarnGrams, YarnTex, Tightness,
}

// Holes that a distance gives, and what else follows of an input, are inputs
// that are there: see input.

// frontCount is a result of the front bands that is a whole number.
func (p *Plan) frontCount(k Key) (int, bool) {
	f := p.Front
	if f == nil {
		return 0, false
	}
	switch k {
	case FrontStitches:
		return f.Stitches, f.has.count
	case FrontPieces:
		return f.Pieces, f.has.count && f.Pieces > 0
	case FrontLayerRows:
		return f.LayerRows, f.has.rows
	case FrontTotalRows:
		return f.TotalRows, f.has.rows
	}
	return 0, false
}

// frontMeasure is a result of the front bands, or of the yarn, that is a real
// number.
func (p *Plan) frontMeasure(k Key) (float64, bool) {
	switch k {
	case ClosingYarn:
		return float64(p.Knitted()) * p.LoopLength / 100, p.Doubled && p.has.band && p.has.loop
	case YarnTex:
		tex, ok := p.tex()
		return tex.Float(), ok
	case Tightness:
		tex, ok := p.tex()
		return TightnessFactor(tex, p.LoopLength), ok && p.has.loop
	}
	f := p.Front
	if f == nil {
		return 0, false
	}
	switch k {
	case FrontRatio:
		return f.ratio().Float(), f.Every > 0
	case FrontRatioError:
		return f.Off.Float(), f.Every > 0
	case FrontLength:
		return f.Length.Float(), f.has.count && p.frontNum(FrontGauge).Sign() > 0
	case FrontWidth:
		return f.Width.Float(), f.has.rows
	case HoleGap:
		return f.Holes.Gap.Float(), f.has.holes && f.Spec.Holes > 1
	case HoleDistance:
		return f.Distance.Float(), f.has.distance
	case HoleLength:
		return f.Fit.Hole.Float(), f.has.button
	case OverlapLow:
		return f.Fit.BandLow.Float(), f.has.button
	case OverlapHigh:
		return f.Fit.BandHigh.Float(), f.has.button
	case FrontYarn:
		return f.Yarn, f.has.yarn
	case FrontYarnGrams:
		return f.Grams, f.has.grams
	case AllYarn:
		return p.BandYarn + f.Yarn, f.has.yarn && p.has.yarn
	case AllYarnGrams:
		return p.BandYarnGrams + f.Grams, f.has.grams && p.has.grams
	}
	return 0, false
}

// frontList is a result of the front bands that is a list, or a word.
func (p *Plan) frontList(k Key) (any, bool) {
	f := p.Front
	if f == nil {
		return nil, false
	}
	switch k {
	case FrontRatio:
		return strconv.Itoa(f.Of) + " of " + strconv.Itoa(f.Every), f.Every > 0
	case FrontShares:
		return needlesOf(f.Parts), len(f.Parts) > 1
	case FrontLeft:
		return NeedleName(0, f.Stitches), f.Pieces == 1
	case FrontRight:
		return NeedleName(f.Stitches-1, f.Stitches), f.Pieces == 1
	case FrontColumns:
		return needleNames(p.FrontRibColumns(), f.Stitches), f.Pieces == 1
	case FrontMap:
		return f.Map, f.Map != nil
	case HoleGaps:
		return f.Holes.Gaps, f.has.holes && f.Spec.Holes > 1
	case HolePositions:
		at := make([]int, len(f.Holes.First))
		for i, col := range f.Holes.First {
			at[i] = col + 1
		}
		return at, f.has.holes
	case HoleMiddles:
		at := make([]int, len(f.Holes.First))
		for i, col := range f.Holes.First {
			at[i] = col + max(f.Spec.Size, 1)/2 + 1
		}
		return at, f.has.holes
	case HoleNeedles:
		return needleNames(f.HoleColumns(), f.Stitches), f.has.holes && f.Pieces == 1
	case HoleRows:
		return f.HoleRows, f.has.holes && f.HoleRows != nil
	}
	return nil, false
}

// FrontRibColumns is the columns of a front band that are dropped and latched,
// from the left; nil in a plain one, and where the stitches are not known.
func (p *Plan) FrontRibColumns() []int {
	if p.Front == nil || !p.Front.has.count {
		return nil
	}
	return ribColumns(p.FrontRib(), edge(p.In), p.Front.Stitches)
}

// HoleColumns is every stitch of every hole, from the left edge.
func (f *Front) HoleColumns() []int {
	var cols []int
	for _, first := range f.Holes.First {
		for i := range max(f.Spec.Size, 1) {
			cols = append(cols, first+i)
		}
	}
	return cols
}

// HasHoles reports whether the holes are laid.
func (f *Front) HasHoles() bool { return f != nil && f.has.holes }

// HasButton reports whether a button's size is known.
func (f *Front) HasButton() bool { return f != nil && f.has.button }

func (f *Front) ratio() Num { return Frac(int64(f.Of), int64(max(f.Every, 1))) }

// tex is how thick the yarn is, from its metres in 100 g.
func (p *Plan) tex() (Num, bool) {
	if !p.has.rate || p.YarnRate.Sign() <= 0 {
		return Num{}, false
	}
	return Int(100000).Div(p.YarnRate), true
}
