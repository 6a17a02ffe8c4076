package dialog

import (
	"fmt"
	"math"
	"strings"

	"foldrow/dialog/listen"
	"foldrow/engine"
	"foldrow/rules"
)

// body is what the tables give for the wearer that in names.
func (c *turn) body(in engine.Inputs) (engine.Whom, rules.Body, bool) {
	w, ok := engine.ParseWhom(in.Text(engine.KeyWearer))
	return w, c.book.Tables.Body(w), ok
}

// wearerWords tells the table's figures, each with its table's name, what was
// taken of them, and the opening that a small neck asks for.
func (c *turn) wearerWords(in engine.Inputs) string {
	w, b, ok := c.body(in)
	if !ok {
		return ""
	}
	v := c.voice()
	var parts []string
	from := "From the tables: "
	if b.HeadSource == b.NeckSource && b.HeadSource == b.BaseSource {
		from = "From " + c.short(b.HeadSource) + ": "
	}
	named := func(source string) string {
		if from != "From the tables: " {
			return ""
		}
		return " (" + c.short(source) + ")"
	}
	if b.Head.Sign() > 0 {
		parts = append(parts, fmt.Sprintf("head **%s**%s%s", v.Len(b.Head.Float()), c.within(b.HeadLow, b.HeadHigh), named(b.HeadSource)))
	}
	switch {
	case b.NeckGuessed:
		parts = append(parts, fmt.Sprintf("neck halfway up about %s (no table has a neck under two years; %s: the head over %s, the share at two to three years)",
			v.Len(b.NeckMid.Float()), c.short("own"), "2.07"))
	case b.NeckMid.Sign() > 0:
		parts = append(parts, fmt.Sprintf("neck halfway up %s%s%s", v.Len(b.NeckMid.Float()), c.within(b.NeckLow, b.NeckHigh), named(b.NeckSource)))
	}
	if b.NeckBase.Sign() > 0 {
		parts = append(parts, fmt.Sprintf("base of the neck %s%s", v.Len(b.NeckBase.Float()), named(b.BaseSource)))
	}
	if b.Bust.Sign() > 0 {
		parts = append(parts, fmt.Sprintf("bust %s", v.Len(b.Bust.Float())))
	}
	text := from + strings.Join(parts, "; ") + "."
	if b.LetterOfMan {
		text += " No table of sizes by letters was found for that wearer: the figures are the middle of the survey for M, its 5th percentile for smaller and its 95th for larger, which is our choice."
	} else if b.Size != "" && b.Size != w.Size {
		text += fmt.Sprintf(" A letter size is taken as the size of that standard with the nearest bust, %s.", b.Size)
	}
	if b.Bust.Sign() > 0 && !c.base().Has(engine.Bust) {
		text += fmt.Sprintf(" Say *bust %s* to size the yoke by it.", v.Len(b.Bust.Float()))
	}
	return text + c.headTaken(in) + c.neckOffer(in) + c.openingOffer(in)
}

func (c *turn) within(low, high engine.Num) string {
	if low.Sign() <= 0 {
		return ""
	}
	return fmt.Sprintf(", mostly %s to %s", c.voice().Len(low.Float()), c.voice().Len(high.Float()))
}

func (c *turn) short(source string) string {
	s, _ := c.book.Source(source)
	return s.Short
}

// headTaken says what the head is used for.
func (c *turn) headTaken(in engine.Inputs) string {
	switch {
	case c.base().Has(engine.Head):
		return " Your own head girth stays."
	case in.Garment == engine.Cardigan:
		return " A cardigan opens in front, so the head does not matter."
	}
	return " The head is assumed from the table until you measure it: say *head 52 cm* with your figure."
}

// neckOffer says what a yes would set, where the neck is still open.
func (c *turn) neckOffer(in engine.Inputs) string {
	base, ok := c.neckFromTable(in)
	if !ok {
		return ""
	}
	v := c.voice()
	how := ""
	if _, b, _ := c.body(in); b.NeckBase.Sign() == 0 {
		how = fmt.Sprintf(", reckoned at %s of the neck halfway up", v.Figure(engine.NeckFactor, in.Num(engine.NeckFactor).Float()))
	}
	neck := base.Add(in.Num(engine.Ease)).Float()
	return fmt.Sprintf("\n\nFor the neck: a base of about **%s**%s, and %s ease, make %s. *Yes* takes that, or tell me the neck.",
		v.Len(base.Float()), how, v.Between(base.Float(), neck), v.Len(neck))
}

// neckFromTable is the base of the neck to offer: to a tenth, where a wearer
// is named and no neck was said.
func (c *turn) neckFromTable(in engine.Inputs) (engine.Num, bool) {
	if c.base().Has(engine.Neck) || c.base().Has(engine.NeckBody) || !in.Has(engine.NeckMid) {
		return engine.Num{}, false
	}
	base := in.Num(engine.NeckMid).Mul(in.Num(engine.NeckFactor))
	return engine.Frac(int64(base.Mul(engine.Int(10)).Round()), 10), true
}

// wearerSaid: this line named the wearer, so that the offer stands in its answer.
func wearerSaid(sets []listen.Set) bool {
	for _, s := range sets {
		if s.Key == engine.KeyWearer || s.Key == engine.NeckMid {
			return true
		}
	}
	return false
}

// withOffer keeps the neck of the tables ready for a yes as long as the neck is
// the question.
func (c *turn) withOffer(s State) State {
	if len(s.Doubt) > 0 || s.OnTable || c.open(s) != "neck" {
		return s
	}
	after := *c
	after.s = s
	if base, ok := after.neckFromTable(after.filled(after.base())); ok {
		s.Doubt = []listen.Set{{Key: engine.NeckBody, Value: base, Unit: "cm", Near: 1}}
	}
	return s
}

// offeredNeck is what a yes would set after these keys were said.
func (c *turn) offeredNeck(keys []engine.Key) []listen.Set {
	if !hasKey(keys, engine.KeyWearer) && !hasKey(keys, engine.NeckMid) || c.s.OnTable {
		return nil
	}
	base, ok := c.neckFromTable(c.filled(c.base()))
	if !ok {
		return nil
	}
	return []listen.Set{{Key: engine.NeckBody, Value: base, Unit: "cm", Near: 1}}
}

// openingOffer proposes an opening where a closed neck would not pass the
// head: with the plan's own figures once there are any, before that by the
// sewn edge alone, early enough to knit for it.
func (c *turn) openingOffer(in engine.Inputs) string {
	if in.Garment == engine.Cardigan || !in.Has(engine.Head) {
		return ""
	}
	v := c.voice()
	p := engine.Solve(in)
	slit, neck, known := p.SlitExact, p.NeckResult, p.BandStitches > 0 && p.HeadOpening.Sign() > 0
	more := ""
	if !known {
		base, ok := c.neckFromTable(in)
		switch {
		case p.NeckWanted.Sign() > 0:
			neck = p.NeckWanted
		case ok:
			neck = base.Add(in.Num(engine.Ease))
		default:
			return ""
		}
		more = " or more (by the sewn edge alone; the plan says it closer once rib and depth are known)"
		slit = engine.EarlySlit(in.Num(engine.Head), neck, in.Num(engine.EdgeStretch))
	}
	if !in.Num(engine.Slit).Less(slit) {
		return ""
	}
	needs, _ := p.HeadNeeds()
	wider := needs.Div(in.Num(engine.EdgeStretch))
	if least, ok := engine.SmallestNeck(in, in.Num(engine.Head)); ok && known {
		wider = least.NeckResult
	}
	text := "\n\n"
	if in.Has(engine.NeckMid) {
		text += fmt.Sprintf("The head is %s times the neck halfway up. ", v.Figure(engine.NeckFactor, math.Round(ratio(in)*100)/100))
	}
	opens := neck.Mul(in.Num(engine.EdgeStretch))
	if known {
		opens = p.HeadOpening.Sub(in.Num(engine.Slit).Mul(engine.Int(2)))
	}
	text += fmt.Sprintf("A closed neck of %s opens to %s, and the head needs %s. Either a wider neck, about %s, or an opening: **a slit of %s**%s, at the back or as a shoulder seam left open so far. Say *slit %s* to plan it.",
		v.Len(neck.Float()), v.Len(opens.Float()), v.Len(needs.Float()), v.Len(wider.Float()), v.Slit(slit.Float()), more, v.Slit(slit.Float()))
	return text + c.childCautions(in, "baby-neck")
}

func ratio(in engine.Inputs) float64 {
	if mid := in.Num(engine.NeckMid).Float(); mid > 0 {
		return in.Num(engine.Head).Float() / mid
	}
	return 0
}

// slitWords is what to know about a slit that was just said.
func (c *turn) slitWords(in engine.Inputs) string {
	if in.Garment == engine.Cardigan {
		return "\n\nA cardigan opens in front, so a slit changes nothing."
	}
	text := "\n\nBoth its sides count, so the neck opens by twice that. The band's ends stay apart there: close them with a button and a loop, and face the edges."
	return text + c.childCautions(in, "buttons-children", "cords-children")
}

// wearerProblem asks for what is missing about a wearer.
func (c *turn) wearerProblem(p listen.Problem) string {
	switch p.Code {
	case "wearer-age":
		return "I heard a child, but not how old. For example: *for a 5 year old*, *for a girl of 18 months*."
	case "wearer-sex":
		return "I heard a size by letters, but not whose. For example: *a woman, size L*, or *a man, size L*."
	case "wearer-size":
		return fmt.Sprintf("I read a size %s, and cannot tell whose. The table I have is of US women's sizes 00 to 20, even ones. Say *US size 12*, or the age of a child, or the measure itself: *bust 96 cm*, *head 56 cm*, *my neck measures 37 cm*.", trimNum(p.Low))
	}
	return "I heard whom it is for, but no table has that. Say an age up to 18, *a woman*, *a man*, or *US size 12*."
}
