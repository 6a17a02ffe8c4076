package quantity

import "foldrow/engine"

// countOver reports whether a, joined to the length b by l, is counted over
// it; before are the items before a.
func (s *scanner) countOver(a, b item, l link, before []item) bool {
	counts := isCount(a.Unit)
	if !counts && !a.bare() {
		return false
	}
	gauge := gaugeLength(b.Value, b.Unit) || b.square
	switch l {
	case per:
		return true
	case over, to:
		return likely(a, b)
	case within:
		return (counts || gauge) && likely(a, b)
	case forOf, colon:
		return counts && gauge
	case is:
		return (counts && !a.After || a.Pair) && likely(a, b)
	case beside:
		if s.at(b.from).isWord("a", "an") {
			return true // "7 stitches an inch"
		}
		return counts && !a.After && !s.shaped(b.to) && (s.goesOn(a, before) || tenth(b))
	case and:
		return counts && tenth(b) && !s.shaped(b.to) && len(before) > 0 && !before[len(before)-1].IsRate() &&
			s.oneGauge(before[len(before)-1], a)
	}
	return false
}

// likely keeps a count and a length apart that merely meet in a line: no
// fabric has fewer than 3 or more than 100 in 10 cm.
func likely(a, b item) bool {
	a.over(b.Value, b.Unit)
	per10, ok := a.Per10cm()
	return ok && !per10.Less(engine.Int(3)) && !engine.Int(100).Less(per10)
}

// tenth reports the one length that gauges are given over without a word
// between: "28 sts 40 rows 10 cm". "97 stitches 4 in" may be a band.
func tenth(b item) bool {
	cm, ok := b.Length()
	return ok && cm.Equal(engine.Int(10))
}

// goesOn reports that a continues a rate before it: "40 stitches measure
// 14.2 cm and 60 rows 15 cm".
func (s *scanner) goesOn(a item, before []item) bool {
	if len(before) == 0 {
		return false
	}
	p := before[len(before)-1]
	return p.IsRate() && isLength(p.OverUnit) && p.Unit != a.Unit && s.linkOf(p.to, a.lead) == and
}

// shaped reports a word at i that tells the length before it is a size of the
// band, not of a swatch.
func (s *scanner) shaped(i int) bool {
	return s.at(i).isWord("deep", "depth", "neck", "band", "neckline", "long", "head", "ease", "bigger", "smaller", "more")
}

// turned reports a rate said the other way round: "10 cm = 28 sts", "14.2 cm
// for 40 stitches", "over 10 cm I get 28 stitches".
func (s *scanner) turned(a, b item, l link) bool {
	counts := b.Unit == Stitch || b.Unit == Row
	if !counts && !(b.Pair && b.bare()) {
		return false
	}
	switch {
	case l == per && counts:
		return !s.at(a.to).is("/")
	case l == forOf && counts, l == is:
		return likely(b, a) || counts && s.at(a.to).is("for") && longYarn(b, a)
	case l == colon:
		return gaugeLength(a.Value, a.Unit) && likely(b, a)
	}
	before := s.at(a.from - 1)
	if before.isWord("the", "every", "each") {
		before = s.at(a.from - 2)
	}
	return before.isWord("over", "per", "in", "on", "across", "every") && likely(b, a) &&
		(l == beside || s.fillers(a.to, b.from))
}

// longYarn reports that a may be the yarn pulled out of a row of b stitches,
// which is longer than the row: 1 to 3 stitches in 10 cm.
func longYarn(b, a item) bool {
	b.over(a.Value, a.Unit)
	per10, ok := b.Per10cm()
	return ok && b.Unit == Stitch && !per10.Less(engine.Int(1)) && per10.Less(engine.Int(3))
}

// ownRate reports whether item i goes on to be counted over something itself,
// so that it does not belong to the length before it.
func (s *scanner) ownRate(i int) bool {
	a := s.items[i]
	if u, _, _, ok := s.denominator(a.to); ok && fits(a, u) {
		return true
	}
	if i+1 >= len(s.items) {
		return false
	}
	b := s.items[i+1]
	return s.yarnOver(a, b) || isLength(b.Unit) && s.countOver(a, b, s.linkOf(a.to, b.from), nil)
}

// sameAgain reports the gauge's length said a second time in the other
// measure: "10 cm (4 in)", "10cm/4in".
func (s *scanner) sameAgain(a, b item) bool {
	if b.from != a.to+1 || !(s.at(a.to).is("/") || s.at(a.to).is("(") || s.at(a.to).isWord("or")) {
		return false
	}
	x, ok1 := a.Length()
	y, ok2 := b.Length()
	ten, four := engine.Int(10), engine.Frac(1016, 100)
	return ok1 && ok2 && (x.Equal(ten) && y.Equal(four) || x.Equal(four) && y.Equal(ten))
}

// bracket takes the bracket that closes at to into what opened it at from.
func (s *scanner) bracket(from, to int) int {
	if s.at(from).is("(") && s.at(to).is(")") {
		return to + 1
	}
	return to
}
