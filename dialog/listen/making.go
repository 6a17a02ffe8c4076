package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
)

// Cues that are read only at the machine, beside what a line does.
const (
	machine   Kind = "machine"    // what is said only there; the topic is the move
	way       Kind = "way"        // the side from which the columns are worked
	toldDone  Kind = "told-done"  // something is done
	toldWrong Kind = "told-wrong" // something was knitted otherwise than meant
	toldOver  Kind = "told-over"  // more than the number that follows
	toldRow   Kind = "told-row"   // one row, without a number
	apart     Kind = "apart"      // the first or the second
	cameOut   Kind = "came-out"   // a measure of the finished band
)

// mostWords is how long a line may be that says no more than a side.
const mostWords = 6

// machine takes what is said only at the machine and means a move there.
func (r *reading) machine() (Meaning, bool) {
	if !r.ctx.Making || r.ctx.Open != "" {
		return Meaning{}, false
	}
	if w, ok := r.cues[way]; ok && r.x.alongOf(r.ctx.Step) == "latch" && r.l.words() <= mostWords && !r.asks() && !r.cue(WhatIf) {
		return Meaning{Kind: Step, Move: Move{What: "way", Way: w.topic}}, true
	}
	switch c := r.cues[machine]; c.topic {
	case "ripped":
		n, ok := r.rowsTold()
		if !ok || r.asks() || r.cue(WhatIf) || r.l.has("want", "need", "must", "should", "how") {
			return Meaning{}, false
		}
		return Meaning{Kind: Step, Move: Move{What: "ripped", Count: n}}, true
	case "spoils":
		return Meaning{Kind: Step, Move: Move{What: "spoils"}}, true
	}
	return Meaning{}, false
}

// rowsTold is the count of rows that a line tells; false where it names a row
// ("back to row 5") or none.
func (r *reading) rowsTold() (int, bool) {
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; q.Unit == quantity.Row && !q.After && !q.Ordinal && q.Problem == "" && q.Value.IsInt() {
			return q.Value.Floor(), true
		}
	}
	return 1, r.cue(toldRow)
}

// finished is the step that the line says is done, by name ("the hem is
// hung", "all latched"); "" where it names none. Of several the last in the
// order of work counts: it is done when the others are.
func (r *reading) finished() string {
	if r.l.question || r.l.has("what", "how", "next") || !r.cue(toldDone) {
		return ""
	}
	id := ""
	for _, card := range r.x.stepCards {
		if r.names(card.named) {
			id = card.id
		}
	}
	return id
}

// along lists the steps along the needles that the line's words may mean.
func (r *reading) along() string {
	var list []string
	for _, card := range r.x.stepCards {
		if card.needles != "" && r.names(card.named) {
			list = append(list, card.needles)
		}
	}
	return strings.Join(list, " ")
}

func (r *reading) names(stems []string) bool { return len(stems) > 0 && r.l.has(stems...) }

// stepCard is what the listener knows of a step.
type stepCard struct {
	id, needles string
	named       []string // stems by which it is told
}

// alongOf is the field `needles` of a step.
func (x *Lexicon) alongOf(id string) string {
	for _, c := range x.stepCards {
		if c.id == id {
			return c.needles
		}
	}
	return ""
}
