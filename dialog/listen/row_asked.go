package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// rowAsked: a row and hardly a word more. "card 2" and "c/w row 2" ask for a
// card of the colour chart; "row 17?" asks for the dial of a row of the band,
// or for the card while the chart is walked.
func (r *reading) rowAsked() (Meaning, bool) {
	if r.ctx.Open != "" && r.ctx.Open != "keep" || r.l.words() > 6 || len(r.l.quantities()) > 1 {
		return Meaning{}, false
	}
	if _, drawn := r.drawnRows(); drawn {
		return Meaning{}, false
	}
	row, bare := 0, true
	for i := r.l.begin; i < r.l.end; i++ {
		t := r.l.tokens[i]
		switch {
		case t.q != nil && r.whole(i) > 0 && (t.q.Unit == quantity.None || t.q.Unit == quantity.Row && (t.q.After || t.q.Ordinal)):
			row, bare = r.whole(i), bare && t.q.Unit == quantity.Row
		case t.q != nil:
			return Meaning{}, false
		case !oneOf(t.text, []string{"row", "card", "colourwork", "chart", "pattern", "the", "for", "of", "show", "give", "me", "my", "and"}):
			return Meaning{}, false
		}
	}
	carded := r.l.has("card") && (r.ctx.Chart || r.l.has("row") || row > 0)
	coloured := r.l.has("colourwork", "chart", "pattern") && row > 0
	switch {
	case carded || coloured || row > 0 && bare && r.l.question && r.ctx.Walk:
		return Meaning{Kind: Parts, Topic: "chart", Move: Move{Row: row}}, true
	case row > 0 && bare && (r.l.question || !r.ctx.Making) && !r.l.has("chart", "pattern"):
		return Meaning{Kind: Number, Keys: []engine.Key{engine.Tension}, Figure: engine.Int(int64(row)), HasFig: true, Part: "row"}, true
	}
	return Meaning{}, false
}
