package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// Decimal is x with at most so many decimals.
func Decimal(x float64, decimals int) string { return trim(x, decimals) }

// Cautioned writes cautions under a text.
func Cautioned(cautions []string) string {
	var b strings.Builder
	for _, s := range cautions {
		b.WriteString("\n\n**Caution:** " + s)
	}
	return b.String()
}

// PickUp writes how a front band is picked up.
func (v Voice) PickUp(e engine.FrontEdge, p engine.PickUp, ownGauge, estimated bool) string {
	var b strings.Builder
	fmt.Fprintf(&b, "Pick up **%s**", Count(p.Stitches, "stitch", "stitches"))
	if e.Rib.Purl > 0 {
		fmt.Fprintf(&b, " for a %s rib", e.Rib)
	}
	fmt.Fprintf(&b, ": %s", v.Len(e.Length.Float()))
	if e.NeckbandDepth.Sign() > 0 {
		fmt.Fprintf(&b, " and the neckband's end of %s", v.Len(e.NeckbandDepth.Float()))
	}
	whose := "the garment's gauge"
	if ownGauge {
		whose = "that gauge"
	}
	fmt.Fprintf(&b, " at %s make %s.", whose, trim(p.Wanted.Float(), 1))
	if p.Smaller > 0 && e.Rib.Purl > 0 {
		fmt.Fprintf(&b, " The counts beside it are %d and %d.", p.Smaller, p.Larger)
	}
	if p.Every > 0 {
		fmt.Fprintf(&b, "\n\nOver the edge's %d rows", p.Rows)
		if estimated {
			b.WriteString(" (by your row gauge; count them if you can)")
		}
		fmt.Fprintf(&b, " that is about **%d of every %d**; kept strictly it gives %s.", p.Of, p.Every, offBy(p.Off))
	}
	if words := rowMap(p.Map); words != "" {
		b.WriteString(" Evenly, from the lower edge: " + words + ".")
	}
	if e.NeckbandRows > 0 {
		fmt.Fprintf(&b, "\n\nThe doubled neckband's end goes through both layers; its %d outer rows are counted once. If your edge already reaches the top of the neckband, add *with the neckband*.", e.NeckbandRows)
	}
	if !ownGauge {
		b.WriteString(" A band's own gauge is better: *at 30 stitches per 10 cm*.")
	}
	return b.String()
}

func offBy(off engine.Num) string {
	n := trim(off.Abs().Float(), 1)
	switch {
	case n == "0":
		return "the count exactly"
	case off.Sign() > 0:
		return n + " too many"
	}
	return n + " too few"
}

// rowMap says from which rows of an edge nothing, or two, are picked up.
func rowMap(m []int) string {
	mark, what := 0, "pass over row "
	for _, s := range m {
		if s == 2 {
			mark, what = 2, "two from row "
		}
	}
	marked := make([]int, len(m))
	for i, s := range m {
		marked[i] = 1
		if s == mark {
			marked[i] = 2
		}
	}
	first, phrases := engine.Phrases(marked)
	if first < 0 {
		if len(m) == 0 {
			return ""
		}
		return "one from every row"
	}
	out, at := what+fmt.Sprint(first+1), first
	for _, ph := range phrases {
		var steps []string
		for _, s := range ph.Steps {
			steps = append(steps, Ordinal(s))
			at += s * ph.Times
		}
		part := "every " + steps[0]
		if last := len(steps) - 1; last > 0 {
			part = "the " + strings.Join(steps[:last], ", ") + " and " + steps[last] + " in turn"
		}
		out += fmt.Sprintf(", then %s %s (to row %d)", part, times(ph.Times), at+1)
	}
	return out + "; one from each of the rest"
}

// Buttonholes writes where the holes lie.
func (v Voice) Buttonholes(s engine.HoleSpec, h engine.Buttonholes, notes []string, bed int) string {
	var b strings.Builder
	fmt.Fprintf(&b, "**%s of %s over %d stitches**, %d outside each end.", Count(s.Holes, "buttonhole", "buttonholes"), Count(s.Size, "stitch", "stitches"), s.Stitches, s.Start)
	if len(notes) > 0 {
		b.WriteString(" (" + strings.Join(notes, "; ") + ")")
	}
	b.WriteString("\n")
	for i, col := range h.First {
		fmt.Fprintf(&b, "\n- %d: %s", i+1, place(col, s, bed))
	}
	if len(h.Gaps) > 0 {
		fmt.Fprintf(&b, "\n\nGaps between them: %s.", gapWords(h))
	}
	if s.Stitches > bed {
		fmt.Fprintf(&b, " %d stitches are more than your %d needles: the band is made in two pieces or from more rows, so no needles are named.", s.Stitches, bed)
	}
	return b.String()
}

// place is a hole as stitches from the left edge, and as needles where the
// band fits the bed.
func place(col int, s engine.HoleSpec, bed int) string {
	last := col + s.Size - 1
	text := fmt.Sprintf("stitch %d", col+1)
	if s.Size > 1 {
		text = fmt.Sprintf("stitches %d to %d", col+1, last+1)
	}
	switch {
	case s.Stitches > bed:
		return text
	case s.Size == 1:
		return text + ", needle " + engine.NeedleName(col, s.Stitches)
	}
	return text + ", needles " + engine.NeedleName(col, s.Stitches) + " to " + engine.NeedleName(last, s.Stitches)
}

func gapWords(h engine.Buttonholes) string {
	if h.Gap.IsInt() {
		return fmt.Sprintf("%d stitches each", h.Gap.Floor())
	}
	whole := h.Gap.Floor()
	over := h.Gap.Sub(engine.Int(int64(whole))).Mul(engine.Int(int64(len(h.Gaps)))).Floor()
	return fmt.Sprintf("%s (%d each and %d over, one stitch at a time)", Counts(h.Gaps), whole, over)
}

// HolesFault says how many holes do fit.
func (v Voice) HolesFault(s engine.HoleSpec, e *engine.HolesError) string {
	if e.Most == 0 {
		return fmt.Sprintf("Not even one hole of %s fits between margins of %d on %d stitches. Say smaller margins, or more stitches.", Count(s.Size, "stitch", "stitches"), s.Start, s.Stitches)
	}
	return fmt.Sprintf("%d buttonholes of %s do not fit on %d stitches with margins of %d; at most %d do.", s.Holes, Count(s.Size, "stitch", "stitches"), s.Stitches, s.Start, e.Most)
}

// ButtonFit writes hole and overlap for a button.
func (v Voice) ButtonFit(d engine.Num, f engine.ButtonFit) string {
	return fmt.Sprintf("For a button of %s across: the hole **%s** (3 mm more, for a thin button), the overlap **%s to %s**, the button's centre %s to %s from the edge. Sources differ, and these are rules for woven cloth, which stretches less: try one hole first.",
		v.small(d), v.small(f.Hole), v.small(f.BandLow), v.small(f.BandHigh), v.small(f.EdgeLow), v.small(f.EdgeHigh))
}

// small is a short length: millimetres, or eighths of an inch.
func (v Voice) small(cm engine.Num) string {
	if v.Unit == "in" {
		return v.Len(cm.Float())
	}
	return trim(10*cm.Float(), 0) + " mm"
}

// countName is what a yarn count is called.
func countName(c engine.YarnCount) string {
	switch c {
	case engine.MetricCount:
		return "Nm"
	case engine.CottonCount:
		return "cotton count"
	case engine.WorstedNeK:
		return "worsted count"
	case engine.WoollenSkein:
		return "Yorkshire woollen skeins"
	case engine.LinenLea:
		return "linen lea"
	case engine.MetresPer:
		return "m in 100 g"
	case engine.YardsPer100:
		return "yd in 100 g"
	case engine.YardsOunce:
		return "yd to the ounce"
	case engine.YardsPound:
		return "yd to the pound"
	}
	return string(c)
}

// YarnCount writes one yarn in the count asked for, in tex and in metres.
func YarnCount(from engine.YarnCount, value engine.Num, plies int, to engine.YarnCount, result, tex, metres engine.Num) string {
	said := trim(value.Float(), 1) + " " + countName(from)
	if plies > 1 {
		said = fmt.Sprintf("%d threads of %s", plies, said)
	}
	text := fmt.Sprintf("%s: **%s %s**", said, trim(result.Float(), 1), countName(to))
	if to != engine.TexCount {
		text += ", " + trim(tex.Float(), 1) + " tex"
	}
	if to != engine.MetresPer {
		text += ", " + trim(metres.Float(), 0) + " m in 100 g"
	}
	text += ". The pound and the yard are exact; what twisting takes up is not counted."
	return text + fmt.Sprintf(" To use it in the plan say *%s m per 100 g*.", trim(metres.Float(), 0))
}
