package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// turns are the questions that a bare number may answer, in the order in which
// they are asked; the yoke's stitches follow them.
var turns = [...]engine.Key{engine.KeyGarment, engine.StitchGauge, engine.Neck, engine.KeyRib, engine.Depth, engine.YokeStitches}

// inOrder: "cardigan, 28/40, 42, 1x1, 3, 144" answers the questions in their
// order. A number that stands by itself in such a list is the next one's, where
// it is usual there; any other stays free and is named as not taken.
func (b *binder) inOrder() {
	if b.ctx.Open == "" || b.ctx.Open == "keep" || b.ctx.Making || b.problem.Code != "" || !b.listed() ||
		b.l.question || b.l.has("if", "compar", "compare", "or", "versus", "vs", "against", "what", "which", "how", "why", "differenc") {
		return
	}
	own := b.ctx.Unit
	defer func() { b.ctx.Unit = own }()
	next := turnOf(engine.Key(b.ctx.Open))
	if b.ctx.Open == "gauge" {
		next = turnOf(engine.StitchGauge)
	}
	for i := b.l.begin; i < b.l.end; i++ {
		for n, at := range b.at {
			if at == i && turnOf(b.sets[n].Key) >= 0 {
				next = max(next, turnOf(b.sets[n].Key)+1)
				b.unitHeard(b.sets[n], own)
			}
		}
		if q := b.l.tokens[i].q; q == nil || b.used[i] || b.dropped[i] || b.inAnswer(i) || !b.byItself(i) {
			continue
		}
		for ; next < len(turns); next++ {
			if b.usualFor(turns[next], i) {
				break
			}
			if k := turns[next]; k != engine.KeyRib {
				return // what stands here is not what comes next, and the rest may be anything
			}
		}
		if next == len(turns) || !b.add(turns[next], i, 0) {
			return
		}
		b.unitHeard(b.sets[len(b.sets)-1], own)
		b.inList = true
		next++
	}
}

func turnOf(k engine.Key) int {
	switch k {
	case engine.RowGauge:
		k = engine.StitchGauge
	case engine.DepthRows:
		k = engine.Depth
	}
	for n, t := range turns {
		if t == k {
			return n
		}
	}
	return -1
}

// listed: at least two things are told that cannot be mistaken, a garment, a
// gauge or a rib, and nothing but a list of answers is.
func (b *binder) listed() bool {
	told := 0
	for _, k := range []engine.Key{engine.KeyGarment, engine.StitchGauge, engine.KeyRib} {
		if b.has(k) {
			told++
		}
	}
	return told > 1 || told == 1 && b.ctx.Open != "garment"
}

// unitHeard: who told the gauge by the inch goes on in inches.
func (b *binder) unitHeard(s Set, own quantity.Unit) {
	if own == "" && (s.Unit == "cm" || s.Unit == "in") {
		b.ctx.Unit = s.Unit
	}
}

// byItself: between the number at i and its neighbours stands a stop, or they
// are answers as well.
func (b *binder) byItself(i int) bool {
	t := b.l.tokens
	before := i == b.l.begin || t[i].stop || t[i-1].q != nil || oneOf(t[i-1].text, joinWords) || b.inAnswer(i-1)
	after := i+1 >= b.l.end || t[i+1].stop || t[i+1].q != nil || oneOf(t[i+1].text, joinWords) || b.inAnswer(i+1)
	return before && after
}

// inAnswer: the word at i names a garment or a rib.
func (b *binder) inAnswer(i int) bool {
	for _, m := range b.l.mentions {
		if i >= m.from && i < m.to && (m.garment != "" || m.rib.IsSet()) {
			return true
		}
	}
	return false
}

// usualFor: the number at i, bare or a length, is usual for k.
func (b *binder) usualFor(k engine.Key, i int) bool {
	q := b.l.tokens[i].q
	if q.Ordinal || q.After || q.Words || q.Range || q.Problem != "" || q.Pair || q.Over.Sign() > 0 || b.has(k) {
		return false
	}
	if k != engine.Neck && k != engine.Depth && k != engine.YokeStitches || k == engine.YokeStitches && q.Unit != "" && q.Unit != quantity.Stitch || !accepts(b.x.spans[k].Dimension, q) {
		return false
	}
	s, p := b.x.value(k, q, b.ctx)
	return p.Code == "" && within(s.Value, b.x.spans[k].Usual)
}
