package engine

// PickUpEdge is the edge a front band is picked up along, from the lower edge
// to the top of the neckband. Lengths in cm; what is not known stays 0.
type PickUpEdge struct {
	Length        Num // of the front edge, without the neckband
	NeckbandDepth Num // of the folded neckband: its end is counted once, through both layers
	Rows          int // rows of the front edge
	NeckbandRows  int // rows of the neckband's outer layer
	Gauge         Num // stitches per 10 cm of the front band itself
	Rib           Rib // plain where the band has none
	EdgeStitches  int // knit stitches at each end of a ribbed band
}

// PickUp is how many stitches a front band is begun with.
type PickUp struct {
	Wanted                    Num // before fitting to the rib
	Stitches, Smaller, Larger int // fitted; Smaller is 0 where there is none
	Rows                      int // edge rows, front and neckband; 0 where not known
	// Of of every Every rows is the best fraction a person can keep in the
	// head, with a denominator up to 10; Off is how many stitches too many (or
	// too few, below 0) it gives over the whole edge.
	Of, Every int
	Off       Num
	Map       []int // stitches picked up from each row, from the lower edge
}

// maxEvery is the largest denominator of a pick-up fraction.
const maxEvery = 10

// PickUpFor counts a front band: edge length times the band's own stitch
// gauge (kelbournewoolens.com 2015: stitch gauge over row gauge is the same
// ratio by the row), fitted to the rib. ok is false where the length or the
// gauge is missing. Without rows there is no fraction and no map; more than
// two stitches to a row leave the map nil.
func PickUpFor(e PickUpEdge) (p PickUp, ok bool) {
	if e.Length.Sign() <= 0 || e.Gauge.Sign() <= 0 {
		return PickUp{}, false
	}
	counts := e.closing()
	p.Wanted = e.Length.Add(e.NeckbandDepth).Mul(e.Gauge).Div(Int(10))
	p.Stitches = counts.nearest(p.Wanted)
	p.Smaller, p.Larger = counts.atMost(p.Stitches-1), counts.above(p.Stitches)
	p.over(e.Rows, e.NeckbandRows)
	return p, true
}

// closing is the counts that close in the edge's rib.
func (e PickUpEdge) closing() closing {
	if e.Rib.Purl > 0 {
		return closing{first: 2*e.EdgeStitches + e.Rib.Purl, step: e.Rib.Knit + e.Rib.Purl}
	}
	return closing{first: 1, step: 1}
}

// over spreads the stitches over the rows of the edge and of the neckband's
// end: the fraction, its error and the map. Nothing where the edge's rows are
// not known.
func (p *PickUp) over(edge, neckband int) {
	if edge <= 0 {
		return
	}
	p.Rows = edge + neckband
	ratio := Frac(int64(p.Stitches), int64(p.Rows))
	p.Of, p.Every = BestFraction(ratio, maxEvery)
	p.Off = Frac(int64(p.Of), int64(p.Every)).Sub(ratio).Mul(Int(int64(p.Rows)))
	p.Map = PickUpMap(p.Stitches, p.Rows)
}

// BestFraction is the fraction of/every nearest to x > 0 with a denominator up
// to most; of two equally near the one with the smaller denominator.
func BestFraction(x Num, most int) (of, every int) {
	var off Num
	for q := 1; q <= most; q++ {
		p := x.Mul(Int(int64(q))).Round()
		d := Frac(int64(p), int64(q)).Sub(x).Abs()
		if every == 0 || d.Less(off) {
			of, every, off = p, q, d
		}
	}
	return of, every
}

// PickUpMap spreads stitches over the rows of an edge: the rows passed over,
// or those that give two, lie as Spread lays them. It is nil where a row would
// have to give more than two.
func PickUpMap(stitches, rows int) []int {
	if stitches >= rows {
		return Spread(stitches, rows)
	}
	if stitches < 0 {
		return nil
	}
	m := make([]int, rows)
	for i := range m {
		m[i] = 1
	}
	for _, row := range spreadColumns(rows-stitches, rows) {
		m[row] = 0
	}
	return m
}
