package dialog

import (
	"fmt"
	"slices"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// stepsDiffer says which steps another kind of band adds and leaves out: of
// the plan against the usual doubled band with latched columns, or, where it is
// that, of each other kind against it.
func (c *turn) stepsDiffer() (State, Reply) {
	usual := c.base().Without(engine.KeyBandKind).Without(engine.Layers).With(engine.Layers, engine.Int(2))
	if !usual.Has(engine.KeyRib) {
		usual = usual.WithRib(engine.Rib{Knit: 1, Purl: 1})
	}
	before, mine := c.stepTitles(usual), c.stepTitles(c.base())
	if !slices.Equal(before, mine) {
		return c.s, c.reply("show", "Against the usual band, doubled and with latched columns:\n\n- "+stepChange("this one", before, mine))
	}
	lines := []string{"This is the usual band, doubled and with latched columns. Against it:", ""}
	for _, kind := range []string{engine.BandMock, engine.BandRolled} {
		in, _ := usual.Without(engine.Layers).WithText(engine.KeyBandKind, kind)
		if kind == engine.BandRolled {
			in = in.Without(engine.KeyRib)
		}
		card, _ := c.book.Key(engine.KeyBandKind)
		lines = append(lines, "- "+stepChange(card.ChoiceLabel(kind), before, c.stepTitles(in)))
	}
	lines = append(lines, "- "+stepChange("a single layer", before, c.stepTitles(usual.With(engine.Layers, engine.Int(1)))))
	return c.s, c.reply("show", strings.Join(lines, "\n"))
}

// stepTitles is the titles of a plan's steps, in the order of work.
func (c *turn) stepTitles(in engine.Inputs) []string {
	p := c.solve(in)
	var titles []string
	for _, card := range c.book.Cards("steps") {
		if answer.StepFits(card, p) {
			titles = append(titles, card.Fields["title"])
		}
	}
	return titles
}

// stepChange is one line: what the steps after leave out of those before, and
// what they add.
func stepChange(what string, before, after []string) string {
	missing := func(from, in []string) []string {
		var out []string
		for _, s := range from {
			if !slices.Contains(in, s) {
				out = append(out, strings.ToLower(s[:1])+s[1:])
			}
		}
		return out
	}
	text := "**" + what + "**"
	if out := missing(before, after); len(out) > 0 {
		text += fmt.Sprintf(" leaves out: %s", strings.Join(out, "; "))
	}
	if more := missing(after, before); len(more) > 0 {
		if strings.Contains(text, ":") {
			text += ". It"
		}
		text += fmt.Sprintf(" has: %s", strings.Join(more, "; "))
	}
	return text + "."
}
