package listen

import (
	"slices"
	"strings"

	"foldrow/engine"
)

// frontal reports whether the line is about the front bands: it names
// something of them, or picks up along an edge.
func (l *Line) frontal() bool {
	for _, m := range l.mentions {
		if engine.AboutFronts(m.key) && !(m.key == engine.HoleSpacing && m.to-m.from == 1) {
			return true
		}
	}
	for _, m := range l.mentions {
		if m.key == engine.FrontBand && l.ofPart(m.from) {
			return true
		}
	}
	pickUp := strings.Contains(l.text, "pick up") || strings.Contains(l.text, "pick-up") || strings.Contains(l.text, "picking up")
	return pickUp && l.has("along", "edge", "front") && !l.has("drop", "dropped", "neck", "neckline") || l.has("along") && l.has("front") && l.has("many")
}

// ofPart reports whether the name at token i tells what something is of or for:
// "rows for the front band".
func (l *Line) ofPart(i int) bool {
	for i--; i >= 0 && oneOf(l.tokens[i].text, []string{"the", "my", "a", "each", "both", "one"}); i-- {
	}
	return i >= 0 && oneOf(l.tokens[i].text, []string{"for", "of", "along", "do", "does"})
}

// frontward is the results that the line asks for, those of the neckband
// turned into the front bands' where the line is about these.
func (r *reading) frontward(keys []engine.Key) []engine.Key {
	if !r.l.frontal() || r.l.has("neckband") && !r.b.has(engine.NeckbandEnd) {
		return keys
	}
	var out []engine.Key
	for _, k := range keys {
		if k = frontOf(k); !slices.Contains(out, k) {
			out = append(out, k)
		}
	}
	return out
}

// frontOf is the result of the front bands that stands for one of the neckband.
func frontOf(k engine.Key) engine.Key {
	switch k {
	case engine.BandStitches, engine.WantedStitches:
		return engine.FrontStitches
	case engine.LayerRows:
		return engine.FrontLayerRows
	case engine.TotalRows:
		return engine.FrontTotalRows
	case engine.BandYarn:
		return engine.FrontYarn
	case engine.BandYarnGrams:
		return engine.FrontYarnGrams
	}
	return k
}

// fronts: a question about the front bands, with or without values of its own,
// which serve that answer only.
func (r *reading) fronts() (Meaning, bool) {
	if !r.l.frontal() || r.b.problem.Code != "" || r.cue(Why) || r.cue(Compare) || r.cue(WhatIf) && r.l.has("if", "suppos") || r.cue(Measure) {
		return Meaning{}, false
	}
	if r.l.has("margin") && r.l.has("even", "equal") && r.asks() {
		return Meaning{Kind: Backwards, Topic: "even-margin", Keys: []engine.Key{engine.HoleMargin}, Sets: dedupe(r.b.sets)}, true
	}
	if !r.frontAsk() || r.howToForm() && len(r.b.sets) == 0 {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number, Sets: dedupe(r.b.sets)}
	for _, k := range r.frontward(r.results()) {
		if engine.AboutFronts(k) || k == engine.AllYarn || k == engine.AllYarnGrams {
			m.Keys = append(m.Keys, k)
		}
	}
	if len(m.Keys) == 0 {
		m.Keys = r.frontAsked()
	}
	if len(m.Keys) == 0 {
		return Meaning{}, false
	}
	if slices.Contains(m.Keys, engine.FrontLength) {
		m.Kind = Backwards
	}
	r.oneHole(&m)
	return m, true
}

// frontAsk reports whether the line asks, in the form of a question or by what
// it begins with: "overlap for a 20 mm button", "pick-up ratio".
func (r *reading) frontAsk() bool {
	if r.asks() {
		return true
	}
	for _, m := range r.l.mentions {
		if m.result && engine.AboutFronts(m.key) {
			return true
		}
	}
	return r.l.has("many", "ratio") || r.beginsWith([]string{"overlap", "for"}) || r.beginsWith([]string{"hole", "for"}) || r.beginsWith([]string{"buttonhole", "for"})
}

// frontAsked is what a question asks for that names no result.
func (r *reading) frontAsked() []engine.Key {
	many := r.l.has("many")
	switch {
	case r.b.has(engine.Button) && r.l.has("overlap", "wide"):
		return []engine.Key{engine.OverlapLow, engine.OverlapHigh}
	case r.b.has(engine.Button) && !r.b.has(engine.Holes):
		return []engine.Key{engine.HoleLength}
	case r.l.has("apart", "distanc") && r.l.has("buttonhol", "button") && len(r.b.sets) == 0:
		return []engine.Key{engine.HoleDistance}
	case r.l.has("wide", "big", "long", "large", "size") && r.l.has("buttonhol", "hol", "hole") && len(r.b.sets) == 0:
		return []engine.Key{engine.HoleStitches}
	case r.l.has("far") && r.l.has("end", "edge", "bottom", "top") && r.l.has("buttonhol", "button") && len(r.b.sets) == 0:
		return []engine.Key{engine.HolePositions}
	case r.l.has("where") && r.l.has("buttonhol", "hol", "hole", "button") && len(r.b.sets) == 0:
		return []engine.Key{engine.HolePositions}
	case r.l.has("needl", "stitch") && r.l.has("buttonhol", "hol", "hole") && len(r.b.sets) == 0:
		return []engine.Key{engine.HoleNeedles}
	case r.b.has(engine.HoleSpacing) && (many || !r.b.has(engine.Holes)):
		return []engine.Key{engine.Holes}
	case r.b.has(engine.Holes) || r.l.has("buttonhol") && r.b.has(engine.FrontCount):
		return []engine.Key{engine.HolePositions}
	case r.b.has(engine.FrontEdge) || r.b.has(engine.EdgeRows):
		return []engine.Key{engine.FrontStitches}
	case r.b.has(engine.FrontCount):
		return []engine.Key{engine.FrontLength}
	case r.l.has("ratio"):
		return []engine.Key{engine.FrontRatio}
	case many && (strings.Contains(r.l.text, "pick up") || r.l.has("along")):
		return []engine.Key{engine.FrontStitches}
	}
	return nil
}

// frontWhy is the keys of a why, turned into the front bands' where the line
// says front: "why so many on the front", "why 2x2 on the front".
func (r *reading) frontWhy(keys []engine.Key) []engine.Key {
	keys = r.frontward(keys)
	if !r.l.has("front", "fronts") || r.l.has("neck", "neckband", "neckline") {
		return keys
	}
	rib := false
	for _, i := range r.l.quantities() {
		rib = rib || r.l.tokens[i].q.Rib
	}
	var out []engine.Key
	for _, k := range keys {
		switch k {
		case engine.KeyRib:
			k = engine.KeyFrontRib
		case engine.FrontBand:
			continue // the width, which is named in passing
		}
		if k = frontOf(k); !slices.Contains(out, k) {
			out = append(out, k)
		}
	}
	switch {
	case len(out) == 0 && rib:
		out = append(out, engine.KeyFrontRib)
	case len(out) == 0 && r.l.has("many", "few"):
		out = append(out, engine.FrontStitches)
	case len(out) == 0:
		return keys
	}
	return out
}
