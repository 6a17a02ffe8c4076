package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// mostHung is how many stitches are spread at most.
const mostHung = 1000

// spreadReply is a rehanging map of the counts that the line tells. It sets
// nothing and needs no plan.
func (c *turn) spreadReply() (State, Reply) {
	stitches, needles := c.m.Figure.Floor(), c.m.Count
	note := ""
	if c.m.Topic != "spread" {
		if needles == 0 {
			needles = c.plan().BandStitches
			note = fmt.Sprintf(" (taking the band's %d needles)", needles)
		}
		if needles == 0 {
			return c.s, c.reply("number", "Over how many needles? For example: *37 decreases over 107*.")
		}
		if c.m.Topic == "spread-lost" {
			stitches += needles
		}
	}
	switch {
	case needles < 1 || stitches > mostHung:
		return c.s, c.reply("unclear", fmt.Sprintf("I read %d stitches on %d needles, which is nothing to hang. For example: *rehang 144 to 100*.", stitches, needles))
	case stitches < needles:
		return c.s, c.reply("number", fmt.Sprintf("%d stitches leave %d of %d needles empty: nothing is to be decreased. Did you mean *rehang %d to %d*?", stitches, needles-stitches, needles, needles, stitches))
	}
	hangings := engine.SpreadStages(stitches, needles)
	if len(hangings) > 1 {
		c.answer(engine.StageRehang, hangings)
	} else {
		c.answer(engine.Rehang, engine.Spread(stitches, needles))
	}
	text := fmt.Sprintf("**%d stitches on %d needles**%s, %s to %s: %s to lose.\n\n%s", stitches, needles, note,
		engine.NeedleName(0, needles), engine.NeedleName(needles-1, needles), answer.Count(stitches-needles, "stitch", "stitches"),
		c.voice().Spread(stitches, needles, hangings))
	if p := c.plan(); p.BandStitches > 0 && p.BandStitches != needles {
		text += fmt.Sprintf("\n\nThe plan is not changed: its band has %d.", p.BandStitches)
	}
	return c.s, c.reply("number", text)
}
