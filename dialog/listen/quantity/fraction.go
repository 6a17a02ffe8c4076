package quantity

import "foldrow/engine"

// slash tells what a/b is.
type slash uint8

const (
	noSlash  slash = iota
	fraction       // 1/2, 15/16
	pairOf         // 28/40: two numbers
	ribOf          // 2/2
	byZero         // 1/0
	unclear        // 28/4
)

// classify is the rule for whole a/b, where nothing before or behind decides:
//
//   - b = 0 is a division by zero;
//   - a < 5 and b >= 2 is a fraction, for no gauge is so small, but 2/2 and
//     the like are ribs, since nobody writes one so;
//   - b of 2, 3 or 4 is a fraction (31/2), but a whole result of 12 or more
//     stitches over 4 could be a gauge (28/4) and is unclear;
//   - a proper fraction with b up to 8 is one (5/8, 6/8), and so are the odd
//     parts of a tape, n/16, and n/32 and n/64 below a dozen (15/16, 11/32);
//   - what is left with both at least 5 is a pair (28/40, 12/16, 8/10), the
//     rest unclear (5/1).
//
// before is set where a whole number stands directly before, and unit where
// a length or weight follows directly: with either, every proper fraction is
// one (7/10 cm, 1 21/32), but "40 28/32" is a number and a pair.
func classify(a, b int64, before, unit bool) slash {
	odd := a%2 == 1
	switch {
	case b == 0:
		return byZero
	case a == b && a < 5 && !before:
		return ribOf
	case unit && a < b:
		return fraction
	case before && a < b && (b <= 12 || odd && a < 12 || odd && b == 16):
		return fraction
	case a < 5 && b >= 2:
		return fraction
	case b == 4 && a >= 12 && a%4 == 0:
		return unclear
	case b >= 2 && b <= 4:
		return fraction
	case a < b && b <= 8:
		return fraction
	case odd && (b == 16 && a < 16 || (b == 32 || b == 64) && a < 12):
		return fraction
	case a >= 5 && b >= 5:
		return pairOf
	}
	return unclear
}

// slashAt reads the whole numbers a/b from token i and says what they are.
// A third "/" behind them makes a date of it, which is no fraction.
func (s *scanner) slashAt(i int, before bool) (sl slash, v engine.Num, next int) {
	a, bar, b := s.at(i), s.at(i+1), s.at(i+2)
	if a.kind != digits || !bar.is("/") || b.kind != digits || !a.whole || !b.whole || a.long || b.long {
		return noSlash, v, i
	}
	if s.at(i-1).is("x") || s.at(i+3).is("x") {
		return noSlash, v, i // "1x1 / 2x2"
	}
	next = i + 3
	an, bn := int64(a.val.Floor()), int64(b.val.Floor())
	unit := s.lengthFollows(next)
	rib := s.at(next).isWord("rib", "ribs", "ribbing") && an <= maxRib && bn <= maxRib
	switch {
	case bn == 0:
		return byZero, v, next
	case rib && !before:
		return ribOf, v, next
	case unit && an >= bn && s.overLength(i+2):
		return pairOf, v, next // 28/10cm: the second is the length of a rate
	case s.perFollows(next) && an >= 5 && bn >= 5 && !before:
		return pairOf, v, next // 6/8 to the inch
	}
	return classify(an, bn, before, unit), a.val.Div(b.val), next
}

// fractionWords reads a proper fraction in words from token i: "a half",
// "three quarters", "one eighth", "half a" is left to the unit.
func (s *scanner) fractionWords(i int) (v engine.Num, next int, ok bool) {
	n, j := int64(1), i
	if s.at(i).isWord("a", "an") {
		j = i + 1
	} else if t := s.at(i); t.kind == digits && t.whole && !t.long && t.val.Less(engine.Int(16)) {
		n, j = int64(t.val.Floor()), i+1 // "15 and 3 quarters"
	} else if u, tens, found := numberWord(s.text(i)); found && !tens && u > 0 {
		n, j = u, s.hyphen(i+1)
	}
	d, many, found := denominator(s.text(j))
	if !found || n >= d || many && n == 1 {
		return v, i, false
	}
	single := n == 1 && !many
	if single && d != 2 && d != 4 && !s.partFollows(j+1, j > i) {
		return v, i, false // "a third row", "third": an ordinal
	}
	if j == i && !(d == 2 || d == 4) {
		return v, i, false
	}
	return engine.Frac(n, d), j + 1, true
}

// partFollows reports whether what stands at i lets "a third" or "an eighth"
// be a part: anything but something counted, which would make it an ordinal.
func (s *scanner) partFollows(i int, article bool) bool {
	if !article {
		return false
	}
	u, _, ok := s.unitWord(s.hyphen(i))
	return !ok || !isCount(u)
}

// andFraction reads "and a half", "and three quarters", "and 1/2", "and ¾"
// from token i, and "-and-a-half".
func (s *scanner) andFraction(i int) (v engine.Num, next int, ok bool) {
	j := s.hyphen(i)
	if !s.at(j).isWord("and") && !s.at(j).is("&") {
		return v, i, false
	}
	j = s.hyphen(j + 1)
	if s.at(j).kind == vulgar {
		return s.at(j).val, j + 1, true
	}
	sl, f, k := s.slashAt(j, true)
	lowest := sl == pairOf && f.String() == s.at(j).text+"/"+s.at(j+2).text
	if (sl == fraction || lowest) && f.Less(engine.Int(1)) {
		return f, k, true // after "and" any proper fraction, if it is in lowest terms
	}
	if s.at(j).isWord("a", "an", "one") && s.at(j+1).is("-") {
		// "two-and-a-half"
		if d, many, found := denominator(s.text(s.hyphen(j + 1))); found && !many {
			return engine.Frac(1, d), s.hyphen(j+1) + 1, true
		}
	}
	return s.fractionWords(j)
}
