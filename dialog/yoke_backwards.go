package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// yokeBackwards: how many stages for a share, what first stage for a count.
func (c *turn) yokeBackwards() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	in := c.filled(a.in)
	share := engine.Frac(1, 3)
	if c.m.HasFig && c.m.Figure.Less(engine.Int(1)) {
		share = c.m.Figure
	}
	if c.m.Topic == "fewest" {
		return c.fewestStages(in, share)
	}
	return c.firstStage(in, share)
}

func (c *turn) fewestStages(in engine.Inputs, share engine.Num) (State, Reply) {
	n, p, ok := engine.FewestStages(in, share)
	if !ok {
		return c.s, c.reply("backwards", "For that I need the yoke's first stage and its neck, and a share that can be kept. For example: *yoke from 264 to 109*.")
	}
	c.answer(engine.YokeStages, n)
	c.answerKeys(p, engine.StageCounts, engine.LargestCut)
	return c.s, c.reply("backwards", fmt.Sprintf("**%s**: %s. The largest cut then takes %s %%, not over %s %%. Say *%s* to set it.",
		title(answer.Count(n, "stage", "stages")), answer.StageCounts(p.Yoke.Stages), trimFloat(100*p.Yoke.Stages[p.Yoke.Steepest-1].Share().Float()), trimFloat(100*share.Float()), answer.Count(n, "stage", "stages")))
}

func (c *turn) firstStage(in engine.Inputs, share engine.Num) (State, Reply) {
	var first int
	var p *engine.Plan
	var ok bool
	what := fmt.Sprintf("no cut takes over %s %%", trimFloat(100*share.Float()))
	if c.m.Count > 0 && c.m.HasFig && c.m.Figure.IsInt() {
		first, p, ok = engine.FirstFor(in, c.m.Count, c.m.Figure.Floor())
		what = fmt.Sprintf("stage %d has %d", c.m.Count, c.m.Figure.Floor())
	} else {
		first, p, ok = engine.LargestFirst(in, share)
	}
	if !ok {
		return c.s, c.reply("backwards", "For that I need the neckband's stitches, or *yoke neck 105*, and a yoke that can be. For example: *what first stage gives 132 at stage 3*.")
	}
	c.answer(engine.YokeFirst, first)
	c.answerKeys(p, engine.StageCounts)
	return c.s, c.reply("backwards", fmt.Sprintf("At most **%d stitches** on the first stage, so that %s: %s. Say *yoke of %d stitches* to set it.",
		first, what, answer.StageCounts(p.Yoke.Stages), first))
}
