package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// withValues answers a number with circumstances that came with the question.
func (c *turn) withValues() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	s, r := c.forValues(a)
	r.Kind = "number"
	return s, r
}

// suffices answers whether the bed or the yarn is enough, with what the
// question itself brought.
func (c *turn) suffices() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	p := c.solve(a.in)
	if c.m.Topic == "fits" {
		return c.fitsBed(p)
	}
	if p.BandYarn == 0 {
		return c.s, c.reply("number", c.notYet([]engine.Key{engine.BandYarn}))
	}
	c.answer(engine.BandYarn, round4(p.BandYarn))
	if p.Yarn == engine.YarnUnknown {
		return c.s, c.reply("number", c.lastsForBand(p))
	}
	c.answer(engine.BandYarnGrams, round4(p.BandYarnGrams))
	if p.AllYarnState() != engine.YarnUnknown {
		c.answersOf(p, engine.AllYarn, engine.AllYarnGrams)
		return c.s, c.reply("number", strings.TrimSpace(c.yarnVerdict(p))+"\n\n"+c.voice().YarnTogether(p))
	}
	return c.s, c.reply("number", c.lastsForBand(p))
}

// lastsForBand says whether the yarn left is enough for the neckband, or what has to be
// told for that.
func (c *turn) lastsForBand(p *engine.Plan) string {
	v := c.voice()
	word, known := map[engine.YarnState]string{engine.YarnEnough: "Yes, it lasts", engine.YarnTight: "It is tight", engine.YarnShort: "No, it will not last"}[p.Yarn]
	if known {
		return fmt.Sprintf("%s: the band takes about **%s**, and a tenth more should be there; you have %s.",
			word, v.Value(p, engine.BandYarnGrams), v.Value(p, engine.YarnLeft)) + neckbandOnly(p)
	}
	missing := `the metres in 100 g and the grams you have ("350 m per 100 g, 30 g left")`
	switch {
	case p.In.Has(engine.YarnLeft):
		missing = `the metres in 100 g ("350 m per 100 g")`
	case p.YarnRate.Sign() > 0:
		missing = `the grams you have ("30 g left")`
	}
	return fmt.Sprintf("The band takes about **%s**. Tell me %s and I will say whether it lasts.", v.Value(p, engine.BandYarn), missing)
}

// fitsBed says whether the band goes on the bed in one piece.
func (c *turn) fitsBed(p *engine.Plan) (State, Reply) {
	if p.BandStitches == 0 {
		return c.s, c.reply("number", c.notYet([]engine.Key{engine.BandStitches}))
	}
	c.answer(engine.BandStitches, p.BandStitches)
	c.answer(engine.BedNeedles, p.In.Int(engine.BedNeedles))
	if p.FitsBed {
		return c.s, c.reply("number", fmt.Sprintf("Yes: **%d stitches** on %d needles, in one piece.", p.BandStitches, p.In.Int(engine.BedNeedles)))
	}
	return c.s, c.reply("number", fmt.Sprintf("No: **%d stitches** want %d pieces on %d needles.", p.BandStitches, p.Pieces, p.In.Int(engine.BedNeedles)))
}

// balls is how many balls of the weight said are enough for all that is planned.
func (c *turn) balls(p *engine.Plan) (State, Reply) {
	var want []string
	if p.YarnRate.Sign() <= 0 && !p.In.Has(engine.StitchWeight) {
		want = append(want, "how many metres are in 100 g (*350 m per 100 g*)")
	}
	if !c.m.HasFig {
		want = append(want, "what one weighs (*how many balls of 50 g*)")
	}
	switch {
	case p.BandYarn == 0:
		return c.s, c.reply("number", c.notYet([]engine.Key{engine.BandYarn}))
	case len(want) > 0:
		return c.s, c.reply("number", "For that I need "+strings.Join(want, ", and ")+".")
	}
	n, ok := engine.BallsFor(p.In, c.m.Figure)
	if !ok {
		return c.s, c.reply("number", fmt.Sprintf("More than %d balls of %s g: see that a ball's weight and the metres in 100 g are right.", engine.MostBalls, trimNum(c.m.Figure)))
	}
	p = engine.Solve(p.In.With(engine.YarnLeft, c.m.Figure)) // whatever is left by now
	k := engine.BandYarnGrams
	if p.AllYarnState() != engine.YarnUnknown {
		k = engine.AllYarnGrams
	}
	c.answersOf(p, k)
	c.answer("balls", n)
	return c.s, c.reply("number", fmt.Sprintf("**%s** of %s g: it takes about %s. Counted at the high end of that estimate, with a tenth to spare.",
		answer.Count(n, "ball", "balls"), trimNum(c.m.Figure), c.voice().Value(p, k))+neckbandOnly(p))
}
