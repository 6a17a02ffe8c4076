package listen

// What is asked in passing and sets nothing: a length in the other unit, what a
// swatch has over a length, whether a depth or a count will do.

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// converted: "what is 42 cm in inches", with the unit taken off its end.
func (x *Lexicon) converted(rest string, to quantity.Unit) (Meaning, bool) {
	l := x.line(strings.TrimRight(rest, " ?"))
	qs := l.quantities()
	if len(qs) != 1 {
		return Meaning{}, false
	}
	for i := l.begin; i < l.end; i++ {
		if t := l.tokens[i]; t.q == nil && !oneOf(t.text, []string{"what", "is", "are", "how", "much", "many", "convert", "and", "then", "would", "be", "that"}) {
			return Meaning{}, false
		}
	}
	return inOther(l.tokens[qs[0]].q, to)
}

// inOther is one length told in the other unit.
func inOther(q *quantity.Quantity, to quantity.Unit) (Meaning, bool) {
	cm, ok := q.Length()
	if !ok || q.Unit == "" || q.Unit == to || q.Range || q.Problem != "" || q.Over.Sign() > 0 {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Topic: "convert", Figure: cm, HasFig: true, FigUnit: q.Unit, In: to}, true
}

// convertAsked: "how many inches is 42 cm", "convert 42 cm to inches".
func (r *reading) convertAsked() (Meaning, bool) {
	qs := r.l.quantities()
	if len(qs) != 1 || r.l.words() > 7 {
		return Meaning{}, false
	}
	if len(r.results()) > 0 || r.l.has("neck", "band", "deep", "wide", "round") {
		return Meaning{}, false
	}
	text, q := r.l.text, r.l.tokens[qs[0]].q
	for _, name := range []string{"inches", "cm", "centimetres", "centimeters"} {
		to := quantity.Centimetre
		if name == "inches" {
			to = quantity.Inch
		}
		into := strings.HasPrefix(text, "convert ") && (strings.HasSuffix(text, "to "+name) || strings.HasSuffix(text, "into "+name))
		if into || strings.HasPrefix(text, "how many "+name+" ") {
			return inOther(q, to)
		}
	}
	return Meaning{}, false
}

// spanCounted: "how many rows in 5 cm": what the swatch has over a length,
// which sets nothing.
func (r *reading) spanCounted() (Meaning, bool) {
	t, qs := r.l.tokens, r.l.quantities()
	if r.ctx.Open == "gauge" || !r.l.has("how") || !r.l.has("many") || r.l.words() > 9 ||
		r.l.has("band", "neck", "deep", "depth", "fold", "layer", "hole", "button", "yoke", "front", "neckband") {
		return Meaning{}, false
	}
	m, ok := Meaning{Kind: Number, Figure: inch, HasFig: true, FigUnit: quantity.Inch}, strings.HasSuffix(strings.TrimRight(r.l.text, " ?"), "per inch")
	if len(qs) == 1 && !ok {
		m, ok = inOther(t[qs[0]].q, "")
		ok = ok && qs[0] > 0 && oneOf(t[qs[0]-1].text, []string{"in", "per", "to", "over", "a", "an", "the"})
	}
	if !ok {
		return Meaning{}, false
	}
	m.Topic, m.In = "span", ""
	switch {
	case r.l.has("stitch", "st"):
		m.Keys = []engine.Key{engine.StitchGauge}
	case r.l.has("row"):
		m.Keys = []engine.Key{engine.RowGauge}
	default:
		return Meaning{}, false
	}
	return m, true
}

// deepEnough: "is it deep enough" asks for the depth, and for no yarn.
func (r *reading) deepEnough() (Meaning, bool) {
	if !r.asks() || !r.l.has("enough") || !r.l.has("deep", "tall", "high") || r.l.has("yarn", "wool", "yoke") || len(r.l.quantities()) > 0 {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{engine.DepthResult}}, true
}

// unfolded: "how high is the band unfolded", before it is turned in.
func (r *reading) unfolded() (Meaning, bool) {
	if !r.l.has("unfolded", "unfold") || !r.asks() || len(r.l.quantities()) > 0 || r.howToForm() || !r.l.has("high", "tall", "deep", "long", "wide", "big") {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Topic: "unfolded"}, true
}

// countJudged: "is 109 ok", "what would the neck be with 122", "ok 122 then": so
// many can only be stitches, and what they give is told without setting them.
func (r *reading) countJudged() (Meaning, bool) {
	qs := r.l.quantities()
	if len(qs) != 1 || r.ctx.Open != "" && r.ctx.Open != "keep" || r.ctx.Making || r.cue(Why) || r.l.words() > 9 {
		return Meaning{}, false
	}
	q := r.l.tokens[qs[0]].q
	if q.Unit != "" || q.Range || q.Ordinal || q.Problem != "" || q.Sign != 0 || q.Rib || !q.Value.IsInt() {
		return Meaning{}, false
	}
	n := q.Value.Floor()
	ok := r.asks() && len(r.l.mentions) == 0 && n > 60 && r.l.words() <= 5 && r.l.has("ok", "okay", "fine", "alright", "good", "possibl", "possible", "all")
	asked := n > 90 && n <= 800 && r.asks() && r.l.has("neck") && r.l.has("what", "which") && r.spokenBefore(qs[0], "with", "from", "at", "of", "for") && r.onlyNeck()
	alone := n > 90 && n <= 300 && !r.asks() && len(r.l.mentions) == 0 && r.lone()
	if !ok && !asked && !alone {
		return Meaning{}, false
	}
	return Meaning{Kind: Backwards, Keys: []engine.Key{engine.NeckResult}, Sets: []Set{{Key: engine.BandStitches, Value: q.Value, Near: 1}}}, true
}

// onlyNeck: the line names the neck and nothing else.
func (r *reading) onlyNeck() bool {
	for _, m := range r.l.mentions {
		if m.key != engine.Neck && m.key != engine.NeckResult {
			return false
		}
	}
	return true
}

// lone: beside the number there is no word but a nod.
func (r *reading) lone() bool {
	for i := r.l.begin; i < r.l.end; i++ {
		if t := r.l.tokens[i]; t.q == nil && !oneOf(t.text, []string{"ok", "okay", "then", "right", "so", "well", "hmm", "maybe", "and"}) {
			return false
		}
	}
	return true
}
