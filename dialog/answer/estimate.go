package answer

import (
	"fmt"

	"foldrow/engine"
	"foldrow/rules"
)

// Estimate says what an estimated result rests on: the spread of the figure
// behind it, or the knitter's own figure where she told one. A card writes
// {effect_span}, {draw_span}, {stretch_span} or {edge_span} for these.
func (v Voice) Estimate(p *engine.Plan, card rules.ResultCard) string {
	r, s := v.Book.Factors(p.In), v.Spans(p).Published()
	return fill(card.Estimate, func(name string) string {
		switch name {
		case "effect_span":
			if p.In.Has(engine.ClickEffect) {
				return own(v.Value(p, engine.ClickEffect) + " a click")
			}
			return spanOr(own(v.Value(p, engine.NumberEffect)), s.EffectLow, s.EffectHigh, " %")
		case "draw_span":
			return spanOr(own(v.Value(p, engine.RibDraw)), s.DrawLow, s.DrawHigh, ribOf(p, r))
		case "stretch_span":
			return spanOr(own(v.Value(p, engine.RibStretch)), s.StretchLow, s.StretchHigh, ribOf(p, r))
		case "edge_span":
			return spanOr(own(v.Value(p, engine.EdgeStretch)), s.EdgeLow, s.EdgeHigh, "")
		}
		return v.placeholder(p, engine.Key(name))
	})
}

func own(value string) string { return value + " as you told it" }

// spanOr is the spread of a figure, or what the knitter told where it has none.
func spanOr(told string, low, high engine.Num, after string) string {
	if !low.Less(high) {
		return told
	}
	return fmt.Sprintf("%s to %s%s", trim(low.Float(), 2), trim(high.Float(), 2), after)
}

// ribOf names the rib that a spread is for, and whether a figure of its own is
// published.
func ribOf(p *engine.Plan, r rules.RibCard) string {
	if !p.In.Rib.IsSet() || p.In.Rib.IsPlain() {
		return ""
	}
	if !r.Measured {
		return " for " + p.In.Rib.String() + ", by our own reckoning between published ribs"
	}
	return " for " + p.In.Rib.String()
}
