package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// holeSizes: "compare 2 and 3 stitch buttonholes" compares what one hole takes,
// and counts none.
func (b *binder) holeSizes() {
	qs := b.l.quantities()
	for n := 1; n < len(qs); n++ {
		i, j := qs[n-1], qs[n]
		if b.l.tokens[j].q.Unit != quantity.Stitch || !b.holesSaid() || !b.choiceBetween(i, j) {
			continue
		}
		b.unset(engine.Holes)
		b.unset(engine.HoleStitches)
		b.add(engine.HoleStitches, i, 1)
		b.add(engine.HoleStitches, j, 1)
	}
}

// oneHole notes which of the holes a question is about: "the third buttonhole",
// "the top button".
func (r *reading) oneHole(m *Meaning) {
	if len(m.Sets) > 0 || !r.l.has("buttonhol", "hol", "hole", "button") || r.l.has("row") {
		return
	}
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; q.Ordinal && q.Value.IsInt() {
			m.Part, m.Figure, m.HasFig = "nth", q.Value, true
		}
	}
	switch {
	case m.Part != "":
	case r.l.has("top", "last", "uppermost", "highest"):
		m.Part = "last"
	case r.l.has("bottom", "first", "lowest"):
		m.Part = "first"
	}
	if m.Part != "" {
		m.Keys = []engine.Key{engine.HolePositions}
	}
}
