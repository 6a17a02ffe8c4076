package listen

import (
	"strings"

	"foldrow/rules"
)

// rewriting says in plainer words what a line says in many: "am I supposed
// to" is "should I", "could you tell me" is nothing at all. The pairs stand in
// rules/words.md, so that a phrasing need know one way of each only. * among
// the plainer words is the last word of those replaced.
type rewriting struct {
	*pattern
	to    []string
	order bool // "could you ..." asks for something to be done
}

// mostRewritings bounds the work on one line.
const mostRewritings = 12

func (x *Lexicon) addRewritings(c rules.Card) error {
	for _, text := range c.List("words") {
		from, to, _ := strings.Cut(text, "=")
		p, err := x.stems.compile(strings.TrimSpace(from))
		if err != nil {
			return err
		}
		x.offer(from)
		x.rewritings = append(x.rewritings, rewriting{pattern: p, to: strings.Fields(to), order: c.Fields["form"] == "order"})
		n := len(x.rewritings) - 1
		if first := p.elems[0]; first.slot == "" && !first.optional {
			for _, alt := range first.alts {
				x.rewriteAt[alt[0]] = append(x.rewriteAt[alt[0]], n)
			}
			continue
		}
		return &PatternError{text, "a rewriting begins with a word"}
	}
	return nil
}

// rewrite puts the plainer words in the place of those said. It walks the line
// once; what was put in is not looked at again.
func (x *Lexicon) rewrite(l *Line) {
	done := 0
	for i := 0; i < len(l.tokens) && done < mostRewritings; i++ {
		t := l.tokens[i]
		if t.q != nil || t.needle != "" {
			continue
		}
		for _, n := range x.rewriteAt[t.stem] {
			w := x.rewritings[n]
			if w.start && i > l.begin && !t.stop {
				continue
			}
			h := hit{from: i}
			to, _, ok := w.from(l, 0, i, &h)
			if !ok || to <= i || len(w.to) == 0 && to-i == len(l.tokens) {
				continue
			}
			l.put(i, to, w.to)
			switch {
			case w.order:
				l.question = false
			case w.start && len(w.to) == 0 && i <= l.begin: // "could you tell me" asks, whatever follows
				l.question = true
			}
			done++
			i += len(w.to) - 1
			break
		}
	}
	l.trim()
	l.look()
}

// put replaces the tokens from..to by words.
func (l *Line) put(from, to int, words []string) {
	first, last := l.tokens[from], l.tokens[to-1]
	in := make([]token, 0, len(l.tokens)+len(words))
	in = append(in, l.tokens[:from]...)
	for n, w := range words {
		t := token{text: w, stem: stem(w), start: first.start, end: last.end}
		if w == "*" {
			t = last
		}
		t.stop = first.stop && n == 0
		in = append(in, t)
	}
	rest := l.tokens[to:]
	if len(words) == 0 && len(rest) > 0 && first.stop {
		in = append(in, rest[0])
		in[len(in)-1].stop = true
		rest = rest[1:]
	}
	l.tokens = append(in, rest...)
}
