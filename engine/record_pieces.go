package engine

import (
	"fmt"
	"strings"
)

// recordOnBed is how the numbers of a band came about that the bed does not
// take at once.
func (p *Plan) recordOnBed(k Key) (Record, bool) {
	v, ok := p.count(k)
	if !ok {
		return Record{}, false
	}
	switch k {
	case BandPieces:
		return p.recordPieces(p.BandStitches, p.Pieces, BandStitches), true
	case BandJoins:
		r := Record{Rule: RuleJoins, From: []Key{BandPieces, KeyGarment}, Expr: itoa(len(p.Parts)), Value: float64(v)}
		if v < len(p.Parts) {
			r.Expr += " - 1"
		}
		return r, true
	case YokeParts:
		return Record{Rule: RuleParts, From: []Key{YokeStitches, BandStitches, BedNeedles},
			Expr: strings.Join(p.lotsExpr(), " + "), Value: float64(v)}, true
	case MostNeedles:
		r := Record{Rule: RuleMost, From: []Key{BandStitches, BedNeedles}, Expr: p.mostExpr(), Value: float64(v)}
		if p.has.yoke {
			r.From = append(r.From, YokeStitches)
		}
		return r, true
	}
	return Record{}, false
}

// recordPieces is the pieces of n stitches: each join takes its stitches of
// the band and of the bed.
func (p *Plan) recordPieces(n, pieces int, from Key) Record {
	take, bed := joinTakes(p.In), p.In.Int(BedNeedles)
	if pieces == 1 {
		take = 0
	}
	r := Record{Rule: RulePieces, From: []Key{from, BedNeedles, SeamStitches}, Rounding: RoundUp,
		Expr: fmt.Sprintf("(%d - %d) / (%d - %d)", n, take, bed, take), Value: float64(pieces)}
	if take == 0 {
		r.Expr, r.From = fmt.Sprintf("%d / %d", n, bed), r.From[:2]
	}
	r.Unrounded = float64(n-take) / float64(bed-take)
	if more := pieces - bedPieces(n, bed, take); more > 0 { // to keep a purl group whole
		r.Expr, r.Unrounded = r.Expr+" + "+itoa(more), r.Unrounded+float64(more)
	}
	return r
}

// knittedExpr is the stitches on needles, the joins' told apart.
func (p *Plan) knittedExpr() string {
	if more := p.Knitted() - p.BandStitches; more > 0 {
		return fmt.Sprintf("(%d + %d)", p.BandStitches, more)
	}
	return itoa(p.BandStitches)
}

// lotsExpr is the parts of every stretch of the yoke that is hung at once.
func (p *Plan) lotsExpr() []string {
	var out []string
	for _, lot := range p.waitingLots() {
		out = append(out, itoa(len(p.onBed(lot))))
	}
	return out
}

func (p *Plan) mostExpr() string {
	expr := "0"
	for _, s := range p.BedStages() {
		expr = fmt.Sprintf("max(%s, %d)", expr, s.Needles)
	}
	return expr
}
