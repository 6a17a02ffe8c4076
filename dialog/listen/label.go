package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/rules"
)

// byLabel reads what the plan prints of an input, its name and its value, typed
// back: "clicks between two dial numbers 3". Names of one or two words are read
// as any others are.
func (x *Lexicon) byLabel(clean string, ctx Context) (Meaning, bool) {
	low := lower(clean)
	for i := range x.labels {
		card := &x.labels[i]
		rest, ok := strings.CutPrefix(low, card.Label)
		if !ok {
			continue
		}
		rest = strings.TrimLeft(rest, " :=")
		qs := quantity.Scan(rest)
		if len(qs) != 1 || qs[0].Start != 0 || qs[0].End != len(rest) {
			continue
		}
		q := qs[0]
		if card.Dimension == rules.PerStitch && q.Unit == quantity.Stitch && isLength(q.OverUnit) { // "1.4 cm a stitch"
			each := q.Over.Div(q.Value)
			q = quantity.Quantity{Value: each, High: each, Unit: q.OverUnit}
		}
		if !accepts(card.Dimension, &q) {
			continue
		}
		s, p := x.value(card.Key, &q, ctx)
		if p.Code != "" {
			return Meaning{Kind: Unclear, Problem: p}, true
		}
		s.Key, s.Near = card.Key, 1
		return Meaning{Kind: Values, Sets: []Set{s}}, true
	}
	return Meaning{}, false
}
