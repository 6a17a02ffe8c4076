package listen

import (
	"slices"
	"strings"
	"sync"

	"foldrow/engine"
	"foldrow/rules"
)

// Lexicon is everything the listener knows, compiled once from rules/. It
// does not change afterwards and may be shared.
type Lexicon struct {
	cues  []cue
	cued  *sieve // of cues
	sets  []setting
	set   *sieve             // of sets
	names map[string][]*name // first stem -> what it may begin to name
	// rewritings are found by the stem they begin with
	rewritings []rewriting
	rewriteAt  map[string][]int
	howto      *shelf
	trouble    *shelf
	steps      *shelf
	frontSteps *shelf // the steps of the front bands, found only where the line says so
	caution    *shelf
	result     *shelf // the names of the results, found by their words in any order
	says       *shelf // whole sentences, with their cards
	sayings    map[string]rules.Card
	known      map[string]bool // stems that are never misspelt
	whole      map[string]bool // whole words that are not
	craft      map[string]bool // stems of the craft
	everyday   map[string]bool // words that tell of no craft, whole
	words      []string        // craft words, whole, for spelling
	stems      *stems          // of the words of rules/, while they are compiled
	// spell is made when the first unknown word is met: most lines have none,
	// and a start should not wait for it.
	spell func() *speller
	// rare offers the words of the cards, where no word of the phrasings is near.
	rare   func() *speller
	shorts map[string]string // abbreviations, written in full before anything else
	slips  map[string]string // slips of the finger that make another word
	terms  terms
	spans  map[engine.Key]rules.KeyCard
	labels []rules.KeyCard // the numbers whose names are of three words or more
	// senses are words by what they tell beside others, stepCards the steps in
	// the order of work.
	senses    map[string]map[string]bool
	typed     map[string]map[string]bool // the same words as they are written
	stepCards []stepCard
	book      *rules.Book
}

// cue is one phrasing of something a line can do.
type cue struct {
	*pattern
	kind  Kind
	topic string
	card  string
}

// setting is a phrasing that gives a value to a key.
type setting struct {
	*pattern
	key   engine.Key
	fixed engine.Num
	isFix bool
	times bool // fixed multiplies what stands
}

// name is a phrase that names something.
type name struct {
	stems []string
	mention
}

// NewLexicon compiles the words and phrasings of the book. An error names the
// phrasing that does not compile.
func NewLexicon(book *rules.Book) (*Lexicon, error) {
	x := &Lexicon{ // with room for about as much as rules/ holds
		book: book, stems: newStems(3000), spans: map[engine.Key]rules.KeyCard{},
		senses: map[string]map[string]bool{}, typed: map[string]map[string]bool{}, slips: map[string]string{}, shorts: map[string]string{},
		known: make(map[string]bool, 1700), whole: make(map[string]bool, 1700), craft: make(map[string]bool, 700), everyday: make(map[string]bool, 512),
		names: make(map[string][]*name, 400), rewriteAt: make(map[string][]int, 200),
		cues: make([]cue, 0, 1500), sets: make([]setting, 0, 500), words: make([]string, 0, 4000),
	}
	for file, s := range map[string]**shelf{"howto": &x.howto, "troubles": &x.trouble, "cautions": &x.caution, "results": &x.result} {
		*s = newShelf(func() []rules.Card { return book.Cards(file) })
	}
	x.trouble.wary = true
	band, front := stepsApart(book.Cards("steps"))
	x.steps = newShelf(func() []rules.Card { return band })
	x.frontSteps = newShelf(func() []rules.Card { return front })
	if err := x.addPhrases(slices.Concat(book.Cards("phrases"), book.Cards("parts"), book.Cards("machine"))); err != nil {
		return nil, err
	}
	x.addNames()
	for _, c := range book.Cards("words") {
		if c.Fields["kind"] != "rewrite" {
			x.addWords(c)
		} else if err := x.addRewritings(c); err != nil {
			return nil, err
		}
	}
	for _, c := range book.Cards("steps") {
		x.stepCards = append(x.stepCards, stepCard{c.ID, c.Fields["needles"], c.Fields["kin"], c.Fields["rows"] != "", c.Fields["counts"] != "", x.learnAll(c.List("named"))})
	}
	x.addSentences(book.Cards("sentences"))
	x.learnTerms()
	x.order()
	return x, nil
}

// addNames learns by which words the inputs, their choices, the results and the
// ribs are named.
func (x *Lexicon) addNames() {
	for _, k := range x.book.Keys {
		x.spans[k.Key] = k
		if engine.IsNumber(k.Key) && strings.Count(k.Label, " ") >= 2 {
			x.labels = append(x.labels, k)
		}
		for _, w := range k.Words {
			x.addName(w, mention{key: k.Key})
		}
		for _, ch := range k.Choices {
			for _, w := range ch.Words {
				x.addName(w, mention{key: k.Key, text: ch.Value})
				if short := strings.ReplaceAll(w, " the ", " "); short != w {
					x.addName(short, mention{key: k.Key, text: ch.Value}) // "join at centre"
				}
			}
			for _, w := range ch.Beside {
				x.addName(w, mention{key: k.Key, text: ch.Value, beside: true})
			}
		}
	}
	for _, r := range x.book.Results {
		for _, w := range r.Words {
			x.addName(w, mention{key: r.Key, result: true})
		}
	}
	for _, r := range x.book.Ribs {
		for _, w := range r.Words {
			x.addName(w, mention{rib: r.Rib, key: engine.KeyRib})
		}
	}
}

// order lays out what was learnt for looking up: the longest names first,
// the sieves, and the spellers for the day they are needed.
func (x *Lexicon) order() {
	for _, names := range x.names {
		slices.SortStableFunc(names, func(a, b *name) int { return len(b.stems) - len(a.stems) })
	}
	for _, stems := range x.stems.words {
		for _, st := range stems {
			x.known[st] = true
		}
	}
	x.cued = newSieve(len(x.cues), func(n int) *pattern { return x.cues[n].pattern })
	x.set = newSieve(len(x.sets), func(n int) *pattern { return x.sets[n].pattern })
	x.stems = nil
	x.spell = sync.OnceValue(func() *speller { return newSpeller(x.words) })
	x.rare = sync.OnceValue(func() *speller { return newSpeller(x.cardWords()) })
}

// knows reports whether a word needs no correction: it stands in rules/ as it
// is, or in another of its forms.
func (x *Lexicon) knows(t token) bool {
	form := t.stem != t.text
	if x.whole[t.text] || form && x.known[t.stem] {
		return true
	}
	for _, s := range []*shelf{x.howto, x.trouble, x.steps, x.frontSteps, x.caution, x.says} {
		if _, ok := s.ready().weight[t.stem]; s.whole[t.text] || form && ok {
			return true
		}
	}
	return false
}

func (x *Lexicon) addPhrases(cards []rules.Card) error {
	for _, c := range cards {
		kind := Kind(c.Fields["kind"])
		for _, text := range c.List("says") {
			p, err := x.stems.compile(text)
			if err != nil {
				return err
			}
			x.offer(text)
			if kind == "set" {
				x.sets = append(x.sets, setting{pattern: p, key: engine.Key(c.Fields["key"])})
				x.learn(p)
				continue
			}
			x.cues = append(x.cues, cue{pattern: p, kind: kind, topic: c.Fields["topic"], card: c.ID})
		}
		for _, text := range c.List("fixed") {
			left, right, _ := strings.Cut(text, "=")
			x.offer(left)
			p, err := x.stems.compile(left)
			right, times := strings.CutPrefix(strings.TrimSpace(right), "*")
			v, ok := engine.ParseNum(right)
			switch {
			case err != nil:
				return err
			case !ok && kind == "set" && c.Fields["key"] != string(engine.KeyGarment):
				return &PatternError{text, "no number after ="}
			}
			if c.Fields["key"] == string(engine.KeyGarment) {
				continue
			}
			x.sets = append(x.sets, setting{pattern: p, key: engine.Key(c.Fields["key"]), fixed: v, isFix: true, times: times})
			x.learn(p)
		}
	}
	return nil
}
