package listen

import (
	"iter"
	"math/bits"
)

// A sieve files phrasings under a word that each cannot do without, the rarest
// it has, so that a line is tried against the few whose word it holds.
type sieve struct {
	patterns []*pattern
	under    map[string][]int // stem -> places in patterns
	wordless []int            // of phrasings that need no word at all
}

// newSieve files n phrasings.
func newSieve(n int, phrasing func(int) *pattern) *sieve {
	s := &sieve{patterns: make([]*pattern, n), under: make(map[string][]int, n/2)}
	often := make(map[string]int, n/2)
	for i := range s.patterns {
		p := phrasing(i)
		s.patterns[i] = p
		for e := range p.elems {
			for _, alt := range p.elems[e].alts {
				often[alt[0]]++
			}
		}
	}
	for n, p := range s.patterns {
		e := p.rarest(often)
		if e < 0 {
			s.wordless = append(s.wordless, n)
			continue
		}
		for _, alt := range p.elems[e].alts {
			if have := s.under[alt[0]]; len(have) == 0 || have[len(have)-1] != n {
				s.under[alt[0]] = append(have, n)
			}
		}
	}
	return s
}

// rarest is the element that p needs whose words are met least often, -1 where
// it needs none.
func (p *pattern) rarest(often map[string]int) int {
	best, least := -1, 0
	for e := range p.elems {
		if !p.elems[e].needed() {
			continue
		}
		n := 0
		for _, alt := range p.elems[e].alts {
			n += often[alt[0]]
		}
		if best < 0 || n < least {
			best, least = e, n
		}
	}
	return best
}

// needed: the element is made of words and may not be missing.
func (e *elem) needed() bool { return !e.optional && !e.gap && e.slot == "" }

// held yields each phrasing that the line holds, in the order of rules/.
func (s *sieve) held(l *Line) iter.Seq2[int, hit] {
	return func(yield func(int, hit) bool) {
		for w, word := range s.likely(l) {
			for ; word != 0; word &= word - 1 {
				n := w*64 + bits.TrailingZeros64(word)
				if h, ok := s.patterns[n].match(l); ok && !yield(n, h) {
					return
				}
			}
		}
	}
}

// likely is the places of the phrasings whose word the line holds, a bit each.
func (s *sieve) likely(l *Line) []uint64 {
	set := make([]uint64, len(s.patterns)/64+1)
	mark := func(places []int) {
		for _, n := range places {
			set[n/64] |= 1 << (n % 64)
		}
	}
	mark(s.wordless)
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.q == nil {
			mark(s.under[t.stem])
			continue
		}
		mark(s.under[t.text]) // a quantity stands for the words it was typed with
		mark(s.under[unitStem(t.q.Unit)])
	}
	return set
}
