package dialog

import (
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// mostStitches is the widest yoke or band that is planned.
const mostStitches = 2000

// onParts answers a question about the work around the neckband. It sets
// nothing; the yoke asked about is remembered, so that the next question may
// change one thing of it.
func (c *turn) onParts() (State, Reply) {
	var text string
	var cautions []string
	switch c.m.Topic {
	case "stages":
		text, cautions = c.yokeStages()
	case "yoke-depth":
		text = c.yokeDepth()
	case "colour-row":
		text, cautions = c.colourRow()
	case "float-limit":
		text, cautions = c.floatLimit()
	}
	r := c.reply("number", text)
	r.Cautions = append(r.Cautions, cautions...)
	return c.s, r
}

// caution is the text of a card of rules/cautions.md, nil where it is not
// there.
func (c *turn) caution(id string) []string {
	if card, ok := c.book.Card("cautions", id); ok {
		return []string{card.Text}
	}
	return nil
}

// known is a number of the plan that was said or has a default, 0 where not.
func (c *turn) known(k engine.Key) engine.Num {
	in := c.filled(c.base())
	if !in.Has(k) {
		return engine.Num{}
	}
	return in.Num(k)
}

// partGauge is the stitches in 10 cm of the part: as said with it, else the
// garment's.
func (c *turn) partGauge(p listen.Part) engine.Num {
	if p.Gauge.Sign() > 0 {
		return p.Gauge
	}
	return c.known(engine.StitchGauge)
}

// tooMany reports a number of stitches that no knitting of this kind has.
func tooMany(counts ...int) bool {
	for _, n := range counts {
		if n > mostStitches {
			return true
		}
	}
	return false
}
