package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// yokeDepthLine is the depth of the yoke in rows and length, beside what is
// published for the bust, and its slope.
func (v Voice) yokeDepthLine(p *engine.Plan) string {
	y := p.Yoke
	var parts []string
	if y.Rows != nil {
		s := "**" + Count(y.AllRows(), "row", "rows")
		if y.HasDepth {
			s += ", " + v.Len(y.Depth.Float()) + " deep"
		}
		s += "**"
		if y.RowsFrom == engine.Bust {
			s += " (the middle of what is published for the bust" + v.hint("; say *yoke depth 20 cm* for another") + ")"
		}
		parts = append(parts, s+".")
	}
	if y.Slope > 0 {
		parts = append(parts, fmt.Sprintf("It slopes in by %s degrees from upright, as one straight cone (0 upright, 90 flat).", trim(y.Slope, 0)))
	}
	if y.HasBust {
		parts = append(parts, v.YokeDepth(p))
	} else if y.Rows == nil && !v.Paper {
		parts = append(parts, "Say the *bust* or a *yoke depth* and I give the rows and the slope.")
	}
	return strings.Join(parts, " ")
}

// YokeDepth writes the published depth for the bust beside the rule and what
// the plan has.
func (v Voice) YokeDepth(p *engine.Plan) string {
	y, bust := p.Yoke, p.In.Num(engine.Bust)
	d := y.Published
	span := v.Len(d.Low.Float())
	if d.Low.Less(d.High) {
		span += " to " + v.Len(d.High.Float())
	}
	text := fmt.Sprintf("For a bust of %s a round yoke is published **%s** deep from the back neck, without the band (two patterns, morrisandsons.com.au).", v.Len(bust.Float()), span)
	if d.Beyond {
		text += " That bust lies outside their sizes; the nearest size is shown."
	}
	text += fmt.Sprintf(" The rule of a quarter of the girth gives %s", v.Len(d.Rule.Float()))
	if d.Over.Sign() > 0 {
		text += fmt.Sprintf(", which is %s too deep here", v.Len(d.Over.Float()))
	}
	text += "."
	if g := p.In.Num(engine.RowGauge); g.Sign() > 0 && !(y.HasDepth && y.RowsFrom != engine.Bust) {
		rows := func(cm engine.Num) int { return cm.Mul(g).Div(engine.Int(10)).Round() }
		text += fmt.Sprintf(" At your row gauge that is %d to %d rows.", rows(d.Low), rows(d.High))
	}
	switch {
	case !y.HasDepth || y.RowsFrom == engine.Bust:
	case y.Depth.Less(d.Low):
		text += fmt.Sprintf(" Yours is %s shallower.", v.Len(d.Low.Sub(y.Depth).Float()))
	case d.High.Less(y.Depth):
		text += fmt.Sprintf(" Yours is %s deeper.", v.Len(y.Depth.Sub(d.High).Float()))
	default:
		text += " Yours lies within it."
	}
	return text
}
