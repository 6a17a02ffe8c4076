package listen

import "foldrow/dialog/listen/quantity"

// startAt: "start knitting at row 5", "begin from the 20th row" begin the making,
// or go on with it, at a row of the band.
func (r *reading) startAt() (Meaning, bool) {
	t, qs := r.l.tokens, r.l.quantities()
	if !oneOf(t[r.l.begin].text, []string{"start", "begin", "resume", "continue", "restart", "carry", "go"}) || len(qs) != 1 || len(r.b.sets) > 0 || r.l.question || r.l.words() > 8 {
		return Meaning{}, false
	}
	q := t[qs[0]].q
	if q.Unit != quantity.Row || !q.After && !q.Ordinal || q.Range || q.Problem != "" || !q.Value.IsInt() || q.Value.Sign() <= 0 {
		return Meaning{}, false
	}
	for i := r.l.begin + 1; i < qs[0]; i++ {
		if oneOf(t[i].text, []string{"at", "from", "with", "on"}) {
			return Meaning{Kind: Step, Move: Move{What: "row", Row: q.Value.Floor()}, FigUnit: quantity.Row}, true
		}
	}
	return Meaning{}, false
}
