package listen

import (
	"strings"

	"foldrow/engine"
)

// vague: "a bit deeper" wishes for a change and leaves out how much.
func (r *reading) vague() (Meaning, bool) {
	if ask, ok := r.wished(); ok {
		return Meaning{Kind: Vague, Vague: ask}, true
	}
	if m, ok := r.nodThenMore(); ok {
		return m, true
	}
	if ask, ok := r.moreOrLess(); ok {
		return Meaning{Kind: Vague, Vague: ask}, true
	}
	c, ok := r.cues[Vague]
	if !ok || !r.noAmount() || len(r.b.sets) > 0 || r.ctx.Making || r.ctx.Open != "" && r.ctx.Open != "keep" {
		return Meaning{}, false
	}
	key, way, _ := strings.Cut(c.topic, " ")
	ask := Ask{Key: engine.Key(key), Sign: 1, Supposed: r.cue(WhatIf) || r.ctx.Open == "keep"}
	if way == "less" {
		ask.Sign = -1
	}
	return Meaning{Kind: Vague, Vague: ask}, true
}

// nodThenMore: "yes, make it deeper", "no, deeper": the nod is no answer, since
// what follows goes on from the what-if on the table.
func (r *reading) nodThenMore() (Meaning, bool) {
	at := r.l.begin + 1
	if r.ctx.Open != "keep" || r.l.words() < 2 || !oneOf(r.l.tokens[r.l.begin].text, []string{"yes", "yeah", "yep", "ok", "okay", "fine", "sure", "good", "nice", "no", "nope", "well", "hmm"}) || !r.wishesMore() {
		return Meaning{}, false
	}
	for at < r.l.end && oneOf(r.l.tokens[at].text, joinWords) {
		at++
	}
	if at == r.l.end {
		return Meaning{}, false
	}
	m := r.x.read(r.x.line(r.l.text[r.l.tokens[at].start:]), r.ctx)
	return m, m.Kind == Vague || m.Kind == WhatIf || m.Kind == HowTo
}

// moreOrLess: "a bit less", right after the neck, the depth or the stitches, is of
// those.
func (r *reading) moreOrLess() (Ask, bool) {
	ask := Ask{Key: topicInput(r.ctx.Topic), Supposed: r.ctx.Open == "keep"}
	if r.ctx.Making || r.ctx.Open != "" && r.ctx.Open != "keep" || len(r.l.quantities()) > 0 || r.l.question {
		return ask, false
	}
	if ask.Key != engine.Neck && ask.Key != engine.Depth && ask.Key != engine.BandStitches {
		return ask, false
	}
	for i := r.l.begin; i < r.l.end; i++ {
		switch t := r.l.tokens[i].text; {
		case t == "more":
			ask.Sign = 1
		case t == "less":
			ask.Sign = -1
		case !oneOf(t, []string{"a", "bit", "little", "touch", "tad", "slightly", "still", "even", "then", "maybe", "please", "somewhat", "ok", "hmm"}):
			return ask, false
		}
	}
	return ask, ask.Sign != 0
}

// wished: "increase the depth marginally", "widen the neck a touch": a verb of
// more or of less, the neck, the depth or the stitches, and no word beside them
// that says how much or anything else.
func (r *reading) wished() (Ask, bool) {
	var ask Ask
	if r.ctx.Making || r.ctx.Open != "" && r.ctx.Open != "keep" || len(r.l.quantities()) > 0 || r.l.has("how", "when", "not", "which") {
		return ask, false
	}
	ask.Supposed = r.cue(WhatIf) || r.ctx.Open == "keep"
	named := map[int]bool{}
	for _, m := range r.l.mentions {
		switch m.key {
		case engine.Neck, engine.Depth, engine.BandStitches:
			ask.Key = m.key
		default:
			return ask, false
		}
		for i := m.from; i < m.to; i++ {
			named[i] = true
		}
	}
	for i := r.l.begin; i < r.l.end; i++ {
		t := r.l.tokens[i]
		switch {
		case named[i]:
		case r.x.typed["wish-more"][t.text]:
			ask.Sign = 1
		case r.x.typed["wish-less"][t.text]:
			ask.Sign = -1
		case !slight(t.stem) && !r.x.typed["little"][t.text] && !oneOf(t.text, []string{"band", "neckband", "if", "could", "us", "we", "want"}):
			return ask, false
		}
		if ask.Key == "" && t.text == "deepen" {
			ask.Key = engine.Depth
		} else if ask.Key == "" && t.text == "widen" {
			ask.Key = engine.Neck
		}
	}
	return ask, ask.Sign != 0 && ask.Key != ""
}

// noAmount: no number in the line, but for the "one" of "one size".
func (r *reading) noAmount() bool {
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; !q.Words || !q.Value.Equal(engine.Int(1)) || q.Unit != "" || !r.l.has("size") {
			return false
		}
	}
	return true
}

// amount: a lone number after "by how much?" is that much more or less.
func (r *reading) amount() (Meaning, bool) {
	ask := r.ctx.Amount
	if ask.Sign == 0 || len(r.l.quantities()) != 1 || r.contentLeft() > 0 || len(r.inputs())+len(r.results()) > 0 || r.l.question {
		return Meaning{}, false
	}
	i := r.l.quantities()[0]
	q := r.l.tokens[i].q
	key := ask.Key
	if key == engine.Depth && q.Unit == "row" {
		key = engine.DepthRows
	}
	if q.Range || q.Problem != "" || q.Ordinal || q.After || q.Over.Sign() > 0 || q.Sign < 0 || !accepts(r.x.spans[key].Dimension, q) {
		return Meaning{}, false
	}
	s, p := r.x.value(key, q, r.ctx)
	if p.Code != "" {
		return Meaning{}, false
	}
	s.Key, s.Relative, s.Near = key, true, 1
	if ask.Sign < 0 {
		s.Value = engine.Int(0).Sub(s.Value)
	}
	m := Meaning{Kind: Values, Sets: []Set{s}}
	if ask.Supposed {
		m.Kind = WhatIf
	}
	return m, true
}

// wanted: a lone number after "tell me the head" is the head.
func (r *reading) wanted() (Meaning, bool) {
	k, qs := r.ctx.Wanted, r.l.quantities()
	if k == "" || len(qs) != 1 || r.contentLeft() > 0 || len(r.inputs())+len(r.results()) > 0 || r.l.question || r.ctx.Open != "" && r.ctx.Open != "keep" {
		return Meaning{}, false
	}
	q := r.l.tokens[qs[0]].q
	if q.Range || q.Problem != "" || q.Ordinal || q.After || q.Sign != 0 || r.wearer() || !accepts(r.x.spans[k].Dimension, q) {
		return Meaning{}, false
	}
	s, p := r.x.value(k, q, r.ctx)
	if card := r.x.spans[k]; p.Code != "" || !r.ctx.Least.Less(s.Value) || card.HasSpan && !within(s.Value, card.Possible) {
		return Meaning{}, false
	}
	s.Key, s.Near = k, 1
	m := Meaning{Kind: Values, Sets: []Set{s}}
	if s.Hedged {
		m.Notes = append(m.Notes, "hedged")
	}
	return m, true
}
