package quantity

import "foldrow/engine"

// number is a number without its unit.
type number struct {
	val     engine.Num
	plain   bool // one run of digits, whole or decimal: may be half of a pair
	parted  bool // it has a fraction: "of an inch" may follow
	words   bool
	ordinal bool
	hedged  bool
	doubt   bool // the comma may group or be a decimal sign
	gauge   bool // the comma may separate a gauge's two numbers
	problem string
}

// scanner holds the tokens and the items found so far.
type scanner struct {
	toks  []token
	items []item
	none  token // stands where there is no token
}

// at is token i, or a token that is nothing where there is none; it is only
// read.
func (s *scanner) at(i int) *token {
	if i < 0 || i >= len(s.toks) {
		return &s.none
	}
	return &s.toks[i]
}

// text is the text of token i if it is a word.
func (s *scanner) text(i int) string {
	if t := s.at(i); t.kind == word {
		return t.text
	}
	return ""
}

// number reads one number from token i and tells where it ends.
func (s *scanner) number(i int) (number, int, bool) {
	switch t := s.at(i); t.kind {
	case digits:
		n, next := s.digitNumber(i)
		return n, next, true
	case vulgar:
		n, next := s.noFraction(number{val: t.val, parted: true}, i+1)
		return n, next, true
	case word:
		return s.wordNumber(i)
	}
	return number{}, i, false
}

func (s *scanner) digitNumber(i int) (number, int) {
	t := s.at(i)
	sl, v, next := s.slashAt(i, false)
	switch sl {
	case fraction:
		return s.noFraction(number{val: v, parted: true}, next)
	case byZero:
		return number{problem: DivisionByZero}, next
	case unclear:
		return number{problem: TwoNumbers}, next
	case pairOf, ribOf:
		if s.fractionAt(next) {
			return s.noFraction(number{}, next)
		}
	}
	if end, ok := s.exponent(i + 1); ok {
		return number{problem: TooLong}, end
	}
	if t.long {
		return number{problem: TooLong}, i + 1
	}
	n := number{val: t.val, plain: true, doubt: t.doubt, gauge: t.gauge}
	if !t.whole {
		return s.noFraction(n, i+1)
	}
	return s.mixed(n, i+1)
}

// mixed reads what may follow a whole number: "½", "1/2", "-1/2", "and a
// half", "dozen", "th", and "000" of "1 000".
func (s *scanner) mixed(n number, i int) (number, int) {
	t := s.at(i)
	if t.kind == vulgar {
		return s.noFraction(n.plus(t.val), i+1)
	}
	if m, ok := multiplier(s.text(i)); ok {
		n.val, n.plain = n.val.Mul(engine.Int(m)), false
		return n, i + 1
	}
	if t.kind == digits && t.gap && t.whole && len(t.text) == 3 && t.zero && n.val.Less(engine.Int(1000)) {
		n.val = n.val.Mul(engine.Int(1000)).Add(t.val)
		return n, i + 1
	}
	if s.ordinalEnding(i, n.val) {
		n.ordinal, n.plain = true, false
		return n, i + 1
	}
	sl, f, next := s.slashAt(s.hyphen(i), true)
	switch {
	case sl == fraction && f.Less(engine.Int(1)):
		return s.noFraction(n.plus(f), next)
	case sl == fraction:
		return number{problem: TwoNumbers}, next // "15 3/2"
	case sl == byZero:
		return number{problem: DivisionByZero}, next
	}
	if f, next, ok := s.andFraction(i); ok {
		return n.plus(f), next
	}
	return n, i
}

func (n number) plus(f engine.Num) number {
	n.val, n.plain, n.parted = n.val.Add(f), false, true
	return n
}

// noFraction refuses a second fraction behind a number that has one, or has
// decimals: "1.5 1/2".
func (s *scanner) noFraction(n number, i int) (number, int) {
	if !s.fractionAt(i) {
		return n, i
	}
	next := i + 1
	if s.at(i).kind == digits {
		next = i + 3
	}
	return number{problem: TwoNumbers}, next
}

func (s *scanner) fractionAt(i int) bool {
	sl, _, _ := s.slashAt(i, false)
	return s.at(i).kind == vulgar || sl == fraction
}

// exponent finds "e308" or "e-5" glued at token i.
func (s *scanner) exponent(i int) (int, bool) {
	if !s.at(i).is("e") || s.at(i).gap {
		return i, false
	}
	i++
	if (s.at(i).is("-") || s.at(i).is("+")) && !s.at(i).gap {
		i++
	}
	return i + 1, s.at(i).kind == digits && !s.at(i).gap
}

// ordinalEnding reports whether token i makes a place of the whole number v:
// "5th". "21st" may be 21 stitches, so there the neighbours decide.
func (s *scanner) ordinalEnding(i int, v engine.Num) bool {
	if s.at(i).gap {
		return false
	}
	switch s.text(i) {
	case "th", "nd", "rd":
		return true
	case "st":
		u, _, counted := s.unitWord(i + 1)
		return v.Equal(engine.Int(1)) || counted && isCount(u) && u != Stitch ||
			s.at(i-2).isWord("the", "every", "each")
	}
	return false
}
