package listen

import (
	"slices"
	"strings"

	"foldrow/engine"
)

// hours binds how long the band rests: "rest 12 hours", "two days to dry".
// Hours that nothing says are for resting are somebody's time.
func (b *binder) hours() {
	if !b.l.has("rest", "dry", "drying", "lie", "leave") || b.ctx.Making && !b.l.has("rest", "dry", "drying") {
		return
	}
	for i, t := range b.l.tokens {
		if t.q == nil || t.q.Unit != "" || t.q.Range || t.q.Problem != "" || t.q.Ordinal || i+1 >= len(b.l.tokens) {
			continue
		}
		per := map[string]int64{"hour": 1, "h": 1, "hr": 1, "day": 24}[b.l.tokens[i+1].stem]
		if per == 0 {
			continue
		}
		b.dropped[i] = false
		if b.add(engine.RestHours, i, 1) {
			s := &b.sets[len(b.sets)-1]
			s.Value = s.Value.Mul(engine.Int(per))
		}
	}
}

// questionOnly reports a plain question, in which a word is no choice: "can I
// steam acrylic yarn", "what is mock rib".
func (b *binder) questionOnly() bool {
	if b.l.begin >= len(b.l.tokens) || b.l.has("if", "suppos", "suppose", "about", "compar", "instead", "versus", "vs", "or", "against", "fit", "pass") {
		return false
	}
	switch b.l.tokens[b.l.begin].text {
	case "what", "which", "how", "can", "could", "may", "do", "does", "is", "are", "should", "will", "would", "why", "when", "where", "must":
		return !strings.HasPrefix(b.l.text, "can you") && !strings.HasPrefix(b.l.text, "could you") && !strings.HasPrefix(b.l.text, "will you")
	}
	return false
}

// complains: what happened to a yarn is a trouble, and tells no fibre: "my
// cotton yarn split".
func (b *binder) complains() bool {
	return b.l.has("split", "snap", "snapped", "break", "broke", "broken", "scratchy", "itch", "shrunk", "shrink", "knot", "tangl", "tangle", "unravel", "flattened", "melted")
}

// ours are the choices that a plain question does not set.
func ours(k engine.Key) bool {
	switch k {
	case engine.KeyFibre, engine.KeySetMethod, engine.KeyBandKind, engine.KeyMachine:
		return true
	}
	return false
}

// blend makes one fibre of those that a line names together: "a blend of wool
// and acrylic", "80 % wool 20 % nylon".
func (b *binder) blend() {
	joined := b.l.has("blend", "mix", "mixture", "and", "with", "percent") || strings.Contains(b.l.text, "%")
	if !joined && b.l.words() > 2 || b.l.has("compar", "or") {
		return
	}
	percent := false
	var parts []string
	at := -1
	for _, m := range b.l.mentions {
		if m.key != engine.KeyFibre || m.text == "" {
			continue
		}
		if at < 0 {
			at = m.from
		}
		if !slices.Contains(parts, m.text) {
			parts = append(parts, m.text)
		}
		for i := m.from - 1; i >= 0 && i >= m.from-2; i-- { // "80 % wool"
			if q := b.l.tokens[i].q; q != nil && q.Unit == "%" {
				b.used[i], percent = true, true
			}
		}
	}
	if len(parts) == 0 || len(parts) == 1 && (b.has(engine.KeyFibre) || !percent && b.l.words() > 2) || b.questionOnly() {
		return
	}
	for i := 0; i < len(b.sets); i++ {
		if b.sets[i].Key == engine.KeyFibre {
			b.sets, b.at = slices.Delete(b.sets, i, i+1), slices.Delete(b.at, i, i+1)
			i--
		}
	}
	b.sets, b.at = append(b.sets, Set{Key: engine.KeyFibre, Text: strings.Join(parts, "+"), Near: 1}), append(b.at, at)
}

// machineFit: which class of machine suits the yarn or the gauge, with what
// the question brings of them.
func (r *reading) machineFit() (Meaning, bool) {
	if !r.cue("machine-fit") || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number, Topic: "machine-fit", Keys: []engine.Key{engine.StitchPitch}}
	for _, s := range r.b.sets {
		switch s.Key {
		case engine.StitchGauge, engine.NeedlePitch, engine.KeyMachine:
			m.Sets = append(m.Sets, s)
		default:
			return Meaning{}, false
		}
	}
	for _, y := range r.x.book.Tables.YarnNames {
		if strings.Contains(r.l.text, strings.ToLower(y.Name)) {
			m.Name = y.Name
		}
	}
	return m, true
}

// onlyAsked: a choice's word in a plain question is what the question is
// about, and names no input: "what is mock rib".
func (r *reading) onlyAsked(k engine.Key) bool {
	return r.b != nil && ours(k) && r.b.questionOnly() && !r.cue(Why)
}

// askedChoice: a plain question about a class of machine ("what does a dial
// number mean on a standard machine") or about setting a fibre ("can I steam
// acrylic yarn").
func (r *reading) askedChoice() (Meaning, bool) {
	if r.b == nil || !r.b.questionOnly() || r.cue(Why) {
		return Meaning{}, false
	}
	for _, m := range r.l.mentions {
		if m.key == engine.RestHours && strings.HasPrefix(r.l.text, "how long") && r.ctx.Open != "gauge" {
			return Meaning{Kind: Number, Keys: []engine.Key{engine.RestHours}}, true
		}
		ask := m.key == engine.KeyMachine && (!m.beside && r.l.has("dial", "number", "mark", "needl", "pitch", "mean", "wide", "bed", "machin")) ||
			m.key == engine.KeyFibre && r.l.has("set", "block", "steam", "press", "iron", "wash", "dry", "rest", "heat", "finish", "pin")
		if m.text != "" && ask {
			kind := Measure
			if m.key == engine.KeyFibre && oneOf(r.l.tokens[r.l.begin].text, []string{"how", "can", "may", "should", "could"}) {
				kind = HowTo
			}
			return Meaning{Kind: kind, Topic: "choice", Name: m.text, Keys: []engine.Key{m.key}}, true
		}
	}
	return Meaning{}, false
}
