package listen

import (
	"slices"
	"strings"

	"foldrow/engine"
)

// askedFor is the results that the line names. The words of a name may stand
// apart ("how many stitches must I get to lose"): where they fit another
// result better than what stands together, that one is meant.
func (r *reading) askedFor() []engine.Key {
	named := r.results()
	if !r.asks() {
		if f, _ := r.x.result.best(r.l); len(named) == 0 && r.nounAsk() {
			return []engine.Key{engine.Key(f.card)} // "circumference when I stretch it"
		}
		return named
	}
	f, second := r.x.result.best(r.l)
	switch {
	case len(named) > 1 && (f.cover < 0.95 || f.share < 0.7 || r.l.has("and")):
		return named
	case f.cover < 0.85 || f.mass < 2 || f.share < 0.25 || slices.Contains(named, engine.Key(f.card)):
		return named
	case len(named) == 0 && second.score() > 0.97*f.score():
		return named
	}
	return []engine.Key{engine.Key(f.card)}
}

// plainNumber: a question for a count, a measure or a place, whose words are
// those of one result, before a card that shares them can take it.
func (r *reading) plainNumber() (Meaning, bool) {
	if !r.asks() || len(r.b.sets) > 0 && (r.numbersGiven() || len(r.l.quantities()) == 0) || r.b.problem.Code != "" || r.cue(Why) || r.cue(Measure) || r.cue(WhatIf) && r.l.has("if", "suppos") || r.l.has("pick", "waste") {
		return Meaning{}, false
	}
	if r.howToForm() || !r.measureForm() || r.numbersGiven() && !r.aboutRow() || r.l.has("mean") {
		return Meaning{}, false
	}
	f, _ := r.x.result.best(r.l)
	h, _ := r.x.howto.best(r.l)
	if f.cover < 0.95 || f.mass < 2.5 || f.share < 0.3 || h.cover >= 0.95 && h.mass > f.mass && !r.counts() && (r.l.has("how") || h.share > f.share) {
		return Meaning{}, false
	}
	if r.ctx.Open == "gauge" && (f.card == string(engine.BandStitches) || f.card == string(engine.LayerRows)) {
		return r.measureMeaning("usual", []engine.Key{engine.StitchGauge}), true // the swatch is meant, there is no band yet
	}
	if named := r.results(); len(named) > 1 && (f.share < 0.7 || r.l.has("and")) {
		return r.number()
	}
	keys := []engine.Key{engine.Key(f.card)}
	if r.aboutRow() {
		keys = []engine.Key{engine.Tension}
	}
	m := Meaning{Kind: Number, Keys: r.bothEnds(r.counted(keys))}
	r.part(&m)
	return m, true
}

// whichNeedles: "hem every 2nd: which needles" names the needles of the hem.
func (r *reading) whichNeedles(keys []engine.Key) []engine.Key {
	if len(keys) != 1 || keys[0] != engine.LeftNeedle || !r.l.has("which") || r.l.has("left", "right", "end", "first", "last", "outermost") {
		return keys
	}
	switch {
	case r.l.has("hem", "bump"):
		return []engine.Key{engine.HemNeedles}
	case r.l.has("latch", "column"):
		return []engine.Key{engine.RibColumns}
	}
	return keys
}

// counted: "how many needles carry two" wants the count, not the list.
func (r *reading) counted(keys []engine.Key) []engine.Key {
	if !r.l.has("many") {
		return keys
	}
	out := append([]engine.Key(nil), keys...)
	for i, k := range out {
		switch k {
		case engine.RibColumns:
			out[i] = engine.ColumnCount
		case engine.HemNeedles:
			out[i] = engine.HemCount
		case engine.Rehang:
			out[i] = engine.YokeDecreases
		}
	}
	return out
}

// number: something the plan works out, or was told, asked directly.
func (r *reading) number() (Meaning, bool) {
	keys := r.askedFor()
	if r.ctx.Open == "gauge" && r.asks() && len(keys) == 1 && (keys[0] == engine.BandStitches || keys[0] == engine.LayerRows) && len(r.b.sets) == 0 {
		return r.measureMeaning("how", []engine.Key{engine.StitchGauge}), true
	}
	if !r.asks() && slices.Contains(keys, engine.BandStitches) {
		if m, ok := r.countSaid(); ok {
			return m, true // "cast on 121"
		}
	}
	keys = r.narrowed(keys)
	if len(keys) == 0 {
		keys = r.inputs()
		if !r.asks() || r.contentLeft() > 1 {
			return Meaning{}, false
		}
	}
	if r.beginsWith([]string{"what", "is", "a"}) || r.beginsWith([]string{"what", "is", "an"}) {
		return Meaning{}, false // asks what a thing is
	}
	if r.wentWrong() && !r.aboutRow() && r.aboutNeedle() == "" && !r.measureForm() && !r.counts() && !r.shortAsk() {
		return Meaning{}, false // "there is a hole at the edge, did I ruin it?"
	}
	if open := r.ctx.Open; open != "" && open != "keep" && r.asks() && !r.measureForm() && !r.counts() {
		return Meaning{}, false
	}
	if len(keys) == 0 || len(r.b.sets) > 0 || r.b.problem.Code != "" && !r.aboutRow() || r.l.has("mean", "define", "explain") || r.mayI() && !r.counts() {
		return Meaning{}, false
	}
	if r.howToForm() && r.l.has("find", "know", "measur", "calculat", "check") || r.cue(WhatIf) && r.l.has("if", "suppos") || r.ctx.Making && r.cue(Step) && !r.asks() || r.howToForm() && (len(r.results()) == 0 || r.l.tokens[r.l.begin].text != "how") {
		return Meaning{}, false
	}
	if h, _ := r.x.howto.best(r.l); !r.aboutRow() && r.aboutNeedle() == "" && (r.l.has("waste", "ravel", "buy", "wash") || !r.asksNumber() && len(r.l.quantities()) == 0 && h.cover >= 0.6 && h.mass > 3 && r.contentLeft() >= 2) {
		return Meaning{}, false // a technique with a number's name in it
	}
	if !r.asks() && r.l.has("be") {
		return Meaning{}, false // "my stitches are uneven" tells, it does not ask
	}
	keys = r.bothEnds(r.outcome(keys))
	if r.troubleSure() && !r.aboutRow() && !r.asksNumber() && r.contentLeft() > 0 || !r.asks() && !r.nounAsk() && (!r.shortAsk() || r.contentLeft() > 0 && r.troubleLikely()) {
		return Meaning{}, false
	}
	if r.howBeats() {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number, Keys: keys}
	r.part(&m)
	return m, true
}

// narrowed is what is asked for by a row, a needle or a word that says how much
// of it is meant.
func (r *reading) narrowed(keys []engine.Key) []engine.Key {
	switch {
	case r.aboutRow():
		return []engine.Key{engine.Tension}
	case r.aboutNeedle() != "":
		return []engine.Key{r.aboutNeedle()}
	case slices.Contains(keys, engine.BandYarn) && r.l.has("sew", "backstitch", "tail"):
		return []engine.Key{engine.OffYarn}
	case slices.Contains(keys, engine.BandYarn) && (r.l.has("everything", "altogether", "together") || strings.Contains(r.l.text, "in all") || strings.Contains(r.l.text, "in total")):
		return []engine.Key{engine.AllYarn}
	case slices.Contains(keys, engine.LayerRows) && r.l.has("altogether", "total", "all", "overall", "together"):
		if (r.l.has("and") || strings.Contains(r.l.text, "+")) && r.l.has("layer", "each") {
			return []engine.Key{engine.LayerRows, engine.TotalRows}
		}
		return []engine.Key{engine.TotalRows}
	}
	return keys
}

// aboutNeedle: "do I latch L20", "which bump goes on R51".
func (r *reading) aboutNeedle() engine.Key {
	if r.x.typed["accident"][r.l.tokens[r.l.begin].text] {
		return "" // "dropped stitch at L12, fix?"
	}
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
		case r.l.has("on", "be", "at", "with", "happen", "about"):
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

func (r *reading) troubleLikely() bool {
	f, _ := r.x.trouble.best(r.l)
	return f.cover >= 0.6 && f.mass >= 2
}

// outcome: "how high will it really be" asks for what comes out, not for what
// was wished.
func (r *reading) outcome(keys []engine.Key) []engine.Key {
	if !r.l.has("will", "stand", "going", "go", "really", "actual", "actually", "come", "end", "get", "would") {
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

// bothEnds: "first and last needle" asks for the two ends of the band.
func (r *reading) bothEnds(keys []engine.Key) []engine.Key {
	if !r.spansEnds() {
		return keys
	}
	for _, k := range keys {
		if k != engine.LeftNeedle && k != engine.RightNeedle && k != engine.BandStitches && k != engine.BedNeedles {
			return keys
		}
	}
	return []engine.Key{engine.LeftNeedle, engine.RightNeedle}
}

// spansEnds: the line names the first and the last, or the left and the right.
func (r *reading) spansEnds() bool {
	return r.l.has("first", "begin", "start", "leftmost") && r.l.has("last", "end", "finish", "rightmost") || r.l.has("left") && r.l.has("right") || r.l.has("from") && r.l.has("to") && r.l.has("needl")
}

// part notes which member of a list is asked for.
func (r *reading) part(m *Meaning) {
	if len(m.Keys) > 1 && m.Keys[0] == engine.LeftNeedle && r.spansEnds() {
		return
	}
	if r.easesOff(m.Keys) {
		m.Part = "back"
		return
	}
	for i, t := range r.l.tokens {
		switch {
		case t.q != nil && t.q.Range: // "rows seven to ten": the whole list
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
