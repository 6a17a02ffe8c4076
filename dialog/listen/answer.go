package listen

// openAnswer takes a line that answers the open question outright, before a
// card that shares its words can ("should be 43 cm round").
func (r *reading) openAnswer() (Meaning, bool) {
	open := r.ctx.Open
	if open == "" || open == "keep" || r.asks() && !r.tagged() || r.b.problem.Code != "" || r.cue(WhatIf) && r.l.has("if", "suppos", "imagin") || r.cue(Undo) || r.ctx.Making {
		return Meaning{}, false
	}
	if m, ok := r.calibration(); ok && m.Sets[0].Over > 0 {
		return m, true
	}
	if m, ok := r.ribGauge(); ok {
		return m, true
	}
	answers := false
	for _, s := range r.b.sets {
		answers = answers || OpenOf(s.Key) == open
	}
	if !answers {
		return Meaning{}, false
	}
	if m, ok := r.guarded(); ok {
		return m, true
	}
	return r.values()
}

// tagged: "3 cm, that is folded, right?" states, and only the last word asks.
func (r *reading) tagged() bool {
	last := r.l.tokens[len(r.l.tokens)-1]
	return last.stop && oneOf(last.text, []string{"right", "yes", "correct", "eh", "ok", "okay"}) && !r.askForm()
}
