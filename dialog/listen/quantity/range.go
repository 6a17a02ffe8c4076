package quantity

import "foldrow/engine"

// ranges joins the two ends of "42-43", "42 to 43", "between 42 and 43", and
// marks "4 or 5 cm". No end is ever dropped.
func (s *scanner) ranges() {
	out := make([]item, 0, len(s.items))
	for i := 0; i < len(s.items); i++ {
		a := s.items[i]
		if i+1 < len(s.items) {
			b := s.items[i+1]
			if ab, ok := s.rangeOf(a, b); ok && !s.listed(i) {
				out = append(out, ab)
				i++
				continue
			}
			s.alternatives(&a, &s.items[i+1])
		}
		out = append(out, a)
	}
	s.items = out
}

// listed reports that item i begins, or goes on, a list joined by hyphens
// ("28-30-32"), which is no range.
func (s *scanner) listed(i int) bool {
	dash := func(i int) bool {
		return i >= 0 && i+1 < len(s.items) && s.items[i+1].from == s.items[i].to+1 && s.at(s.items[i].to).is("-")
	}
	return dash(i) && (dash(i-1) || dash(i+1))
}

// rangeOf makes one item of the ends a and b.
func (s *scanner) rangeOf(a, b item) (item, bool) {
	if a.Ordinal != b.Ordinal || a.Problem != "" || b.Problem != "" || a.Rib || b.Rib || a.Pair || b.Pair {
		return a, false
	}
	ab := b
	ab.from, ab.lead, ab.Range = a.from, a.lead, true
	if b.Sign < 0 && a.to == b.from && s.at(b.from).is("-") {
		// "42 -43" is a range written loosely, "42 -3" is not
		ab.Value, ab.Sign = b.Value.Neg(), 0
		if !a.Value.Less(ab.Value) {
			return a, false
		}
	} else if end := s.giveOrTake(a.to); end > a.to && end == b.from && !a.Words {
		b.Value, a.Value = a.Value.Add(b.Value), a.Value.Sub(b.Value)
		ab.Value = b.Value
	} else if !s.rangeLink(a, b, &ab) {
		return a, false
	}
	if !sameKind(a, b) || s.counted(a, b) {
		return a, false
	}
	ab.High = ab.Value
	ab.Value = a.Value
	if a.Unit != b.Unit && isLength(a.Unit) && isLength(b.Unit) {
		fa, _ := cmPer(a.Unit)
		fb, _ := cmPer(b.Unit)
		ab.Value = a.Value.Mul(fa).Div(fb)
	}
	if ab.High.Less(ab.Value) {
		ab.Value, ab.High, ab.Down = ab.High, ab.Value, true
	}
	if a.After {
		ab.Unit, ab.After = a.Unit, true
	}
	ab.Hedged, ab.Words, ab.Sign = a.Hedged || b.Hedged, a.Words || b.Words, a.Sign
	ab.plain, ab.doubt = false, a.doubt || b.doubt
	return ab, true
}

// giveOrTake reads "±" and "+/-" at i: the spread about what stands before.
func (s *scanner) giveOrTake(i int) int {
	switch {
	case s.at(i).is("±"):
		return i + 1
	case s.at(i).is("+") && s.at(i+1).is("/") && s.at(i+2).is("-"):
		return i + 3
	}
	return i
}

// rangeLink reports whether the tokens between a and b make a range of them,
// and lets ab begin with the word that opens it.
func (s *scanner) rangeLink(a, b item, ab *item) bool {
	i := a.to
	opener := s.at(a.lead - 1)
	if opener.isWord("between") && i+1 == b.lead && (s.at(i).is("and") || s.at(i).is("&")) {
		ab.from = a.opening()
		return true
	}
	for i < b.lead && s.at(i).is("-") {
		i++
	}
	if i == b.lead {
		return i == a.to+1
	}
	if !s.at(i).isWord("to", "through", "until") {
		return false
	}
	for i++; i < b.lead && s.at(i).is("-"); i++ {
	}
	if i == b.lead && opener.isWord("from") {
		ab.From = true
		ab.from = a.opening()
	}
	return i == b.lead
}

// opening is where a range begins whose "between" or "from" stands before a;
// a unit before a number is never in the span.
func (it item) opening() int {
	if it.lead < it.from {
		return it.from
	}
	return it.from - 1
}

// sameKind reports whether a and b can be the ends of one range.
func sameKind(a, b item) bool {
	switch {
	case a.After:
		return b.Unit == None || b.After && a.Unit == b.Unit
	case a.Unit == b.Unit, a.Unit == None && !b.After:
		return true
	}
	return isLength(a.Unit) && isLength(b.Unit) && !a.square && !b.square
}

// counted tells "28 to 4 in", which is a gauge, from "5 to 6 in".
func (s *scanner) counted(a, b item) bool {
	if a.Unit != None || !isLength(b.Unit) || !s.at(b.from-1).is("to") || s.at(a.to).is("-") {
		return false
	}
	if s.at(a.from-1).isWord("from") || !gaugeLength(b.Value, b.Unit) {
		return false
	}
	a.over(b.Value, b.Unit)
	per, ok := a.Per10cm()
	return ok && engine.Int(11).Less(per) && per.Less(engine.Int(91))
}

// alternatives marks b in "4 or 5 cm" and lets a have its unit.
func (s *scanner) alternatives(a, b *item) {
	if b.from != a.to+1 || !s.at(a.to).isWord("or") || a.Problem != "" || b.Problem != "" {
		return
	}
	b.Or = true
	if a.bare() && !a.Rib && !a.Pair && !b.Rib && !b.Pair && !b.After {
		a.Unit = b.Unit
	}
}
