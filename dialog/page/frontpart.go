package page

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// frontPart is one piece of a front band as it lies on the bed.
type frontPart struct {
	Name  string // "Piece 1", "" where the bed takes all in one
	Where string // its stitches and needles
	Latch [][]string
	Hem   [][]string
	engine.Part
}

// frontParts lays a front band on the bed, in as many pieces as it takes; nil
// where its stitches are not known.
func frontParts(p *engine.Plan) []frontPart {
	var out []frontPart
	for i, t := range p.Front.Parts {
		part := frontPart{Part: t}
		n := t.Needles()
		part.Where = "Needles " + engine.NeedleName(0, n) + " to " + engine.NeedleName(n-1, n)
		if len(p.Front.Parts) > 1 {
			part.Name = fmt.Sprintf("Piece %d", i+1)
			part.Where = fmt.Sprintf("%s, needles %s to %s", answer.Count(n, "stitch", "stitches"), engine.NeedleName(0, n), engine.NeedleName(n-1, n))
			if seam := answer.SeamNeedles(t); seam != "" {
				part.Where += "; " + seam
			}
		}
		part.Latch, part.Hem = part.list(p.FrontRibColumns()), part.list(p.FrontHem())
		out = append(out, part)
	}
	return out
}

// list names those of some columns that lie in this piece, those side by side
// together.
func (f frontPart) list(cols []int) [][]string {
	var out [][]string
	last := -2
	for _, c := range cols {
		if !f.Has(c) {
			continue
		}
		if c != last+1 {
			out = append(out, nil)
		}
		out[len(out)-1] = append(out[len(out)-1], f.Needle(c))
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
