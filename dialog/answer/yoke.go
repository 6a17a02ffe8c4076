package answer

import (
	"fmt"
	"strconv"
	"strings"

	"foldrow/engine"
)

// MethodName tells how the counts are found.
func (v Voice) MethodName(m engine.YokeMethod) string {
	return v.Text(engine.KeyYokeMethod, string(m))
}

// Counts is "14, 13 and 14".
func Counts(ns []int) string {
	s := make([]string, len(ns))
	for i, n := range ns {
		s[i] = strconv.Itoa(n)
	}
	if len(s) < 2 {
		return strings.Join(s, "")
	}
	return strings.Join(s[:len(s)-1], ", ") + " and " + s[len(s)-1]
}

// StageCounts is "240, 192, 150, then 105 at the neck".
func StageCounts(stages []engine.Stage) string {
	n := len(stages) - 1
	var s []string
	for _, st := range stages[:n] {
		s = append(s, strconv.Itoa(st.Count))
	}
	return strings.Join(s, ", ") + fmt.Sprintf(", then %d at the neck", stages[n].Count)
}

// Yoke writes the yoke of a plan: the counts as a table, its depth and slope,
// the pieces, what to look out for. It is "" where no yoke was planned.
func (v Voice) Yoke(p *engine.Plan) string {
	y := p.Yoke
	switch {
	case y == nil:
		return ""
	case y.Fault != nil:
		return v.YokeFault(y)
	case y.Stages == nil:
		return v.yokeBegun(p)
	}
	n := len(y.Stages) - 1
	var b strings.Builder
	fmt.Fprintf(&b, "Yoke of %s: **%s**, by %s.", Count(n, "stage", "stages"), StageCounts(y.Stages), v.MethodName(y.Spec.Method))
	if notes := v.yokeNotes(p); len(notes) > 0 {
		b.WriteString(" (" + strings.Join(notes, "; ") + ")")
	}
	b.WriteString("\n\n" + yokeTable(y))
	for _, s := range []string{v.yokeDepthLine(p), onePiece(y)} {
		if s != "" {
			b.WriteString("\n\n" + s)
		}
	}
	for _, c := range yokeCautions(y) {
		b.WriteString("\n\n**Caution:** " + c)
	}
	b.WriteString(v.hint("\n\nMore: *how do I hang stage 2*, *draw the yoke*, *why " + strconv.Itoa(y.Stages[min(1, n)].Count) + " at stage 2*, *what if I use " + otherStages(n) + "*."))
	return b.String()
}

func otherStages(n int) string {
	if n == 4 {
		return "three stages"
	}
	return "four stages"
}

// yokeBegun is said where the yoke has a beginning and no end yet.
func (v Voice) yokeBegun(p *engine.Plan) string {
	y := p.Yoke
	switch {
	case y.Spec.Start > 0 && v.Paper:
		return fmt.Sprintf("The yoke begins with %d stitches; its stages are not printed, since the stitches at its neck are not known.", y.Spec.Start)
	case y.Spec.Start > 0:
		return fmt.Sprintf("The yoke begins with %d stitches. How many has the neckband? Answer the five questions first, or say for example *yoke from %d to 105*.", y.Spec.Start, y.Spec.Start)
	case y.HasBust:
		return v.YokeDepth(p)
	}
	return ""
}

// yokeNotes are what was taken for granted, in a few words each.
func (v Voice) yokeNotes(p *engine.Plan) []string {
	y, in := p.Yoke, p.In
	var notes []string
	if y.Body > 0 {
		from := fmt.Sprintf("body %d", y.Body)
		if !in.Has(engine.BodyStitches) {
			from = fmt.Sprintf("bust %s at your gauge, body %d", v.Len(in.Num(engine.Bust).Float()), y.Body)
		}
		notes = append(notes, fmt.Sprintf("from %s: body and two sleeves less the underarms make %s by the published percentages", from, trim(y.FirstFrom.Float(), 0)))
	}
	switch {
	case !y.NeckSaid:
		notes = append(notes, fmt.Sprintf("taking the neckband's %d stitches as the end", y.Spec.Neck))
	case p.BandStitches > 0 && p.BandStitches != y.Spec.Neck:
		notes = append(notes, fmt.Sprintf("the neckband of the plan has %d", p.BandStitches))
	}
	if r, ok := p.Record(engine.YokeStages); ok && r.Rule == engine.RuleStages && y.Spec.Method.Cuts() == 0 && !in.Has(engine.StageHeights) && !in.Has(engine.StageRepeats) {
		notes = append(notes, fmt.Sprintf("taking %d stages, as none were said", len(y.Spec.Stages)))
	}
	if y.Spec.Method == engine.StraightCone && !in.Has(engine.StageHeights) {
		notes = append(notes, "taking the stages as equally high, which makes a cone the same as equal cuts"+v.hint("; say *heights 8 6 4 cm* for others"))
	}
	return notes
}

// yokeTable is a line for every stage.
func yokeTable(y *engine.YokePlan) string {
	var b strings.Builder
	head, rule := "| stage | stitches | exact | lost | share |", "|---|---|---|---|---|"
	if y.Rows != nil {
		head, rule = head+" rows |", rule+"---|"
	}
	if y.Spec.Bed > 0 {
		head, rule = head+" pieces |", rule+"---|"
	}
	b.WriteString(head + "\n" + rule)
	n := len(y.Stages) - 1
	for i, s := range y.Stages {
		name, lost, share, rows := strconv.Itoa(i+1), strconv.Itoa(s.Decreases), trim(100*s.Share().Float(), 0)+" %", ""
		if i == n {
			name = "neck"
		} else if y.Rows != nil {
			rows = strconv.Itoa(y.Rows[i])
		}
		if i == 0 {
			lost, share = "", ""
		}
		count := strconv.Itoa(s.Count)
		if s.Had > 0 && s.Had != s.Count {
			count += fmt.Sprintf(" (you have %d)", s.Had)
		}
		fmt.Fprintf(&b, "\n| %s | %s | %s | %s | %s |", name, count, exactly(s), lost, share)
		if y.Rows != nil {
			b.WriteString(" " + rows + " |")
		}
		if y.Spec.Bed > 0 {
			b.WriteString(" " + pieceSizes(s.Pieces) + " |")
		}
	}
	return b.String()
}

// exactly is the count before rounding, with how far rounding moved it.
func exactly(s engine.Stage) string {
	by := s.RoundedBy()
	if by.Sign() == 0 {
		return trim(s.Exact.Float(), 2)
	}
	sign := "+"
	if by.Sign() < 0 {
		sign = "-"
	}
	return trim(s.Exact.Float(), 2) + " (" + sign + trim(by.Abs().Float(), 2) + ")"
}

func pieceSizes(ps []engine.Piece) string {
	if len(ps) < 2 {
		return "1"
	}
	var sizes []string
	for _, p := range ps {
		sizes = append(sizes, strconv.Itoa(p.Stitches))
	}
	return fmt.Sprintf("%d: %s", len(ps), strings.Join(sizes, " + "))
}

// onePiece tells from where the whole yoke fits the bed.
func onePiece(y *engine.YokePlan) string {
	bed := y.Spec.Bed
	if bed < 1 {
		return ""
	}
	weight := " Weight is a limit too: a wide piece is heavy, so spread the weights and hold the work as you hang."
	switch y.OneFrom {
	case 1:
		return fmt.Sprintf("Every stage fits your %d needles in one piece.%s", bed, weight)
	case 0:
		return fmt.Sprintf("No stage fits your %d needles in one piece; the pieces are joined by seams.%s", bed, weight)
	case len(y.Stages):
		return fmt.Sprintf("Only the neckband fits your %d needles in one piece; the pieces are joined as it is hung.%s", bed, weight)
	}
	return fmt.Sprintf("From stage %d on the yoke fits your %d needles in one piece; the pieces before it are joined as it is hung.%s", y.OneFrom, bed, weight)
}
