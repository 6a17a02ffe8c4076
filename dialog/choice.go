package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// choiceGood is what value v of k is good for and what more its card says; ""
// where k has no such values.
func (c *turn) choiceGood(k engine.Key, v string) string {
	card, ok := c.book.Key(k)
	good := card.ChoiceGood(v)
	if !ok || good == "" {
		return ""
	}
	return strings.TrimSpace(good + " " + c.voice().Fill(card.Texts[v], c.plan()))
}

// choiceNote says where the sentences on what a choice is good for come from.
func (c *turn) choiceNote(sides []answer.Side) string {
	if len(sides[len(sides)-1].Brings) == 0 {
		return ""
	}
	return "\n\nWhat each is good for is common practice; *why* with its name gives the sources."
}

// goodOf is the same for a choice that a line sets alone.
func (c *turn) goodOf(sets []listen.Set) string {
	if len(sets) != 1 {
		return ""
	}
	good := c.choiceGood(sets[0].Key, sets[0].Text)
	if good == "" {
		return ""
	}
	return good + c.heatCautions(sets[0].Key, withChoice(sets[0].Key, sets[0].Text))
}

// withChoice is no answers but that one.
func withChoice(k engine.Key, v string) engine.Inputs {
	in, _ := engine.Inputs{}.WithText(k, v)
	return in
}

// whyChoice answers "why cotton": whether the plan has it and by whom, what it
// is good for, what it brings along, what it settles, and where that is from.
func (c *turn) whyChoice(p *engine.Plan, k engine.Key, v string) (State, Reply) {
	card, _ := c.book.Key(k)
	label := card.ChoiceLabel(v)
	text := ""
	switch stands := p.In.Text(k); {
	case c.base().Text(k) == v:
		text = fmt.Sprintf("%s is **%s** because you told me.", title(card.Label), label)
	case stands == v:
		by := c.book.GivenBy(p.In, k)
		text = fmt.Sprintf("%s **%s** comes with what you told me (%s: %s), until you say otherwise.", title(card.Label), label, c.voice().Label(by), c.voice().Text(by, p.In.Text(by)))
	case stands == "" && c.assumedChoice(k, v):
		text = fmt.Sprintf("%s **%s** is assumed: you have not said otherwise.", title(card.Label), label)
	default:
		text = fmt.Sprintf("That is not in your plan; *what if %s* shows what it would change.", label)
	}
	text += " " + c.choiceGood(k, v)
	if b := c.brings(k, v); b != "" {
		text += "\n\nWith it I take, until you say otherwise: " + b + "."
	}
	if card.Why != "" {
		text += "\n\nWhat it settles: " + c.voice().Fill(card.Why, c.plan())
	}
	if s := c.voice().Sources(card.Source); s != "" {
		text += "\n\nSource: " + s + "."
	}
	text += c.heatCautions(k, withChoice(k, v))
	c.s.WhyKey, c.s.Topic = k, k
	c.answer(k, v)
	return c.s, c.reply("why", text)
}

// choiceStanding is the value of k in the plan, said or assumed, where k is a
// choice that is good for something; "" for any other key.
func (c *turn) choiceStanding(p *engine.Plan, k engine.Key) string {
	card, ok := c.book.Key(k)
	v := p.In.Text(k)
	if v == "" && c.assumedChoice(k, engine.BandLatched) {
		v = engine.BandLatched
	}
	if !ok || card.ChoiceGood(v) == "" {
		return ""
	}
	return v
}

// withAndWithout is none of k against what the plan has of it, or, where it
// has none, the three dial numbers that are published for a fold row.
func (c *turn) withAndWithout(k engine.Key) [][]listen.Set {
	in := c.filled(c.base())
	with := in.Num(k)
	if with.Sign() == 0 {
		with = in.Num(engine.ClicksPerNumber).Mul(engine.Int(3))
	}
	return [][]listen.Set{{{Key: k, Value: engine.Num{}, Near: 1}}, {{Key: k, Value: with, Near: 1}}}
}

// assumedChoice reports whether v is what the plan is made for where k was not
// said: only the kind of band has one.
func (c *turn) assumedChoice(k engine.Key, v string) bool {
	return k == engine.KeyBandKind && v == engine.BandLatched
}

// brings names what value v of k presupposes, with its figures.
func (c *turn) brings(k engine.Key, v string) string {
	full := c.book.Filled(withChoice(k, v))
	p := engine.Solve(full)
	var list []string
	for _, g := range presupposes(k) {
		if g != k && c.book.GivenBy(full, g) == k {
			list = append(list, c.voice().Label(g)+" "+c.voice().Value(p, g))
		}
	}
	return strings.Join(list, "; ")
}
