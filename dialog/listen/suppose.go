package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// mayHow: "do I knit the closing row at the same tension" asks how a thing is
// done; what it would set is no wish.
func (r *reading) mayHow() (Meaning, bool) {
	if len(r.b.sets) == 0 || len(r.l.quantities()) > 0 || !r.asks() || !r.beginsWith([]string{"do", "i"}) && !r.beginsWith([]string{"should", "i"}) && !r.beginsWith([]string{"must", "i"}) {
		return Meaning{}, false
	}
	h, _ := r.x.howto.best(r.l)
	return Meaning{Kind: HowTo, Card: h.card}, h.cover >= 0.95 && h.mass >= 4
}

func (r *reading) whatIf() (Meaning, bool) {
	cue, ok := r.cues[WhatIf]
	if e := r.l.end; e > 1 && r.l.tokens[e-1].text == "many" && r.l.tokens[e-2].text == "how" && !r.l.has("if", "suppos") {
		return Meaning{}, false // "a 42 neck takes how many?"
	}
	if r.cues["fits"].topic == "enough" && len(r.b.sets) == 1 && r.b.has(engine.YarnLeft) {
		return Meaning{}, false // "will it be enough if I have 40 g"
	}
	if r.l.tokens[r.l.begin].text == "use" && !r.l.question && r.ctx.Open != "keep" {
		return Meaning{}, false // "use 2x2 instead of 1x1" is an order
	}
	if first := r.l.tokens[r.l.begin].text; (first == "how" || first == "which") && r.measureForm() && len(r.askedFor()) > 0 && len(r.b.sets) > 0 {
		return Meaning{}, false // "how many stitches do I pick up if the edge is 50 cm" asks for the number
	}
	if r.l.tokens[r.l.begin].text == "with" && !r.l.question && r.l.has("knit", "knitted", "made") && r.l.has("have", "was", "did") {
		return Meaning{}, false // "with tension 6 I have knitted the cardigan" tells
	}
	if len(r.b.sets) > 0 && r.onlyTexts() && r.permits() {
		if _, how := r.howTo(); how {
			return Meaning{}, false // "may I steam it"
		}
	}
	if r.mayHave() {
		return Meaning{}, false // "could I have no rib at all" answers
	}
	if first := r.l.tokens[r.l.begin].text; first == "if" && r.numberWanted() && len(r.b.sets) == 1 && r.b.has(engine.DepthRows) {
		return Meaning{}, false // "if I knit ten rows, how deep will it be" asks for the number
	}
	if n, is := r.stitchesSupposed(); is && (ok && len(r.b.sets) == 0 || r.asks() && r.onlyYoke()) {
		return Meaning{Kind: Backwards, Keys: []engine.Key{engine.NeckResult}, Sets: []Set{{Key: engine.BandStitches, Value: n, Near: 1}}}, true
	}
	if !ok || len(r.b.sets) == 0 || r.ctx.Open != "" && r.ctx.Open != "keep" && !r.l.has("if", "suppos") && !r.l.question && !r.strongWhatIf(cue) {
		return Meaning{}, false
	}
	if r.asksNumber() && !r.l.has("if", "suppos") && r.l.has("how", "which") {
		return Meaning{}, false
	}
	if r.b.problem.Code == "" && r.stitchesLeft() {
		return r.unclear(), true
	}
	return r.setsMeaning(WhatIf), true
}

// mayHave: "could I have no rib at all" answers the open question, and politely.
func (r *reading) mayHave() bool {
	return r.ctx.Open != "" && r.ctx.Open != "keep" && r.onlyOpen() && len(r.b.sets) > 0 && (r.beginsWith([]string{"could", "i"}) || r.beginsWith([]string{"can", "i"})) && !r.l.has("if", "bed", "machin")
}

// numberWanted: "how deep", "how many" stands behind what is supposed.
func (r *reading) numberWanted() bool {
	for i := r.l.begin + 1; i+1 < r.l.end; i++ {
		if r.l.tokens[i].text == "how" && oneOf(r.l.tokens[i+1].text, []string{"deep", "tall", "high", "wide", "many", "long"}) {
			return true
		}
	}
	return false
}

// stitchesLeft: beside what is supposed a count of stitches is said that belongs
// to nothing; to leave it out in silence would be guessing.
func (r *reading) stitchesLeft() bool {
	for _, i := range r.b.free() {
		if q := r.l.tokens[i].q; q.Unit == "st" && !q.Ordinal && !q.After && q.Over.Sign() == 0 {
			r.b.problem = Problem{Code: "unbound", Low: q.Value, High: q.High, Unit: q.Unit}
			return true
		}
	}
	return false
}

// onlyYoke: the count was taken for the yoke's though nothing names the yoke:
// "could I have 130 stitches".
func (r *reading) onlyYoke() bool {
	return len(r.b.sets) == 1 && r.b.sets[0].Key == engine.YokeStitches && !r.l.has("yok", "yoke", "wast", "waste", "wait", "live", "held", "holder")
}

// stitchesSupposed: "what if I cast on 111" supposes a count, which is a
// result: it is answered backwards.
func (r *reading) stitchesSupposed() (engine.Num, bool) {
	qs := r.l.quantities()
	if len(qs) != 1 {
		return engine.Num{}, false
	}
	q := r.l.tokens[qs[0]].q
	if r.l.has("stage", "waste", "wast", "wait", "yok", "yoke") && r.b.has(engine.YokeStitches) {
		return engine.Num{}, false // they wait, or are a stage of the yoke
	}
	is := q.Unit == "st" && !q.Ordinal && q.Over.Sign() == 0 || q.Unit == "" && (r.l.has("cast", "stitch", "hang") || r.wishesCount(q))
	return q.Value, is && q.Value.IsInt() && q.Value.Cmp(engine.Int(44)) > 0
}

// wishesCount: "could I use 104 instead": a bare number too large for a neck
// or a depth is a count of stitches.
func (r *reading) wishesCount(q *quantity.Quantity) bool {
	return !q.Ordinal && !q.After && !q.Rib && q.Value.Cmp(engine.Int(60)) > 0 && q.Value.Cmp(engine.Int(400)) < 0 && len(r.inputs()) == 0 &&
		r.l.has("rather", "prefer", "instead", "want", "could", "can", "try", "may", "might", "like", "possibl", "possible", "allow")
}

// countSaid: "I want 121 stitches" wishes for a result; what neck that gives
// is told, and nothing is set.
func (r *reading) countSaid() (Meaning, bool) {
	n, is := r.stitchesSupposed()
	if !is || len(r.b.sets) > 0 || r.b.problem.Code != "" || r.ctx.Open != "" && r.ctx.Open != "keep" || r.wentWrong() || r.ctx.Making {
		return Meaning{}, false
	}
	return Meaning{Kind: Backwards, Keys: []engine.Key{engine.NeckResult}, Sets: []Set{{Key: engine.BandStitches, Value: n, Near: 1}}}, true
}

func (r *reading) strongWhatIf(c cueHit) bool {
	return r.l.tokens[c.from].stem == "what" || r.l.tokens[c.from].stem == "suppos" || r.l.tokens[c.from].stem == "same"
}
