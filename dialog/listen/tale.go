package listen

import (
	"strings"

	"foldrow/engine"
)

// mostSentences is how many sentences of a line are looked at by themselves.
const mostSentences = 4

// sentences cuts the line at full stops, question and exclamation marks, nil
// where it is one sentence or too many.
func (r *reading) sentences() []string {
	var out []string
	from := 0
	for i := 1; i <= len(r.l.tokens); i++ {
		if i < len(r.l.tokens) && (r.l.tokens[i].start < r.l.tokens[i-1].end || !strings.ContainsAny(r.l.text[r.l.tokens[i-1].end:r.l.tokens[i].start], ".?!")) {
			continue
		}
		end := len(r.l.text)
		if i < len(r.l.tokens) {
			end = r.l.tokens[i].start // with its sign: a question stays one
		}
		if end > r.l.tokens[from].start {
			out = append(out, strings.TrimSpace(r.l.text[r.l.tokens[from].start:end]))
		}
		from = i
	}
	if len(out) < 2 || len(out) > mostSentences {
		return nil
	}
	return out
}

// alone is the reading of a part of the line, and what it means by itself.
func (r *reading) alone(part string) (*reading, Meaning) {
	l := r.x.line(part)
	if len(l.tokens) == 0 {
		return nil, Meaning{}
	}
	m := r.x.read(l, r.ctx)
	return &reading{x: r.x, l: l, ctx: r.ctx, b: r.x.bind(l, r.ctx, l.question)}, m
}

// tale: what happened is told in one sentence and what is wanted said in
// another ("I tried it on and it gapes. Take 2 cm off the neck."). Only a
// sentence that tells may be passed over; one that could wish for something
// leaves the line to the other readers.
func (r *reading) tale() (Meaning, bool) {
	parts := r.sentences()
	if parts == nil {
		return Meaning{}, false
	}
	if _, drawn := r.drawnRows(); drawn {
		return Meaning{}, false // "xx..xx": its stops are stitches
	}
	if m, ok := r.answersAfter(parts); ok {
		return m, true
	}
	var wish *reading
	var want Meaning
	var tales []*reading
	var told []Meaning
	_, end := r.alone(parts[len(parts)-1])
	for n, part := range parts {
		sub, m := r.alone(part)
		switch {
		case sub == nil:
		case n < len(parts)-1 && m.Kind == Values && end.Kind == Values && sub.remarks() && allHeld(end.Sets, sub.b.sets):
			tales, told = append(tales, sub), append(told, m)
		case r.wishes(m) && !(n < len(parts)-1 && !sub.asks() && (sub.narrates() || len(sub.b.sets) == 0 && r.answered(m) && strings.HasSuffix(r.l.text, "?"))):
			if wish != nil {
				return Meaning{}, false
			}
			wish, want = sub, m
		default:
			tales, told = append(tales, sub), append(told, m)
		}
	}
	if wish == nil {
		return r.mishapTold(tales, told)
	}
	if len(tales) > 0 && want.Kind == Values && len(wish.l.mentions) == 0 && want.Sets[0].Relative {
		return wish.unclear(), true // "She could hardly breathe. Give her another 3 cm.": of what is for her to say
	}
	if len(tales) == 0 || want.Kind == Shake && len(wish.l.mentions) == 0 {
		return Meaning{}, false
	}
	for n, sub := range tales {
		if told[n].Kind == Trouble && (want.Kind == HowTo || want.Kind == Measure) && len(tales) == 1 && wish.asksHelp() {
			return told[n], true
		}
		if !sub.canPass(told[n], wish, want) {
			return Meaning{}, false
		}
	}
	return want, true
}

// mishapTold: one sentence tells of a mishap and the other only asks for help
// ("One of two loops is lost. How do I repair this?").
func (r *reading) mishapTold(tales []*reading, told []Meaning) (Meaning, bool) {
	var m Meaning
	for n, sub := range tales {
		switch {
		case told[n].Kind == Trouble && m.Kind == Nothing:
			m = told[n]
		case !sub.asksHelp():
			return Meaning{}, false
		}
	}
	return m, m.Kind == Trouble
}

// asksHelp: a short question that names nothing.
func (r *reading) asksHelp() bool {
	return r.asks() && len(r.l.mentions) == 0 && r.noFigures() && r.l.words() <= 7 || r.l.words() <= 2 && r.l.has("help", "please")
}

// wishes: the meaning can be what a line is about.
func (r *reading) wishes(m Meaning) bool {
	switch m.Kind {
	case Values:
		return len(m.Sets) > 0
	case WhatIf, Number, Why, Compare, Backwards, Shake, Show, Undo, Keep, Drop, HowTo, Measure, Parts, Vague:
		return true
	case Step:
		return r.ctx.Making
	case Notebook:
		return m.Topic != "open" && m.Topic != "rename" && m.Topic != "delete"
	}
	return false
}

// answered: the meaning is a question's; of a sentence that asks nothing it is
// a guess.
func (r *reading) answered(m Meaning) bool {
	switch m.Kind {
	case HowTo, Measure, Number, Show, Help:
		return true
	}
	return false
}

// narrates: the sentence says what has been done or has happened, by its words.
func (r *reading) narrates() bool {
	if r.l.question || r.askForm() {
		return false
	}
	if r.spokenSense("past") {
		return true
	}
	for _, t := range r.l.tokens[min(1, len(r.l.tokens)):] {
		if t.q == nil && len(t.text) > 4 && strings.HasSuffix(t.text, "ed") && t.text != "need" && !r.x.craft[t.text] {
			return true
		}
	}
	return false
}

// canPass reports whether the tale r can be passed over beside the wish.
func (r *reading) canPass(m Meaning, wish *reading, want Meaning) bool {
	names := len(r.inputs())+len(r.results()) > 0
	if r.asks() && r.l.has("my", "her", "his") && wish.l.has("it", "that") && len(wish.l.mentions) == 0 {
		return false // "do you need my shoulder width? It's 38."
	}
	if !names && r.noFigures() && r.craftWords() == 0 && !r.asks() && (m.Kind == Unclear || m.Kind == Outside || m.Kind == Chat || m.Kind == Nothing || m.Kind == Keep || m.Kind == Help || m.Kind == Step && m.Move.Count == 0) {
		return true // idle talk
	}
	if want.Kind == Values && r.remarks() && len(r.b.sets) > 0 && allHeld(want.Sets, r.b.sets) {
		return true // "The welt's in 2x2 and I'm fed up with it. Plain, please."
	}
	if !r.narrates() && !(r.noFigures() && !r.asks() && r.answered(m)) || m.Kind == Trouble && r.troubleSure() && !r.firmWish(want) {
		return false
	}
	leans := len(wish.l.mentions) == 0 && wish.l.has("it", "that", "this", "they", "them", "one")
	if r.noFigures() {
		return !leans || !names || want.Kind == Keep || want.Kind == Drop || want.Kind == Undo
	}
	if wish.l.has("that", "this") && want.Kind != Values {
		return false // "she wanted 44. How many stitches would that be?"
	}
	for _, s := range r.b.sets {
		if !holds(want.Sets, s.Key) && want.Kind != Why && !r.story() {
			return false
		}
	}
	return len(r.b.sets) > 0 || want.Kind == Why && want.HasFig
}

// firmWish: something is asked for that is more than help with a mishap.
func (r *reading) firmWish(m Meaning) bool {
	switch m.Kind {
	case Values, WhatIf, Compare, Backwards, Undo, Why, Number:
		return true
	}
	return false
}

// noFigures: no number in the sentence that could be a measure of the plan.
func (r *reading) noFigures() bool {
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if r.b.dropped[i] || q.Words && q.Value.Equal(engine.Int(1)) || q.Ordinal && q.Unit == "" {
			continue
		}
		return false
	}
	return true
}

// allHeld: every key of the others is said in sets as well.
func allHeld(sets, others []Set) bool {
	for _, s := range others {
		if !holds(sets, s.Key) {
			return false
		}
	}
	return true
}

// remarks: a sentence of some length that states and wishes for nothing.
func (r *reading) remarks() bool {
	return !r.spokenSense("wish") && !r.asks() && r.l.words() >= 6
}
