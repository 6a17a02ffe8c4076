package dialog

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// piecesJSON is a result that lists needles, of a band that the bed does not
// take at once: a list for each piece, from the left or from the lower end, as
// each hangs on its own needles.
func piecesJSON(p *engine.Plan, k engine.Key) (any, bool) {
	switch k {
	case engine.RibColumns, engine.HemNeedles, engine.EmptyNeedles, engine.Rehang, engine.BandHangings:
		return bandPiecesJSON(p, k)
	case engine.FrontColumns:
		return frontPiecesJSON(p, p.FrontRibColumns())
	case engine.HoleNeedles:
		if p.Front.HasHoles() {
			return frontPiecesJSON(p, p.Front.HoleColumns())
		}
	}
	return nil, false
}

// bandPiecesJSON asks the plan of each piece of the neckband for its own.
func bandPiecesJSON(p *engine.Plan, k engine.Key) (any, bool) {
	pieces := p.OnBed()
	if len(pieces) < 2 {
		return nil, false
	}
	var out []any
	for _, q := range pieces {
		v, ok := q.Value(k)
		if !ok {
			return nil, false
		}
		out = append(out, v)
	}
	return out, true
}

// frontPiecesJSON names the needles of cols on each piece of a front band.
func frontPiecesJSON(p *engine.Plan, cols []int) (any, bool) {
	if p.Front == nil || len(p.Front.Parts) < 2 || len(cols) == 0 {
		return nil, false
	}
	out := make([][]string, len(p.Front.Parts))
	for i, t := range p.Front.Parts {
		out[i] = []string{}
		for _, col := range cols {
			if t.Has(col) {
				out[i] = append(out[i], t.Needle(col))
			}
		}
	}
	return out, true
}

// partAtHand tells of the needles of the piece she knits.
func (c *turn) partAtHand(k engine.Key, what string) (string, bool) {
	q := c.atHand()
	text, ok := c.needlePart(q, k, columnsOf(q, k), what)
	return fmt.Sprintf("**Piece %d of %d.** %s", q.Piece.No, q.Piece.Of, text), ok
}

// needleInPieces tells of one needle in each piece of the band.
func (c *turn) needleInPieces(p *engine.Plan, k engine.Key, what string) (string, bool) {
	var out []string
	for _, q := range p.OnBed() {
		text, _ := c.needleIs(q, k, columnsOf(q, k), what)
		out = append(out, fmt.Sprintf("**Piece %d of %d:** %s", q.Piece.No, q.Piece.Of, text))
	}
	c.answersOf(p, k) // of all the pieces
	return strings.Join(out, "\n\n"), true
}

// allOf is how many needles a result names on all pieces of the band together.
func allOf(p *engine.Plan, k engine.Key) int {
	n := 0
	for _, q := range p.OnBed() {
		n += len(columnsOf(q, k))
	}
	return n
}

// columnsOf is the columns of a plan that a result names.
func columnsOf(p *engine.Plan, k engine.Key) []int {
	return map[engine.Key][]int{engine.RibColumns: p.RibColumns, engine.HemNeedles: p.HemColumns, engine.EmptyNeedles: p.EmptyColumns}[k]
}
