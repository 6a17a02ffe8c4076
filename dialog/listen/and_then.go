package listen

import (
	"slices"

	"foldrow/engine"
)

// What may stand beside a value in one line: a wish to see something or to
// begin, and a question that stands by itself.
var (
	showWords = []string{"show", "print", "draw", "list", "display", "start", "begin", "save"}
	askWords  = []string{"why", "what", "how", "which", "explain", "describe", "help"}
	joinWords = []string{"and", "then", "please", "also", "but", "so"}
)

// andThen: "3 cm and show the needles", "42 cm, why do you ask?", "what is a
// purl and neck 45" say a value and ask for something with it.
func (r *reading) andThen() (Meaning, bool) {
	if len(r.b.sets) == 0 && len(r.l.quantities()) == 0 {
		return Meaning{}, false // no value to take
	}
	t := r.l.tokens
	supposed := r.beginsWith([]string{"what", "if"}) || r.beginsWith([]string{"what", "about"})
	asks := oneOf(t[r.l.begin].text, askWords) && !supposed
	if asks || oneOf(t[r.l.begin].text, showWords) {
		if m, ok := r.askedThenSaid(); ok {
			return m, true
		}
	}
	for i := r.l.begin + 1; i < r.l.end; i++ {
		shows := oneOf(t[i].text, showWords)
		if t[i].q != nil || !shows && (asks || !oneOf(t[i].text, askWords)) {
			continue
		}
		to := r.joint(i)
		if to == i && !t[i].stop && (t[i].text != "why" || t[i-1].q == nil) || to == r.l.begin {
			continue
		}
		said, rest := r.l.text[t[r.l.begin].start:t[to-1].end], r.l.text[t[i].start:]
		if shows {
			return r.saidThenShown(said, rest)
		}
		if m, ok := r.saidThenAsked(said, rest, to < i); ok {
			return m, true
		}
	}
	return Meaning{}, false
}

// joint is where the words begin that join what stands before token i to it.
func (r *reading) joint(i int) int {
	for i > r.l.begin && oneOf(r.l.tokens[i-1].text, joinWords) {
		i--
	}
	return i
}

// afterwards is the context of what is asked for once the values stand.
func (r *reading) afterwards() Context {
	after := r.ctx
	after.Open, after.Confirm = "", false
	return after
}

// saidThenShown: "make it 44, then print it".
func (r *reading) saidThenShown(said, rest string) (Meaning, bool) {
	first := r.x.read(r.x.line(said), r.ctx)
	then := r.x.read(r.x.line(rest), r.afterwards())
	shown := then.Kind == Show || then.Kind == Step || then.Kind == Parts || then.Kind == Notebook && oneOf(then.Topic, []string{"page", "write", "save"}) ||
		len(then.Sets) == 0 && (then.Kind == Number || then.Kind == Why || then.Kind == HowTo)
	if first.Kind == Unclear && first.HasFig {
		if alone := r.x.line(said); shown && alone.words() == 1 && r.ctx.Open == "" { // a lone number orders nothing
			then.Left = append(then.Left, first.Problem.Read)
			return then, true
		}
		return first, true // what is shown does not name the number before it
	}
	if first.Kind != Values && first.Kind != WhatIf || first.Then != "" || !shown {
		return Meaning{}, false
	}
	first.Then = rest
	return first, true
}

// saidThenAsked: "neck 43, 2x2 and why", "16 1/2 inches and what is usual". A
// value before a question for a number serves that answer, unless the line says
// "and" between them.
func (r *reading) saidThenAsked(said, rest string, joined bool) (Meaning, bool) {
	tail := r.x.line(rest)
	why := tail.tokens[tail.begin].text == "why"
	if len(tail.quantities()) > 0 && !why || tail.words() < 4 && tail.tokens[tail.begin].text == "what" && tail.has("it", "that", "this") {
		return Meaning{}, false // "a vest with buttons, what is it?"
	}
	first := r.x.read(r.x.line(said), r.ctx)
	if first.Kind != Values && !(why && first.Kind == WhatIf) || first.Then != "" || len(first.Sets) == 0 || first.setsWearer() || !why && !joined && !ofInterview(first) {
		return Meaning{}, false
	}
	then := r.x.read(tail, r.ctx)
	if !r.askedBeside(then) {
		then = r.x.read(r.x.line(rest), r.afterwards())
	}
	if !r.askedBeside(then) || then.Kind == Number && (!joined || tail.has("it", "that", "this", "they", "them", "those", "these")) {
		return Meaning{}, false // "42 cm, how many stitches is that"
	}
	first.Then = rest
	return first, true
}

// ofInterview: every value answers one of the five questions.
func ofInterview(m Meaning) bool {
	return !slices.ContainsFunc(m.Sets, func(s Set) bool {
		return !oneOf(OpenOf(s.Key), []string{"garment", "gauge", "neck", "rib", "depth"})
	})
}

// askedThenSaid: "what is a purl and neck 45", "why do you ask? 42 cm": the
// question stands first and the value behind the last joint.
func (r *reading) askedThenSaid() (Meaning, bool) {
	t := r.l.tokens
	for i := r.l.end - 1; i > r.l.begin; i-- {
		to := r.joint(i)
		if to == i && !t[i].stop || to <= r.l.begin+1 && !oneOf(t[r.l.begin].text, []string{"why", "how", "help"}) || to == r.l.begin || oneOf(t[i].text, joinWords) {
			continue
		}
		asked, said := r.l.text[t[r.l.begin].start:t[to-1].end], r.l.text[t[i].start:]
		head := r.x.line(asked)
		if len(head.quantities()) > 0 && !ribOnly(head) && (t[r.l.begin].text != "why" || head.words() > 2) {
			continue
		}
		m := r.x.read(r.x.line(said), r.ctx)
		if m.Kind != Values || m.Topic != "" || m.Then != "" || !r.saidOutright(m) || len(r.x.line(said).quantities()) == 0 && !ofInterview(m) {
			continue
		}
		if q := r.x.read(head, r.ctx); r.askedBeside(q) || q.Kind == Show || q.Kind == Why {
			m.Then = asked
			return m, true
		}
	}
	return Meaning{}, false
}

// ribOnly: the only numbers of the line are those of a rib.
func ribOnly(l *Line) bool {
	return !slices.ContainsFunc(l.quantities(), func(i int) bool { return !l.tokens[i].q.Rib })
}

// saidOutright: what is set is named, or answers the open question, so that it is no
// part of the question beside it.
func (r *reading) saidOutright(m Meaning) bool {
	for _, s := range m.Sets {
		if s.Near == 0 && OpenOf(s.Key) != r.ctx.Open || s.Text != "" {
			return false
		}
	}
	return len(m.Sets) > 0 && !m.setsWearer()
}

// setsWearer: of a wearer what follows is asked: "for a boy of six, what is
// normal".
func (m Meaning) setsWearer() bool {
	return slices.ContainsFunc(m.Sets, func(s Set) bool { return s.Key == engine.KeyWearer })
}

// askedBeside: the meaning is a question that stands by itself.
func (r *reading) askedBeside(m Meaning) bool {
	switch m.Kind {
	case Why:
		return true
	case Measure, HowTo, Help, Step:
		return len(m.Sets) == 0
	case Number:
		return len(m.Sets) == 0 && m.Topic != "fits"
	}
	return false
}
