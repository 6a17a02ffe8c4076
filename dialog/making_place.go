package dialog

import (
	"foldrow/dialog/answer"
	"foldrow/engine"
	"foldrow/rules"
)

// where is where the knitter stands: the plan, its order of work, the index
// of the step in it, and how far she is. It is a value; moves give a new one.
type where struct {
	p      *engine.Plan   // of the piece she knits, where the bed does not take the band at once
	pieces []*engine.Plan // the band as it hangs on the bed: one, or several
	whole  *engine.Plan   // of all of them
	all    []rules.Card   // every step there is
	order  []rules.Card   // those of this plan
	at     int
	m      Making
	reset  bool // the dial is to be set anew
}

// span is a part of a step: what is done of the step before it and after it,
// in rows or in needles of the working order.
type span struct{ from, to int }

// atMachine is where she stands; false away from the machine, and where no
// whole plan is there to knit.
func (c *turn) atMachine() (where, bool) {
	if !c.s.Making.On {
		return where{}, false
	}
	p := c.kept()
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return where{}, false
	}
	return c.standing(p), true
}

func (c *turn) standing(p *engine.Plan) where { return c.standingAt(p, c.s.Making) }

// standingAt is the place that m means in plan p. Where the plan has changed
// since, the place is the one with as much done.
func (c *turn) standingAt(p *engine.Plan, m Making) where {
	w := where{p: p, whole: p, m: m, all: c.book.Cards("steps"), pieces: p.OnBed()}.onPiece(m.Piece)
	for _, card := range w.all {
		if answer.StepFits(card, p) {
			w.order = append(w.order, card)
		}
	}
	if w.at = w.index(m.Step); w.at < 0 {
		w.at = w.firstAfter(m.Step)
	}
	w.m.Step = w.card().ID
	first, last := w.rowSteps()
	switch {
	case w.at < first:
	case m.Row < p.TotalRows:
		return w.atRow(m.Row)
	case w.at <= last:
		return w.enter(last + 1)
	}
	most := len(w.along())
	if w.joins() {
		most = len(w.pieces) - 1
	}
	if w.onFront() {
		most = w.p.Front.TotalRows
	}
	w.m.Done = min(w.m.Done, most)
	return w
}

// index is the step of that id in the order, or the one that stands for it in
// this plan; -1 where there is none.
func (w where) index(id string) int {
	kin := ""
	for _, card := range w.all {
		if card.ID == id {
			kin = card.Fields["kin"]
		}
	}
	for i, card := range w.order {
		if card.ID == id || kin != "" && card.Fields["kin"] == kin {
			return i
		}
	}
	return -1
}

// firstAfter is the first step of the order that comes after id in the book;
// the very first where id is none.
func (w where) firstAfter(id string) int {
	passed := false
	for _, card := range w.all {
		passed = passed || card.ID == id
		if i := w.index(card.ID); passed && i >= 0 {
			return i
		}
	}
	return 0
}

func (w where) card() rules.Card { return w.order[w.at] }

// rowSteps is the first and the last step that count rows of the band.
func (w where) rowSteps() (first, last int) {
	first = -1
	for i, card := range w.order {
		if card.Fields["rows"] != "" {
			if first < 0 {
				first = i
			}
			last = i
		}
	}
	return first, last
}

// rowsOf is the rows of the band knitted before and after step i.
func (w where) rowsOf(i int) span {
	r, total := w.p.LayerRows, w.p.TotalRows
	first, last := w.rowSteps()
	switch w.order[i].Fields["rows"] {
	case "outer":
		return span{0, r}
	case "fold":
		return span{r, r + 1}
	case "inner":
		return span{total - r, total}
	}
	if i < first {
		return span{}
	}
	if i > last {
		return span{total, total}
	}
	return span{r, r}
}

// enter is the beginning of step i.
func (w where) enter(i int) where {
	w = w.onPiece(w.pieceAt(i))
	w.at = i
	w.m.Step, w.m.Row = w.order[i].ID, w.rowsOf(i).from
	w.m.Done, w.m.Column, w.m.Over = 0, "", false
	return w
}

// atRow is the place where n rows of the band are knitted.
func (w where) atRow(n int) where {
	first, last := w.rowSteps()
	for i := first; i <= last; i++ {
		if s := w.rowsOf(i); n < s.to {
			w = w.enter(i)
			w.m.Row = n
			return w
		}
	}
	return w.enter(last + 1)
}

// done is how much of the present step is done.
func (w where) done() int {
	if w.card().Fields["rows"] != "" {
		return w.m.Row - w.rowsOf(w.at).from
	}
	return w.m.Done
}

// withDone is w with n of the present step done.
func (w where) withDone(n int) where {
	if w.card().Fields["rows"] != "" {
		w.m.Row = w.rowsOf(w.at).from + n
		return w
	}
	w.m.Done, w.m.Column = n, ""
	if cols := w.along(); n > 0 && n <= len(cols) {
		w.m.Column = w.needle(n - 1)
	}
	return w
}

// needle is the name of needle n of the step, from 0.
func (w where) needle(n int) string {
	stitches := w.p.BandStitches
	if w.card().Fields["needles"] == "rehang" {
		h, _ := w.hangingAt(n)
		stitches = len(h.Map)
	}
	return engine.NeedleName(w.along()[n], stitches)
}

// part is the part of the step that is to be done now.
func (w where) part() (span, int) {
	parts := w.parts()
	for i, s := range parts {
		if w.done() < s.to {
			return s, i
		}
	}
	return parts[len(parts)-1], len(parts) - 1
}

func (w where) lastPart() bool { _, i := w.part(); return i == len(w.parts())-1 }

// next is the place after the part that is to be done now.
func (w where) next() where {
	if s, _ := w.part(); !w.lastPart() {
		return w.withDone(s.to)
	}
	return w.past()
}

// past is the place after the whole step; at the last step it stays there.
func (w where) past() where {
	if w.at == len(w.order)-1 {
		return w.atEnd()
	}
	first, last := w.pieceSteps()
	if w.at == last && w.m.Piece < len(w.pieces)-1 {
		return w.onPiece(w.m.Piece + 1).enter(first)
	}
	return w.enter(w.at + 1)
}

func (w where) atEnd() where {
	parts := w.parts()
	return w.withDone(parts[len(parts)-1].from)
}

// back is the place one part before.
func (w where) back() where {
	if w.m.Over {
		w.m.Over = false
		return w
	}
	if d := w.done(); d > 0 {
		from := 0
		for _, s := range w.parts() {
			if s.from < d {
				from = s.from
			}
		}
		return w.withDone(from)
	}
	if w.at == 0 {
		return w
	}
	first, last := w.pieceSteps()
	if w.at == first && w.m.Piece > 0 {
		return w.onPiece(w.m.Piece - 1).enter(last).atEnd()
	}
	return w.enter(w.at - 1).atEnd()
}
