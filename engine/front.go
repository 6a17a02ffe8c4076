package engine

import "errors"

// Front is the front bands of a plan: two of the same kind, knitted from
// stitches picked up along each front. Lengths are cm unless noted. What
// could not be worked out reads as zero.
type Front struct {
	PickUp
	Length    Num    // of edge that the stitches fill, without the neckband's end
	Pieces    int    // the bed needs; 0 where the bed is not known
	BedChoice int    // most stitches that fit the bed, 0 where there are none
	Parts     []Part // its pieces, one where the bed takes it at once

	Layers, LayerRows, TotalRows int
	FoldRow                      bool
	Width                        Num // of the rows

	Spec     HoleSpec
	Holes    Buttonholes
	Fault    *HolesError // the holes do not fit
	Distance Num         // between the centres of two holes, on average
	HoleRows []int

	Fit ButtonFit

	OffYarn Num     // cm, one band
	Yarn    float64 // m, both bands
	Grams   float64
	scale   float64 // of the loop, over the garment's

	has frontKnown
}

type frontKnown struct{ count, rows, holes, distance, button, yarn, grams bool }

// solveFronts fills in the front bands where anything is said of them. The
// neckband is solved: its end is picked up along.
func (p *Plan) solveFronts() {
	if !p.In.HasFronts() {
		return
	}
	p.Front = &Front{}
	p.frontPickUp()
	p.frontRows()
	p.frontHoles()
	p.frontParts()
	if d, ok := p.frontInput(Button); ok {
		p.Front.Fit, p.Front.has.button = FitButton(d.Div(Int(10))), true
	}
	p.frontYarn()
}

// PickUpEdge is the edge that the front bands are picked up along; what is not
// known of it is 0.
func (p *Plan) PickUpEdge() PickUpEdge {
	e := PickUpEdge{Length: p.frontNum(FrontEdge), Rows: p.frontNum(EdgeRows).Floor(),
		Gauge: p.frontNum(FrontGauge), Rib: p.FrontRib(), EdgeStitches: edge(p.In)}
	if p.frontNum(NeckbandEnd).Sign() > 0 && p.has.depth {
		e.NeckbandDepth, e.NeckbandRows = p.DepthResult, p.LayerRows
	}
	return e
}

// FrontRib is the rib of the front bands: said, or the neckband's.
func (p *Plan) FrontRib() Rib {
	if r, ok := ParseRib(p.In.Text(KeyFrontRib)); ok {
		return r
	}
	if !p.In.Rib.IsSet() {
		return plain
	}
	return p.In.Rib
}

// frontPickUp counts the stitches: from the edge, or as she gives them.
func (p *Plan) frontPickUp() {
	f, e := p.Front, p.PickUpEdge()
	counted, said := p.In.Num(FrontCount), p.In.Has(FrontCount)
	wanted := e.Length.Add(e.NeckbandDepth).Mul(e.Gauge).Div(Int(10))
	switch most := Int(maxStitches); {
	case said && (counted.Sign() <= 0 || most.Less(counted)), !said && most.Less(wanted), e.Rows > maxStitches:
		return // no front is knitted so
	case said:
		f.PickUp = PickUp{Wanted: counted, Stitches: counted.Floor()}
		f.PickUp.over(e.Rows, e.NeckbandRows)
		f.has.count = true
	default:
		f.PickUp, f.has.count = PickUpFor(e)
	}
	if !f.has.count {
		return
	}
	if e.Gauge.Sign() > 0 {
		f.Length = wholeNum(f.Stitches).Mul(Int(10)).Div(e.Gauge).Sub(e.NeckbandDepth)
	}
	if bed := p.In.Int(BedNeedles); bed > 0 {
		f.Pieces = bedPieces(f.Stitches, bed, joinTakes(p.In))
		f.BedChoice = e.closing().atMost(bed)
	}
}

// frontRows turns the width of the band into rows, one layer and all.
func (p *Plan) frontRows() {
	f, gauge := p.Front, p.frontNum(FrontRowGauge)
	f.Layers = max(p.frontNum(FrontLayers).Floor(), 1)
	if gauge.Sign() <= 0 || !p.In.Has(FrontBand) {
		return
	}
	f.has.rows = true
	f.LayerRows = max(p.In.Num(FrontBand).Mul(gauge).Div(Int(10)).Round(), MinRows)
	f.FoldRow = f.Layers > 1 && p.In.Num(FoldRow).Sign() > 0
	f.TotalRows = f.Layers * f.LayerRows
	if f.FoldRow {
		f.TotalRows++
	}
	f.Width = wholeNum(f.LayerRows).Mul(Int(10)).Div(gauge)
}

// holeSize is the stitches of one hole: said, what the button asks for, or the
// usual.
func (p *Plan) holeSize() int {
	if p.In.Has(HoleStitches) {
		return p.In.Int(HoleStitches)
	}
	gauge := p.frontNum(FrontGauge)
	if !p.In.Has(Button) || gauge.Sign() <= 0 {
		return usualHole
	}
	return max(FitButton(p.In.Num(Button).Div(Int(10))).Hole.Mul(gauge).Div(Int(10)).Round(), 1)
}

// holeSpec is the row of holes that is wanted, for n of them.
func (p *Plan) holeSpec(n int) HoleSpec {
	margin := p.frontNum(HoleMargin).Floor()
	return HoleSpec{Stitches: p.Front.Stitches, Holes: n, Size: p.holeSize(), Start: margin, End: margin}
}

// holesAt is how many holes a distance between them gives: so many distances
// lie between the centres of the first and the last, and one hole more.
func (p *Plan) holesAt() (n int, ok bool) {
	apart := p.In.Num(HoleSpacing)
	if p.Front == nil || !p.Front.has.count || apart.Sign() <= 0 || p.frontNum(FrontGauge).Sign() <= 0 {
		return 0, false
	}
	return max(p.holeSpan().Div(apart).Round(), 0) + 1, true
}

// holeSpan is the cm between the centres of the first and the last hole.
func (p *Plan) holeSpan() Num {
	s := p.holeSpec(0)
	return wholeNum(s.Stitches - s.Start - s.End - s.Size).Mul(Int(10)).Div(p.frontNum(FrontGauge))
}

// frontHoles lays the buttonholes along the stitches.
func (p *Plan) frontHoles() {
	f := p.Front
	n, ok := p.frontInput(Holes)
	if !ok || !f.has.count || n.Sign() == 0 { // none may be wanted
		return
	}
	f.Spec = p.holeSpec(n.Floor())
	holes, err := SpaceHoles(f.Spec)
	if err != nil {
		errors.As(err, &f.Fault)
		return
	}
	f.Holes, f.has.holes = holes, true
	if gauge := p.frontNum(FrontGauge); f.Spec.Holes > 1 && gauge.Sign() > 0 {
		f.Distance = f.Holes.Gap.Add(wholeNum(f.Spec.Size)).Mul(Int(10)).Div(gauge)
		f.has.distance = true
	}
	if f.has.rows {
		row := (f.LayerRows + 1) / 2
		f.HoleRows = []int{row}
		if f.Layers > 1 {
			f.HoleRows = append(f.HoleRows, MirrorRow(row, f.LayerRows, f.FoldRow))
		}
	}
}

// EvenMargin is the margin nearest to the one in s that leaves all gaps
// equal, on a tie the smaller; ok is false where no margin does.
func EvenMargin(s HoleSpec) (margin int, ok bool) {
	if s.Holes < 2 {
		return s.Start, s.Holes == 1
	}
	for off := range s.Stitches {
		for _, m := range [...]int{s.Start - off, s.Start + off} {
			free := s.Stitches - 2*m - s.Holes*max(s.Size, 1)
			if m >= 0 && free >= s.Holes-1 && free%(s.Holes-1) == 0 {
				return m, true
			}
		}
	}
	return 0, false
}

// FrontClosing is the next counts below and above n that close in the front
// bands' rib, down 0 where there is none, and whether n itself closes.
func (p *Plan) FrontClosing(n int) (down, up int, closes bool) {
	counts := p.PickUpEdge().closing()
	return counts.atMost(n - 1), counts.above(n), n > 0 && counts.atMost(n) == n
}
