package quantity

import "foldrow/engine"

// item is a quantity in the making, with the tokens [from, to) it covers.
type item struct {
	Quantity
	from, to int
	lead     int  // where its words begin: from, or the unit before it
	plain    bool // see number
	doubt    bool
	gauge    bool
	square   bool // "10 x 10 cm"
}

// bare reports that it is a number and nothing else.
func (it item) bare() bool { return it.Unit == None && !it.IsRate() && it.Problem == "" && !it.Ordinal }

// sound reports that it may be joined to others.
func (it item) sound() bool { return it.Problem == "" && !it.Rib && !it.Ordinal }

// collect reads the items of the line from left to right.
func (s *scanner) collect() {
	for i := 0; i < len(s.toks) && len(s.items) < maxItems; {
		if next := s.notQuantity(i); next > i {
			i = next
			continue
		}
		it, next, ok := s.item(i)
		if ok {
			s.items = append(s.items, it)
		}
		i = max(next, i+1)
	}
}

// item reads one item from token i. Where there is none, next may still be
// past i: that much is known to hold no quantity.
func (s *scanner) item(i int) (item, int, bool) {
	start, hedged := s.hedge(i)
	j, sign := s.sign(start)
	if it, next, ok := s.bareInch(i, hedged); ok {
		return it, next, true
	}
	n, k, ok := s.number(j)
	if !ok {
		n, k, ok = s.article(j)
	}
	if !ok || s.pronoun(j, k) {
		return item{}, i, false
	}
	if next := s.foreign(k); next > k {
		return item{}, next, false
	}
	it := item{from: i, lead: i, plain: n.plain, doubt: n.doubt, gauge: n.gauge}
	it.Words, it.Ordinal, it.Problem, it.Sign = n.words, n.ordinal, n.problem, sign
	k, loose := s.hedgeAfter(k)
	u, factor, next := s.unitAt(k, n)
	if s.labelled(i, u, next) {
		u, factor, next = None, 1, k
	}
	it.Unit, it.to = u, next
	it.Value = n.val.Mul(engine.Int(factor))
	if next > k || loose {
		s.compound(&it, n)
	}
	to, looser := s.hedgeAfter(it.to)
	it.to = to
	it.Hedged = hedged || loose || looser || n.hedged
	if sign < 0 {
		it.Value = it.Value.Neg()
	}
	it.High = it.Value
	s.unitBefore(&it)
	return it, it.to, true
}

// bareInch reads "inch and a half", where the one is left unsaid.
func (s *scanner) bareInch(i int, hedged bool) (item, int, bool) {
	if hedged || !s.at(i).isWord("inch") || s.at(i-1).kind == digits || s.at(i-1).kind == vulgar {
		return item{}, i, false
	}
	if len(s.items) > 0 && s.items[len(s.items)-1].to > i-1 {
		return item{}, i, false // the unit of the number before it
	}
	f, next, ok := s.andFraction(i + 1)
	if !ok {
		return item{}, i, false
	}
	it := item{from: i, lead: i, to: next}
	it.Words, it.Unit, it.Value = true, Inch, engine.Int(1).Add(f)
	it.High = it.Value
	return it, next, true
}

// article reads "an inch", "a metre" and "first row"; "a stitch" and "a row"
// are no quantities.
func (s *scanner) article(i int) (number, int, bool) {
	one := number{val: engine.Int(1), words: true}
	u, _, ok := s.unitWord(i + 1)
	switch {
	case !ok:
		return number{}, i, false
	case s.at(i).isWord("first") && isCount(u):
		one.ordinal = true
		return one, i + 1, true
	case s.at(i).isWord("a", "an") && (isLength(u) || isWeight(u)) && !s.at(i+1).isWord("in", "m", "g"):
		return one, i + 1, true
	}
	return number{}, i, false
}

// hedge reads "about" and its like at i. After "what" or "how" it proposes:
// "what about 40".
func (s *scanner) hedge(i int) (int, bool) {
	t, j := s.at(i), i+1
	switch {
	case t.is("~"):
	case t.isWord("about", "around", "roughly", "approximately", "nearly", "almost", "circa", "ca", "some", "maybe",
		"perhaps", "probably"):
		if s.at(i-1).isWord("what", "how") {
			return i, false
		}
	case t.isWord("approx"):
		if s.at(j).is(".") {
			j++
		}
	case t.isWord("close") && s.at(j).isWord("to"),
		t.isWord("something") && s.at(j).isWord("like"),
		t.isWord("just", "bit", "little") && s.at(j).isWord("over", "under"):
		j++
	default:
		return i, false
	}
	if s.at(j).isWord("a", "an") && s.at(j+1).kind == digits {
		j++
	}
	return j, true
}

// hedgeAfter reads "ish", "or so", "-odd", "and a bit" at i.
func (s *scanner) hedgeAfter(i int) (int, bool) {
	j := s.hyphen(i)
	switch {
	case s.at(j).isWord("ish"):
		return j + 1, true
	case s.at(j).isWord("odd") && (j > i || !s.at(j).gap):
		return j + 1, true
	case s.at(i).isWord("or") && s.at(i+1).isWord("so", "thereabouts"):
		return i + 2, true
	case s.at(i).isWord("give") && s.at(i+1).isWord("or") && s.at(i+2).isWord("take"):
		return i + 3, true
	case s.at(i).isWord("and") && s.at(i+1).isWord("a") && s.at(i+2).isWord("bit"):
		return i + 3, true
	case s.at(i).isWord("approx", "approximately", "roughly") && s.at(i+1).kind == mark:
		return i + 1, true
	}
	return i, false
}

// sign reads "-3", "+3", "minus 3", "plus 3". A mark is a sign only with a
// blank before it and none behind.
func (s *scanner) sign(i int) (int, int) {
	t, next := s.at(i), s.at(i+1)
	number := next.kind == digits || next.kind == vulgar
	switch {
	case t.is("-") && t.gap && number && !next.gap, t.isWord("minus", "negative"):
		return i + 1, -1
	case t.is("+") && t.gap && number && !next.gap, t.isWord("plus"):
		return i + 1, 1
	}
	return i, 0
}

// unitBefore gives a bare number the unit that stands before it: "row 11",
// "stitches: 28".
func (s *scanner) unitBefore(it *item) {
	if !it.bare() || it.Sign != 0 {
		return
	}
	if u, i := s.label(it.from); u != None {
		it.Unit, it.After, it.lead = u, true, i
	}
}

// label is the unit of things counted that stands before token i and is not
// that of the item before, with its place.
func (s *scanner) label(i int) (Unit, int) {
	i--
	if s.at(i).is(":") || s.at(i).is("=") {
		i--
	}
	u, _, ok := s.unitWord(i)
	if !ok || !isCount(u) || len(s.items) > 0 && i < s.items[len(s.items)-1].to {
		return None, i
	}
	return u, i
}

// labelled reports that the unit word that ends at next belongs to the number
// behind it, as in "sts 28 rows 40", where each number has its unit before it.
func (s *scanner) labelled(i int, u Unit, next int) bool {
	before, _ := s.label(i)
	if s.at(next).is(":") || s.at(next).is("=") {
		next++
	}
	return before != None && isCount(u) && before != u && s.at(next).kind == digits && s.at(next).gap
}
