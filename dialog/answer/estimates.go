package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// Estimates lists what in the plan was measured by nobody: the estimates that
// it rests on, and the results that move with them, each from its low to its
// high end.
func (v Voice) Estimates(p *engine.Plan) string {
	s := v.Spans(p)
	rows := []string{"| | taken | it may be |", "| --- | --- | --- |"}
	for _, e := range []struct {
		k         engine.Key
		low, high engine.Num
	}{
		{engine.RibDraw, s.DrawLow, s.DrawHigh}, {engine.RibStretch, s.StretchLow, s.StretchHigh},
	} {
		if val := v.Value(p, e.k); val != "" && e.low.Less(e.high) && Matters(e.k, p) {
			rows = append(rows, fmt.Sprintf("| %s | %s | %s |", v.Label(e.k), val, v.span(e.k, e.low.Float(), e.high.Float())))
		}
	}
	if card, ok := v.Book.Key(engine.NumberEffect); ok && p.In.Has(engine.NumberEffect) && p.In.Num(engine.NumberEffect).Equal(card.Default) {
		rows = append(rows, fmt.Sprintf("| %s | %s | %s |", card.Label, v.Value(p, engine.NumberEffect), v.span(engine.NumberEffect, card.Usual[0].Float(), card.Usual[1].Float())))
	}
	for _, k := range compared {
		low, high, ok := p.Spread(k, s)
		if ok && v.Figure(k, low) != v.Figure(k, high) {
			rows = append(rows, fmt.Sprintf("| %s | %s | %s |", v.Label(k), v.Value(p, k), v.span(k, low, high)))
		}
	}
	if len(rows) == 2 {
		return "Nothing in the plan is an estimate: it follows from what you measured."
	}
	text := strings.Join(rows, "\n")
	if note := v.KindNote(p); note != "" {
		text += "\n\n" + note
	}
	return text + "\n\nStitches, needles and decreases are exact for your gauge. A swatch of the rib, relaxed and stretched, and the gauge at two dial numbers make the rest yours."
}

// KindNote says that a kind of band rests on our own figures, "" where it does
// not.
func (v Voice) KindNote(p *engine.Plan) string {
	if p.In.Text(engine.KeyBandKind) != engine.BandMock {
		return ""
	}
	return "How far a mock rib draws in and stretches is not published: its figures are our estimate, so try it on before you cut the yarn."
}

// OwnEstimate is what result k rests on where the kind of band makes that our
// own figures and not the published ones of the card; "" elsewhere.
func (v Voice) OwnEstimate(p *engine.Plan, k engine.Key) string {
	switch k {
	case engine.RelaxedCircumference, engine.StretchedCircumference, engine.HeadOpening, engine.HeadMissing, engine.SlitLength, engine.TopRoom:
	default:
		return ""
	}
	if v.KindNote(p) == "" {
		return ""
	}
	s := v.Spans(p)
	return fmt.Sprintf("For a mock rib nothing is published; draw-in %s (%s to %s) and stretch %s (%s to %s) are our own.",
		v.Value(p, engine.RibDraw), trim(s.DrawLow.Float(), 2), trim(s.DrawHigh.Float(), 2),
		v.Value(p, engine.RibStretch), trim(s.StretchLow.Float(), 2), trim(s.StretchHigh.Float(), 2))
}
