package listen

import (
	"foldrow/engine"
)

// beyond: a subject named that is plainly not ours, before its words can be
// taken for something else ("a good film to watch while I knit").
func (r *reading) beyond() (Meaning, bool) {
	named := len(r.inputs()) > 0 || len(r.results()) > 0
	if r.ctx.Making && r.cues[Step].topic == "where" {
		return Meaning{}, false // "phone rang, where was I"
	}
	for _, s := range r.b.sets {
		if OpenOf(s.Key) == r.ctx.Open && !r.asks() {
			return Meaning{}, false // "I measured again after lunch and it is 42"
		}
	}
	if !r.cue(Outside) || r.cue(Notebook) || r.sureBut(engine.KeyGarment) || named && r.cues[Outside].weight < 2 || r.ctx.Open == "keep" && r.l.words() <= 2 {
		return Meaning{}, false
	}
	h, _ := r.x.howto.best(r.l)
	t, _ := r.x.trouble.best(r.l)
	if h.cover >= 0.7 && h.mass > 2.5 || t.cover >= 0.7 && t.mass > 2.5 || !r.asks() && r.l.words() < 2 {
		return Meaning{}, false
	}
	return Meaning{Kind: Outside}, true
}

// sureBut is sure, of other things than k.
func (r *reading) sureBut(k engine.Key) bool {
	for _, s := range r.b.sets {
		if s.Near > 0 && s.Key != k {
			return true
		}
	}
	return false
}

// outside: a subject that is not ours, or a question with no word of the
// craft in it.
func (r *reading) outside() (Meaning, bool) {
	craft := 0
	words := 0
	for _, t := range r.l.tokens[r.l.begin:r.l.end] {
		if t.q == nil && r.x.craft[t.stem] && !slight(t.stem) {
			craft++
		}
		if t.q == nil {
			words++
		}
	}
	if r.cue(Outside) && craft <= words/2 && words > 1 || r.asks() && words >= 3 && (craft == 0 && !r.pronounOnly() || r.strange() && r.craftWords() == 0) {
		return Meaning{Kind: Outside}, true
	}
	return Meaning{}, false
}

// strange: a word of some length that rules/ knows in no form, in a line
// without a word of the craft: "will it rain in Utrecht".
func (r *reading) strange() bool {
	for _, t := range r.l.tokens[r.l.begin:r.l.end] {
		if t.q == nil && len(t.text) >= 4 && !r.x.knows(t) {
			return true
		}
	}
	return false
}

// pronounOnly: "can it be a bit different" is about the plan, only not clear.
func (r *reading) pronounOnly() bool {
	if r.strange() {
		return false
	}
	return r.l.has("it", "this", "that", "them", "one", "bit", "same", "other", "thing") && !r.cue(Outside)
}

// craftWords counts the words of the craft in the line.
func (r *reading) craftWords() int {
	n := 0
	for _, t := range r.l.tokens[r.l.begin:r.l.end] {
		if t.q == nil && r.x.craft[t.stem] && !slight(t.stem) && !common(t.stem) && !r.x.everyday[t.text] {
			n++
		}
	}
	return n
}

// common words belong to phrases of the craft without telling of it.
func common(st string) bool {
	switch st {
	case "us", "use", "best", "go", "make", "back", "number", "long", "deal", "good", "work", "right", "left", "end", "start", "first", "last", "time", "one", "way", "turn", "take", "put", "show", "tell", "need", "want", "find", "year", "all":
		return true
	}
	return false
}

// otherNeck: a V neck or a square one is planned otherwise, whatever else the
// line says of the garment.
func (r *reading) otherNeck() (Meaning, bool) {
	c, ok := r.cues["other-neck"]
	if !ok || r.refusedBefore(c.from) {
		return Meaning{}, false
	}
	return Meaning{Kind: HowTo, Card: "other-necks"}, true
}

// refusedBefore: "not a" or "no" stands right before token i.
func (r *reading) refusedBefore(i int) bool {
	if i > 0 && oneOf(r.l.tokens[i-1].text, []string{"a", "the"}) {
		i--
	}
	return i > 0 && oneOf(r.l.tokens[i-1].text, []string{"no", "not"})
}
