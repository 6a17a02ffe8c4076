package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// mockPart is the needles left out of work in a mock rib.
func (v Voice) mockPart(p *engine.Plan) string {
	if len(p.EmptyColumns) == 0 {
		return ""
	}
	return fmt.Sprintf("**%s out of work** (%s mock rib): %s; %s knit, and nothing is latched.",
		Count(empties(p), "needle", "needles"), p.In.Rib, Empty(p),
		Count(p.WorkStitches, "needle", "needles"))
}

// pickPart is what is picked up along a shaped neck edge, piece by piece.
func (v Voice) pickPart(p *engine.Plan) string {
	total := v.Value(p, engine.PickTotal)
	if total == "" {
		return ""
	}
	var parts []string
	if p.PickFront > 0 {
		parts = append(parts, fmt.Sprintf("front %d", p.PickFront))
	}
	if p.PickBack > 0 {
		parts = append(parts, fmt.Sprintf("back %d", p.PickBack))
	}
	if p.PickSleeves > 0 {
		parts = append(parts, fmt.Sprintf("sleeves %d each", p.PickSleeves/2))
	}
	s := "**" + total + " picked up** round the neck: " + strings.Join(parts, ", ") + "; " + v.Value(p, engine.PickRatio) + " of a slope"
	_, whole := p.Float(engine.PickDifference)
	switch d := p.PickDifference; {
	case !whole:
		s += "; tell the front and the back, and it is held against the band"
	case d > 0:
		s += fmt.Sprintf("; pick up %s more, spread over the slopes", Count(d, "stitch", "stitches"))
	case d < 0:
		s += fmt.Sprintf("; pick up %s fewer, spread over the slopes", Count(-d, "stitch", "stitches"))
	default:
		s += "; that is just the band"
	}
	return s + "."
}

// topPart is how the upper edge lies against the neck of the wearer.
func (v Voice) topPart(p *engine.Plan) string {
	room, ok := p.Float(engine.TopRoom)
	switch {
	case !ok:
		return ""
	case room < 0:
		return fmt.Sprintf("**The upper edge** at rest is %s less than the neck halfway up: it lies on the neck, stretched by that. An estimate%s.",
			v.Len(-room), v.spreadText(p, engine.TopRoom))
	}
	return fmt.Sprintf("**The upper edge** at rest is %s more than the neck halfway up: it stands off by that, all round. An estimate%s.",
		v.Len(room), v.spreadText(p, engine.TopRoom))
}

// settingPart is how the band is set, where the fibre or the way was said.
func (v Voice) settingPart(p *engine.Plan) string {
	method := p.In.Text(engine.KeySetMethod)
	if method == "" {
		return ""
	}
	words := map[string]string{
		engine.SetWet: "wet, dried flat", engine.SetSteam: "with steam from above, never touching, dried flat",
		engine.SetDamp: "damp, without heat, dried flat",
	}
	s := "**Set it** " + words[method]
	if f := p.In.Text(engine.KeyFibre); f != "" {
		s += " (" + v.Text(engine.KeyFibre, f) + ")"
	}
	if rest := v.Value(p, engine.RestHours); rest != "" {
		s += ", rested " + rest
	}
	if p.Doubled {
		s += ", a smooth round rod in the fold"
	}
	return s + "."
}
