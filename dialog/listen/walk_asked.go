package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
)

// walkAsked takes what is said while the rows of the colour chart are walked:
// whether a needle is contrast, how many rows are left, that a row is done.
func (r *reading) walkAsked() (Meaning, bool) {
	if !r.ctx.Walk || r.ctx.Open != "" || r.l.words() > 9 || len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	here := Meaning{Kind: Step, Move: Move{What: "repeat"}}
	colour := r.l.has("contrast", "main", "colour", "color", "forward", "selected")
	switch needle := r.slip().Needle; {
	case needle != "" && colour && !r.l.has("miss", "dropped", "wrong", "forgot"):
		return Meaning{Kind: Parts, Topic: "chart-needle", Needle: needle}, true
	case r.l.has("wrong") && r.l.has("row"):
		return Meaning{Kind: Trouble, Card: "undo-row", Topic: "sure"}, true
	case r.l.has("float") && r.l.has("long"):
		return Meaning{Kind: HowTo, Card: "catch-floats"}, true
	case len(r.l.quantities()) > 0:
		return Meaning{}, false
	case r.l.has("last") && r.l.has("row") && r.asks(), r.l.has("many") && r.l.has("row") && r.l.has("left", "go", "more", "still"):
		here.Move.What = "where"
		return here, true
	case colour && (r.asks() || strings.HasPrefix(r.l.text, "what") || strings.HasPrefix(r.l.text, "which")):
		return here, true
	case r.oneRowDone():
		here.Move.What = "next"
		return here, true
	}
	return Meaning{}, false
}

// rowAtBand takes the same of the rows of the band: one row told as done is one,
// however many the step has.
func (r *reading) rowAtBand() (Meaning, bool) {
	if r.ctx.Walk || r.ctx.Open != "" || !r.x.stepOf(r.ctx.Step).rows || r.l.words() > 7 || len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	if n := r.ordinalRowDone(); n > 0 {
		return Meaning{Kind: Step, Move: Move{What: "row", Row: n, Count: n, Done: true}, FigUnit: quantity.Row}, true
	}
	if n := r.rowsToldDone(); n > 0 {
		return Meaning{Kind: Step, Move: Move{What: "row", Row: n, Count: n, Done: true}, FigUnit: quantity.Row}, true
	}
	if len(r.l.quantities()) > 0 {
		return Meaning{}, false
	}
	switch {
	case r.oneRowDone():
		return Meaning{Kind: Step, Move: Move{What: "done", Count: 1}}, true
	case r.wrongRow():
		return Meaning{Kind: Trouble, Card: "undo-row", Topic: "sure"}, true
	case r.l.has("last") && r.l.has("row") && r.asks() && r.beginsWith([]string{"is"}):
		return Meaning{Kind: Step, Move: Move{What: "where"}}, true
	}
	return Meaning{}, false
}

// ordinalRowDone is the row of "just finished the tenth", 0 where the line says
// more than that.
func (r *reading) ordinalRowDone() int {
	row, done := 0, false
	for i := r.l.begin; i < r.l.end; i++ {
		switch t := r.l.tokens[i]; {
		case t.q != nil && t.q.Ordinal && t.q.Unit == "" && row == 0:
			row = r.whole(i)
		case t.q != nil:
			return 0
		case oneOf(t.text, []string{"finished", "done", "knitted", "did"}):
			done = true
		case !oneOf(t.text, []string{"i", "have", "just", "the", "now", "is", "ok", "right"}):
			return 0
		}
	}
	if !done || r.asks() {
		return 0
	}
	return row
}

// rowsToldDone is the last row of "rows one to six are done" and "row 7, 8 and 9
// done", 0 where the rows do not follow each other or more is said.
func (r *reading) rowsToldDone() int {
	last, done, row := 0, false, false
	for i := r.l.begin; i < r.l.end; i++ {
		t := r.l.tokens[i]
		if t.q == nil {
			done = done || oneOf(t.text, []string{"done", "knitted", "finished", "complete"})
			row = row || t.text == "row" || t.text == "rows"
			if !oneOf(t.text, []string{"done", "knitted", "finished", "complete", "row", "rows", "and", "are", "is", "all", "i", "have", "now", "from", "to"}) {
				return 0
			}
			continue
		}
		q := t.q
		first, end := q.Value, q.Value
		if q.Range {
			end = q.High
		}
		if q.Unit != "" && q.Unit != quantity.Row || q.Problem != "" || !first.IsInt() || !end.IsInt() || q.Words && !q.Range && q.Unit == "" ||
			last > 0 && first.Floor() != last+1 || end.Less(first) {
			return 0
		}
		row = row || q.Unit == quantity.Row
		last = end.Floor()
	}
	if !done || !row || len(r.l.quantities()) == 1 && !r.l.tokens[r.l.quantities()[0]].q.Range || r.asks() {
		return 0
	}
	return last
}

// wrongRow: "I did the wrong row"; a row knitted with the wrong dial is another
// mishap.
func (r *reading) wrongRow() bool {
	return strings.Contains(r.l.text, "wrong row") && !r.asks() && r.l.has("did", "knit", "knitted", "made", "do", "done")
}

// oneRowDone: "row done", "that row is finished".
func (r *reading) oneRowDone() bool {
	row, done := false, false
	for i := r.l.begin; i < r.l.end; i++ {
		switch t := r.l.tokens[i].text; {
		case t == "row":
			row = true
		case oneOf(t, []string{"done", "knitted", "finished", "knit", "complete"}):
			done = row // "row done", not "done row"
		case !oneOf(t, []string{"that", "the", "this", "is", "was", "a", "one", "ok", "right", "now", "i", "got", "have"}):
			return false
		}
	}
	return row && done && !r.asks()
}
