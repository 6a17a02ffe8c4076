package main

import "strings"

// completer offers the words that are valid now.
type completer struct {
	words func() []string
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
	fits := func(w string) bool { return plainASCII(w) && len(w) <= c.width()-2 }
	// The longest run of whole words before the cursor that begins an offer.
	for start := 0; start <= len(typed); start++ {
		if start > 0 && typed[start-1] != ' ' {
			continue
		}
		head := typed[start:]
		for _, w := range c.words() {
			if fits(w) && len(w) > len(head) && strings.EqualFold(w[:len(head)], head) {
				offers = append(offers, []rune(w[len(head):]))
			}
		}
		if len(offers) > 0 {
			return offers, len(head)
		}
	}
	return nil, 0
}
