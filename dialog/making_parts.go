package dialog

import (
	"sort"
)

// How much goes into one part of a step that goes along the needles: what can
// be read at a glance and kept in the head.
const (
	atOnce    = 6 // needles named
	columnsIn = 5 // single columns latched
)

// The ways along the needles.
const (
	fromLeft   = "left" // also where nothing was said
	fromRight  = "right"
	fromCentre = "centre"
)

// rank is the place of column col in the working order, among n columns. From
// the centre the right half is worked first, outward, then the left half.
func rank(col, n int, way string) int {
	left := (n + 1) / 2
	switch way {
	case fromRight:
		return n - 1 - col
	case fromCentre:
		if col >= left {
			return col - left
		}
		return n - 1 - col
	}
	return col
}

// along is the columns of the present step in the order in which they are
// worked; nil for a step that does not go along the needles.
func (w where) along() []int {
	n := w.p.BandStitches
	switch w.card().Fields["needles"] {
	case "rehang":
		var cols []int // of each hanging
		for _, h := range w.hangings() {
			for i := range h.Map {
				cols = append(cols, i)
			}
		}
		return cols
	case "latch":
		cols := append([]int(nil), w.p.RibColumns...)
		sort.Slice(cols, func(i, j int) bool { return rank(cols[i], n, w.m.Way) < rank(cols[j], n, w.m.Way) })
		return cols
	case "hem":
		return hemOrder(w.p.HemColumns)
	}
	return nil
}

// hemOrder is the bumps as they are hung: both ends, the middle, then the
// rest from the left.
func hemOrder(hem []int) []int {
	if len(hem) < 4 {
		return append([]int(nil), hem...)
	}
	last, mid := len(hem)-1, len(hem)/2
	order := []int{hem[0], hem[last], hem[mid]}
	for i, c := range hem {
		if i != 0 && i != mid && i != last {
			order = append(order, c)
		}
	}
	return order
}

// parts cuts the present step into what is shown at a time; a step that is
// not cut is one part.
func (w where) parts() []span {
	card := w.card()
	if card.Fields["rows"] != "" {
		return w.rowParts()
	}
	var out []span
	switch {
	case w.onFront():
		out = w.frontParts()
	case w.joins():
		out = w.joinParts()
	}
	switch card.Fields["needles"] {
	case "rehang":
		out = w.rehangParts()
	case "latch":
		out = w.latchParts()
	case "hem":
		out = pairsWhole(even(len(w.along()), 3, atOnce), w.along())
	}
	if len(out) == 0 {
		return []span{{0, 1}}
	}
	return out
}

// rowParts are the rows that stand at one dial setting.
func (w where) rowParts() []span {
	s, rows := w.rowsOf(w.at), w.p.Tension()
	var out []span
	for i := s.from; i < s.to; {
		j := i + 1
		for j < s.to && rows[j].Clicks == rows[i].Clicks {
			j++
		}
		out = append(out, span{i - s.from, j - s.from})
		i = j
	}
	return out
}

// latchParts are a few columns side by side; a column wider than one needle
// is not torn apart.
func (w where) latchParts() []span {
	cols := w.along()
	var blocks []int // where each begins
	for i, c := range cols {
		if i == 0 || c != cols[i-1]+1 && c != cols[i-1]-1 {
			blocks = append(blocks, i)
		}
	}
	per := max(1, atOnce/max(1, w.p.In.Rib.Purl))
	if w.p.In.Rib.Purl == 1 {
		per = columnsIn
	}
	var out []span
	for _, g := range even(len(blocks), 0, per) {
		to := len(cols)
		if g.to < len(blocks) {
			to = blocks[g.to]
		}
		out = append(out, span{blocks[g.from], to})
	}
	return out
}

// pairsWhole moves a cut between two needles side by side behind both of them;
// longer runs are cut where they are.
func pairsWhole(parts []span, cols []int) []span {
	beside := func(i int) bool {
		return i > 0 && i < len(cols) && (cols[i] == cols[i-1]+1 || cols[i] == cols[i-1]-1)
	}
	for i := 1; i+1 < len(parts); i++ {
		if b := parts[i].to; beside(b) && !beside(b-1) && !beside(b+1) {
			parts[i].to, parts[i+1].from = b+1, b+1
		}
	}
	return parts
}

// even cuts n things into the fewest groups of at most size, evenly, after a
// first group of so many where there are more than that.
func even(n, first, size int) []span {
	var out []span
	from := 0
	if first > 0 && n > first {
		out, from = append(out, span{0, first}), first
	}
	groups := (n - from + size - 1) / size
	for i := range groups {
		to := from + (n-from)*(i+1)/groups
		prev := from + (n-from)*i/groups
		out = append(out, span{prev, to})
	}
	return out
}
