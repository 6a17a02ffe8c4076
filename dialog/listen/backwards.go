package listen

import (
	"slices"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// backwards: a question with a value in it, which serves that answer only.
func (r *reading) backwards() (Meaning, bool) {
	if r.mayHave() || !r.asks() && !r.bareAsk() && (r.extreme() == "" || r.l.tokens[r.l.begin].q != nil) || r.cue(Shake) && r.l.has("wrong", "out", "off", "error") {
		return Meaning{}, false
	}
	if first := r.l.tokens[r.l.begin].text; r.ctx.Open != "" && r.ctx.Open != "keep" && (first == "is" || first == "are" || first == "do") {
		return Meaning{}, false // "is that the depth of the folded band" asks how to measure
	}
	if len(r.b.sets) > 0 && len(r.l.quantities()) == 0 && r.permits() && !r.counts() && r.ctx.Open == "" {
		return Meaning{}, false // "can the tension stay the same" supposes it
	}
	m := Meaning{Kind: Backwards, Keys: r.whichNeedles(r.results()), Sets: dedupe(r.b.sets)}
	if len(m.Keys) == 0 {
		m.Keys = r.inputs()
	}
	if len(engine.WithoutKey(m.Keys, engine.DepthRows)) == 0 && r.b.has(engine.DepthRows) && r.lengthAsked() {
		m.Keys = []engine.Key{engine.DepthResult}
	}
	if len(m.Sets) == 1 && m.Sets[0].Bare && (m.Sets[0].Key == engine.Neck || m.Sets[0].Key == engine.StitchGauge) && !within(m.Sets[0].Value, r.x.spans[m.Sets[0].Key].Possible) {
		m.Sets = nil // "neck from 101", "what gauge gives 101": the 101 are stitches
	}
	r.countsSaid(&m)
	if count, gauge, ok := r.countAndGauge(m.Keys); ok {
		m.Sets = []Set{gauge, count}
		if !slices.Contains(m.Keys, engine.Neck) && !slices.Contains(m.Keys, engine.NeckResult) {
			m.Keys = []engine.Key{engine.NeckResult}
		}
		r.b.problem = Problem{}
	}
	if r.b.problem.Code != "" || r.howToForm() {
		return Meaning{}, false
	}
	if len(m.Keys) == 1 && m.Keys[0] == engine.Rehang && r.l.has("where", "wher") {
		return r.fromYoke(m), true
	}
	extreme := r.extreme()
	for _, s := range m.Sets {
		m.Keys = engine.WithoutKey(m.Keys, s.Key)
	}
	if e := r.l.end; len(m.Keys) == 0 && e > 1 && r.l.tokens[e-1].text == "many" && r.l.tokens[e-2].text == "how" {
		m.Keys = []engine.Key{engine.BandStitches} // "a 42 neck takes how many?"
	}
	if extreme != "" && len(m.Keys) == 0 {
		m.Keys = []engine.Key{engine.NeckResult}
	}
	if len(m.Sets) == 0 && extreme == "" || len(m.Keys) == 0 {
		return Meaning{}, false
	}
	m.Topic = extreme
	if extreme == "" && forward(m.Sets) {
		m.Kind = Number
	}
	return m, true
}

// countsSaid notes the figure of the question, and takes bare counts and
// stitches as those of the band.
func (r *reading) countsSaid(m *Meaning) {
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if !q.After && !q.Rib {
			m.Figure, m.HasFig, m.FigUnit = q.Value, true, q.Unit
		}
		bareCount := q.Unit == "" && q.Value.IsInt() && len(m.Sets) == 0 && len(m.Keys) > 0 && (m.Keys[0] == engine.Neck || m.Keys[0] == engine.NeckResult || m.Keys[0] == engine.StitchGauge) && engine.Int(60).Less(q.Value)
		if r.b.has(engine.YokeStitches) && r.l.has("waste", "wast", "wait", "hold", "yok", "yoke") {
			continue // they wait: "I have 140 stitches on waste yarn"
		}
		if bareCount || q.Unit == "st" && !q.Ordinal && q.Over.Sign() == 0 {
			m.Sets = append(onlyOthers(m.Sets, q), Set{Key: engine.BandStitches, Value: q.Value, Near: 1})
		}
	}
}

// fromYoke: "from 132 stitches to 105, where do I put the decreases": the
// count said first waits on the yoke.
func (r *reading) fromYoke(m Meaning) Meaning {
	for n := range m.Sets {
		if m.Sets[n].Key == engine.BandStitches {
			m.Sets[n].Key = engine.YokeStitches
		}
	}
	m.Kind = Number
	return m
}

// countAndGauge: "the neck with 110 stitches and 27 sts gauge", "98 sts at 26":
// of two numbers the larger counts the band, the smaller is the gauge.
func (r *reading) countAndGauge(keys []engine.Key) (count, gauge Set, ok bool) {
	qs := r.l.quantities()
	if len(qs) != 2 || !slices.Contains(keys, engine.Neck) && !slices.Contains(keys, engine.NeckResult) && !slices.Contains(keys, engine.StitchGauge) {
		return count, gauge, false
	}
	var g, n engine.Num
	gaugeOnly := !slices.Contains(keys, engine.Neck) && !slices.Contains(keys, engine.NeckResult)
	for _, i := range qs {
		q := r.l.tokens[i].q
		v := q.Value
		if per, rate := q.Per10cm(); rate {
			v = per
		} else if q.Unit != "" && q.Unit != "st" || q.Ordinal || q.Range || q.Rib || q.Sign != 0 || q.Problem != "" {
			return count, gauge, false
		}
		switch {
		case within(v, [2]engine.Num{engine.Int(50), engine.Int(400)}) && v.IsInt():
			n = v
		case within(v, r.x.spans[engine.StitchGauge].Usual):
			g = v
		}
		if gaugeOnly && q.Unit == "" && within(v, r.x.spans[engine.Neck].Usual) {
			return count, gauge, false // "the gauge that gives 40 with 105"
		}
	}
	if n.Sign() == 0 || g.Sign() == 0 {
		return count, gauge, false
	}
	return Set{Key: engine.BandStitches, Value: n, Near: 1}, Set{Key: engine.StitchGauge, Value: g, Near: 1}, true
}

// countDoubted: "my neighbour says I need 90 stitches, is she wrong?" asks what
// another count would give.
func (r *reading) countDoubted() (Meaning, bool) {
	n, is := r.stitchesSupposed()
	if !is || !r.asks() || r.b.problem.Code != "" || len(r.results()) > 1 || !r.l.has("say", "need", "enough", "wrong", "right", "ok", "okay", "think", "work", "told") || r.ctx.Open != "" && r.ctx.Open != "keep" || r.cue(Why) || len(r.b.sets) > 1 {
		return Meaning{}, false
	}
	for _, s := range r.b.sets {
		if s.Key != engine.BandStitches && s.Key != engine.YokeStitches || r.l.has("yoke", "yok") {
			return Meaning{}, false
		}
	}
	return Meaning{Kind: Backwards, Keys: []engine.Key{engine.NeckResult}, Sets: []Set{{Key: engine.BandStitches, Value: n, Near: 1}}}, true
}

// lengthAsked: "20 rows make how many cm".
func (r *reading) lengthAsked() bool {
	for i := r.l.begin; i+2 < r.l.end; i++ {
		if r.countsAt(i) {
			switch r.l.tokens[i+2].text {
			case "cm", "centimetres", "centimeters", "centimetre", "centimeter", "inches", "inch", "mm":
				return true
			}
		}
	}
	return false
}

// ribFor: "which rib fits 118 stitches" asks which ribs close on a count.
func (r *reading) ribFor() (Meaning, bool) {
	qs := r.l.quantities()
	if len(qs) != 1 || !r.asks() || !slices.Contains(r.inputs(), engine.KeyRib) || !r.l.has("which", "what", "rib") || r.b.has(engine.KeyRib) || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	q := r.l.tokens[qs[0]].q
	if q.Unit != "" && q.Unit != "st" || !q.Value.IsInt() || q.Value.Less(engine.Int(20)) || q.Ordinal || q.Over.Sign() > 0 {
		return Meaning{}, false
	}
	return Meaning{Kind: Backwards, Keys: []engine.Key{engine.KeyRib}, Sets: []Set{{Key: engine.BandStitches, Value: q.Value, Near: 1}}}, true
}

// nounFor: a number's name and "for" begin the line.
func (r *reading) nounFor() bool {
	for _, m := range r.l.mentions {
		if m.result && m.from == r.l.begin && m.to < r.l.end {
			return oneOf(r.l.tokens[m.to].text, []string{"for", "needed", "from", "giving"})
		}
	}
	return false
}

// bareAsk: "rows for 4 cm", "neck from 101 stitches": a question without the
// form of one.
func (r *reading) bareAsk() bool {
	if len(r.l.tokens) == 0 || r.l.begin >= r.l.end {
		return false
	}
	for _, m := range r.l.mentions {
		if m.from == r.l.begin && m.to < r.l.end {
			switch r.l.tokens[m.to].text {
			case "for", "from", "with", "if":
				return true
			case "that", "which", "giving", "needed": // "gauge that gives 105"
				return r.l.has("give", "giv", "make", "need", "suit", "fit", "get")
			case "in", "on", "without", "using", "when", "under": // "stitches in 2x2", "lean without grading"
				if m.result && r.ofOthers(m) && !oneOf(r.l.tokens[min(m.to+1, r.l.end-1)].text, []string{"thirds", "halves", "quarters"}) {
					return true
				}
			case "of", "at": // "depth of 16 rows", but not "depth of 3 cm"
				i := m.to + 1
				return i < len(r.l.tokens) && r.l.tokens[i].q != nil && !accepts(r.x.spans[m.key].Dimension, r.l.tokens[i].q)
			}
		}
	}
	return false
}

// ofOthers: what the line sets is something else than the number that m names.
func (r *reading) ofOthers(m mention) bool {
	if r.ctx.Open != "" && r.ctx.Open != "keep" || r.ctx.Making || r.b.has(engine.YarnLeft) || r.b.has(engine.YokeStitches) || r.b.has(engine.HemEvery) {
		return false
	}
	for _, o := range r.l.mentions {
		if o.from == m.from && r.b.has(o.key) {
			return false
		}
	}
	return len(r.b.sets) > 0
}

// forward: the question goes the way of the plan, from what is said to what
// comes of it ("how many stitches for a 45 cm neck"). Backwards is the other
// way: from a count of stitches or rows.
func forward(sets []Set) bool {
	for _, s := range sets {
		if s.Key == engine.BandStitches || s.Key == engine.DepthRows {
			return false
		}
	}
	return len(sets) > 0
}

// onlyOthers drops sets that the same stitches would give another meaning.
func onlyOthers(sets []Set, q *quantity.Quantity) []Set {
	var out []Set
	for _, s := range sets {
		if s.Value.Equal(q.Value) && (s.Key == engine.YokeStitches || s.Key == engine.BedNeedles || s.Key == engine.StitchGauge) {
			continue
		}
		out = append(out, s)
	}
	return out
}

// extreme: the deepest, longest, loosest... that something allows.
func (r *reading) extreme() string {
	switch {
	case r.l.has("deepest", "highest", "tallest") || r.l.has("deep", "row", "depth", "band") && r.l.has("most", "max", "maximum") && !r.l.has("neck"):
		return "deepest"
	case r.l.has("deep", "deeper", "depth", "row", "most", "much", "far") && r.l.has("can", "could") && r.b.has(engine.YarnLeft):
		return "deepest"
	case r.l.has("float"):
		return ""
	case r.l.has("longest", "widest", "biggest", "largest") || r.l.has("neck") && r.l.has("max", "maximum", "most"):
		return "longest"
	case r.l.has("deep", "deeper", "depth", "far") && r.l.has("can", "could", "possible") && r.l.has("yarn", "wool") && r.l.has("have", "left", "got", "remain", "available", "hand"):
		return "deepest"
	case (r.l.has("loosest", "tightest") || r.l.has("loose", "tight") && r.l.has("can", "may", "could")) && r.l.has("gaug", "swatch", "gauge"):
		return "gauge"
	}
	return ""
}
