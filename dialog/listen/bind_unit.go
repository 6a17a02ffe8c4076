package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// byUnit binds what no name has taken: to the open question where that can
// take it, else to the one thing that the unit or the size allows.
func (b *binder) byUnit() {
	for _, i := range b.free() {
		if b.corrects(i) {
			continue
		}
		q := b.l.tokens[i].q
		if b.ctx.Open == "gauge" && b.has(engine.StitchGauge) && q.Over.Sign() == 0 && (q.Unit == "cm" && q.Value.Equal(engine.Int(10)) || q.Unit == "in" && q.Value.Equal(engine.Int(4))) {
			b.used[i] = true // the length that the gauge is counted over, said once more
			continue
		}
		if b.ofThings(i) || b.openTakes(i) || b.doubtful(i) {
			continue
		}
		switch {
		case (q.Unit == "row" || q.Unit == "st") && (b.mendsGauge(q) || b.correctsGauge(i)):
			k := engine.StitchGauge
			if q.Unit == "row" {
				k = engine.RowGauge
			}
			b.add(k, i, 1)
		case q.Unit == "row" && !q.After && !q.Ordinal:
			if b.ctx.Making && b.ctx.Open == "" && q.Sign >= 0 && !b.asked && !b.l.has("make", "mak", "change", "chang", "instead", "layer", "deep", "depth", "band", "each", "per", "want", "should", "switch", "set") {
				continue // "I'm three rows in" tells where she is
			}
			if !b.l.has("remov", "unravel", "unravell", "rip", "frog", "last") && !(b.l.has("take", "pull") && b.l.has("out", "back")) {
				b.add(engine.DepthRows, i, 0)
			}
		case q.Unit == "row" && q.After && !b.ctx.Making && i > 0 && b.l.tokens[i-1].text == "rows":
			b.add(engine.DepthRows, i, 1) // "rows 15" is a count, "row 15" a place
		case q.Unit == "needle" && !q.Ordinal && !q.After:
			if b.countsWork() {
				continue
			}
			b.add(engine.BedNeedles, i, 0)
		case q.Unit == "g" || q.Unit == "oz":
			b.add(engine.YarnLeft, i, 0)
		case q.Unit == "mm":
			if sign, _ := b.comparative(i, ""); sign != 0 {
				b.byTopic(i) // "5 mm deeper"
			} else if b.has(engine.BedNeedles) || b.l.has("pitch", "apart", "bed", "machin", "spac", "between", "distanc") {
				b.add(engine.NeedlePitch, i, 0)
			}
		case isLength(q.Unit):
			b.byTopic(i)
		case q.Ordinal && b.asked && q.Value.Cmp(engine.Int(6)) <= 0 && b.l.has("every", "each", "hang"):
			b.add(engine.HemEvery, i, 0)
		case q.Unit == "" && !q.Ordinal && b.roundAt(i) && accepts(b.x.spans[engine.Neck].Dimension, q):
			if s, p := b.x.value(engine.Neck, q, b.ctx); p.Code == "" && within(s.Value, b.x.spans[engine.Neck].Usual) {
				b.add(engine.Neck, i, 1)
			}
		case q.Unit == "" && !q.Ordinal && b.asked && !q.Words:
			b.byTopic(i)
		}
	}
}

// roundAt: "make it 42 around" is of the neck.
func (b *binder) roundAt(i int) bool {
	return i+1 < len(b.l.tokens) && !b.l.tokens[i+1].stop && oneOf(b.l.tokens[i+1].text, []string{"round", "around", "circumference"}) && (b.ctx.Open == "" || b.ctx.Open == "keep") && !b.ctx.Making
}

// topicInput is the input that a topic is about: "the rows" for the rows that
// came out.
func topicInput(k engine.Key) engine.Key {
	switch k {
	case engine.LayerRows, engine.TotalRows:
		return engine.DepthRows
	case engine.DepthResult:
		return engine.Depth
	case engine.NeckResult:
		return engine.Neck
	}
	if engine.IsNumber(k) {
		return k
	}
	return ""
}

// doubtful notes a second lone number beside one that the open question has
// taken: "3 or maybe 4".
func (b *binder) doubtful(i int) bool {
	q := b.l.tokens[i].q
	if b.ctx.Open != "gauge" && b.ctx.Open != "neck" && b.ctx.Open != "depth" || q.Unit != "" && !isLength(q.Unit) || q.After || q.Ordinal || q.Words && q.Value.Equal(engine.Int(1)) || b.asked {
		return false
	}
	k := engine.Key(b.ctx.Open)
	if !b.has(k) && !(b.ctx.Open == "gauge" && b.has(engine.StitchGauge)) {
		return false
	}
	if b.inList {
		return false // named as not taken
	}
	if b.depthBeside(k, i) || b.yokeBeside(k, i) {
		return true
	}
	if s, p := b.x.value(k, q, b.ctx); q.Unit != "" && p.Code == "" && b.ctx.Open != "gauge" && !within(s.Value, b.x.spans[k].Possible) || b.gaugeTold() && isLength(q.Unit) {
		b.asked = true // it cannot be that; it may be the depth beside a neck
		b.byTopic(i)
		b.asked = false
		return b.used[i]
	}
	if b.problem.Code == "" {
		b.problem = Problem{Code: "two-values", Key: k, Low: q.Value, High: q.High}
	}
	return true
}

// gaugeTold: the gauge is asked for and both its numbers stand in the line, so
// that a length beside them answers the next question.
func (b *binder) gaugeTold() bool {
	return b.ctx.Open == "gauge" && b.has(engine.StitchGauge) && b.has(engine.RowGauge)
}

// depthBeside: in "40, 2x2, 3" the last number is no neck and a usual depth.
func (b *binder) depthBeside(open engine.Key, i int) bool {
	q := b.l.tokens[i].q
	if open != engine.Neck || q.Unit != "" || q.Words || !b.has(engine.KeyRib) || b.has(engine.Depth) {
		return false
	}
	s, p := b.x.value(engine.Depth, q, b.ctx)
	return p.Code == "" && within(s.Value, b.x.spans[engine.Depth].Usual) && b.add(engine.Depth, i, 0)
}

// yokeBeside: in "3, 144" the second number is no depth and is usual for what
// is told next, the stitches that wait.
func (b *binder) yokeBeside(open engine.Key, i int) bool {
	q := b.l.tokens[i].q
	if open != engine.Depth || q.Unit != "" || q.Words || b.has(engine.YokeStitches) || !q.Value.IsInt() || !b.byItself(i) {
		return false
	}
	s, p := b.x.value(engine.Depth, q, b.ctx)
	return p.Code == "" && !within(s.Value, b.x.spans[engine.Depth].Possible) && within(q.Value, b.x.spans[engine.YokeStitches].Usual) && b.add(engine.YokeStitches, i, 0)
}

// strangeAfter: a word that rules/ does not know stands where the unit would,
// as in "14 riws": the number may be of anything.
func (b *binder) strangeAfter(i int) bool {
	if i+1 >= len(b.l.tokens) {
		return false
	}
	t := b.l.tokens[i+1]
	return t.q == nil && !t.stop && t.needle == "" && !b.x.knows(t)
}

// openTakes gives the quantity to the open question.
func (b *binder) openTakes(i int) bool {
	q := b.l.tokens[i].q
	if q.Words && q.Unit == "" && q.Value.Equal(engine.Int(1)) && b.asked && b.l.words() > 2 {
		return false // "do I need one?"
	}
	if i > 0 && q.Unit == "" && oneOf(b.l.tokens[i-1].text, []string{"step", "page", "stage", "task", "question", "version"}) {
		return false // "done to step 5"
	}
	switch b.ctx.Open {
	case "gauge":
		switch {
		case q.Unit == "st" && !b.has(engine.StitchGauge):
			return b.add(engine.StitchGauge, i, 0)
		case q.Unit == "row" && !b.has(engine.RowGauge):
			return b.add(engine.RowGauge, i, 0)
		case q.Unit == "" && !b.has(engine.StitchGauge) && !q.Ordinal:
			return b.add(engine.StitchGauge, i, 0)
		case q.Unit == "" && !b.has(engine.RowGauge) && !q.Ordinal:
			return b.add(engine.RowGauge, i, 0)
		}
	case "neck", "depth":
		k := engine.Key(b.ctx.Open)
		if i+2 == len(b.l.tokens) && b.l.tokens[i+1].text == "to" && b.problem.Code == "" {
			b.problem = Problem{Code: "half", Key: k, Low: q.Value} // "forty to": two, or a range broken off
			b.used[i] = true
			return true
		}
		if k == engine.Depth && q.Unit == "" && i+1 < len(b.l.tokens) && oneOf(b.l.tokens[i+1].text, []string{"r", "rs", "rws"}) {
			rows := *q // "12 r"
			rows.Unit = quantity.Row
			b.l.tokens[i].q, q = &rows, &rows
		}
		if q.Unit == "" && b.strangeAfter(i) && b.problem.Code == "" {
			b.problem = Problem{Code: "word", Key: k, Low: q.Value, Read: b.l.tokens[i+1].text}
			b.used[i] = true
			return true
		}
		if k == engine.Depth && q.Unit == "row" && !q.After {
			return b.add(engine.DepthRows, i, 0)
		}
		if b.has(k) || !accepts(b.x.spans[k].Dimension, q) {
			return false
		}
		return b.add(k, i, 0)
	}
	return false
}

// byTopic gives a length to the one of neck and depth for which it is
// plausible; where that is neither or both it stays unbound.
func (b *binder) byTopic(i int) {
	q := b.l.tokens[i].q
	if sign, _ := b.comparative(i, ""); sign != 0 {
		b.relativeTopic(i)
		return
	}
	if !b.inTurn(i) && b.l.has("front", "button", "buttonhol", "sleev", "yoke", "bust", "chest", "body") || b.ofUnknown(i) {
		return // a length of another part of the garment, or of who knows what
	}
	if !b.asked && b.l.words() <= 1 {
		return // a lone length in a standing plan may be anything
	}
	var fits []engine.Key
	for _, k := range []engine.Key{engine.Neck, engine.Depth} {
		card := b.x.spans[k]
		if b.has(k) && !b.choosing() || !accepts(card.Dimension, q) {
			continue
		}
		s, p := b.x.value(k, q, b.ctx)
		if s.Bare && s.Unit != "" && b.ctx.Unit != "" && s.Unit != b.ctx.Unit {
			continue // a lone number in another unit than hers is a guess too far
		}
		if p.Code == "" && within(s.Value, card.Usual) {
			fits = append(fits, k)
		}
		if p.Code == "range" {
			b.problem = p
		}
	}
	if len(fits) == 1 {
		b.add(fits[0], i, 0)
	}
}
