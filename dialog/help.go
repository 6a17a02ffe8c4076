package dialog

import (
	"slices"
	"strings"

	"foldrow/rules"
)

// moment is where the talk stands, by the names that the cards of help use.
func (c *turn) moment() string {
	switch open := c.open(c.s); {
	case open == "keep":
		return "keep"
	case open != "":
		return "question"
	case c.s.Making.On:
		return "making"
	}
	return "plan"
}

// helpCards are those that fit the moment.
func (c *turn) helpCards() []rules.Card {
	var out []rules.Card
	for _, card := range c.book.Cards("help") {
		if when := card.List("when"); len(when) == 0 || slices.Contains(when, c.moment()) {
			out = append(out, card)
		}
	}
	return out
}

// onHelp names what can be said at this point.
func (c *turn) onHelp() (State, Reply) {
	lines := []string{"You can say things as you would to a person. At this point, for instance:", ""}
	if c.moment() == "question" {
		lines = append(lines, "- Answer: *"+c.example()+"*")
	}
	for _, card := range c.helpCards() {
		lines = append(lines, "- "+card.Fields["title"]+": *"+strings.Join(card.List("words"), "*, *")+"*")
	}
	return c.s, c.reply("help", strings.Join(lines, "\n"))
}

// Completions are what can be said at this point: now a few whole lines, for
// an empty one, and words for one that is begun: lines that make sense later,
// what the plan calls its inputs, the ribs, the techniques.
func (t *Talk) Completions(s State) (now, words []string) {
	c := t.at(s, "")
	switch open := c.open(s); open {
	case "garment":
		now = append(now, "cardigan", "pullover")
	case "rib":
		for _, r := range t.book.Ribs {
			now = append(now, r.Rib.String())
		}
	case "keep":
		now = append(now, "and with ")
	case "":
		now = append(now, "what if ", "why ", "compare ", "how do I ")
	default:
		now = append(now, c.example())
	}
	for _, card := range c.helpCards() {
		now = append(now, card.List("words")...)
	}
	now = append(now, "help")
	words = append(words, "what if ", "why ", "what is usual for the ", "how do I measure the ", "compare ", "why the ", "and with ", "open ")
	for _, card := range t.book.Cards("help") {
		words = append(words, card.List("words")...)
	}
	for _, r := range t.book.Ribs {
		words = append(words, r.Rib.String())
	}
	for _, k := range t.book.Keys {
		words = append(words, append(k.Words, k.Example)...)
	}
	for _, r := range t.book.Results {
		words = append(words, r.Words...)
	}
	for _, card := range t.book.Cards("howto") {
		words = append(words, card.List("words")[:1]...)
	}
	return now, words
}
