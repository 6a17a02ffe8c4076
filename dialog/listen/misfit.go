package listen

import "foldrow/engine"

// misfit: a number stands right behind the name of one thing, but its unit can
// only be another's: "neck 45 g". Its unit alone would set the other.
func (r *reading) misfit() (named engine.Key, at int, found bool) {
	for n, s := range r.b.sets {
		at := r.b.at[n]
		if s.Near > 0 || at == 0 || r.l.tokens[at].q == nil || r.l.tokens[at].stop || s.Key == engine.RowGauge && r.l.tokens[at].q.Unit == "row" {
			continue
		}
		for _, m := range r.l.mentions {
			if m.to == at && m.key != s.Key && engine.IsNumber(m.key) && !m.result && !r.b.has(m.key) &&
				!accepts(r.x.spans[m.key].Dimension, r.l.tokens[at].q) {
				return m.key, at, true
			}
		}
	}
	return "", 0, false
}
