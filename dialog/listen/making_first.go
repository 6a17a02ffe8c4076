package listen

import "foldrow/dialog/listen/quantity"

// machineFirst is the kind of the whole lines that are said at the machine and
// that other readers would take for something else.
const machineFirst Kind = "machine-first"

// wholeLine takes a line that rules/machine.md gives whole, before a mishap, a
// how-to or a change of the plan can be made of its words: "is this the fold"
// is no fold row to be set, "joined" no gap at the join. What depends on the
// plan is for the dialog to decide.
func (r *reading) wholeLine() (Meaning, bool) {
	c, ok := r.cues[machineFirst]
	if !ok || !r.ctx.Making || r.ctx.Walk || r.ctx.Open != "" || !r.countsOnly() {
		return Meaning{}, false
	}
	m := r.stepMeaning(c)
	m.Move.What, m.Move.Step = c.topic, r.namedStep()
	step := r.x.stepOf(r.ctx.Step)
	if told, is := r.toldWhole(c, m); is {
		return told, true
	}
	switch c.topic {
	case "joined-wrong":
		return Meaning{Kind: Trouble, Card: c.topic, Topic: "told"}, !r.asks()
	case "lone":
		ok = r.ctx.Apart[0] == "" && r.ctx.Amount == (Ask{}) && m.FigUnit == quantity.None && !r.l.question && (step.rows || step.counts)
	case "holes":
		ok = r.ctx.Holes
	case "left-over":
		return Meaning{Kind: Trouble, Card: "rehung-too-many"}, !r.asks()
	case "too-few":
		return Meaning{Kind: Trouble, Card: "rehung-too-few"}, !r.asks()
	case "hole-missed", "carriage-side":
		return Meaning{Kind: Trouble, Card: c.topic, Topic: "told"}, !r.asks()
	case "needles":
		if step.needles == "" {
			m.Move.What = "now-what"
		}
	case "dropped":
		m.Move.What, m.Move.Begun = "latched", true // a column is begun with that
		ok = step.needles == "latch" && !r.asks()
	case "tail", "fold-short", "rows-done":
		return Meaning{}, false // told where it could be taken
	case "end-needle":
		m.Part = "first"
		if r.l.has("last") {
			m.Part = "last"
		}
		ok = m.Move.Along != "" || step.needles != ""
	case "hem-ends":
		m.Move.Count = r.endsTold()
		ok = step.needles == "hem" || step.kin == "ends"
	case "named-done":
		m.Move.What = "finished"
		ok = m.Move.Step != "" && !r.asks()
	case "sewn-count":
		m.Move.What, m.Move.Along = "latched", "sew"
	case "piece-next":
		m.Move.What, m.Move.Count = "piece", 0
	case "piece-whether":
		m.Move.Count = r.pieceNamed()
	case "piece-row":
		m.Move.Count, m.Move.Row, ok = r.pieceRow()
	case "join-asked":
		m = Meaning{Kind: Number, Topic: "piece-join"}
	case "front-done":
		m.Move.Count = 1
		if r.l.has("other", "last", "buttonhol") || r.ordinal(2) {
			m.Move.Count = 2
		}
	case "may-go":
		ok = m.Move.Step != "" || r.l.has("row") && r.countsRows()
		if !r.l.has("row") {
			m.Move.Row = 0
		}
	case "joined":
		if r.l.has("all", "both", "piece", "pieces", "they", "joins") {
			m.Part = "all"
		}
	case "layers-asked":
		if r.l.has("front") {
			m.Part = "front"
		} else if r.l.has("neckband") {
			m.Part = "neck"
		}
	case "way-asked":
		m.Move.Way = r.cues[way].topic
	}
	if r.l.question && tellsOnly[c.topic] {
		m = Meaning{Kind: Step, Move: Move{What: "where"}} // asked, not told
	}
	return m, ok
}

// countsOnly reports whether every number of the line counts or names a row, a
// stitch or a thing: "44 rows in 10 cm" is no place.
func (r *reading) countsOnly() bool {
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		plain := q.Unit == quantity.None || q.Unit == quantity.Row || q.Unit == quantity.Stitch || q.Unit == quantity.Needle || q.Unit == quantity.Click
		if !plain || q.Range || q.Rib || q.Sign < 0 || q.Over.Sign() > 0 || q.Problem != "" || !q.Value.IsInt() {
			return false
		}
	}
	return true
}

// tellsOnly are the topics that tell of something done: with a question mark
// they ask how far the work is.
var tellsOnly = map[string]bool{"all-but-last": true, "hem-ends": true, "named-done": true, "sewn-count": true, "piece-next": true,
	"piece-row": true, "joined": true, "front-done": true, "holes-done": true}

// endsTold is how many of the bumps that are hung first are told as hung: one
// end, both, or both and the middle.
func (r *reading) endsTold() int {
	switch {
	case r.l.has("middl", "centr", "center", "mid"):
		return 3
	case r.l.has("one", "first", "left", "right"):
		return 1
	}
	return 2
}

// ordinal reports whether the line counts to the n-th of something.
func (r *reading) ordinal(n int) bool {
	for _, i := range r.l.quantities() {
		if r.l.tokens[i].q.Ordinal && r.whole(i) == n {
			return true
		}
	}
	return false
}

// pieceRow is the piece and the row of "piece 2, row 5".
func (r *reading) pieceRow() (piece, row int, ok bool) {
	for _, i := range r.l.quantities() {
		if r.isPiece(i - 1) {
			piece = r.whole(i)
		} else {
			row = r.whole(i)
		}
	}
	return piece, row, piece > 0 && row > 0
}
