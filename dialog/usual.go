package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
	"foldrow/rules"
)

// What is usual for the one it is for goes before what is usual in general.

// childMonths is the age up to which a child's band is taken: the common
// practice for children's bands gives no age, so this limit is ours.
const childMonths = 12 * 12

// person is whom a question is about: named in it, or named before.
func (c *turn) person() (engine.Inputs, bool) {
	in := c.base()
	if c.m.Worn {
		if named, ok := in.WithText(engine.KeyWearer, c.m.Whom.String()); ok {
			in = named
		}
	}
	_, ok := engine.ParseWhom(in.Text(engine.KeyWearer))
	return c.filled(in), ok
}

// child reports whether it is for a child, who gets a child's depth.
func (c *turn) child() bool {
	in, ok := c.person()
	w, _ := engine.ParseWhom(in.Text(engine.KeyWearer))
	return ok && !w.Adult && w.Months <= childMonths
}

// usualFor is what is usual of k for whom it is, "" where that is not known,
// with what a value said is beside it.
func (c *turn) usualFor(k engine.Key) string {
	switch k {
	case engine.Neck, engine.NeckBody:
		return c.usualNeck()
	case engine.Depth:
		if !c.child() {
			return ""
		}
		v := c.voice()
		return fmt.Sprintf("For a child **%s to %s** is common practice; *%s* is a good choice.\n\n", v.Len(1.5), v.Len(2), c.childDepth())
	}
	return ""
}

// childDepth is the depth that Enter takes for a child: the upper end of the
// common practice.
func (c *turn) childDepth() string {
	if c.s.Unit == "in" {
		return "3/4 in"
	}
	return "2 cm"
}

// usualNeck is the neck that the tables make for whom it is, and how the neck
// said lies to it.
func (c *turn) usualNeck() string {
	in, ok := c.person()
	if !ok || in.Num(engine.NeckMid).Sign() <= 0 {
		return ""
	}
	v := c.voice()
	base := in.Num(engine.NeckMid).Mul(in.Num(engine.NeckFactor))
	ease := in.Num(engine.Ease)
	neck := base.Add(ease)
	who := v.Value(engine.Solve(in), engine.KeyWearer)
	w, _ := engine.ParseWhom(in.Text(engine.KeyWearer))
	b := c.book.Tables.Body(w)
	text := fmt.Sprintf("For %s the tables make a neck of about **%s**", who, v.Len(neck.Float()))
	if b.NeckLow.Sign() > 0 {
		f := in.Num(engine.NeckFactor)
		text += fmt.Sprintf(", mostly %s to %s", v.Len(b.NeckLow.Mul(f).Add(ease).Float()), v.Len(b.NeckHigh.Mul(f).Add(ease).Float()))
	}
	how := ""
	if b.NeckBase.Sign() == 0 {
		how = fmt.Sprintf(" (%s times the %s halfway up)", v.Figure(engine.NeckFactor, in.Num(engine.NeckFactor).Float()), v.Len(b.NeckMid.Float()))
	}
	text += fmt.Sprintf(": the base of the neck, %s%s, and %s ease (%s).", v.Len(base.Float()), how, v.Len(ease.Float()), c.short(b.NeckSource))
	for _, s := range c.m.Sets {
		if s.Key == engine.Neck && !s.Relative {
			text += " " + c.besideReckoned(s.Value, neck, b.NeckLow.Mul(in.Num(engine.NeckFactor)).Add(ease), b.NeckHigh.Mul(in.Num(engine.NeckFactor)).Add(ease))
			return text + " Nothing is set by the question.\n\n"
		}
	}
	return text + "\n\n"
}

// besideReckoned says how a neck lies to the one reckoned and to the span of most
// necks of that wearer; low and high are alike where no span is published.
func (c *turn) besideReckoned(said, neck, low, high engine.Num) string {
	v, off := c.voice(), said.Sub(neck)
	word := "more"
	if off.Sign() < 0 {
		word = "less"
	}
	verdict := "that is within the usual"
	switch {
	case !low.Less(high) && off.Abs().Less(engine.Int(3)), low.Less(high) && !said.Less(low) && !high.Less(said):
	case off.Sign() > 0:
		verdict = "that is wide for this wearer: the band stands off the neck"
	default:
		verdict = "that is close for this wearer: try the join on before the yarn is cut"
	}
	return fmt.Sprintf("%s is %s %s than reckoned; %s.", v.Len(said.Float()), v.Len(off.Abs().Float()), word, verdict)
}

// widthTaken says how a neck just taken lies to the one that was reckoned for
// the wearer, where they are far apart; "" else. It opens with a paragraph.
func (c *turn) widthTaken(in engine.Inputs) string {
	full := c.filled(in)
	w, ok := engine.ParseWhom(in.Text(engine.KeyWearer))
	b := c.book.Tables.Body(w)
	if !ok || !in.Has(engine.Neck) || full.Num(engine.NeckMid).Sign() <= 0 || b.NeckLow.Sign() <= 0 {
		return ""
	}
	f, ease := full.Num(engine.NeckFactor), full.Num(engine.Ease)
	low, high := b.NeckLow.Mul(f).Add(ease), b.NeckHigh.Mul(f).Add(ease)
	said := in.Num(engine.Neck)
	if !said.Less(low) && !high.Less(said) {
		return ""
	}
	return "\n\nFrom the tables: " + lower(c.besideReckoned(said, full.Num(engine.NeckMid).Mul(f).Add(ease), low, high)) + " Taken all the same."
}

// inUnit is a text of the rules in the knitter's own unit.
func (c *turn) inUnit(text string) string {
	if c.voice().Unit != "in" {
		return text
	}
	return answer.Inches(text)
}

// measureText is how the thing of a card is measured on this garment.
func (c *turn) measureText(card rules.KeyCard) string {
	if c.base().Garment == engine.Pullover && card.MeasurePullover != "" {
		return c.inUnit(card.MeasurePullover)
	}
	return c.inUnit(card.Measure)
}

// easiest advises a beginner on the open question; only the rib is a choice
// between easy and hard.
func (c *turn) easiest(card rules.KeyCard) string {
	if card.Key != engine.KeyRib {
		return c.inUnit(card.UsualText)
	}
	return "For a beginner **2x1**: every third needle is latched, a third fewer columns than 1x1 has, and it still draws in and stretches. **plain** has nothing to latch at all, but stretches least" +
		map[bool]string{true: ", and a pullover's head has to pass.", false: "; a cardigan opens in front, so that is a fair choice too."}[c.base().Garment == engine.Pullover]
}

// usualHeads holds the opening against the heads of grown people in the
// tables, where no head is known.
func (c *turn) usualHeads(p *engine.Plan) string {
	v, text := c.voice(), ""
	for _, w := range []engine.Whom{{Adult: true, Sex: "male"}, {Adult: true, Sex: "female"}} {
		head := c.book.Tables.Body(w).Head
		passes, ok := engine.Solve(p.In.With(engine.Head, head)).HeadPasses()
		if !ok || head.Sign() <= 0 {
			continue
		}
		word := map[bool]string{true: "it passes", false: "it does not pass"}[passes]
		text += fmt.Sprintf(" For a %s's usual head, %s (%s), %s.", w, v.Len(head.Float()), c.short(c.book.Tables.Body(w).HeadSource), word)
	}
	return text + " Say whom it is for (*for a man*, *for a 5 year old*) or the head girth, and I hold it against that."
}
