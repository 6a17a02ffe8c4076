package listen

import (
	"slices"
	"strings"

	"foldrow/engine"
	"foldrow/rules"
)

// sentence: a line with the words of one of the sentences of rules/, in any
// order. Sure ones are taken before the cards of troubles and techniques,
// likely ones only where nothing else knows the line.
func (r *reading) sentence(sure bool) (Meaning, bool) {
	if len(r.b.sets) > 0 || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	f, _ := r.x.says.bestIn(r.l.tokens, func(card string) bool { return r.timely(r.x.sayings[card]) })
	cover, share := 0.8, 0.55
	if sure {
		cover, share = 0.97, 0.75
	}
	c := r.x.sayings[f.card]
	kind, topic := Kind(c.Fields["kind"]), c.Fields["topic"]
	if f.cover >= 0.97 && f.mass >= 3.2 && kind != Keep && kind != Drop && kind != Undo && kind != Notebook && topic != "dont-know" {
		share -= 0.1 // weighty words, all there: more may stand beside them
	}
	if f.cover < cover || f.share < share || f.mass < 1.5 {
		return Meaning{}, false
	}
	if (kind == Keep || kind == Drop) && (r.asks() || r.wishesMore()) {
		return Meaning{}, false
	}
	if kind == Undo && (f.cover < 0.9 || f.share < 0.7) || kind == Notebook && topic == "open" && !sure {
		return Meaning{}, false
	}
	m := Meaning{Kind: kind, Topic: topic}
	switch kind {
	case HowTo, Trouble:
		m.Card = c.Fields["card"]
	case Step:
		if topic == "start" && r.asksOfThings() {
			return Meaning{}, false
		}
		if topic == "next" && r.l.has("colour", "color", "yarn", "wool", "side") {
			return Meaning{}, false // "what colour now" goes nowhere
		}
		if r.cue(Why) && len(r.l.quantities()) > 0 {
			return Meaning{}, false // "derive 105 step by step"
		}
		m = r.stepMeaning(cueHit{topic: topic})
	case Number:
		if k := engine.Key(c.Fields["key"]); k != "" {
			m.Keys = []engine.Key{k}
		}
	case Undo:
		m = Meaning{Kind: Undo, Count: 1}
		if qs := r.l.quantities(); len(qs) == 1 && r.l.tokens[qs[0]].q.Unit == "" && within(r.l.tokens[qs[0]].q.Value, [2]engine.Num{engine.Int(1), engine.Int(50)}) {
			m.Count = r.l.tokens[qs[0]].q.Value.Floor()
		}
	case Measure:
		if topic == "usual" && !r.asks() && r.l.has("not") && f.cover < 0.97 {
			return Meaning{}, false // "not too high" wishes for something
		}
		return r.measureMeaning(topic, r.inputs()), true
	}
	return m, true
}

func (r *reading) sureSentence() (Meaning, bool)   { return r.sentence(true) }
func (r *reading) likelySentence() (Meaning, bool) { return r.sentence(false) }

// timely reports whether the sentence can be meant at this point.
func (r *reading) timely(c rules.Card) bool {
	open := r.ctx.Open
	switch c.Fields["when"] {
	case "question":
		return open != "" && open != "keep"
	case "keep":
		return open == "keep" || r.ctx.Confirm
	case "making":
		return r.ctx.Making
	case "free":
		return open == "" && !r.ctx.Making
	}
	return true
}

// addSentences files the sentences, each with one of its words chosen where it
// has several to choose from.
func (x *Lexicon) addSentences(cards []rules.Card) {
	x.sayings = make(map[string]rules.Card, len(cards))
	for _, c := range cards {
		x.sayings[c.ID] = c
	}
	x.says = newShelf(func() []rules.Card {
		whole := make([]rules.Card, 0, len(cards))
		for _, c := range cards {
			var all []string
			for _, text := range c.List("words") {
				all = append(all, expand(text)...)
			}
			whole = append(whole, rules.Card{ID: c.ID, Fields: map[string]string{"words": strings.Join(all, " ; ")}})
		}
		return whole
	})
	x.says.plain = true
}

// mostForms bounds what one sentence may stand for.
const mostForms = 200

// expand writes out "(a|b) c" as "a c" and "b c".
func expand(text string) []string {
	open := strings.IndexByte(text, '(')
	end := strings.IndexByte(text, ')')
	if open < 0 || end < open {
		return []string{text}
	}
	var out []string
	for _, rest := range expand(text[end+1:]) {
		for _, a := range strings.Split(text[open+1:end], "|") {
			if len(out) < mostForms {
				out = append(out, text[:open]+a+rest)
			}
		}
	}
	return slices.Clip(out)
}
