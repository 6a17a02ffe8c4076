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
	return fmt.Sprintf("%d pieces: %s", len(pieces), PartsSpan(p.Parts))
}

// PartsSpan is the stitches and needles of every piece of a band, and how many
// of them the joins take up.
func PartsSpan(parts []engine.Part) string {
	var list []string
	more, all := 0, 0
	for _, t := range parts {
		list = append(list, fmt.Sprintf("%d (%s)", t.Needles(), ends(t.Needles())))
		more, all = more+t.Left+t.Right, all+t.Needles()
	}
	text := And(list)
	switch {
	case more == 0:
		return text
	case len(parts) == 2:
		return text + fmt.Sprintf(", %d of these %d for the join", more, all)
	}
	return text + fmt.Sprintf(", %d of these %d for the joins", more, all)
}

// And is a list as it is spoken: "a", "a and b", "a, b and c".
func And(list []string) string {
	if len(list) < 2 {
		return strings.Join(list, "")
	}
	last := len(list) - 1
	return strings.Join(list[:last], ", ") + " and " + list[last]
}

// SeamNeedles says which needles of a piece hold what the seams of its joins
// take up; "" where nothing is.
func SeamNeedles(t engine.Part) string {
	n := t.Needles()
	var cols []int
	for c := range n {
		if c < t.Left || c >= n-t.Right {
			cols = append(cols, c)
		}
	}
	switch {
	case len(cols) == 0:
		return ""
	case t.Left > 0 && t.Right > 0:
		return Needles(cols, n) + " go into the joins"
	case len(cols) == 1:
		return Needles(cols, n) + " goes into the join"
	}
	return Needles(cols, n) + " go into the join"
}

// PieceEnds is the needles of a piece, those for its joins named.
func PieceEnds(q *engine.Plan) string {
	text := "needles " + ends(q.BandStitches)
	if seam := SeamNeedles(q.Piece.Part); seam != "" {
		text += " (" + seam + ")"
	}
	return text
}

// PieceNeedles names every needle of a piece that something happens on.
func PieceNeedles(q *engine.Plan) string {
	parts := []string{PieceEnds(q)}
	for _, list := range [][2]string{{"hang again", RehangWords(q)}, {"drop and latch", Latch(q)}, {"leave out of work", Empty(q)}, {"hang the bump", HemBumps(q)}} {
		if list[1] != "" {
			parts = append(parts, upper(list[0])+": "+list[1])
		}
	}
	return strings.Join(parts, ".\n- ")
}

// PieceYoke says which of the yoke's stitches a piece hangs; "" where they are
// not known.
func PieceYoke(q *engine.Plan) string {
	if q.Piece == nil || q.Piece.To == 0 {
		return ""
	}
	return fmt.Sprintf("stitches %d to %d of the yoke, counted from the left", q.Piece.From, q.Piece.To)
}

// Joints tells the joins of a band in pieces, end by end.
func Joints(p *engine.Plan) string {
	var list []string
	for i := 1; i < len(p.Parts); i++ {
		list = append(list, fmt.Sprintf("the right end of piece %d to the left end of piece %d", i, i+1))
	}
	switch {
	case p.Joins() == len(p.Parts):
		list = append(list, "last the band's two ends, which closes the round")
	case p.In.Garment == engine.Cardigan:
		list = append(list, "the band's two ends go into the front bands")
	default:
		list = append(list, "the band's two ends stay open for the slit")
	}
	return Count(p.Joins(), "join", "joins") + ": " + strings.Join(list, "; ")
}

// YokePlaces tells the waiting yoke part by part, where the bed does not take
// it at once: the stitches and their needles. Many parts are told in one.
func YokePlaces(p *engine.Plan) string {
	parts := p.WaitingParts()
	if len(parts) < 2 {
		return ""
	}
	least, most := parts[0].Stitches(), 0
	var list []string
	for _, s := range parts {
		least, most = min(least, s.Stitches()), max(most, s.Stitches())
		list = append(list, fmt.Sprintf("%d to %d (%s)", s.From, s.To, ends(s.Stitches())))
	}
	switch {
	case len(list) == 2:
		return strings.Join(list, ", ")
	case least == most:
		return fmt.Sprintf("%d parts of %d (%s)", len(list), most, ends(most))
	}
	return fmt.Sprintf("%d parts of %d to %d (at most %s)", len(list), least, most, ends(most))
}

// WorkNeedles names the needles that the work takes, stage by stage. Of more
// than one hanging the widest is told: the first.
func WorkNeedles(p *engine.Plan) string {
	stages := p.BedStages()
	var list []string
	for i, s := range stages {
		if i > 0 && s.Needles == stages[i-1].Needles && s.Parts == 1 && stages[i-1].Parts == 1 || s.Round > 1 {
			continue // hung one to a needle, or after a wider one
		}
		what := "band"
		switch {
		case s.Round == 0 && s.Parts > 1:
			what = "yoke parts"
		case s.Round == 0:
			what = "yoke"
		case s.Round > 0:
			what = fmt.Sprintf("hanging %d", s.Round)
		case s.Parts > 1:
			what = "band pieces"
		}
		list = append(list, fmt.Sprintf("%s (%s)", ends(s.Needles), what))
	}
	if len(list) == 1 && stages[len(stages)-1].Parts == 1 {
		return ends(stages[0].Needles)
	}
	return strings.Join(list, ", ")
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
