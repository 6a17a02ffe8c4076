package dialog

import (
	"fmt"
	"math"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// whyEstimate tells of a figure that is no number of the plan but was shown:
// an end of an estimate, or of the yarn with a tenth to spare; "" where it is
// neither.
func (c *turn) whyEstimate(p *engine.Plan) string {
	v, fig, unit := c.voice(), c.m.Figure.Float(), string(c.m.FigUnit)
	if unit == "" || unit == "g" {
		for _, w := range p.Warnings() {
			low, high := w.Values["need_low"], w.Values["need_high"]
			if high.Sign() > 0 && math.Round(fig) >= math.Round(low.Float()) && math.Round(fig) <= math.Round(high.Float()) {
				return c.whyNeed(p)
			}
		}
	}
	for _, k := range engine.ResultKeys() {
		low, high, ok := p.Spread(k, v.Spans(p))
		if k == engine.BandYarn {
			low, high = p.BandYarnLow, p.BandYarnHigh
		}
		card, known := c.book.Result(k)
		if !ok || !known || high-low < 1e-9 || !answer.UnitFits(v, k, unit) {
			continue
		}
		end := ""
		switch {
		case shown(v, k, low, fig, unit):
			end = "low"
		case shown(v, k, high, fig, unit):
			end = "high"
		default:
			continue
		}
		c.answersOf(p, k)
		text := fmt.Sprintf("That is the %s end of an estimate. The %s is **%s**, and lies between %s and %s.", end, v.Label(k), v.Value(p, k), v.Figure(k, low), v.Figure(k, high))
		if card.Estimate != "" {
			text += " " + v.Estimate(p, card)
		}
		return text + c.narrower(k)
	}
	return ""
}

// shown reports whether f, a value of k, is shown as fig; ends of estimates
// are shown whole as well.
func shown(v answer.Voice, k engine.Key, f, fig float64, unit string) bool {
	return answer.Shows(v, k, f, fig, unit) || v.Unit != "in" && math.Round(f) == fig && math.Abs(f) >= 10
}

// whyNeed tells how the yarn with a tenth to spare comes about.
func (c *turn) whyNeed(p *engine.Plan) string {
	k, what := engine.BandYarnGrams, "the band"
	if p.AllYarnState() != engine.YarnUnknown {
		k, what = engine.AllYarnGrams, "the neckband and both front bands"
	}
	c.answersOf(p, k)
	return fmt.Sprintf("The yarn for %s is about **%s**, a little less or more at the two ends of the loop's estimate; a tenth is added to both, so that you do not run out.\n\n%s",
		what, c.voice().Value(p, k), c.voice().YarnTogether(p))
}

// narrower is what the knitter can measure to make the estimate of k closer;
// it opens with a space.
func (c *turn) narrower(k engine.Key) string {
	switch k {
	case engine.RelaxedCircumference, engine.StretchedCircumference, engine.HeadOpening, engine.SlitLength, engine.TopRoom:
		return " A rib swatch of your own, relaxed and stretched, makes it close: *how do I measure a rib swatch*."
	case engine.FoldCircumference, engine.LeanDegrees:
		return " Two swatches at two dial numbers make it close: *how do I calibrate the dial*."
	case engine.BandYarn, engine.BandYarnGrams, engine.AllYarn, engine.AllYarnGrams:
		return " The yarn out of one swatch row makes it close: *how do I measure the yarn of a row*."
	}
	return ""
}
