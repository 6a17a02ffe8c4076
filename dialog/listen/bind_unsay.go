package listen

// unsay drops what the line says a thing is not, where it says as well what it
// is: "not doubled, just one layer", "don't want 1x1, 3x1 please".
func (b *binder) unsay() {
	if len(b.sets) < 2 || b.l.has("why", "differenc", "compar") {
		return
	}
	for n := 0; n < len(b.sets); n++ {
		other := false
		for m, s := range b.sets {
			other = other || m != n && s.Key == b.sets[n].Key && !b.negatedAt(m)
		}
		if other && b.negatedAt(n) {
			b.cut(n)
			n--
		}
	}
}

// negatedAt: "not" or its like leads to the value of set n, with no other
// value and no break between.
func (b *binder) negatedAt(n int) bool {
	for j := b.at[n]; j >= max(0, b.at[n]-6); j-- {
		t := b.l.tokens[j]
		if j < b.at[n] {
			switch t.text {
			case "not", "never", "without":
				return true
			case "of", "than":
				if b.l.refuses(j) {
					return true
				}
			case "but", "and", "just", "only", "rather", "instead":
				return false
			}
			if t.q != nil {
				return false
			}
		}
		if t.stop {
			return false
		}
	}
	return false
}

// refuses: "instead of", "rather than" and "I'd rather ... than" lead to what
// is not wanted.
func (l *Line) refuses(j int) bool {
	if j > 0 && (l.tokens[j-1].text == "instead" || l.tokens[j-1].text == "rather") {
		return true
	}
	for k := 0; k < j && l.tokens[j].text == "than"; k++ {
		if w := l.tokens[k].text; w == "rather" || w == "prefer" || w == "sooner" {
			return true
		}
	}
	return false
}
