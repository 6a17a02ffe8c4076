package listen

import (
	"slices"

	"foldrow/engine"
)

// measure: how to measure, what is usual, why it is asked, "I don't know".
func (r *reading) measure() (Meaning, bool) {
	c, ok := r.cues[Measure]
	open := r.ctx.Open != "" && r.ctx.Open != "keep"
	keys := r.inputs()
	if !open && r.countGiven() && (!ok || c.topic == "usual") {
		return Meaning{}, false // "what size neck do I get from 101 stitches"
	}
	if r.cue(Help) && r.cues[Help].weight >= c.weight && c.topic != "why-asked" && len(r.b.sets) == 0 && r.l.has("you", "type", "say") && r.l.has("can", "help") && len(keys) == 0 {
		return Meaning{Kind: Help}, true // "I have never done this, what can you help me with"
	}
	if !open && r.beginsWith([]string{"what", "is", "the", "best", "way"}) {
		return Meaning{}, false
	}
	if r.bothGarments() {
		return r.measureMeaning("usual", nil), true
	}
	if r.wearer() && r.asks() && r.l.has("fit", "over", "head") && len(r.results()) == 0 && !r.sureBut(engine.KeyGarment) && r.ctx.Open == "" {
		return r.measureMeaning("usual", []engine.Key{engine.Head}), true
	}
	if !ok && r.wantsMend() && !open {
		return Meaning{}, false
	}
	if !ok && r.asks() && (!r.setsBut(engine.KeyGarment) || !r.setsBut(engine.KeyWearer)) && r.asksMeasure(open, keys) {
		return r.measureMeaning(r.measureTopic(keys), keys), true
	}
	if !ok || r.b.problem.Code == "range" && !r.asks() {
		return Meaning{}, false
	}
	if r.setsBeside(c.topic, open) {
		return Meaning{}, false
	}
	if c.topic == "how" && len(keys) == 0 {
		keys = r.byQuantity()
	}
	if !open && r.asksElse(c.topic, keys) {
		return Meaning{}, false
	}
	if c.topic == "how" && len(keys) == 0 && r.measuresThat() {
		return r.measureMeaning("how", nil), true
	}
	if !open && len(keys) == 0 {
		if c.topic == "dont-know" && r.l.words() <= 4 && !r.namesResult() && !r.wentWrong() {
			if r.ctx.Making {
				return Meaning{Kind: Step, Move: Move{What: "about"}}, true
			}
			return Meaning{Kind: Help}, true // "I don't understand"
		}
		if c.topic == "dont-know" || c.topic == "how" || r.namesResult() {
			return Meaning{}, false
		}
	}
	return r.measureMeaning(c.topic, keys), !r.cuedElse(c)
}

// setsBeside: the line sets something, and so asks for no help with it.
func (r *reading) setsBeside(topic string, open bool) bool {
	if topic == "why-asked" || topic == "how" && len(r.l.quantities()) == 0 {
		return false
	}
	if len(r.b.sets) > 0 && r.ctx.Open == "garment" {
		return true
	}
	general := topic == "usual" || topic == "dont-know" && open
	return r.setsBut(engine.KeyGarment) && !(general && !r.setsBut(engine.KeyWearer))
}

// asksElse: with no question open, the words ask for a technique, or for the
// plan's own number.
func (r *reading) asksElse(topic string, keys []engine.Key) bool {
	h, _ := r.x.howto.best(r.l)
	switch topic {
	case "how":
		return h.cover >= 0.9 && h.share >= 0.4 && !r.l.has("measur")
	case "usual":
		return h.cover >= 0.97 && h.mass >= 4 && h.share >= 0.45 || // "what is the best cast off for a neck"
			r.ctx.Open == "keep" && len(keys) == 0 ||
			len(r.results())+len(keys) > 0 && !r.hasSense("usual") // "how deep is it"
	}
	return false
}

// cuedElse: another phrasing of the line, or a card, is surer than c.
func (r *reading) cuedElse(c cueHit) bool {
	if w, ok := r.cues[Why]; ok && c.topic != "why-asked" && w.weight > c.weight {
		return true
	}
	switch c.topic {
	case "how":
		return r.howToIsSurer(c)
	case "usual":
		return r.cue(Compare) && len(r.alternatives()) > 1
	}
	return c.topic == "dont-know" && r.troubleSure()
}

// measuresThat: "how do I measure that" names nothing; it is about what was
// spoken of last.
func (r *reading) measuresThat() bool {
	for _, t := range r.l.tokens[r.l.begin:r.l.end] {
		if t.q != nil || !oneOf(t.text, []string{"how", "do", "does", "i", "you", "one", "to", "should", "can", "best", "measure", "it", "that", "this"}) {
			return false
		}
	}
	return r.l.has("measur") || r.l.end-r.l.begin == 1
}

// countGiven: stitches of a band are said, from which something follows.
func (r *reading) countGiven() bool {
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if q.Unit == "st" && q.Over.Sign() == 0 && !q.Ordinal && i > 0 && oneOf(r.l.tokens[i-1].text, []string{"from", "of", "with", "on", "for"}) {
			return true
		}
	}
	return false
}

// aboutOpen: a question of the craft while one of the five stands open, which
// nothing else has known: it is about that one.
func (r *reading) aboutOpen() (Meaning, bool) {
	if open := r.ctx.Open; open == "" || open == "keep" || !r.asks() || len(r.b.sets) > 0 || r.b.problem.Code != "" || r.cue(Outside) || r.craftWords() == 0 && !r.pronounOnly() {
		return Meaning{}, false
	}
	return r.measureMeaning("how", nil), true
}

// bothGarments: "should I say cardigan or pullover if ..." at that question.
func (r *reading) bothGarments() bool {
	n := 0
	for _, m := range r.l.mentions {
		if m.garment != "" {
			n++
		}
	}
	return n > 1 && r.ctx.Open == "garment" && r.askForm()
}

// setsBut reports whether the line sets anything but k.
func (r *reading) setsBut(k engine.Key) bool {
	for _, s := range r.b.sets {
		if s.Key != k {
			return true
		}
	}
	return false
}

func (r *reading) measureMeaning(topic string, keys []engine.Key) Meaning {
	m := Meaning{Kind: Measure, Topic: topic, Keys: keys}
	m.Whom, m.Worn = r.whom()
	return m
}

// byQuantity is the thing that "what one click does" and "the yarn of one
// row" are about.
func (r *reading) byQuantity() []engine.Key {
	for _, i := range r.l.quantities() {
		switch q := r.l.tokens[i].q; {
		case q.Unit == "click":
			return []engine.Key{engine.ClickEffect}
		case q.Unit == "row" && r.l.has("yarn", "wool"):
			return []engine.Key{engine.RowYarn}
		}
	}
	return nil
}

// asksMeasure: a question about the open question, or about whose head or
// neck it is, without one of the usual phrasings.
func (r *reading) asksMeasure(open bool, keys []engine.Key) bool {
	if r.wearer() && (slices.Contains(keys, engine.Head) || slices.Contains(keys, engine.Neck) || slices.Contains(keys, engine.NeckBody)) && !r.l.has("fit", "pass", "over", "through") {
		return true
	}
	if !open || r.cue(WhatIf) && r.l.has("if") || len(r.alternatives()) > 1 {
		return false
	}
	for _, k := range keys {
		if OpenOf(k) == r.ctx.Open {
			return true
		}
	}
	return r.l.has("measur", "tap", "swatch", "wash", "square", "block", "usual", "normal", "normally", "usually") || r.wearer() ||
		r.pronounOnly() && len(r.results()) == 0 && len(r.l.quantities()) == 0
}

func (r *reading) measureTopic(keys []engine.Key) string {
	if r.wearer() || r.l.has("usual", "normal", "normally", "usually", "typical") {
		return "usual"
	}
	return "how"
}

// wearer: the line says whose body it is about.
func (r *reading) wearer() bool {
	return r.hasSense("wearer") || r.l.has("size") && len(r.l.quantities()) > 0
}

// howToIsSurer: "how do I measure a swatch" has a card of its own; but with a
// measuring question open, or a key named, the measuring help comes first.
func (r *reading) howToIsSurer(c cueHit) bool {
	f, _ := r.x.howto.best(r.l)
	if len(r.inputs()) > 0 && r.l.has("measur", "tap", "girth") {
		return false
	}
	if r.ctx.Open == "gauge" && r.l.has("swatch", "piec") {
		return false
	}
	if r.ctx.Open != "" && r.ctx.Open != "keep" && c.weight >= 3 && len(r.inputs()) > 0 {
		return false
	}
	if open := r.ctx.Open; open != "" && open != "keep" && !(r.howToForm() && f.cover >= 0.85 && f.share >= 0.5) {
		return false
	}
	floor := 0.75
	if r.ctx.Open == "" && r.l.has("count") {
		floor = 0.55
	}
	return f.cover >= floor && f.mass > 2 && !r.l.has("measur")
}
