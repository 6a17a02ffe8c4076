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
			b.cut(i)
			i--
		}
	}
	b.put(Set{Key: engine.KeyFibre, Text: strings.Join(parts, "+"), Near: 1}, at)
}
