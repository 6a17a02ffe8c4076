package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// byPiece tells of the needles of a band: as a whole, or piece by piece where
// the bed does not take it at once. Pieces that are alike are told once.
func byPiece(p *engine.Plan, tell func(*engine.Plan) string) string {
	pieces := p.OnBed()
	if len(pieces) == 1 {
		return tell(pieces[0])
	}
	var parts []string
	alike := true
	for i, q := range pieces {
		s := tell(q)
		parts = append(parts, fmt.Sprintf("piece %d: %s", i+1, s))
		alike = alike && s == tell(pieces[0])
	}
	if alike && tell(pieces[0]) == "" {
		return ""
	}
	if alike {
		return "each piece: " + tell(pieces[0])
	}
	return strings.Join(parts, ". ")
}

// Latch, Empty and HemBumps name the needles of a band that are latched, out
// of work, and take a bump of the hem.
func Latch(p *engine.Plan) string {
	return byPiece(p, func(q *engine.Plan) string { return NeedleRuns(q.RibColumns, q.BandStitches) })
}

// Empty names the needles out of work.
func Empty(p *engine.Plan) string {
	return byPiece(p, func(q *engine.Plan) string { return NeedleRuns(q.EmptyColumns, q.BandStitches) })
}

// HemBumps names the needles that take a bump of the hem.
func HemBumps(p *engine.Plan) string {
	return byPiece(p, func(q *engine.Plan) string { return NeedleRuns(q.HemColumns, q.BandStitches) })
}

// Span is the needles on which a band hangs: "needles L60 to R59", or those of
// each piece.
func Span(p *engine.Plan) string {
	pieces := p.OnBed()
	if len(pieces) == 1 {
		return "needles " + ends(p.BandStitches)
	}
	var parts []string
	for _, q := range pieces {
		parts = append(parts, fmt.Sprintf("%d (%s)", q.BandStitches, ends(q.BandStitches)))
	}
	return fmt.Sprintf("%d pieces: %s, each with one stitch more at a join", len(pieces), strings.Join(parts, " and "))
}

// ends is "L60 to R59" for n needles.
func ends(n int) string { return engine.NeedleName(0, n) + " to " + engine.NeedleName(n-1, n) }

// hangingsWords tells each hanging of a yoke that has more stitches than two
// to a needle: its needles and which of them carry two.
func hangingsWords(p *engine.Plan) string {
	var parts []string
	for _, h := range p.Hangings {
		parts = append(parts, HangingName(h)+", "+fmt.Sprintf("%d on %d needles, %s: %s", h.Stitches(), len(h.Map), ends(len(h.Map)), MapWords(h.Map)))
	}
	return strings.Join(parts, ". ")
}

// HangingName is "hanging 1 of 2", with its piece where it has several.
func HangingName(h engine.Hanging) string {
	s := fmt.Sprintf("hanging %d of %d", h.Round, h.Rounds)
	if h.Pieces > 1 {
		s += fmt.Sprintf(", piece %d of %d", h.Piece, h.Pieces)
	}
	return s
}
