package listen

import (
	"slices"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
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

// fronts gives what the line sets to the front bands where it is about them:
// their own gauge, rows along their edge, the stitches that holes are laid
// over. The neckband's end is theirs alone.
func (b *binder) fronts() {
	if !b.l.frontal() {
		b.unset(engine.NeckbandEnd)
		b.frontRib()
		return
	}
	b.frontRib()
	if b.ctx.Open != "garment" && b.l.has("button", "buttonhol") {
		b.unset(engine.KeyGarment) // "buttons 8 cm apart" tells of buttons, not what opens
	}
	b.holeSizes()
	for n, s := range b.sets { // "the third buttonhole" counts none
		if s.Key == engine.Holes && b.at[n] < len(b.l.tokens) && b.l.tokens[b.at[n]].q != nil && b.l.tokens[b.at[n]].q.Ordinal {
			b.unset(engine.Holes)
			break
		}
	}
	for i, s := range b.sets {
		if k := b.frontKey(s.Key); k != s.Key && !b.has(k) {
			if s.Key == engine.NeedlePitch { // from mm
				b.sets[i].Value = s.Value.Div(ten)
			}
			b.sets[i].Key = k
		}
	}
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		if q.Problem != "" || q.Range || q.Rib || q.Ordinal || q.After || q.Over.Sign() > 0 || !q.Value.IsInt() {
			continue
		}
		switch few := q.Value.Cmp(engine.Int(12)) <= 0; {
		case q.Unit == "" && i+1 < len(b.l.tokens) && oneOf(b.l.tokens[i+1].stem, []string{"button", "buttonhole", "hole"}):
			b.addOnce(engine.Holes, i)
		case q.Unit == quantity.Row && b.l.has("edge", "front", "along"):
			b.addOnce(engine.EdgeRows, i)
		case q.Unit != quantity.Stitch && q.Unit != "":
		case few && b.holesSaid() && (q.Unit == quantity.Stitch || b.wordBefore(i, "of")):
			b.addOnce(engine.HoleStitches, i)
		case !few && (q.Unit == quantity.Stitch || b.wordBefore(i, "over", "on", "across", "along", "in", "for")):
			b.addOnce(engine.FrontCount, i)
		}
	}
}

// holes: a number right before "buttons" or "buttonholes" counts them, whatever
// else the line names: "the front bands with 6 buttonholes".
func (b *binder) holes() {
	if !b.l.frontal() || b.ctx.Open != "" && b.ctx.Open != "keep" {
		return
	}
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		if q.Unit == "" && !q.Range && !q.Ordinal && q.Problem == "" && q.Value.IsInt() && i+1 < len(b.l.tokens) && oneOf(b.l.tokens[i+1].stem, []string{"button", "buttonhol"}) {
			b.addOnce(engine.Holes, i)
		}
	}
}

// addOnce binds the quantity where the key is not bound yet.
func (b *binder) addOnce(k engine.Key, i int) {
	if !b.has(k) {
		b.add(k, i, 1)
	}
}

func (b *binder) wordBefore(i int, words ...string) bool {
	return i > 0 && b.l.tokens[i-1].q == nil && oneOf(b.l.tokens[i-1].stem, words)
}

func (b *binder) holesSaid() bool {
	return b.has(engine.Holes) || b.has(engine.HoleSpacing) || b.l.has("buttonhol", "hol")
}

// frontKey is what a key of the neckband stands for in a line about the front
// bands.
func (b *binder) frontKey(k engine.Key) engine.Key {
	own := b.l.has("swatch", "garment", "yoke", "neckband")
	switch {
	case k == engine.StitchGauge && !own:
		return engine.FrontGauge
	case k == engine.RowGauge && !own:
		return engine.FrontRowGauge
	case k == engine.NeedlePitch && b.l.has("button", "buttonhol", "hol"):
		return engine.HoleSpacing
	case k == engine.DepthRows && b.l.has("edge", "along"):
		return engine.EdgeRows
	case k == engine.EdgeStitches && b.holesSaid():
		return engine.HoleMargin
	case k == engine.Layers && b.l.has("front") && !own:
		return engine.FrontLayers
	}
	return k
}

// frontRib: "front bands in 2x2" is the front bands' rib, not the neckband's.
func (b *binder) frontRib() {
	if b.ctx.Open == "rib" || b.l.has("neck", "neckband") || b.has(engine.KeyGarment) {
		return
	}
	names := false
	for _, m := range b.l.mentions {
		names = names || m.key == engine.FrontBand && b.l.tokens[m.from].text != "overlap" || m.key == engine.KeyFrontRib
	}
	for _, w := range []string{"on the front", "for the front", "along the front", "of the front"} {
		names = names || strings.Contains(b.l.text, w)
	}
	for i, s := range b.sets {
		if names && s.Key == engine.KeyRib {
			b.sets[i].Key, b.sets[i].Text, b.sets[i].Rib = engine.KeyFrontRib, s.Rib.String(), engine.Rib{}
		}
	}
}

// unset takes back what the line set for k.
func (b *binder) unset(k engine.Key) {
	for i := 0; i < len(b.sets); {
		if b.sets[i].Key != k {
			i++
			continue
		}
		b.sets = append(b.sets[:i], b.sets[i+1:]...)
		b.at = append(b.at[:i], b.at[i+1:]...)
	}
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

// stepsApart parts the steps of the front bands, which come only where they
// are planned, from the neckband's.
func stepsApart(cards []rules.Card) (band, front []rules.Card) {
	for _, c := range cards {
		if strings.HasPrefix(c.Fields["when"], string(engine.FrontStitches)) {
			front = append(front, c)
		} else {
			band = append(band, c)
		}
	}
	return band, front
}

// stepNamed is the step that the words from token i on name; one of the front
// bands only where the line says front or button.
func (r *reading) stepNamed(i int) found {
	words := r.l.tokens[min(i, len(r.l.tokens)):]
	if r.l.has("front", "button", "buttonhol") {
		if f, _ := r.x.frontSteps.bestOf(words); f.cover >= 0.5 {
			return f
		}
	}
	f, _ := r.x.steps.bestOf(words)
	return f
}
