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
