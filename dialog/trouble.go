package dialog

import (
	"strings"

	"foldrow/dialog/listen"
	"foldrow/rules"
)

// onTrouble answers a mishap: first what to do now so that nothing more is
// lost, then the mend, then what it means for the plan. Where another trouble
// sounds alike, the question that tells them apart ends the reply.
func (c *turn) onTrouble() (State, Reply) {
	card, ok := c.book.Card("troubles", c.m.Card)
	if !ok {
		return c.onUnclear(listen.Problem{Code: "not-understood"})
	}
	card, other := c.whichTrouble(card)
	c.s.Apart = [2]string{}
	ask := ""
	if other.ID != "" && c.open(c.s) == "" {
		c.s.Apart = [2]string{card.ID, other.ID}
		ask = "\n\n" + apartQuestion(card, other)
	}
	return c.s, c.reply("trouble", c.troubleText(card)+ask)
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
		if n := c.troubleNumbers(card.ID, p); n != "" {
			plan = strings.TrimPrefix(plan+"\n\n"+n, "\n\n")
		}
	}
	add("The plan", plan)
	if where := c.whereText(); where != "" {
		parts = append(parts, "You are at: "+where+" *Repeat* shows it again.")
	}
	return strings.Join(parts, "\n\n") + c.cautionText(card)
}
