package answer

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"foldrow/engine"
)

// MethodName tells how the counts are found.
func MethodName(m engine.YokeMethod) string {
	switch m {
	case engine.SequenceA:
		return "a third off three times, as published"
	case engine.SequenceB:
		return "a quarter, a third and two fifths off, as published"
	case engine.SequenceC:
		return "a third, two quarters and a fifth off, as published"
	case engine.StraightCone:
		return "a straight cone"
	}
	return "equal cuts"
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

// Stages writes a yoke: the counts as a table, then each hanging, then the
// pieces. The warnings come apart too.
func (v Voice) Stages(y engine.YokeSpec, stages []engine.Stage, notes []string) (string, []string) {
	n := len(stages) - 1
	var b strings.Builder
	fmt.Fprintf(&b, "Yoke of %s: **%s**, by %s.", Count(n, "stage", "stages"), StageCounts(stages), MethodName(y.Method))
	if len(notes) > 0 {
		b.WriteString(" (" + strings.Join(notes, "; ") + ")")
	}
	b.WriteString("\n\n| stage | stitches | exact | lost | pieces |\n|---|---|---|---|---|\n")
	for i, s := range stages {
		name, lost := strconv.Itoa(i+1), strconv.Itoa(s.Decreases)
		if i == n {
			name = "neck"
		}
		if i == 0 {
			lost = ""
		}
		fmt.Fprintf(&b, "| %s | %d | %s | %s | %s |\n", name, s.Count, exactly(s), lost, pieceSizes(s.Pieces))
	}
	for i, s := range stages[1:] {
		b.WriteString("\n" + v.hanging(i+1, n, s))
	}
	b.WriteString("\n\n" + onePiece(stages, y.Bed))
	var cautions []string
	for i, s := range stages {
		cautions = append(cautions, stageWarnings(i, n, s)...)
	}
	for _, c := range cautions {
		b.WriteString("\n\n**Caution:** " + c)
	}
	b.WriteString("\n\nThe plan is not changed. Equal cuts and the limit of one stitch in three are common practice.")
	return b.String(), cautions
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

// hanging says how stage i is hung from the one before, piece by piece.
func (v Voice) hanging(i, n int, s engine.Stage) string {
	name := "stage " + strconv.Itoa(i+1)
	if i == n {
		name = "the neckband"
	}
	if s.Decreases == 0 {
		return fmt.Sprintf("- Hang %s one stitch to a needle: nothing is lost.", name)
	}
	if len(s.Hangings) > 1 {
		return fmt.Sprintf("- For %s: %d decreases in %d hangings, over %s needles in turn.", name, s.Decreases, len(s.Hangings), hangingSizes(s.Hangings))
	}
	if len(s.Pieces) < 2 {
		return fmt.Sprintf("- For %s: %s.", name, mapWords(s.Hangings[0]))
	}
	var parts []string
	for j, p := range s.Pieces {
		parts = append(parts, fmt.Sprintf("piece %d, %s to %s: %s", j+1,
			engine.NeedleName(0, p.Stitches), engine.NeedleName(p.Stitches-1, p.Stitches), mapWords(p.Hang)))
	}
	return fmt.Sprintf("- For %s, %s.", name, strings.Join(parts, ". "))
}

func hangingSizes(hs [][]int) string {
	var n []int
	for _, h := range hs {
		n = append(n, len(h))
	}
	return Counts(n)
}

// mapWords says which needles of a piece carry two.
func mapWords(m []int) string {
	two := 0
	for _, s := range m {
		if s == 2 {
			two++
		}
	}
	switch {
	case two == 0:
		return "one on every needle"
	case two == len(m):
		return "two on every needle"
	case 2*two > len(m):
		return "one only on " + walk(engine.Singles(m), len(m)) + "; two on all the rest"
	}
	return "two on " + walk(m, len(m)) + "; one on all the rest"
}

// onePiece tells from where the whole yoke fits the bed.
func onePiece(stages []engine.Stage, bed int) string {
	from := -1
	for i := len(stages) - 1; i >= 0 && len(stages[i].Pieces) == 1; i-- {
		from = i
	}
	weight := " A wide piece is also heavy: spread the weights and hold the waste yarn as you hang."
	switch {
	case from == 0:
		return fmt.Sprintf("Every stage fits your %d needles in one piece.%s", bed, weight)
	case from < 0:
		return fmt.Sprintf("No stage fits your %d needles in one piece; the pieces are joined by seams.%s", bed, weight)
	case from == len(stages)-1:
		return fmt.Sprintf("Only the neckband fits your %d needles in one piece.%s", bed, weight)
	}
	return fmt.Sprintf("From stage %d on the yoke fits your %d needles in one piece; the pieces before it are joined there.%s", from+1, bed, weight)
}

func stageWarnings(i, n int, s engine.Stage) []string {
	name := "stage " + strconv.Itoa(i+1)
	if i == n {
		name = "the neckband"
	}
	var out []string
	for _, w := range s.Warnings {
		switch w.Code {
		case engine.SteepCut:
			out = append(out, fmt.Sprintf("The cut to %s takes %s %% of the stitches. More than one in three puckers; another stage would share it.", name, trim(100*w.Value.Float(), 0)))
		case engine.SeveralHangings:
			out = append(out, fmt.Sprintf("The cut to %s is more than two on a needle: hang it %s times, with a plain row between.", name, w.Value))
		case engine.BrokenRepeat:
			low := ""
			if w.Lower > 0 {
				low = strconv.Itoa(w.Lower) + " or "
			}
			out = append(out, fmt.Sprintf("The %d stitches of %s break its repeat; %s%d would close it.", s.Count, name, low, w.Higher))
		}
	}
	return out
}

// YokeFault says why a yoke cannot be, and what is nearest.
func (v Voice) YokeFault(err error) string {
	var cuts *engine.CutsError
	var neck *engine.NeckError
	var repeat *engine.RepeatError
	var piece *engine.PieceError
	var height *engine.HeightError
	switch {
	case errors.As(err, &cuts):
		return fmt.Sprintf("That sequence (%s) is published for %d stages, not %d.", MethodName(cuts.Method), cuts.Want, cuts.Have)
	case errors.As(err, &neck):
		return fmt.Sprintf("A neck of %d stitches does not come below these stages: at most %d is reached.", neck.Neck, neck.Most)
	case errors.As(err, &repeat):
		low := ""
		if repeat.Lower > 0 {
			low = strconv.Itoa(repeat.Lower) + " or "
		}
		return fmt.Sprintf("No whole number of repeats of %d fits stage %d: it must lie from %d to %d stitches, and the nearest counts are %s%d. Say a smaller repeat, or another neck.",
			repeat.Repeat, repeat.Stage+1, repeat.Least, repeat.Most, low, repeat.Higher)
	case errors.As(err, &piece):
		return fmt.Sprintf("One repeat of %d in stage %d is wider than your %d needles; a repeat of %d or fewer fits.", piece.Repeat, piece.Stage+1, piece.Bed, piece.Bed-piece.Edge)
	case errors.As(err, &height):
		return fmt.Sprintf("A straight cone needs the height of every stage; stage %d has none. For example: *heights 8 6 4 cm*.", height.Stage+1)
	}
	return "That yoke cannot be planned. For example: *3 stages 240 to 105*."
}

// YokeDepth writes the published depth for a bust beside the rule.
func (v Voice) YokeDepth(bust engine.Num, d engine.YokeDepth) string {
	span := v.Len(d.Low.Float())
	if d.Low.Less(d.High) {
		span += " to " + v.Len(d.High.Float())
	}
	text := fmt.Sprintf("For a bust of %s a round yoke is **%s** deep from the back neck, without the band (two published patterns, morrisandsons.com.au).", v.Len(bust.Float()), span)
	if d.Beyond {
		text += " That bust lies outside their sizes; the nearest size is shown."
	}
	rule := fmt.Sprintf(" The rule of a quarter of the girth gives %s", v.Len(d.Rule.Float()))
	if d.Over.Sign() > 0 {
		return text + rule + fmt.Sprintf(", which is %s too deep here.", v.Len(d.Over.Float()))
	}
	return text + rule + "."
}
