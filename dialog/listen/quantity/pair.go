package quantity

import "foldrow/engine"

// maxRib is the largest part of a rib: "2x2" is a rib, "28x40" a gauge.
const maxRib = 12

// gaugeLeast is the smallest half of a pair; no gauge is below it.
const gaugeLeast = 5

// pairs joins what "x", "by" and "/" put together: ribs, pairs, the two
// sides of a swatch, and "2 x 50 g". A chain of three is none of these.
func (s *scanner) pairs() {
	out := make([]item, 0, len(s.items))
	for i := 0; i < len(s.items); i++ {
		a := s.items[i]
		if i+1 >= len(s.items) || !s.crossed(a, s.items[i+1]) {
			out = append(out, a)
			continue
		}
		n := i + 1
		for n+1 < len(s.items) && s.crossed(s.items[n], s.items[n+1]) {
			n++
		}
		if n > i+1 {
			out = append(out, s.chain(s.items[i:n+1])...)
			i = n
			continue
		}
		if ab, ok := s.joined(a, s.items[n]); ok {
			out = append(out, ab)
		} else {
			out = append(out, s.paired(a, s.items[n])...)
		}
		i = n
	}
	s.items = out
}

// crossed reports that nothing but "x", "by" or "/" is between a and b.
func (s *scanner) crossed(a, b item) bool {
	if b.from != a.to+1 || !a.sound() || !b.sound() || b.Sign != 0 {
		return false
	}
	if s.at(a.to).is("/") { // "1x1 / 2x2": the x binds tighter
		return !s.at(a.from-1).is("x") && !s.at(b.to).is("x")
	}
	return s.at(a.to).is("x") || s.at(a.to).is("by")
}

// chain is three or more that "x", "by" or "/" put together. Of bare numbers,
// "2x2x2", nobody can say which two are meant; with units they stay as they
// are.
func (s *scanner) chain(items []item) []item {
	for _, it := range items {
		if !it.bare() || s.at(it.to).is("/") {
			return items
		}
	}
	all := items[0]
	all.to, all.Problem = items[len(items)-1].to, TwoNumbers
	return []item{all}
}

// joined makes one item of a and b, where they are one.
func (s *scanner) joined(a, b item) (item, bool) {
	ab := b
	ab.from, ab.After, ab.Hedged = a.from, false, a.Hedged || b.Hedged
	slash := s.at(a.to).is("/")
	switch {
	case a.bare() && b.bare() && s.rib(a, b, slash):
		ab.Value, ab.High, ab.Rib, ab.Words = a.Value, b.Value, true, a.Words || b.Words
		return ab, true
	case !slash && isLength(b.Unit) && (a.bare() || a.Unit == b.Unit) && a.Value.Equal(b.Value):
		ab.square = true
		return ab, true
	case s.at(a.to).is("x") && a.bare() && isWeight(b.Unit) && a.Value.IsInt():
		ab.Value = a.Value.Mul(b.Value)
		ab.High = ab.Value
		return ab, true
	}
	return a, false
}

// rib reports whether a and b are knit and purl.
func (s *scanner) rib(a, b item, slash bool) bool {
	for _, v := range []engine.Num{a.Value, b.Value} {
		if !v.IsInt() || v.Sign() <= 0 || engine.Int(maxRib).Less(v) {
			return false
		}
	}
	if slash {
		sl, _, _ := s.slashAt(a.to-1, false)
		return sl == ribOf
	}
	if s.overFollows(b.to) {
		return false // 7 x 10 per inch
	}
	return !a.Words || !b.Words || s.ribWords(a, b)
}

// ribWords tells "one by one rib" from "latch them one by one".
func (s *scanner) ribWords(a, b item) bool {
	one := engine.Int(1)
	if !s.at(a.to).is("by") || !a.Value.Equal(one) || !b.Value.Equal(one) {
		return true
	}
	before, after := s.at(a.from-1), s.at(b.to)
	if a.from == 0 && (b.to == len(s.toks) || after.kind == mark || s.amountAt(b.to)) {
		return true
	}
	u, _, _ := s.unitWord(a.from - 1)
	return after.isWord("rib", "ribs", "ribbing") || isLength(u) || before.is(",") || before.isWord("rib", "ribbing", "a", "in", "with", "use", "want", "like", "is", "be", "if", "for", "the", "or", "about")
}

// paired marks a and b as the halves of a pair where they can be, and gives
// the sides of a swatch ("15 x 20 cm") their unit.
func (s *scanner) paired(a, b item) []item {
	slash := s.at(a.to).is("/")
	both := !a.Value.Less(engine.Int(gaugeLeast)) && !b.Value.Less(engine.Int(gaugeLeast))
	switch {
	case !slash && isLength(b.Unit) && (a.bare() || a.Unit == b.Unit):
		a.Unit, a.Pair, b.Pair = b.Unit, true, true
	case isCount(a.Unit) && isCount(b.Unit) && a.Unit != b.Unit:
		a.Pair, b.Pair = true, true
	case both && (a.bare() || a.Unit == Stitch) && (b.bare() || b.Unit == Row) && (a.plain || a.Unit == Stitch || a.Words):
		a.Pair, b.Pair = true, true
	}
	return []item{a, b}
}

// overFollows reports whether a length stands at i that what is before it is
// counted over: "per inch", "to 10 cm", "= 4 in".
func (s *scanner) overFollows(i int) bool {
	t := s.at(i)
	if !t.isWord("per", "to", "over", "in", "across", "on") && !t.is("=") && !t.is("/") {
		return false
	}
	i++
	if s.at(i).isWord("the", "an", "a", "one", "each", "every") {
		i++
	}
	if u, _, ok := s.unitWord(i); ok && isLength(u) {
		return true
	}
	_, k, ok := s.number(i)
	return ok && s.lengthFollows(k)
}

// perFollows reports "per" or "to the" at i.
func (s *scanner) perFollows(i int) bool {
	return s.at(i).isWord("per") && !s.at(i+1).isWord("cent") ||
		s.at(i).isWord("to") && s.at(i+1).isWord("the", "an", "each", "every")
}

// overLength reports whether the number at i and its unit are a length that
// a gauge is counted over: 10 cm, 4 in, 1 in. It tells 28/10 cm, which is a
// rate, from 5/4 in.
func (s *scanner) overLength(i int) bool {
	n, k, ok := s.number(i)
	if !ok {
		return false
	}
	u, _, _ := s.unitAt(k, n)
	return gaugeLength(n.val, u) && (!n.val.Equal(engine.Int(4)) || !s.at(i-2).val.Less(engine.Int(maxRib)))
}

// gaugeLength reports whether v u is a length that gauges are given over.
func gaugeLength(v engine.Num, u Unit) bool {
	f, ok := cmPer(u)
	if !ok {
		return false
	}
	cm := v.Mul(f)
	for _, g := range []engine.Num{engine.Int(10), engine.Frac(1016, 100), engine.Frac(254, 100), engine.Int(5), engine.Int(1)} {
		if cm.Equal(g) {
			return true
		}
	}
	return false
}
