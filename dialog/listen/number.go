package listen

import "foldrow/engine"

// asksNumber: a question that names something the plan works out.
func (r *reading) asksNumber() bool {
	return r.asks() && len(r.results()) > 0 && r.l.begin < len(r.l.tokens) && askStart(r.l.tokens[r.l.begin].text)
}

func askStart(w string) bool {
	switch w {
	case "how", "what", "which", "where", "when", "is", "are", "do", "does", "tell", "give", "on", "at", "and", "for", "with":
		return true
	}
	return false
}

// number: something the plan works out, or was told, asked directly.
func (r *reading) number() (Meaning, bool) {
	keys := r.results()
	if !r.asks() && contains(keys, engine.BandStitches) {
		if m, ok := r.countSaid(); ok {
			return m, true // "cast on 121"
		}
	}
	switch {
	case r.aboutRow():
		keys = []engine.Key{engine.Tension}
	case r.aboutNeedle() != "":
		keys = []engine.Key{r.aboutNeedle()}
	case contains(keys, engine.BandYarn) && r.l.has("sew", "backstitch", "tail"):
		keys = []engine.Key{engine.OffYarn}
	case contains(keys, engine.LayerRows) && r.l.has("altogether", "total", "all", "overall", "together"):
		keys = []engine.Key{engine.TotalRows}
	}
	if len(keys) == 0 {
		keys = r.inputs()
		if !r.asks() || r.contentLeft() > 1 {
			return Meaning{}, false
		}
	}
	if len(keys) == 0 || len(r.b.sets) > 0 || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	if r.cue(WhatIf) && r.l.has("if", "suppos") || r.ctx.Making && r.cue(Step) && !r.asks() || r.howToForm() && (len(r.results()) == 0 || r.l.tokens[r.l.begin].text != "how") {
		return Meaning{}, false
	}
	if h, _ := r.x.howto.best(r.l); !r.aboutRow() && (r.l.has("waste", "ravel", "buy", "wash") || !r.asksNumber() && len(r.l.quantities()) == 0 && h.cover >= 0.6 && h.mass > 3 && r.contentLeft() >= 2) {
		return Meaning{}, false // a technique with a number's name in it
	}
	if !r.asks() && r.l.has("be") {
		return Meaning{}, false // "my stitches are uneven" tells, it does not ask
	}
	keys = r.outcome(keys)
	if r.troubleSure() && !r.asksNumber() || !r.asks() && (!r.shortAsk() || r.contentLeft() > 0 && r.troubleLikely()) {
		return Meaning{}, false
	}
	if r.howBeats() {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number, Keys: keys}
	r.part(&m)
	return m, true
}

// aboutNeedle: "do I latch L20", "which bump goes on R51".
func (r *reading) aboutNeedle() engine.Key {
	for _, t := range r.l.tokens {
		if t.needle == "" || !r.asks() {
			continue
		}
		switch {
		case r.l.has("latch", "column", "drop", "rib"):
			return engine.RibColumns
		case r.l.has("hem", "bump", "hang"):
			return engine.HemNeedles
		case r.l.has("two", "double", "decreas"):
			return engine.Rehang
		case r.l.has("on", "be"):
			return engine.RibColumns
		}
	}
	return ""
}

// aboutRow: "what dial on row 5".
func (r *reading) aboutRow() bool {
	if !r.l.has("dial", "tension", "click", "number", "setting", "tight") {
		return false
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if q.Unit == "row" && (q.After || q.Ordinal) {
			return true
		}
	}
	return r.l.has("row") && r.l.has("dial", "tension") && (r.l.has("last", "first", "fold") || len(r.l.quantities()) > 0)
}

// contentLeft counts the words that neither name anything nor are slight.
func (r *reading) contentLeft() int {
	named := make([]bool, len(r.l.tokens))
	for _, m := range r.l.mentions {
		for i := m.from; i < m.to; i++ {
			named[i] = true
		}
	}
	n := 0
	for i, t := range r.l.tokens[:r.l.end] {
		if !named[i] && t.q == nil && !slight(t.stem) && i >= r.l.begin && !askWord(t.text) {
			n++
		}
	}
	return n
}

func askWord(w string) bool {
	switch w {
	case "will", "really", "actually", "band", "neckband", "finished", "would", "end", "last", "first", "left", "right", "be", "get", "come", "out", "my",
		"which", "many", "much", "wide", "long", "is", "are", "now", "currently", "again", "did", "say", "said", "we", "big", "large", "have", "has", "tell", "give", "using", "use", "set", "does":
		return true
	}
	return false
}

// howToForm: "how do I ..." asks for a way.
func (r *reading) howToForm() bool {
	for _, form := range [][]string{{"what", "do", "i", "do"}, {"tell", "me", "about"}, {"explain"}, {"describe"}, {"show", "me", "how"}} {
		if r.beginsWith(form) {
			return true
		}
	}
	if r.l.begin+1 >= len(r.l.tokens) || r.l.tokens[r.l.begin].text != "how" {
		return false
	}
	switch r.l.tokens[r.l.begin+1].text {
	case "do", "to", "can", "should", "must", "i":
		return true
	}
	return false
}

func (r *reading) beginsWith(words []string) bool {
	for i, w := range words {
		if r.l.begin+i >= len(r.l.tokens) || r.l.tokens[r.l.begin+i].text != w {
			return false
		}
	}
	return true
}

func (r *reading) troubleLikely() bool {
	f, _ := r.x.trouble.best(r.l)
	return f.cover >= 0.6 && f.mass >= 2
}

// outcome: "how high will it really be" asks for what comes out, not for what
// was wished.
func (r *reading) outcome(keys []engine.Key) []engine.Key {
	if !r.l.has("will", "really", "actual", "actually", "come", "end", "get", "would") {
		return keys
	}
	out := append([]engine.Key(nil), keys...)
	for i, k := range out {
		switch k {
		case engine.Depth:
			out[i] = engine.DepthResult
		case engine.Neck:
			out[i] = engine.NeckResult
		case engine.DepthRows:
			out[i] = engine.LayerRows
		}
	}
	return out
}

// shortAsk: a name alone ("stitches?", "hem needles", "dial row 5") asks for
// the number.
func (r *reading) shortAsk() bool {
	covered := 0
	for _, m := range r.l.mentions {
		if m.result {
			covered += m.to - m.from
		}
	}
	return covered > 0 && r.l.words()-covered <= 3+len(r.l.quantities())
}

// howBeats: "how do I hang the hem" asks for the way, not for a number.
func (r *reading) howBeats() bool {
	if !r.l.has("how") || r.l.has("many", "much", "long", "deep", "wide", "far", "big", "large", "often", "high", "tight") {
		return false
	}
	f, _ := r.x.howto.best(r.l)
	return f.cover > 0.6
}

// inMention: the word belongs to a name ("end needles"), so it tells no part.
func (r *reading) inMention(i int) bool {
	for _, m := range r.l.mentions {
		if m.from <= i && i < m.to && (m.key == engine.LeftNeedle || m.key == engine.RightNeedle) {
			return true
		}
	}
	return false
}

// part notes which member of a list is asked for.
func (r *reading) part(m *Meaning) {
	for i, t := range r.l.tokens {
		switch {
		case t.q != nil && !t.q.Rib:
			m.Figure, m.HasFig = t.q.Value, true
			m.Part = "row"
			if t.q.Ordinal && !t.q.After {
				m.Part = "nth"
			}
		case t.needle != "":
			m.Needle = t.needle
		case r.inMention(i):
		case t.text == "first" || t.text == "start" || t.text == "begin" || t.text == "starting":
			m.Part = "first"
		case t.text == "last" || t.text == "end" || t.text == "final":
			m.Part = "last"
		}
	}
}
