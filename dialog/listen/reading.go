package listen

import "strings"

// reading is one line being decided.
type reading struct {
	x    *Lexicon
	l    *Line
	ctx  Context
	cues map[Kind]cueHit
	b    *binder
}

type cueHit struct {
	hit
	topic, card string
}

// findCues is the wordiest phrasing of each kind that the line holds, of two
// as wordy the first in rules/.
func (x *Lexicon) findCues(l *Line, ctx Context) map[Kind]cueHit {
	found := map[Kind]cueHit{}
	for n, h := range x.cued.held(l) {
		c := &x.cues[n]
		if c.topic == "only-open" && ctx.Open != "keep" && !ctx.Confirm {
			continue
		}
		if old, have := found[c.kind]; !have || h.weight > old.weight {
			found[c.kind] = cueHit{hit: h, topic: c.topic, card: c.card}
		}
	}
	return found
}

// hasSense reports whether the line holds a word of that sense, as rules/words.md
// lists them.
func (r *reading) hasSense(sense string) bool {
	words := r.x.senses[sense]
	for i := range r.l.tokens {
		if t := &r.l.tokens[i]; t.q == nil && (words[t.stem] || words[t.text]) {
			return true
		}
	}
	return false
}

func (r *reading) cue(k Kind) bool { _, ok := r.cues[k]; return ok }

func (r *reading) namesResult() bool {
	for _, m := range r.l.mentions {
		if m.result {
			return true
		}
	}
	return false
}

func (r *reading) unclear() Meaning {
	m := Meaning{Kind: Unclear, Problem: r.b.problem}
	if m.Problem.Code == "" {
		m.Problem.Code = "not-understood"
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if m.Problem.Code == "not-understood" && (q.Range || q.Problem != "") {
			m.Problem = Problem{Code: q.Problem, Low: q.Value, High: q.High, Unit: q.Unit}
			if q.Range {
				m.Problem.Code = "range"
			}
		}
		m.Figure, m.HasFig, m.FigUnit = q.Value, true, q.Unit
		m.Problem.Read = strings.TrimSpace(r.l.text[q.Start:q.End])
	}
	for _, n := range r.l.mentions {
		if n.key != "" {
			m.Keys = append(m.Keys, n.key)
		}
	}
	return m
}
