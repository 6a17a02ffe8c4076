package listen

import (
	"strings"

	"foldrow/engine"
)

// wearer binds whom the garment is for, where the line says so as a fact:
// "for a 5 year old", "baby 6 months", "a man, XL", "US size 12". The numbers
// that belong to it are used up by it.
func (b *binder) wearer() {
	w := &whom{b: b}
	w.scan()
	switch {
	case !w.found() || !b.tellsWearer(w) || w.passing():
		return
	case (w.problem != "" || !w.parses()) && (b.garmentNamed() || b.asked):
		return // "a pullover for my nephew": who it is for can wait
	case w.problem != "":
		if b.problem.Code == "" {
			b.problem = Problem{Code: w.problem, Key: engine.KeyWearer, Low: w.size}
		}
		w.use()
		return
	}
	if b.l.has("compar", "or", "vs", "versus", "against", "between") && len(w.ages) > 1 {
		for _, months := range w.ages {
			text := engine.Whom{Sex: w.sex, Months: months.Floor()}.String()
			b.put(Set{Key: engine.KeyWearer, Text: text, Near: 1}, w.at)
		}
		w.use()
		return
	}
	text := w.text()
	if _, ok := engine.ParseWhom(text); !ok {
		if b.problem.Code == "" {
			b.problem = Problem{Code: "wearer", Key: engine.KeyWearer}
		}
		w.use()
		return
	}
	w.use()
	b.put(Set{Key: engine.KeyWearer, Text: text, Near: 1}, w.at)
}

// passing: a person of no said age or size, beside something that is said
// outright ("a jacket for my mother", "2 cm, it's for a baby"): it tells why,
// and sets nothing.
func (w *whom) passing() bool {
	if w.aged || w.size.Sign() > 0 || w.letter != "" || w.sizeWord {
		return false
	}
	if w.labelled() {
		return false
	}
	for i, t := range w.b.l.tokens {
		if t.q != nil && !w.used[i] {
			return true
		}
	}
	for _, m := range w.b.l.mentions {
		if m.garment != "" || m.rib.IsSet() {
			return true
		}
	}
	return false
}

// labelled: "woman's cardigan 28/40, neck 41": a grown person beside the garment
// is what the garment is for.
func (w *whom) labelled() bool {
	at := w.b.l.tokens[max(w.at, 0)].text
	return w.adult && w.sex != "" && !w.aged && w.at <= w.b.l.begin+2 && (strings.HasPrefix(at, "woman") || strings.HasPrefix(at, "man") || at == "mens" || at == "womens" || at == "ladies") &&
		w.b.garmentNamed() && !w.b.l.has("for", "say", "said", "my", "the")
}

func (b *binder) garmentNamed() bool {
	for _, m := range b.l.mentions {
		if m.garment != "" {
			return true
		}
	}
	return false
}

func (w *whom) parses() bool {
	_, ok := engine.ParseWhom(w.text())
	return ok
}

// tellsWearer: the words stand for the wearer, and not in a tale or beside a
// measure of the body ("my daughter's head is 52 cm").
func (b *binder) tellsWearer(w *whom) bool {
	for i, t := range b.l.tokens {
		if t.q != nil && isLength(t.q.Unit) && !w.used[i] && !w.apart() && (b.l.has("head", "neck", "bust", "chest")) && !b.l.has("for") {
			return false
		}
	}
	if b.questionOnly() && !b.l.has("fit", "pass", "over", "through", "stitch") {
		return false
	}
	if b.l.has("ago", "taught", "learn", "since", "every", "last", "friend") {
		return false
	}
	begins := w.labelled() || w.at <= b.l.begin+2 && (w.aged || w.size.Sign() > 0 || w.letter != "" || w.sizeWord)
	return b.l.has("for", "compar", "fit", "wear", "wears", "wearer", "pass", "over", "through") || begins || w.sizeWord
}

// apart: the person stands between commas, with no other number beside it:
// "pullover age 4, 24/32, neck 36".
func (w *whom) apart() bool {
	tokens := w.b.l.tokens
	if w.at < 0 {
		return false
	}
	from, to := w.at, w.at+1
	for from > 0 && !tokens[from].stop {
		from--
	}
	for to < len(tokens) && !tokens[to].stop {
		to++
	}
	for i := from; i < to; i++ {
		if tokens[i].q != nil && !w.used[i] {
			return false
		}
	}
	return from > 0 || to < len(tokens)
}
