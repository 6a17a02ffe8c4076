package listen

import (
	"foldrow/dialog/listen/quantity"

	"foldrow/engine"
)

// machineFit: which class of machine suits the yarn or the gauge, with what
// the question brings of them.
func (r *reading) machineFit() (Meaning, bool) {
	if !r.cue("machine-fit") || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number, Topic: "machine-fit", Keys: []engine.Key{engine.StitchPitch}}
	for _, s := range r.b.sets {
		switch s.Key {
		case engine.StitchGauge, engine.NeedlePitch, engine.KeyMachine:
			m.Sets = append(m.Sets, s)
		default:
			return Meaning{}, false
		}
	}
	if y, ok := r.x.book.Tables.YarnNamed(r.l.text); ok {
		m.Name = y.Name
	}
	return m, true
}

// yarnNamed: "my yarn is 4 ply", "how many metres has DK", "is aran right for this
// gauge": a trade name is held against the gauge, and sets nothing: the band on
// the ball tells the metres.
func (r *reading) yarnNamed() (Meaning, bool) {
	if r.l.words() > 9 || r.b.has(engine.YarnLength) || r.ctx.Making || r.l.has("waste", "wast", "machine", "machin", "bed", "split", "count") {
		return Meaning{}, false
	}
	if r.b.has(engine.KeyMachine) && !r.says("yarn", "wool", "ply") {
		return Meaning{}, false // "it is chunky" may be the machine
	}
	y, ok := r.x.book.Tables.YarnNamed(r.l.text)
	if r.says("strand", "held", "together", "twice") {
		return Meaning{}, false // "two strands of 4 ply" is a thicker yarn
	}
	if !ok || !r.says("yarn", "wool", "ply", "use", "using", "knit", "metre", "meter", "yard", "gauge", "right", "suit", "weight", "thick") && r.l.words() > 3 {
		return Meaning{}, false
	}
	for _, i := range r.l.quantities() { // "4 ply" is a name
		if q := r.l.tokens[i].q; q.Unit != "" && q.Unit != quantity.Gram || q.Value.Cmp(engine.Int(12)) > 0 && q.Unit == "" {
			return Meaning{}, false
		}
	}
	return Meaning{Kind: Number, Topic: "yarn-named", Name: y.Name, Keys: []engine.Key{engine.YarnLength}}, true
}

// yarnAsked: whether a yarn suits the gauge, and what the yarn left allows.
func (r *reading) yarnAsked() (Meaning, bool) {
	if !r.asks() || r.l.has("waste", "wast", "scrap", "ravel") || r.b.problem.Code != "" || r.cue(Why) || r.cue(WhatIf) && r.l.has("if", "suppos") {
		return Meaning{}, false
	}
	for _, topic := range []Kind{"yarn-right", "yarn-allows"} {
		if r.cue(topic) {
			return Meaning{Kind: Number, Topic: string(topic), Keys: []engine.Key{engine.YarnLength}, Sets: dedupe(r.b.sets)}, true
		}
	}
	return Meaning{}, false
}

// ballsAsked: "how many balls do I need", "how many balls of 50 g"; the weight
// is of one ball and no yarn that is left.
func (r *reading) ballsAsked() (Meaning, bool) {
	t := r.l.tokens
	if !r.l.has("ball", "skein", "hank") || !r.l.has("many", "number") || r.cue(WhatIf) && r.l.has("if") || r.cue(Why) {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number, Topic: "balls", Keys: []engine.Key{engine.BandYarnGrams}}
	for _, i := range r.l.quantities() {
		g, ok := t[i].q.Grams()
		if !ok || m.HasFig || t[i].q.Range || t[i].q.Problem != "" || g.Sign() <= 0 {
			return Meaning{}, false
		}
		m.Figure, m.HasFig, m.FigUnit = g, true, "g"
	}
	return m, true
}
