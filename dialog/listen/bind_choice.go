package listen

import (
	"slices"

	"foldrow/engine"
)

// choices binds ribs and garments, which are words rather than numbers.
func (b *binder) choices() {
	gaugeLine := false
	for _, t := range b.l.tokens {
		gaugeLine = gaugeLine || t.q != nil && (t.q.Unit == "st" || t.q.Over.Sign() > 0)
	}
	if t := b.l.tokens; b.ctx.Open == "garment" && t[b.l.begin].text == "pull" && b.l.begin+1 < len(t) && t[b.l.begin+1].stop {
		b.put(Set{Key: engine.KeyGarment, Garment: engine.Pullover, Near: 1}, b.l.begin)
	}
	b.smooth()
	for _, m := range b.l.mentions {
		switch {
		case m.rib.IsSet():
			b.ribWord(m, gaugeLine)
		case m.garment != "":
			b.garmentWord(m)
		}
	}
}

// ribWord sets a rib that is named, unless the words tell of the fabric.
func (b *binder) ribWord(m mention, gaugeLine bool) {
	spelt := b.l.tokens[m.from].q == nil
	if spelt && m.rib.IsPlain() && b.ctx.Open != "rib" && b.l.has("which", "strand", "fairisl", "fair") {
		return // "the band is plain, which one do I measure" tells of the fabric
	}
	if b.dropped[m.from] || spelt && b.ribInFigures() || spelt && m.rib.IsPlain() && (gaugeLine || b.ctx.Making) && b.ctx.Open != "rib" {
		return
	}
	if spelt && m.rib.IsPlain() && b.plainGarment(m) {
		return
	}
	if m.from > 0 && spelt && m.rib.IsPlain() && (b.l.tokens[m.from-1].text == "my" || b.l.tokens[m.from-1].text == "of" || b.l.tokens[m.from-1].text == "the") {
		return // "my stockinette is curling" tells of the fabric
	}
	if m.from > 0 && b.l.tokens[m.from-1].text == "not" && !b.l.has("why") {
		return
	}
	b.used[m.from] = true
	b.put(Set{Key: engine.KeyRib, Rib: m.rib, Near: 1}, m.from)
}

// garmentWord sets a garment that is named for this band, or the other where it
// is refused.
func (b *binder) garmentWord(m mention) {
	if b.has(engine.KeyGarment) && b.butSince(engine.KeyGarment, m.from) {
		b.dropGarment() // "I was going to do a cardigan but let's say pullover"
	}
	if m.from > 0 && (b.l.tokens[m.from-1].text == "no" || b.l.tokens[m.from-1].text == "sorry") {
		b.dropGarment()
	}
	if m.from > 0 && b.l.tokens[m.from-1].text == "not" || m.from > 1 && b.l.tokens[m.from-2].text == "not" {
		if other, ok := b.theOther(m.garment); ok {
			b.put(Set{Key: engine.KeyGarment, Garment: other, Near: 1}, b.l.end-1)
		}
		return
	}
	if b.otherGarment(m) {
		return // "a pullover, he hates buttons"
	}
	if b.ctx.Open == "garment" || b.meansGarment(m) {
		b.put(Set{Key: engine.KeyGarment, Garment: m.garment, Near: 1}, m.from)
	}
}

// butSince: between the value of k and token at the line changes its mind.
func (b *binder) butSince(k engine.Key, at int) bool {
	for n, s := range b.sets {
		if s.Key != k {
			continue
		}
		for j := b.at[n] + 1; j < at; j++ {
			if oneOf(b.l.tokens[j].text, []string{"but", "actually", "instead", "wait", "rather"}) {
				return true
			}
		}
	}
	return false
}

// smooth: where the rib is asked for, "just smooth all over" is plain.
func (b *binder) smooth() {
	if b.ctx.Open != "rib" || b.l.question {
		return
	}
	for _, m := range b.l.mentions {
		if m.rib.IsSet() {
			return
		}
	}
	for i, t := range b.l.tokens {
		if t.text == "smooth" || t.text == "flat" || t.text == "stockinette" {
			b.put(Set{Key: engine.KeyRib, Rib: engine.Rib{Knit: 1}, Near: 1}, i)
			return
		}
	}
}

// plainGarment: "just a plain old pullover" is plain in every way.
func (b *binder) plainGarment(m mention) bool {
	for _, g := range b.l.mentions {
		if g.garment != "" && b.ctx.Open == "garment" && g.from >= m.to && g.from <= m.to+2 {
			return true
		}
	}
	return false
}

// otherGarment: m tells a garment by one of its parts, and the line names the
// other one outright.
func (b *binder) otherGarment(m mention) bool {
	noun := func(m mention) bool {
		for _, t := range b.l.tokens[m.from:m.to] {
			switch t.stem {
			case "cardigan", "pullover", "jumper", "sweat", "sweater", "jersey", "jacket":
				return true
			}
		}
		return false
	}
	for _, o := range b.l.mentions {
		if o.garment != "" && o.garment != m.garment && noun(o) && !noun(m) {
			return true
		}
	}
	return false
}

// ribInFigures: a rib is written out, so that "a wide rib" only describes it.
func (b *binder) ribInFigures() bool {
	for i, t := range b.l.tokens {
		if t.q != nil && t.q.Rib && !b.dropped[i] {
			return !b.choosing()
		}
	}
	return false
}

// theOther: "not a pullover, the other one".
func (b *binder) theOther(not engine.Garment) (engine.Garment, bool) {
	if !b.l.has("other") || b.ctx.Open != "garment" {
		return "", false
	}
	if not == engine.Pullover {
		return engine.Cardigan, true
	}
	return engine.Pullover, true
}

// ribWords reads "two knit, one purl".
func (b *binder) ribWords() {
	var knit, purl int
	var at []int
	for i, t := range b.l.tokens {
		if t.q == nil || t.q.Unit != "" && t.q.Unit != "st" || !t.q.Value.IsInt() {
			continue
		}
		switch b.columnKind(i) {
		case "knit":
			knit, at = t.q.Value.Floor(), append(at, i)
		case "purl":
			purl, at = t.q.Value.Floor(), append(at, i)
		}
	}
	if knit < 1 && purl < 1 {
		knit, purl, at = b.twoAndTwo()
	}
	if knit < 1 || purl < 1 || b.has(engine.KeyRib) && !b.plainCounted(at) {
		return
	}
	b.forget(at) // "two right, two left" leaves no yarn
	for _, i := range at {
		b.used[i] = true
	}
	b.put(Set{Key: engine.KeyRib, Rib: engine.Rib{Knit: knit, Purl: purl}, Near: 1}, at[0])
}

// plainCounted: the plain fabric that the line was heard to name is a column of
// knit stitches ("one plain stitch and one purl").
func (b *binder) plainCounted(at []int) bool {
	for n, s := range b.sets {
		if s.Key == engine.KeyRib && s.Rib.IsPlain() && len(at) > 0 && b.at[n] == at[0]+1 {
			b.at[n] = at[0]
			return true
		}
	}
	return false
}

// forget drops what was heard in the tokens at.
func (b *binder) forget(at []int) {
	for n := 0; n < len(b.sets); n++ {
		if slices.Contains(at, b.at[n]) {
			b.cut(n)
			n--
		}
	}
}

// twoAndTwo reads "2 and 2" where the rib is asked for or named: two small
// whole numbers side by side and no other.
func (b *binder) twoAndTwo() (knit, purl int, at []int) {
	free := b.free()
	if len(free) != 2 || b.ctx.Open != "rib" && !b.names(engine.KeyRib) || free[1]-free[0] > 2 {
		return 0, 0, nil
	}
	var n [2]int
	for j, i := range free {
		q := b.l.tokens[i].q
		if q.Unit != "" || !q.Value.IsInt() || q.Value.Sign() < 1 || engine.Int(6).Less(q.Value) || q.Ordinal || q.Range {
			return 0, 0, nil
		}
		n[j] = q.Value.Floor()
	}
	if between := b.l.tokens[free[1]-1]; free[1]-free[0] == 2 && between.text != "and" && between.text != "by" {
		return 0, 0, nil
	}
	return n[0], n[1], free
}

// columnKind tells whether the number at token i counts knit or purl columns:
// "two knit, one purl" as well as "knit 2 purl 2", with words such as
// "columns", "are" and "wide" between.
func (b *binder) columnKind(i int) string {
	step := 1
	for _, t := range b.l.tokens { // whichever comes first in the line leads the pairs
		if t.q != nil {
			break
		}
		if t.stem == "knit" || t.stem == "purl" {
			step = -1
			break
		}
	}
	for j, n := i+step, 0; j >= 0 && j < len(b.l.tokens) && n < 4 && b.l.tokens[j].q == nil; j, n = j+step, n+1 {
		switch t := b.l.tokens[j]; {
		case t.stem == "knit" || t.stem == "purl":
			return t.stem
		case t.text == "right" || t.text == "plain":
			return "knit"
		case b.ctx.Open == "rib" && (t.text == "out" || t.text == "up" || t.text == "raised"):
			return "knit" // "two that stick out and two that go in"
		case b.ctx.Open == "rib" && (t.text == "in" || t.text == "down" || t.text == "sunk"):
			return "purl"
		case b.ctx.Open == "rib" && oneOf(t.text, []string{"that", "which", "stick", "sticks", "go", "goes", "come", "comes", "stand", "stands", "lie", "lies"}):
		case t.text == "left" || t.text == "reverse":
			return "purl"
		case !oneOf(t.text, []string{"column", "columns", "stitch", "stitches", "rib", "are", "is", "of", "wide", "the", "be", "to"}):
			return ""
		}
	}
	return ""
}

// meansGarment tells "it is a pullover" from "the neck of my cardigan".
func (b *binder) meansGarment(m mention) bool {
	for i := m.from - 1; i >= 0 && i >= m.from-3; i-- {
		switch b.l.tokens[i].stem {
		case "it", "a", "an", "normal", "plain", "simple", "just", "actually", "really":
			continue
		case "garment":
			return true
		case "be", "make", "for", "if", "about", "as", "into", "to", "on", "in", "suppose", "want", "do", "knit", "with", "and", "have", "try", "or", "but":
			return b.l.tokens[i].text != "to" || b.l.has("change", "switch", "turn")
		}
		return false
	}
	return m.from <= b.l.begin+1
}
