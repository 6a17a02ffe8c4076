package listen

// whole is the count that token i says, 0 where it is none.
func (r *reading) whole(i int) int {
	if i < 0 || i >= len(r.l.tokens) {
		return 0
	}
	q := r.l.tokens[i].q
	if q == nil || q.Problem != "" || q.Rib || q.Range || q.Over.Sign() != 0 || isLength(q.Unit) || !q.Value.IsInt() || q.Value.Sign() <= 0 {
		return 0
	}
	return q.Value.Floor()
}

// near is the word n tokens from i, "" beyond the line.
func (r *reading) near(i, n int) string {
	if i += n; i < 0 || i >= len(r.l.tokens) || r.l.tokens[i].q != nil {
		return ""
	}
	return r.l.tokens[i].stem
}

// wordBefore reports whether one of the words stands before token i, with at
// most one word between.
func (r *reading) wordBefore(i int, words ...string) bool {
	return oneOf(r.near(i, -1), words) || r.near(i, -1) != "" && oneOf(r.near(i, -2), words)
}

// wordAfter is the same after token i.
func (r *reading) wordAfter(i int, words ...string) bool {
	return oneOf(r.near(i, 1), words) || r.near(i, 1) != "" && oneOf(r.near(i, 2), words)
}

// says reports whether one of the words stands in the line, in any form.
func (r *reading) says(words ...string) bool {
	for _, t := range r.l.tokens {
		if t.q == nil && oneOf(t.stem, words) {
			return true
		}
	}
	return false
}

func oneOf(w string, words []string) bool {
	if w == "" {
		return false
	}
	for _, x := range words {
		if w == x || mayBe(w, x) && w == stem(x) {
			return true
		}
	}
	return false
}

// mayBe reports whether w may be the stem of x: it begins as x does, but for
// the forms of "be" and "go".
func mayBe(w, x string) bool {
	return x != "" && w[0] == x[0] || w == "be" || w == "go"
}

// partCue reports whether the line holds a phrasing of that part.
func (x *Lexicon) partCue(l *Line, topic string) bool {
	for n := range x.cued.held(l) {
		if c := &x.cues[n]; c.kind == Parts && c.topic == topic {
			return true
		}
	}
	return false
}
