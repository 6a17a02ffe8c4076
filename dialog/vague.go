package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// onVague answers a change wished without an amount: what the next steps
// would come to, and the question how much. Nothing is set.
func (c *turn) onVague() (State, Reply) {
	p, ask := c.plan(), c.m.Vague
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return c.onUnclear(listen.Problem{Code: "not-understood"})
	}
	var text string
	if ask.Key == engine.Depth {
		text = c.deeperBy(p, ask)
	} else {
		text = c.widerBy(p, ask)
	}
	if ask.Key != engine.BandStitches {
		c.s.Amount = ask
	}
	return c.s, c.reply("unclear", text)
}

// deeperBy says what a row or two a layer do.
func (c *turn) deeperBy(p *engine.Plan, ask listen.Ask) string {
	word := "deeper"
	if ask.Sign < 0 {
		word = "shallower"
	}
	text := fmt.Sprintf("How much %s? The band is %s deep with %s a layer", word, c.voice().Len(p.DepthResult.Float()), answer.Count(p.LayerRows, "row", "rows"))
	for n := 1; n <= 2; n++ {
		rows := p.LayerRows + n*ask.Sign
		if other := c.withRows(p, rows); rows >= 2 && other.LayerRows == rows {
			text += fmt.Sprintf("; %d give %s", rows, c.voice().Len(other.DepthResult.Float()))
		}
	}
	return text + ". " + c.sayAmount(word)
}

func (c *turn) withRows(p *engine.Plan, rows int) *engine.Plan {
	return engine.Solve(p.In.Without(engine.Depth).With(engine.DepthRows, engine.Int(int64(rows))))
}

// widerBy says what the next counts that close give.
func (c *turn) widerBy(p *engine.Plan, ask listen.Ask) string {
	word, next := "bigger", p.Larger
	if ask.Sign < 0 {
		word, next = "smaller", p.Smaller
	}
	text := fmt.Sprintf("How much %s? The band's %d stitches give a neck of %s", word, p.BandStitches, c.voice().Len(p.NeckResult.Float()))
	for n := 0; n < 2 && next.Stitches > 0; n++ {
		text += fmt.Sprintf("; %d give %s", next.Stitches, c.voice().Len(next.Neck.Float()))
		after := engine.Solve(p.In.Without(engine.NeckBody).With(engine.Neck, next.Neck))
		if next = after.Larger; ask.Sign < 0 {
			next = after.Smaller
		}
	}
	if ask.Key == engine.BandStitches {
		first := p.Larger
		if ask.Sign < 0 {
			first = p.Smaller
		}
		say := c.easy(first.Neck, engine.Frac(1, 2), engine.Frac(1, 4))
		return text + fmt.Sprintf(". Say the neck you want, for example *neck %s*.", c.voice().Exact(say, c.voice().Unit))
	}
	return text + ". " + c.sayAmount(word)
}

func (c *turn) sayAmount(word string) string {
	amount := "1 cm"
	if c.voice().Unit == "in" {
		amount = "1/2 in"
	}
	return fmt.Sprintf("Say how much, for example *%s*, or *%s %s*.", amount, amount, word)
}

// onChat answers a greeting, thanks or a nod in a few words.
func (c *turn) onChat() (State, Reply) {
	next := "Say *start knitting* when you sit at the machine, or ask *what if*."
	switch q := c.open(c.s); {
	case c.s.Making.On && q == "":
		next = "Say *next* to go on, or *where am I*."
	case q == "keep":
		next = "The what-if is still on the table."
	case q != "":
		next = ""
	}
	text := map[string]string{"hello": "Good day.", "thanks": "You are welcome.", "fine": "Good."}[c.m.Topic]
	if next != "" {
		text += " " + next
	}
	return c.s, c.reply("help", text)
}
