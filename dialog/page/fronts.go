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
	PickUp   []string // Markdown: stitches, ratio, needles
	Pins     []pin    // what is picked up between two pins
	PinWords string
	Band     string
	Dial     string
	Layers   int
	Knit     []knitList // a box for each row, front by front
	Parts    []frontPart
	Side     string // of which front the needles are
	Holes    []hole // from the lower end up
	Rows     string // in which rows they are made
	Gaps     string
	Button   string
	First    []string // which side first, and why
}

// pin is a stretch of the edge between two pins.
type pin struct{ Rows, Stitches string }

// knitList is the rows of one piece of one front.
type knitList struct {
	Name string
	Rows []int
}

// hole is one buttonhole: its stitches from the lower end, its needles, and
// the stitch at its middle, where the button is pinned.
type hole struct{ Stitches, Needles, Pin string }

// layFronts gathers the front bands, nil where they are not planned.
func layFronts(v answer.Voice, p *engine.Plan) *fronts {
	if _, ok := p.Float(engine.FrontStitches); !ok {
		return nil
	}
	f := p.Front
	out := &fronts{Band: v.FrontBand(p), PickUp: frontPickUp(v, p), Parts: frontParts(p), Layers: max(1, min(2, f.Layers)),
		Pins: pins(f.Map), PinWords: answer.RowGroups(f.Map), Dial: frontDial(v, p), Side: frontSide}
	out.Knit = knitLists(f.TotalRows, out.Parts)
	if f.HasHoles() {
		out.Holes, out.Rows = holes(p, out.Parts), answer.HoleRows(f)
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
		parts = append(parts, fmt.Sprintf("Over %d rows that is about **%d of every %d**.", f.Rows, f.Of, f.Every))
	}
	if e.NeckbandRows > 0 {
		parts = append(parts, fmt.Sprintf("The neckband's end goes through both layers at once; its %d outer rows are counted once.", e.NeckbandRows))
	}
	return parts
}

// pins are the stretches of an edge, from its lower end.
func pins(m []int) []pin {
	if len(m) == 0 {
		return nil
	}
	size, counts := answer.PinGroups(m)
	var out []pin
	for i, n := range counts {
		p := pin{fmt.Sprintf("rows %d to %d", i*size+1, min((i+1)*size, len(m))), fmt.Sprint(n)}
		if i*size+1 == len(m) {
			p.Rows = fmt.Sprintf("row %d", len(m))
		}
		out = append(out, p)
	}
	return out
}

// frontDial is the dial for a front band, or a place to write it down.
func frontDial(v answer.Voice, p *engine.Plan) string {
	if dial := v.Value(p, engine.MainTension); dial != "" && !p.In.Has(engine.FrontGauge) {
		return "Dial **" + dial + "**, the garment's, for every row: the band is planned at the garment's gauge."
	}
	return "Dial for every row: ______ (write it down; the second front takes the same)."
}

// frontSide says which front the names of the needles are for: hung by its
// front edge with the wrong side facing the knitter, a right front has its
// lower end at the left of the bed.
const frontSide = "The needles are those of a right front, wrong side facing you, its lower end at the left; on a left front count the same from the right end."

// knitLists is a box for each row of each piece of both fronts.
func knitLists(rows int, parts []frontPart) []knitList {
	if rows == 0 {
		return nil
	}
	var out []knitList
	for _, front := range []string{"first front", "second front"} {
		for _, part := range parts {
			name := front
			if len(parts) > 1 {
				name += ", " + strings.ToLower(part.Name)
			}
			out = append(out, knitList{name, upTo(rows)})
		}
	}
	return out
}

// holes names where each buttonhole lies.
func holes(p *engine.Plan, parts []frontPart) []hole {
	var out []hole
	size := max(p.Front.Spec.Size, 1)
	for _, col := range p.Front.Holes.First {
		h := hole{Stitches: fmt.Sprint(col + 1), Pin: fmt.Sprint(col + size/2 + 1)}
		if size > 1 {
			h.Stitches += " to " + fmt.Sprint(col+size)
		}
		h.Needles = answer.HoleNeedles(col, p.Front)
		if _, i := p.Front.PartOf(col); len(parts) > 1 {
			h.Needles += ", piece " + fmt.Sprint(i+1)
		}
		out = append(out, h)
	}
	return out
}
