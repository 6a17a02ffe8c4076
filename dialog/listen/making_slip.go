package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// Slip is what a line says about a mishap: the rows and the setting that they
// were knitted at, the needle, the count.
type Slip struct {
	Rows  int // how many, 0 where not said
	First int // the first of them, 0 where not said
	Used  engine.Num
	Meant engine.Num
	// Off is how far out in dial numbers, Clicks in clicks; without direction.
	Off, Clicks               engine.Num
	HasUsed, HasMeant, HasOff bool
	Needle                    string // "L12", "" where none is named
	Count                     int    // stitches, or a bare number; 0 where not said
	Forgot                    bool   // a change of the dial was forgotten
}

// slip reads "3 rows at dial 5 instead of 4", "rows 5 to 7 one number too
// loose", "a row with the wrong dial", "stitch down at L12".
func (r *reading) slip() Slip {
	var s Slip
	for _, t := range r.l.tokens {
		if t.needle != "" && s.Needle == "" {
			s.Needle = t.needle
		}
		if t.q == nil || t.q.Problem != "" || t.q.Sign < 0 {
			continue
		}
		s.put(t.q)
		if counts := t.q.Unit == quantity.None || t.q.Unit == quantity.Stitch; counts && s.Count == 0 && t.q.Value.IsInt() && !t.q.Ordinal {
			s.Count = t.q.Value.Floor()
		}
	}
	if s.Rows == 0 && r.cue(toldRow) {
		s.Rows = 1
	}
	s.Forgot = r.cue(toldForgot)
	return s
}

func (s *Slip) put(q *quantity.Quantity) {
	switch {
	case q.Unit == quantity.Row && q.After:
		s.First, s.Rows = q.Value.Floor(), q.High.Sub(q.Value).Floor()+1
	case q.Unit == quantity.Row && !q.Ordinal:
		s.Rows = q.Value.Floor()
	case q.Unit == quantity.Click:
		s.Clicks, s.HasOff = q.Value, true
	case q.Unit == quantity.Number && !q.After:
		s.Off, s.HasOff = q.Value, true
	case q.Unit != quantity.None && q.Unit != quantity.Number || q.Ordinal:
	case !s.HasUsed:
		s.Used, s.HasUsed = q.Value, true
	case !s.HasMeant:
		s.Meant, s.HasMeant = q.Value, true
	}
}

// wrongDial takes rows said with the dial they were knitted at as the trouble
// they are, where the numbers in the line would pass for a change of the
// plan: "3 rows at dial 5 instead of 4", "I forgot to change the dial". Whether that was too loose or too
// tight is for the plan to say.
func (r *reading) wrongDial() (Meaning, bool) {
	if !r.ctx.Making || r.asks() || r.cue(WhatIf) {
		return Meaning{}, false
	}
	s := r.slip()
	dial := Meaning{Kind: Trouble, Card: "wrong-dial-loose", Other: "wrong-dial-tight", Topic: "dial"}
	if s.Forgot {
		return dial, true
	}
	if c, ok := r.cues[toldLoose]; ok && s.Rows > 0 && !s.HasUsed {
		return Meaning{Kind: Trouble, Card: c.topic, Topic: "sure"}, true
	}
	wrong := r.cue(toldWrong) || s.First > 0 && (r.spoken("knitted") || r.spoken("were") || r.spoken("was") || r.spoken("did"))
	if s.Rows == 0 || !s.HasUsed || !wrong || !r.namesDial() {
		return Meaning{}, false
	}
	return dial, true
}

// namesDial: the line speaks of a setting of the dial.
func (r *reading) namesDial() bool {
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; q.Unit == quantity.Number {
			return true
		}
	}
	return r.l.has("dial", "tension", "number", "at", "on")
}

// wrongNeedle: "I dropped L38 instead of L39", at the latching.
func (r *reading) wrongNeedle() (Meaning, bool) {
	if r.x.alongOf(r.ctx.Step) != "latch" || !r.cue(toldWrong) || r.slip().Needle == "" || r.asks() || r.cue(WhatIf) {
		return Meaning{}, false
	}
	return Meaning{Kind: Trouble, Card: "wrong-needle-dropped", Topic: "sure"}, true
}

// atPast: at the machine, "I was at dial 5 for the last 2" tells what went
// wrong; it does not set the garment's dial.
func (r *reading) atPast() (Meaning, bool) {
	if !r.ctx.Making || !r.spoken("was") && !r.spoken("were") || !r.l.has("last", "for") {
		return Meaning{}, false
	}
	for _, s := range r.b.sets {
		if s.Key == engine.MainTension {
			return Meaning{Kind: Trouble, Card: "wrong-dial-loose", Other: "wrong-dial-tight"}, true
		}
	}
	return Meaning{}, false
}
