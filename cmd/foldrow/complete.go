package main

import (
	"slices"
	"strings"

	"foldrow/dialog"
)

// completer offers what can be said now.
type completer struct {
	words func() dialog.Offers
	width func() int
}

// Do gives what can follow the first pos characters of line, and how many of
// those the offers begin with. It runs on the editor's goroutine, where a panic
// would leave the terminal raw, so a fault only means that nothing is offered.
//
// Words and what was typed must be plain ASCII and fit a row of the window: the
// library miscounts wider characters and divides by the number of words a row
// holds.
func (c completer) Do(line []rune, pos int) (offers [][]rune, length int) {
	defer func() {
		if recover() != nil {
			offers, length = nil, 0
		}
	}()
	typed := string(line[:pos])
	if !plainASCII(string(line)) {
		return nil, 0
	}
	o := c.words()
	if typed == "" {
		return c.offers(o.Now, ""), 0
	}
	// What fits the moment goes before what does not.
	for _, list := range [][]string{o.Fit, o.Lines, o.Parts} {
		if offers = c.offers(list, typed); len(offers) > 0 {
			return offers, len(typed)
		}
	}
	// The longest run of whole words before the cursor that begins a part of a line.
	for start := 1; start < len(typed); start++ {
		if typed[start-1] != ' ' {
			continue
		}
		if offers = c.offers(o.Parts, typed[start:]); len(offers) > 0 {
			return offers, len(typed) - start
		}
	}
	return nil, 0
}

// mostOffers are shown at once; more would be a list to read, not a help, and could
// push the answer above it off the window.
const mostOffers = 10

// offers are the ends of the first of those words that begin with head, each once, in
// the order of the alphabet.
func (c completer) offers(words []string, head string) [][]rune {
	var ends []string
	for _, w := range words {
		if plainASCII(w) && len(w) <= c.width()-2 && len(w) > len(head) && strings.EqualFold(w[:len(head)], head) && !slices.Contains(ends, w[len(head):]) {
			ends = append(ends, w[len(head):])
		}
	}
	ends = ends[:min(len(ends), mostOffers)]
	slices.Sort(ends)
	var out [][]rune
	for _, end := range ends {
		out = append(out, []rune(end))
	}
	return out
}
