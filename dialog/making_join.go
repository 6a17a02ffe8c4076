package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// joins reports whether the present step goes from join to join of a band in
// pieces.
func (w where) joins() bool { return w.card().Fields["joins"] != "" }

// joinParts is a part for each join between two pieces.
func (w where) joinParts() []span {
	var out []span
	for i := 1; i < len(w.pieces); i++ {
		out = append(out, span{i - 1, i})
	}
	return out
}

// joinNow says which ends are sewn together now, from 0, and what the seam
// takes of them.
func (w where) joinNow(i int) string {
	n := len(w.pieces) - 1
	i = min(i, n-1)
	left, right := w.whole.Parts[i], w.whole.Parts[i+1]
	text := fmt.Sprintf("Join %d of %d: piece %d's right end, as it hung, to piece %d's left end", i+1, n, i+1, i+2)
	switch {
	case left.Right == 0:
	case left.Right == right.Left:
		text += fmt.Sprintf(", %s of each inside", answer.Count(left.Right, "stitch", "stitches"))
	default:
		text += fmt.Sprintf(", %s inside in all", answer.Count(left.Right+right.Left, "stitch", "stitches"))
	}
	return text + "."
}

// plan is the plan that the present step speaks of: of the piece she knits, of
// the whole band before the pieces part and after they are sewn off.
func (w where) plan() *engine.Plan {
	if first, last := w.pieceSteps(); w.at >= first && w.at <= last {
		return w.p
	}
	return w.whole
}

// placeNow says which of the yoke's stitches a hanging takes, and what of the
// piece goes into its joins; "" where it takes them all.
func (w where) placeNow(h engine.Hanging) string {
	var parts []string
	switch {
	case h.Round > 1 && h.Pieces > 1:
		parts = append(parts, fmt.Sprintf("Stitches %d to %d of those hanging %d left.", h.From, h.To(), h.Round-1))
	case h.Round > 1:
	case w.p.Piece != nil && w.p.Piece.To > 0:
		at := w.p.Piece.From - 1
		parts = append(parts, fmt.Sprintf("Yoke stitches %d to %d, from the left.", at+h.From, at+h.To()))
	case h.Pieces > 1:
		parts = append(parts, fmt.Sprintf("Yoke stitches %d to %d, from the left.", h.From, h.To()))
	}
	if w.p.Piece != nil && h.Round == h.Rounds && (h.Piece == h.Pieces || h.Round == 1) {
		if s := answer.SeamNeedles(w.p.Piece.Part); s != "" {
			parts = append(parts, s+".")
		}
	}
	return strings.Join(parts, " ")
}
