package listen

// cardAsked: questions that one card of rules/howto.md answers, told by
// conditions that a phrasing cannot hold.
func (r *reading) cardAsked() (Meaning, bool) {
	for _, card := range [...]func(*reading) string{(*reading).loneButtons, (*reading).babyOpening, (*reading).whichFirst} {
		if id := card(r); id != "" {
			return Meaning{Kind: HowTo, Card: id}, true
		}
	}
	return Meaning{}, false
}

// loneButtons: "buttons?" asks how the garment is closed: by the buttonholes of
// a cardigan, by a slit in a pullover.
func (r *reading) loneButtons() string {
	switch {
	case r.ctx.Open != "" || r.l.words() != 1 || r.l.tokens[r.l.begin].stem != stem("button"):
		return ""
	case r.ctx.Closed:
		return "slit-closing"
	}
	return "buttonholes"
}

// babyOpening: "why so big an opening for a baby".
func (r *reading) babyOpening() string {
	asked := r.cue(Why) || r.asks() && r.l.has("need", "want") && r.l.has("opening", "slit")
	baby := r.l.has("baby", "babies", "toddler", "newborn", "child", "children", "infant")
	if asked && baby && r.l.has("opening", "slit", "open", "big", "wide", "button") && len(r.l.quantities()) == 0 && !r.l.has("safe", "chok", "choke") {
		return "baby-opening"
	}
	return ""
}

// whichFirst: "front band first or neckband first", "why the buttons first":
// the order of the bands, and of the two fronts.
func (r *reading) whichFirst() string {
	if len(r.b.sets) > 0 || len(r.l.quantities()) > 0 || r.cue(WhatIf) || !r.asks() && !r.cue(Why) && !r.l.has("or") || !r.firstAlone() {
		return ""
	}
	neck := r.l.has("neckband", "neck")
	switch {
	case neck && r.l.has("front", "fronts", "button"):
		return "band-order"
	case !neck && r.l.has("button", "buttonhol", "side"):
		return "which-side"
	case !neck && r.l.has("front", "fronts") && r.l.has("band"):
		return "band-order"
	}
	return ""
}

// firstAlone: "first" says what comes first, and is not the first of something
// ("the first buttonhole").
func (r *reading) firstAlone() bool {
	for i, t := range r.l.tokens {
		if t.text == "first" && (i+1 >= r.l.end || t.stop || oneOf(r.l.tokens[i+1].text, []string{"or", "and", "then"})) {
			return true
		}
	}
	return false
}
