package engine

// Shake is the plan with number k a little less and a little more than it is.
// A number that follows from another one (a neck from the body's) is shaken
// where it stands.
func Shake(in Inputs, k Key, delta Num) (down, up *Plan) {
	p := Solve(in)
	base, ok := p.input(k)
	if !ok {
		return p, p
	}
	return Solve(in.With(k, base.Sub(delta))), Solve(in.With(k, base.Add(delta)))
}

// Spans is how far the estimates in a plan may be out. A pair that is 0 has no
// span; for the effect of a dial number and the stretch of the sewn edge that
// means the published one. Measured makes a pair certain.
type Spans struct {
	DrawLow, DrawHigh       Num // rib_draw
	StretchLow, StretchHigh Num // rib_stretch
	EffectLow, EffectHigh   Num // number_effect, percent
	EdgeLow, EdgeHigh       Num // edge_stretch
}

// Published spreads: 3 to 7 % for a whole dial number (needle charts and one
// yarn on three needles; reference pages needlesofsteel 2013, jimmybeanswool),
// 1.3 to 1.5 for the sewn edge (one hand test of a bind-off, 1.39).
var (
	effectLow, effectHigh = Int(3), Int(7)
	edgeLow, edgeHigh     = Frac(13, 10), Frac(3, 2)
)

// Measured is s with k certain, because the knitter measured it as v.
func (s Spans) Measured(k Key, v Num) Spans {
	switch k {
	case RibDraw:
		s.DrawLow, s.DrawHigh = v, v
	case RibStretch:
		s.StretchLow, s.StretchHigh = v, v
	case NumberEffect:
		s.EffectLow, s.EffectHigh = v, v
	case EdgeStretch:
		s.EdgeLow, s.EdgeHigh = v, v
	}
	return s
}

// Spread is result k at both ends of the estimates it is made from: the plan
// is solved again with each of them at its low and its high end, and the ends
// of what comes out are given. ok is false where k is not there, or nothing
// uncertain goes into it. A click's effect that was said is certain.
func (p *Plan) Spread(k Key, s Spans) (low, high float64, ok bool) {
	low, ok = p.Float(k)
	if !ok {
		return 0, 0, false
	}
	high = low
	for _, in := range s.corners(p.In) {
		q := Solve(in)
		for _, v := range [...]float64{q.at(k, ksLow), q.at(k, ksHigh)} {
			low, high = min(low, v), max(high, v)
		}
	}
	return low, high, low < high
}

// Published is s with the published spreads where it says none.
func (s Spans) Published() Spans {
	if s.EffectHigh.Sign() == 0 {
		s.EffectLow, s.EffectHigh = effectLow, effectHigh
	}
	if s.EdgeHigh.Sign() == 0 {
		s.EdgeLow, s.EdgeHigh = edgeLow, edgeHigh
	}
	return s
}

// corners is in with every estimate at one end or the other, all together.
func (s Spans) corners(in Inputs) []Inputs {
	s = s.Published()
	all := []Inputs{in}
	both := func(k Key, low, high Num) {
		if high.Sign() == 0 || !in.Has(k) {
			return
		}
		var next []Inputs
		for _, c := range all {
			next = append(next, c.With(k, low), c.With(k, high))
		}
		all = next
	}
	if !in.Has(ClickEffect) {
		both(NumberEffect, s.EffectLow, s.EffectHigh)
	}
	both(RibDraw, s.DrawLow, s.DrawHigh)
	both(RibStretch, s.StretchLow, s.StretchHigh)
	both(EdgeStretch, s.EdgeLow, s.EdgeHigh)
	return all
}

// at is result k for a fabric of another area constant; only the yarn depends
// on it, and not where a row's yarn was measured.
func (p *Plan) at(k Key, ks float64) float64 {
	v, _ := p.Float(k)
	if p.loopMeasured() || !p.has.loop || (k != LoopLength && k != Tightness && !p.has.yarn) {
		return v
	}
	loop := loopLength(p.In.Num(StitchGauge), p.In.Num(RowGauge), ks)
	switch k {
	case LoopLength:
		return loop
	case BandYarn:
		return p.bandYarn(loop)
	case BandYarnGrams:
		return p.grams(p.bandYarn(loop), loop)
	case ClosingYarn, Tightness:
		p.LoopLength = loop
		v, _ = p.frontMeasure(k)
	}
	if p.Front == nil || !p.Front.has.yarn {
		return v
	}
	front := p.Front.yarnAt(loop)
	switch k {
	case FrontYarn:
		return front
	case AllYarn:
		return p.bandYarn(loop) + front
	case FrontYarnGrams:
		return p.grams(front, loop)
	case AllYarnGrams:
		return p.grams(p.bandYarn(loop)+front, loop)
	}
	return v
}
