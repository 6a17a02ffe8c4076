package listen

import "foldrow/dialog/listen/quantity"

// hearsay drops what others did, or she herself another time, where the line
// says as well what she wants now: "my sister used 2x2, I want 1x1".
func (b *binder) hearsay() {
	if b.l.has("why") || b.asked {
		return
	}
	b.rather()
	if len(b.sets) < 2 {
		return
	}
	for n := 0; n < len(b.sets); n++ {
		other := false
		for m, s := range b.sets {
			other = other || m != n && s.Key == b.sets[n].Key && !same(s, b.sets[n]) && !b.toldAt(m)
		}
		if other && b.toldAt(n) {
			b.hearing = true
			b.cut(n)
			n--
		}
	}
}

// rather: "the last one was 4 cm deep, make this one 3 cm": a number that
// nothing has taken is of the same thing.
func (b *binder) rather() {
	free := b.free()
	if len(b.sets) == 1 && !b.toldAt(0) {
		for _, i := range free { // "hers was 42 wide, make the neck 40"
			if b.tells(i) && accepts(b.x.spans[b.sets[0].Key].Dimension, b.l.tokens[i].q) {
				b.used[i], b.hearing = true, true
			}
		}
		return
	}
	for n, set := range b.sets {
		if !b.toldAt(n) || set.Rib.IsSet() {
			continue
		}
		from, to := b.clauseOf(b.at[n])
		for _, i := range free {
			if from <= i && i < to || b.tells(i) || !accepts(b.x.spans[set.Key].Dimension, b.l.tokens[i].q) || !b.add(set.Key, i, 1) {
				continue
			}
			b.cut(n)
			b.hearing = true
			return
		}
	}
}

// toldAt: the clause of set n tells of others or of another time, and wishes
// for nothing.
func (b *binder) toldAt(n int) bool { return b.tells(b.at[n]) }

func (b *binder) tells(at int) bool {
	from, to := b.clauseOf(at)
	told := false
	for i, t := range b.l.tokens[from:to] {
		if t.q != nil {
			continue
		}
		switch t.text {
		case "want", "wants", "please", "make", "set", "change", "prefer", "let", "now", "instead":
			return false
		case "last":
			told = told || from+i+1 < to && oneOf(b.l.tokens[from+i+1].text, []string{"one", "time", "year", "cardigan", "jumper", "sweater", "pullover", "winter", "summer"})
		}
		told = told || b.x.senses["others"][t.stem] || b.x.senses["others"][t.text]
	}
	return told
}

// ordered: every value stands in a clause that wishes for it, whatever the
// other clauses tell.
func (b *binder) ordered() bool {
	for _, at := range b.at {
		from, to := b.clauseOf(at)
		wished := false
		for _, t := range b.l.tokens[from:to] {
			wished = wished || oneOf(t.text, []string{"want", "please", "make", "set", "change", "prefer", "let", "take"})
		}
		if !wished || from == 0 && to == len(b.l.tokens) {
			return false
		}
	}
	return len(b.at) > 0
}

// clauseOf is the stretch of tokens between two stops, or between "but" and
// the like, around i.
func (b *binder) clauseOf(i int) (from, to int) {
	for from = i; from > 0 && !b.l.tokens[from].stop && b.l.tokens[from].text != "but"; from-- {
	}
	for to = i + 1; to < len(b.l.tokens) && !b.l.tokens[to].stop && b.l.tokens[to].text != "but"; to++ {
	}
	return from, to
}

// yearAt: "the book is from 1974".
func (b *binder) yearAt(i int, q *quantity.Quantity) bool {
	n := q.Value.Floor()
	return q.Unit == "" && q.Value.IsInt() && n >= 1900 && n < 2100 && i > 0 && oneOf(b.l.tokens[i-1].text, []string{"from", "in", "of", "since", "about", "around"})
}
