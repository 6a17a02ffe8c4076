package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

func (r *reading) keepOrDrop() (Meaning, bool) {
	if len(r.b.sets) > 0 || r.asks() || len(r.inputs()) > 0 && r.l.words() > 2 {
		return Meaning{}, false // "keep the neck as it is" is more than a yes
	}
	drop, dropped := r.cues[Drop]
	keep, kept := r.cues[Keep]
	switch {
	case !r.ctx.Making && r.l.end-r.l.begin == 1 && r.l.tokens[r.l.begin].text == "drop":
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
	case kept && (r.ctx.Open == "keep" || (r.ctx.Open == "" || r.ctx.Confirm) && r.l.words() <= 4):
		return Meaning{Kind: Keep}, true
	}
	return Meaning{}, false
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

// noNumber: a question or an order about a figure that is none, such as one
// over 0 or one of 400 digits.
func (r *reading) noNumber() (Meaning, bool) {
	for _, i := range r.l.quantities() {
		switch r.l.tokens[i].q.Problem {
		case quantity.DivisionByZero, quantity.TooLong:
			return r.unclear(), true
		}
	}
	return Meaning{}, false
}

// refused: a number that cannot be taken where it was named or asked for.
func (r *reading) refused() (Meaning, bool) {
	p := r.b.problem
	if p.Code == "" || p.Key == "" || p.Code == "range" && r.aboutRow() || r.cue(Why) || p.Code == "two-values" && (r.cue(Compare) || r.asks()) {
		return Meaning{}, false
	}
	return r.unclear(), true
}

func (r *reading) help() (Meaning, bool) {
	if r.cue(Help) && !(r.ctx.Making && r.cue(Step)) {
		return Meaning{Kind: Help}, true
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

// beyond: a subject named that is plainly not ours, before its words can be
// taken for something else ("a good film to watch while I knit").
func (r *reading) beyond() (Meaning, bool) {
	named := len(r.inputs()) > 0 || len(r.results()) > 0
	if r.ctx.Making && r.cues[Step].topic == "where" {
		return Meaning{}, false // "phone rang, where was I"
	}
	for _, s := range r.b.sets {
		if OpenOf(s.Key) == r.ctx.Open && !r.asks() {
			return Meaning{}, false // "I measured again after lunch and it is 42"
		}
	}
	if !r.cue(Outside) || r.cue(Notebook) || r.sureBut(engine.KeyGarment) || named && r.cues[Outside].weight < 2 || r.ctx.Open == "keep" && r.l.words() <= 2 {
		return Meaning{}, false
	}
	h, _ := r.x.howto.best(r.l)
	t, _ := r.x.trouble.best(r.l)
	if h.cover >= 0.7 && h.mass > 2.5 || t.cover >= 0.7 && t.mass > 2.5 || !r.asks() && r.l.words() < 2 {
		return Meaning{}, false
	}
	return Meaning{Kind: Outside}, true
}

// sureBut is sure, of other things than k.
func (r *reading) sureBut(k engine.Key) bool {
	for _, s := range r.b.sets {
		if s.Near > 0 && s.Key != k {
			return true
		}
	}
	return false
}

// craftWords counts the words of the craft in the line.
func (r *reading) craftWords() int {
	n := 0
	for _, t := range r.l.tokens[r.l.begin:r.l.end] {
		if t.q == nil && r.x.craft[t.stem] && !slight(t.stem) && !common(t.stem) && !r.x.everyday[t.text] {
			n++
		}
	}
	return n
}

// common words belong to phrases of the craft without telling of it.
func common(st string) bool {
	switch st {
	case "us", "use", "best", "go", "make", "back", "number", "long", "deal", "good", "work", "right", "left", "end", "start", "first", "last", "time", "one", "way", "turn", "take", "put", "show", "tell", "need", "want", "find", "year", "all":
		return true
	}
	return false
}

// outside: a subject that is not ours, or a question with no word of the
// craft in it.
func (r *reading) outside() (Meaning, bool) {
	craft := 0
	words := 0
	for _, t := range r.l.tokens[r.l.begin:r.l.end] {
		if t.q == nil && r.x.craft[t.stem] && !slight(t.stem) {
			craft++
		}
		if t.q == nil {
			words++
		}
	}
	if r.cue(Outside) && craft <= words/2 && words > 1 || r.asks() && words >= 3 && (craft == 0 && !r.pronounOnly() || r.strange() && r.craftWords() == 0) {
		return Meaning{Kind: Outside}, true
	}
	return Meaning{}, false
}

// strange: a word of some length that rules/ knows in no form, in a line
// without a word of the craft: "will it rain in Utrecht".
func (r *reading) strange() bool {
	for _, t := range r.l.tokens[r.l.begin:r.l.end] {
		if t.q == nil && len(t.text) >= 4 && !r.x.knows(t) {
			return true
		}
	}
	return false
}

// pronounOnly: "can it be a bit different" is about the plan, only not clear.
func (r *reading) pronounOnly() bool {
	if r.strange() {
		return false
	}
	return r.l.has("it", "this", "that", "them", "one", "bit", "same", "other", "thing") && !r.cue(Outside)
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
