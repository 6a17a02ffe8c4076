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

// Offers are what a line can be completed with. Lines that end in a space are
// beginnings.
type Offers struct {
	Now   []string // a few lines, for an empty one
	Fit   []string // lines that make sense at this point
	Lines []string // lines that make sense at another
	Parts []string // what may stand in the midst of a line: ribs, and what inputs and results are called
}

// Completions are what can be said at this point.
func (t *Talk) Completions(s State) Offers {
	c := t.at(s, "")
	var o Offers
	ribs := make([]string, 0, len(t.book.Ribs))
	for _, r := range t.book.Ribs {
		ribs = append(ribs, r.Rib.String())
	}
	switch open := c.open(s); open {
	case "garment":
		o.Now = append(o.Now, "cardigan", "pullover")
	case "rib":
		o.Now = append(o.Now, ribs...)
	case "keep":
		o.Now = append(o.Now, "and with ")
	case "":
		o.Now = append(o.Now, "what if ", "why ", "compare ", "how do I ")
	default:
		o.Now = append(o.Now, c.example())
	}
	o.Fit = append(o.Fit, o.Now...)
	for _, card := range c.helpCards() {
		if words := card.List("words"); len(words) > 0 && c.moment() != "plan" {
			o.Now = append(o.Now, words[0])
		}
		o.Fit = append(o.Fit, card.List("words")...)
	}
	o.Now, o.Fit = append(o.Now, "help"), append(o.Fit, "help")
	starts := []string{"what if ", "why ", "what is usual for the ", "how do I measure the ", "compare ", "why the ", "and with ", "open "}
	o.Lines = append(o.Lines, starts...)
	// What lies above the band; where nothing is planned there the answer says what
	// it needs.
	o.Lines = append(o.Lines, "show the yoke", "draw the yoke", "show the chart", "draw the chart")
	for _, card := range t.book.Cards("help") {
		o.Lines = append(o.Lines, card.List("words")...)
	}
	o.Parts = append(append(o.Parts, "cardigan", "pullover"), ribs...)
	for _, k := range t.book.Keys {
		o.Lines = append(o.Lines, k.Example)
		o.Parts = append(o.Parts, k.Label)
	}
	for _, r := range t.book.Results {
		o.Parts = append(o.Parts, r.Label)
	}
	for _, card := range t.book.Cards("howto") {
		o.Parts = append(o.Parts, card.List("words")[:1]...)
	}
	return o
}
