package listen

import "foldrow/dialog/listen/quantity"

// hearsay drops what others did, or she herself another time, where the line
// says as well what she wants now: "my sister used 2x2, I want 1x1".
func (b *binder) hearsay() {
	if len(b.sets) < 2 || b.l.has("why") {
		return
	}
	for n := 0; n < len(b.sets); n++ {
		other := false
		for m, s := range b.sets {
			other = other || m != n && s.Key == b.sets[n].Key && !same(s, b.sets[n]) && !b.toldAt(m)
		}
		if other && b.toldAt(n) {
			b.hearing = true
			b.sets, b.at = append(b.sets[:n:n], b.sets[n+1:]...), append(b.at[:n:n], b.at[n+1:]...)
			n--
		}
	}
}

// toldAt: the clause of set n tells of others or of another time, and wishes
// for nothing.
func (b *binder) toldAt(n int) bool {
	from, to := b.clauseOf(b.at[n])
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
