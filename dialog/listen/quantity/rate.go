package quantity

import "foldrow/engine"

// rates makes rates of the items, then shares one length between two counts.
func (s *scanner) rates() {
	out := make([]item, 0, len(s.items))
	for i := 0; i < len(s.items); {
		if s.swatch(i) {
			out = append(out, s.items[i], s.items[i+1])
			i += 4
			continue
		}
		n := s.rate(i, out)
		out = append(out, s.items[i])
		i += n
	}
	s.items = out
	s.share()
}

// over lets it be counted over v u. Over nothing it cannot be counted.
func (it *item) over(v engine.Num, u Unit) {
	if v.Sign() == 0 {
		it.Problem = DivisionByZero
		return
	}
	it.Over, it.OverUnit = v, u
}

// swatch reads "40 sts by 60 rows measure 14.2 cm by 15 cm" from item i: each
// count has the length that stands in its place.
func (s *scanner) swatch(i int) bool {
	if i+3 >= len(s.items) {
		return false
	}
	a, b, c, d := &s.items[i], &s.items[i+1], s.items[i+2], s.items[i+3]
	if !a.Pair || !b.Pair || !c.Pair || !d.Pair || !isLength(c.Unit) || !isLength(d.Unit) ||
		isLength(a.Unit) || isLength(b.Unit) {
		return false
	}
	if l := s.linkOf(b.to, c.from); l < per || l == colon {
		return false
	}
	a.over(c.Value, c.Unit)
	b.over(d.Value, d.Unit)
	b.to = d.to
	return true
}

// rate lets item i have what it is counted over, and returns how many items
// that used; before are the items already done.
func (s *scanner) rate(i int, before []item) int {
	a := &s.items[i]
	if !a.sound() || s.unitRate(a) || i+1 >= len(s.items) || a.Sign != 0 {
		return 1
	}
	b := s.items[i+1]
	if !b.sound() || b.Range || b.Sign != 0 || b.After {
		return 1
	}
	l, hedged := s.linkOf(a.to, b.from), a.Hedged || b.Hedged
	switch {
	case isLength(b.Unit) && s.countOver(*a, b, l, before), s.yarnOver(*a, b):
		a.over(b.Value, b.Unit)
		a.to, a.Hedged = s.bracket(a.to, b.to), hedged
		if i+2 < len(s.items) && s.sameAgain(b, s.items[i+2]) {
			a.to = s.bracket(b.to, s.items[i+2].to)
			return 3
		}
	case l == per && b.bare() && !b.Pair && (isCount(a.Unit) || a.bare()) && perBare(b.Value) != None:
		a.over(b.Value, perBare(b.Value))
		a.to, a.Hedged = b.to, hedged
	case !s.ownRate(i+1) && !a.Range && (isLength(a.Unit) && s.turned(*a, b, l) || s.yarnOver(b, *a)):
		b.over(a.Value, a.Unit)
		b.from, b.lead, b.to, b.Hedged = a.from, a.from, s.bracket(a.to, b.to), hedged
		*a = b
	default:
		return 1
	}
	return 2
}

// unitRate lets a be counted over a unit without a number, which follows it:
// "7 to the inch", "7 spi", "4 m/g", "1.6 cm a stitch". The last is turned, since a
// count always stands over its length.
func (s *scanner) unitRate(a *item) bool {
	if u, factor, end, ok := s.denominator(a.to); ok && fits(*a, u) {
		a.over(engine.Int(factor), u)
		a.to = end
		return true
	}
	if t := s.at(a.to); a.bare() && t.isWord("spi", "rpi") {
		a.Unit = Stitch
		if t.text == "rpi" {
			a.Unit = Row
		}
		a.over(engine.Int(1), Inch)
		a.to++
		return true
	}
	u, end, ok := s.eachStitch(a.to)
	if !ok || !isLength(a.Unit) || a.Sign != 0 || a.Range {
		return false
	}
	a.over(a.Value, a.Unit)
	a.Value, a.High, a.Unit, a.to = engine.Int(1), engine.Int(1), u, end
	return true
}

// denominator reads a unit without a number at i: "per inch", "/cm", "to the
// inch".
func (s *scanner) denominator(i int) (Unit, int64, int, bool) {
	switch t := s.at(i); {
	case t.isWord("per", "each", "every"), t.is("/"):
		i++
	case t.isWord("to", "in") && s.at(i+1).isWord("the", "each", "every"):
		i++
	default:
		return None, 0, i, false
	}
	if s.at(i).isWord("the", "each", "every", "single") {
		i++
	}
	u, f, ok := s.unitWord(i)
	return u, f, s.abbreviation(i), ok && (isLength(u) || isWeight(u))
}

// eachStitch reads "per stitch", "a row", "/st" at i.
func (s *scanner) eachStitch(i int) (Unit, int, bool) {
	if !s.at(i).isWord("per", "a", "each", "every") && !s.at(i).is("/") {
		return None, i, false
	}
	u, _, ok := s.unitWord(i + 1)
	return u, i + 2, ok && (u == Stitch || u == Row || u == Needle)
}

// fits reports whether a can be counted over a u.
func fits(a item, u Unit) bool {
	if isWeight(u) {
		return isLength(a.Unit)
	}
	return isCount(a.Unit) || a.bare()
}

// perBare is the unit that the bare number of "per 10" and "per 4" has: the
// two lengths that gauges are given over.
func perBare(v engine.Num) Unit {
	switch {
	case v.Equal(engine.Int(10)):
		return Centimetre
	case v.Equal(engine.Int(4)):
		return Inch
	}
	return None
}

// yarnOver reports whether the length a is that of the weight b, which may
// stand before or behind it: "400 m per 100 g", "210 m a ball of 50 g", "125
// m (50 g)", "100 g = 400 m".
func (s *scanner) yarnOver(a, b item) bool {
	i, j := a.to, b.from
	if b.to <= a.from {
		i, j = b.to, a.from
	}
	if !isLength(a.Unit) || !isWeight(b.Unit) || j == i || j-i > maxLink {
		return false
	}
	for ; i < j; i++ {
		t := s.at(i)
		if !t.isWord("per", "by", "to", "the", "a", "an", "in", "on", "for", "each", "every", "of", "ball", "balls", "skein",
			"skeins", "hank", "cone", "yarn", "is", "are", "has", "gives", "give", "makes", "holds", "runs") &&
			!t.is("/") && !t.is("=") && !t.is("(") && !t.is(":") {
			return false
		}
	}
	return true
}
