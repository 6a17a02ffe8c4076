package listen

import "foldrow/engine"

// guarded stops values that are there but not meant as such: a negation says
// what a thing is not, a story what somebody else did, a limit where it may
// not go. Taking the number would set just what was refused.
func (r *reading) guarded() (Meaning, bool) {
	if len(r.b.sets) == 0 || r.asks() || r.cue(Why) {
		return Meaning{}, false
	}
	if k, at, ok := r.misfit(); ok {
		q := r.l.tokens[at].q
		return Meaning{Kind: Unclear, Problem: Problem{Code: "unit", Key: k, Read: r.l.text[q.Start:q.End]}}, true
	}
	code := ""
	switch {
	case r.negated():
		code = "negated"
	case r.story() || r.regrets():
		code = "story"
	case r.limit():
		code = "limit"
	default:
		return Meaning{}, false
	}
	s := r.b.sets[len(r.b.sets)-1]
	return Meaning{Kind: Unclear, Sets: nil, Problem: Problem{Code: code, Key: s.Key, Low: s.Value, Unit: s.Unit}}, true
}

// negated: "not", "without" or "anything but" leads to a value of the line.
func (r *reading) negated() bool {
	for n, at := range r.b.at {
		if r.b.sets[n].Key == engine.DialMin || r.b.sets[n].Key == engine.RowsPerClick && r.b.sets[n].Value.Sign() == 0 {
			continue // "won't go under 2" is how a dial is told
		}
		for j := at - 1; j >= max(0, at-6); j-- {
			t := r.l.tokens[j]
			if t.q != nil || r.l.tokens[j+1].stop && j+1 <= at {
				break
			}
			switch t.text {
			case "not", "never", "without":
				return true
			case "of", "than":
				if r.l.refuses(j) {
					return true
				}
			case "but":
				if j > 0 && r.l.tokens[j-1].text == "anything" {
					return true
				}
			}
			if t.text == "but" || t.text == "and" {
				break
			}
		}
	}
	return false
}

// story: somebody else's knitting, or the knitter's own of another time.
func (r *reading) story() bool {
	if r.b.hearing || r.b.ordered() || r.l.has("let") && r.l.has("us") {
		return false
	}
	if r.l.has("friend", "book", "magazin", "people", "previously", "neighbour", "teacher") {
		return true
	}
	for _, s := range r.b.sets {
		if OpenOf(s.Key) == r.ctx.Open {
			return r.l.has("previously") // "1x1, as my grandmother always did" answers all the same
		}
	}
	if r.hasSense("others") && r.spokenSense("told-of-others") && !r.l.has("for", "want", "would", "please", "need") {
		return true // "my sister used 2x2 on hers"
	}
	return r.l.has("last") && r.l.has("time", "sweater", "cardigan", "jumper", "one", "year", "garment") && !r.l.has("stag") ||
		r.l.has("before") && r.spoken("was") || r.l.has("used") && r.l.has("before")
}

// spokenSense is hasSense by the words as they were typed, not by their stems.
func (r *reading) spokenSense(sense string) bool {
	for _, t := range r.l.tokens {
		if t.q == nil && r.x.typed[sense][t.text] {
			return true
		}
	}
	return false
}

// regrets: "it is too short, I only knitted 9 rows" tells what was done, and
// that it will not do.
func (r *reading) regrets() bool {
	return r.ctx.Open == "" && r.l.has("too") && r.spokenSense("past") && !r.spokenSense("wish")
}

// limit: "at most 10 rows" says where the depth may end, not what it is.
func (r *reading) limit() bool {
	if r.l.has("max", "maximum", "minimum") && !r.dialMin() {
		return true
	}
	for i := 1; i < len(r.l.tokens); i++ {
		pair := r.l.tokens[i-1].text + " " + r.l.tokens[i].text
		switch pair {
		case "at most", "at least", "deeper than", "wider than", "longer than", "bigger than", "more than", "less than", "fewer than", "smaller than", "larger than":
			if i+1 < len(r.l.tokens) && r.l.tokens[i+1].q != nil {
				return !r.dialMin()
			}
		}
	}
	return false
}

// dialMin: the lowest dial number is a limit by nature.
func (r *reading) dialMin() bool {
	for _, s := range r.b.sets {
		if s.Key == "dial_min" {
			return r.l.has("dial", "number", "tension")
		}
	}
	return false
}

// spoken reports whether the word stands in the line as typed, in that form.
func (r *reading) spoken(word string) bool {
	for _, t := range r.l.tokens {
		if t.text == word {
			return true
		}
	}
	return false
}
