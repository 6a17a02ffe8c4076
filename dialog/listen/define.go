package listen

// meaningOf: "what is a click", "define column" and "what are edge stitches
// for" ask what a thing is, not how many of it there are.
func (r *reading) meaningOf() (Meaning, bool) {
	plain, purpose := r.asksSense(), r.asksPurpose()
	begins := r.beginsWith([]string{"what", "is"}) || r.beginsWith([]string{"what", "are"}) || r.l.has("explain")
	onlyRib := plain && len(r.b.sets) == 1 && r.b.sets[0].Rib.IsSet()
	if !onlyRib && (len(r.b.sets) > 0 || r.numbersGiven()) || !plain && !purpose && !begins || r.wentWrong() {
		return Meaning{}, false
	}
	if i := r.l.begin + 2; !plain && !purpose && !r.l.has("explain") && i < len(r.l.tokens) && oneOf(r.l.tokens[i].text, []string{"the", "my", "our"}) {
		return Meaning{}, false // "what are the columns to latch" asks which
	}
	if r.cues[Outside].weight >= 3 {
		return Meaning{}, false // "explain how to repair the washing machine"
	}
	f, _ := r.x.howto.best(r.l)
	if (f.cover >= 0.95 || onlyRib && f.cover >= 0.9) && f.mass >= 1.5 && (plain || purpose || r.l.words() <= 7) {
		return Meaning{Kind: HowTo, Card: f.card}, true
	}
	open := r.ctx.Open != "" && r.ctx.Open != "keep"
	if onlyRib && r.ctx.Open == "rib" {
		return r.measureMeaning("how", nil), true
	}
	if !plain && !purpose || open {
		return Meaning{}, false
	}
	if keys := r.inputs(); len(keys) > 0 && !r.ctx.Making {
		topic := "how"
		if purpose {
			topic = "why-asked"
		}
		return r.measureMeaning(topic, keys), true
	}
	if keys := r.results(); len(keys) > 0 {
		return Meaning{Kind: Number, Keys: keys}, true // its answer tells what the number is
	}
	if f.cover >= 0.8 && f.mass >= 1.5 {
		return Meaning{Kind: HowTo, Card: f.card}, true
	}
	return Meaning{}, false
}

// asksSense: the line asks what a word means.
func (r *reading) asksSense() bool {
	switch {
	case r.l.has("define", "definition"):
		return true
	case r.l.has("mean"):
		return r.asks() && !r.l.has("you")
	}
	return r.spokenSense("puzzled") && r.l.has("understand", "explain", "clear", "know") && r.l.has("what") && r.l.has("be") && !r.asksWithin()
}

// asksPurpose: the line asks what a thing is good for.
func (r *reading) asksPurpose() bool {
	last := r.l.tokens[r.l.end-1].text
	return r.l.has("what") && last == "for" && !r.l.has("it", "that", "this", "you") || r.l.has("purpose", "point", "sense") && r.l.has("what") || r.beginsWith([]string{"why", "do", "i", "need"})
}
