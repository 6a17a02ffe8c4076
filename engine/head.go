package engine

import "math"

// headRoom is how much wider than the head a stretched neck should be, cm:
// from one published garment specification, 63 cm against a mean head of 57.4
// and a 95th percentile of 60.1.
var headRoom = Int(2)

// solveWidths fills in the fold edge, its lean and, for a pullover, the
// opening a head has to pass. The fold edge of a single band is its top edge.
func (p *Plan) solveWidths() {
	in := p.In
	if !p.has.band || !p.has.rows {
		return
	}
	p.has.fold = true
	p.FoldWidth = p.SeamWidth.Mul(Int(1).Sub(p.Click.Mul(wholeNum(p.FoldClicks))))
	p.FoldCircumference = p.FoldWidth.Add(overlap(in))
	if p.has.depth {
		p.LeanDegrees, p.LeanClamped = lean(p.SeamWidth.Sub(p.FoldWidth), p.DepthResult)
	}
	if in.Num(RibDraw).Sign() <= 0 {
		return
	}
	p.has.relaxed = true
	relaxed := p.FoldWidth.Mul(in.Num(RibDraw))
	p.RelaxedCircumference = relaxed.Add(overlap(in))
	if in.Num(RibStretch).Sign() <= 0 {
		return
	}
	p.has.stretched = true
	stretched := relaxed.Mul(in.Num(RibStretch))
	p.StretchedCircumference = stretched.Add(overlap(in))
	if in.Garment != Pullover || in.Num(EdgeStretch).Sign() <= 0 {
		return
	}
	p.has.head = true
	p.HeadOpening, p.EdgeOpening = stretched, p.sewnWidth().Mul(in.Num(EdgeStretch))
	if p.EdgeOpening.Less(p.HeadOpening) {
		p.HeadOpening, p.EdgeIsTighter = p.EdgeOpening, true
	}
	// A slit opens by both its sides.
	p.HeadOpening = p.HeadOpening.Add(in.Num(Slit).Mul(Int(2)))
}

// sewnWidth is the width of the edge that is sewn off: at the seam for a
// doubled band, which comes back there, at the top for a single one.
func (p *Plan) sewnWidth() Num {
	if p.Doubled {
		return p.SeamWidth
	}
	return p.FoldWidth
}

// lean is how far a band leans in, in degrees from upright, when its upper
// edge is narrower by less over the height depth: a slice of a cone. Out of
// reach it is held at lying flat.
func lean(less, depth Num) (degrees float64, clamped bool) {
	x := less.Float() / (2 * math.Pi * depth.Float())
	clamped = x > 1 || x < -1
	return math.Asin(max(-1, min(1, x))) * 180 / math.Pi, clamped
}

// HeadNeeds is the opening the head asks for, and whether a head was given.
func (p *Plan) HeadNeeds() (Num, bool) {
	return p.In.Num(Head).Add(headRoom), p.In.Has(Head)
}

// HeadPasses reports whether the opening is wide enough for the head; ok is
// false where either is not known.
func (p *Plan) HeadPasses() (passes, ok bool) {
	needs, given := p.HeadNeeds()
	return !p.HeadOpening.Less(needs), given && p.has.head
}
