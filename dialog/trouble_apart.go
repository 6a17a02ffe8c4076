package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/listen"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// whichTrouble is the trouble that the line means, and the one it might mean
// as well: the zero card where there is none, or where the line or the step
// she is at has told them apart.
func (c *turn) whichTrouble(card rules.Card) (is, perhaps rules.Card) {
	if c.m.Topic == "sure" {
		return card, rules.Card{}
	}
	if stands, ok := c.book.Card("troubles", card.Fields["elsewhere"]); ok && c.s.Making.On && !c.atHome(card) {
		return stands, rules.Card{}
	}
	id := card.Fields["apart"]
	if c.m.Other != "" {
		id = c.m.Other
	}
	other, ok := c.book.Card("troubles", id)
	if !ok || other.ID == card.ID {
		return card, rules.Card{}
	}
	if both := len(card.List("at")) > 0 && len(other.List("at")) > 0; both && c.m.Other == "" {
		switch here, there := c.atHome(card), c.atHome(other); {
		case here && !there:
			return card, rules.Card{}
		case there && !here:
			return other, rules.Card{}
		}
	}
	switch tellApart(c.said, card, other) {
	case card.ID:
		return card, rules.Card{}
	case other.ID:
		if card.Fields["apart"] == other.ID {
			return other, rules.Card{}
		}
	}
	return card, other
}

// atHome reports whether a trouble belongs to the step she is at.
func (c *turn) atHome(card rules.Card) bool {
	for _, id := range card.List("at") {
		if c.s.Making.On && id == c.s.Making.Step {
			return true
		}
	}
	return false
}

// apartQuestion asks which of the two it is; the first half of the question
// speaks of card, the second of the other.
func apartQuestion(card, other rules.Card) string {
	q := card.Section("apart")
	if q == "" || card.Fields["apart"] != other.ID {
		q = fmt.Sprintf("Is it this, or rather: %s?", lower(other.Fields["title"]))
	}
	return "**To be sure:** " + q
}

// answerApart takes the line as the answer to the question that tells two
// troubles apart, where one is open. A line that means something else closes
// the question. ok is false where the line is still to be answered.
func (c *turn) answerApart() (s State, r Reply, ok bool) {
	pair := c.s.Apart
	if pair[0] == "" {
		return c.s, Reply{}, false
	}
	c.s.Apart = [2]string{}
	first, ok1 := c.book.Card("troubles", pair[0])
	second, ok2 := c.book.Card("troubles", pair[1])
	if !ok1 || !ok2 || !c.mayAnswer(pair) {
		return c.s, Reply{}, false
	}
	switch tellApart(c.said, first, second) {
	case first.ID:
		s, r = c.s, c.reply("trouble", "The first, then: **"+lower(first.Fields["title"])+"**. What I said of it holds. "+
			c.voice().Fill(first.Section("now"), c.kept()))
		return s, r, true
	case second.ID:
		s, r = c.s, c.reply("trouble", c.troubleText(second))
		return s, r, true
	}
	if c.m.Kind != listen.Unclear && c.m.Kind != listen.Outside {
		return c.s, Reply{}, false
	}
	c.s.Apart = pair
	s, r = c.s, c.reply("trouble", "I cannot tell which of the two that is. Say *the first* or *the second*.\n\n"+apartQuestion(first, second))
	return s, r, true
}

// mayAnswer reports whether the line can be an answer at all: an order, or
// another trouble, is not.
func (c *turn) mayAnswer(pair [2]string) bool {
	switch c.m.Kind {
	case listen.Unclear, listen.Outside, listen.Keep, listen.Drop, listen.Values, listen.WhatIf:
		return true
	case listen.Trouble:
		return c.m.Card == pair[0] || c.m.Card == pair[1] || len(words(c.said)) <= 3
	case listen.Step:
		return c.m.Move.What == "done" || c.m.Move.What == "row"
	}
	return false
}

// tellApart decides which of two troubles a line means: by "the first", yes
// or no; by a number where the cards say how many; else by the words that
// only one of them has. "" where it does not tell.
func tellApart(said string, first, second rules.Card) string {
	ws := words(said)
	has := map[string]bool{}
	for _, w := range ws {
		has[w] = true
	}
	if id := byOrder(has, len(ws), first.ID, second.ID); id != "" {
		return id
	}
	if id := byNumber(said, first, second); id != "" {
		return id
	}
	if id := byNumber(said, second, first); id != "" {
		return id
	}
	own1, own2 := apartWords(first, second)
	n1, n2 := 0, 0
	for w := range has {
		if own1[w] {
			n1++
		}
		if own2[w] {
			n2++
		}
	}
	switch {
	case n1 > n2:
		return first.ID
	case n2 > n1:
		return second.ID
	}
	return ""
}

func byOrder(has map[string]bool, n int, first, second string) string {
	if n > 4 {
		return ""
	}
	for _, w := range []string{"first", "former", "yes", "yeah", "yep", "y", "a", "1"} {
		if has[w] && (n == 1 || w == "first" || w == "former" || w == "yes") {
			return first
		}
	}
	for _, w := range []string{"second", "latter", "other", "no", "nope", "n", "b", "2"} {
		if has[w] && (n == 1 || w == "second" || w == "latter" || w == "other" || w == "no") {
			return second
		}
	}
	return ""
}

// byNumber holds a count in the line against the card's own limit: up to
// `apart-most` it is this trouble, above it the other.
func byNumber(said string, card, other rules.Card) string {
	limit, ok := engine.ParseNum(card.Fields["apart-most"])
	if !ok {
		return ""
	}
	low := strings.ToLower(said)
	for _, q := range quantity.Scan(low) {
		if q.Problem != "" || q.After || q.Ordinal {
			continue
		}
		over := false // "longer than three rows"
		for _, w := range []string{"longer", "more than", "over ", "above "} {
			over = over || strings.Contains(low[:q.Start], w) && !q.High.Less(limit)
		}
		if over || limit.Less(q.High) {
			return other.ID
		}
		return card.ID
	}
	return ""
}

// apartWords are the words of the question that belong to one half only, and
// the words of each card that the other does not have.
func apartWords(first, second rules.Card) (own1, own2 map[string]bool) {
	half1, half2, _ := strings.Cut(first.Section("apart"), ", or ")
	if first.Fields["apart"] != second.ID {
		half1, half2 = "", ""
	}
	all := func(c rules.Card, half string) map[string]bool {
		m := map[string]bool{}
		for _, w := range words(half + " " + c.Fields["title"] + " " + c.Fields["words"]) {
			m[w] = true
		}
		return m
	}
	m1, m2 := all(first, half1), all(second, half2)
	own1, own2 = map[string]bool{}, map[string]bool{}
	for w := range m1 {
		own1[w] = !m2[w] && !tellsNothing(w)
	}
	for w := range m2 {
		own2[w] = !m1[w] && !tellsNothing(w)
	}
	return own1, own2
}

// tellsNothing reports the words that tell no trouble from another.
func tellsNothing(w string) bool {
	switch w {
	case "the", "a", "an", "is", "it", "or", "i", "of", "to", "in", "on", "at", "my", "and", "did", "does", "do", "has", "have",
		"are", "you", "be", "that", "than", "not", "no", "one", "was", "with", "for", "by", "its", "only", "just", "will", "there",
		"what", "now", "some", "this", "so", "as", "from", "but":
		return true
	}
	return false
}

// words are the words of a line in their plain form: lower case, without the
// ending of a plural or a past.
func words(s string) []string {
	out := strings.FieldsFunc(strings.ToLower(s), func(r rune) bool { return notLetter(r) && (r < '0' || r > '9') })
	for i, w := range out {
		for _, end := range []string{"'s", "ing", "ed", "es", "s", "e"} {
			if t := strings.TrimSuffix(w, end); t != w && len(t) > 2 {
				w = t
				break
			}
		}
		out[i] = w
	}
	return out
}
