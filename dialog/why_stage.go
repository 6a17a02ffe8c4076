package dialog

import (
	"slices"

	"foldrow/engine"
)

// stageWhy is the stage, from 0, whose count a why is about: named, or the one
// stage that has the figure asked about and nothing else in the plan has; -1
// where it is about something else.
func (c *turn) stageWhy(p *engine.Plan) int {
	y := p.Yoke
	if y == nil || y.Stages == nil {
		return -1
	}
	if c.m.Count >= 1 && c.m.Count <= len(y.Stages) {
		return c.m.Count - 1
	}
	if deeper := len(c.m.Keys) == 0 && !c.m.HasFig && len(c.m.Sets) == 0; deeper || !c.m.HasFig || !c.m.Figure.IsInt() {
		return -1
	}
	if len(c.bearing(p, c.m.Keys)) > 0 || len(c.bearing(p, c.candidates())) > 0 {
		return -1
	}
	return slices.IndexFunc(y.Stages, func(s engine.Stage) bool { return s.Count == c.m.Figure.Floor() })
}

// whyStage tells how the count of one stage came about.
func (c *turn) whyStage(p *engine.Plan, i int) (State, Reply) {
	y := p.Yoke
	rec, ok := p.StageRecord(i)
	if !ok {
		return c.s, c.reply("why", c.notYet([]engine.Key{engine.StageCounts}))
	}
	c.s.WhyKey, c.s.Topic = rec.Key, engine.StageCounts
	c.answer(oneStage, i+1)
	c.answer(oneStageCount, y.Stages[i].Count)
	if i == 0 || i == len(y.Stages)-1 {
		if text, ok := c.voice().Why(p, c.base(), rec.Key); ok {
			return c.s, c.reply("why", text)
		}
	}
	return c.s, c.reply("why", c.voice().WhyStage(p, i, rec))
}
