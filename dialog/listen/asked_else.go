package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// rowSet: "what does row 20 get set to", "r13 dial?" ask for the dial of a row,
// and move nobody there.
func (r *reading) rowSet() (Meaning, bool) {
	dial := r.l.has("dial", "tension", "click")
	set := r.l.has("set", "setting") && r.asks() && r.l.has("what", "which", "where", "how")
	if !dial && !set || r.l.words() > 8 || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	for _, s := range r.b.sets {
		if s.Key != engine.DepthRows || !dial || !r.l.question {
			return Meaning{}, false
		}
	}
	m := Meaning{Kind: Number, Keys: []engine.Key{engine.Tension}, Part: "row", HasFig: true, FigUnit: quantity.Row}
	qs := r.l.quantities()
	if len(qs) == 1 && (set || r.l.question && r.l.words() <= 3) {
		q := r.l.tokens[qs[0]].q
		m.Figure = q.Value
		return m, q.Unit == quantity.Row && (q.After || q.Ordinal) && !q.Range && q.Problem == "" && q.Value.IsInt()
	}
	for _, t := range r.l.tokens {
		if n, ok := rowName(t.needle); ok && len(qs) == 0 && r.l.words() <= 4 && dial {
			m.Figure = n
			return m, true
		}
	}
	return Meaning{}, false
}

// rowName reads "R13" as row 13: a needle has no dial of its own.
func rowName(needle string) (engine.Num, bool) {
	if needle == "" || needle[0] != 'R' {
		return engine.Num{}, false
	}
	n := 0
	for _, c := range needle[1:] {
		n = 10*n + int(c-'0')
	}
	return engine.Int(int64(n)), true
}

// whyFactor: "why is the rib stretch so low" asks for a factor of the plan, which
// a trouble with worn rib sounds like.
func (r *reading) whyFactor() (Meaning, bool) {
	if r.l.tokens[r.l.begin].text != "why" || r.l.has("not", "gone", "lost", "anymore", "wash", "washing", "worn", "wear", "floppy", "loose") || r.cues[Why].topic == "not" {
		return Meaning{}, false
	}
	if len(r.b.sets) > 0 || len(r.l.quantities()) > 0 {
		return Meaning{}, false
	}
	for i := r.l.begin + 1; i < r.l.end; i++ {
		switch r.l.tokens[i-1].text + " " + r.l.tokens[i].text {
		case "rib stretch":
			return Meaning{Kind: Why, Keys: []engine.Key{engine.RibStretch}}, true
		case "rib draw":
			return Meaning{Kind: Why, Keys: []engine.Key{engine.RibDraw}}, true
		case "edge stretch":
			return Meaning{Kind: Why, Keys: []engine.Key{engine.EdgeStretch}}, true
		}
	}
	return Meaning{}, false
}

// explainStep: "explain me more this step" wants more said of where she is.
func (r *reading) explainStep() (Meaning, bool) {
	if !r.l.has("step") || !r.l.has("explain", "describe", "detail", "details", "clearer", "clarify") || len(r.l.quantities()) > 0 || r.l.words() > 9 ||
		r.l.has("next", "last", "first", "previous", "all", "every", "steps") {
		return Meaning{}, false
	}
	return Meaning{Kind: Step, Move: Move{What: "about"}}, r.ctx.Open == "" || r.ctx.Making
}
