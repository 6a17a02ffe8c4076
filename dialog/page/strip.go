package page

import (
	"fmt"

	"foldrow/engine"
)

// block is ten needles of the bed, drawn with what happens on each. Blocks
// stand side by side as far as the paper goes, so the strip wraps and never
// shrinks.
type block struct {
	Name string // "L10 to L1"
	SVG  string
}

const (
	blockNeedles = 10
	needleWide   = 7.6
	laneLabel    = 11.0
	laneHigh     = 6.5
	bedHigh      = 13.0 // numbers and needles above the first lane
)

// lane is one line of signs under the needles.
type lane struct {
	name string
	on   map[int]bool
	sign func(d *drawing, x, y float64)
}

// strip cuts the bed into blocks of ten needles counted from the centre, so
// that no block crosses it.
func strip(s sheet) []block {
	lanes := lanesOf(s)
	left := (s.Stitches + 1) / 2
	var blocks []block
	from := left % blockNeedles
	if from > 0 {
		blocks = append(blocks, needleBlock(s.Stitches, 0, from, lanes))
	}
	for ; from < s.Stitches; from += blockNeedles {
		blocks = append(blocks, needleBlock(s.Stitches, from, min(from+blockNeedles, s.Stitches), lanes))
	}
	return blocks
}

func lanesOf(s sheet) []lane {
	var lanes []lane
	for _, l := range []struct {
		name string
		cols []int
		sign func(d *drawing, x, y float64)
	}{{"two", s.Doubled, twoSign}, {"latch", s.Latch, latchSign}, {"out", s.Empty, outSign}, {"hem", s.Hem, hemSign}} {
		if len(l.cols) > 0 {
			lanes = append(lanes, lane{l.name, columnSet(l.cols), l.sign})
		}
	}
	return lanes
}

func columnSet(cols []int) map[int]bool {
	m := make(map[int]bool, len(cols))
	for _, c := range cols {
		m[c] = true
	}
	return m
}

// twoSign is two stitches side by side.
func twoSign(d *drawing, x, y float64) {
	d.dot(x-1.3, y, 1.1)
	d.dot(x+1.3, y, 1.1)
}

// latchSign is a tall filled lozenge: a column that is dropped and made anew.
func latchSign(d *drawing, x, y float64) {
	d.path("solid", fmt.Sprintf("M%s %s l1.9 2.8 l-1.9 2.8 l-1.9 -2.8 Z", mm(x), mm(y-2.8)))
}

// outSign is a ring: a needle that stays out of work.
func outSign(d *drawing, x, y float64) {
	d.path("thick", fmt.Sprintf("M%s %s a1.8 1.8 0 1 0 3.6 0 a1.8 1.8 0 1 0 -3.6 0", mm(x-1.8), mm(y)))
}

// hemSign is an open cup that the bump lies in.
func hemSign(d *drawing, x, y float64) {
	d.path("thick", fmt.Sprintf("M%s %s v1.9 a2.1 2.1 0 0 0 4.2 0 v-1.9", mm(x-2.1), mm(y-1.9)))
}

// needleBlock draws columns lo to hi-1. Of a block that is not full the
// needles keep their place by the centre.
func needleBlock(n, lo, hi int, lanes []lane) block {
	name := engine.NeedleName(lo, n)
	if hi-lo > 1 {
		name += " to " + engine.NeedleName(hi-1, n)
	}
	top := stagger(n, lo, hi)
	bed := top + bedHigh
	high := bed + laneHigh*float64(len(lanes)) + 1
	d := draw(laneLabel+blockNeedles*needleWide+1.5, high, "Needles "+name+"; the lists name the needles in words")
	left := (n + 1) / 2
	start := laneLabel
	if lo < left {
		start += float64(blockNeedles-(hi-lo)) * needleWide
	}
	for c := lo; c < hi; c++ {
		x := start + (float64(c-lo)+0.5)*needleWide
		needle(d, x, top, engine.NeedleName(c, n)[1:])
		for i, l := range lanes {
			y := bed + laneHigh*(float64(i)+0.5)
			if l.on[c] {
				l.sign(d, x, y)
			} else {
				d.dot(x, y, 0.3)
			}
		}
	}
	for i, l := range lanes {
		d.text(0, bed+laneHigh*(float64(i)+0.5)+1.2, small, "start", "", l.name)
	}
	centre(d, n, lo, hi, start, high)
	return block{name, d.String()}
}

// stagger is the room over the bed that numbers of three digits need: there
// every other one stands higher, or they would run into each other.
func stagger(n, lo, hi int) float64 {
	if len(engine.NeedleName(lo, n)) > 3 || len(engine.NeedleName(hi-1, n)) > 3 {
		return 4.6
	}
	return 0
}

// needle draws one needle with its number over it; every fifth is bold. Even
// numbers are raised to the top of the room.
func needle(d *drawing, x, top float64, number string) {
	last := number[len(number)-1]
	class, y := "", 4.4+top
	if last == '0' || last == '5' {
		class = "bold"
	}
	if (last-'0')%2 == 0 {
		y = 4.4
	}
	d.text(x, y, large, "middle", class, number)
	d.path("mid", fmt.Sprintf("M%s %s V%s a1 1 0 1 1 2 0", mm(x), mm(top+12), mm(top+8)))
}

// centre marks the middle of the bed: a heavy line between L1 and R1 with half
// of a pointer on either side.
func centre(d *drawing, n, lo, hi int, start, high float64) {
	left := (n + 1) / 2
	end := start + float64(hi-lo)*needleWide
	switch {
	case hi == left:
		d.line("heavy", end, 5.5, end, high)
		d.path("solid", fmt.Sprintf("M%s 5.5 h-2.6 L%s 9.5 Z", mm(end), mm(end)))
	case lo == left:
		d.line("heavy", start, 5.5, start, high)
		d.path("solid", fmt.Sprintf("M%s 5.5 h2.6 L%s 9.5 Z", mm(start), mm(start)))
	}
}

// sign is a line of the legend.
type sign struct{ SVG, Words string }

// legend explains the signs that the strip uses.
func legend(s sheet) []sign {
	var out []sign
	add := func(words string, paint func(d *drawing)) {
		d := draw(8, 7, "sign")
		paint(d)
		out = append(out, sign{d.String(), words})
	}
	add("the middle of the bed, between L1 and R1", func(d *drawing) {
		d.line("heavy", 4, 0.5, 4, 6.5)
		d.path("solid", "M1 0.5 h6 L4 4.5 Z")
	})
	for _, l := range lanesOf(s) {
		words := map[string]string{
			"two":   "two: this needle carries two stitches when the yoke is hung again",
			"latch": "latch: drop this column and latch it up from the front",
			"out":   "out: this needle stays out of work, its stitch moved to its neighbour",
			"hem":   "hem: hang the bump of the first band row here",
		}[l.name]
		add(words, func(d *drawing) { l.sign(d, 4, 3.5) })
	}
	return out
}
