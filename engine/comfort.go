package engine

import "math"

// What is measured about the body beyond its head and the base of its neck.
const (
	NeckMid    Key = "neck_mid"    // cm, halfway up the neck
	NeckFactor Key = "neck_factor" // girth at the base over girth halfway up
	Slit       Key = "slit"        // cm, an opening at the neck of a pullover
)

// What follows for the wearer.
const (
	NeckBase    Key = "neck_base"
	HeadNeeded  Key = "head_needed"
	HeadMissing Key = "head_missing"
	HeadLargest Key = "head_largest"
	SlitLength  Key = "slit_length"
	BandSlope   Key = "band_slope"
	TopRoom     Key = "top_room"
)

// solveComfort fills in how the band meets the body: the opening a head asks
// for and the slit that makes it up, the base of a neck measured halfway up,
// and how the band's upper edge lies against the neck.
func (p *Plan) solveComfort() {
	in := p.In
	if p.has.neckBase = in.Has(NeckMid) && in.Has(NeckFactor); p.has.neckBase {
		p.NeckBase = in.Num(NeckMid).Mul(in.Num(NeckFactor))
	}
	if p.has.relaxed && p.has.depth && p.DepthResult.Sign() > 0 {
		p.has.slope = true
		p.BandSlope, _ = lean(p.NeckResult.Sub(p.RelaxedCircumference), p.DepthResult)
	}
	if p.has.topRoom = p.has.relaxed && in.Has(NeckMid); p.has.topRoom {
		p.TopRoom = p.RelaxedCircumference.Sub(in.Num(NeckMid))
	}
	if in.Garment != Pullover || !in.Has(Head) {
		return
	}
	p.has.needed = true
	p.HeadNeeded, _ = p.HeadNeeds()
	if !p.has.head {
		return
	}
	if p.HeadOpening.Less(p.HeadNeeded) {
		p.HeadMissing = p.HeadNeeded.Sub(p.HeadOpening)
	}
	p.SlitExact = slitFor(p.HeadNeeded, p.HeadOpening.Sub(in.Num(Slit).Mul(Int(2))))
	p.SlitLength = Frac(int64(p.SlitExact.Mul(Int(2)).Ceil()), 2)
}

// slitFor is how long a slit has to be for an edge that opens to opening to
// let needed through: both its sides count, so half of what is missing.
func slitFor(needed, opening Num) Num {
	if !opening.Less(needed) {
		return Num{}
	}
	return needed.Sub(opening).Div(Int(2))
}

// EarlySlit is the slit that a head asks of a neck before its band is planned,
// with the sewn edge as the weaker one, not rounded; 0 where none is needed.
func EarlySlit(head, neck, edgeStretch Num) Num {
	return slitFor(head.Add(headRoom), neck.Mul(edgeStretch))
}

// SmallestNeck is the plan with the fewest stitches whose opening passes the
// head, all else as in in. ok is false for a cardigan, or where the opening
// cannot be worked out.
func SmallestNeck(in Inputs, head Num) (p *Plan, ok bool) {
	in = in.Without(NeckBody).With(Head, head)
	try := func(n int) *Plan { return Solve(in.With(Neck, choice(in, n).Neck)) }
	if in.Num(StitchGauge).Sign() <= 0 || !in.Has(KeyRib) || in.Garment != Pullover {
		return nil, false
	}
	counts := closingOf(in)
	low, high := 0, maxStitches/counts.step-1 // the opening grows with every stitch
	for low < high {
		mid := (low + high) / 2
		p = try(counts.first + mid*counts.step)
		passes, known := p.HeadPasses()
		switch {
		case !known && p.BandStitches > 0:
			return nil, false
		case passes:
			high = mid
		default:
			low = mid + 1
		}
	}
	p = try(counts.first + low*counts.step)
	passes, known := p.HeadPasses()
	return p, passes && known
}

func (p *Plan) recordComfort(k Key) (Record, bool) {
	switch k {
	case NeckBase:
		return Record{Rule: RuleNeckBase, From: []Key{NeckMid, NeckFactor}, Value: p.NeckBase.Float(),
			Expr: p.num(NeckMid) + " * " + p.num(NeckFactor)}, p.has.neckBase
	case TopRoom:
		return Record{Rule: RuleTopRoom, From: []Key{RelaxedCircumference, NeckMid}, Value: p.TopRoom.Float(),
			Expr: fig(p.RelaxedCircumference) + " - " + p.num(NeckMid)}, p.has.topRoom
	case BandSlope:
		x := "(" + fig(p.NeckResult) + " - " + fig(p.RelaxedCircumference) + ") / (2 * 3.1416 * " + fig(p.DepthResult) + ")"
		return Record{Rule: RuleSlope, From: []Key{NeckResult, RelaxedCircumference, DepthResult}, Value: p.BandSlope,
			Expr: "asin(max((-1), min(1, " + x + "))) * 180 / 3.1416"}, p.has.slope
	case HeadNeeded:
		return Record{Rule: RuleHeadNeeded, From: []Key{Head}, Value: p.HeadNeeded.Float(),
			Expr: p.num(Head) + " + " + fig(headRoom)}, p.has.needed
	case HeadLargest:
		return Record{Rule: RuleHeadLargest, From: []Key{HeadOpening}, Value: p.HeadOpening.Sub(headRoom).Float(),
			Expr: fig(p.HeadOpening) + " - " + fig(headRoom)}, p.has.head
	case HeadMissing:
		return Record{Rule: RuleHeadMissing, From: []Key{HeadNeeded, HeadOpening}, Value: p.HeadMissing.Float(),
			Expr: "max(0, " + fig(p.HeadNeeded) + " - " + fig(p.HeadOpening) + ")"}, p.has.needed && p.has.head
	case SlitLength:
		return p.recordSlit(), p.has.needed && p.has.head
	}
	return Record{}, false
}

func (p *Plan) recordSlit() Record {
	expr, from := fig(p.HeadNeeded)+" - "+fig(p.HeadOpening), []Key{HeadNeeded, HeadOpening}
	if p.In.Num(Slit).Sign() > 0 {
		expr, from = expr+" + 2 * "+p.num(Slit), append(from, Slit)
	}
	half := max(0, p.HeadNeeded.Sub(p.HeadOpening).Add(p.In.Num(Slit).Mul(Int(2))).Float()/2)
	r := Record{Rule: RuleSlit, From: from, Value: p.SlitLength.Float(), Unrounded: half,
		Expr: "max(0, " + expr + ") / 2", Rounding: RoundHalfUp}
	if math.Abs(half-r.Value) < 1e-12 {
		r.Rounding = RoundNone
	}
	return r
}
