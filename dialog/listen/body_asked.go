package listen

import (
	"strings"

	"foldrow/engine"
)

// bodyOf: "what neck for a 2 year old", "head size of a man": what the tables
// have for that wearer. Whom it is for is not set by it.
func (r *reading) bodyOf() (Meaning, bool) {
	if !r.l.has("head", "neck") {
		return Meaning{}, false // most lines: whom it is for need not be looked for
	}
	if _, worn := r.whom(); !worn || r.cue(Why) || r.cue(WhatIf) && r.l.has("if", "suppos") || r.cue(Compare) && r.l.has("compar") || r.b.problem.Code != "" ||
		r.l.has("fit", "pass", "over", "through", "small", "smallest", "ease") || r.setsBut(engine.KeyWearer) {
		return Meaning{}, false
	}
	for _, k := range []engine.Key{engine.Head, engine.Neck} { // one of them leads the line
		word := map[engine.Key]string{engine.Head: "head", engine.Neck: "neck"}[k]
		noun := r.beginsWith([]string{word, "of"}) || r.beginsWith([]string{word, "size", "of"}) || r.beginsWith([]string{word, "girth", "of"}) || r.beginsWith([]string{word, "size", "for"})
		ask := r.beginsWith([]string{"what", word}) || r.beginsWith([]string{"which", word}) || r.beginsWith([]string{"how", "big", "a", word}) || r.beginsWith([]string{"how", "wide", "a", word})
		if noun || ask {
			return r.measureMeaning("usual", []engine.Key{k}), true
		}
	}
	return Meaning{}, false
}

// kindsAsked: "machine classes", "which machines are there", "which head sizes
// do you know": what there is of it.
func (r *reading) kindsAsked() (Meaning, bool) {
	if len(r.b.sets) > 0 || len(r.l.quantities()) > 0 || r.cue(Why) || r.cue(WhatIf) || r.ctx.Open != "" && r.ctx.Open != "keep" {
		return Meaning{}, false
	}
	all := r.l.has("there", "exist", "know") && r.asks()
	alone := r.l.words() <= 4 && !r.asks() || r.l.words() <= 4 && r.beginsWith([]string{"show", "me"})
	class := r.l.has("class", "classes") && r.l.has("machine", "machines", "bed", "gauge")
	switch {
	case all && r.l.has("machine", "machines", "bed", "beds") && (class || r.beginsWith([]string{"which"}) || r.beginsWith([]string{"what"})) && r.contentLeft() <= 3:
		return Meaning{Kind: Measure, Topic: "usual", Keys: []engine.Key{engine.KeyMachine}}, true
	case alone && class && strings.Contains(r.l.text, "classes"):
		return Meaning{Kind: Measure, Topic: "usual", Keys: []engine.Key{engine.KeyMachine}}, true
	case (all || alone) && r.l.has("head", "heads") && r.l.has("size", "sizes", "table", "tables"):
		return Meaning{Kind: Measure, Topic: "usual", Keys: []engine.Key{engine.Head}}, true
	}
	return Meaning{}, false
}

// babyOpening: "why so big an opening for a baby".
func (r *reading) babyOpening() (Meaning, bool) {
	if !r.cue(Why) && !(r.asks() && r.l.has("need", "want") && r.l.has("opening", "slit")) || !r.l.has("baby", "babies", "toddler", "newborn", "child", "children", "infant") || !r.l.has("opening", "slit", "open", "big", "wide", "button") || len(r.l.quantities()) > 0 || r.l.has("safe", "chok", "choke") {
		return Meaning{}, false
	}
	return Meaning{Kind: HowTo, Card: "baby-opening"}, true
}

// weakerEdge: "which edge is the weaker" asks about the opening over the head.
func (r *reading) weakerEdge() (Meaning, bool) {
	if !r.l.has("edge") || !r.l.has("weak", "weaker", "weakest") || !r.asks() || len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{engine.HeadOpening}}, true
}

// tightnessMeans: "what does a tightness of 1.4 mean".
func (r *reading) tightnessMeans() (Meaning, bool) {
	qs := r.l.quantities()
	if !r.l.has("tightness", "tight") || !r.l.has("factor", "mean", "tightness") || len(qs) > 1 || !r.asks() {
		return Meaning{}, false
	}
	for _, m := range r.l.mentions {
		if m.key != engine.Tightness {
			continue
		}
		out := Meaning{Kind: Number, Topic: "tightness", Keys: []engine.Key{engine.Tightness}}
		if len(qs) == 1 && r.l.tokens[qs[0]].q.Unit == "" && r.l.tokens[qs[0]].q.Value.Sign() > 0 {
			out.Figure, out.HasFig = r.l.tokens[qs[0]].q.Value, true
		}
		return out, out.HasFig || r.l.has("mean", "for", "what")
	}
	return Meaning{}, false
}

// estimates: "which numbers are estimates", "are these figures sure".
func (r *reading) estimates() (Meaning, bool) {
	if len(r.b.sets) > 0 || len(r.l.quantities()) > 0 || !r.asks() || r.cue(Why) || r.cue(WhatIf) && r.l.has("if") || len(r.results()) > 0 {
		return Meaning{}, false
	}
	about := r.l.has("figure", "figures", "number", "numbers", "plan", "value", "values") || r.beginsWith([]string{"what", "is"}) || r.beginsWith([]string{"which", "are"})
	if r.l.has("estimate", "estimates", "estimated", "guess", "guesses", "guessed", "uncertain", "unsure") && about ||
		r.l.has("sure", "certain", "exact", "reliable", "trust") && r.l.has("figures", "numbers", "values") && !r.l.has("how", "you") {
		return Meaning{Kind: Show, Topic: "estimates"}, true
	}
	return Meaning{}, false
}

// stepsChange: "what changes in the steps" with this kind of band.
func (r *reading) stepsChange() (Meaning, bool) {
	if !r.asks() || !r.l.has("steps", "step") || !r.l.has("change", "changes", "chang", "different", "differ", "differenc") || len(r.b.sets) > 0 || len(r.l.quantities()) > 0 || r.cue(Why) || r.ctx.Open != "" && r.ctx.Open != "keep" {
		return Meaning{}, false
	}
	return Meaning{Kind: Show, Topic: "steps"}, true
}
