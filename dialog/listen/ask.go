package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// measure: how to measure, what is usual, why it is asked, "I don't know".
func (r *reading) measure() (Meaning, bool) {
	c, ok := r.cues[Measure]
	open := r.ctx.Open != "" && r.ctx.Open != "keep"
	keys := r.inputs()
	if !ok && r.asks() && len(r.b.sets) == 0 && r.asksMeasure(open, keys) {
		return Meaning{Kind: Measure, Topic: r.measureTopic(keys), Keys: keys}, true
	}
	if !ok {
		return Meaning{}, false
	}
	if len(r.b.sets) > 0 && c.topic != "why-asked" && (c.topic != "how" || len(r.l.quantities()) > 0) {
		return Meaning{}, false
	}
	if c.topic == "how" && len(keys) == 0 {
		keys = r.byQuantity()
	}
	if !open && len(keys) == 0 {
		if c.topic == "dont-know" || c.topic == "how" || r.namesResult() {
			return Meaning{}, false
		}
	}
	if w, ok := r.cues[Why]; ok && c.topic != "why-asked" && w.weight > c.weight {
		return Meaning{}, false
	}
	if c.topic == "how" && r.howToIsSurer(c) || c.topic == "usual" && r.cue(Compare) && len(r.alternatives()) > 1 {
		return Meaning{}, false
	}
	if c.topic == "dont-know" && r.troubleSure() {
		return Meaning{}, false
	}
	return Meaning{Kind: Measure, Topic: c.topic, Keys: keys}, true
}

// byQuantity is the thing that "what one click does" and "the yarn of one
// row" are about.
func (r *reading) byQuantity() []engine.Key {
	for _, i := range r.l.quantities() {
		switch q := r.l.tokens[i].q; {
		case q.Unit == "click":
			return []engine.Key{engine.ClickEffect}
		case q.Unit == "row" && r.l.has("yarn", "wool"):
			return []engine.Key{engine.RowYarn}
		}
	}
	return nil
}

// asksMeasure: a question about the open question, or about whose head or
// neck it is, without one of the usual phrasings.
func (r *reading) asksMeasure(open bool, keys []engine.Key) bool {
	if r.wearer() && (contains(keys, engine.Head) || contains(keys, engine.Neck) || contains(keys, engine.NeckBody)) && !r.l.has("fit", "pass", "over", "through") {
		return true
	}
	if !open || r.cue(WhatIf) && r.l.has("if") || len(r.alternatives()) > 1 {
		return false
	}
	for _, k := range keys {
		if openOf(k) == r.ctx.Open {
			return true
		}
	}
	return r.l.has("measur", "tap", "swatch", "usual", "normal", "normally", "usually") || r.wearer() ||
		r.pronounOnly() && len(r.results()) == 0 && len(r.l.quantities()) == 0
}

func (r *reading) measureTopic(keys []engine.Key) string {
	if r.wearer() || r.l.has("usual", "normal", "normally", "usually", "typical") {
		return "usual"
	}
	return "how"
}

// wearer: the line says whose body it is about.
func (r *reading) wearer() bool {
	return r.l.has("year", "month", "baby", "toddler", "newborn", "man", "woman", "men", "women", "girl", "boy", "adult", "child", "children", "kid") ||
		r.l.has("siz") && len(r.l.quantities()) > 0
}

// howToIsSurer: "how do I measure a swatch" has a card of its own; but with a
// measuring question open, or a key named, the measuring help comes first.
func (r *reading) howToIsSurer(c cueHit) bool {
	f, _ := r.x.howto.best(r.l)
	if len(r.inputs()) > 0 && r.l.has("measur", "tap", "girth") {
		return false
	}
	if r.ctx.Open == "gauge" && r.l.has("swatch", "piec") {
		return false
	}
	if r.ctx.Open != "" && r.ctx.Open != "keep" && c.weight >= 3 && len(r.inputs()) > 0 {
		return false
	}
	return f.cover >= 0.75 && f.mass > 2.5 && !r.l.has("measur")
}

// inputs lists the inputs that the line names.
func (r *reading) inputs() []engine.Key {
	var out []engine.Key
	for _, m := range r.l.mentions {
		if m.key != "" && !m.result && !contains(out, m.key) {
			out = append(out, m.key)
		}
	}
	return out
}

// results lists the results that the line names.
func (r *reading) results() []engine.Key {
	var out []engine.Key
	for _, m := range r.l.mentions {
		if m.result && !contains(out, m.key) {
			out = append(out, m.key)
		}
	}
	return out
}

func contains(list []engine.Key, k engine.Key) bool {
	for _, x := range list {
		if x == k {
			return true
		}
	}
	return false
}

// why: a number's reason, another number's refusal, an assumption's source.
func (r *reading) why() (Meaning, bool) {
	c, ok := r.cues[Why]
	if !ok {
		return Meaning{}, false
	}
	if open := r.ctx.Open; open != "" && open != "keep" && c.weight <= 2 && len(r.l.quantities()) == 0 && c.topic != "not" {
		return Meaning{Kind: Measure, Topic: "why-asked", Keys: r.inputs()}, true
	}
	m := Meaning{Kind: Why, Topic: c.topic, Keys: append(r.results(), r.inputs()...)}
	if r.l.has("tighter", "graded", "grading", "grade") && len(r.l.quantities()) == 0 {
		m.Keys = append([]engine.Key{engine.Tension}, m.Keys...)
	}
	for _, t := range r.l.tokens {
		if t.needle != "" {
			m.Needle = t.needle
		}
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		m.Figure, m.HasFig, m.FigUnit = q.Value, true, q.Unit
		if q.Rib {
			m.HasFig = false
			m.Choices = append(m.Choices, []Set{{Key: engine.KeyRib, Rib: engine.Rib{Knit: q.Value.Floor(), Purl: q.High.Floor()}}})
			continue
		}
	}
	if len(r.b.sets) > 0 {
		m.Sets = dedupe(r.b.sets)
	}
	return m, true
}

// shake: what a small error does. The size of it is the set of the line.
func (r *reading) shake() (Meaning, bool) {
	c, ok := r.cues[Shake]
	sign := strings.Contains(r.l.text, "±") || strings.Contains(r.l.text, "+/-")
	if sign && len(r.inputs()) > 0 {
		ok, c.weight = true, 2
	}
	if !ok || c.weight < 2 {
		return Meaning{}, false
	}
	keys := r.inputs()
	if len(keys) == 0 {
		keys = r.results()
	}
	m := Meaning{Kind: Shake, Keys: keys}
	for i, t := range r.l.tokens[:max(0, len(r.l.tokens)-1)] {
		if next := r.l.tokens[i+1].stem; (t.text == "a" || t.text == "one") && (next == "stitch" || next == "row" || next == "click") {
			m.Figure, m.HasFig, m.FigUnit = engine.Int(1), true, map[string]quantity.Unit{"stitch": "st", "row": "row", "click": "click"}[next]
			if next == "row" {
				m.Keys = append([]engine.Key{engine.RowGauge}, without(m.Keys, engine.RowGauge)...)
			}
		}
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		m.Figure, m.HasFig, m.FigUnit = q.Value, true, q.Unit
		if per, ok := q.Per10cm(); ok {
			m.Figure = per
		}
		switch q.Unit {
		case "st":
			m.Keys = append([]engine.Key{engine.StitchGauge}, without(m.Keys, engine.StitchGauge)...)
		case "row":
			m.Keys = append([]engine.Key{engine.RowGauge}, without(m.Keys, engine.RowGauge)...)
		case "click":
			m.Keys = append([]engine.Key{engine.StartClicks}, m.Keys...)
		}
	}
	if !m.HasFig && !r.l.has("swatch", "gaug", "measur", "sure", "exact", "accurat", "precis", "sensitiv", "reliabl", "certain", "error", "mismeasur", "miscount") {
		return Meaning{}, false
	}
	if r.troubleSure() && !r.l.has("gaug", "swatch", "if") {
		return Meaning{}, false
	}
	if r.l.has("swatch") && r.l.has("big", "larg", "siz") {
		m.Topic = "swatch"
	}
	return m, true
}

func without(list []engine.Key, k engine.Key) []engine.Key {
	var out []engine.Key
	for _, x := range list {
		if x != k {
			out = append(out, x)
		}
	}
	return out
}

// alternatives groups the sets of the line into choices of one key: "1x1 or
// 2x2", "3, 3.5 or 4 cm".
func (r *reading) alternatives() [][]Set {
	byKey := map[engine.Key][]Set{}
	for _, s := range r.b.sets {
		dup := false
		for _, o := range byKey[s.Key] {
			dup = dup || same(o, s)
		}
		if !dup {
			byKey[s.Key] = append(byKey[s.Key], s)
		}
	}
	for _, s := range r.b.sets {
		if len(byKey[s.Key]) > 1 {
			var out [][]Set
			for _, c := range byKey[s.Key] {
				out = append(out, []Set{c})
			}
			return out
		}
	}
	return nil
}

func (r *reading) compare() (Meaning, bool) {
	alts := r.alternatives()
	cue, ok := r.cues[Compare]
	if r.b.problem.Code == "range" || len(alts) > 1 && !ok && !r.asks() && !r.cue(WhatIf) {
		return Meaning{}, false
	}
	if len(alts) > 1 && (ok || r.l.has("or", "vs", "versus")) {
		return Meaning{Kind: Compare, Choices: alts}, true
	}
	if ok && len(alts) == 0 && cue.weight >= 1 && len(r.b.sets) == 1 && r.l.has("compar", "against", "vs", "versus", "differenc", "than") {
		return Meaning{Kind: Compare, Choices: [][]Set{{r.b.sets[0]}}}, true
	}
	if len(r.b.sets) == 0 && r.asks() && (r.ctx.Open == "" || r.ctx.Open == "keep") && r.l.has("stretchier", "stretchiest", "elastic", "springiest", "springier", "firmer", "firmest") && r.l.has("which", "what") {
		return Meaning{Kind: Compare, Keys: []engine.Key{engine.KeyRib}}, true
	}
	if ok && len(r.b.sets) == 0 && r.l.has("compar", "differenc") && contains(r.inputs(), engine.KeyRib) {
		return Meaning{Kind: Compare, Keys: []engine.Key{engine.KeyRib}}, true
	}
	return Meaning{}, false
}

func (r *reading) whatIf() (Meaning, bool) {
	cue, ok := r.cues[WhatIf]
	if n, is := r.stitchesSupposed(); ok && is && len(r.b.sets) == 0 {
		return Meaning{Kind: Backwards, Keys: []engine.Key{engine.NeckResult}, Sets: []Set{{Key: engine.BandStitches, Value: n, Near: 1}}}, true
	}
	if !ok || len(r.b.sets) == 0 || r.ctx.Open != "" && r.ctx.Open != "keep" && !r.l.has("if", "suppos") && !r.l.question && !r.strongWhatIf(cue) {
		return Meaning{}, false
	}
	if r.asksNumber() && !r.l.has("if", "suppos") && r.l.has("how", "which") {
		return Meaning{}, false
	}
	return r.setsMeaning(WhatIf), true
}

// stitchesSupposed: "what if I cast on 111" supposes a count, which is a
// result: it is answered backwards.
func (r *reading) stitchesSupposed() (engine.Num, bool) {
	qs := r.l.quantities()
	if len(qs) != 1 {
		return engine.Num{}, false
	}
	q := r.l.tokens[qs[0]].q
	is := q.Unit == "st" && !q.Ordinal && q.Over.Sign() == 0 || q.Unit == "" && r.l.has("cast", "stitch", "hang")
	return q.Value, is && q.Value.IsInt() && q.Value.Cmp(engine.Int(20)) > 0
}

func (r *reading) strongWhatIf(c cueHit) bool {
	return r.l.tokens[c.from].stem == "what" || r.l.tokens[c.from].stem == "suppos" || r.l.tokens[c.from].stem == "same"
}

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

// backwards: a question with a value in it, which serves that answer only.
func (r *reading) backwards() (Meaning, bool) {
	if !r.asks() && !r.bareAsk() && (r.extreme() == "" || r.l.tokens[r.l.begin].q != nil) || r.cue(Shake) && r.l.has("wrong", "out", "off", "error") {
		return Meaning{}, false
	}
	m := Meaning{Kind: Backwards, Keys: r.results(), Sets: dedupe(r.b.sets)}
	if len(m.Keys) == 0 {
		m.Keys = r.inputs()
	}
	if len(m.Sets) == 1 && m.Sets[0].Bare && (m.Sets[0].Key == engine.Neck || m.Sets[0].Key == engine.StitchGauge) && !within(m.Sets[0].Value, r.x.spans[m.Sets[0].Key].Possible) {
		m.Sets = nil // "neck from 101", "what gauge gives 101": the 101 are stitches
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if !q.After && !q.Rib {
			m.Figure, m.HasFig, m.FigUnit = q.Value, true, q.Unit
		}
		bareCount := q.Unit == "" && q.Value.IsInt() && len(m.Sets) == 0 && len(m.Keys) > 0 && (m.Keys[0] == engine.Neck || m.Keys[0] == engine.NeckResult || m.Keys[0] == engine.StitchGauge) && engine.Int(60).Less(q.Value)
		if bareCount || q.Unit == "st" && !q.Ordinal && q.Over.Sign() == 0 {
			m.Sets = append(onlyOthers(m.Sets, q), Set{Key: engine.BandStitches, Value: q.Value, Near: 1})
		}
	}
	if r.b.problem.Code != "" || r.howToForm() {
		return Meaning{}, false
	}
	extreme := r.extreme()
	for _, s := range m.Sets {
		m.Keys = without(m.Keys, s.Key)
	}
	if extreme != "" && len(m.Keys) == 0 {
		m.Keys = []engine.Key{engine.NeckResult}
	}
	if len(m.Sets) == 0 && extreme == "" || len(m.Keys) == 0 || r.onlyQualified(m) {
		return Meaning{}, false
	}
	m.Topic = extreme
	if extreme == "" && servesNumber(m.Sets) {
		m.Kind = Number
	}
	return m, true
}

// onlyQualified: every value of the line is a part of what it names ("how
// many hem needles every second bump"), so that nothing is asked from it.
func (r *reading) onlyQualified(m Meaning) bool { return false }

// bareAsk: "rows for 4 cm", "neck from 101 stitches": a question without the
// form of one.
func (r *reading) bareAsk() bool {
	if len(r.l.tokens) == 0 || r.l.begin >= r.l.end {
		return false
	}
	for _, m := range r.l.mentions {
		if m.from == r.l.begin && m.to < r.l.end {
			switch r.l.tokens[m.to].text {
			case "for", "from", "with", "if":
				return true
			case "of", "at": // "depth of 16 rows", but not "depth of 3 cm"
				i := m.to + 1
				return i < len(r.l.tokens) && r.l.tokens[i].q != nil && !accepts(r.x.spans[m.key].Dimension, r.l.tokens[i].q)
			}
		}
	}
	return false
}

// servesNumber: the values are circumstances (a head, a yarn), not the
// other end of the sum; the question stays a plain one.
func servesNumber(sets []Set) bool {
	for _, s := range sets {
		switch s.Key {
		case engine.Head, engine.YarnLength, engine.YarnLeft, engine.RowYarn:
		default:
			return false
		}
	}
	return len(sets) > 0
}

// onlyOthers drops sets that the same stitches would give another meaning.
func onlyOthers(sets []Set, q *quantity.Quantity) []Set {
	var out []Set
	for _, s := range sets {
		if s.Value.Equal(q.Value) && (s.Key == engine.YokeStitches || s.Key == engine.BedNeedles || s.Key == engine.StitchGauge) {
			continue
		}
		out = append(out, s)
	}
	return out
}

// extreme: the deepest, longest, loosest... that something allows.
func (r *reading) extreme() string {
	switch {
	case r.l.has("deepest", "highest", "tallest") || r.l.has("deep", "row") && r.l.has("most", "max", "maximum"):
		return "deepest"
	case r.l.has("deep", "deeper") && r.l.has("can", "could") && r.b.has(engine.YarnLeft):
		return "deepest"
	case r.l.has("longest", "widest", "biggest", "largest") || r.l.has("neck") && r.l.has("max", "maximum", "most"):
		return "longest"
	case r.l.has("loosest", "tightest") && r.l.has("gaug", "stitch", "swatch"):
		return "gauge"
	}
	return ""
}

// number: something the plan works out, or was told, asked directly.
func (r *reading) number() (Meaning, bool) {
	keys := r.results()
	switch {
	case r.aboutRow():
		keys = []engine.Key{engine.Tension}
	case r.aboutNeedle() != "":
		keys = []engine.Key{r.aboutNeedle()}
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
	case "will", "really", "actually", "band", "neckband", "finished", "would", "end", "last", "first", "be", "get", "come", "out", "my",
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
