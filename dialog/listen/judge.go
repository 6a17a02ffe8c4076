package listen

import (
	"slices"

	"foldrow/engine"
)

// judged: "is 3 cm deep enough" and "would 45 be too wide" ask whether a value
// will do; nothing is supposed and nothing set.
func (r *reading) judged() (Meaning, bool) {
	sets := dedupe(r.b.sets)
	if len(sets) != 1 || r.b.problem.Code != "" || !r.asks() || r.l.has("if", "with", "than", "why", "or", "how") || !r.spokenSense("verdict") {
		return Meaning{}, false
	}
	s := sets[0]
	if span := r.x.spans[s.Key]; s.Relative || s.Times || !engine.IsNumber(s.Key) || !measureOf(span.Dimension) || s.Key == engine.Head || s.Key == engine.YarnLeft {
		return Meaning{}, false
	}
	switch r.l.tokens[r.l.begin].text {
	case "is", "would", "will", "are":
	default:
		if !r.lastJudges() {
			return Meaning{}, false
		}
	}
	m := r.measureMeaning("usual", []engine.Key{s.Key})
	m.Sets = sets
	return m, true
}

// stillSo: "is the neck still 40 then" asks what it is; nothing is supposed.
func (r *reading) stillSo() (Meaning, bool) {
	if len(r.b.sets) != 1 || !r.asks() || !r.beginsWith([]string{"is"}) && !r.beginsWith([]string{"are"}) || !r.l.has("still", "really", "already") || !r.b.names(r.b.sets[0].Key) || r.l.has("if") {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: r.outcome([]engine.Key{r.b.sets[0].Key})}, true
}

// foreseen: "will it stand up or lean in" asks what the plan says will come;
// in other words it would tell of something gone wrong.
func (r *reading) foreseen() (Meaning, bool) {
	if !r.asks() || len(r.b.sets) > 0 || len(r.l.quantities()) > 0 || r.cue(Why) || r.ctx.Open != "" && r.ctx.Open != "keep" {
		return Meaning{}, false
	}
	switch r.l.tokens[r.l.begin].text {
	case "will", "would", "does", "do", "shall":
		if r.l.has("than") {
			return Meaning{}, false
		}
	default:
		return Meaning{}, false
	}
	f, _ := r.x.result.best(r.l)
	if f.cover < 0.95 || f.mass < 3 || f.share < 0.5 || oneOf(r.l.tokens[min(r.l.begin+1, r.l.end-1)].text, []string{"i", "we", "you"}) {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{engine.Key(f.card)}}, true
}

// ifMishap: "what should I do if the yarn breaks" wants to know beforehand what
// a trouble's card tells.
func (r *reading) ifMishap() (Meaning, bool) {
	if !r.asks() || r.b.names(engine.Neck) || !r.l.has("if", "when", "once") || !r.l.has("what", "how", "happen") || r.ctx.Open != "" && r.ctx.Open != "keep" {
		return Meaning{}, false
	}
	if !r.wentWrong() {
		return Meaning{}, false
	}
	f, _ := r.x.trouble.best(r.l)
	return r.troubleMeaning(), f.cover >= 0.95 && f.mass >= 3.5 && f.share >= 0.3
}

// likelyHow: a question that nothing else knew, with most of the words of a
// technique.
func (r *reading) likelyHow() (Meaning, bool) {
	if !r.asks() || r.counts() || len(r.b.sets) > 0 || r.numbersGiven() || r.ctx.Open != "" && r.ctx.Open != "keep" || r.cue(Outside) || r.craftWords() == 0 {
		return Meaning{}, false
	}
	h, _ := r.x.howto.best(r.l)
	return Meaning{Kind: HowTo, Card: h.card}, h.mass >= 3.2 && (h.cover >= 0.8 && h.share >= 0.35 || h.cover >= 0.95 && h.share >= 0.3)
}

// aboutThat: "is that the height of the folded band" asks about the open
// question; what it names is no answer to it.
func (r *reading) aboutThat() (Meaning, bool) {
	if r.askedBehind() && r.ctx.Open != "" && r.ctx.Open != "keep" && r.ctx.Open != "garment" && r.b.problem.Code == "" {
		return r.measureMeaning("usual", nil), true
	}
	if open := r.ctx.Open; open == "" || open == "keep" || open == "garment" || !r.asks() || len(r.l.quantities()) > 0 || r.l.has("if") {
		return Meaning{}, false
	}
	if r.ctx.Open == "gauge" && !r.cue(Measure) && !r.cue(Why) && !r.cue(Undo) && !r.cue(Notebook) && (r.l.has("swatch", "gaug") || r.l.has("stitch") && r.l.has("row")) && !r.l.has("know") {
		return r.measureMeaning("how", nil), true
	}
	if r.wearer() && !r.setsBut(engine.KeyWearer) && !r.cue(WhatIf) {
		return r.measureMeaning("usual", nil), true // "for a man how many?"
	}
	for _, form := range [][]string{{"is", "that"}, {"is", "it"}, {"is", "this"}, {"do", "you", "mean"}, {"does", "that"}, {"does", "it"}} {
		if r.beginsWith(form) && len(r.b.sets) > 0 {
			return r.measureMeaning("how", nil), true
		}
	}
	return Meaning{}, false
}

// askedBehind: "like 2x2 but is it stretchy enough?" doubts what it names.
func (r *reading) askedBehind() bool {
	for i := r.l.begin + 1; i+2 < r.l.end && r.l.question; i++ {
		t := r.l.tokens
		if (t[i-1].text == "but" || t[i].stop) && oneOf(t[i].text, []string{"is", "will", "does", "would"}) && oneOf(t[i+1].text, []string{"it", "that", "this"}) {
			return true
		}
	}
	return false
}

// toldByMe: "what edge did I choose" asks for what was said before.
func (r *reading) toldByMe() (Meaning, bool) {
	if !r.asks() || len(r.b.sets) > 0 || r.numbersGiven() || !r.spokenSense("told-by-me") || !r.measureForm() {
		return Meaning{}, false
	}
	for i := r.l.begin + 1; i+1 < r.l.end; i++ {
		if t := r.l.tokens[i].text; (t == "did" || t == "have") && r.l.tokens[i+1].text == "i" {
			if keys := r.inputs(); len(keys) > 0 {
				return Meaning{Kind: Number, Keys: keys}, true
			}
			return Meaning{Kind: Show, Topic: "answers"}, r.l.tokens[r.l.begin].text == "what" || r.l.tokens[r.l.begin].text == "which"
		}
	}
	return Meaning{}, false
}

// likelyResult: a question that nothing else knew, with all the words of one
// result.
func (r *reading) likelyResult() (Meaning, bool) {
	if !r.asks() || len(r.b.sets) > 0 || r.figures() > 0 || r.b.problem.Code != "" || r.ctx.Open != "" && r.ctx.Open != "keep" || r.cue(Outside) || r.mayI() {
		return Meaning{}, false
	}
	f, _ := r.x.result.best(r.l)
	if f.cover < 0.95 || f.mass < 4 || f.share < 0.4 {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number, Keys: []engine.Key{engine.Key(f.card)}}
	if named := r.results(); len(named) > 1 && slices.Contains(named, m.Keys[0]) {
		m.Keys = named
	}
	r.part(&m)
	return m, true
}

// figures counts the numbers that are more than a place in a list.
func (r *reading) figures() int {
	n := 0
	for _, i := range r.l.quantities() {
		if !r.l.tokens[i].q.Ordinal {
			n++
		}
	}
	return n
}

// served: "she wants a 44 neck, how many stitches would that be": the value
// serves the question that ends the line, and supposes nothing more.
func (r *reading) served() (Meaning, bool) {
	parts := r.clauses()
	if parts == nil || len(r.b.sets) == 0 || r.b.problem.Code != "" || r.beginsWith([]string{"and"}) || r.l.has("if", "suppos", "imagin") {
		return Meaning{}, false
	}
	end := r.question(parts[len(parts)-1])
	if len(parts) > 2 && len(end.l.mentions) == 0 && len(end.l.quantities()) == 0 && !end.askForm() {
		end = r.question(parts[len(parts)-2]) // "..., just out of interest"
	}
	if !end.counts() || !end.measureForm() || end.cue(WhatIf) || len(end.b.sets) > 0 || len(end.l.quantities()) > 0 {
		return Meaning{}, false
	}
	keys := end.askedFor()
	if len(keys) == 0 {
		return Meaning{}, false
	}
	for _, s := range r.b.sets {
		keys = engine.WithoutKey(keys, s.Key)
	}
	m := Meaning{Kind: Backwards, Keys: end.counted(keys), Sets: dedupe(r.b.sets)}
	if forward(m.Sets) {
		m.Kind = Number
	}
	return m, len(keys) > 0
}

// question is the reading of a clause, taken for a question.
func (r *reading) question(clause string) *reading {
	l := r.x.line(clause)
	r.x.mark(l)
	return &reading{x: r.x, l: l, ctx: r.ctx, cues: r.x.findCues(l, r.ctx), b: r.x.bind(l, r.ctx, true)}
}
