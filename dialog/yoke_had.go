package dialog

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// farFrom is how far a count found on a stage may lie from the plan's before it
// is asked about: a tenth. A slip in counting is a few stitches.
var farFrom = engine.Frac(1, 10)

// farFromStage doubts a count found on a stage that lies far from the plan's:
// a slip, or one piece of several. "" where none does, or where the same was
// said again.
func (c *turn) farFromStage(a applied) string {
	if !hasKey(a.keys, engine.StageHad) || sameSets(c.s.Doubt, c.m.Sets) {
		return ""
	}
	planned := c.solve(a.in.Without(engine.StageHad)).Yoke
	if planned == nil || planned.Stages == nil {
		return ""
	}
	for i, s := range planned.Stages[:len(planned.Stages)-1] {
		for _, set := range c.m.Sets {
			var stage, had int
			if _, err := fmt.Sscanf(set.Text, "%d=%d", &stage, &had); err != nil || set.Key != engine.StageHad || stage != i+1 {
				continue
			}
			off := engine.Int(int64(had - s.Count)).Abs()
			if farFrom.Mul(engine.Int(int64(s.Count))).Less(off) {
				return doubtStage(stage, had, s)
			}
		}
	}
	return ""
}

func doubtStage(stage, had int, s engine.Stage) string {
	text := fmt.Sprintf("%d on stage %d is far from the %d planned there, and everything above is hung from it. ", had, stage, s.Count)
	if n := len(s.Pieces); n > 1 {
		var sizes []string
		for _, p := range s.Pieces {
			sizes = append(sizes, fmt.Sprint(p.Stitches))
		}
		text += fmt.Sprintf("Is it one of the %d pieces (%s)? Then say what all of them have together. ", n, strings.Join(sizes, " + "))
	}
	return text + "Nothing has changed. If it is the whole stage, say *yes* and I take it; otherwise count again."
}
