package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// onPiece is w with the plan of piece i of a band that the bed does not take
// at once, held to those there are; the whole plan where it does.
func (w where) onPiece(i int) where {
	i = max(0, min(i, len(w.pieces)-1))
	w.m.Piece, w.p = i, w.pieces[i]
	return w
}

// atHand is the kept plan as it hangs on the bed: the piece she knits, where
// the bed does not take the band at once.
func (c *turn) atHand() *engine.Plan {
	pieces := c.kept().OnBed()
	return pieces[min(c.s.Making.Piece, len(pieces)-1)]
}

// piecesText says in how many pieces the bed takes the band.
func (c *turn) piecesText(p *engine.Plan) string {
	bed := c.voice().Value(p, engine.BedNeedles)
	if v, ok := p.Value(engine.BandShares); ok {
		c.answer(engine.BandShares, v)
		return fmt.Sprintf("%d stitches do not fit %s at once, so the band is planned in **%s**. Each piece goes through all steps by itself. Then %s. *Show the needles* lists the needles and the columns of each.",
			p.BandStitches, bed, answer.Span(p), answer.Joints(p))
	}
	return fmt.Sprintf("The band's %d stitches fit %s in one piece, and are planned so.", p.BandStitches, bed)
}

// pieceSteps is the first and the last step that each piece goes through by
// itself: from hanging to sewing off.
func (w where) pieceSteps() (first, last int) { return w.index("hang-again"), w.index("sew-off") }

// pieceAt is the piece that a step comes with when it is entered: the first
// before they part, the last once they are all sewn off.
func (w where) pieceAt(step int) int {
	first, last := w.pieceSteps()
	switch {
	case step < first:
		return 0
	case step > last:
		return len(w.pieces) - 1
	}
	return w.m.Piece
}

// hangings are the maps by which the stitches of the piece are hung, one
// after the other; one where a needle need not take more than two.
func (w where) hangings() []engine.Hanging {
	if len(w.p.Hangings) > 0 {
		return w.p.Hangings
	}
	m := w.p.Rehang
	if m == nil {
		m = make([]int, w.p.BandStitches)
		for i := range m {
			m[i] = 1
		}
	}
	return []engine.Hanging{{Round: 1, Rounds: 1, Piece: 1, Pieces: 1, Map: m, From: 1}}
}

// hangingAt is the hanging of which needle n of the step is part, and the
// needles before it.
func (w where) hangingAt(n int) (h engine.Hanging, before int) {
	for _, h = range w.hangings() {
		if n < before+len(h.Map) {
			return h, before
		}
		before += len(h.Map)
	}
	return h, before - len(h.Map)
}

// rehangParts are stretches of needles with a handful of named ones in each;
// none goes beyond its hanging.
func (w where) rehangParts() []span {
	var out []span
	from := 0
	for _, h := range w.hangings() {
		end, named := from+len(h.Map), namedOf(h.Map)
		groups := even(len(named), 0, atOnce)
		if len(groups) == 0 {
			groups = []span{{}}
		}
		at := from
		for _, g := range groups {
			to := end
			if g.to < len(named) {
				to = from + named[g.to]
			}
			out = append(out, span{at, to})
			at = to
		}
		from = end
	}
	return out
}

// namedOf are the needles to be named when hanging again: those that carry two,
// or those that carry one where these are fewer; none where all carry alike.
func namedOf(m []int) []int {
	var one, two []int
	for c, s := range m {
		if s == 2 {
			two = append(two, c)
		} else {
			one = append(one, c)
		}
	}
	if 2*len(two) <= len(m) {
		return two
	}
	return one
}

// hangNow names the needles to hang and those of them that carry two.
func (w where) hangNow(from, to int) string {
	h, before := w.hangingAt(from)
	n, lead := len(h.Map), ""
	from, to = from-before, to-before
	if s := w.placeNow(h); from == 0 && s != "" {
		lead = s + " "
	}
	span := engine.NeedleName(from, n)
	if to > from+1 {
		span += " to " + engine.NeedleName(to-1, n)
	}
	text := lead + "Hang " + span
	if h.Rounds*h.Pieces > 1 {
		text = title(answer.HangingName(h)) + ": " + lower(lead+"Hang ") + span
	}
	if h.Stitches() == n {
		return text + ", one stitch on each." + w.plainRow(h, to)
	}
	var here []int
	for _, c := range namedOf(h.Map) {
		if c >= from && c < to {
			here = append(here, c)
		}
	}
	many, few := "two", "one"
	if 2*(h.Stitches()-n) <= n {
		many, few = "one", "two"
	}
	if len(here) == 0 {
		return text + ", " + many + " on each." + w.plainRow(h, to)
	}
	return text + ": " + few + " on " + answer.Needles(here, n) + "; " + many + " on the others." + w.plainRow(h, to)
}

// hangUntold asks for the stitches that wait: without them nothing can be said
// of the decreases. The example is a number that this band could be hung from.
func (w where) hangUntold() string {
	n := w.p.BandStitches
	whole := 0
	for _, q := range w.pieces {
		whole += q.BandStitches
	}
	return fmt.Sprintf("Onto %s to %s. Say how many stitches wait and I spread the decreases: *%d on the yoke*.",
		engine.NeedleName(0, n), engine.NeedleName(n-1, n), whole*5/4)
}

// plainRow is what comes between two hangings.
func (w where) plainRow(h engine.Hanging, to int) string {
	if to < len(h.Map) || h.Round == h.Rounds {
		return ""
	}
	return " Then a plain row, and off on waste yarn."
}
