package quantity

import "foldrow/engine"

// link is how two neighbouring items are joined.
type link uint8

const (
	apart  link = iota
	beside      // nothing between
	and         // "and", ",", "&"
	per         // "per", "/", "each"
	over        // "over", "across", "on"
	to          // "to", "to the"
	within      // "in"
	forOf       // "for"
	is          // "=", "is", "measure"
)

// linkOf reads the tokens from i to j between two items. The word that joins
// comes last, but for "the" and its like; what is before it must be words
// that say nothing more ("40 stitches of my swatch measure 14.2 cm").
func (s *scanner) linkOf(i, j int) link {
	if i == j {
		return beside
	}
	if j-i > 7 || j < i {
		return apart
	}
	for j-1 > i && s.at(j-1).isWord("the", "each", "every", "a", "an", "exactly", "my", "out", "at", "to") &&
		!s.at(j-1).isWord("to") {
		j--
	}
	if j-2 >= i && s.at(j-1).is("to") && s.at(j-2).isWord("come", "comes", "came") {
		j--
	}
	l := joint(s.at(j - 1))
	if l == and && j-i <= 2 && joint(s.at(i)) == and {
		return and
	}
	for k := i; k < j-1; k++ {
		if !filler(s.at(k)) {
			return apart
		}
	}
	return l
}

func joint(t token) link {
	switch t.text {
	case "and", ",", "&", ";", "+":
		return and
	case "per", "/", "each", "every", "@":
		return per
	case "over", "across", "on", "along":
		return over
	case "to":
		return to
	case "in":
		return within
	case "for":
		return forOf
	case "=", ":", "is", "are", "was", "were", "measure", "measures", "measured", "measuring", "make", "makes", "made",
		"give", "gives", "gave", "span", "spans", "cover", "covers", "covered", "equals", "equal", "take", "takes",
		"took", "has", "come", "comes", "came":
		return is
	}
	return apart
}

func filler(t token) bool {
	return t.isWord("of", "in", "on", "my", "the", "this", "a", "that", "swatch", "sample", "square", "piece", "knitting",
		"fabric", "plain", "measured", "together", "wide", "across", "high", "deep", "there", "i", "we", "get", "got",
		"have", "count", "knit") || t.is(",")
}

// rates makes rates of the items, then shares one length between two counts.
func (s *scanner) rates() {
	out := s.items[:0:0]
	for i := 0; i < len(s.items); {
		n := s.swatch(i)
		if n == 0 {
			n = s.rate(i, out)
		}
		out = append(out, s.items[i])
		if n == 4 {
			out = append(out, s.items[i+1])
		}
		i += max(n, 1)
	}
	s.items = out
	s.share()
}

// swatch reads "40 sts by 60 rows measure 14.2 cm by 15 cm": each count has
// the length that stands in its place. It returns how many items it used.
func (s *scanner) swatch(i int) int {
	if i+3 >= len(s.items) {
		return 0
	}
	a, b, c, d := &s.items[i], &s.items[i+1], s.items[i+2], s.items[i+3]
	if !a.Pair || !b.Pair || !c.Pair || !d.Pair || !isLength(c.Unit) || !isLength(d.Unit) {
		return 0
	}
	if isLength(a.Unit) || isLength(b.Unit) || s.linkOf(b.to, c.from) < per {
		return 0
	}
	a.over(c.Value, c.Unit)
	b.over(d.Value, d.Unit)
	b.to = d.to
	return 4
}

func (it *item) over(v engine.Num, u Unit) {
	if v.Sign() > 0 {
		it.Over, it.OverUnit = v, u
	}
}

// rate lets item i have what it is counted over, and returns how many items
// that used; before are the items already done.
func (s *scanner) rate(i int, before []item) int {
	a := &s.items[i]
	if !a.sound() || a.square && i+1 >= len(s.items) {
		return 1
	}
	if u, factor, end, ok := s.denominator(a.to); ok && fits(*a, u) {
		a.over(engine.Int(factor), u)
		a.to = end
		return 1
	}
	if i+1 >= len(s.items) {
		return 1
	}
	b := s.items[i+1]
	if !b.sound() || b.Range || b.Sign != 0 || b.After || a.Sign != 0 {
		return 1
	}
	l := s.linkOf(a.to, b.from)
	switch {
	case isLength(b.Unit) && s.countOver(*a, b, l, before), s.yarnOver(*a, b):
		a.over(b.Value, b.Unit)
		a.to = b.to
	case l == per && b.bare() && !b.Pair && (isCount(a.Unit) || a.bare()) && perBare(b.Value) != None:
		a.over(b.Value, perBare(b.Value))
		a.to = b.to
	case isLength(a.Unit) && s.turned(*a, b, l), s.yarnOver(b, *a):
		v, u := a.Value, a.Unit
		b.from = a.from
		*a = b
		a.over(v, u)
	default:
		return 1
	}
	a.Hedged = a.Hedged || b.Hedged
	return 2
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

// fits reports whether a can be counted over a u.
func fits(a item, u Unit) bool {
	if isWeight(u) {
		return isLength(a.Unit)
	}
	return isCount(a.Unit) || a.bare()
}

// denominator reads a unit without a number at i: "per inch", "/cm", "to the
// inch".
func (s *scanner) denominator(i int) (Unit, int64, int, bool) {
	switch t := s.at(i); {
	case t.isWord("per"), t.is("/"), t.isWord("each", "every"):
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

// countOver reports whether a is counted over the length b.
func (s *scanner) countOver(a, b item, l link, before []item) bool {
	counts := isCount(a.Unit) && !(a.After && l == is)
	if !counts && !a.bare() {
		return false
	}
	gauge := gaugeLength(b.Value, b.Unit) || b.square
	switch l {
	case per, over, to:
		return true
	case within:
		return counts || gauge
	case forOf:
		return counts && gauge
	case is:
		return counts || a.Pair
	case beside:
		article := s.at(b.from).isWord("a", "an")
		return article || counts && !s.shaped(b.to) && (s.goesOn(a, before) || gauge && s.tenth(b))
	}
	return false
}

// tenth reports the one length that gauges are given over without a word
// between: "28 sts 40 rows 10 cm". "97 stitches 4 in" may be a band.
func (s *scanner) tenth(b item) bool {
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
	return p.IsRate() && isLength(p.OverUnit) && p.Unit != a.Unit && s.linkOf(p.to, a.from) == and
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
	before := s.at(a.from - 1)
	if before.isWord("the", "every", "each") {
		before = s.at(a.from - 2)
	}
	opened := before.isWord("over", "per", "in", "across", "every")
	return l == is || counts && (l == per && !s.at(a.to).is("/") || l == forOf) ||
		opened && (l == beside || s.fillers(a.to, b.from))
}

func (s *scanner) fillers(i, j int) bool {
	if j-i > 5 {
		return false
	}
	for ; i < j; i++ {
		if !filler(s.at(i)) && !s.at(i).isWord("is", "are") && !s.at(i).is(":") {
			return false
		}
	}
	return true
}

// yarnOver reports whether the length a is that of the weight b: "400 m per
// 100 g", "210 m a ball of 50 g", "125 m (50 g)".
func (s *scanner) yarnOver(a, b item) bool {
	i, j := a.to, b.from
	if b.to <= a.from {
		i, j = b.to, a.from
	}
	if !isLength(a.Unit) || !isWeight(b.Unit) || j == i || j-i > 5 {
		return false
	}
	for ; i < j; i++ {
		t := s.at(i)
		if !t.isWord("per", "to", "the", "a", "an", "in", "on", "for", "each", "every", "of", "ball", "balls", "skein",
			"skeins", "hank", "cone", "yarn", "is", "are", "has", "gives", "give", "makes", "holds", "runs") &&
			!t.is("/") && !t.is("=") && !t.is("(") && !t.is(":") {
			return false
		}
	}
	return true
}
