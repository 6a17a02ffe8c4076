package listen

import (
	"math"
	"slices"
	"strings"
	"sync"

	"foldrow/rules"
)

// shelf finds the card that a description is about: every card lists phrases
// a knitter would use, and a phrase counts by how many of its words the line
// holds, a rare word (ladder) weighing more than a common one (stitch).
//
// It is filled when it is first asked: most answers need none, and a start
// should not wait for it.
type shelf struct {
	cards   func() []rules.Card
	wary    bool              // a phrase of one word tells little of a line that says more
	plain   bool              // no word is slight: sentences of nothing else are told apart too
	same    map[string]string // stems that mean another here ("thread" is yarn)
	once    sync.Once
	phrases []phrase
	byStem  map[string][]int // stem -> phrases holding it
	weight  map[string]float64
	titles  map[string]string
	whole   map[string]bool // every word of the phrases, as written
}

type phrase struct {
	card  string
	stems []string
	total float64
	lone  bool // one word carries it: "jammed"
}

// found is a card with how well the line fits it: cover is the share of the
// phrase's weight that the line holds, mass that weight itself, and share how
// much of what the line says the phrase accounts for.
type found struct {
	card        string
	cover, mass float64
	share       float64
}

func newShelf(cards func() []rules.Card) *shelf {
	return &shelf{cards: cards, same: map[string]string{}}
}

// as is the stem that st stands for.
func (s *shelf) as(st string) string {
	if to, ok := s.same[st]; ok {
		return to
	}
	return st
}

// ready fills the shelf, once.
func (s *shelf) ready() *shelf {
	s.once.Do(s.fill)
	return s
}

func (s *shelf) fill() {
	cards := s.cards()
	s.byStem, s.weight = make(map[string][]int, 8*len(cards)), make(map[string]float64, 8*len(cards))
	s.titles, s.whole = map[string]string{}, make(map[string]bool, 10*len(cards))
	stems := newStems(8 * len(cards))
	inCards := make(map[string]int, 8*len(cards))
	for _, c := range cards {
		seen := map[string]bool{}
		for _, text := range append(c.List("words"), c.Fields["title"]) {
			p := phrase{card: c.ID}
			for _, st := range stems.of(text) {
				st = s.as(st)
				if slices.Contains(p.stems, st) {
					continue
				}
				p.stems = append(p.stems, st)
				seen[st] = true
			}
			for w := range strings.FieldsSeq(text) {
				s.whole[bare(w)] = true
			}
			if len(p.stems) > 0 {
				s.phrases = append(s.phrases, p)
			}
		}
		s.titles[c.ID] = c.Fields["title"]
		for st := range seen {
			inCards[st]++
		}
	}
	s.weigh(inCards, len(cards))
}

func (s *shelf) weigh(inCards map[string]int, cards int) {
	for st, n := range inCards {
		w := math.Log(1 + float64(cards)/float64(n))
		if slight(st) && !s.plain {
			w = 0.15
		}
		s.weight[st] = w
	}
	for i := range s.phrases {
		weighty := 0
		for _, st := range s.phrases[i].stems {
			s.phrases[i].total += s.weight[st]
			s.byStem[st] = append(s.byStem[st], i)
			if !slight(st) {
				weighty++
			}
		}
		s.phrases[i].lone = weighty == 1
	}
}

// loneCover is what is left of the cover of a phrase of one word in a line of
// many.
const loneCover = 0.85

// foreignWeight is what a word counts that no card of the shelf holds.
const foreignWeight = 1.5

// slight words tell little about which card is meant.
func slight(st string) bool {
	switch st {
	case "a", "the", "i", "my", "it", "be", "to", "of", "in", "on", "at", "and", "do", "have", "for", "with", "how", "what", "this", "that", "not", "can", "you", "me", "get", "should", "will", "when", "there", "so":
		return true
	}
	return false
}

// best finds the two cards that fit the line best.
func (s *shelf) best(l *Line) (first, second found) {
	for _, f := range l.fits {
		if f.shelf == s {
			return f.first, f.second
		}
	}
	for _, t := range l.tokens {
		if !(t.q != nil && t.text[0] >= '0' && t.text[0] <= '9' || slight(t.stem)) {
			first, second = s.bestOf(l.tokens)
			break
		}
	} // numbers and slight words tell of no card
	l.fits = append(l.fits, fit{s, first, second})
	return first, second
}

// bestOf is best for a part of a line.
func (s *shelf) bestOf(tokens []token) (first, second found) { return s.bestIn(tokens, nil) }

// bestIn is bestOf among the cards that may be meant; nil lets all.
func (s *shelf) bestIn(tokens []token, may func(card string) bool) (first, second found) {
	got, touched, said := s.ready().hear(tokens)
	for _, p := range touched {
		ph, w := &s.phrases[p], got[p]
		if may != nil && !may(ph.card) {
			continue
		}
		f := found{card: ph.card, cover: w / ph.total, mass: w, share: w / said}
		if ph.lone && s.wary && f.share < 0.5 {
			f.cover *= loneCover
		}
		switch {
		case f.card == first.card:
			if f.score() > first.score() {
				first = f
			}
		case better(f, first):
			first, second = f, first
		case f.card == second.card && f.score() > second.score(), f.card != second.card && better(f, second):
			second = f
		}
	}
	return first, second
}

// hear adds up what of each phrase the tokens hold: its weight by phrase, the
// phrases in the order they were met, and the weight of all that was said.
func (s *shelf) hear(tokens []token) (got []float64, touched []int, said float64) {
	got, touched = make([]float64, len(s.phrases)), make([]int, 0, 64)
	heard := make(map[string]bool, len(tokens))
	hear := func(st string, foreign float64) {
		st = s.as(st)
		if st == "" || heard[st] {
			return
		}
		heard[st] = true
		w, ok := s.weight[st]
		if !ok {
			w = foreign
		}
		said += w
		for _, p := range s.byStem[st] {
			if got[p] == 0 {
				touched = append(touched, p)
			}
			got[p] += w
		}
	}
	for i := range tokens {
		t := &tokens[i]
		switch {
		case t.needle != "": // a card speaks of L1 where any needle is meant
			hear("l1", 0)
		case t.q != nil && t.q.Words: // "two stitches" may be words of a phrase
			for w := range strings.FieldsSeq(t.text) {
				hear(stem(w), 0)
			}
		case t.q != nil:
			hear(t.text, 0)
		case (slight(t.stem) || askWord(t.text)) && s.plain:
			hear(t.stem, foreignWeight/3)
		case slight(t.stem) || askWord(t.text):
			hear(t.stem, 0)
		default:
			hear(t.stem, foreignWeight)
		}
	}
	return got, touched, said
}

// score prefers phrases that are wholly there, and among them weighty ones.
func (f found) score() float64 { return f.cover * f.cover * math.Sqrt(f.mass) }

// better orders by score, then by name, so that a tie is the same every time.
func better(f, g found) bool {
	if f.score() != g.score() {
		return f.score() > g.score()
	}
	return g.card == "" || f.card < g.card
}
