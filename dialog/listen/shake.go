package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// outright: a value is said outright, or supposed of something that was not
// measured; the words of an error beside it only give the reason.
func (r *reading) outright() bool {
	for _, s := range r.b.sets {
		if s.Relative && r.l.has("take", "add", "remov", "knock", "cut", "put") {
			return true
		}
		if s.Relative && r.l.words() <= 4 && !r.asks() && !r.l.has("if", "out", "off", "wrong", "error", "gaug", "swatch") {
			return true // "one more row"
		}
		if s.Times || s.Near > 0 && !s.Relative && s.Key != engine.StitchGauge && s.Key != engine.RowGauge && within(s.Value, r.x.spans[s.Key].Usual) && !r.asks() && !r.l.has("if") {
			return true
		}
	}
	for _, i := range r.l.quantities() { // nobody is out by 90 stitches
		if q := r.l.tokens[i].q; q.Unit == "st" && engine.Int(12).Less(q.Value) || q.Over.Sign() > 0 && engine.Int(3).Less(q.Value) || q.Unit == "row" && engine.Int(6).Less(q.Value) && q.Over.Sign() == 0 {
			return true
		}
	}
	return false
}

// shake: what a small error does. The size of it is the set of the line.
func (r *reading) shake() (Meaning, bool) {
	c, ok := r.cues[Shake]
	sign := strings.Contains(r.l.text, "±") || strings.Contains(r.l.text, "+/-")
	for _, i := range r.l.quantities() {
		if u := r.l.tokens[i].q.Unit; sign && (u == quantity.Stitch || u == quantity.Row || u == quantity.Click) {
			ok, c.weight = true, 2
		}
	}
	if sign && len(r.inputs()) > 0 || r.l.tokens[r.l.begin].text == "shake" {
		ok, c.weight = true, 2
	}
	if !ok || c.weight < 2 && !r.l.has("sensitivity") || r.outright() {
		return Meaning{}, false
	}
	if f, _ := r.x.trouble.best(r.l); !r.l.has("if", "gaug", "swatch", "may", "might", "could", "perhaps", "maybe") && (r.l.has("count") || r.l.has("tension", "dial") && f.cover >= 0.5) {
		return Meaning{}, false // something has gone wrong; nothing is supposed
	}
	if r.ctx.Making && r.l.has("counter", "column", "bump") || r.l.has("yarn", "wool") && r.l.has("out") && r.l.has("of") && !r.asks() {
		return r.troubleMeaning(), true // "row counter off by 2", "out of yarn three rows from the end"
	}
	if m := r.setsMeaning(WhatIf); m.Kind == WhatIf && len(m.Sets) == 1 && m.Sets[0].Relative && r.asks() && r.l.has("more", "less", "extra", "deeper", "wider", "bigger") {
		return m, true // "what does half an inch more neck do"
	}
	keys := r.inputs()
	if len(keys) == 0 {
		keys = r.results()
	}
	m := Meaning{Kind: Shake, Keys: keys}
	r.errorSaid(&m)
	if !m.HasFig && !r.l.has("shak", "shake", "swatch", "gaug", "measur", "sure", "exact", "accurat", "precis", "sensitiv", "sensitivity", "reliabl", "certain", "error", "mismeasur", "miscount") {
		return Meaning{}, false
	}
	if r.troubleSure() && !(r.asks() && m.HasFig && c.weight >= 4 && !r.wentWrong()) && !r.l.has("gaug", "swatch", "if", "may", "might", "could") {
		return Meaning{}, false
	}
	if r.l.has("swatch") && r.l.has("big", "larg", "size") {
		m.Topic = "swatch"
	}
	return m, true
}

// errorSaid notes the size of the error, its unit, and first of all what is out
// by it.
func (r *reading) errorSaid(m *Meaning) {
	for i, t := range r.l.tokens[:max(0, len(r.l.tokens)-1)] {
		if next := r.l.tokens[i+1].stem; (t.text == "a" || t.text == "one") && (next == "stitch" || next == "row" || next == "click") {
			m.Figure, m.HasFig, m.FigUnit = engine.Int(1), true, map[string]quantity.Unit{"stitch": "st", "row": "row", "click": "click"}[next]
			if next == "row" {
				m.Keys = append([]engine.Key{engine.RowGauge}, engine.WithoutKey(m.Keys, engine.RowGauge)...)
			}
		}
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if q.Unit == "" && engine.Int(5).Less(q.Value) {
			continue // "how accurate is 39.8" says no error
		}
		m.Figure, m.HasFig, m.FigUnit = q.Value, true, q.Unit
		if per, ok := q.Per10cm(); ok {
			m.Figure = per
		}
		switch q.Unit {
		case "st":
			m.Keys = append([]engine.Key{engine.StitchGauge}, engine.WithoutKey(m.Keys, engine.StitchGauge)...)
		case "row":
			m.Keys = append([]engine.Key{engine.RowGauge}, engine.WithoutKey(m.Keys, engine.RowGauge)...)
		case "click":
			m.Keys = append([]engine.Key{engine.StartClicks}, m.Keys...)
		}
	}
}
