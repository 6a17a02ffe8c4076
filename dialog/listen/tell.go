package listen

import "foldrow/engine"

// values: answers and changes.
func (r *reading) values() (Meaning, bool) {
	if len(r.b.sets) == 0 {
		return Meaning{}, false
	}
	if r.asks() && (r.ctx.Open == "" || r.ctx.Open == "keep" || !r.onlyOpen()) {
		return r.setsMeaning(WhatIf), true // "2x2?", "could it be 4 cm deep?"
	}
	if r.leftOver() || r.oddRow() {
		return r.unclear(), true
	}
	return r.setsMeaning(Values), true
}

// oddRow: "row four or five" names a place twice and sets nothing.
func (r *reading) oddRow() bool {
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; q.After && q.Unit == "row" && r.ctx.Open != "gauge" && r.bareBeside(i) {
			r.b.problem = Problem{Code: "row"}
			return true
		}
	}
	return false
}

func (r *reading) bareBeside(i int) bool {
	for _, j := range r.l.quantities() {
		if q := r.l.tokens[j].q; j != i && q.Unit == "" && !q.Ordinal {
			return true
		}
	}
	return false
}

// onlyOpen: every set answers the open question ("40 cm?").
func (r *reading) onlyOpen() bool {
	for _, s := range r.b.sets {
		if openOf(s.Key) != r.ctx.Open {
			return false
		}
	}
	return true
}

// openOf is the question that a key answers.
func openOf(k engine.Key) string {
	switch k {
	case engine.StitchGauge, engine.RowGauge:
		return "gauge"
	case engine.DepthRows:
		return "depth"
	}
	return string(k)
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
		if q.Unit == "" && !q.Ordinal && !q.Words && (r.ctx.Open == "" || r.ctx.Open == "keep") && len(r.b.sets) == 1 && r.b.sets[0].Near == 0 {
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

// revise: "no, I meant rows".
func (r *reading) revise() (Meaning, bool) {
	if !r.l.has("mean") || len(r.l.quantities()) > 0 || r.asks() {
		return Meaning{}, false
	}
	m := Meaning{Kind: Values, Topic: "revise"}
	switch {
	case r.l.has("row", "rws"):
		m.Name = "row"
	case r.l.has("inch", "inches", "in"):
		m.Name = "in"
	case r.l.has("cm", "centimetre", "centimeter", "cms"):
		m.Name = "cm"
	case r.l.has("stitch", "st", "sts"):
		m.Name = "st"
	default:
		for _, k := range r.inputs() {
			m.Keys = append(m.Keys, k)
		}
		if len(m.Keys) == 0 {
			return Meaning{}, false
		}
	}
	return m, true
}

// troubleSure: the words fit a trouble's description closely.
func (r *reading) troubleSure() bool {
	f, _ := r.x.trouble.best(r.l)
	return f.cover >= 0.85 && f.mass >= 3
}

// troubleFirst takes a description of a trouble before "why" and questions
// can: "why does my band flare".
func (r *reading) troubleFirst() (Meaning, bool) {
	if r.b.sure() || r.cue(Measure) && r.ctx.Open != "" || r.ctx.Open == "keep" && (r.cue(Keep) || r.cue(Drop)) || r.cue(Undo) || r.cue(Notebook) {
		return Meaning{}, false
	}
	f, _ := r.x.trouble.best(r.l)
	h, _ := r.x.howto.best(r.l)
	if r.l.has("how") && h.score() > f.score() || r.asks() && !r.cue(Why) && h.score() > 0.8*f.score() && f.cover < 0.97 || r.namesResult() && (f.cover < 0.95 || r.asksNumber() && (f.mass < 7 || f.cover < 0.99)) {
		return Meaning{}, false
	}
	if f.cover >= 0.9 && f.mass >= 3.2 {
		return r.troubleMeaning(), true
	}
	return Meaning{}, false
}

// trouble takes a looser description, where nothing else fits.
func (r *reading) trouble() (Meaning, bool) {
	f, _ := r.x.trouble.best(r.l)
	if r.b.sure() || len(r.b.sets) > 0 && f.cover < 0.8 || r.ctx.Open != "" && r.ctx.Open != "keep" && f.cover < 0.8 {
		return Meaning{}, false
	}
	floor := 0.62
	if r.asks() && !r.l.has("why", "help", "happen", "wrong") && !r.l.question {
		floor = 0.8
	}
	if r.ctx.Making {
		floor = 0.5 // at the machine a mishap is the likeliest thing to be told
	}
	if f.cover >= floor && f.mass >= 2.2 && (!r.cue(Outside) || f.cover > 0.8) {
		return r.troubleMeaning(), true
	}
	return Meaning{}, false
}

func (r *reading) troubleMeaning() Meaning {
	f, second := r.x.trouble.best(r.l)
	m := Meaning{Kind: Trouble, Card: f.card}
	if second.score() > 0.93*f.score() {
		m.Other = second.card
	}
	for _, i := range r.l.quantities() {
		m.Figure, m.HasFig = r.l.tokens[i].q.Value, true
	}
	return m
}

// howTo: a question about a technique.
func (r *reading) howTo() (Meaning, bool) {
	f, _ := r.x.howto.best(r.l)
	t, _ := r.x.trouble.best(r.l)
	if f.mass < 1.5 {
		return Meaning{}, false
	}
	if r.b.sure() && !r.l.has("how", "what", "explain", "mean", "why") {
		return Meaning{}, false
	}
	asks := r.asks() || r.l.has("how", "explain", "help", "remind", "show", "teach", "describ")
	switch {
	case asks && f.cover >= 0.5 && f.score() >= 0.8*t.score():
	case f.cover >= 0.9 && f.score() > t.score() && len(r.b.sets) == 0 && r.l.words() <= 4 && !r.cue(Step):
	default:
		return Meaning{}, false
	}
	if len(r.b.sets) > 0 && r.ctx.Open != "" && !r.asks() {
		return Meaning{}, false
	}
	return Meaning{Kind: HowTo, Card: f.card}, true
}

// place: she says where she is in the making; before what-ifs and numbers,
// since "row 5" is a place here.
func (r *reading) place() (Meaning, bool) {
	c, ok := r.cues[Step]
	if !ok || c.topic != "row" && c.topic != "done" && c.topic != "latched" && c.topic != "where" {
		return Meaning{}, false
	}
	if r.ctx.Open != "" && r.ctx.Open != "keep" && !r.ctx.Making || r.b.sure() && c.topic != "row" && !(r.ctx.Making && c.topic == "done") {
		return Meaning{}, false
	}
	if f, _ := r.x.trouble.best(r.l); f.cover >= 0.85 && f.mass >= 3 && c.topic != "where" && !(r.ctx.Making && c.weight >= 4 && f.cover < 0.97) {
		return Meaning{}, false
	}
	if c.topic == "row" && r.badRow() && r.ctx.Making {
		return Meaning{Kind: Unclear, Problem: Problem{Code: "row"}}, true
	}
	if c.topic == "done" && !r.countsRows() || c.topic == "row" && r.badRow() {
		return Meaning{}, false
	}
	if c.topic == "done" && !r.ctx.Making && !r.l.has("do", "knit", "finish", "complet", "work") {
		return Meaning{}, false
	}
	if c.topic == "latched" && r.asks() {
		return Meaning{}, false
	}
	if c.topic != "where" && (r.l.question || r.cue(WhatIf) && r.l.has("if", "what")) {
		return Meaning{}, false
	}
	return r.stepMeaning(c), true
}

// passes: "will it go over a 55 cm head" asks, with a head that serves this
// answer only.
func (r *reading) passes() (Meaning, bool) {
	if !r.asks() || len(r.b.sets) != 1 || r.b.sets[0].Key != engine.Head || r.l.has("if") || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{engine.HeadOpening}, Sets: r.b.sets}, true
}

// fits: does the band go on the bed in one piece.
func (r *reading) fits() (Meaning, bool) {
	if !r.cue("fits") || r.l.has("head", "sewing", "sew", "while", "ran") || !r.asks() && !r.l.question {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number, Topic: "fits", Keys: []engine.Key{engine.BedNeedles}, Sets: r.b.sets}
	bed := r.l.has("needl", "bed", "machin")
	for _, s := range r.b.sets {
		bed = bed || s.Key == engine.BedNeedles
		if s.Key != engine.BedNeedles && s.Key != engine.YarnLeft && s.Key != engine.YarnLength {
			return Meaning{}, false
		}
	}
	if r.cues["fits"].topic == "enough" && !bed {
		m.Topic, m.Keys = "enough", []engine.Key{engine.BandYarnGrams, engine.BandYarn}
	}
	return m, true
}

// countsRows: the number said is of rows, or bare, and above nothing.
func (r *reading) countsRows() bool {
	qs := r.l.quantities()
	for _, i := range qs {
		q := r.l.tokens[i].q
		if q.Sign < 0 || q.Range || !q.Value.IsInt() || q.Unit != "" && q.Unit != "row" {
			return false
		}
	}
	return len(qs) == 1
}

// badRow: "row minus two", "row four or five".
func (r *reading) badRow() bool {
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if q.Sign < 0 || q.Range || !q.Value.IsInt() {
			return true
		}
	}
	return len(r.l.quantities()) != 1
}

func (r *reading) step() (Meaning, bool) {
	c, ok := r.cues[Step]
	if !ok || r.cue(Outside) || c.topic == "done" && !r.ctx.Making && !r.l.has("do", "knit", "finish", "complet", "work", "done") {
		return Meaning{}, false
	}
	if c.topic == "latched" && r.asks() || r.b.sure() || len(r.b.sets) > 0 && c.topic != "done" && c.topic != "row" || c.topic == "row" && r.badRow() || c.topic == "done" && !r.countsRows() {
		return Meaning{}, false
	}
	if c.topic == "goto" {
		f, _ := r.x.steps.best(r.l)
		if f.cover < 0.5 {
			return Meaning{}, false
		}
		m := r.stepMeaning(c)
		m.Move.Step = f.card
		return m, true
	}
	return r.stepMeaning(c), true
}

func (r *reading) stepMeaning(c cueHit) Meaning {
	m := Meaning{Kind: Step, Move: Move{What: c.topic}}
	for _, t := range r.l.tokens {
		if t.needle != "" {
			m.Move.Needle = t.needle
		}
		if t.q != nil && !t.q.Rib && t.q.Value.IsInt() && t.q.Value.Sign() >= 0 {
			m.Move.Count, m.Move.Row, m.Move.Fine = t.q.Value.Floor(), t.q.Value.Floor(), true
		}
	}
	return m
}

func (r *reading) show() (Meaning, bool) {
	c, ok := r.cues[Show]
	if !ok || len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	return Meaning{Kind: Show, Topic: c.topic}, true
}

// calibrate: measured values that set an effect.
func (r *reading) calibrate() (Meaning, bool) {
	if r.asks() || r.cue(WhatIf) && r.l.has("if") || len(r.l.quantities()) == 0 {
		return Meaning{}, false
	}
	return r.calibration()
}
