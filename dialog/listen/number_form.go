package listen

import (
	"strings"

	"foldrow/engine"
)

// asksNumber: a question that names something the plan works out.
func (r *reading) asksNumber() bool {
	return r.asks() && len(r.results()) > 0 && r.l.begin < len(r.l.tokens) && askStart(r.l.tokens[r.l.begin].text)
}

func askStart(w string) bool {
	switch w {
	case "how", "what", "which", "where", "when", "is", "are", "do", "does", "tell", "give", "on", "at", "and", "for", "with":
		return true
	}
	return false
}

// numbersGiven: the line holds a number that is more than a word of a name
// ("needles with two stitches").
func (r *reading) numbersGiven() bool {
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; !q.Words || !q.Value.IsInt() || engine.Int(2).Less(q.Value) && !(engine.Int(5).Cmp(q.Value) >= 0 && q.Unit == "st" && r.howToForm()) {
			return true
		}
	}
	return false
}

// measureForm: the question asks which, where, or how much of something.
func (r *reading) measureForm() bool {
	i := r.l.begin
	for i < r.l.end {
		switch r.l.tokens[i].text {
		case "on", "at", "from", "to", "by", "with", "and", "in", "ok", "so", "but", "for":
			i++
			continue
		case "which", "what", "where", "when":
			return true
		case "how":
			return r.counts()
		}
		return false
	}
	return false
}

// mayI: "can I use", "should I" ask whether, not how much.
func (r *reading) mayI() bool {
	if r.l.begin+1 >= r.l.end {
		return false
	}
	switch r.l.tokens[r.l.begin].text {
	case "is", "are":
		return r.ctx.Open != "" && r.ctx.Open != "keep"
	case "can", "could", "may", "should", "shall", "must", "might", "do":
		if r.aboutNeedle() != "" {
			return false
		}
		switch r.l.tokens[r.l.begin+1].text {
		case "i", "we", "you":
			return true
		}
	}
	return false
}

// counts: "how many", "how much", "how deep" ask for a measure, "how do I"
// for a way.
func (r *reading) counts() bool {
	for i := r.l.begin; i+1 < r.l.end; i++ {
		if r.countsAt(i) {
			return true
		}
	}
	return false
}

func (r *reading) countsAt(i int) bool {
	if r.l.tokens[i].text != "how" || i+1 >= len(r.l.tokens) || r.l.tokens[i+1].q != nil {
		return false
	}
	switch r.l.tokens[i+1].text {
	case "many", "much", "long", "wide", "deep", "high", "tall", "far", "big", "large", "tight", "round", "narrow", "heavy", "loose":
		return true
	}
	return false
}

// contentLeft counts the words that neither name anything nor are slight.
func (r *reading) contentLeft() int {
	named := make([]bool, len(r.l.tokens))
	for _, m := range r.l.mentions {
		for i := m.from; i < m.to; i++ {
			named[i] = true
		}
	}
	n := 0
	for i, t := range r.l.tokens[:r.l.end] {
		if !named[i] && t.q == nil && !slight(t.stem) && i >= r.l.begin && !askWord(t.text) {
			n++
		}
	}
	return n
}

func askWord(w string) bool {
	switch w {
	case "total", "will", "really", "actually", "band", "neckband", "finished", "would", "end", "last", "first", "left", "right", "be", "get", "come", "out", "my",
		"choose", "chose", "pick", "going", "gonna", "when", "done", "which", "many", "much", "wide", "long", "is", "are", "now", "currently", "again", "did", "say", "said", "we", "big", "large", "have", "has", "tell", "give", "using", "use", "set", "does", "inches", "inch", "cm", "centimetres", "exactly":
		return true
	}
	return false
}

// howToForm: "how do I ..." asks for a way.
func (r *reading) howToForm() bool {
	for _, form := range [][]string{{"what", "do", "i", "do"}, {"tell", "me", "about"}, {"explain"}, {"describe"}, {"show", "me", "how"}, {"what", "is", "the", "best", "way"}, {"what", "is", "the", "right", "way"}, {"what", "is", "the", "easiest", "way"}} {
		if r.beginsWith(form) {
			return true
		}
	}
	if r.l.begin+1 >= len(r.l.tokens) || r.l.tokens[r.l.begin].text != "how" {
		return false
	}
	switch r.l.tokens[r.l.begin+1].text {
	case "do", "to", "can", "should", "must", "i":
		return true
	}
	return false
}

func (r *reading) beginsWith(words []string) bool {
	for i, w := range words {
		if r.l.begin+i >= len(r.l.tokens) || r.l.tokens[r.l.begin+i].text != w {
			return false
		}
	}
	return true
}

// nounAsk: a few words that are those of one result and no more.
func (r *reading) nounAsk() bool {
	f, _ := r.x.result.best(r.l)
	return f.cover >= 0.95 && f.share >= 0.75 && f.mass >= 3 && r.l.words() <= 7 && len(r.l.quantities()) == 0 && !r.l.has("be") && !r.wentWrong()
}

// shortAsk: a name alone ("stitches?", "hem needles", "dial row 5") asks for
// the number.
func (r *reading) shortAsk() bool {
	covered := 0
	for _, m := range r.l.mentions {
		if m.result {
			covered += m.to - m.from
		}
	}
	return covered > 0 && (r.l.words()-covered <= 3+len(r.l.quantities()) || r.contentLeft() == 0)
}

// howBeats: "how do I hang the hem" asks for the way, not for a number.
func (r *reading) howBeats() bool {
	if !r.l.has("how") || r.l.has("many", "much", "long", "deep", "wide", "far", "big", "large", "often", "high", "tight") {
		return false
	}
	f, _ := r.x.howto.best(r.l)
	return f.cover > 0.6
}

// inMention: the word belongs to a name ("end needles"), so it tells no part.
func (r *reading) inMention(i int) bool {
	for _, m := range r.l.mentions {
		if m.from <= i && i < m.to && (m.key == engine.LeftNeedle || m.key == engine.RightNeedle) {
			return true
		}
	}
	return false
}

// asked: a question that a phrasing of rules/phrases.md knows by itself, with
// the numbers it asks for; it names none of them ("will it fit").
func (r *reading) asked() (Meaning, bool) {
	c, ok := r.cues["asks"]
	given := len(r.b.sets) == 1 && r.b.has(engine.YokeStitches) && c.topic == string(engine.YokeDecreases)
	if !ok || len(r.b.sets) > 0 && !given || !given && len(r.l.quantities()) > len(c.slots) || !r.asks() && (r.l.words() > 9 || c.from > r.l.begin || r.l.has("be", "have")) {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number}
	if given {
		m.Sets = dedupe(r.b.sets)
	}
	for _, k := range strings.Fields(c.topic) {
		m.Keys = append(m.Keys, engine.Key(k))
	}
	if len(c.slots) == 1 && r.l.tokens[c.slots[0]].q != nil && r.l.tokens[c.slots[0]].q.Ordinal {
		r.part(&m)
	}
	return m, true
}
