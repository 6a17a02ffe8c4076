package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// calibration reads measured values and what they make of the estimates: the
// arithmetic is one division each, done exactly.
//
//   - a swatch of 50 stitches and 60 rows weighs 9 g -> stitch_weight
//   - a row of 40 stitches gave 56 cm of yarn       -> row_yarn
//   - 28.5 stitches at dial 5, 30 at dial 4         -> number_effect
//   - rib swatch: 10 cm plain, 7 relaxed, 14 pulled -> rib_draw, rib_stretch
//   - 20 stitches in rib measure 6 cm at rest       -> rib_draw
//   - the sewn edge goes from 20 to 27 cm           -> edge_stretch
func (r *reading) calibration() (Meaning, bool) {
	for _, try := range []func() []Set{r.weighed, r.rowYarn, r.twoDials, r.edgeStretch, r.ribSwatch} {
		if sets := try(); len(sets) > 0 {
			return Meaning{Kind: Values, Topic: "calibrate", Sets: sets}, true
		}
	}
	return Meaning{}, false
}

// measured lists the line's quantities by sort.
func (r *reading) measured() (lengths, stitches []int) {
	for _, i := range r.l.quantities() {
		switch q := r.l.tokens[i].q; {
		case q.Problem != "" || q.Rib:
		case isLength(q.Unit) && q.Over.Sign() == 0:
			lengths = append(lengths, i)
		case q.Unit == "st":
			stitches = append(stitches, i)
		}
	}
	return lengths, stitches
}

// weighed: a swatch of known stitches and rows on the scale.
func (r *reading) weighed() []Set {
	if !r.l.has("weigh", "weight", "scale") {
		return nil
	}
	var grams engine.Num
	stitches, rows := 0, 0
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		g, weight := q.Grams()
		switch {
		case q.Problem != "" || q.Range:
			return nil
		case weight && q.Unit != "":
			grams = g
		case q.Unit == quantity.Stitch:
			stitches = q.Value.Floor()
		case q.Unit == quantity.Row:
			rows = q.Value.Floor()
		case q.Unit == "" && stitches == 0:
			stitches = q.Value.Floor() // "50 by 60"
		case q.Unit == "":
			rows = q.Value.Floor()
		}
	}
	w, ok := engine.StitchWeightOf(grams, stitches, rows)
	if !ok {
		return nil
	}
	return []Set{{Key: engine.StitchWeight, Value: w, Near: 1}}
}

func (r *reading) rowYarn() []Set {
	oneRow := r.l.has("row", "unravel", "unravell", "unpick", "frog") // of a row, if nothing else is said
	for _, i := range r.l.quantities() {
		oneRow = oneRow || r.l.tokens[i].q.Unit == "row" && r.l.tokens[i].q.Value.Equal(engine.Int(1))
	}
	if !oneRow || !r.l.has("unravel", "ravel", "unravell", "ravell", "pull", "need", "take", "use", "unpick", "frog", "yarn", "give") && !r.tookWithin() || r.asks() && !r.l.has("if") {
		return nil
	}
	for _, i := range r.l.quantities() { // "40 stitches measure 56 cm" may be read as one rate
		if q := r.l.tokens[i].q; q.Unit == "st" && q.Over.Sign() > 0 && isLength(q.OverUnit) {
			over := quantity.Quantity{Value: q.Over, High: q.Over, Unit: q.OverUnit}
			cm, _ := over.Length()
			return rowYarnSet(cm, q.Value, q.OverUnit)
		}
	}
	lengths, stitches := r.measured()
	if len(lengths) != 1 || len(stitches) != 1 {
		return nil
	}
	q := r.l.tokens[lengths[0]].q
	cm, _ := q.Length()
	return rowYarnSet(cm, r.l.tokens[stitches[0]].q.Value, q.Unit)
}

// tookWithin: the verb lies inside what is read as one rate, "40 stitches took
// 56 cm".
func (r *reading) tookWithin() bool {
	for _, verb := range []string{" took ", " takes ", " take ", " gave ", " used ", " needed "} {
		if strings.Contains(r.l.text, verb) {
			return true
		}
	}
	return false
}

func rowYarnSet(cm, stitches engine.Num, u quantity.Unit) []Set {
	v, ok := engine.RowYarnOf(cm, stitches.Floor())
	if !ok || !stitches.IsInt() {
		return nil
	}
	return []Set{{Key: engine.RowYarn, Value: v, Unit: unitSystem(u), Near: 1}}
}

// twoDials pairs two gauges with two dial numbers.
func (r *reading) twoDials() []Set {
	type at struct{ gauge, dial engine.Num }
	var seen []at
	var gauges, dials []engine.Num
	flush := func() {
		if len(gauges) > 0 && len(dials) > 0 {
			seen = append(seen, at{gauges[0], dials[0]})
			gauges, dials = gauges[1:], dials[1:]
		}
	}
	for i, t := range r.l.tokens {
		if d, ok := dialToken(t.text); ok && t.q == nil {
			dials = append(dials, d)
			flush()
			continue
		}
		q := t.q
		if q == nil || q.Words && r.wordAfter(i, "swatch") {
			continue // "two swatches"
		}
		switch {
		case q.Unit == "st" || q.Over.Sign() > 0:
			v := q.Value
			if p, ok := q.Per10cm(); ok {
				v = p
			}
			gauges = append(gauges, v)
		case q.Pair && len(gauges) > 0 && i > 0 && r.l.tokens[i-1].q != nil:
			continue // the rows of "28/40"
		case q.Unit == "" && (r.dialBefore(i) || len(gauges) > 0 && r.wordBefore(i, "at")):
			dials = append(dials, q.Value)
		case q.Unit == "" && i > 0 && r.l.tokens[i-1].q != nil && !t.stop:
			continue // "28 sts/10 at T6": over 10 cm
		case q.Unit == "":
			gauges = append(gauges, q.Value)
		}
		flush()
	}
	if len(seen) != 2 {
		return nil
	}
	// one click to a number: the effect of a whole number is wanted
	effect, ok := engine.Calibrate(seen[0].gauge, seen[0].dial, seen[1].gauge, seen[1].dial, 1)
	if !ok {
		return nil
	}
	return []Set{{Key: engine.NumberEffect, Value: effect, Near: 1}}
}

// dialToken reads "d5" or "t4".
func dialToken(w string) (engine.Num, bool) {
	if len(w) < 2 || len(w) > 4 || w[0] != 'd' && w[0] != 't' {
		return engine.Num{}, false
	}
	return engine.ParseNum(w[1:])
}

func (r *reading) dialBefore(i int) bool {
	t := r.l.tokens[i]
	if t.start < t.end && (r.l.text[t.start] == 'd' || r.l.text[t.start] == 't') {
		return true
	}
	for j := i - 1; j >= 0 && j >= i-2; j-- {
		switch r.l.tokens[j].text {
		case "dial", "tension", "number", "t", "d", "mt", "setting":
			return true
		}
	}
	return false
}

func (r *reading) edgeStretch() []Set {
	if !r.l.has("edge") || !r.l.has("stretch", "pull") {
		return nil
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if q.Range && isLength(q.Unit) && q.Value.Sign() > 0 {
			return []Set{{Key: engine.EdgeStretch, Value: q.High.Div(q.Value), Near: 1}}
		}
	}
	lengths, _ := r.measured()
	if len(lengths) == 1 {
		return r.edgeFrom(lengths[0])
	}
	if len(lengths) != 2 {
		return nil
	}
	a, _ := r.l.tokens[lengths[0]].q.Length()
	b, _ := r.l.tokens[lengths[1]].q.Length()
	if b.Less(a) {
		a, b = b, a
	}
	return []Set{{Key: engine.EdgeStretch, Value: b.Div(a), Near: 1}}
}

// edgeFrom: "the edge of 10 cm stretches to 15": the unit at token from is said
// once.
func (r *reading) edgeFrom(from int) []Set {
	rest := r.l.tokens[from].q
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; i > from && q.Unit == "" && q.Value.Sign() > 0 && rest.Value.Sign() > 0 {
			return []Set{{Key: engine.EdgeStretch, Value: q.Value.Div(rest.Value), Near: 1}}
		}
	}
	return nil
}

// calibrate: measured values that set an effect.
func (r *reading) calibrate() (Meaning, bool) {
	supposed := r.cue(WhatIf) && r.l.has("if")
	if r.asks() && !supposed || len(r.l.quantities()) == 0 {
		return Meaning{}, false
	}
	m, ok := r.calibration()
	switch {
	case supposed:
		m.Kind = WhatIf
		return m, ok && (holds(m.Sets, engine.StitchWeight) || holds(m.Sets, engine.RowYarn))
	case ok:
		return m, true
	}
	return r.ribGauge()
}
