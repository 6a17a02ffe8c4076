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

// onlyAsked: a choice's word in a plain question is what the question is
// about, and names no input: "what is mock rib".
func (r *reading) onlyAsked(k engine.Key) bool {
	return r.b != nil && ours(k) && r.b.questionOnly() && !r.cue(Why)
}

// askedChoice: a plain question about a class of machine ("what does a dial
// number mean on a standard machine") or about setting a fibre ("can I steam
// acrylic yarn").
func (r *reading) askedChoice() (Meaning, bool) {
	if r.b == nil || !r.b.questionOnly() || r.cue(Why) {
		return Meaning{}, false
	}
	for _, m := range r.l.mentions {
		if m.key == engine.RestHours && strings.HasPrefix(r.l.text, "how long") && r.ctx.Open != "gauge" {
			return Meaning{Kind: Number, Keys: []engine.Key{engine.RestHours}}, true
		}
		ask := m.key == engine.KeyMachine && (!m.beside && r.l.has("dial", "number", "mark", "needl", "pitch", "mean", "wide", "bed", "machin")) ||
			m.key == engine.KeyFibre && r.l.has("set", "block", "steam", "press", "iron", "wash", "dry", "rest", "heat", "finish", "pin")
		if m.text != "" && ask {
			kind := Measure
			if m.key == engine.KeyFibre && oneOf(r.l.tokens[r.l.begin].text, []string{"how", "can", "may", "should", "could"}) {
				kind = HowTo
			}
			return Meaning{Kind: kind, Topic: "choice", Name: m.text, Keys: []engine.Key{m.key}}, true
		}
	}
	return Meaning{}, false
}
