package listen

import (
	"strings"

	"foldrow/engine"
)

// openAnswer takes a line that answers the open question outright, before a
// card that shares its words can ("should be 43 cm round").
func (r *reading) openAnswer() (Meaning, bool) {
	if r.ctx.Open == "garment" {
		if m, ok := r.garmentChosen(); ok {
			return m, true
		}
	}
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
	if r.cue(Compare) && len(r.alternatives()) > 1 {
		return Meaning{}, false // "I don't understand the difference of 1x1 and 2x2"
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

// garmentChosen takes a word that answers whether it opens, before anything
// else can claim it ("open at the front").
func (r *reading) garmentChosen() (Meaning, bool) {
	if r.undecided() {
		return r.measureMeaning("dont-know", nil), true
	}
	is := r.l.tokens[r.l.begin].text == "is" && !r.l.question && !r.bothGarments()
	if r.l.has("why") || r.askForm() && !is || r.cue(WhatIf) || r.b.problem.Code != "" || !r.b.has(engine.KeyGarment) {
		return Meaning{}, false
	}
	return r.setsMeaning(Values), true
}

// undecided: "I haven't decided yet whether it should open" chooses nothing.
func (r *reading) undecided() bool {
	return r.l.has("whether", "if", "yet") && (r.l.has("undecided") || r.l.has("not", "never", "cannot") && r.l.has("decide", "decid", "know", "sure", "choose", "chosen", "chose"))
}

// tagged: "3 cm, that is folded, right?" states, and only the last word asks.
func (r *reading) tagged() bool {
	last := r.l.tokens[len(r.l.tokens)-1]
	return last.stop && oneOf(last.text, []string{"right", "yes", "correct", "eh", "ok", "okay"}) && !r.askForm()
}

// answersAfter: "can I give you rows instead? I would like twelve": the last
// sentence states what the open question asks for, the one before it only
// asked for leave.
func (r *reading) answersAfter(parts []string) (Meaning, bool) {
	if open := r.ctx.Open; open == "" || open == "keep" || !r.asks() {
		return Meaning{}, false
	}
	last := parts[len(parts)-1]
	l := r.x.line(last)
	if len(l.tokens) == 0 || l.question || (&reading{x: r.x, l: l, ctx: r.ctx}).askForm() {
		return Meaning{}, false
	}
	sub, m := r.alone(last)
	if sub == nil || sub.l.has("it", "that", "this") && r.otherNamed(parts[:len(parts)-1]) {
		if sub != nil && m.Kind == Values {
			return sub.unclear(), true
		}
		return Meaning{}, false // "Can you work it out from my head size? It's 56."
	}
	if r.b.problem.Code == "" && r.answersOpen(r.b.sets) && r.allFrom(strings.LastIndex(r.l.text, last)) {
		return r.setsMeaning(Values), true
	}
	return m, m.Kind == Values && r.answersOpen(m.Sets) && r.figuresIn(parts[:len(parts)-1]) == 0
}

// allFrom: every value stands at or behind that place of the text.
func (r *reading) allFrom(from int) bool {
	for _, at := range r.b.at {
		if r.l.tokens[at].start < from {
			return false
		}
	}
	return true
}

// answersOpen: all sets answer the open question.
func (r *reading) answersOpen(sets []Set) bool {
	for _, s := range sets {
		if OpenOf(s.Key) != r.ctx.Open {
			return false
		}
	}
	return len(sets) > 0
}

// figuresIn counts the numbers of the sentences.
func (r *reading) figuresIn(parts []string) int {
	n := 0
	for _, part := range parts {
		n += len(r.x.line(part).quantities())
	}
	return n
}

// otherNamed: the sentences name an input that is no answer to the open question.
func (r *reading) otherNamed(parts []string) bool {
	for _, part := range parts {
		l := r.x.line(part)
		r.x.mark(l)
		if l.has("my", "her", "his") {
			return true // "do you need my shoulder width? It's 38."
		}
		for _, m := range l.mentions {
			if m.key != "" && !m.result && OpenOf(m.key) != r.ctx.Open {
				return true
			}
		}
	}
	return false
}
