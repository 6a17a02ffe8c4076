package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
	"foldrow/rules"
)

// advice is what goes with a word that was just said: what a class of machine
// or a kind of band presupposes, how a fibre is set, what the tables give for
// a wearer. It opens with a blank line; "" where there is nothing to say.
func (c *turn) advice(keys []engine.Key) string {
	p := c.plan()
	in := p.In
	text := ""
	for _, k := range keys {
		switch {
		case k == engine.KeyWearer:
			text += "\n\n" + c.wearerWords(in)
		case k == engine.YarnLeft && p.BandYarn > 0 && p.Front == nil && (p.Yarn == engine.YarnUnknown || c.s.OnTable):
			text += "\n\n" + c.lastsForBand(p)
		case k == engine.Neck:
			text += c.widthTaken(in)
		case k == engine.NeedlePitch && in.Text(engine.KeyMachine) == "":
			text += c.classOf(in)
		case k == engine.Slit && in.Num(k).Sign() > 0:
			text += c.slitWords(in)
		case engine.IsText(k):
			card, _ := c.book.Key(k)
			parts := engine.FibreParts(in.Text(k))
			for _, v := range parts {
				s := card.Texts[v]
				if s != "" && len(parts) > 1 {
					s = "**" + title(v) + ".** " + s
				}
				if s != "" {
					text += "\n\n" + c.voice().Fill(s, p)
				}
			}
			text += c.presupposed(k, in) + c.heatCautions(k, in)
		}
	}
	return text
}

// presupposed names what a choice brings along, so that nothing is set in
// silence.
func (c *turn) presupposed(k engine.Key, in engine.Inputs) string {
	var list []string
	for _, g := range presupposes(k) {
		rolled := g == engine.KeyRib && in.Text(engine.KeyBandKind) == engine.BandRolled
		if (!c.base().Has(g) || rolled) && in.Has(g) {
			if s := answer.Setting(g, in.Int(g)); s != "" && engine.IsNumber(g) {
				list = append(list, s)
				continue
			}
			list = append(list, c.voice().Label(g)+" "+c.voice().Value(engine.Solve(in), g))
		}
	}
	if len(list) == 0 {
		return ""
	}
	return "\n\nSo I take, until you say otherwise: " + strings.Join(list, "; ") + "."
}

// presupposes are the inputs that a choice of k may bring along.
func presupposes(k engine.Key) []engine.Key {
	switch k {
	case engine.KeyMachine:
		return []engine.Key{engine.NeedlePitch, engine.BedNeedles, engine.ClicksPerNumber, engine.DialMin}
	case engine.KeyFibre, engine.KeySetMethod:
		return []engine.Key{engine.KeySetMethod, engine.RestHours}
	case engine.KeyBandKind:
		return []engine.Key{engine.KeyRib, engine.Layers, engine.StartClicks, engine.RowsPerClick, engine.RibDraw, engine.RibStretch}
	}
	return nil
}

// childCautions are these cautions where the wearer is a child of less than
// seven years: our own limit, local rules come first.
func (c *turn) childCautions(in engine.Inputs, ids ...string) string {
	w, _, ok := c.body(in)
	if !ok || w.Adult || w.Months >= 7*12 {
		return ""
	}
	text := ""
	for _, id := range ids {
		for _, s := range c.caution(id) {
			text += "\n\n**Caution:** " + s
		}
	}
	return text
}

// heatCautions go with a way of setting or a fibre that heat can spoil.
func (c *turn) heatCautions(k engine.Key, in engine.Inputs) string {
	var list []string
	if k == engine.KeySetMethod && in.Text(k) == engine.SetSteam {
		list = append(list, c.caution("steam")...)
	}
	if k == engine.KeyFibre && engine.HeatHurts(in.Text(engine.KeyFibre)) {
		list = append(list, c.caution("acrylic-heat")...)
	}
	text := ""
	for _, s := range list {
		text += "\n\n**Caution:** " + s
	}
	return text
}

// choiceCautions go with a fibre that was asked about.
func (c *turn) choiceCautions(k engine.Key, v string) string {
	in, ok := engine.Inputs{}.WithText(k, v)
	if !ok {
		return ""
	}
	return c.heatCautions(k, in)
}

// aroundNotYet says what has to be told before a result around the band is
// known; "" for any other.
func (c *turn) aroundNotYet(k engine.Key) string {
	switch k {
	case engine.HeadNeeded, engine.HeadMissing, engine.SlitLength, engine.Slit:
		if text := c.slitNotYet(); text != "" {
			return text
		}
		return "Tell me that it is a pullover, and the head (\"head 56 cm\") or whom it is for (\"for a 5 year old\"), and I will work it out."
	case engine.NeckBase, engine.TopRoom:
		c.wanted = engine.NeckMid
		return "Tell me the neck halfway up (\"mid neck 33 cm\") or whom it is for (\"for a 5 year old\"), and I will work it out."
	case engine.WorkStitches, engine.EmptyNeedles:
		return "Only a mock rib leaves needles out of work: say *mock rib* to plan one."
	case engine.PickFront, engine.PickBack, engine.PickSleeves, engine.PickTotal, engine.PickDifference:
		return "Tell me the shaped neck edge (\"20 stitches held at the front, 24 rows along each side of the front neck, 40 stitches held at the back\") and I will count it."
	}
	return ""
}

// wantsHead: the plan of a pullover asks for the head that has to pass.
func (c *turn) wantsHead() {
	if in := c.plan().In; in.Garment == engine.Pullover && !in.Has(engine.Head) {
		c.wanted, c.mild = engine.Head, true
	}
}

// slitNotYet tells what a slit is for and what is missing to say how long it must
// be; "" while nothing is known of the garment's opening.
func (c *turn) slitNotYet() string {
	p, v := c.plan(), c.voice()
	opens, known := p.Float(engine.HeadOpening)
	switch {
	case p.In.Garment == engine.Cardigan:
		return "A cardigan opens in front, so its neck needs no slit and no head has to pass it."
	case p.In.Garment != engine.Pullover || !known || p.In.Has(engine.Head):
		return ""
	}
	c.wanted = engine.Head
	return fmt.Sprintf("A slit lets a head through where the closed neck is too small for it: the opening has to reach the head and %s more, and a slit adds twice its own length, because both its sides count. This neck opens to about **%s**, and the head is not known. Tell me the head (*head %s*), or whom it is for (*for a 5 year old*), and I will say whether a slit is needed and how long.",
		v.Len(2), v.Len(opens), v.Len(56))
}

// fibreText is what a card about setting adds for the fibre that was told.
func (c *turn) fibreText(card rules.Card) string {
	if card.Fields["also"] != string(engine.KeyFibre) {
		return ""
	}
	key, _ := c.book.Key(engine.KeyFibre)
	text := ""
	for _, f := range engine.FibreParts(c.filled(c.base()).Text(engine.KeyFibre)) {
		if card.ID != "acrylic-blocking" || f != "acrylic" {
			text += "\n\n**Yours, " + f + ".** " + key.Texts[f]
		}
	}
	return text
}

// classOf names the class of machine whose pitch was just said, so that its
// other figures can be taken by a word.
func (c *turn) classOf(in engine.Inputs) string {
	card, _ := c.book.Key(engine.KeyMachine)
	for _, class := range card.Choices {
		one, _ := engine.Inputs{}.WithText(engine.KeyMachine, class.Value)
		one = c.book.Filled(one)
		off := in.Num(engine.NeedlePitch).Div(one.Num(engine.NeedlePitch)).Sub(engine.Int(1)).Abs()
		if off.Less(engine.Frac(12, 100)) && !in.Same(one, engine.BedNeedles) {
			return fmt.Sprintf("\n\nThat is the pitch of a %s. Say *%s* to take its usual bed and dial too: %s, %s to a number.",
				class.Label, class.Label, c.voice().Value(engine.Solve(one), engine.BedNeedles),
				c.voice().Value(engine.Solve(one), engine.ClicksPerNumber))
		}
	}
	return ""
}
