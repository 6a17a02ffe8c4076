package listen

import (
	"strings"

	"foldrow/engine"
)

// loneButtons: "buttons?" asks how the garment is closed: by the buttonholes of
// a cardigan, by a slit in a pullover.
func (r *reading) loneButtons() (Meaning, bool) {
	if r.ctx.Open != "" || r.l.words() != 1 || r.l.tokens[r.l.begin].stem != stem("button") {
		return Meaning{}, false
	}
	if r.ctx.Closed {
		return Meaning{Kind: HowTo, Card: "slit-closing"}, true
	}
	return Meaning{Kind: HowTo, Card: "buttonholes"}, true
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

// buttonholes reads "holes" as the buttonholes that are planned, unless the
// line tells of a gap in the work.
func buttonholes(text string) string {
	words := strings.Fields(lower(text))
	at := -1
	for i, w := range words {
		switch strings.Trim(w, ".,;:!?") {
		case "holes":
			at = i
		case "gap", "gaps", "yoke", "seam", "have", "got", "appeared", "why", "between", "ladder", "neckband", "join", "are", "dropped", "fabric", "knitting", "little", "small", "big", "along", "where":
			return text
		}
	}
	if at < 0 {
		return text
	}
	i := strings.Index(lower(text), "holes")
	for i > 0 && text[i-1] != ' ' {
		next := strings.Index(lower(text[i+1:]), "holes")
		if next < 0 {
			return text // "buttonholes" says it already
		}
		i += 1 + next
	}
	return text[:i] + "button" + text[i:]
}
