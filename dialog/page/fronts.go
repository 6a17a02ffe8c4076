package page

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// fronts is the front bands on the page: words, a box for each buttonhole on
// either layer, and the edge as a picture.
type fronts struct {
	PickUp []string // Markdown: stitches, ratio, map, needles
	Band   string
	Holes  []string // one a buttonhole, from the lower end up
	Rows   string   // in which rows they are made
	Gaps   string
	Button string
	First  []string // which side first, and why
}

// layFronts gathers the front bands, nil where they are not planned.
func layFronts(v answer.Voice, p *engine.Plan) *fronts {
	if _, ok := p.Float(engine.FrontStitches); !ok {
		return nil
	}
	f := p.Front
	out := &fronts{Band: v.FrontBand(p), PickUp: frontPickUp(v, p)}
	if f.HasHoles() {
		out.Holes, out.Rows = answer.HoleList(p), strings.TrimSpace(answer.HoleSide(f)+" "+answer.HoleRows(f))
		if len(f.Holes.Gaps) > 0 {
			out.Gaps = answer.GapWords(f.Holes)
			if d := v.Value(p, engine.HoleDistance); d != "" {
				out.Gaps += "; from button to button " + d
			}
			out.Gaps += "."
		}
	}
	if f.HasButton() {
		out.Button = v.ButtonFit(p)
	}
	for _, id := range []string{"band-order", "which-side"} {
		if c, ok := v.Book.Card("howto", id); ok {
			out.First = append(out.First, v.Fill(c.Text, p))
		}
	}
	return out
}

// frontPickUp is how the edge is picked up, a paragraph each.
func frontPickUp(v answer.Voice, p *engine.Plan) []string {
	f, e := p.Front, p.PickUpEdge()
	parts := []string{fmt.Sprintf("**%s** on each front", answer.Count(f.Stitches, "stitch", "stitches"))}
	if e.Rib.Purl > 0 {
		parts[0] += fmt.Sprintf(", %s rib", e.Rib)
	}
	if l, r := v.Value(p, engine.FrontLeft), v.Value(p, engine.FrontRight); l != "" {
		parts[0] += fmt.Sprintf(", needles %s to %s", l, r)
	} else {
		parts[0] += fmt.Sprintf(", in %d pieces: the bed does not hold it in one", f.Pieces)
	}
	parts[0] += "."
	if f.Every > 0 {
		parts = append(parts, fmt.Sprintf("Over %d rows that is about **%d of every %d**. Evenly, from the lower edge: %s.", f.Rows, f.Of, f.Every, v.Value(p, engine.FrontMap)))
	}
	if e.NeckbandRows > 0 {
		parts = append(parts, fmt.Sprintf("The neckband's end goes through both layers at once; its %d outer rows are counted once.", e.NeckbandRows))
	}
	return parts
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
	d.text(edgeLeft+edgeLong, edgeTop+edgeHigh+4.5, small, "end", "", "top")
	return d.String()
}

// fronts writes the same as Markdown.
func (m *markdown) fronts(s sheet) {
	f := s.Fronts
	if f == nil {
		return
	}
	m.para("## The front bands")
	for _, t := range f.PickUp {
		m.para(t)
	}
	m.para(f.Band)
	if len(f.Holes) > 0 {
		m.para(fmt.Sprintf("### %s", answer.Count(len(f.Holes), "buttonhole", "buttonholes")))
		m.para("Counted from the lower end. A box for each layer in which it is made.")
		var lines []string
		for i, h := range f.Holes {
			lines = append(lines, fmt.Sprintf("- %s%d: %s", strings.Repeat("[ ] ", s.layersOfHoles()), i+1, h))
		}
		m.list(lines)
		m.para(f.Gaps)
		m.para(f.Rows)
	}
	m.para(f.Button)
	for _, t := range f.First {
		m.para(t)
	}
}

// layersOfHoles is how often each buttonhole is made: once in a single band,
// on both layers of a doubled one.
func (s sheet) layersOfHoles() int { return max(1, min(2, s.plan.Front.Layers)) }

// upTo is the numbers 1 to n, for a template that draws so many boxes.
func upTo(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i + 1
	}
	return out
}
