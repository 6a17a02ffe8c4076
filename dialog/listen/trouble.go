package listen

import "foldrow/engine"

// troubleSure: the words fit a trouble's description closely.
func (r *reading) troubleSure() bool {
	f, _ := r.x.trouble.best(r.l)
	return f.cover >= 0.85 && f.mass >= 3
}

// troubleFirst takes a description of a trouble before "why" and questions
// can: "why does my band flare".
func (r *reading) troubleFirst() (Meaning, bool) {
	if r.cues["fits"].topic == "enough" && r.l.words() <= 4 && r.l.has("enough") && !r.l.has("not", "short") {
		return Meaning{}, false // "enough yarn?"
	}
	if r.wantsMend() {
		if f, _ := r.x.trouble.best(r.l); f.cover >= 0.97 && f.mass >= 5 {
			return r.troubleMeaning(), true // whatever its numbers are, they tell of the mishap
		}
	}
	if !r.asks() && len(r.b.sets) > 0 && r.onlyTexts() {
		if f, _ := r.x.trouble.best(r.l); f.cover >= 0.97 && f.mass >= 6 && f.share >= 0.5 {
			return r.troubleMeaning(), true // "I left a needle out of work at the end" chooses no kind of band
		}
	}
	if r.accident() {
		f, _ := r.x.trouble.best(r.l)
		if f.cover >= 0.6 && f.mass >= 2.2 {
			return r.troubleMeaning(), true
		}
		return Meaning{}, false
	}
	if r.b.sure() || r.b.has(engine.YarnLength) || r.cue(Measure) && r.ctx.Open != "" || r.ctx.Open == "keep" && (r.cue(Keep) || r.cue(Drop)) || r.cue(Undo) || r.cue(Notebook) {
		return Meaning{}, false
	}
	if r.askForm() && !r.cue(Why) && !r.wantsMend() && (!r.complains() || r.ctx.Open != "" && r.ctx.Open != "keep") {
		return Meaning{}, false
	}
	if r.cue(WhatIf) && r.l.has("if") && !r.wentWrong() || r.duty() || r.ordered() || r.ctx.Making && r.cues[Step].weight >= 4 && !r.wentWrong() {
		return Meaning{}, false
	}
	f, _ := r.x.trouble.best(r.l)
	h, _ := r.x.howto.best(r.l)
	if r.cue(Why) && f.share < 0.45 || r.shortAsk() && r.contentLeft() == 0 && !r.l.has("be", "have", "out", "off", "short") || r.asks() && !r.cue(Why) && !r.wantsMend() && h.cover >= 0.97 && h.score() > 1.2*f.score() {
		return Meaning{}, false // "columns to latch, loops" names numbers only
	}
	if r.wantsMend() && f.cover >= 0.97 && f.mass >= 3.2 {
		return r.troubleMeaning(), true
	}
	if r.l.has("how") && h.score() > f.score() || r.asks() && !r.cue(Why) && h.score() > 0.8*f.score() && f.cover < 0.97 || r.namesResult() && (f.cover < 0.95 || r.asksNumber() && (f.mass < 7 || f.cover < 0.99)) {
		return Meaning{}, false
	}
	if f.cover >= 0.9 && f.mass >= 3.2 {
		return r.troubleMeaning(), true
	}
	return Meaning{}, false
}

// accident: the line tells of a mishap that has happened, and wishes for
// nothing: "one stitch has fallen at the edge" sets no edge stitches.
func (r *reading) accident() bool {
	return r.spokenSense("accident") && !r.spokenSense("wish") && !r.asks() && (r.ctx.Open == "" || r.ctx.Open == "keep") && len(r.b.sets) > 0
}

// ordered: "increase the depth", "never more than 100 stitches": the line
// begins as an order does, and tells of nothing that went wrong.
func (r *reading) ordered() bool {
	return r.x.typed["order-verbs"][r.l.tokens[r.l.begin].text] && !r.wentWrong() && !r.spokenSense("accident") && !r.asks()
}

// duty: "which stitches are the ones I have to drop" asks what must be done;
// the words of a mishap in it tell of none.
func (r *reading) duty() bool {
	if !r.asks() || r.wantsMend() || !r.l.has("which", "what", "where", "when", "know", "why") {
		return false
	}
	for i := r.l.begin; i+1 < r.l.end; i++ {
		t := r.l.tokens[i].text
		if (t == "have" || t == "has" || t == "need" || t == "needs" || t == "supposed") && r.l.tokens[i+1].text == "to" || t == "must" || t == "should" {
			f, _ := r.x.result.best(r.l)
			return f.cover >= 0.95 && f.mass >= 4 || r.cue(Why)
		}
	}
	return false
}

// wantsMend: what stands before "what can I do?" is something gone wrong.
func (r *reading) wantsMend() bool {
	for i := r.l.begin + 2; i+2 < r.l.end; i++ {
		t := r.l.tokens
		if t[i].text == "what" && (t[i].stop || t[i-1].text == "and" || t[i-1].text == "so") && oneOf(t[i+1].text, []string{"can", "should", "do", "did", "must", "shall", "now", "to"}) {
			return true
		}
		if t[i].text == "how" && r.l.has("repair", "mend", "fix", "rescue", "correct", "undo", "save") {
			return true
		}
	}
	return false
}

// trouble takes a looser description, where nothing else fits.
func (r *reading) trouble() (Meaning, bool) {
	if r.l.words() == 1 && len(r.l.quantities()) == 1 {
		return Meaning{}, false // "half a cm" splits no stitch
	}
	if r.duty() || r.ordered() || r.dismissed() || r.cue(Vague) && r.ctx.Open != "" && r.ctx.Open != "keep" {
		return Meaning{}, false // "too deep" at the question for the depth
	}
	if r.b.sure() && !(r.ctx.Making && r.l.has("too") && !r.asks()) || r.b.has(engine.YarnLength) {
		return Meaning{}, false
	}
	if r.rateSaid() {
		return Meaning{}, false // "I measured my rows wrong, it should be nine to the inch"
	}
	f, _ := r.x.trouble.best(r.l)
	if len(r.b.sets) > 0 && f.cover < 0.8 && !r.mishap() || r.ctx.Open != "" && r.ctx.Open != "keep" && f.cover < 0.8 {
		return Meaning{}, false
	}
	if r.askForm() && !r.cue(Why) && !r.wantsMend() && (!r.complains() || r.ctx.Open != "" && r.ctx.Open != "keep") {
		return Meaning{}, false
	}
	if r.l.question && r.namesResult() && !r.complains() {
		return Meaning{}, false // "total rows including the closing one?"
	}
	floor := 0.62
	if r.asks() && !r.l.has("why", "help", "happen", "wrong") && !r.l.question {
		floor = 0.8
	}
	if r.ctx.Making {
		floor = 0.5 // at the machine a mishap is the likeliest thing to be told
	}
	if r.mishap() {
		floor = 0.4
	}
	if f.share < 0.5 && f.cover < 0.95 && !r.wentWrong() || r.shortAsk() && r.contentLeft() == 0 && !r.l.has("be", "out", "off", "short") {
		return Meaning{}, false
	}
	if f.cover >= floor && f.mass >= 2.2 && (!r.cue(Outside) || f.cover > 0.8) {
		return r.troubleMeaning(), true
	}
	return Meaning{}, false
}

// rateSaid: a gauge is given in full, which no mishap is.
func (r *reading) rateSaid() bool {
	for _, i := range r.l.quantities() {
		if r.l.tokens[i].q.Over.Sign() > 0 && (r.b.has(engine.StitchGauge) || r.b.has(engine.RowGauge)) {
			return true
		}
	}
	return false
}

// mishap: the words of something gone wrong, beside a number that is no
// answer ("the tension was set wrong for 4 rows").
func (r *reading) mishap() bool {
	return !r.b.sure() && !r.rateSaid() && !r.asks() && r.wentWrong() && !(r.b.names(engine.StitchGauge) && r.b.has(engine.StitchGauge))
}

// complains: a question with words that only a mishap has; any other question
// asks for something, even where a trouble shares its words.
func (r *reading) complains() bool {
	return r.wentWrong() || r.hasSense("complaint")
}

// wentWrong: the line holds a word of things gone wrong.
func (r *reading) wentWrong() bool {
	return r.hasSense("wrong") || r.l.has("run") && r.l.has("down", "out")
}

func (r *reading) troubleMeaning() Meaning {
	f, second := r.x.trouble.best(r.l)
	m := Meaning{Kind: Trouble, Card: f.card}
	if second.score() > 0.93*f.score() {
		m.Other = second.card
	}
	for _, i := range r.l.quantities() {
		if i+1 < r.l.end && oneOf(r.l.tokens[i+1].text, []string{"side", "end", "edge"}) {
			continue // "on one side" counts nothing
		}
		m.Figure, m.HasFig = r.l.tokens[i].q.Value, true
	}
	return m
}

// wayForm: the words of a question for a way, a meaning or a leave.
func (r *reading) wayForm() bool {
	return r.l.has("how", "what", "explain", "mean", "safe", "should", "must", "allow", "show", "remind", "teach", "tell", "need", "when", "help", "can", "could", "may", "why", "where")
}

// howTo: a question about a technique.
func (r *reading) howTo() (Meaning, bool) {
	if r.b.sure() && !r.onlyTexts() && !r.l.has("how", "what", "explain", "mean", "why") {
		return Meaning{}, false
	}
	f, _ := r.x.howto.best(r.l)
	t, _ := r.x.trouble.best(r.l)
	if f.share < 0.5 && f.cover < 0.9 && !(r.howToForm() && f.share >= 0.4) || f.share < 0.6 && !r.wayForm() || f.mass < 1.5 || !r.asks() && r.l.has("to") && r.l.has("up", "far") && r.l.has("latch", "hang", "sew") {
		return Meaning{}, false // "latched up to" tells a place, if one that cannot be read
	}
	if open := r.ctx.Open; open != "" && open != "keep" && !r.howToForm() && !r.l.has("explain", "mean") && (f.cover < 0.95 || f.share < 0.6) {
		return Meaning{}, false // the question that stands is likelier meant
	}
	asks := r.asks() || r.l.has("how", "explain", "help", "remind", "show", "teach", "describ")
	switch {
	case asks && f.cover >= 0.5 && (f.cover >= 0.8 || r.craftWords() > 0) && f.score() >= 0.8*t.score():
	case f.cover >= 0.9 && f.score() > t.score() && len(r.b.sets) == 0 && (r.l.words() <= 4 || f.share >= 0.85 && f.mass >= 6 && r.l.words() <= 8) && !r.cue(Step):
	default:
		return Meaning{}, false
	}
	if len(r.b.sets) > 0 && r.ctx.Open != "" && !r.asks() {
		return Meaning{}, false
	}
	return Meaning{Kind: HowTo, Card: f.card}, true
}
