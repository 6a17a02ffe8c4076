package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// ribSwatch takes measured widths of the same stitches in rib: relaxed beside
// plain or stretched, or one of so many stitches, whose plain width the gauge
// gives.
func (r *reading) ribSwatch() []Set {
	if !r.l.has("rib", "relax", "stretch", "pull") {
		return nil
	}
	at, cm, over := r.ribWidths()
	if len(at) < 2 && over == 0 {
		return nil
	}
	var plain, relaxed, stretched engine.Num
	for n, i := range at {
		switch r.stateNear(i, at, n) {
		case "plain":
			plain = cm[n]
		case "stretched":
			stretched = cm[n]
		default:
			relaxed = cm[n]
		}
	}
	var out []Set
	switch {
	case relaxed.Sign() == 0:
	case plain.Sign() > 0:
		out = append(out, Set{Key: engine.RibDraw, Value: relaxed.Div(plain), Near: 1})
	case over > 0:
		out = append(out, Set{Key: engine.RibDraw, Value: relaxed, Over: over, Near: 1})
	}
	if stretched.Sign() > 0 && relaxed.Sign() > 0 {
		out = append(out, Set{Key: engine.RibStretch, Value: stretched.Div(relaxed), Near: 1})
	}
	return out
}

// ribWidths is the widths of a line, cm, with their tokens, and the stitches
// they were measured over, 0 where none are named.
func (r *reading) ribWidths() (at []int, cm []engine.Num, over int) {
	var unit quantity.Unit
	for _, i := range r.l.quantities() {
		q := *r.l.tokens[i].q
		switch {
		case q.Problem != "" || q.Rib || q.Ordinal || q.Range:
			continue
		case q.Unit == quantity.Row:
			return nil, nil, 0 // a gauge
		case q.Unit == quantity.Stitch:
			over = q.Value.Floor()
			if !q.IsRate() || !isLength(q.OverUnit) {
				continue
			}
			q = quantity.Quantity{Value: q.Over, High: q.Over, Unit: q.OverUnit} // "20 stitches measure 6 cm"
		case q.Unit == "" && unit != "":
			q.Unit = unit // "11 cm relaxed, 23 stretched": the unit is said once
		}
		if v, ok := q.Length(); ok && isLength(q.Unit) && !q.IsRate() {
			at, cm, unit = append(at, i), append(cm, v), q.Unit
		}
	}
	return at, cm, over
}

// stateNear is the state named nearest to the length at token i: after it up
// to a comma or the next length, or just before it, or else after the comma.
func (r *reading) stateNear(i int, lengths []int, n int) string {
	end := len(r.l.tokens)
	if n+1 < len(lengths) {
		end = lengths[n+1]
	}
	after := func(over bool) string {
		for j := i + 1; j < end && !(r.l.tokens[j].stop && (j > i+1 || !over)); j++ {
			if s := swatchState(r.l.tokens[j].stem); s != "" {
				return s
			}
		}
		return ""
	}
	if s := after(false); s != "" {
		return s
	}
	start := -1
	if n > 0 {
		start = lengths[n-1]
	}
	for j := i - 1; j > start; j-- {
		if s := swatchState(r.l.tokens[j].stem); s != "" {
			return s
		}
	}
	return after(true)
}

func swatchState(stem string) string {
	switch stem {
	case "plain", "stockinett", "stocking", "flat":
		return "plain"
	case "stretch", "pull", "open":
		return "stretched"
	case "relax", "rest", "rib", "unstretch":
		return "relaxed"
	}
	return ""
}

// ribGauge: "rib swatch 40 sts": a swatch in rib tells no gauge, since the band
// is knitted plain and latched.
func (r *reading) ribGauge() (Meaning, bool) {
	return Meaning{Kind: Unclear, Problem: Problem{Code: "rib-gauge", Key: engine.StitchGauge}},
		r.l.has("rib") && r.l.has("swatch") && len(r.ribSwatch()) < 2 && r.b.has(engine.StitchGauge) && !r.b.has(engine.RowGauge)
}
