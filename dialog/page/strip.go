package page

import (
	"fmt"

	"foldrow/engine"
)

// block is a stretch of the bed, drawn with what happens on each needle. A
// stretch is as long as the paper is wide; the strip wraps and never shrinks.
type block struct {
	Name string // "L60 to L31"
	SVG  string
}

const (
	blockNeedles = 30
	tenNeedles   = 10
	tenGap       = 1.2
	needleWide   = 5.5
	laneLabel    = 13.0
	laneHigh     = 5.6
	bedHigh      = 11.6 // numbers and needles above the first lane
)

// lane is one line of signs under the needles.
type lane struct {
	name string
	keys []key // for the legend
	sign func(col int) sketch
}

// key explains one sign.
type key struct {
	words string
	sign  sketch
}

// sketch draws one sign with its middle at x, y; nil for none.
type sketch func(d *drawing, x, y float64)

// marked is a lane with the same sign on some columns.
func marked(name, words string, cols []int, s sketch) lane {
	on := make(map[int]bool, len(cols))
	for _, c := range cols {
		on[c] = true
	}
	return lane{name, []key{{words, s}}, func(col int) sketch {
		if on[col] {
			return s
		}
		return nil
	}}
}

// bed cuts n needles into stretches counted from the centre, so that none
// crosses it.
func bed(n int, lanes []lane) []block {
	if len(lanes) == 0 {
		return nil
	}
	left := (n + 1) / 2
	var blocks []block
	from := left % blockNeedles
	if from > 0 {
		blocks = append(blocks, needleBlock(n, 0, from, lanes))
	}
	for ; from < n; from += blockNeedles {
		blocks = append(blocks, needleBlock(n, from, min(from+blockNeedles, n), lanes))
	}
	return blocks
}

func lanesOf(b bedPart) []lane {
	var lanes []lane
	for _, l := range []struct {
		name, words string
		cols        []int
		sign        sketch
	}{
		{"two", "two: carries two stitches when the yoke is hung again", b.Doubled, twoSign},
		{"latch", "latch: drop this column, latch it up from the front", b.Latch.Cols, latchSign},
		{"out", "out: stays out of work, its stitch moved to its neighbour", b.Empty.Cols, outSign},
		{"hem", "hem: hang the bump of the first band row here", b.Hem.Cols, hemSign},
	} {
		if len(l.cols) > 0 {
			lanes = append(lanes, marked(l.name, l.words, l.cols, l.sign))
		}
	}
	return lanes
}

// twoSign is two stitches side by side.
func twoSign(d *drawing, x, y float64) {
	d.dot(x-1.2, y, 1.1)
	d.dot(x+1.2, y, 1.1)
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

// needleBlock draws columns lo to hi-1. Of a stretch that is not full the
// needles keep their place by the centre.
func needleBlock(n, lo, hi int, lanes []lane) block {
	name := engine.NeedleName(lo, n)
	if hi-lo > 1 {
		name += " to " + engine.NeedleName(hi-1, n)
	}
	top := stagger(n, lo, hi)
	bed := top + bedHigh
	high := bed + laneHigh*float64(len(lanes)) + 1
	d := draw(laneLabel+wideOf(blockNeedles)+2.8, high, "Needles "+name+"; the lists name the needles in words")
	left := (n + 1) / 2
	for c := lo; c < hi; c++ {
		x := needleX(c, left)
		needle(d, x, top, engine.NeedleName(c, n)[1:])
		for i, l := range lanes {
			y := bed + laneHigh*(float64(i)+0.5)
			if sign := l.sign(c); sign != nil {
				sign(d, x, y)
			} else {
				d.dot(x, y, 0.3)
			}
		}
	}
	side := "left"
	if lo >= left {
		side = "right"
	}
	d.text(0, top+4.2, small, "start", "bold", side)
	for i, l := range lanes {
		d.text(0, bed+laneHigh*(float64(i)+0.5)+1.2, small, "start", "", l.name)
	}
	centre(d, n, lo, hi, high)
	return block{name, d.String()}
}

// wideOf is the width of so many needles with a gap after each ten.
func wideOf(needles int) float64 {
	return needleWide*float64(needles) + tenGap*float64((needles-1)/tenNeedles)
}

// needleX is where column c stands in its stretch.
func needleX(c, left int) float64 {
	if c < left {
		k := (left - 1 - c) % blockNeedles // 0 beside the centre
		return laneLabel + wideOf(blockNeedles) - wideOf(k+1) + needleWide/2
	}
	k := (c - left) % blockNeedles
	return laneLabel + wideOf(k+1) - needleWide/2
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
	class, y := "", 4.2+top
	if last == '0' || last == '5' {
		class = "bold"
	}
	if (last-'0')%2 == 0 {
		y = 4.2
	}
	d.text(x, y, large, "middle", class, number)
	d.path("mid", fmt.Sprintf("M%s %s V%s a1 1 0 1 1 2 0", mm(x), mm(top+11), mm(top+7)))
}

// centre marks the middle of the bed: a heavy line between L1 and R1 with half
// of a pointer on either side.
func centre(d *drawing, n, lo, hi int, high float64) {
	left := (n + 1) / 2
	switch {
	case hi == left:
		end := laneLabel + wideOf(blockNeedles) + 0.5
		d.line("heavy", end, 5.5, end, high)
		d.path("solid", fmt.Sprintf("M%s 5.5 h-2.6 L%s 9.5 Z", mm(end), mm(end)))
	case lo == left:
		start := laneLabel - 0.5
		d.line("heavy", start, 5.5, start, high)
		d.path("solid", fmt.Sprintf("M%s 5.5 h2.6 L%s 9.5 Z", mm(start), mm(start)))
	}
}

// sign is a line of a legend.
type sign struct{ SVG, Words string }

func signOf(words string, paint func(d *drawing)) sign {
	d := draw(8, 7, "sign")
	paint(d)
	return sign{d.String(), words}
}

func centreSign() sign {
	return signOf("the middle of the bed, between L1 and R1", func(d *drawing) {
		d.line("heavy", 4, 0.5, 4, 6.5)
		d.path("solid", "M1 0.5 h6 L4 4.5 Z")
	})
}

// legend explains the signs of some lanes; nil where there are none.
func legend(lanes []lane) []sign {
	var out []sign
	for _, l := range lanes {
		for _, k := range l.keys {
			out = append(out, signOf(k.words, func(d *drawing) { k.sign(d, 4, 3.5) }))
		}
	}
	if out == nil {
		return nil
	}
	return append([]sign{centreSign()}, out...)
}
