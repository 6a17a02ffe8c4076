package answer

import (
	"errors"
	"fmt"
	"strings"

	"foldrow/engine"
)

// Chart writes a colour chart as planned: what it is laid over, its rows in
// short, floats and yarn, where its repeats lie. It is "" where none was said.
func (v Voice) Chart(p *engine.Plan) string {
	c := p.Chart
	switch {
	case c == nil:
		return ""
	case c.Width == 0:
		if v.Paper {
			return "The chart is not laid out here: over how many stitches it runs is not known."
		}
		return "Over how many stitches does the chart run? For example: *chart over 105 stitches*, or plan the yoke and it takes its last stage."
	case c.Fault != nil:
		return v.chartFault(c)
	}
	var b strings.Builder
	fmt.Fprintf(&b, "Chart of %s, repeat %d, over **%d stitches**%s. %s\n\n", Count(len(c.Chart), "row", "rows"), len(c.Chart[0]), c.Width, chartOver(c), chartLies(c))
	b.WriteString(v.chartTable(c))
	b.WriteString("\n")
	floats, caution, _ := strings.Cut(v.chartFloats(c), "\n\n")
	for _, s := range []string{floats, v.chartYarn(p), v.ChartDial(p), ChartToBand(c)} {
		if s != "" {
			b.WriteString("\n- " + s)
		}
	}
	if caution != "" {
		b.WriteString("\n\n" + caution)
	}
	b.WriteString(v.hint("\n\nMore: *card for row 1*, *draw the chart*, *start the chart* to walk its rows."))
	return b.String()
}

func chartOver(c *engine.ChartPlan) string {
	s := ""
	if c.Stage > 0 {
		s = fmt.Sprintf(", stage %d", c.Stage)
	}
	if c.Times > 1 {
		s += fmt.Sprintf(", knitted %s", times(c.Times))
	}
	if len(c.Pieces) > 1 {
		s += fmt.Sprintf(", in %d pieces", len(c.Pieces))
	}
	return s
}

// chartLies says where the repeat lies and what the edges do.
func chartLies(c *engine.ChartPlan) string {
	repeat := len(c.Chart[0])
	where := map[engine.Place]string{
		engine.PlaceBalanced: "The edges are balanced where they can be", engine.PlaceMiddle: "The middle of a repeat is at the centre",
		engine.PlaceBetween: "The join of two repeats is at the centre", engine.PlaceLeft: "A whole repeat begins at the left edge",
		engine.PlaceRight: "A whole repeat ends at the right edge",
	}[c.Place]
	switch c.Mirror {
	case len(c.Chart):
		where += "; both edges match"
	case 0:
		where += "; the edges do not mirror each other"
	default:
		where += fmt.Sprintf("; the edges match in %d of %d rows", c.Mirror, len(c.Chart))
	}
	where += fmt.Sprintf(" (%s of %d", Count(c.Width/repeat, "repeat", "repeats"), repeat)
	if left := c.Width % repeat; left > 0 {
		where += " and " + Count(left, "stitch", "stitches")
	}
	return where + ")."
}

// chartTable is a line for each row of the chart, the first knitted first.
func (v Voice) chartTable(c *engine.ChartPlan) string {
	var b strings.Builder
	b.WriteString("| row | repeat | contrast | main | longest floats |")
	yarn := c.MainCm != nil
	if yarn {
		b.WriteString(" contrast yarn | main yarn |\n|---|---")
	} else {
		b.WriteString("\n")
	}
	b.WriteString("|---|---|---|---|---|")
	for i := range c.Chart {
		main, contrast, fm, fc := 0, 0, 0, 0
		for _, card := range c.Cards[i] {
			main, contrast = main+card.Main, contrast+card.Contrast
			fm, fc = max(fm, card.LongestMain.Stitches), max(fc, card.LongestContrast.Stitches)
		}
		fmt.Fprintf(&b, "\n| %d | %s | %d | %d | contrast %s; main %s |", i+1, signs(c.Chart[i]), contrast, main, over(fc, c.Limit), over(fm, c.Limit))
		if yarn {
			fmt.Fprintf(&b, " %s | %s |", v.yarnLength(c.ContrastCm[i].Float()), v.yarnLength(c.MainCm[i].Float()))
		}
	}
	return b.String()
}

// signs is a row as it was said.
func signs(row []bool) string {
	b := make([]byte, len(row))
	for i, contrast := range row {
		if b[i] = '.'; contrast {
			b[i] = 'x'
		}
	}
	return "`" + string(b) + "`"
}

// over marks a float past the limit.
func over(stitches, limit int) string {
	if stitches > limit {
		return fmt.Sprintf("%d, catch", stitches)
	}
	return fmt.Sprint(stitches)
}

// Floats is the longest float of either yarn in the chart, and the limit.
func (v Voice) Floats(p *engine.Plan) string { return v.chartFloats(p.Chart) }

func (v Voice) chartFloats(c *engine.ChartPlan) string {
	text := v.floatLine("contrast", c.LongestContrast) + " " + v.floatLine("main", c.Longest) +
		fmt.Sprintf(" Limit here: %s.", Count(c.Limit, "stitch", "stitches"))
	if c.LongestFloat().Stitches > c.Limit {
		text += " Longer ones are caught: the card of the row names the needles."
		if card, ok := v.Book.Card("cautions", "loose-floats"); ok {
			text += "\n\n**Caution:** " + card.Text
		}
	}
	return text
}

// chartYarn is the yarn of the whole stage by colour.
func (v Voice) chartYarn(p *engine.Plan) string {
	c := p.Chart
	if c.MainCm == nil {
		return v.hint("Tell me the gauge and I will give the floats in cm and the yarn.")
	}
	what := "its rows"
	if c.Plain > 0 {
		what = fmt.Sprintf("the stage, %s after the chart counted", Count(c.Plain, "plain row", "plain rows"))
	}
	text := fmt.Sprintf("Yarn for %s, an estimate: contrast **%s**, main **%s**", what, v.metres(c.ContrastAll.Float()/100), v.metres(c.MainAll.Float()/100))
	g1, ok := p.Float(engine.ContrastGrams)
	g2, _ := p.Float(engine.MainGrams)
	if ok {
		return text + fmt.Sprintf(" (%s g and %s g, taking both yarns as equally thick).", trim(g1, 1), trim(g2, 1))
	}
	return text + "." + v.hint(" Say the metres in 100 g for grams.")
}

// WalkDial is the same for a row card at the machine.
func (v Voice) WalkDial(p *engine.Plan) string {
	if d, ok := p.Float(engine.ColourDial); ok {
		return "Dial " + trim(d, 2) + " for two-colour rows."
	}
	return "Dial one number looser than plain."
}

// ChartDial is the dial for two-colour rows.
func (v Voice) ChartDial(p *engine.Plan) string {
	if d, ok := p.Float(engine.ColourDial); ok {
		return fmt.Sprintf("Two-colour rows at dial **%s**, one number looser than your %s; turn back to %s for plain rows (common practice).", trim(d, 2), trim(d-1, 2), trim(d-1, 2))
	}
	return "Knit two-colour rows about one dial number looser than plain (common practice)" + v.hint("; say *main tension 5* and I name it") + "."
}

// ChartToBand says how the last row goes over into the neckband.
func ChartToBand(c *engine.ChartPlan) string {
	last := c.Cards[len(c.Cards)-1]
	contrast := 0
	for _, card := range last {
		contrast += card.Contrast
	}
	if contrast == 0 {
		return "The last row is plain main, so the next plain rows and the neckband follow without a jump."
	}
	return fmt.Sprintf("The last row leaves %s on the needles: knit a plain row in main before the next hanging or the neckband, with the dial back, and the pattern closes without a jump.", Count(contrast, "contrast loop", "contrast loops"))
}

func (v Voice) chartFault(c *engine.ChartPlan) string {
	var wide *engine.WideError
	var piece *engine.PieceError
	switch {
	case errors.As(c.Fault, &wide):
		return fmt.Sprintf("One repeat is %d stitches, more than the %d of the row. The least that works is %d.", wide.Repeat, wide.Width, wide.Repeat)
	case errors.As(c.Fault, &piece):
		return fmt.Sprintf("One repeat of %d stitches is wider than your %d needles; a repeat of %d or fewer fits.", piece.Repeat, piece.Bed, piece.Bed-piece.Edge)
	}
	return "That chart cannot be laid out."
}

// ChartChoice asks where the repeat is to lie, where that is open; "" where
// it is not.
func ChartChoice(c *engine.ChartPlan) string {
	if c == nil || !c.Choice {
		return ""
	}
	return "How the repeat meets the edges is yours to choose: *middle at the centre*, *join at the centre*, *repeat from the left* or *repeat from the right*; until then they are balanced."
}
