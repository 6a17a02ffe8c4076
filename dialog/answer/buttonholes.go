package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// Buttonholes writes where the holes lie, in words, with a picture beside them.
func (v Voice) Buttonholes(p *engine.Plan, said engine.Inputs) string {
	f := p.Front
	s, h := f.Spec, f.Holes
	var b strings.Builder
	fmt.Fprintf(&b, "**%s of %s over %d stitches**, %d outside each end", Count(s.Holes, "buttonhole", "buttonholes"), Count(s.Size, "stitch", "stitches"), s.Stitches, s.Start)
	if notes := holesAssumed(s, said); notes != "" {
		b.WriteString(" (" + notes + ")")
	}
	b.WriteString(". Counted from the lower end:\n")
	for i, hole := range HoleList(p) {
		fmt.Fprintf(&b, "\n- %d: %s", i+1, hole)
	}
	if len(h.Gaps) > 0 {
		fmt.Fprintf(&b, "\n\n%s", GapWords(h))
		if d, ok := p.Float(engine.HoleDistance); ok {
			fmt.Fprintf(&b, "; from button to button %s", v.Len(d))
		}
		b.WriteString(".")
	}
	if top := v.topHole(p); top != "" {
		b.WriteString(" " + top)
	}
	if side := HoleSide(f); side != "" {
		b.WriteString(" " + side)
	}
	b.WriteString("\n\n" + v.ButtonPicture(p))
	b.WriteString("\n\n" + HoleRows(f))
	return strings.TrimRight(b.String(), "\n")
}

// holesAssumed names what of the holes was not said.
func holesAssumed(s engine.HoleSpec, said engine.Inputs) string {
	size := !said.Has(engine.HoleStitches) && !said.Has(engine.Button)
	switch margin := !said.Has(engine.HoleMargin); {
	case size && margin:
		return fmt.Sprintf("the %d and the %d are assumed", s.Size, s.Start)
	case size:
		return fmt.Sprintf("the %d of a hole is assumed", s.Size)
	case margin:
		return fmt.Sprintf("the %d outside is assumed", s.Start)
	}
	return ""
}

// place is a hole as stitches from the lower end, and as needles.
func place(col int, f *engine.Front) string {
	size := max(f.Spec.Size, 1)
	last := col + size - 1
	text := fmt.Sprintf("stitch %d", col+1)
	if size > 1 {
		text = fmt.Sprintf("stitches %d to %d", col+1, last+1)
	}
	text += ", " + map[bool]string{true: "needle ", false: "needles "}[size == 1] + HoleNeedles(col, f)
	if _, i := f.PartOf(col); len(f.Parts) > 1 {
		text += fmt.Sprintf(" of piece %d", i+1)
	}
	return text
}

// HoleNeedles is the needles of the hole that begins at column col, on the bed
// of the piece in which it lies.
func HoleNeedles(col int, f *engine.Front) string {
	size := max(f.Spec.Size, 1)
	name := func(c int) string {
		t, _ := f.PartOf(c)
		return t.Needle(c)
	}
	switch size {
	case 1:
		return name(col)
	case 2:
		return name(col) + "+" + name(col+1)
	default:
		return name(col) + " to " + name(col+size-1)
	}
}

// HoleNeedleList is the needles of every hole, hole by hole, and piece by piece
// where the bed does not take a front band at once; "" where no holes are laid.
func HoleNeedleList(f *engine.Front) string {
	if !f.HasHoles() {
		return ""
	}
	var parts []string
	for i, t := range f.Parts {
		var list []string
		for _, col := range f.Holes.First {
			if t.Has(col) {
				list = append(list, HoleNeedles(col, f))
			}
		}
		if len(list) == 0 {
			continue
		}
		text := strings.Join(list, ", ")
		if len(f.Parts) > 1 {
			text = fmt.Sprintf("piece %d: %s", i+1, text)
		}
		parts = append(parts, text)
	}
	return strings.Join(parts, "; ")
}

// GapWords tells the gaps between the holes, and how they share a remainder.
func GapWords(h engine.Buttonholes) string {
	switch {
	case len(h.Gaps) == 1:
		return fmt.Sprintf("The gap between them: %d stitches", h.Gap.Floor())
	case h.Gap.IsInt():
		return fmt.Sprintf("Gaps between them: %d stitches each", h.Gap.Floor())
	}
	whole := h.Gap.Floor()
	over := h.Gap.Sub(engine.Int(int64(whole))).Mul(engine.Int(int64(len(h.Gaps)))).Floor()
	return fmt.Sprintf("Gaps between them: %s (%d each and %d over)", Counts(h.Gaps), whole, over)
}

// topHole says that the last hole lies in the neckband's end, where it does.
func (v Voice) topHole(p *engine.Plan) string {
	end := NeckbandStitches(p)
	f := p.Front
	if end == 0 || f.Spec.End+f.Spec.Size > end {
		return ""
	}
	return fmt.Sprintf("The top hole lies in the neckband's end, the uppermost %d stitches.", end)
}

// NeckbandStitches is how many of the front band's stitches come from the
// neckband's end.
func NeckbandStitches(p *engine.Plan) int {
	e := p.PickUpEdge()
	return e.NeckbandDepth.Mul(e.Gauge).Div(engine.Int(10)).Round()
}

// HoleList is where each hole lies, from the lower end up: as stitches, and as
// needles.
func HoleList(p *engine.Plan) []string {
	var list []string
	for _, col := range p.Front.Holes.First {
		list = append(list, place(col, p.Front))
	}
	return list
}

// HoleSide says for which front the needles are named: hung by its front edge
// with the wrong side facing the knitter, a right front has its lower end at
// the left of the bed, and a left front at the right.
func HoleSide(f *engine.Front) string {
	if len(f.Parts) > 1 {
		return "Pieces and needles are those of a right front, wrong side facing you, its lower end at the left, piece 1 lowest; on a left front count the same stitches of a piece from the right end."
	}
	return "The needles are those of a right front, wrong side facing you, its lower end at the left; on a left front count the same stitches from the right end."
}

// HoleRows says in which rows the holes are made.
func HoleRows(f *engine.Front) string {
	switch {
	case len(f.HoleRows) == 0 && f.Layers > 1:
		return "In a doubled band make each hole twice, on the same needles, mirrored about the fold."
	case len(f.HoleRows) == 0:
		return ""
	case f.Layers > 1:
		return fmt.Sprintf("In the doubled band make each hole twice, on the same needles, mirrored about the fold: with %d rows a layer in row %d and again in row %d.",
			f.LayerRows, f.HoleRows[0], f.HoleRows[1])
	}
	return fmt.Sprintf("Make the holes in row %d of %d.", f.HoleRows[0], f.LayerRows)
}

// The picture of the edge: how many signs wide it is, where few holes leave
// the choice, and the most holes it shows.
const (
	edgeWide  = 34
	mostHoles = 20
)

// ButtonPicture draws the edge from the lower end to the top with its holes;
// "" where they are too many to be told apart. Words stand beside it; the
// legend belongs to the picture and goes with it where pages are read aloud.
func (v Voice) ButtonPicture(p *engine.Plan) string {
	f := p.Front
	n := f.Stitches
	if !f.HasHoles() || f.Spec.Holes > mostHoles || n < 4 {
		return ""
	}
	wide := evenWidth(f, min(n, max(edgeWide, 4*f.Spec.Holes+2)))
	at := func(col int) int { return col * wide / n }
	line, numbers := []byte(strings.Repeat("-", wide)), []byte(strings.Repeat(" ", wide+1))
	if end := NeckbandStitches(p); end > 0 {
		for i := at(max(0, n-end)); i < wide; i++ {
			line[i] = '='
		}
	}
	for i, col := range f.Holes.First {
		c := at(col + f.Spec.Size/2)
		line[c] = 'O'
		copy(numbers[c:], fmt.Sprint(i+1))
	}
	signs := "O is a buttonhole"
	if NeckbandStitches(p) > 0 {
		signs += ", = the neckband's end"
	}
	return strings.TrimSpace(picture(0, "O", []string{fmt.Sprintf("[%s]", line), " " + string(numbers)}) +
		legend(fmt.Sprintf("%s. The lower end is at the left, the top at the right; one sign stands for about %s.", signs, stitchesASign(n, wide))))
}

// evenWidth is the width of the picture, from least on, at which the holes stand
// most evenly: gaps of 24 and 25 stitches must not look like four against five.
func evenWidth(f *engine.Front, least int) int {
	best, fewest := least, f.Stitches
	for wide := least; wide <= min(f.Stitches, least+edgeWide/2); wide++ {
		low, high := f.Stitches, 0
		for i := 1; i < len(f.Holes.First); i++ {
			gap := (f.Holes.First[i]+f.Spec.Size/2)*wide/f.Stitches - (f.Holes.First[i-1]+f.Spec.Size/2)*wide/f.Stitches
			low, high = min(low, gap), max(high, gap)
		}
		if high-low < fewest {
			best, fewest = wide, high-low
		}
	}
	return best
}

func stitchesASign(n, wide int) string {
	per := float64(n) / float64(wide)
	if per < 1.05 {
		return "1 stitch"
	}
	return trim(per, 1) + " stitches"
}

// ButtonFit writes hole and overlap for a button.
func (v Voice) ButtonFit(p *engine.Plan) string {
	f, d := p.Front.Fit, p.In.Num(engine.Button).Div(engine.Int(10))
	text := fmt.Sprintf("For a button of %s across: the hole **%s** (3 mm more, for a thin button)", v.small(d), v.small(f.Hole))
	if size, ok := p.Float(engine.HoleStitches); ok && !p.In.Has(engine.HoleStitches) {
		if g, gauged := p.Float(engine.FrontGauge); gauged {
			text += fmt.Sprintf(", %s at %s", Count(int(size), "stitch", "stitches"), v.Figure(engine.FrontGauge, g))
		}
	}
	return text + fmt.Sprintf("; the overlap **%s to %s**, the button's centre %s to %s from the edge. Sources differ, and these are rules for woven cloth, which stretches less: try one hole first.",
		v.small(f.BandLow), v.small(f.BandHigh), v.small(f.EdgeLow), v.small(f.EdgeHigh))
}

// small is a short length: millimetres, or eighths of an inch.
func (v Voice) small(cm engine.Num) string {
	if v.Unit == "in" {
		return v.Len(cm.Float())
	}
	return trim(10*cm.Float(), 0) + " mm"
}
