package quantity

import "foldrow/engine"

// inches reports whether "in" at i, with a blank before it, means inches.
// "in" is mostly a preposition ("40 in total", "28 in 10 cm", "97 in white"),
// so only the words that go on after a measurement let it be a unit. After
// a fraction it is one more readily, for nobody counts in fractions.
func (s *scanner) inches(i int, n number) bool {
	t := s.at(i + 1)
	switch t.kind {
	case digits:
		return s.inchesBefore(i+1, n)
	case vulgar:
		return false
	case mark:
		return !t.is("~")
	}
	if n.parted {
		return !t.isWord("a", "an", "the", "one", "each", "every", "total", "all")
	}
	return oneOf(t.text, "and", "or", "but", "for", "with", "by", "is", "at", "to", "of", "on", "please", "not", "if",
		"then", "than", "plus", "minus", "x", "per", "instead", "now", "too", "also", "from", "when", "because", "so",
		"what", "how", "would", "will", "should", "could", "can", "maybe", "approx", "ish", "max", "exactly", "wide",
		"deep", "long", "tall", "high", "thick", "round", "around", "across", "down", "up", "square",
		"circumference", "neck", "neckline", "neckband", "band", "bands", "depth", "opening", "head", "ease",
		"ribbing", "finished", "folded", "collar", "cardigan", "pullover", "bigger", "smaller", "larger", "longer",
		"shorter", "deeper", "narrower", "wider", "tighter", "looser", "more", "less", "over", "under", "was")
}

// leastCount is below any count of stitches that is said with "in" and a rib
// or another measurement behind it, and above a neck in inches.
const leastCount = 36

// inchesBefore decides for "16 in" with digits behind it at i: "28 in 10 cm"
// is a gauge and "2 in 3" a share, but "16 in 2x2" and "16 in 2 in" have
// inches in them. It looks at tokens only, so that a long run of such lines
// stays linear.
func (s *scanner) inchesBefore(i int, n number) bool {
	t := s.at(i)
	if !n.val.Less(engine.Int(leastCount)) {
		return false
	}
	j := i + 1
	switch {
	case s.at(j).kind == vulgar:
		j++
	case s.at(j).kind == digits && s.at(j+1).is("/"):
		j += 3
	}
	u, _, _ := s.unitWord(s.hyphen(j))
	if s.at(j).is(`"`) {
		u = Inch
	}
	switch {
	case j == i+1 && (gaugeLength(t.val, u) || u == None && perBare(t.val) != None && !s.at(j).is("x")):
		return false
	case isLength(u), s.at(j).is("x"), s.at(j).is("/"):
		return true
	}
	return !n.val.Less(engine.Int(maxRib)) && !t.val.Less(engine.Int(maxRib))
}
