package quantity

import "foldrow/engine"

// wordNumber reads a number in words from token i.
func (s *scanner) wordNumber(i int) (number, int, bool) {
	if n, next, ok := s.partWords(i); ok {
		return n, next, true
	}
	if v, next, ok := s.ordinalWords(i); ok {
		return number{val: engine.Int(v), words: true, ordinal: true}, next, true
	}
	if n, next, ok := s.couple(i); ok {
		return n, next, true
	}
	if f, next, ok := s.pointDigits(i); ok {
		return number{val: f, words: true}, next, true
	}
	v, next, ok := s.cardinal(i)
	if !ok {
		return number{}, i, false
	}
	n := number{val: engine.Int(v), words: true}
	if f, k, ok := s.pointDigits(next); ok {
		n.val = n.val.Add(f)
		return n, k, true
	}
	if f, k, ok := s.andFraction(next); ok {
		return n.plus(f), k, true
	}
	if u, tens, ok := numberWord(s.text(next)); ok && (tens || u > 9) && v > 0 && v < 10 {
		return number{words: true, problem: TwoNumbers}, next + 1, true // "one forty"
	}
	return n, next, true
}

// partWords reads a fraction in words that stands alone: "half an inch",
// "three quarters", "half a dozen". "half" and "quarter" on their own are
// mostly no numbers ("the other half"), so something must follow.
func (s *scanner) partWords(i int) (number, int, bool) {
	f, next, ok := s.fractionWords(i)
	if !ok {
		return number{}, i, false
	}
	n := number{val: f, words: true, parted: true}
	j := next
	if s.at(j).isWord("a") {
		j++
	}
	if m, ok := multiplier(s.text(j)); ok {
		n.val = n.val.Mul(engine.Int(m))
		return n, j + 1, true
	}
	if next > i+1 {
		return n, next, true
	}
	of := next
	if s.at(of).isWord("of") {
		of++
	}
	if s.at(of).isWord("a", "an", "one") {
		of++
	}
	_, _, unit := s.unitWord(s.hyphen(of))
	if s.at(of).isWord("row", "rows") && s.amountAt(of+1) {
		return number{}, i, false // "half of row 5" is no half row
	}
	if s.at(next).isWord("to", "or") && s.amountAt(next+1) {
		return n, next, true // "half to three quarters of an inch"
	}
	half := s.at(i).isWord("half") && (s.at(next).isWord("of", "the", "as") || s.at(i-1).isWord("by"))
	return n, next, unit || half
}

// amountAt reports whether a number begins at i.
func (s *scanner) amountAt(i int) bool {
	t := s.at(i)
	if t.kind == digits || t.kind == vulgar {
		return true
	}
	_, _, part := s.fractionWords(i)
	_, _, small := numberWord(t.text)
	_, _, one := s.article(i)
	return t.kind == word && (part || small || one)
}

// ordinalWords reads "third", "twenty-first", "other" after "every".
func (s *scanner) ordinalWords(i int) (int64, int, bool) {
	if s.at(i).isWord("other") && s.at(i-1).isWord("every") {
		return 2, i + 1, true
	}
	if s.at(i).isWord("second") && s.at(i-1).isWord("a", "one", "per", "this", "just") {
		return 0, i, false // a moment
	}
	if v, ok := ordinalWord(s.text(i)); ok {
		return v, i + 1, true
	}
	tens, ok := tensWord(s.text(i))
	if !ok {
		return 0, i, false
	}
	j := s.hyphen(i + 1)
	v, ok := ordinalWord(s.text(j))
	if s.at(j).isWord("first") {
		v, ok = 1, true
	}
	return tens + v, j + 1, ok && v < 10
}

// couple reads "a couple of" and "couple of" as a loose two.
func (s *scanner) couple(i int) (number, int, bool) {
	j := i
	if s.at(j).isWord("a") {
		j++
	}
	if !s.at(j).isWord("couple") {
		return number{}, i, false
	}
	j++
	of := s.at(j).isWord("of")
	if of {
		j++
	}
	return number{val: engine.Int(2), words: true, hedged: true}, j, of || j > i+1
}
