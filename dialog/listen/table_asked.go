package listen

import (
	"strings"

	"foldrow/engine"
)

// tableAsked: what the tables of rules/ have, of which nothing is set.
func (r *reading) tableAsked() (Meaning, bool) {
	return r.first((*reading).kindsAsked, (*reading).tableNeck, (*reading).bodyOf)
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

// tableNeck: "neck for age 4?" asks for what the tables give, not for the neck of
// this plan.
func (r *reading) tableNeck() (Meaning, bool) {
	if _, worn := r.whom(); !worn || !r.l.has("age", "aged", "ag") || r.setsBut(engine.KeyWearer) || r.b.problem.Code != "" || r.cue(WhatIf) && r.l.has("if") || r.l.words() > 8 {
		return Meaning{}, false
	}
	k := engine.Key("")
	for _, m := range r.l.mentions {
		switch m.key {
		case engine.Neck, engine.NeckResult, engine.NeckBody:
			k = engine.Neck
		case engine.Head:
			k = engine.Head
		}
	}
	if k == "" || r.l.has("fit", "pass", "over", "set", "make", "stitch") {
		return Meaning{}, false
	}
	return r.measureMeaning("usual", []engine.Key{k}), true
}

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
