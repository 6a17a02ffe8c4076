package engine

// A neck edge that is shaped rather than live: what lies open or was cast off
// in each piece, and the rows along its slopes.
const (
	FrontHeld  Key = "neck_front_held" // stitches
	FrontRows  Key = "neck_front_rows" // along each of its two slopes
	BackHeld   Key = "neck_back_held"
	BackRows   Key = "neck_back_rows"
	SleeveHeld Key = "neck_sleeve_held" // at the top of each of two sleeves
	PickRatio  Key = "pick_ratio"       // stitches to a row of a slope
)

// What is picked up along it.
const (
	PickFront      Key = "pick_front"
	PickBack       Key = "pick_back"
	PickSleeves    Key = "pick_sleeves"
	PickTotal      Key = "pick_total"
	PickDifference Key = "pick_difference"
)

// solveShaped fills in the stitches to pick up, piece by piece: stitch for
// stitch where they lie open, and by the ratio along two slopes each.
func (p *Plan) solveShaped() {
	in := p.In
	p.has.picks = in.Has(FrontHeld) || in.Has(FrontRows) || in.Has(BackHeld) || in.Has(BackRows) || in.Has(SleeveHeld)
	if !p.has.picks {
		return
	}
	piece := func(held, rows Key) int {
		return in.Int(held) + 2*in.Num(rows).Mul(in.Num(PickRatio)).Round()
	}
	p.PickFront, p.PickBack = piece(FrontHeld, FrontRows), piece(BackHeld, BackRows)
	p.PickSleeves = 2 * in.Int(SleeveHeld)
	p.PickTotal = p.PickFront + p.PickBack + p.PickSleeves
	p.has.front, p.has.back = in.Has(FrontHeld) || in.Has(FrontRows), in.Has(BackHeld) || in.Has(BackRows)
	p.PickDifference = p.BandStitches - p.PickTotal
}

func (p *Plan) recordShaped(k Key) (Record, bool) {
	if !p.has.picks {
		return Record{}, false
	}
	switch k {
	case PickFront:
		return p.recordPiece(FrontHeld, FrontRows, p.PickFront), p.has.front
	case PickBack:
		return p.recordPiece(BackHeld, BackRows, p.PickBack), p.has.back
	case PickSleeves:
		return Record{Rule: RulePickPiece, From: []Key{SleeveHeld}, Expr: "2 * " + p.num(SleeveHeld),
			Value: float64(p.PickSleeves)}, p.In.Has(SleeveHeld)
	case PickTotal:
		return Record{Rule: RulePickTotal, From: p.pieces(), Value: float64(p.PickTotal),
			Expr: itoa(p.PickFront) + " + " + itoa(p.PickBack) + " + " + itoa(p.PickSleeves)}, true
	case PickDifference:
		return Record{Rule: RulePickDifference, From: []Key{BandStitches, PickTotal}, Value: float64(p.PickDifference),
			Expr: itoa(p.BandStitches) + " - " + itoa(p.PickTotal)}, p.has.front && p.has.back && p.has.band
	}
	return Record{}, false
}

// pieces are the results that the total is made from.
func (p *Plan) pieces() (from []Key) {
	for _, k := range [...]Key{PickFront, PickBack, PickSleeves} {
		if _, ok := p.count(k); ok {
			from = append(from, k)
		}
	}
	return from
}

// recordPiece is the sum of one piece; the rows of its two slopes are counted
// one slope at a time, so the whole is even.
func (p *Plan) recordPiece(held, rows Key, v int) Record {
	r := Record{Rule: RulePickPiece, Expr: fig(p.In.Num(held)), Value: float64(v), Rounding: RoundSlopes,
		Unrounded: p.In.Num(held).Add(p.In.Num(rows).Mul(p.In.Num(PickRatio)).Mul(Int(2))).Float()}
	if p.In.Has(held) {
		r.From = append(r.From, held)
	}
	if p.In.Has(rows) {
		r.From = append(r.From, rows, PickRatio)
		r.Expr += " + 2 * " + p.num(rows) + " * " + p.num(PickRatio)
	}
	if r.Unrounded == r.Value {
		r.Rounding = RoundNone
	}
	return r
}
