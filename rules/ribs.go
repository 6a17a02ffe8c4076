package rules

import "foldrow/engine"

// RibCard is what is known about one rib. Draw is the relaxed width of the rib
// over that of as many plain stitches; Stretch its fully stretched width over
// its relaxed width. Low and High are how far published and derived figures
// spread.
type RibCard struct {
	Rib                              engine.Rib
	Label                            string
	Words                            []string
	Draw, DrawLow, DrawHigh          engine.Num
	Stretch, StretchLow, StretchHigh engine.Num
	Measured                         bool // false: interpolated by RibFactors' rule
	GoodFor                          string
	Text                             string // what the figures rest on
	Source                           []string
}

func (b *Book) readRibs(bad *faults) {
	for _, c := range b.cards["ribs"] {
		rib, ok := engine.ParseRib(c.ID)
		if !ok {
			bad.card(c, UnknownKey, "not a rib")
			continue
		}
		for _, name := range []string{"label", "words", "good-for", "source"} {
			if c.Fields[name] == "" {
				bad.card(c, MissingField, name)
			}
		}
		r := RibCard{
			Rib: rib, Label: c.Fields["label"], Words: c.List("words"),
			Measured: c.Fields["measured"] == "yes", GoodFor: c.Fields["good-for"],
			Text: c.Text, Source: c.List("source"),
		}
		r.Draw, r.DrawLow, r.DrawHigh = factor(c, "draw", bad)
		r.Stretch, r.StretchLow, r.StretchHigh = factor(c, "stretch", bad)
		b.Ribs = append(b.Ribs, r)
	}
}

// factor reads a number and its span: "draw: 0.70", "draw-span: 0.50 to 0.75".
func factor(c Card, field string, bad *faults) (mid, low, high engine.Num) {
	mid = number(c, field, c.Fields[field], bad)
	s, ok := span(c, field+"-span", bad)
	if !ok {
		bad.card(c, MissingField, field+"-span")
		return mid, mid, mid
	}
	if mid.Less(s[0]) || s[1].Less(mid) {
		bad.card(c, BadSpan, field+" "+c.Fields[field]+" is not within "+c.Fields[field+"-span"])
	}
	return mid, s[0], s[1]
}

// RibFactors is the card of a rib, or an estimate where ribs.md has none; see
// estimate for the rule. The zero rib gives the zero card.
func (b *Book) RibFactors(rib engine.Rib) RibCard {
	for _, r := range b.Ribs {
		if r.Rib == rib {
			return r
		}
	}
	if !rib.IsSet() {
		return RibCard{}
	}
	return estimate(rib)
}
