package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// yarnCount tells a yarn's thickness in another count.
func (c *turn) yarnCount() string {
	t := c.m.Thread
	tex, ok := engine.Tex(t.Count, t.Value, t.Plies)
	if !ok {
		return "That is no yarn count that I know. For example: *2/24 worsted count in metres per 100 g*."
	}
	metres, _ := engine.FromTex(tex, engine.MetresPer)
	c.answer(engine.YarnTex, round4(tex.Float()))
	c.answer(engine.YarnLength, round4(metres.Float()))
	to := t.To
	if to == "" {
		to = engine.MetresPer
	}
	value, _ := engine.FromTex(tex, to)
	if to != engine.MetresPer && to != engine.TexCount {
		c.answer("yarn_count", round4(value.Float()))
	}
	return answer.YarnCount(t.Count, t.Value, t.Plies, to, value, tex, metres)
}

// yarnVerdict says whether what is left is enough for everything.
func (c *turn) yarnVerdict(p engine.Plan) string {
	state := p.AllYarnState()
	if state == engine.YarnUnknown {
		if p.In.Has(engine.YarnLeft) {
			return ""
		}
		return "\n\nTell me the metres in 100 g and the grams you have (\"350 m per 100 g, 60 g left\") and I will say whether it lasts."
	}
	word := map[engine.YarnState]string{engine.YarnEnough: "Yes, it lasts", engine.YarnTight: "It is tight", engine.YarnShort: "No, it will not last"}[state]
	return fmt.Sprintf("\n\n%s for all of it: a tenth more should be there, and you have %s.", word, c.voice().Value(p, engine.YarnLeft))
}
