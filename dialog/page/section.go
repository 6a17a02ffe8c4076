package page

import (
	"fmt"
	"math"

	"foldrow/engine"
)

// Sizes of the cross-section in mm. The angle is true, lengths are not.
const (
	sectionWide = 88.0
	sectionHigh = 44.0
	seamX       = 30.0
	seamY       = 32.5
	bandLong    = 22.0
	halfThick   = 1.7
)

// crossSection draws the band cut through: the yoke, the seam, the band
// leaning in toward the neck and, dashed, how it would stand upright. "" where
// the lean is not known.
func crossSection(s sheet) string {
	deg, ok := s.plan.Float(engine.LeanDegrees)
	if !ok {
		return ""
	}
	words := s.voice.Value(s.plan, engine.LeanDegrees)
	d := draw(sectionWide, sectionHigh, "The band cut through: it leans in by "+words+" from upright, toward the neck")
	a := deg * math.Pi / 180
	sin, cos := math.Sin(a), math.Cos(a)

	d.path("heavy", fmt.Sprintf("M%s %s Q14 %s 1 %s", mm(seamX), mm(seamY), mm(seamY), mm(seamY+9)))
	d.line("dashed", seamX, seamY, seamX, seamY-bandLong-6)
	d.path("thick", bandPath(s.plan.Doubled, sin, cos))
	if deg >= 3 {
		r := bandLong * 0.72
		d.path("mid", fmt.Sprintf("M%s %s A%s %s 0 0 1 %s %s", mm(seamX), mm(seamY-r), mm(r), mm(r), mm(seamX+r*sin), mm(seamY-r*cos)))
	}
	d.dot(seamX, seamY, 1.3)

	d.text(seamX-1.5, seamY-bandLong-2, small, "end", "", "upright")
	d.text(seamX-2, seamY-2.5, small, "end", "", "seam")
	d.text(4, seamY+11, small, "start", "", "yoke")
	tip := bandLong + 4.5
	end := "fold"
	if !s.plan.Doubled {
		end = "edge"
	}
	d.text(seamX+tip*sin+1, seamY-tip*cos+1, small, "start", "", end)
	mid := bandLong * 0.45
	d.text(seamX+mid*sin+6*cos, seamY-mid*cos+6*sin+1.5, large, "start", "bold", words)
	d.text(sectionWide-8, seamY+11, small, "end", "", "toward the neck")
	d.path("mid", fmt.Sprintf("M%s %s h5.5 m-2 -1.6 l2 1.6 l-2 1.6", mm(sectionWide-7), mm(seamY+9.8)))
	return d.String()
}

// bandPath is the band's outline: two layers joined by a round fold, or one.
func bandPath(doubled bool, sin, cos float64) string {
	at := func(along, across float64) string {
		return mm(seamX+along*sin+across*cos) + " " + mm(seamY-along*cos+across*sin)
	}
	if !doubled {
		return "M" + at(0, 0) + " L" + at(bandLong, 0)
	}
	return fmt.Sprintf("M%s L%s A%s %s 0 0 1 %s L%s", at(0, -halfThick), at(bandLong-halfThick, -halfThick),
		mm(halfThick), mm(halfThick), at(bandLong-halfThick, halfThick), at(0, halfThick))
}

// leanWords says what the picture shows.
func leanWords(s sheet) string {
	end := "the fold"
	if !s.plan.Doubled {
		end = "the edge"
	}
	why := ""
	switch graded := graded(s.plan); {
	case graded && s.plan.In.Rib.IsPlain():
		why = " The tension's grading does this."
	case graded:
		why = " The tension's grading alone does this; the rib's draw adds to it."
	case !s.plan.In.Rib.IsPlain():
		why = " The rib's draw adds to it."
	}
	return fmt.Sprintf("The band stands %s deep from the seam to %s and leans in toward the neck by about %s: 0 is upright, 90 lies flat on the shoulders."+why,
		s.voice.Value(s.plan, engine.DepthResult), end, s.voice.Value(s.plan, engine.LeanDegrees))
}

// graded reports whether the rows get tighter on the way to the edge.
func graded(p *engine.Plan) bool {
	for _, r := range p.Tension() {
		if r.Row <= p.LayerRows && r.Clicks != p.Tension()[0].Clicks {
			return true
		}
	}
	return false
}
