package listen

import (
	"strings"
)

// keepOrDrop: yes or no to the what-if on the table, or to a doubt; a no where
// nothing is asked takes the last thing back.
func (r *reading) keepOrDrop() (Meaning, bool) {
	if len(r.b.sets) > 0 || r.asks() || len(r.inputs()) > 0 && r.l.words() > 2 {
		return Meaning{}, false // "keep the neck as it is" is more than a yes
	}
	drop, dropped := r.cues[Drop]
	keep, kept := r.cues[Keep]
	switch first, last := r.l.tokens[r.l.begin].text, r.l.tokens[r.l.end-1].text; {
	case r.ctx.Open == "keep" && last == "one" && oneOf(first, []string{"keep", "yes", "take"}) && !r.l.has("old", "first", "other"):
		return Meaning{Kind: Keep}, true // "keep the deeper one"
	case !r.ctx.Making && r.l.end-r.l.begin == 1 && first == "drop":
		return Meaning{Kind: Drop}, true // with nothing on the table too
	case dropped && len(r.l.quantities()) > 0:
		return Meaning{}, false
	case dropped && (!kept || drop.weight >= keep.weight) && (r.ctx.Open == "keep" || r.l.words() <= 5 && !r.asks()):
		if r.ctx.Open != "keep" && r.cue(Trouble) {
			return Meaning{}, false
		}
		if r.ctx.Open != "keep" && r.spoken("did") {
			return Meaning{Kind: Undo, Count: 1}, true // "no, I didn't want that"
		}
		return Meaning{Kind: Drop}, true
	case (kept || dropped && r.ctx.Open == "keep") && r.wishesMore():
		return Meaning{}, false // "I want it firmer" goes on from what lies on the table
	case kept && (r.ctx.Open == "keep" || (r.ctx.Open == "" || r.ctx.Confirm) && r.l.words() <= 4):
		return Meaning{Kind: Keep}, true
	}
	return Meaning{}, false
}

// wishesMore: a word of more or less that no "one" follows: "the deeper one" is
// the plan on the table, "make it deeper" another.
func (r *reading) wishesMore() bool {
	for i := r.l.begin; i < r.l.end; i++ {
		t := r.l.tokens[i]
		if t.text == "like" || t.text == "prefer" {
			return false // "I like it more"
		}
		if t.q == nil && (comparativeWord(t.text) != 0 || oneOf(t.text, []string{"firmer", "softer", "stretchier", "snugger", "stiffer", "thicker", "thinner"})) &&
			!(i+1 < r.l.end && oneOf(r.l.tokens[i+1].text, []string{"one", "version", "band", "neck", "plan"})) {
			return true
		}
	}
	return false
}

// undo: what was said last is taken back; "undo the last row" asks how to take a
// row out.
func (r *reading) undo() (Meaning, bool) {
	if r.x.stepOf(r.ctx.Step).rows && r.l.has("undo") && (r.l.has("row") || r.cue(toldRow)) && len(r.l.quantities()) == 0 {
		return Meaning{Kind: Trouble, Card: "undo-row", Topic: "sure"}, true
	}
	if r.cue(Undo) && r.undoesWork() {
		return Meaning{}, false
	}
	if r.ctx.Making && r.ctx.Open == "" && r.cues[Step].topic == "back" && r.l.has("step") {
		return Meaning{}, false // "go back two steps" goes back in the work
	}
	if c, ok := r.cues[Undo]; ok && c.topic == "redo" {
		return Meaning{Kind: Undo, Topic: "redo"}, len(r.b.sets) == 0
	}
	if c, ok := r.cues[Undo]; ok && c.from > 0 && r.l.tokens[c.from-1].text == "not" {
		return Meaning{Kind: Unclear, Problem: Problem{Code: "not-understood"}}, true
	}
	if c, ok := r.cues[Undo]; ok && !(c.from > 0 && r.l.tokens[c.from-1].text == "not") && (!r.b.sure() || r.l.tokens[c.from].stem == "undo") {
		m := Meaning{Kind: Undo, Count: 1}
		for _, i := range r.l.quantities() {
			q := r.l.tokens[i].q
			if q.Problem != "" || q.Unit == "" && q.Value.Sign() <= 0 {
				return r.unclear(), true // "undo 0" is no wish to undo one
			}
			if q.Unit == "" && q.Value.IsInt() {
				m.Count = q.Value.Floor()
			}
		}
		if n := r.timesOver(); n > 0 {
			m.Count = n
		}
		return m, true
	}
	return Meaning{}, false
}

// safety: a question whether something is safe is answered from the cautions,
// whatever else its words could name.
func (r *reading) safety() (Meaning, bool) {
	if !r.l.has("saf", "safe", "safety", "danger", "dangerous", "hurt", "chok", "choke", "careful", "caution", "burn", "harm") && !(r.l.has("button", "cord", "ribbon", "tie") && r.l.has("baby", "child", "children", "toddler", "kid")) {
		return Meaning{}, false
	}
	if !r.asks() && len(r.b.sets) > 0 && r.b.problem.Code == "" && !r.l.has("baby", "child", "children", "toddler", "kid") {
		return Meaning{}, false // "an inch, I don't like things choking me"
	}
	if len(r.b.sets) > 0 && r.l.has("choke", "chok") && !r.wearer() {
		return Meaning{}, false // "would 15 inches choke me" asks whether it is too tight
	}
	if r.cue(Shake) && r.l.has("gaug", "gauge", "swatch") || r.cue(Notebook) && !r.asks() {
		return Meaning{}, false // "keep this safe under the name rosebud"
	}
	f, _ := r.x.caution.best(r.l)
	if f.cover < 0.3 || f.mass < 1 || r.b.sure() && !r.asks() && r.ctx.Open != "garment" {
		return Meaning{}, false
	}
	return Meaning{Kind: HowTo, Topic: "caution", Card: f.card}, true
}

// theDefault: "the usual" takes the shown default, as Enter alone does.
func (r *reading) theDefault() (Meaning, bool) {
	if !r.cue("default") || r.ctx.Open == "" || r.ctx.Open == "keep" || len(r.b.sets) > 0 || r.l.question {
		return Meaning{}, false
	}
	return Meaning{Kind: Nothing, Topic: "default"}, true
}

// timesOver is how often something is to be done where no plain number says it:
// "undo twice", "undo x3"; 0 where nothing does.
func (r *reading) timesOver() int {
	for _, t := range r.l.tokens {
		if by := strings.Trim(t.text, "x"); len(t.text) == 2 && len(by) == 1 && by[0] >= '1' && by[0] <= '9' {
			return int(by[0] - '0')
		}
	}
	switch {
	case r.l.has("twice"):
		return 2
	case r.l.has("thrice"):
		return 3
	}
	return 0
}

// revise: "no, I meant rows".
func (r *reading) revise() (Meaning, bool) {
	if r.l.has("understand", "what") || !r.l.has("mean") || len(r.l.quantities()) > 0 || r.asks() {
		return Meaning{}, false
	}
	m := Meaning{Kind: Values, Topic: "revise"}
	switch {
	case r.l.has("row", "rws"):
		m.Name = "row"
	case r.l.has("inch", "inches", "in"):
		m.Name = "in"
	case r.l.has("cm", "centimetre", "centimeter", "cms"):
		m.Name = "cm"
	case r.l.has("stitch", "st", "sts"):
		m.Name = "st"
	default:
		if m.Keys = r.inputs(); len(m.Keys) == 0 {
			return Meaning{}, false
		}
	}
	return m, true
}

// undoesWork: "can I undo the sewn edge" asks about the knitting; nothing of the
// plan is to be taken back.
func (r *reading) undoesWork() bool {
	if !r.asks() {
		return r.l.has("backstitch", "sew") && len(r.b.sets) == 0
	}
	h, _ := r.x.howto.best(r.l)
	return h.cover >= 0.8 && h.mass >= 3 && h.share >= 0.45 || r.l.has("row", "edg", "edge", "sew", "backstitch", "hem", "column", "bind", "cast") && len(r.b.sets) == 0
}
