package quantity

import "foldrow/engine"

// compound adds to it what belongs to the same measurement: "an inch and a
// quarter", "5 ft 6 in", "1 m 20". The result has the smaller unit.
func (s *scanner) compound(it *item, n number) {
	if n.parted || n.ordinal || n.problem != "" {
		return
	}
	if f, next, ok := s.andFraction(it.to); ok && n.val.IsInt() {
		// "an inch and three quarters", but not "an inch and 3/4 cm"
		if u, _, end := s.unitAt(next, number{parted: true}); end == next || u == it.Unit {
			it.Value = it.Value.Add(f)
			it.to = max(next, end)
			if u == None {
				it.to = next
			}
			return
		}
	}
	small, times := smaller(it.Unit)
	if small == None || !n.val.IsInt() {
		return
	}
	j := it.to
	joined := s.at(j).isWord("and") || s.at(j).is(",")
	if joined || s.at(j).is("-") && !s.at(j).gap && it.Unit == Foot {
		j++
	}
	m, k, ok := s.number(j)
	if !ok || m.ordinal || m.problem != "" || m.words && !n.words && s.at(j).isWord("a", "an") {
		return
	}
	u, _, next := s.unitAt(k, m)
	unit := next > k
	switch {
	case unit && u != small && !(it.Unit == Metre && u == Millimetre) && !(it.Unit == Yard && u == Foot):
		return
	case unit && u == Millimetre && it.Unit == Metre:
		small, times = u, 1000
	case unit && u == Foot:
		small, times = u, 3
	case !unit && (joined || u != None || !s.restOf(it.Unit, m, j, k)):
		return
	}
	if !m.val.Less(engine.Int(times)) {
		return
	}
	it.Value = it.Value.Mul(engine.Int(times)).Add(m.val)
	it.Unit, it.to, it.plain = small, max(next, k), false
}

// smaller is the unit that goes with u in one measurement, and how many make
// one u.
func smaller(u Unit) (Unit, int64) {
	switch u {
	case Foot:
		return Inch, 12
	case Yard:
		return Inch, 36
	case Metre:
		return Centimetre, 100
	case Centimetre:
		return Millimetre, 10
	}
	return None, 1
}

// restOf reports whether a number without a unit, from token j to k, is the
// rest of a measurement in u: 5 ft 6 and 5' 1/2, and the two digits of 1 m 20.
func (s *scanner) restOf(u Unit, m number, j, k int) bool {
	if s.at(k).is("x") || s.at(k).is("/") || s.at(k).is("-") || s.at(k).isWord("by", "to") || s.foreign(k) > k {
		return false
	}
	switch u {
	case Foot:
		return m.val.Sign() > 0
	case Metre:
		return m.plain && s.at(j).whole && len(s.at(j).text) == 2
	}
	return false
}
