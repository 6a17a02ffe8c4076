package listen

// A glance is a set of stems, coarsely: each is one bit of 64, and two may
// share one. It tells at once that a line lacks a word which a phrasing needs,
// so that few of some thousand phrasings are looked at word by word.
type glance uint64

// glanceOf is the set of one stem; of none it is empty.
func glanceOf(stem string) glance {
	if stem == "" {
		return 0
	}
	h := uint32(2166136261) // FNV-1a, which spreads short words well
	for i := range len(stem) {
		h = (h ^ uint32(stem[i])) * 16777619
	}
	return 1 << (h >> 26)
}

// glance is the stems of the line. A quantity stands for the words that it was
// typed with and for its unit's.
func (l *Line) glance() glance {
	var g glance
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.q == nil {
			g |= glanceOf(t.stem)
			continue
		}
		g |= glanceOf(t.text) | glanceOf(unitStem(t.q.Unit))
	}
	return g
}

// look takes the glance of the tokens and their initials anew, once they have
// been set.
func (l *Line) look() {
	l.seen, l.first = l.glance(), 0
	for i := range l.tokens {
		l.first |= initial(l.tokens[i].text) | initial(l.tokens[i].stem)
	}
}

// initial is the first byte of a word as one bit of 64: a line without it holds
// no such word. Of no word it is 0.
func initial(word string) uint64 {
	if word == "" {
		return 0
	}
	return 1 << (word[0] & 63)
}

// needs is what p cannot do without: the words that stand alone, and one set
// for each element with choices, their first words.
func (p *pattern) needs() (must glance, all []glance) {
	for _, e := range p.elems {
		if e.optional || e.gap || e.slot != "" {
			continue
		}
		var g glance
		for _, alt := range e.alts {
			g |= glanceOf(alt[0])
		}
		if g&(g-1) == 0 {
			must |= g
			continue
		}
		all = append(all, g)
	}
	return must, all
}

// mayHold is false only where p does not match.
func (l *Line) mayHold(p *pattern) bool {
	if p.must&^l.seen != 0 {
		return false
	}
	for _, g := range p.need {
		if g&l.seen == 0 {
			return false
		}
	}
	return true
}
