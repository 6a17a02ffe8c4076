package listen

import (
	"slices"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// balls: "2 balls of 50 g", "two 50 g skeins" are so many times the weight of
// one, and "2 balls of 50 g, 125 m" tells of one as well.
func (b *binder) balls() {
	t := b.l.tokens
	for i := range t {
		many, counted := ballsAt(t[i])
		of := -1
		if counted {
			of = b.weightOf(i)
		}
		if of < 0 {
			continue
		}
		q, put := t[of].q, Set{Key: engine.YarnLeft, Unit: "g", Near: 1}
		switch one, ok := q.Grams(); {
		case ok && q.Over.Sign() == 0 && q.Problem == "" && !q.Range:
			b.oneBall(of)
			put.Value, put.Unit = one.Mul(many), q.Unit
			b.used[of] = true
		case q.OverUnit == "g" && b.add(engine.YarnLength, of, 1): // "2 balls of 125 m per 50 g"
			put.Value = q.Over.Mul(many)
		default:
			continue
		}
		for j := i + 1; j < of; j++ {
			put.Relative = put.Relative || oneOf(t[j].text, []string{"more", "extra", "another"})
		}
		b.used[i] = true
		b.put(put, i)
	}
}

// ballsAt is how many balls the token may count; one alone is told by its weight.
func ballsAt(t token) (engine.Num, bool) {
	if t.q == nil {
		return engine.Frac(1, 2), t.text == "half"
	}
	n := t.q
	return n.Value, n.Unit == "" && !n.Ordinal && !n.Range && !n.Rib && n.Problem == "" && n.Value.Sign() > 0 && n.Over.Sign() == 0 && !n.Value.Equal(engine.Int(1))
}

// weightOf is the token that tells the weight of one of the balls counted at
// i, -1 where none does.
func (b *binder) weightOf(i int) int {
	t := b.l.tokens
	j := i + 1
	for j < len(t) && t[j].q == nil && !t[j].stop && oneOf(t[j].text, []string{"a", "full", "whole", "new", "more", "extra", "unopened"}) {
		j++
	}
	if j+1 < len(t) && t[j].q != nil && !t[j].stop && t[j].q.Unit == "g" && ballWord(t[j+1]) {
		return j // "two 50 g balls"
	}
	if j >= len(t) || !ballWord(t[j]) {
		return -1
	}
	for j++; j < len(t) && t[j].q == nil && !t[j].stop && oneOf(t[j].text, []string{"of", "at", "with", "each", "yarn", "wool", "a", "are", "is", "weighing"}); j++ {
	}
	if j < len(t) && t[j].q != nil && (!t[j].stop || oneOf(t[min(j+1, len(t)-1)].text, []string{"each", "a"})) {
		return j
	}
	return -1
}

func ballWord(t token) bool {
	return t.q == nil && !t.stop && oneOf(t.stem, []string{"ball", "skein", "hank", "cone"})
}

// oneBall binds a length of yarn beside the weight of one ball: what 100 g hold
// follows from one, not from all.
func (b *binder) oneBall(weight int) {
	t := b.l.tokens
	for j := weight + 1; j < min(len(t), weight+4); j++ {
		q := t[j].q
		if q == nil {
			continue
		}
		if isYarnLength(q) && q.Over.Sign() == 0 && t[weight].q.Unit == "g" {
			joined := *q
			joined.Over, joined.OverUnit = t[weight].q.Value, quantity.Unit("g")
			t[j].q = &joined
		}
		return
	}
}

// ofThings: the number at i counts things that the plan knows nothing of, as in
// "100 g and 2 kids": a word follows it that is neither a unit nor a name.
func (b *binder) ofThings(i int) bool {
	t := b.l.tokens
	q := t[i].q
	if q.Unit != "" || q.Ordinal || q.After || q.Rib || q.Over.Sign() > 0 {
		return false
	}
	for j := i + 1; j < min(len(t), i+3); j++ {
		if t[j].q != nil || t[j].stop || t[j].needle != "" || b.namedAt(j) {
			return false
		}
		if b.x.senses["wearer"][t[j].stem] || t[j].text == "people" || plural(t[j].text) && (b.asked || b.x.knows(t[j])) {
			return true
		}
		if j == i+1 && !oneOf(t[j].text, []string{"little", "small", "big", "young", "old", "lovely", "naughty", "noisy", "hungry", "other", "more", "new", "black", "white"}) {
			return false
		}
	}
	return false
}

// namedAt: the word at j is part of the name of something.
func (b *binder) namedAt(j int) bool {
	for _, m := range b.l.mentions {
		if j >= m.from && j < m.to {
			return true
		}
	}
	return false
}

// plural: the word has the form of several things.
func plural(w string) bool {
	return len(w) > 3 && strings.HasSuffix(w, "s") && !strings.HasSuffix(w, "ss") && !strings.HasPrefix(w, "cent") && !oneOf(w, []string{
		"this", "does", "always", "perhaps", "was", "plus", "minus", "thus", "yes", "times", "sizes", "across", "seems", "looks", "gives", "makes", "means", "needs",
		"fits", "suits", "comes", "goes", "feels", "stays", "works", "sounds", "takes", "wants", "centimetres", "points", "halves", "hours", "days", "fingers", "columns", "clicks",
		"marks", "layers", "repeats", "stages", "numbers", "bumps", "needles", "stitches", "rows", "colours", "colors", "grams", "plains", "purls", "knits", "metres", "meters", "turns", "notches"})
}

// frontPair: "front bands 30/42" is the gauge of the front bands and no width.
func (b *binder) frontPair() {
	t := b.l.tokens
	for i := b.l.begin; i+1 < len(t); i++ {
		p, q := t[i].q, t[i+1].q
		if p == nil || q == nil || !p.Pair || !q.Pair || p.Unit != "" || q.Unit != "" || t[i+1].stop || b.used[i] {
			continue
		}
		for _, m := range b.l.mentions {
			before, after := m.to <= i && m.to >= i-2 && !hasQuantity(t[m.to:i]), m.from > i+1 && m.from <= i+4 && !hasStop(t[i+2:m.to])
			if m.key == engine.FrontBand && (before || after) {
				b.add(engine.FrontGauge, i, 1)
				b.add(engine.FrontRowGauge, i+1, 1)
				break
			}
		}
	}
}

func hasQuantity(ts []token) bool {
	return slices.ContainsFunc(ts, func(t token) bool { return t.q != nil })
}

func hasStop(ts []token) bool {
	return slices.ContainsFunc(ts, func(t token) bool { return t.stop || t.q != nil })
}

// oneByOne: "hang them back on one by one" tells how a thing is done, of no rib.
// The words are then mere words.
func (b *binder) oneByOne() {
	ribs, at := 0, -1
	t := b.l.tokens
	for n, m := range b.l.mentions {
		if !m.rib.IsSet() {
			continue
		}
		ribs++
		if q := t[m.from].q; q != nil && m.from > b.l.begin && (m.to-m.from == 3 && q.Words && t[m.from+1].text == "by" || q.Rib && strings.Contains(t[m.from].text, " by ")) {
			at = n
		}
	}
	if at < 0 || ribs > 1 || b.ctx.Open == "rib" || b.l.has("rib", "ribb", "ribbing", "if", "about", "instead", "change") ||
		!b.l.has("stitch", "loop", "needl", "needle", "bump", "column", "hook", "put", "hang", "take", "tak", "latch", "transfer", "them") && len(b.l.quantities()) < 3 {
		return
	}
	m := b.l.mentions[at]
	for i := m.from; i < m.to; i++ {
		t[i].q, t[i].stem = nil, stem(t[i].text)
	}
	b.l.mentions = slices.Delete(slices.Clone(b.l.mentions), at, at+1)
}
