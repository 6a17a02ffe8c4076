package answer

import (
	"fmt"

	"foldrow/engine"
)

// WhyStage tells how the count of stage i, from 0, came about: the way of the
// cuts, the sum, what the repeat made of it, and how it is hung.
func (v Voice) WhyStage(p *engine.Plan, i int, rec engine.Record) string {
	y := p.Yoke
	s, spec := y.Stages[i], y.Spec.Stages[i]
	card, _ := v.Book.Result(engine.StageCounts)
	text := fmt.Sprintf("**Stage %d: %s.** By %s, from %d to the %d of the neck in %s.\n\n`%s`", i+1, Count(s.Count, "stitch", "stitches"),
		v.MethodName(y.Spec.Method), y.Spec.Start, y.Spec.Neck, Count(len(y.Spec.Stages), "stage", "stages"), v.Arithmetic(rec))
	if spec.Repeat > 1 {
		text += fmt.Sprintf("\n\nThe repeat of %d", spec.Repeat)
		if spec.Edge > 0 {
			text += fmt.Sprintf(" with %s beside it", Count(spec.Edge, "stitch", "stitches"))
		}
		text += fmt.Sprintf(" closes on %d: `%s = %d`.", s.Count, rec.Check, s.Count)
	}
	text += "\n\n" + card.Rounding
	if src := v.Sources(card.Source); src != "" {
		text += "\n\nSource: " + src + "."
	}
	return text
}
