package listen

import (
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
	oneRow := r.l.has("row")
	for _, i := range r.l.quantities() {
		oneRow = oneRow || r.l.tokens[i].q.Unit == "row" && r.l.tokens[i].q.Value.Equal(engine.Int(1))
	}
	if !oneRow || !r.l.has("unravel", "ravel", "unravell", "ravell", "pull", "need", "take", "use", "unpick", "frog", "yarn", "give") || r.asks() {
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
		if q == nil {
			continue
		}
		switch {
		case q.Unit == "st" || q.Over.Sign() > 0:
			v := q.Value
			if p, ok := q.Per10cm(); ok {
				v = p
			}
			gauges = append(gauges, v)
		case q.Unit == "" && r.dialBefore(i):
			dials = append(dials, q.Value)
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

// ribSwatch takes three measured widths of the same stitches, or two.
func (r *reading) ribSwatch() []Set {
	if !r.l.has("rib", "relax", "stretch", "pull") {
		return nil
	}
	lengths, _ := r.measured()
	if len(lengths) == 1 { // "11 cm relaxed, 23 stretched": the unit is said once
		unit := r.l.tokens[lengths[0]].q.Unit
		for _, i := range r.l.quantities() {
			if q := r.l.tokens[i].q; i > lengths[0] && q.Unit == "" && !q.Ordinal && !q.Range {
				same := *q
				same.Unit = unit
				r.l.tokens[i].q = &same
			}
		}
		lengths, _ = r.measured()
	}
	if len(lengths) < 2 {
		return nil
	}
	var plain, relaxed, stretched engine.Num
	for n, i := range lengths {
		v, _ := r.l.tokens[i].q.Length()
		switch r.stateNear(i, lengths, n) {
		case "plain":
			plain = v
		case "stretched":
			stretched = v
		default:
			relaxed = v
		}
	}
	var out []Set
	if plain.Sign() > 0 && relaxed.Sign() > 0 {
		out = append(out, Set{Key: engine.RibDraw, Value: relaxed.Div(plain), Near: 1})
	}
	if stretched.Sign() > 0 && relaxed.Sign() > 0 {
		out = append(out, Set{Key: engine.RibStretch, Value: stretched.Div(relaxed), Near: 1})
	}
	return out
}

// stateNear is the state named nearest to the length at token i: after it up
// to the next length, or else just before it.
func (r *reading) stateNear(i int, lengths []int, n int) string {
	end := len(r.l.tokens)
	if n+1 < len(lengths) {
		end = lengths[n+1]
	}
	for j := i + 1; j < end && !(r.l.tokens[j].stop && j > i+1); j++ {
		if s := swatchState(r.l.tokens[j].stem); s != "" {
			return s
		}
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
	return ""
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
