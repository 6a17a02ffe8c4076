package page

import (
	"fmt"
	"slices"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// bedPart is what of the band hangs on the bed at once: the whole of it, or one
// of the pieces in which a band wider than the bed is knitted.
type bedPart struct {
	Name    string // "Piece 1 of 2", "" where the bed takes all in one
	Where   string // its needles, its joins and its tail
	Hangs   []hanging
	Latch   needleList
	Empty   needleList // of a mock rib, out of work
	Hem     needleList
	Doubled []int // columns that carry two
	n       int   // stitches, one to a needle
	plan    *engine.Plan
}

// needleList is some needles of a part: in words and as columns of its bed.
type needleList struct {
	Words string
	Cols  []int
	n     int // needles of the bed they are counted on
}

func listOf(cols []int, n int) needleList {
	return needleList{answer.NeedleRuns(cols, n), cols, n}
}

// Single and Grouped are the names, a box for each, in lines.
func (l needleList) Single() []line  { return inLines(single(l.Cols, l.n)) }
func (l needleList) Grouped() []line { return inLines(grouped(l.Cols, l.n)) }

// Needles are the first and the last needle.
func (b bedPart) Needles() string {
	return engine.NeedleName(0, b.n) + " to " + engine.NeedleName(b.n-1, b.n)
}

// Strip draws the needles, nil where nothing happens on any.
func (b bedPart) Strip() []block { return bed(b.n, lanesOf(b)) }

// Legend explains the signs of the strip.
func (b bedPart) Legend() []sign { return legend(lanesOf(b)) }

// Picture is the strip for Markdown with the words for its signs.
func (b bedPart) Picture() (lines []string, words string) { return answer.CutStrip(b.plan, 5) }

// bedParts lays the band on the bed, nil where its stitches are not known.
func bedParts(v answer.Voice, p *engine.Plan) []bedPart {
	if p.BandStitches == 0 {
		return nil
	}
	pieces := p.OnBed()
	var out []bedPart
	for i, q := range pieces {
		n := q.BandStitches
		b := bedPart{Hangs: hangings(q), Latch: listOf(q.RibColumns, n), Empty: listOf(q.EmptyColumns, n), Hem: listOf(q.HemColumns, n),
			Doubled: answer.Doubled(q), n: n, plan: q}
		if len(pieces) > 1 {
			b.Name = fmt.Sprintf("Piece %d of %d", i+1, len(pieces))
			b.Where = pieceWhere(v, b)
		}
		out = append(out, b)
	}
	return out
}

// pieceWhere tells a piece's needles, its joins and the tail to sew it off.
func pieceWhere(v answer.Voice, b bedPart) string {
	s := fmt.Sprintf("%s, needles %s", answer.Count(b.n, "stitch", "stitches"), b.Needles())
	if seam := answer.SeamNeedles(b.plan.Piece.Part); seam != "" {
		s += "; " + seam
	}
	s += "."
	if yoke := answer.PieceYoke(b.plan); yoke != "" {
		s += " It hangs " + yoke + "."
	}
	if tail := v.Value(b.plan, engine.OffYarn); tail != "" {
		s += " Cut " + tail + " of yarn to sew it off."
	}
	return s
}

// perPiece is what tell says of each piece: once where all say the same, "77
// and 76" where they differ.
func perPiece(pieces []*engine.Plan, tell func(*engine.Plan) string) string {
	var parts []string
	for _, q := range pieces {
		parts = append(parts, tell(q))
	}
	if alike := slices.Compact(slices.Clone(parts)); len(alike) == 1 {
		return alike[0]
	}
	last := len(parts) - 1
	return strings.Join(parts[:last], ", ") + " and " + parts[last]
}

// total adds up what the pieces have.
func total(pieces []*engine.Plan, list func(*engine.Plan) []int) int {
	n := 0
	for _, q := range pieces {
		n += len(list(q))
	}
	return n
}
