package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// gaugeFor: "what gauge makes 107 stitches a 42 cm neck", "gauge for a neck of
// 42": at which gauge a count, or the plan's own, gives a neck.
func (r *reading) gaugeFor() (Meaning, bool) {
	if !r.l.has("gaug", "gauge") || !r.l.has("neck", "give", "mak", "make", "get", "need", "with") || !r.asks() && r.l.tokens[r.l.begin].stem != stem("gauge") || r.howToForm() ||
		r.cue(Why) || r.cue(Shake) && r.l.has("wrong", "out", "off", "error") || r.ctx.Open != "" && r.ctx.Open != "keep" {
		return Meaning{}, false
	}
	m := Meaning{Kind: Backwards, Keys: []engine.Key{engine.StitchGauge}}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if q.Problem != "" || q.Range || q.Rib || q.Ordinal || q.Unit == quantity.Row {
			return Meaning{}, false
		}
		length := *q
		if q.Unit == quantity.Stitch && isLength(q.OverUnit) { // "107 stitches a 42 cm neck"
			length = quantity.Quantity{Value: q.Over, High: q.Over, Unit: q.OverUnit}
		}
		count := q.Unit == quantity.Stitch || q.Unit == "" && q.Value.IsInt() && engine.Int(60).Less(q.Value)
		if count {
			m.Sets = append(m.Sets, Set{Key: engine.BandStitches, Value: q.Value, Near: 1})
		}
		if (!count || length.Unit != q.Unit) && !holds(m.Sets, engine.Neck) {
			s, p := r.x.value(engine.Neck, &length, r.ctx)
			if p.Code != "" || !within(s.Value, r.x.spans[engine.Neck].Possible) {
				return Meaning{}, false
			}
			s.Key, s.Near = engine.Neck, 1
			m.Sets = append(m.Sets, s)
		}
	}
	return m, holds(m.Sets, engine.Neck) && len(m.Sets) <= 2 && (r.l.has("neck", "stitch") || holds(m.Sets, engine.BandStitches))
}
