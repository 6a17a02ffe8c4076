package rules

import (
	"strings"

	"foldrow/engine"
)

// needed are the files without which there is no book.
var needed = []string{"keys", "results", "ribs", "sources"}

// named are the files whose words name one thing each.
var named = []string{"keys", "results", "ribs", "terms"}

// filled are the files whose texts may hold {key}.
var filled = []string{"keys", "results", "howto", "steps", "troubles", "cautions", "terms"}

// check looks at what the files say about each other. names are the files
// that were found.
func (b *Book) check(names []string, bad *faults) {
	for _, file := range needed {
		if len(b.cards[file]) == 0 {
			bad.add(Error{File: file + ".md", Problem: BadFile, Detail: "absent or without cards"})
		}
	}
	for _, name := range names {
		b.checkSources(strings.TrimSuffix(name, ".md"), bad)
	}
	for _, file := range named {
		checkWords(b.cards[file], bad)
	}
	for _, file := range filled {
		b.checkPlaces(file, bad)
	}
	for _, c := range b.cards["sentences"] {
		if id := c.Fields["card"]; id != "" {
			file := "howto"
			if c.Fields["kind"] == "trouble" {
				file = "troubles"
			}
			if _, ok := b.Card(file, id); !ok {
				bad.card(c, MissingCard, id)
			}
		}
	}
}

func (b *Book) checkSources(file string, bad *faults) {
	for _, c := range b.cards[file] {
		for field := range c.Fields {
			if field != "source" && !strings.HasPrefix(field, "source-") {
				continue
			}
			for _, id := range c.List(field) {
				if _, ok := b.Source(id); !ok {
					bad.card(c, UnknownSource, id)
				}
			}
		}
	}
}

// checkWords wants one meaning for a word within a file, in the form in which
// words are looked up: lower-case letters, digits, apostrophes, single spaces.
func checkWords(cards []Card, bad *faults) {
	owner := make(map[string]string, 16*len(cards))
	for _, c := range cards {
		for _, w := range c.List("words") {
			if !isWord(w) {
				bad.card(c, BadWord, w)
			}
			if other, taken := owner[w]; taken {
				bad.card(c, DuplicateWord, w+" (also "+other+")")
			}
			owner[w] = c.ID
		}
	}
}

func isWord(s string) bool {
	if s == "" || strings.TrimSpace(s) != s || strings.Contains(s, "  ") {
		return false
	}
	for _, r := range s {
		plain := r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == ' ' || r == '\''
		if !plain {
			return false
		}
	}
	return true
}

// How a {key} may be asked for. Bare is a circumference without what a
// cardigan's front bands add to it, closed the same with it, only where they
// do.
const (
	BarePlace   = "bare:"
	ClosedPlace = "closed:"
)

// PlaceKey is the key in a {key}, without the way it is asked for.
func PlaceKey(name string) string {
	return strings.TrimPrefix(strings.TrimPrefix(name, BarePlace), ClosedPlace)
}

// checkPlaces wants every {key} in a file's texts to be an input or a result.
func (b *Book) checkPlaces(file string, bad *faults) {
	for _, c := range b.cards[file] {
		b.checkText(c, c.Text, bad)
		for _, text := range c.Sections {
			b.checkText(c, text, bad)
		}
	}
}

func (b *Book) checkText(c Card, text string, bad *faults) {
	for {
		_, rest, found := strings.Cut(text, "{")
		if !found {
			return
		}
		key, after, closed := strings.Cut(rest, "}")
		if !closed {
			bad.card(c, BadCard, "{ without }")
			return
		}
		key = PlaceKey(key)
		_, input := b.byKey[engine.Key(key)]
		_, result := b.byResult[engine.Key(key)]
		if !input && !result {
			bad.card(c, UnknownKey, "{"+key+"}")
		}
		text = after
	}
}
