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

// frontList writes a list among the results of the front bands.
func frontList(p *engine.Plan, k engine.Key, val any) string {
	f := p.Front
	switch list := val.(type) {
	case []int:
		switch k {
		case engine.FrontMap:
			return rowMap(list)
		case engine.FrontShares:
			return PartsSpan(f.Parts)
		}
		return Counts(list)
	}
	return ""
}

// PickUp writes how the front bands are picked up.
func (v Voice) PickUp(p *engine.Plan) string {
	f, e := p.Front, p.PickUpEdge()
	var b strings.Builder
	gauge := v.Figure(engine.FrontGauge, e.Gauge.Float())
	switch {
	case p.In.Has(engine.FrontCount):
		fmt.Fprintf(&b, "**%s** on each front band. At %s they fill an edge of %s", Count(f.Stitches, "stitch", "stitches"), gauge, v.Both(f.Length.Float()))
		if e.NeckbandRows > 0 {
			b.WriteString(" below the neckband's end")
		}
		b.WriteString(".")
	default:
		fmt.Fprintf(&b, "Pick up **%s** along each front", Count(f.Stitches, "stitch", "stitches"))
		if e.Rib.Purl > 0 {
			fmt.Fprintf(&b, " for a %s rib", e.Rib)
		}
		fmt.Fprintf(&b, ": %s", v.Len(e.Length.Float()))
		if e.NeckbandRows > 0 {
			fmt.Fprintf(&b, " and the neckband's end of %s", v.Len(e.NeckbandDepth.Float()))
		}
		fmt.Fprintf(&b, " at %s make %s.", gauge, trim(f.Wanted.Float(), 1))
		if f.Smaller > 0 && e.Rib.Purl > 0 {
			fmt.Fprintf(&b, " The counts beside it are %d and %d.", f.Smaller, f.Larger)
		}
	}
	if s := v.pickUpRows(p, e); s != "" {
		b.WriteString("\n\n" + s)
	}
	if e.NeckbandRows > 0 && !p.In.Has(engine.FrontCount) {
		fmt.Fprintf(&b, "\n\nThe neckband's end goes through both layers at once; its %d outer rows are counted once. If your edge already reaches the top of the neckband, say *with the neckband*.", e.NeckbandRows)
	}
	if !p.In.Has(engine.FrontGauge) {
		b.WriteString("\n\nThis is the garment's gauge; the band's own is better: *the front band has 30 stitches in 10 cm*.")
	}
	return b.String()
}

// pickUpRows is the fraction, its error and the map, "" where the rows of the
// edge are not known.
func (v Voice) pickUpRows(p *engine.Plan, e engine.PickUpEdge) string {
	f := p.Front
	if f.Every == 0 {
		return ""
	}
	var b strings.Builder
	fmt.Fprintf(&b, "Over the edge's %d rows", f.Rows)
	if !p.In.Has(engine.EdgeRows) {
		b.WriteString(" (by your row gauge; count them if you can)")
	}
	fmt.Fprintf(&b, " that is about **%d of every %d**; kept strictly it gives %s.", f.Of, f.Every, offBy(f.Off))
	if words := mapInBrief(f.Map); words != "" {
		b.WriteString(" Evenly, from the lower edge: " + words + ". " + rowGroups(f.Map))
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

// briefMap is how long the map's words may be under an answer about something
// else; a longer one is told when it is asked for.
const briefMap = 160

// mapInBrief is the map in words, or how to hear them.
func mapInBrief(m []int) string {
	words := rowMap(m)
	if len(words) <= briefMap {
		return words
	}
	at := marked(m)
	least, most := len(m), 0
	for i := 1; i < len(at); i++ {
		least, most = min(least, at[i]-at[i-1]), max(most, at[i]-at[i-1])
	}
	what := "pass over every "
	if twice(m) {
		what = "two from every "
	}
	return fmt.Sprintf("%s%s or %s row, first row %d (*which rows do I pass over* tells each)", what, Ordinal(least), Ordinal(most), at[0]+1)
}

// twice reports an edge of which some rows give two stitches.
func twice(m []int) bool {
	for _, s := range m {
		if s == 2 {
			return true
		}
	}
	return false
}

// marked is the rows, from 0, that give none, or two where some do.
func marked(m []int) []int {
	mark := 0
	if twice(m) {
		mark = 2
	}
	var at []int
	for i, s := range m {
		if s == mark {
			at = append(at, i)
		}
	}
	return at
}

// rowMap says from which rows of an edge nothing, or two, are picked up.
func rowMap(m []int) string {
	what := "pass over row "
	if twice(m) {
		what = "two from row "
	}
	some := make([]int, len(m))
	for i := range some {
		some[i] = 1
	}
	for _, i := range marked(m) {
		some[i] = 2
	}
	first, phrases := engine.Phrases(some)
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

// mostGroups is how many groups of rows are counted out; a longer edge is cut
// into larger ones.
const mostGroups = 16

// PinGroups cuts the rows of an edge where pins go, each so many rows, and
// counts what is picked up from each; the last group may be shorter.
func PinGroups(m []int) (size int, counts []int) {
	size = max(10, 10*((len(m)+10*mostGroups-1)/(10*mostGroups)))
	for from := 0; from < len(m); from += size {
		n := 0
		for _, s := range m[from:min(from+size, len(m))] {
			n += s
		}
		counts = append(counts, n)
	}
	return size, counts
}

// RowGroups is the map of an edge in one sentence, "" where its rows are not
// known.
func RowGroups(m []int) string { return rowGroups(m) }

// rowGroups is the same map for pins along the edge: how many stitches come
// from each ten rows (or twenty, thirty ...).
func rowGroups(m []int) string {
	if len(m) == 0 {
		return ""
	}
	size, counts := PinGroups(m)
	text := fmt.Sprintf("Pinned off in %ds of rows, pick up ", size)
	whole, rest := counts, len(m)%size
	if rest > 0 {
		whole = counts[:len(counts)-1]
	}
	switch {
	case len(whole) == 0:
		return ""
	case same(whole):
		text += fmt.Sprintf("%d from each", whole[0])
	default:
		text += Counts(whole)
	}
	if rest > 0 {
		text += fmt.Sprintf(", and %d from the last %s", counts[len(counts)-1], Count(rest, "row", "rows"))
	}
	return text + "."
}

func same(ns []int) bool {
	for _, n := range ns {
		if n != ns[0] {
			return false
		}
	}
	return true
}

// FrontBand writes the rows of the front band itself, "" where they are not
// known.
func (v Voice) FrontBand(p *engine.Plan) string {
	f := p.Front
	if f == nil || f.LayerRows == 0 {
		return ""
	}
	text := fmt.Sprintf("**The band itself: %s a layer**, %d in all", Count(f.LayerRows, "row", "rows"), f.TotalRows)
	if f.FoldRow {
		text += " with the fold row"
	}
	if f.Layers == 1 {
		text = fmt.Sprintf("**The band itself: %s**, a single layer", Count(f.LayerRows, "row", "rows"))
	}
	return text + fmt.Sprintf(", %s wide.", v.Len(f.Width.Float()))
}

// frontPart is the front bands in the whole plan, "" where they are not
// planned.
func (v Voice) frontPart(p *engine.Plan) string {
	f := p.Front
	if _, ok := p.Float(engine.FrontStitches); !ok {
		return ""
	}
	text := fmt.Sprintf("**%d stitches** along each front", f.Stitches)
	if f.Every > 0 {
		text += fmt.Sprintf(", about %d of every %d rows", f.Of, f.Every)
	}
	if f.LayerRows > 0 {
		text += fmt.Sprintf("; %s a layer", Count(f.LayerRows, "row", "rows"))
	}
	if at := v.Value(p, engine.HolePositions); at != "" {
		text += fmt.Sprintf("; %s from stitches %s, counted from the lower end", Count(f.Spec.Holes, "buttonhole", "buttonholes"), at)
	}
	return text + "."
}
