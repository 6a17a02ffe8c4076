package listen

import "foldrow/engine"

// surelyHow: a question whose words are those of a technique, more of them
// than any number or trouble has.
func (r *reading) surelyHow() (Meaning, bool) {
	if !r.asks() || r.cue(Why) || r.cue("fits") && r.onlyFits() || r.wantsMend() || r.wentWrong() && !r.prevents() || !r.onlyTexts() || r.numbersGiven() || r.ctx.Open != "" && r.ctx.Open != "keep" || r.cue(WhatIf) && r.l.has("if") {
		return Meaning{}, false
	}
	h, _ := r.x.howto.best(r.l)
	whole := h.cover >= 0.97 && h.mass >= 4 && h.share >= 0.75 && !r.ofThePlan() // the line says little else
	if !whole && (r.counts() || h.cover < 0.97 || h.mass < 8 || h.share < 0.5) {
		return Meaning{}, false
	}
	if len(r.b.sets) > 0 && !(whole && h.mass >= 6) {
		return Meaning{}, false
	}
	f, _ := r.x.result.best(r.l)
	t, _ := r.x.trouble.best(r.l)
	if whole && h.share < f.share+0.15 && h.score() <= 1.3*f.score() || !whole && h.score() <= 1.3*f.score() {
		return Meaning{}, false
	}
	return Meaning{Kind: HowTo, Card: h.card}, h.score() > t.score()
}

// onlyFits: "does it still fit the bed" asks whether this plan does.
func (r *reading) onlyFits() bool {
	switch r.l.tokens[r.l.begin].text {
	case "does", "do", "will", "would", "is":
		return true
	}
	return false
}

// ofThePlan: "what's my bed size" and "is it graded" ask for what stands in
// the plan, not what the thing is.
func (r *reading) ofThePlan() bool {
	return r.wearer() || r.beginsWith([]string{"is"}) || r.beginsWith([]string{"what", "is", "my"}) || r.beginsWith([]string{"what", "is", "the"}) || r.beginsWith([]string{"what", "are", "my"})
}

// prevents: "how do I avoid holes" asks for a way; the words of a mishap in it
// tell of none.
func (r *reading) prevents() bool {
	return r.l.has("avoid", "prevent", "prevention") || r.l.has("stop", "keep") && (r.l.has("from") || r.howToForm())
}

// dismissed: "forget the neck" puts something aside; nothing was forgotten.
func (r *reading) dismissed() bool {
	i := r.l.begin
	return i+1 < r.l.end && r.l.tokens[i].text == "forget" && oneOf(r.l.tokens[i+1].text, []string{"the", "my", "that", "it", "this", "about"})
}

// edges: "how much longer is the seam than the fold" sets the two edges of the
// band side by side.
func (r *reading) edges() (Meaning, bool) {
	if !r.asks() || len(r.b.sets) > 0 || len(r.l.quantities()) > 0 || r.cue(Why) || !r.l.has("fold") || !(r.l.has("seam", "join") || r.l.has("sew") && r.l.has("edg", "edge")) {
		return Meaning{}, false
	}
	if !r.l.has("longer", "shorter", "wider", "narrower", "smaller", "bigger", "larger", "differenc", "minus", "less", "more") {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Topic: "edges", Keys: []engine.Key{engine.SeamWidth, engine.NeckResult, engine.FoldCircumference}}, true
}

// easesOff: "when does the tension start going back" asks where the dial
// begins to return, not for the first row.
func (r *reading) easesOff(keys []engine.Key) bool {
	return len(keys) == 1 && keys[0] == engine.Tension && len(r.l.quantities()) == 0 && r.l.has("back", "eas", "ease", "loosen", "looser", "return") &&
		r.l.has("when", "which", "where") && !r.l.has("tighten", "tighter", "tight")
}
