package listen

import (
	"fmt"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// A pattern is one phrasing from rules/phrases.md, compiled. The notation is
// small enough to be written by someone who does not program:
//
//	how many rows          these words, in this order, in any of their forms
//	[please] keep it       a word in brackets may be missing
//	(keep|take) it         one of several; an alternative may be several words
//	hang every <n>         a number; <len> a length, <ord> third or 3rd,
//	                       <rib> 2x2, <key> anything the plan names,
//	                       <needle> L55
//	dropped ... stitch     up to four other words between
//	^keep$                 the line begins, or ends, here
type pattern struct {
	elems  []elem
	start  bool     // ^
	end    bool     // $
	weight int      // literal words it needs: the more, the surer
	must   glance   // stems it cannot do without
	need   []glance // and those of which it needs one each
}

type elem struct {
	alts     [][]string // stems; nil for a slot or a gap
	slot     string
	gap      bool
	optional bool
}

// PatternError tells of a phrasing that cannot be compiled.
type PatternError struct{ Text, Why string }

func (e *PatternError) Error() string { return fmt.Sprintf("phrasing %q: %s", e.Text, e.Why) }

func (t *stems) compile(text string) (*pattern, error) {
	p := &pattern{}
	s := strings.TrimSpace(text)
	var room [16]elem
	elems := room[:0]
	if strings.HasPrefix(s, "^") {
		p.start, s = true, strings.TrimSpace(s[1:])
	}
	if strings.HasSuffix(s, "$") {
		p.end, s = true, strings.TrimSpace(s[:len(s)-1])
	}
	for s != "" {
		part, rest, err := t.cutElem(s)
		if err != "" {
			return nil, &PatternError{text, err}
		}
		elems = append(elems, part)
		s = strings.TrimSpace(rest)
	}
	p.elems = t.elems.keep(elems)
	if len(p.elems) == 0 {
		return nil, &PatternError{text, "it is empty"}
	}
	for _, e := range p.elems {
		if e.optional || e.gap {
			continue
		}
		p.weight++
	}
	p.must, p.need = p.needs()
	return p, nil
}

// cutElem takes the first element off s; why is not empty where it cannot.
func (t *stems) cutElem(s string) (e elem, rest, why string) {
	switch s[0] {
	case '[', '(':
		closing := "]"
		if s[0] == '(' {
			closing = ")"
		}
		i := strings.Index(s, closing)
		if i < 0 {
			return e, "", "a bracket is not closed"
		}
		e.optional = s[0] == '['
		inner := s[1:i]
		if strings.ContainsAny(inner, "([") {
			return e, "", "a bracket stands inside another"
		}
		if strings.HasPrefix(inner, "<") {
			e.slot = strings.Trim(inner, "<>")
			return e, s[i+1:], ""
		}
		e.alts = t.alternatives(inner)
		return e, s[i+1:], ""
	case '<':
		i := strings.IndexByte(s, '>')
		if i < 0 {
			return e, "", "a slot is not closed"
		}
		e.slot = s[1:i]
		switch e.slot {
		case "n", "len", "ord", "rib", "key", "needle", "any", "result", "input":
			return e, s[i+1:], ""
		}
		return e, "", "there is no slot <" + e.slot + ">"
	}
	if strings.HasPrefix(s, "...") {
		return elem{gap: true}, s[3:], ""
	}
	if s[0] == '$' || s[0] == '^' {
		return e, "", "^ stands only at its beginning and $ at its end"
	}
	i := strings.IndexAny(s, " [(<")
	if i < 0 {
		i = len(s)
	}
	e.alts = t.alternatives(s[:i])
	return e, s[i:], ""
}

func (t *stems) alternatives(s string) [][]string {
	var room [32][]string
	out := room[:0]
	for a := range strings.SplitSeq(s, "|") {
		a = strings.Trim(a, "$?")
		if stems := t.of(a); len(stems) > 0 {
			out = append(out, stems)
		}
	}
	return t.alts.keep(out)
}

// hit is where a pattern matched: tokens from..to (to exclusive), the slots'
// tokens in order, and how many literal words were met.
type hit struct {
	from, to int
	slots    []int
	weight   int
}

// maxGap is how many words "..." may stand for.
const maxGap = 4

// match finds the first place where p matches, -1 in from where none.
func (p *pattern) match(l *Line) (hit, bool) {
	if !l.mayHold(p) {
		return hit{}, false
	}
	last := len(l.tokens) - 1
	if p.start {
		last = min(0, last)
	}
	for i := l.begin; i <= last || (i == l.begin && p.start); i++ {
		if i >= len(l.tokens) {
			break
		}
		if !p.mayBegin(l, i) {
			if p.start {
				break
			}
			continue
		}
		h := hit{from: i}
		if to, w, ok := p.from(l, 0, i, &h); ok {
			h.to, h.weight = to, w
			return h, true
		}
		if p.start {
			break
		}
	}
	return hit{}, false
}

// mayBegin is false only where p does not match at token i: a word stands there,
// no quantity before it, and it is not one that p begins with.
func (p *pattern) mayBegin(l *Line, i int) bool {
	el := &p.elems[0]
	if el.slot != "" || el.gap || el.optional || l.tokens[i].q != nil || i > 0 && l.tokens[i-1].q != nil {
		return true
	}
	for _, alt := range el.alts {
		if alt[0] == l.tokens[i].stem {
			return true
		}
	}
	return false
}

// from matches the elements from e on at token i.
func (p *pattern) from(l *Line, e, i int, h *hit) (to, weight int, ok bool) {
	if e == len(p.elems) {
		if p.end && i < l.end {
			return 0, 0, false
		}
		return i, 0, true
	}
	el := &p.elems[e]
	if el.gap {
		for n := 0; n <= maxGap && i+n <= len(l.tokens); n++ {
			if to, w, ok := p.from(l, e+1, i+n, h); ok {
				return to, w, true
			}
			if i+n < len(l.tokens) && l.tokens[i+n].text == "or" {
				break // what stands beyond is another choice
			}
		}
		return 0, 0, false
	}
	if el.unitOf(l, i-1) { // "<n> row" against the one token "two rows"
		if to, w, ok := p.from(l, e+1, i, h); ok {
			return to, w + 1, true
		}
	}
	if n, ok := el.here(l, i); ok {
		mark := len(h.slots)
		if el.slot != "" {
			h.slots = append(h.slots, i)
		}
		if to, w, ok := p.from(l, e+1, i+n, h); ok {
			return to, w + n, true
		}
		h.slots = h.slots[:mark]
	}
	if el.optional {
		return p.from(l, e+1, i, h)
	}
	return 0, 0, false
}

// unitOf reports whether the element is the word of the unit that the
// quantity at token i already holds.
func (e *elem) unitOf(l *Line, i int) bool {
	if i < 0 || e.slot != "" || l.tokens[i].q == nil || l.tokens[i].q.After {
		return false
	}
	word := unitStem(l.tokens[i].q.Unit)
	for _, alt := range e.alts {
		if word != "" && len(alt) == 1 && alt[0] == word {
			return true
		}
	}
	return false
}

func unitStem(u quantity.Unit) string {
	switch u {
	case "st":
		return "stitch"
	case "%":
		return "percent"
	case "needle":
		return "needl"
	case "row", "click", "number":
		return string(u)
	}
	return ""
}

// here reports how many tokens the element takes at i.
func (e *elem) here(l *Line, i int) (int, bool) {
	if i >= len(l.tokens) {
		return 0, false
	}
	if e.slot != "" {
		return l.slotAt(e.slot, i)
	}
	for _, alt := range e.alts {
		if l.stemsAt(alt, i) {
			return len(alt), true
		}
		// "one click" is one token; where a phrasing has the bare word it stands for that
		if q := l.tokens[i].q; q != nil && len(alt) == 1 && alt[0] == unitStem(q.Unit) && q.Value.Equal(engine.Int(1)) {
			return 1, true
		}
	}
	return 0, false
}
