package page

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// frontPart is one piece of a front band as it lies on the bed. At a join each
// piece takes one stitch more for the seam.
type frontPart struct {
	Name    string // "Piece 1", "" where the bed takes all in one
	Where   string // its stitches and needles
	Latch   [][]string
	Hem     [][]string
	first   int // stitch of the band that it begins with, from 0
	count   int
	before  int // stitches for a join at its lower end
	needles int
}

func (f frontPart) has(col int) bool { return col >= f.first && col < f.first+f.count }

// needle is the needle of column col of the band.
func (f frontPart) needle(col int) string {
	return engine.NeedleName(col-f.first+f.before, f.needles)
}

// span is the needles of so many stitches from column col.
func (f frontPart) span(col, size int) string {
	switch size {
	case 1:
		return f.needle(col)
	case 2:
		return f.needle(col) + " and " + f.needle(col+1)
	}
	return f.needle(col) + " to " + f.needle(col+size-1)
}

// frontParts lays a front band on the bed, in as many pieces as it takes; nil
// where its stitches are not known.
func frontParts(p *engine.Plan) []frontPart {
	shares := []int{p.Front.Stitches}
	if list, ok := p.Value(engine.FrontShares); ok {
		shares, _ = list.([]int)
	}
	var out []frontPart
	first := 0
	for i, n := range shares {
		part := frontPart{first: first, count: n, needles: n}
		if i > 0 {
			part.before, part.needles = 1, part.needles+1
		}
		if i < len(shares)-1 {
			part.needles++
		}
		ends := engine.NeedleName(0, part.needles) + " to " + engine.NeedleName(part.needles-1, part.needles)
		part.Where = "Needles " + ends
		if len(shares) > 1 {
			part.Name = fmt.Sprintf("Piece %d", i+1)
			part.Where = fmt.Sprintf("%s and %d for the join, needles %s", answer.Count(n, "stitch", "stitches"), part.needles-n, ends)
		}
		part.Latch, part.Hem = part.list(p.FrontRibColumns()), part.list(p.FrontHem())
		out = append(out, part)
		first += n
	}
	return out
}

// list names those of some columns that lie in this piece, those side by side
// together.
func (f frontPart) list(cols []int) [][]string {
	var out [][]string
	last := -2
	for _, c := range cols {
		if !f.has(c) {
			continue
		}
		if c != last+1 {
			out = append(out, nil)
		}
		out[len(out)-1] = append(out[len(out)-1], f.needle(c))
		last = c
	}
	return out
}

// Sizes of the picture of the edge in mm.
const (
	edgeLong = 170.0
	edgeHigh = 6.0
	edgeTop  = 7.0
	edgeLeft = 2.0
)

// frontEdge draws one front band lying on its side, lower end to the left,
// with its buttonholes and the neckband's end. "" where there are none.
func frontEdge(p *engine.Plan) string {
	f := p.Front
	if !f.HasHoles() || f.Stitches < 2 {
		return ""
	}
	d := draw(edgeLeft+edgeLong+2, edgeTop+edgeHigh+6, fmt.Sprintf("The front band lying on its side with %s; the list names the places in words", answer.Count(f.Spec.Holes, "buttonhole", "buttonholes")))
	at := func(col float64) float64 { return edgeLeft + edgeLong*col/float64(f.Stitches) }
	d.path("mid", fmt.Sprintf("M%s %s h%s v%s h-%s Z", mm(edgeLeft), mm(edgeTop), mm(edgeLong), mm(edgeHigh), mm(edgeLong)))
	if n := answer.NeckbandStitches(p); n > 0 {
		d.line("heavy", at(float64(f.Stitches-n)), edgeTop+edgeHigh, edgeLeft+edgeLong, edgeTop+edgeHigh)
	}
	size := float64(max(f.Spec.Size, 1))
	last := -10.0
	for i, col := range f.Holes.First {
		d.line("heavy", at(float64(col)), edgeTop+edgeHigh/2, at(float64(col)+size), edgeTop+edgeHigh/2)
		if x := at(float64(col) + size/2); x-last > 9 { // numbers that would touch are left out
			d.text(x, edgeTop-1.5, large, "middle", "bold", fmt.Sprint(i+1))
			last = x
		}
	}
	d.text(edgeLeft, edgeTop+edgeHigh+4.5, small, "start", "", "lower end")
	top := "top"
	if answer.NeckbandStitches(p) > 0 {
		top = "top; along the heavy line the neckband's end"
	}
	d.text(edgeLeft+edgeLong, edgeTop+edgeHigh+4.5, small, "end", "", top)
	return d.String()
}
