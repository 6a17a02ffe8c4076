package listen

import (
	"slices"
	"strings"

	"foldrow/engine"
	"foldrow/rules"
)

func (x *Lexicon) know(st string) { x.known[st] = true }

// offer makes the words of a phrasing corrections that a misspelt word may
// stand for.
func (x *Lexicon) offer(text string) {
	for i := 0; i < len(text); i++ {
		from := i
		for i < len(text) && 'a' <= text[i] && text[i] <= 'z' {
			i++
		}
		if w := text[from:i]; w != "" && !x.stems.offered[w] {
			x.stems.offered[w], x.whole[w] = true, true
			if len(w) >= 4 {
				x.words = append(x.words, w)
			}
		}
	}
}

// learn makes the words of a phrasing words of the craft.
func (x *Lexicon) learn(p *pattern) {
	for _, e := range p.elems {
		for _, alt := range e.alts {
			for _, s := range alt {
				x.craft[s] = true
			}
		}
	}
}

func (x *Lexicon) addName(phrase string, m mention) {
	stems := x.stems.of(phrase)
	for _, st := range stems {
		x.craft[st] = true
	}
	for w := range strings.FieldsSeq(phrase) {
		x.words = append(x.words, w)
		x.whole[w] = true
	}
	if len(stems) == 0 {
		return
	}
	for _, n := range x.names[stems[0]] {
		if n.mention == m && slices.Equal(n.stems, stems) {
			return // "needle" and "needles" name the same thing once
		}
	}
	x.names[stems[0]] = append(x.names[stems[0]], &x.stems.named.keep([]name{{stems: stems, mention: m}})[0])
}

func (x *Lexicon) addWords(c rules.Card) {
	switch c.Fields["kind"] {
	case "garment":
		for _, w := range c.List("words") {
			x.addName(w, mention{garment: engine.Garment(c.ID), key: engine.KeyGarment})
		}
	case "craft":
		for _, w := range c.List("words") {
			x.craft[stem(w)] = true
			x.know(stem(w))
			x.whole[w] = true
			x.words = append(x.words, w)
		}
	case "sense":
		x.senses[c.ID], x.typed[c.ID] = map[string]bool{}, map[string]bool{}
		for _, w := range c.List("words") {
			x.typed[c.ID][w] = true
		}
		for _, st := range x.learnAll(c.List("words")) {
			x.senses[c.ID][st] = true
		}
	case "same":
		for _, w := range c.List("words") {
			from, to, _ := strings.Cut(w, "=")
			for _, s := range []*shelf{x.howto, x.trouble} {
				s.same[stem(strings.TrimSpace(from))] = stem(strings.TrimSpace(to))
			}
			x.know(stem(strings.TrimSpace(from)))
			x.whole[strings.TrimSpace(from)] = true
		}
	case "short":
		for _, w := range c.List("words") {
			from, to, _ := strings.Cut(w, "=")
			x.shorts[strings.TrimSpace(from)] = strings.TrimSpace(to)
		}
	case "slips":
		for _, w := range c.List("words") {
			from, to, _ := strings.Cut(w, "=")
			x.slips[strings.TrimSpace(from)] = strings.TrimSpace(to)
		}
	case "spelt":
		for _, w := range strings.Fields(c.Fields["words"]) {
			x.whole[w] = true
			x.words = append(x.words, w)
		}
	case "known":
		for _, w := range strings.Fields(c.Fields["words"]) {
			x.know(stem(w))
			x.whole[w], x.everyday[w] = true, true
		}
	}
}

// cardWords are the words of the cards on mishaps and techniques that no
// everyday word is.
func (x *Lexicon) cardWords() []string {
	var out []string
	for _, s := range []*shelf{x.trouble, x.howto} {
		for w := range s.ready().whole {
			if len(w) > 4 && !x.everyday[w] {
				out = append(out, w)
			}
		}
	}
	slices.Sort(out)
	return out
}

// learnAll makes the words known and gives their stems.
func (x *Lexicon) learnAll(words []string) []string {
	var out []string
	for _, w := range words {
		out = append(out, x.stems.of(w)...)
		x.whole[w] = true
	}
	return out
}

// mark finds what the words of the line name, longest first, and never two
// things in one place.
func (x *Lexicon) mark(l *Line) {
	l.mentions = l.mentions[:0]
	for i := 0; i < len(l.tokens); {
		n, found := x.nameAt(l, i)
		if !found {
			i++
			continue
		}
		l.mentions = append(l.mentions, n...)
		i = n[0].to
	}
}

// nameAt lists what the longest phrase at token i names: often one thing,
// sometimes an input and a result that share their name ("neck").
func (x *Lexicon) nameAt(l *Line, i int) ([]mention, bool) {
	t := l.tokens[i]
	if t.q != nil && t.q.Rib {
		k, p := t.q.Value.Floor(), t.q.High.Floor()
		return []mention{{from: i, to: i + 1, rib: engine.Rib{Knit: k, Purl: p}, key: engine.KeyRib}}, true
	}
	first := t.stem
	if t.q != nil {
		first = t.text
	}
	var out []mention
	length := 0
	for _, n := range x.names[first] {
		if len(n.stems) < length {
			break
		}
		if !l.stemsAt(n.stems, i) || !n.rib.IsSet() && l.commaWithin(i, i+len(n.stems)) {
			continue
		}
		length = len(n.stems)
		m := n.mention
		m.from, m.to = i, i+length
		out = append(out, m)
	}
	return out, len(out) > 0
}

// commaWithin: "3 cm deep, yoke 160" does not speak of a deep yoke.
func (l *Line) commaWithin(from, to int) bool {
	for j := from + 1; j < to; j++ {
		before, t := l.tokens[j-1].end, &l.tokens[j]
		if t.stop && before <= t.start && strings.ContainsAny(l.text[before:t.start], ",;.") {
			return true
		}
	}
	return false
}

// stepsApart parts the steps of the front bands, which come only where they
// are planned, from the neckband's.
func stepsApart(cards []rules.Card) (band, front []rules.Card) {
	for _, c := range cards {
		if strings.HasPrefix(c.Fields["when"], string(engine.FrontStitches)) {
			front = append(front, c)
		} else {
			band = append(band, c)
		}
	}
	return band, front
}
