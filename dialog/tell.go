package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
	"foldrow/rules"
)

// onMeasure: how to measure the thing, what is usual, why it is asked.
func (c *turn) onMeasure() (State, Reply) {
	k := c.measured()
	card, ok := c.book.Key(k)
	if !ok { // nothing was named, or a result, which nobody measures
		return c.s, c.reply("measure", "Name what you want to know about: the gauge, the neck, the rib, the depth, the bed, the yarn. For example: *how do I measure the neck*.")
	}
	var text string
	switch c.m.Topic {
	case "usual":
		if text = c.usualFor(k); text == "" {
			text = c.judged()
		}
		text += c.inUnit(card.UsualText)
		if k != engine.Neck && k != engine.NeckBody || c.usualNeck() == "" {
			text += c.tableFor(k)
		}
	case "easiest":
		text = c.easiest(card)
	case "why-asked":
		text = c.inUnit(card.Why)
	case "choice":
		text = card.Texts[c.m.Name] + c.choiceCautions(k, c.m.Name)
	case "dont-know":
		text = c.measureText(card) + "\n\n" + c.usualFor(k) + c.inUnit(firstParagraph(card.UsualText))
	default:
		text = c.measureText(card)
	}
	c.s.Topic = k
	return c.s, c.reply(string(c.m.Kind), answer.Voice.Fill(c.voice(), text, c.plan()))
}

// judged says whether the values that a question brought will do; they are
// not set.
func (c *turn) judged() string {
	text := ""
	for _, s := range c.m.Sets {
		card, ok := c.book.Key(s.Key)
		if !ok || !card.HasSpan || s.Relative {
			continue
		}
		word := map[verdict]string{usual: "is usual for", unusual: "is possible but unusual for", impossible: "cannot be"}[c.judge(s.Key, s.Value)]
		text += fmt.Sprintf("%s %s the %s: mostly %s. ", c.exact(s.Key, s.Value, s.Unit), word, card.Label, c.span(s.Key, card.Usual))
	}
	if text == "" {
		return ""
	}
	return text + "Nothing is set by the question; say the value alone to take it.\n\n"
}

// measured is the thing measuring help is wanted for: what the line names, or
// the open question.
func (c *turn) measured() engine.Key {
	open := c.open(c.s)
	if len(c.m.Keys) > 0 {
		if k := c.m.Keys[0]; k != engine.RowGauge || open != "gauge" {
			return k
		}
		return engine.StitchGauge
	}
	if open != "" && open != "keep" {
		return questionKey(open)
	}
	return c.s.Topic
}

func firstParagraph(s string) string {
	p, _, _ := strings.Cut(s, "\n\n")
	return p
}

// tableFor is the published table that goes with a question about heads or
// necks, where the line says whose.
func (c *turn) tableFor(k engine.Key) string {
	if !c.m.Worn {
		return ""
	}
	b, v := c.book.Tables.Body(c.m.Whom), c.voice()
	one := func(what string, n, low, high engine.Num, source string) string {
		if n.Sign() == 0 {
			return ""
		}
		return fmt.Sprintf("\n\n%s: about **%s**%s, from %s.", what, v.Len(n.Float()), c.within(low, high), c.short(source))
	}
	switch k {
	case engine.Head:
		return one("The head of that wearer", b.Head, b.HeadLow, b.HeadHigh, b.HeadSource)
	case engine.Neck, engine.NeckBody, engine.NeckMid:
		return one("The neck of that wearer, halfway up", b.NeckMid, b.NeckLow, b.NeckHigh, b.NeckSource) +
			one("The base of the neck", b.NeckBase, engine.Num{}, engine.Num{}, b.BaseSource)
	}
	return ""
}

// onHowTo answers from the card of a technique, with this plan's numbers.
func (c *turn) onHowTo() (State, Reply) {
	card, ok := c.book.Card("howto", c.m.Card)
	if c.m.Topic == "caution" {
		if card, ok = c.book.Card("cautions", c.m.Card); ok {
			return c.s, c.reply("howto", "**Caution:** "+card.Text)
		}
	}
	if c.m.Topic == "term" {
		card, ok = c.book.Card("terms", c.m.Card)
	}
	if c.m.Topic == "rib" {
		return c.s, c.reply("howto", c.ribMeans(c.m.Choices[0][0].Rib))
	}
	if !ok {
		return c.onUnclear(listen.Problem{Code: "not-understood"})
	}
	text := c.cardText(card)
	if more, ok := c.book.Card("howto", card.Fields["more"]); ok {
		text += " More: *" + lower(more.Fields["title"]) + "*."
	}
	return c.s, c.reply("howto", text)
}

// ribMeans says what a rib's two numbers mean.
func (c *turn) ribMeans(rib engine.Rib) string {
	n := rib.Knit + rib.Purl
	text := fmt.Sprintf("**%s rib.** %s, then %s by turns, as the public side shows it: the first number is knit, the second purl. On one bed the purl ones are dropped and latched, %d of every %d.",
		rib, answer.Count(rib.Knit, "knit column", "knit columns"), answer.Count(rib.Purl, "purl column", "purl columns"), rib.Purl, n)
	if good := c.book.RibFactors(rib).GoodFor; good != "" {
		text += fmt.Sprintf(" Good for %s.", good)
	}
	if own := c.base().Rib; own.IsSet() && own != rib {
		text += fmt.Sprintf("\n\nYours is %s. *What if %s* compares them.", own, rib)
	}
	return text
}

// cardText is a card with its title, the plan's numbers filled in, and its
// cautions.
func (c *turn) cardText(card rules.Card) string {
	text := "**" + card.Fields["title"] + ".** " + c.voice().Fill(card.Text, c.plan())
	if s := card.Section("caution"); s != "" {
		text += "\n\n**Caution:** " + s
	}
	return text + c.fibreText(card) + c.cautionText(card)
}

// onShow shows a part of what stands.
func (c *turn) onShow() (State, Reply) {
	if c.m.Name != "" {
		c.s.Unit = c.m.Name // "show the plan in inches"
	}
	p, v := c.plan(), c.voice()
	if p.BandStitches == 0 && c.m.Topic != "answers" {
		return c.s, c.reply("show", c.soFar()+c.missing())
	}
	switch c.m.Topic {
	case "buttonholes", "front-edge":
		return c.showFronts(p)
	case "steps":
		return c.stepsDiffer()
	case "estimates":
		return c.s, c.reply("show", v.Estimates(p))
	case "answers":
		return c.s, c.reply("show", c.soFar())
	case "differences":
		if c.s.OnTable {
			return c.s, c.reply("show", c.differences())
		}
		return c.s, c.reply("show", "No what-if is on the table. Ask one: *what if I use 2x2*.")
	case "pieces":
		return c.s, c.reply("show", c.piecesText(p))
	case "needles":
		c.answered(p, engine.RibColumns, engine.HemNeedles)
		return c.s, c.reply("show", answer.Bed(p))
	case "tension":
		if t := v.Grading(p); t != "" {
			c.answered(p, engine.Tension)
			return c.s, c.reply("show", t)
		}
		return c.s, c.reply("show", c.notYet([]engine.Key{engine.Tension}))
	case "side":
		if t := v.Side(p); t != "" {
			return c.s, c.reply("show", t)
		}
		return c.s, c.reply("show", c.notYet([]engine.Key{engine.LeanDegrees}))
	case "rehang":
		text, _ := c.rehangPart(p)
		c.answered(p, engine.Rehang)
		return c.s, c.reply("show", text)
	}
	c.s.Topic = engine.BandStitches
	text := v.Plan(p, c.base())
	if c.moment() == "plan" && p.LayerRows > 0 {
		c.wantsHead()
		text += "\n\n" + c.whatNext()
	}
	return c.s, c.reply("show", text+c.missing())
}

// answered notes the results that a picture or a table shows.
func (c *turn) answered(p *engine.Plan, keys ...engine.Key) {
	for _, k := range keys {
		if v, ok := p.Value(k); ok {
			c.answer(k, v)
		}
	}
}

// soFar lists what was told and what is assumed.
func (c *turn) soFar() string {
	p, v := c.plan(), c.voice()
	var told []string
	for _, k := range engine.InputKeys() {
		s := v.Value(p, k)
		if s != "" && c.base().Has(k) && c.base().Same(p.In, k) {
			told = append(told, "- "+v.Label(k)+": "+s)
		}
	}
	text := "You have told me nothing yet."
	if len(told) > 0 {
		text = "You told me:\n\n" + strings.Join(told, "\n")
	}
	if assumed := v.Assumed(p, c.base()); assumed != "" && len(told) > 0 {
		text += "\n\n" + assumed
	}
	return text
}

// missing names the questions without an answer and what hangs on each; "" where
// none is left. It opens with a paragraph.
func (c *turn) missing() string {
	hangs := map[string]string{
		"garment": "the garment: whether the front bands are part of the neck",
		"gauge":   "the gauge: the stitches and the rows",
		"neck":    "the neck: the stitches",
		"rib":     "the rib: the count that closes, the columns to latch",
		"depth":   "the depth: the rows, the tension, the loops to latch, the yarn",
	}
	var open []string
	for _, q := range interview {
		if !answered(c.base(), q) {
			open = append(open, hangs[q])
		}
	}
	if len(open) == 0 {
		return ""
	}
	return "\n\n**Still missing:** " + strings.Join(open, "; ") + "."
}

// onOutside says plainly that the line is beyond the craft.
func (c *turn) onOutside() (State, Reply) {
	return c.s, c.reply("outside", "That is beyond me: I know neckbands on a knitting machine and nothing else. Ask about the plan, a technique, or something that went wrong; *help* lists examples.")
}

// onNotebook passes the wish on to whoever keeps the notebook, with a word
// that holds where there is none.
func (c *turn) onNotebook() (State, Reply) {
	c.order = Order{What: c.m.Topic, Name: c.m.Name, To: c.m.Name2}
	text := "Every line is kept as you say it; there is nothing to save by hand."
	switch c.m.Topic {
	case "leave":
		text = "Goodbye."
		if short := c.voice().Short(c.plan()); short != "" {
			text += " The plan: " + short + "."
		}
	case "save", "list", "open", "rename", "copy", "delete", "write", "page":
		text = ""
	}
	return c.s, c.reply("notebook", text)
}
