package listen

import "foldrow/engine"

// texts binds the words that choose one of a few values ("equal cuts").
func (b *binder) texts() {
	for _, m := range b.l.mentions {
		if m.text == "" || m.beside && !b.namesPartOf(m.key) && !b.saysOther(m) || b.dropped[m.from] {
			continue
		}
		if m.from > 1 && b.l.tokens[m.from-1].text == "of" && b.l.tokens[m.from-2].q != nil {
			continue // "30 grams of wool" is yarn of any kind
		}
		if ours(m.key) && (b.questionOnly() || b.complains()) {
			continue
		}
		if m.text == "wool" && b.l.has("left", "rest", "gram", "still", "remain", "enough", "ball", "metre", "meter") {
			continue // wool is any yarn in many mouths
		}
		if m.from > b.l.begin && oneOf(b.l.tokens[m.from-1].text, []string{"not", "no", "without", "never"}) && !b.l.has("why") {
			if m.key == engine.KeyBandKind && m.text != engine.BandLatched { // the usual kind again
				b.put(Set{Key: m.key, Text: engine.BandLatched, Near: 1}, m.from)
			}
			continue
		}
		for i := m.from; i < m.to; i++ {
			b.used[i] = true
		}
		b.put(Set{Key: m.key, Text: m.text, Near: 1}, m.from)
	}
}

// namesPartOf reports whether the line names k or another input of its part.
func (b *binder) namesPartOf(k engine.Key) bool {
	part := b.x.spans[k].Part
	for _, m := range b.l.mentions {
		if m.text == "" && m.key != "" && (m.key == k || part != "" && b.x.spans[m.key].Part == part) {
			return true
		}
	}
	return false
}

// saysOther reports whether another choice of the same key stands in the line
// by a sure name: "a standard and a chunky machine".
func (b *binder) saysOther(one mention) bool {
	for _, m := range b.l.mentions {
		if m.key == one.key && m.text != "" && m.text != one.text && !m.beside {
			return true
		}
	}
	return false
}
