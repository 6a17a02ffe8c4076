package engine

import "slices"

// What the knitter says of the front bands: the bands knitted sideways from
// stitches picked up along each front. Lengths are cm, gauges per 10 cm,
// unless noted. None of them has to be said; what is not follows from the
// plan, see frontInput, or has a default.
const (
	FrontEdge     Key = "front_edge"      // length of one front edge
	EdgeRows      Key = "front_rows"      // rows counted along it
	NeckbandEnd   Key = "neckband_end"    // 1: the neckband's end is picked up as well, 0: it is in the edge, or left out
	FrontGauge    Key = "front_gauge"     // stitches, of the front band itself
	FrontRowGauge Key = "front_row_gauge" // rows, of the front band itself
	FrontLayers   Key = "front_layers"
	FrontCount    Key = "front_count" // stitches of the front band, where she gives them herself
	Holes         Key = "buttonholes"
	HoleSpacing   Key = "hole_spacing" // centre to centre
	HoleStitches  Key = "hole_stitches"
	HoleMargin    Key = "hole_margin" // stitches outside the first and the last hole
	Button        Key = "button"      // diameter, mm
	KeyFrontRib   Key = "front_rib"   // a text: a rib, as Rib.String writes it
)

// What follows of the front bands.
const (
	FrontStitches   Key = "front_stitches"
	FrontRatio      Key = "front_ratio"       // stitches to a row, as a fraction: "7 of 10"
	FrontRatioError Key = "front_ratio_error" // stitches too many, kept strictly over the edge
	FrontMap        Key = "front_map"         // stitches from each row, from the lower edge
	FrontLength     Key = "front_length"      // cm of edge that the stitches fill
	FrontPieces     Key = "front_pieces"      // the bed needs
	FrontShares     Key = "front_shares"      // stitches of each piece, where there are several
	FrontLeft       Key = "front_left"        // outermost needle, where the bed takes the band in one piece
	FrontRight      Key = "front_right"
	FrontColumns    Key = "front_columns" // needles to drop and latch
	FrontLayerRows  Key = "front_layer_rows"
	FrontTotalRows  Key = "front_total_rows"
	FrontWidth      Key = "front_width"
	HoleGap         Key = "hole_gap"  // stitches, before rounding
	HoleGaps        Key = "hole_gaps" // as knitted
	HolePositions   Key = "hole_positions"
	HoleMiddles     Key = "hole_middles" // where the buttons are pinned
	HoleNeedles     Key = "hole_needles"
	HoleRows        Key = "hole_rows"     // row of the outer layer, and the one that lies on it
	HoleDistance    Key = "hole_distance" // cm, centre to centre
	HoleLength      Key = "hole_length"   // cm, that the button asks for
	OverlapLow      Key = "overlap_low"   // cm, that the button asks for
	OverlapHigh     Key = "overlap_high"
	FrontYarn       Key = "front_yarn" // m, both bands
	FrontYarnGrams  Key = "front_yarn_grams"
	AllYarn         Key = "all_yarn" // m, neckband and front bands
	AllYarnGrams    Key = "all_yarn_grams"
)

// frontKeys are the inputs that bring the front bands into a plan, side by side
// in numberKeys.
var frontKeys = [...]Key{FrontEdge, EdgeRows, NeckbandEnd, FrontGauge, FrontRowGauge, FrontLayers,
	FrontCount, Holes, HoleSpacing, HoleStitches, HoleMargin, Button}

// HasFronts reports whether anything was said of the front bands.
func (in Inputs) HasFronts() bool {
	first, last := numberIndex[frontKeys[0]], numberIndex[frontKeys[len(frontKeys)-1]]
	return slices.Contains(in.set[first:last+1], true) || in.Text(KeyFrontRib) != ""
}

// usualHole is the stitches of a buttonhole where neither it nor the button is
// said (common practice).
const usualHole = 2

// frontInput is number k of the front bands, said or following: the gauges,
// the rib and the layers are the neckband's, a hole is as long as its button
// asks for, an edge's rows are its length times the garment's row gauge.
func (p *Plan) frontInput(k Key) (Num, bool) {
	in := &p.In
	if in.Has(k) {
		return in.Num(k), true
	}
	if p.Front == nil {
		return Num{}, false
	}
	rows := in.Num(RowGauge)
	switch k {
	case FrontGauge:
		return in.Num(StitchGauge), in.Has(StitchGauge)
	case FrontRowGauge:
		return rows, in.Has(RowGauge)
	case FrontLayers:
		return in.Num(Layers), in.Has(Layers)
	case FrontEdge:
		return in.Num(EdgeRows).Mul(Int(10)).Div(rows), in.Has(EdgeRows) && rows.Sign() > 0
	case EdgeRows:
		return wholeNum(in.Num(FrontEdge).Mul(rows).Div(Int(10)).Round()), in.Has(FrontEdge) && rows.Sign() > 0
	case Holes:
		n, ok := p.holesAt()
		return wholeNum(n), ok
	case HoleStitches:
		return wholeNum(p.holeSize()), true
	}
	return Num{}, false
}

// frontNum is frontInput, 0 where it is not known.
func (p *Plan) frontNum(k Key) Num {
	n, ok := p.frontInput(k)
	if !ok {
		return Num{}
	}
	return n
}

// AboutFronts reports whether k, an input or a result, is about the front bands.
func AboutFronts(k Key) bool {
	if k == KeyFrontRib {
		return true
	}
	for _, x := range frontKeys {
		if x == k {
			return true
		}
	}
	for _, x := range frontResults {
		if x == k {
			return x != ClosingYarn && x != YarnTex && x != Tightness && x != AllYarn && x != AllYarnGrams
		}
	}
	return false
}
