package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/listen"
	"foldrow/rules"
)

// onTrouble answers a mishap: first what to do now so that nothing more is
// lost, then the mend, then what it means for the plan. Where another trouble
// sounds alike, the question that tells them apart ends the reply, and the
// next line may answer it.
func (c *turn) onTrouble() (State, Reply) {
	if c.m.Topic == "dial" {
		if text := c.notForgotten(); text != "" {
			return c.s, c.reply("trouble", text)
		}
		c.m.Card, c.m.Other = c.slipCard(), ""
	}
	card, ok := c.book.Card("troubles", c.m.Card)
	if !ok {
		return c.onUnclear(listen.Problem{Code: "not-understood"})
	}
	other, alike := c.book.Card("troubles", c.m.Other)
	switch c.m.Topic {
	case "first":
		return c.s, c.reply("trouble", "The first, then: **"+lower(card.Fields["title"])+"**. What I said of it holds. "+
			c.voice().Fill(card.Section("now"), c.kept()))
	case "second":
		return c.s, c.reply("trouble", c.troubleText(other))
	case "which":
		c.s.Apart = [2]string{card.ID, other.ID}
		return c.s, c.reply("trouble", "I cannot tell which of the two that is. Say *the first* or *the second*.\n\n"+apartQuestion(card, other))
	}
	ask := ""
	if alike && c.open(c.s) == "" {
		c.s.Apart = [2]string{card.ID, other.ID}
		ask = "\n\n" + apartQuestion(card, other)
	}
	return c.s, c.reply("trouble", c.troubleText(card)+ask)
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

// troubleText is a trouble's card with this plan's numbers. The fabric is the
// kept plan's: a what-if is not knitted.
func (c *turn) troubleText(card rules.Card) string {
	c.about = &c.s.Said
	v, p := c.voice(), c.kept()
	parts := []string{"**" + card.Fields["title"] + ".**"}
	add := func(head, text string) {
		if text != "" {
			parts = append(parts, "**"+head+":** "+text)
		}
	}
	add("Now", v.Fill(card.Section("now"), p))
	add("Mend", v.Fill(card.Section("mend"), p))
	plan := v.Fill(card.Section("plan"), p)
	if p.BandStitches > 0 && p.LayerRows > 0 {
		if n := c.troubleNumbers(card.ID, c.atHand()); n != "" {
			plan = strings.TrimPrefix(plan+"\n\n"+n, "\n\n")
		}
	}
	add("The plan", plan)
	if where := c.whereText(); where != "" {
		parts = append(parts, "You are at: "+where+" *Repeat* shows it again.")
	}
	return strings.Join(parts, "\n\n") + c.cautionText(card)
}
