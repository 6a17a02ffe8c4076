package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// Finished is what a line says of the finished band, cm; nil where it says
// nothing of that.
type Finished struct {
	Neck  *engine.Num // round the join
	Depth *engine.Num // folded
	Edge  *engine.Num // round the free edge, relaxed
	Full  *engine.Num // round the free edge, fully stretched
	// Fronts is "on" where it was measured closed with the front bands, "off"
	// where without them, "" where that was not said.
	Fronts string
}

// longest is the length, cm, from which one that is not named goes round the
// neck; shorter ones are depths.
const longest = 15

// finishedBand takes a line about the band just made ("the band measures 38
// cm", "it came out 2.5 cm deep"): with "came out" once its rows are knitted,
// with "measures" once it is sewn off, since before that the word gives an
// input.
func (r *reading) finishedBand() (Meaning, bool) {
	c, ok := r.cues[cameOut]
	if ok && r.bandStillOn() {
		return Meaning{Kind: Unclear, Problem: Problem{Code: "band-not-off"}}, true
	}
	told := !r.ctx.Making && (c.topic != "off" || r.l.has("finish", "finished") && r.l.has("band", "neckband"))
	if !ok || !r.ctx.Knitted && !told || r.cue(Why) && r.asks() || r.ctx.Open != "" || r.l.question || r.l.has("should", "must", "shall", "want", "like") || r.cue(WhatIf) && r.l.has("if", "what") {
		return Meaning{}, false
	}
	if c.topic == "off" && r.ctx.Knitted && !r.ctx.Off {
		return Meaning{}, false
	}
	m := Meaning{Kind: After, After: r.measures()}
	if m.After == (Finished{}) {
		return m, false
	}
	m.After.Fronts = r.withFronts()
	return m, true
}

// bandStillOn: "the band measures 40 cm" while it is on the machine.
func (r *reading) bandStillOn() bool {
	if !r.ctx.Making || r.ctx.Off || r.ctx.Open != "" || r.l.question || r.cue(WhatIf) || r.cue(Why) || !r.l.has("band", "neckband") ||
		!r.l.has("measur", "come", "came") || r.l.has("should", "shall", "must", "will", "want", "need", "like") {
		return false
	}
	return r.measures() != Finished{}
}

// withFronts tells whether the line speaks of a neck with or without its front
// bands.
func (r *reading) withFronts() string {
	named := r.l.has("front", "fronts")
	switch {
	case r.l.has("bare") || named && r.l.has("without", "before", "not", "no", "yet", "minus"):
		return "off"
	case r.l.has("button", "buttoned", "close", "closed") || named && r.l.has("with", "on", "after", "include"):
		return "on"
	}
	return ""
}

// measures reads the lengths of a line and what each is of: by the words next
// to it, else a long one is the neck and a short one the depth.
func (r *reading) measures() Finished {
	var f Finished
	from := 0
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		cm, ok := q.Length()
		if q.Unit == quantity.None && q.Problem == "" && !q.Ordinal {
			cm, ok = q.Value, true
			if r.ctx.Unit == quantity.Inch {
				cm = q.Value.Mul(engine.Frac(254, 100))
			}
		}
		if !ok || q.Range || cm.Sign() <= 0 {
			continue
		}
		to := i + 1
		for to < len(r.l.tokens) && r.l.tokens[to].q == nil && !r.l.tokens[to].stop {
			to++
		}
		r.measureOf(&f, r.l.tokens[from:to], cm)
		from = to
	}
	return f
}

func (r *reading) measureOf(f *Finished, near []token, cm engine.Num) {
	of := func(sense string) bool {
		for _, t := range near {
			if r.x.senses[sense][t.stem] {
				return true
			}
		}
		return false
	}
	switch {
	case of("of-full"):
		f.Full = &cm
	case of("of-depth"):
		f.Depth = &cm
	case of("of-edge"):
		f.Edge = &cm
	case of("of-neck"), !cm.Less(engine.Int(longest)):
		f.Neck = &cm
	default:
		f.Depth = &cm
	}
}
