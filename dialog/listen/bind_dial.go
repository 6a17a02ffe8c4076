package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// layersAlone: "single, 2x2", "12 rows, doubled, 4 cm": the word stands between
// commas by itself.
func (b *binder) layersAlone() {
	for i, t := range b.l.tokens {
		n := map[string]int64{"single": 1, "doubled": 2, "double": 2}[t.text]
		first, last := i == 0 || t.stop, i+1 == len(b.l.tokens) || b.l.tokens[i+1].stop
		if n > 0 && t.q == nil && first && last && len(b.l.tokens) > 1 && !b.has(engine.Layers) && !b.l.question {
			b.put(Set{Key: engine.Layers, Value: engine.Int(n), Near: 1}, i)
		}
	}
}

// beginsAt: "start at dial 6", "can I start at 6" tell the dial of the band's
// first row.
func (b *binder) beginsAt() {
	if b.l.has("garment", "swatch", "main", "body", "yoke") || b.ctx.Open != "" && b.ctx.Open != "keep" || b.ctx.Making {
		return
	}
	for i := b.l.begin; i+2 < b.l.end; i++ {
		t := b.l.tokens
		if !oneOf(t[i].text, []string{"start", "begin"}) || t[i].q != nil || !oneOf(t[i+1].text, []string{"at", "on", "with"}) {
			continue
		}
		q := t[i+2].q
		bare := q != nil && q.Unit == "" && !q.Range && !q.Ordinal && !q.Rib && q.Problem == "" && t[i+1].text == "at" && i+3 == b.l.end &&
			within(q.Value, b.x.spans[engine.MainTension].Possible) && !b.has(engine.MainTension) && b.add(engine.MainTension, i+2, 1)
		for n := range b.sets {
			if b.sets[n].Key == engine.MainTension {
				b.sets[n].Begin, b.sets[n].Bare = true, bare
			}
		}
		return
	}
}

// marks: "dial 6 thirds", "dial 7, halves" tell how the dial is marked.
func (b *binder) marks() {
	b.layersAlone()
	b.beginsAt()
	if b.has(engine.ClicksPerNumber) || !b.has(engine.MainTension) && !b.l.has("dial", "tension", "mt") {
		return
	}
	for i, t := range b.l.tokens {
		n := map[string]int64{"halves": 2, "thirds": 3, "quarters": 4}[t.text]
		if n > 0 && t.q == nil && !b.used[i] {
			b.used[i] = true
			b.put(Set{Key: engine.ClicksPerNumber, Value: engine.Int(n), Near: 1}, i)
			return
		}
	}
}

// marksBetween: two dots between the numbers part a number in three.
func (b *binder) marksBetween() {
	for i := range b.l.tokens[:max(0, len(b.l.tokens)-1)] {
		q := b.l.tokens[i].q
		if q == nil || !q.Value.IsInt() || q.Value.Sign() < 1 || q.Range || !b.dotsAt(i) {
			continue
		}
		b.used[i] = true
		b.put(Set{Key: engine.ClicksPerNumber, Value: q.Value.Add(engine.Int(1)), Near: 1}, i)
		return
	}
}

// dotsAt: the number at token i counts dots between two numbers of the dial.
func (b *binder) dotsAt(i int) bool {
	if b.l.tokens[i].q.Unit == quantity.Click {
		return b.l.tokens[i+1].text == "between" && !strings.Contains(b.l.tokens[i].text, "click")
	}
	dots := false
	for j := i + 1; j < min(len(b.l.tokens), i+4) && b.l.tokens[j].q == nil; j++ {
		if b.l.tokens[j].text == "between" && dots {
			return true
		}
		dots = dots || oneOf(b.l.tokens[j].text, []string{"dots", "dot", "marks", "mark", "lines", "line", "ticks", "tick", "points", "strokes"})
	}
	return false
}
