package listen

import (
	"strings"

	"foldrow/engine"
)

// ratioSaid: two small counts with one word between are a ratio: "3 of 4",
// "3 for every 4".
func (r *reading) ratioSaid() (of, every int, ok bool) {
	qs := r.l.quantities()
	if len(qs) != 2 || qs[1]-qs[0] < 2 || qs[1]-qs[0] > 3 || !oneOf(r.l.tokens[qs[0]+1].text, []string{"of", "for", "in", "from", "out", "per", "to"}) {
		return 0, 0, false
	}
	of, every = r.whole(qs[0]), r.whole(qs[1])
	return of, every, of > 0 && of <= every && every <= 20
}

// ratiosSaid is every "3 of 4" of the line as a fraction.
func (r *reading) ratiosSaid() []engine.Num {
	var out []engine.Num
	qs := r.l.quantities()
	for n := 0; n+1 < len(qs); n++ {
		of, every := r.whole(qs[n]), r.whole(qs[n+1])
		if qs[n+1]-qs[n] == 2 && oneOf(r.l.tokens[qs[n]+1].text, []string{"of", "for", "from", "in"}) && of > 0 && of <= every && every <= 20 {
			out = append(out, engine.Frac(int64(of), int64(every)))
			n++
		}
	}
	return out
}

// largestButton: "how big a button can the band take": answered backwards from
// the width of the front band.
func (r *reading) largestButton() (Meaning, bool) {
	if !r.l.has("button") || !r.l.has("big", "large", "biggest", "largest", "size", "wide") || r.l.has("hole", "buttonhol", "overlap", "many") || strings.Contains(r.l.text, "wide is the button") || !r.asks() && !r.l.has("biggest", "largest") || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	for _, s := range r.b.sets {
		if s.Key != engine.FrontBand && s.Key != engine.KeyGarment && s.Key != engine.Button {
			return Meaning{}, false
		}
	}
	m := Meaning{Kind: Backwards, Topic: "largest-button", Keys: []engine.Key{engine.Button}}
	for _, s := range r.b.sets {
		if s.Key == engine.Button && !r.l.has("band", "front") {
			return Meaning{}, false // the button is told
		}
		if s.Key == engine.Button { // "the biggest button for a 2.5 cm band": the width is the band's
			s.Key, s.Value = engine.FrontBand, s.Value.Div(engine.Int(10))
		}
		if s.Key == engine.FrontBand {
			m.Sets = append(m.Sets, s)
		}
	}
	return m, true
}

// overlapAsked: "what overlap", "how wide must the overlap be".
func (r *reading) overlapAsked() (Meaning, bool) {
	if !r.l.has("overlap") || !r.asks() || len(r.b.sets) > 0 || r.cue(Why) || r.cue(WhatIf) && r.l.has("if") || r.cue(Measure) && r.l.has("measur") || r.howToForm() || r.b.problem.Code != "" || r.l.has("includ", "include", "add", "subtract", "count", "with", "mean") {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{engine.OverlapLow, engine.OverlapHigh}}, true
}
