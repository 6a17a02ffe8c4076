package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// place: she says where she is in the making; before what-ifs and numbers,
// since "row 5" is a place here.
func (r *reading) place() (Meaning, bool) {
	c, ok := r.cues[Step]
	if n, lone := r.loneRows(); lone && r.ctx.Making {
		return Meaning{Kind: Step, Move: Move{What: "done", Count: n, Row: n}, FigUnit: quantity.Row}, true
	}
	if ok && c.topic == "where" && len(r.b.sets) > 0 && r.cue(WhatIf) {
		return Meaning{}, false
	}
	if !ok || c.topic != "row" && c.topic != "done" && c.topic != "latched" && c.topic != "where" {
		return Meaning{}, false
	}
	if c.topic == "done" && !r.ctx.Making && r.l.tokens[r.l.begin].text == "does" {
		return Meaning{}, false // "does 105 include the seam"
	}
	if (c.topic == "done" || c.topic == "row") && !r.ctx.Making && oneOf(r.l.tokens[r.l.begin].text, []string{"is", "was", "did", "have", "are", "were"}) {
		return Meaning{Kind: Step, Move: Move{What: "where"}}, true // "is row 5 done" begins nothing
	}
	if c.topic == "next" && r.l.has("every", "each") && len(r.l.quantities()) > 0 {
		return Meaning{}, false
	}
	if c.topic == "latched" && r.wentWrong() && !r.l.has("latch", "hang", "sew", "hung", "sewn") {
		return Meaning{}, false // "ladder at L20"
	}
	if r.ctx.Open != "" && r.ctx.Open != "keep" && !r.ctx.Making || r.b.sure() && c.topic != "row" && !(r.ctx.Making && c.topic == "done") {
		return Meaning{}, false
	}
	if f, _ := r.x.trouble.best(r.l); f.cover >= 0.85 && f.mass >= 3 && c.topic != "where" && !(r.ctx.Making && c.weight >= 4 && f.cover < 0.97) {
		return Meaning{}, false
	}
	if c.topic == "row" && !r.ctx.Making && r.l.words() <= 2 {
		return Meaning{}, false // before the making begins nobody stands anywhere
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
	if c.topic == "latched" && r.asks() || c.topic == "done" && r.wentWrong() {
		return Meaning{}, false
	}
	if c.topic != "where" && (r.l.question || r.cue(WhatIf) && r.l.has("if", "what")) {
		return Meaning{}, false
	}
	return r.stepMeaning(c), true
}

// loneRows: "6 rows" and nothing else, at the machine, are rows knitted.
func (r *reading) loneRows() (int, bool) {
	if r.l.words() != 1 || r.l.question {
		return 0, false
	}
	q := r.l.tokens[r.l.begin].q
	if q == nil || q.Unit != "row" || q.After || q.Ordinal || q.Range || q.Over.Sign() > 0 || q.Sign < 0 || !q.Value.IsInt() {
		return 0, false
	}
	return q.Value.Floor(), true
}

// fits: does the band go on the bed in one piece.
func (r *reading) fits() (Meaning, bool) {
	enough := r.cues["fits"].topic == "enough" && r.l.has("enough")
	if !r.cue("fits") || r.extreme() != "" || r.l.has("head", "sewing", "sew", "while", "ran", "stretch") || !r.asks() && !enough {
		return Meaning{}, false
	}
	if r.toldYarn() {
		return r.setsMeaning(Values), true
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

// toldYarn: "I only have 20 g left, will it be enough" tells first.
func (r *reading) toldYarn() bool {
	t := r.l.tokens
	if e := r.l.end - 1; e > 0 && t[e].text == "enough" && t[e].stop && r.b.has(engine.YarnLeft) && !r.l.has("if") {
		return true // "400 m/100 g, 35 g left. enough?"
	}
	for i := r.l.begin; i < min(r.l.end-1, r.l.begin+4); i++ {
		if t[i].text == "i" || t[i].text == "we" {
			return len(r.b.sets) == 1 && r.b.has(engine.YarnLeft) && r.l.has("have", "got") && !r.askForm() && !r.l.has("if")
		}
	}
	return false
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
	if ok && c.topic == "latched" && r.l.words() > 1 && !r.l.has("latch", "hang", "sew") && r.troubleLikely() {
		return Meaning{}, false // "stitch down at L12"
	}
	if ok && c.topic == "latched" && r.wentWrong() && !r.l.has("latch", "hang", "sew") {
		return Meaning{}, false
	}
	if ok && c.topic == "done" && r.wentWrong() {
		return Meaning{}, false
	}
	if !ok || r.cue(Outside) || c.topic == "done" && !r.ctx.Making && !r.l.has("do", "knit", "finish", "complet", "work", "done") {
		return Meaning{}, false
	}
	if c.topic == "start" && r.asksOfThings() {
		return Meaning{}, false
	}
	if c.topic == "back" && !r.ctx.Making && r.l.words() <= 4 && len(r.l.quantities()) == 0 && !r.l.has("step", "row", "stage") || c.topic == "back" && !r.ctx.Making && r.l.has("oops", "wrong", "mistake", "sorry") {
		return Meaning{Kind: Undo, Count: 1}, true // away from the machine there is no step to go back to
	}
	if c.topic == "latched" && r.asks() || r.b.sure() || len(r.b.sets) > 0 && c.topic != "done" && c.topic != "row" || c.topic == "row" && r.badRow() || c.topic == "done" && !r.countsRows() {
		return Meaning{}, false
	}
	if c.topic == "goto" {
		f := r.stepNamed(c.to)
		if f.cover < 0.5 {
			return Meaning{}, false
		}
		m := r.stepMeaning(c)
		m.Move.Step = f.card
		return m, true
	}
	return r.stepMeaning(c), true
}

// asksOfThings: "does the rib start with knit" asks about the band, and begins
// nothing as "where do I start" does.
func (r *reading) asksOfThings() bool {
	return r.asks() && oneOf(r.l.tokens[r.l.begin].text, []string{"does", "do", "is", "are", "which", "where", "what"}) && !r.l.has("i", "we")
}

func (r *reading) stepMeaning(c cueHit) Meaning {
	m := Meaning{Kind: Step, Move: Move{What: c.topic, Done: r.cue(toldDone), Along: r.along()}}
	if c.topic == "fronts" {
		m.Move.What, m.Move.Step = "goto", "front-hang"
	}
	if id := r.finished(); id != "" && c.topic == "next" {
		m.Move.What, m.Move.Step = "finished", id
	} else if c.topic == "skip" && r.x.alongOf(r.ctx.Step) != "" && r.l.has("one", "column", "needle", "bump", "loop") && !r.l.has("step") {
		m.Move.What = "skip-one" // one needle, and not all that are left of the step
	} else if c.topic == "next" && !r.ctx.Making && r.l.has("done", "don", "finish", "finished") {
		m.Move.What = "finished" // "finish" begins nothing
	}
	for _, t := range r.l.tokens {
		if t.needle != "" {
			m.Move.Needle = t.needle
		}
		if t.q != nil && !t.q.Rib && t.q.Value.IsInt() && t.q.Value.Sign() >= 0 {
			m.Move.Count, m.Move.Row, m.FigUnit = t.q.Value.Floor(), t.q.Value.Floor(), t.q.Unit
		}
	}
	return m
}

// stepNamed is the step that the words from token i on name; one of the front
// bands only where the line says front or button.
func (r *reading) stepNamed(i int) found {
	words := r.l.tokens[min(i, len(r.l.tokens)):]
	if r.l.has("front", "button", "buttonhol") {
		if f, _ := r.x.frontSteps.bestOf(words); f.cover >= 0.5 {
			return f
		}
	}
	f, _ := r.x.steps.bestOf(words)
	return f
}
