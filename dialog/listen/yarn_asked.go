package listen

import (
	"strings"

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
	for _, y := range r.x.book.Tables.YarnNames {
		if strings.Contains(r.l.text, strings.ToLower(y.Name)) {
			m.Name = y.Name
		}
	}
	return m, true
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
