package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// showFronts shows where the buttons go, with the picture, or how the front
// edge is picked up.
func (c *turn) showFronts(p *engine.Plan) (State, Reply) {
	k := engine.HolePositions
	if c.m.Topic == "front-edge" {
		k = engine.FrontStitches
	}
	if s := c.frontText(p, []engine.Key{k}); s != "" {
		c.s.Topic = k
		return c.s, c.reply("show", s)
	}
	return c.s, c.reply("show", c.frontNotYet(k))
}

// largestButton answers how big a button the front band's width carries, by
// both published rules for the overlap.
func (c *turn) largestButton() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	full := c.filled(a.in.With(engine.Button, engine.Int(10)))
	wide, ok := full.Num(engine.FrontBand), full.Has(engine.FrontBand)
	card, _ := c.book.Key(engine.Button)
	most := map[engine.Key]engine.Num{}
	for mm := card.Possible[0].Ceil(); mm <= card.Possible[1].Floor(); mm++ {
		d := engine.Int(int64(mm))
		p := c.solve(a.in.With(engine.Button, d))
		for _, k := range []engine.Key{engine.OverlapLow, engine.OverlapHigh} {
			if f, has := p.Float(k); has && f <= wide.Float()+1e-9 {
				most[k] = d
			}
		}
	}
	low, fits := most[engine.OverlapLow]
	if !ok || !fits {
		return c.s, c.reply("backwards", "No usual button fits a band so narrow. Tell me the width: *front bands 3 cm*.")
	}
	v := c.voice()
	text := fmt.Sprintf("A front band of %s carries a button of up to **%s**, by the rule that asks for an overlap of the button's width.", v.Len(wide.Float()), v.Figure(engine.Button, low.Float()))
	if high, has := most[engine.OverlapHigh]; has {
		c.answer(engine.Button, []int{high.Floor(), low.Floor()})
		text += fmt.Sprintf(" By the wider rule, which adds half an inch, up to **%s**.", v.Figure(engine.Button, high.Float()))
	} else {
		c.answer(engine.Button, low.Floor())
	}
	return c.s, c.reply("backwards", text+" Sources differ, and the rules are for woven cloth. The plan is not changed; say *20 mm buttons* to set yours.")
}

// whyRatio answers "why 3 of 4": the ratio of the plan where that is it, the
// rules of thumb where it is not.
func (c *turn) whyRatio(p *engine.Plan) (State, Reply) {
	said := c.m.Name
	ratio, front := p.Value(engine.FrontRatio)
	if front && ratio == said || !front && p.PickTotal > 0 {
		k := engine.FrontRatio
		if !front {
			k = engine.PickRatio
		}
		c.m.Topic, c.m.Keys = "", []engine.Key{k}
		return c.onWhy()
	}
	text := fmt.Sprintf("%s is a rule of thumb; nothing in your plan rests on it.", said)
	if front {
		c.answersOf(p, engine.FrontRatio)
		text = fmt.Sprintf("The ratio in your plan is **%s**, not %s. Ask *why the ratio*.", ratio, said)
	}
	if card, ok := c.book.Card("howto", "pick-up"); ok {
		text += "\n\n" + c.cardText(card)
	}
	return c.s, c.reply("why", text)
}

// oneHole tells the one hole that was asked about; ok is false where all are
// meant, or none are laid.
func (c *turn) oneHole(p *engine.Plan) (string, bool) {
	if c.m.Part == "" || !hasKey(c.m.Keys, engine.HolePositions) || !p.Front.HasHoles() {
		return "", false
	}
	list, i := answer.HoleList(p), 0
	switch {
	case c.m.Part == "last":
		i = len(list) - 1
	case c.m.Part == "nth" && c.m.HasFig:
		i = c.m.Figure.Floor() - 1
	}
	if i < 0 || i >= len(list) {
		return fmt.Sprintf("There are %d buttonholes; number %d is none of them.", len(list), i+1), true
	}
	c.answer(engine.HolePositions, []int{p.Front.Holes.First[i] + 1})
	c.also("buttons-children")
	return fmt.Sprintf("Buttonhole %d of %d, from the lower end: **%s**. %s", i+1, len(list), list[i], answer.HoleSide(p.Front)), true
}
