package listen

import (
	"cmp"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// Cues that are read only at the machine, beside what a line does.
const (
	machine    Kind = "machine"     // what is said only there; the topic is the move
	way        Kind = "way"         // the side from which the columns are worked
	toldDone   Kind = "told-done"   // something is done
	toldWrong  Kind = "told-wrong"  // something was knitted otherwise than meant
	toldOver   Kind = "told-over"   // more than the number that follows
	toldRow    Kind = "told-row"    // one row, without a number
	toldMany   Kind = "told-many"   // more or fewer rows than meant
	toldForgot Kind = "told-forgot" // a change of the dial that was forgotten
	fold       Kind = "fold"        // where the fold lies
	toldLoose  Kind = "told-loose"  // rows too loose or too tight; the topic is the trouble
	toldEnd    Kind = "told-end"    // a part of the work is behind her
	apart      Kind = "apart"       // the first or the second
	cameOut    Kind = "came-out"    // a measure of the finished band
)

// mostWords is how long a line may be that says no more than a side.
const mostWords = 6

// atMachine asks the readers of what is said at the machine, in order of
// precedence.
func (r *reading) atMachine() (Meaning, bool) {
	for _, reader := range []func() (Meaning, bool){
		r.finishedBand, r.dialAt, r.machine, r.stepDone, r.needleAsked, r.foldRow, r.wrongDial, r.wrongNeedle, r.tooManyRows, r.dropRows,
	} {
		if m, ok := reader(); ok {
			return m, true
		}
	}
	return Meaning{}, false
}

// machine takes what is said only at the machine and means a move there, or
// asks about the step she is at.
func (r *reading) machine() (Meaning, bool) {
	if !r.ctx.Making || r.ctx.Open != "" || r.cue(WhatIf) && r.l.has("if") {
		return Meaning{}, false
	}
	if w, ok := r.cues[way]; ok && r.x.alongOf(r.ctx.Step) == "latch" && r.l.words() <= mostWords && !r.asks() {
		return Meaning{Kind: Step, Move: Move{What: "way", Way: w.topic}}, true
	}
	c, ok := r.cues[machine]
	if !ok || r.b.sure() && c.topic != "ripped" && c.topic != "counted" && !(c.topic == "dial" && r.l.question) {
		return Meaning{}, false
	}
	if c.topic == "left" && r.l.has("altogether", "total") && r.counts() {
		return Meaning{}, false // "how many rows do I have to knit altogether"
	}
	m := r.stepMeaning(c)
	switch c.topic {
	case "ripped":
		n, counted := r.rowsTold()
		m.Move.Count, m.Move.Row = n, 0
		ok = counted && !r.asks() && !(r.l.has("too") && r.l.has("many", "far")) && !r.l.has("want", "need", "must", "should", "how")
	case "needles":
		// elsewhere the columns and bumps are asked for as a list
		here := r.x.alongOf(r.ctx.Step)
		ok = m.Move.Along == here || m.Move.Along == "" && (!r.l.has("hang") || here == "hem" || here == "rehang")
	case "all-done":
		m.Move.What, m.Move.Step = "finished", r.namedStep()
		if m.Move.Step == "" {
			m.Move.What = "next"
		}
	case "counted": // as many stand on the fabric
		ok = len(r.l.quantities()) == 1 && !r.badRow() && !r.asks()
		m.Move.What, m.Move.Done = "row", true
		if ok {
			m.Move.Row = r.l.tokens[r.l.quantities()[0]].q.Value.Floor()
		}
	case "row":
		ok = !r.badRow()
		m.Move.Done = m.Move.Done || r.spoken("did") || r.spoken("made")
	case "done":
		if len(r.l.quantities()) == 0 {
			m.Move.Count, m.FigUnit = 1, quantity.Row // "another row"
		}
	case "at":
		m.Move.What, m.Move.Step = "goto", r.namedStep()
		ok = m.Move.Step != "" && !r.wentWrong() && !r.asks() && r.l.words() <= mostWords
	case "wait":
		ok = !r.asks()
	case "side":
		m.Move.What, ok = "way", r.x.alongOf(r.ctx.Step) == "latch"
	case "step":
		ok = r.countsRows()
		if r.asks() {
			m.Move.What = "look"
		}
	}
	return m, ok
}

// stepDone: "done with the outer layer", "the fold is done", "last column
// done". What went wrong is never done.
func (r *reading) stepDone() (Meaning, bool) {
	id := r.namedStep()
	if !r.ctx.Making || r.ctx.Open != "" || id == "" || !r.cue(toldEnd) || r.asks() || r.wentWrong() || r.l.has("next", "half", "not", "almost", "nearly") ||
		r.l.words() > mostWords || len(r.l.quantities()) > 0 || r.cue(WhatIf) && r.l.has("if") {
		return Meaning{}, false
	}
	for _, t := range r.l.tokens {
		if t.needle != "" {
			return Meaning{}, false
		}
	}
	return Meaning{Kind: Step, Move: Move{What: "finished", Step: id}}, true
}

// dialAt: "dial is at 4", while rows are knitted, tells where the dial stands
// now; it is the garment's only where that is said.
func (r *reading) dialAt() (Meaning, bool) {
	if !r.ctx.Making || r.ctx.Open != "" || !r.x.stepOf(r.ctx.Step).rows || len(r.b.sets) != 1 || r.b.sets[0].Key != engine.MainTension || r.b.problem.Code != "" {
		return Meaning{}, false
	}
	if s := r.slip(); s.Rows > 0 || s.First > 0 {
		return Meaning{}, false // of rows that are knitted
	}
	if r.asks() || r.cue(WhatIf) || r.wentWrong() || r.cue(toldWrong) || r.spoken("was") || r.spoken("were") || r.l.has("main", "garment", "mt", "yoke", "body", "sweater", "cardigan", "pullover") {
		return Meaning{}, false
	}
	return Meaning{Kind: Step, Move: Move{What: "dial-at"}, Sets: r.b.sets}, true
}

// needleAsked: "is L51 a rib column" asks for the number, not for a mishap.
func (r *reading) needleAsked() (Meaning, bool) {
	if !r.ctx.Making || r.l.has("wrong", "miss", "mistake", "stuck") || r.aboutNeedle() == "" {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{r.aboutNeedle()}, Needle: r.slip().Needle}, true
}

// foldRow: "which row is the fold".
func (r *reading) foldRow() (Meaning, bool) {
	if !r.cue(fold) || r.ctx.Open != "" && r.ctx.Open != "keep" || r.b.sure() && !r.namesOneRow() || r.cue(Why) || r.cue(WhatIf) && r.l.has("if") || r.asksPurpose() || r.asksSense() {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Topic: "fold", Keys: []engine.Key{engine.LayerRows}}, true
}

// namesOneRow: the only number of the line names a row ("is row 14 the fold row"),
// which is no amount of anything.
func (r *reading) namesOneRow() bool {
	qs := r.l.quantities()
	return len(qs) == 1 && r.l.tokens[qs[0]].q.Unit == quantity.Row && r.l.tokens[qs[0]].q.After
}

// tooManyRows: "I knitted one row too many" tells of a mishap; the count in
// it is no depth.
func (r *reading) tooManyRows() (Meaning, bool) {
	if _, counted := r.rowsTold(); !r.ctx.Making || !r.cue(toldMany) || !counted && !r.l.has("row") || r.asks() || r.cue(WhatIf) {
		return Meaning{}, false
	}
	return Meaning{Kind: Trouble, Card: "rows-uneven-layers", Topic: "sure"}, true
}

// dropRows: "drop 2 rows" may be rows to leave out, rows to take out, or a
// stitch that ran; which of them is asked.
func (r *reading) dropRows() (Meaning, bool) {
	if !r.ctx.Making && r.ctx.Open != "" || !r.spoken("drop") || r.asks() || r.cue(WhatIf) {
		return Meaning{}, false
	}
	n, ok := r.rowsTold()
	if !ok || r.l.words() > 4 {
		return Meaning{}, false
	}
	return Meaning{Kind: Unclear, Problem: Problem{Code: "drop-rows", Count: n}}, true
}

// rowsTold is the count of rows that a line tells; a bare number is one where
// rows are being knitted. false where it names a row ("back to row 5") or none.
func (r *reading) rowsTold() (int, bool) {
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if rows := q.Unit == quantity.Row || q.Unit == quantity.None && r.x.stepOf(r.ctx.Step).rows; rows && !q.After && !q.Ordinal && q.Problem == "" && q.Value.IsInt() {
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
	if here := r.x.alongOf(r.ctx.Step); (here == "hem" || here == "rehang") && r.l.has("hang") && r.l.has("all", "everything", "every") {
		id = r.ctx.Step // "hung all of them"
	}
	return cmp.Or(r.namedStep(), id)
}

// namedStep is the last step in the order of work that the line names.
func (r *reading) namedStep() string {
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
	id, needles, kin string
	rows             bool     // it counts rows of the band
	counts           bool     // it counts rows of a front band
	named            []string // stems by which it is told
}

// stepOf is what is known of a step; nothing of one that does not exist.
func (x *Lexicon) stepOf(id string) stepCard {
	for _, c := range x.stepCards {
		if c.id == id {
			return c
		}
	}
	return stepCard{}
}

// alongOf is the field `needles` of a step.
func (x *Lexicon) alongOf(id string) string { return x.stepOf(id).needles }
