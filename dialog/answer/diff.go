package answer

import (
	"fmt"
	"slices"
	"strings"

	"foldrow/engine"
)

// compared are the results that a comparison speaks of, in the order of the
// work; the needles follow from the counts and are named in words.
var compared = [...]engine.Key{
	engine.BandStitches, engine.NeckResult, engine.YokeDecreases, engine.LayerRows, engine.TotalRows,
	engine.DepthResult, engine.FoldClicks, engine.ColumnCount, engine.LoopsToLatch, engine.HemCount,
	engine.SeamWidth, engine.FoldCircumference, engine.RelaxedCircumference, engine.StretchedCircumference, engine.LeanDegrees,
	engine.HeadOpening, engine.HeadMissing, engine.SlitLength, engine.TopRoom, engine.WorkStitches, engine.StitchPitch,
	engine.PickFront, engine.PickBack, engine.PickSleeves, engine.PickTotal, engine.PickDifference, engine.OffYarn, engine.BandYarn, engine.BandYarnGrams,
	engine.FrontStitches, engine.FrontRatio, engine.FrontLength, engine.FrontLayerRows, engine.FrontTotalRows, engine.HolePositions, engine.HoleGaps, engine.HoleDistance,
	engine.HoleRows, engine.HoleLength, engine.OverlapLow, engine.FrontYarn, engine.AllYarn, engine.AllYarnGrams,
	engine.StageCounts, engine.StageDecreases, engine.StageErrors, engine.StagePieces, engine.LargestCut,
	engine.DoubledGap, engine.OnePieceFrom, engine.YokeRowsResult, engine.YokeDepthResult, engine.YokeSlope,
	engine.ChartRows, engine.ChartWidth, engine.ChartContrast, engine.FloatLongest, engine.FloatMost,
	engine.ColourDial, engine.MainYarn, engine.ContrastYarn, engine.MainGrams, engine.ContrastGrams,
}

// Differences is a table of the results that differ between two plans, before
// and after, with what it means at the machine; "" where nothing does.
func (v Voice) Differences(before, after *engine.Plan) string {
	rows := v.differing(before, after, func(label, was, is string) string {
		return "| " + label + " | " + was + " | " + is + " |"
	})
	var parts []string
	if len(rows) > 0 {
		parts = append(parts, "| | before | after |\n| --- | --- | --- |\n"+strings.Join(rows, "\n"))
	}
	if words := v.atTheMachine(before, after); words != "" {
		parts = append(parts, words)
	}
	if y := after.Yoke; y != nil && y.Fault != nil {
		parts = append(parts, v.YokeFault(y))
	}
	for _, c := range NewCautions(v.Cautions(before), v.Cautions(after)) {
		parts = append(parts, "**Caution:** "+c)
	}
	return strings.Join(parts, "\n\n")
}

// differing writes each result that differs: its name, before and after.
func (v Voice) differing(before, after *engine.Plan, row func(label, was, is string) string) []string {
	var out []string
	for _, k := range compared {
		if sameFigure(before, after, k) {
			continue
		}
		b, a := v.result(before, k), v.result(after, k)
		if a == b || b == "" && idle(after, k) {
			continue
		}
		label := v.Label(k)
		out = append(out, row(label, dash(Under(label, b)), dash(Under(label, a))))
	}
	return out
}

// idle reports a result that says nothing while it is 0: nothing is missing
// for the head, and no slit is wanted.
func idle(p *engine.Plan, k engine.Key) bool {
	f, _ := p.Float(k)
	return (k == engine.HeadMissing || k == engine.SlitLength) && f == 0
}

// sameFigure reports whether k is the same number in both plans, or in neither:
// most are, and need not be written to be compared.
func sameFigure(before, after *engine.Plan, k engine.Key) bool {
	b, _ := before.Value(k)
	a, _ := after.Value(k)
	switch a.(type) {
	case nil, int, float64:
		return a == b
	}
	return false
}

// mostFurther is how many numbers one more step of a what-if names.
const mostFurther = 3

// Further says what the last step of a what-if changes: the first few results
// that differ from the what-if before it.
func (v Voice) Further(before, after *engine.Plan) string {
	parts := v.differing(before, after, func(label, was, is string) string {
		switch "-" {
		case was:
			return label + " now " + is
		case is:
			return "no " + label
		}
		return label + " " + was + " to " + is
	})
	switch words := v.atTheMachine(before, after); {
	case len(parts) == 0 && words != "":
		return "This step changes no number. " + words + "\n\nAll together, against the plan:"
	case len(parts) == 0:
		return "This step changes no further number."
	case len(parts) > mostFurther:
		parts = append(parts[:mostFurther], "and more")
	}
	return "This step: " + strings.Join(parts, "; ") + ". All together, against the plan:"
}

func dash(s string) string {
	if s == "" {
		return "-"
	}
	return s
}

// NewCautions is the cautions after a change that were not there before it.
func NewCautions(before, after []string) []string {
	var out []string
	for _, a := range after {
		old := false
		for _, b := range before {
			old = old || a == b
		}
		if !old {
			out = append(out, a)
		}
	}
	return out
}

// sameDial reports whether two rows are knitted alike.
func sameDial(a, b engine.TensionRow) bool {
	if a.Dial == nil || b.Dial == nil {
		return a.Clicks == b.Clicks && a.Dial == b.Dial
	}
	return a.Clicks == b.Clicks && *a.Dial == *b.Dial
}

// gradingWords is the dial plan, whose rows are given, in a few words; every
// row is shown on request.
func gradingWords(p *engine.Plan, rows []engine.TensionRow) string {
	every := p.In.Int(engine.RowsPerClick)
	fold := ""
	if p.FoldRow > 0 && p.LayerRows > 0 {
		fold = fmt.Sprintf("; the fold, row %d, at %s", p.LayerRows+1, dialText(rows[p.LayerRows]))
	}
	if every == 0 || p.LayerRows == 0 || sameDial(rows[0], rows[p.LayerRows-1]) {
		return "all rows at " + dialText(rows[0]) + fold
	}
	at, held := p.LayerRows, ""
	for at > 1 && sameDial(rows[at-2], rows[p.LayerRows-1]) {
		at--
	}
	if p.LayerRows-at < every { // the last click as any other
		at = p.LayerRows
	} else {
		held = fmt.Sprintf(", held to row %d", p.LayerRows)
	}
	words := fmt.Sprintf("a click tighter every %s, from %s to %s at row %d%s", Count(every, "row", "rows"),
		dialText(rows[0]), dialText(rows[p.LayerRows-1]), at, held)
	if p.Doubled {
		words += ", then back the same way"
	}
	return words + fold
}

// Changed names the inputs that differ between two sets of answers, with what
// they go back to.
func (v Voice) Changed(from *engine.Plan, was, now engine.Inputs) string {
	var parts []string
	after := engine.Solve(v.Book.Filled(now))
	for _, k := range engine.InputKeys() {
		if was.Same(now, k) {
			continue
		}
		old := v.Value(from, k)
		switch {
		case !now.Has(k) && v.ofPart(k) && v.Value(after, k) == "":
			parts = append(parts, v.Label(k)+" "+old)
		case !now.Has(k) && v.Value(after, k) == "":
			parts = append(parts, v.Label(k)+" "+old+", now open again")
		case v.Value(after, k) == "":
			parts = append(parts, v.Label(k))
		case !now.Has(k) && v.Value(after, k) == old:
			parts = append(parts, v.Label(k)+" "+old+", the default again")
		default:
			parts = append(parts, v.Label(k)+" is "+v.Value(after, k)+" again")
		}
	}
	return strings.Join(parts, "; ")
}

// ofPart reports whether k belongs to the work around the band, which no
// question asks for.
func (v Voice) ofPart(k engine.Key) bool {
	card, ok := v.Book.Key(k)
	return ok && card.Part != ""
}

// Side is one choice of a comparison: what it is called, the plan, and what
// it is good for.
type Side struct {
	Name string
	Plan *engine.Plan
	Good string
	// Brings are inputs that come with the choice, shown also where they agree.
	Brings []engine.Key
}

// gradings is the row of a comparison that tells the dial, "" where all sides
// are knitted alike.
func gradings(sides []Side) string {
	row, differ := "| on the dial |", false
	for _, s := range sides {
		words, rows := "", s.Plan.Tension()
		if len(rows) > 0 {
			words = gradingWords(s.Plan, rows)
		}
		differ = differ || len(s.Plan.Tension()) > 0 && !slices.EqualFunc(sides[0].Plan.Tension(), rows, sameDial)
		row += " " + dash(words) + " |"
	}
	if !differ {
		return ""
	}
	return row
}

// ownCautions are those of s that not every side has in the same words.
func (v Voice) ownCautions(s Side, sides []Side) []string {
	var own []string
	for _, w := range v.Cautions(s.Plan) {
		if slices.ContainsFunc(sides, func(o Side) bool { return !slices.Contains(v.Cautions(o.Plan), w) }) {
			own = append(own, w)
		}
	}
	return own
}

// Compare sets choices side by side: only the rows in which they differ.
func (v Voice) Compare(sides []Side) string {
	head, rule := "| |", "| --- |"
	for _, s := range sides {
		head += " " + s.Name + " |"
		rule += " --- |"
	}
	rows := []string{head, rule}
	brings := sides[len(sides)-1].Brings
	for i, k := range append(slices.Clone(brings), compared[:]...) {
		row, differ := "| "+v.Label(k)+" |", false
		for _, s := range sides {
			val := v.bareValue(s.Plan, k)
			differ = differ || val != v.bareValue(sides[0].Plan, k)
			row += " " + dash(val) + " |"
		}
		if differ || i < len(brings) && v.bareValue(sides[0].Plan, k) != "" {
			rows = append(rows, row)
		}
	}
	if dial := gradings(sides); dial != "" {
		rows = append(rows, dial)
	}
	text := strings.Join(rows, "\n")
	if len(rows) == 2 {
		text = "No number of the plan differs between them."
	}
	for _, s := range sides {
		for _, w := range v.ownCautions(s, sides) {
			text += "\n\n**" + s.Name + ":** " + w
		}
		if s.Good != "" {
			text += "\n\n**" + s.Name + ":** " + strings.TrimSuffix(s.Good, ".") + "."
		}
	}
	return text
}
