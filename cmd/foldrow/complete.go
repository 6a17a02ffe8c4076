package main

import (
	"slices"
	"strings"
)

// completer offers the words that are valid now.
type completer struct {
	words func() (now, words []string) // whole lines for an empty one; all else
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
	now, words := c.words()
	if typed == "" {
		return c.offers(now, ""), 0
	}
	// The longest run of whole words before the cursor that begins an offer.
	for start := 0; start < len(typed); start++ {
		if start > 0 && typed[start-1] != ' ' {
			continue
		}
		head := typed[start:]
		for _, list := range [][]string{now, words} { // what fits the moment goes before
			if offers = c.offers(list, head); len(offers) > 0 {
				return offers, len(head)
			}
		}
	}
	return nil, 0
}

// mostOffers are shown at once; more would be a list to read, not a help.
const mostOffers = 40

// offers are the ends of the words that begin with head, each once.
func (c completer) offers(words []string, head string) [][]rune {
	var ends []string
	for _, w := range words {
		if plainASCII(w) && len(w) <= c.width()-2 && len(w) > len(head) && strings.EqualFold(w[:len(head)], head) && !slices.Contains(ends, w[len(head):]) {
			ends = append(ends, w[len(head):])
		}
	}
	slices.Sort(ends)
	var out [][]rune
	for _, end := range ends[:min(len(ends), mostOffers)] {
		out = append(out, []rune(end))
	}
	return out
}
