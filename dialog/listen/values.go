package listen

// values: answers and changes.
func (r *reading) values() (Meaning, bool) {
	if len(r.b.sets) == 0 {
		return Meaning{}, false
	}
	if r.toldYarn() {
		return r.setsMeaning(Values), true
	}
	if f, _ := r.x.trouble.best(r.l); r.b.problem.Code != "" && !r.asks() && f.cover >= 0.7 && f.mass >= 3.5 && f.share >= 0.4 && (r.ctx.Making || r.wentWrong()) {
		return r.troubleMeaning(), true // "one stitch left over at the right end after rehanging"
	}
	if r.asks() && r.l.has("mean") {
		return Meaning{Kind: HowTo, Card: "abbreviations"}, true
	}
	if m, ok := r.howTo(); ok && r.asks() && r.onlyTexts() && r.permits() {
		return m, true // "am I allowed to steam it"
	}
	if r.asks() && (r.ctx.Open == "" || r.ctx.Open == "keep" || !r.onlyOpen()) {
		return r.setsMeaning(WhatIf), true // "2x2?", "could it be 4 cm deep?"
	}
	if r.asks() && r.l.begin < len(r.l.tokens) && (judges(r.l.tokens[r.l.begin].text) || askWhat(r.l.tokens[r.l.begin].text)) && r.l.words() > 2 && r.b.problem.Code == "" {
		m := r.setsMeaning(Measure) // "is 28 and 40 normal" asks, and sets nothing
		m.Topic = "usual"
		for _, s := range m.Sets {
			m.Keys = append(m.Keys, s.Key)
		}
		return m, true
	}
	if r.asks() && (r.lastAsks() && !r.b.sure() || r.lastJudges() && r.l.has("think", "consider", "wonder", "tempt")) && r.ctx.Open != "" && r.ctx.Open != "keep" {
		if r.lastJudges() {
			return r.measureMeaning("usual", nil), true // "I am thinking about 2x2, is that a good choice?"
		}
		return r.measureMeaning("how", nil), true // "I made two swatches, which one do I take?"
	}
	if r.accident() || r.leftOver() || r.oddRow() || r.mishap() && r.ctx.Open == "" {
		return r.unclear(), true
	}
	return r.setsMeaning(Values), true
}

// permits: the question is whether something may be done.
func (r *reading) permits() bool {
	switch r.l.tokens[r.l.begin].text {
	case "can", "may", "should", "am", "is", "must", "could", "do", "does", "will":
		return true
	}
	return r.l.has("safe", "allow")
}

// onlyTexts: all that is set are words, which a question may only speak of.
func (r *reading) onlyTexts() bool {
	for _, s := range r.b.sets {
		if s.Text == "" {
			return false
		}
	}
	return true
}

// judges: the word begins a question whether a value will do.
func judges(w string) bool {
	switch w {
	case "is", "are", "would", "will", "does", "do", "should":
		return true
	}
	return false
}

// oddRow: "row four or five" names a place twice and sets nothing.
func (r *reading) oddRow() bool {
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; q.After && q.Unit == "row" && !r.b.used[i] && r.ctx.Open != "gauge" && r.bareBeside(i) {
			r.b.problem = Problem{Code: "row"}
			return true
		}
	}
	return false
}

func (r *reading) bareBeside(i int) bool {
	for _, j := range r.l.quantities() {
		if q := r.l.tokens[j].q; j != i && !r.b.dropped[j] && q.Unit == "" && !q.Ordinal {
			return true
		}
	}
	return false
}

// onlyOpen: every set answers the open question ("40 cm?").
func (r *reading) onlyOpen() bool {
	for _, s := range r.b.sets {
		if OpenOf(s.Key) != r.ctx.Open {
			return false
		}
	}
	return true
}

// leftOver reports a number with a problem of its own among those set: taking
// the rest and dropping that one would be guessing.
func (r *reading) leftOver() bool {
	for _, i := range r.b.free() {
		q := r.l.tokens[i].q
		if q.Problem != "" {
			r.b.problem = Problem{Code: q.Problem, Low: q.Value, High: q.High, Unit: q.Unit}
			return true
		}
		if q.Unit == "" && !q.Ordinal && !q.Words && !q.After && (r.ctx.Open == "" || r.ctx.Open == "keep") {
			r.b.problem = Problem{Code: "unbound", Low: q.Value, High: q.High, Unit: q.Unit}
			return true
		}
		if q.Unit != "" && q.Unit != "number" && !q.After && !q.Ordinal {
			r.b.problem = Problem{Code: "unbound", Low: q.Value, High: q.High, Unit: q.Unit}
			return true
		}
	}
	return false
}

// lastAsks: the last clause begins as a question does.
func (r *reading) lastAsks() bool {
	for i := r.l.end - 2; i > r.l.begin; i-- {
		if t := r.l.tokens[i]; t.stop {
			return askWhat(t.text) || t.text == "when" || t.text == "why"
		}
	}
	return false
}

// lastJudges: the last clause asks whether what was said will do.
func (r *reading) lastJudges() bool {
	for i := r.l.end - 2; i > r.l.begin; i-- {
		if t := r.l.tokens[i]; t.stop {
			return oneOf(t.text, []string{"is", "would", "will", "does"}) && oneOf(r.l.tokens[i+1].text, []string{"that", "it", "this"})
		}
	}
	return false
}
