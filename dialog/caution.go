package dialog

import (
	"strings"

	"foldrow/rules"
)

// inMind is for how many turns a caution that was said in full is only named
// when it comes up again: what is repeated under every answer is read by nobody.
const inMind = 12

// Warned is a caution that was said in full, and in which turn.
type Warned struct {
	Card string `json:"card"`
	Turn int    `json:"turn"`
}

// caution is the text of a card of rules/cautions.md, nil where it is not
// there.
func (c *turn) caution(id string) []string {
	if card, ok := c.book.Card("cautions", id); ok {
		return []string{card.Text}
	}
	return nil
}

// cautionText is the cautions that a card names: in full, or by their titles
// where they were said a short while ago.
func (c *turn) cautionText(card rules.Card) string {
	text := ""
	var again []string
	for _, id := range card.List("caution") {
		k, ok := c.book.Card("cautions", id)
		switch {
		case !ok || id == "baby-neck" && c.forGrownUp():
		case c.remembered(id):
			again = append(again, lower(k.Fields["title"]))
			c.named = append(c.named, k.Text)
		default:
			text += "\n\n**Caution:** " + k.Text
			c.warned = append(c.warned, Warned{id, c.s.Turn})
		}
	}
	if len(again) > 0 {
		text += "\n\n**Caution**, as before: " + strings.Join(again, "; ") + "."
	}
	return text
}

// remembered reports whether the caution was said in full not long ago.
func (c *turn) remembered(id string) bool {
	for _, w := range c.s.Warned {
		if w.Card == id && c.s.Turn-w.Turn <= inMind {
			return true
		}
	}
	return false
}

// forGrownUp: the wearer was told and is no child.
func (c *turn) forGrownUp() bool {
	w, _, ok := c.body(c.base())
	return ok && w.Adult
}

// withWarned is s with the cautions that this turn said in full, those that are
// forgotten left out.
func (c *turn) withWarned(s State) State {
	if len(c.warned) == 0 {
		return s
	}
	var list []Warned
	for _, w := range s.Warned {
		if s.Turn-w.Turn <= inMind {
			list = append(list, w)
		}
	}
	s.Warned = append(list, c.warned...)
	return s
}

// cautionsIn are the cautions that stand in a text, as the answers write them: a
// paragraph, or a line of a list, that begins with the word.
func cautionsIn(text string) []string {
	var list []string
	for line := range strings.Lines(text) {
		line = strings.TrimPrefix(strings.TrimSpace(line), "- ")
		if s, ok := strings.CutPrefix(line, "**Caution:** "); ok {
			list = append(list, s)
		} else if s, ok := strings.CutPrefix(line, "Caution: "); ok {
			list = append(list, title(s))
		}
	}
	return list
}

// cautions is everything a reply warns of, each once: what the plan itself wants
// watched, what the text shows, and what it only names.
func (c *turn) cautions(plan []string, text string) []string {
	list := plan
	for _, more := range [][]string{cautionsIn(text), c.named, c.more} {
		for _, s := range more {
			if !listed(list, s) {
				list = append(list, s)
			}
		}
	}
	return list
}
