package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// RowCard writes a colour row as it is worked: needles from the centre out.
func (v Voice) RowCard(c engine.RowCard, at engine.Anchor, n, repeat int, balanced bool, cautions []string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "Row of %d stitches: **%d contrast, %d main**. %s\n\n", n, c.Contrast, c.Main, lined(at, n, repeat, balanced))
	b.WriteString("Bring forward, from the centre out:\n")
	b.WriteString("\n- left: " + outward(c.Left, n))
	b.WriteString("\n- right: " + outward(c.Right, n))
	for _, e := range c.Ends {
		fmt.Fprintf(&b, "\n- %s comes out only to catch both yarns at the end", engine.NeedleName(e, n))
	}
	b.WriteString("\n\n" + v.floatLine("contrast", c.LongestContrast) + " " + v.floatLine("main", c.LongestMain) +
		fmt.Sprintf(" Limit here: %s.", Count(c.Limit, "stitch", "stitches")))
	if len(c.Over) > 0 {
		b.WriteString("\n\n" + catchLine(c.Over, n))
	}
	if c.Width.Sign() > 0 {
		fmt.Fprintf(&b, "\n\nYarn for the row, an estimate: main **%s**, contrast **%s**.", v.yarnLength(c.MainYarn.Float()), v.yarnLength(c.ContrastYarn.Float()))
	} else {
		b.WriteString("\n\nTell me the gauge and I will give the floats in cm and the yarn.")
	}
	fmt.Fprintf(&b, " Knit it about %s looser than plain (common practice).", Count(engine.ColourworkNumbers, "dial number", "dial numbers"))
	for _, s := range cautions {
		b.WriteString("\n\n**Caution:** " + s)
	}
	return b.String()
}

// lined says where the repeat lies, and what is left over.
func lined(at engine.Anchor, n, repeat int, balanced bool) string {
	where := "The repeat is centred"
	switch at {
	case engine.FromLeft:
		where = "The repeat begins at the left edge"
	case engine.FromRight:
		where = "The repeat ends at the right edge"
	}
	if balanced {
		where += "; both edges match"
	} else {
		where += "; the edges do not mirror each other"
	}
	if left := n % repeat; left > 0 {
		return fmt.Sprintf("%s (%d repeats of %d and %s).", where, n/repeat, repeat, Count(left, "stitch", "stitches"))
	}
	return fmt.Sprintf("%s (%d repeats of %d).", where, n/repeat, repeat)
}

// yarnLength is metres for a long thread, cm for a short one.
func (v Voice) yarnLength(cm float64) string {
	if cm >= 1000 || v.Unit == "in" && cm >= 500 {
		return v.metres(cm / 100)
	}
	if v.Unit == "in" {
		return v.cut(cm)
	}
	return trim(cm/100, 2) + " m"
}

func (v Voice) floatLine(yarn string, f engine.Float) string {
	if f.Stitches == 0 {
		return fmt.Sprintf("The %s yarn has no float.", yarn)
	}
	s := fmt.Sprintf("Longest float of the %s yarn: **%s", yarn, Count(f.Stitches, "stitch", "stitches"))
	if f.Length.Sign() > 0 {
		s += ", " + v.Len(f.Length.Float())
	}
	return s + "**."
}

// fewCatches is how many floats are told one by one.
const fewCatches = 6

// catchLine names the needles at which long floats are caught.
func catchLine(over []engine.Float, n int) string {
	var cols []int
	for _, f := range over {
		cols = append(cols, f.Catches...)
	}
	what := Count(len(over), "float is", "floats are") + " past the limit: catch "
	if len(over) <= fewCatches {
		var names []string
		for _, c := range cols {
			names = append(names, engine.NeedleName(c, n))
		}
		return what + "at " + strings.Join(names, ", ") + "."
	}
	return what + "at " + NeedleRuns(cols, n) + "."
}

// outward leads along one side's needles from the centre out, as a knitter
// counts: "L1, then every 3rd needle 17 times (to L52)".
func outward(cols []int, n int) string {
	if len(cols) == 0 {
		return "none"
	}
	left := (n + 1) / 2
	far := make([]int, n) // by distance from the centre, 2 for a needle that is out
	for _, c := range cols {
		far[distance(c, left)] = 2
	}
	for i, s := range far {
		if s == 0 {
			far[i] = 1
		}
	}
	name := func(d int) string {
		if cols[0] < left {
			return engine.NeedleName(left-1-d, n)
		}
		return engine.NeedleName(left+d, n)
	}
	at, phrases := engine.Phrases(far)
	out := name(at)
	for _, ph := range phrases {
		var steps []string
		for _, s := range ph.Steps {
			steps = append(steps, stepWord(s))
			at += s * ph.Times
		}
		last := len(steps) - 1
		switch {
		case last == 0 && ph.Steps[0] == 1:
			out += fmt.Sprintf(", then the next %s (to %s)", Count(ph.Times, "needle", "needles"), name(at))
		case last == 0:
			out += fmt.Sprintf(", then every %s needle %s (to %s)", steps[0], times(ph.Times), name(at))
		default:
			out += fmt.Sprintf(", then the %s and the %s in turn %s (to %s)", strings.Join(steps[:last], ", "), steps[last], times(ph.Times), name(at))
		}
	}
	return fmt.Sprintf("%s; %d in all", out, len(cols))
}

// distance is how many needles column c lies from the innermost of its side.
func distance(c, left int) int {
	if c < left {
		return left - 1 - c
	}
	return c - left
}

func stepWord(step int) string {
	if step == 1 {
		return "next"
	}
	return Ordinal(step)
}

// FloatLimit says how long a float may be.
func (v Voice) FloatLimit(stitches int, spec engine.RowSpec, cautions []string) string {
	length := 2.5
	if spec.LimitLength.Sign() > 0 {
		length = spec.LimitLength.Float()
	}
	text := fmt.Sprintf("A float is left alone up to **%s**", v.Len(length))
	if spec.Gauge.Sign() > 0 {
		text += fmt.Sprintf(", **%s** at your gauge", Count(stitches, "stitch", "stitches"))
	} else {
		text += fmt.Sprintf(", about %s", Count(stitches, "stitch", "stitches"))
	}
	text += "; longer ones are caught on the way. Published limits run from 3 to 7 stitches."
	for _, s := range cautions {
		text += "\n\n**Caution:** " + s
	}
	return text
}
