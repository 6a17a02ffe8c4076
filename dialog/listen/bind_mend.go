package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// What mends a value said before.

// mendsGauge: "oh no, I meant 38 rows", right after the gauge was told.
func (b *binder) mendsGauge(q *quantity.Quantity) bool {
	if q.Unit == "st" && (b.ctx.Open == "" || b.ctx.Open == "keep") && !q.Ordinal && q.Sign == 0 && within(q.Value, b.x.spans[engine.StitchGauge].Usual) &&
		b.l.has("measur", "swatch", "count", "wash", "loosely", "tightly", "gauge", "tighter", "looser") && !b.l.has("yoke", "yok", "cast", "band", "edge", "decreas") {
		return true // "I measured again, it's 29 stitches"
	}
	return b.ctx.Open == "neck" && (b.ctx.Topic == engine.RowGauge || b.ctx.Topic == engine.StitchGauge) && !q.After && !q.Ordinal &&
		b.l.has("mean", "meant", "no", "not", "sorry", "oops", "wait", "actually", "should")
}

// rowsWere: "the rows were 41" tells of the swatch: no layer has so many.
func (b *binder) rowsWere() {
	if b.ctx.Making || b.ctx.Open != "" && b.ctx.Open != "keep" || !strings.Contains(b.l.text, "were ") && !strings.Contains(b.l.text, "was ") || b.has(engine.RowGauge) || b.l.has("layer", "each") {
		return
	}
	for i, s := range b.sets {
		if s.Key == engine.DepthRows && !s.Relative && !s.InAll && within(s.Value, b.x.spans[engine.RowGauge].Usual) && !within(s.Value, b.x.spans[engine.DepthRows].Usual) {
			b.sets[i].Key = engine.RowGauge
		}
	}
}

// everySo: "no, every 2", right after the rows between clicks were said, is of
// those.
func (b *binder) everySo() {
	if b.ctx.Topic != engine.RowsPerClick || b.l.has("hem", "bump", "hang", "needle") {
		return
	}
	for i := range b.sets {
		if b.sets[i].Key == engine.HemEvery && !b.has(engine.RowsPerClick) {
			b.sets[i].Key = engine.RowsPerClick
		}
	}
}

// correctsGauge: "rows 42 not 40", "27 stitches, not 28": of a value that
// takes another's place and is usual for the gauge, and for no rows of a band.
func (b *binder) correctsGauge(at int) bool {
	q := b.l.tokens[at].q
	if b.ctx.Open == "garment" || b.ctx.Making || q.Ordinal || q.Sign != 0 || q.After && q.Unit == quantity.Row && (at == 0 || b.l.tokens[at-1].text != "rows") {
		return false
	}
	for i, gone := range b.dropped {
		if gone && b.l.tokens[i].q != nil && sameSort(b.l.tokens[i].q, q) {
			if q.Unit == quantity.Row {
				return within(q.Value, b.x.spans[engine.RowGauge].Usual) && !within(q.Value, b.x.spans[engine.DepthRows].Usual)
			}
			return within(q.Value, b.x.spans[engine.StitchGauge].Usual)
		}
	}
	return false
}

// corrects gives a lone number to what was set last, where the line mends it:
// "no, 53 cm", "make it 13", "and 14".
func (b *binder) corrects(i int) bool {
	k := topicInput(b.ctx.Topic)
	q := b.l.tokens[i].q
	if k == "" || b.ctx.Open != "" && b.ctx.Open != "keep" || len(b.l.quantities()) != 1 || q.Ordinal || q.After || q.Rib || len(b.l.mentions) > 0 {
		return false
	}
	switch b.l.tokens[b.l.begin].text {
	case "no", "oops", "sorry", "make", "and", "rather", "actually", "better", "or":
	default:
		if !b.l.meant() && !(strings.HasPrefix(b.l.text, "back to ") && !b.ctx.Making) {
			return false
		}
	}
	if sign, _ := b.comparative(i, ""); sign != 0 || !accepts(b.x.spans[k].Dimension, q) {
		return false
	}
	s, p := b.x.value(k, q, b.ctx)
	if p.Code != "" || b.x.spans[k].HasSpan && !within(s.Value, b.x.spans[k].Usual) {
		return false
	}
	return b.add(k, i, 1)
}

// meant: "I meant 43", "43 I mean" mend what was said last.
func (l *Line) meant() bool {
	t := l.text
	for _, w := range []string{"i mean", "i meant"} {
		if strings.HasPrefix(t, w+" ") || strings.HasSuffix(strings.TrimRight(t, ".! "), w) {
			return true
		}
	}
	return false
}
