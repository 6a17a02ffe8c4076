package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// RowCard is the card of row i, from 0, as it is worked: a line for each thing
// to do, the needles from the centre out.
func (v Voice) RowCard(p *engine.Plan, i int) []string {
	c := p.Chart
	var out []string
	for j, card := range c.Cards[i] {
		lead, n := "", c.Pieces[j].Stitches
		if len(c.Pieces) > 1 {
			lead = fmt.Sprintf("Piece %d (%s to %s). ", j+1, engine.NeedleName(0, n), engine.NeedleName(n-1, n))
		}
		if card.Contrast == 0 {
			out = append(out, lead+"Plain: all main, no needle forward.")
			continue
		}
		out = append(out, lead+"Left, out from the centre: "+outward(card.Left, n)+".", "Right: "+outward(card.Right, n)+".")
		count := fmt.Sprintf("%d contrast, %d main", card.Contrast, card.Main)
		if card.LongestContrast.Stitches+card.LongestMain.Stitches > 0 {
			count += "; longest floats " + v.shortFloat("contrast", card.LongestContrast) + ", " + v.shortFloat("main", card.LongestMain) + fmt.Sprintf(" (limit %d)", c.Limit)
		}
		out = append(out, count+".")
		if len(card.Ends) > 0 {
			out = append(out, endLine(card.Ends, n))
		}
		if len(card.Over) > 0 {
			out = append(out, catchLine(card.Over, n))
		}
	}
	return out
}

func (v Voice) shortFloat(yarn string, f engine.Float) string {
	if f.Stitches == 0 {
		return yarn + " none"
	}
	s := fmt.Sprintf("%s %d", yarn, f.Stitches)
	if f.Length.Sign() > 0 {
		s += ", " + v.Len(f.Length.Float())
	}
	return s
}

// endLine names the end needles that come out only to catch both yarns.
func endLine(ends []int, n int) string {
	var names []string
	for _, e := range ends {
		names = append(names, engine.NeedleName(e, n))
	}
	if len(names) == 1 {
		return names[0] + " comes out only to catch both yarns at the end."
	}
	return strings.Join(names, " and ") + " come out only to catch both yarns at the ends."
}

// CardText is the card of row i as an answer of its own, with yarn and dial.
func (v Voice) CardText(p *engine.Plan, i int) string {
	c := p.Chart
	text := fmt.Sprintf("**Row %d of %d:** %s\n\n- %s", i+1, len(c.Rows), signs(c.Chart[i%len(c.Chart)]), strings.Join(v.RowCard(p, i), "\n- "))
	if c.MainCm != nil {
		text += fmt.Sprintf("\n- Yarn for the row, an estimate: contrast %s, main %s.", v.yarnLength(c.ContrastCm[i].Float()), v.yarnLength(c.MainCm[i].Float()))
	}
	text += "\n- " + v.ChartDial(p)
	for _, card := range c.Cards[i] {
		if len(card.Over) > 0 {
			if k, ok := v.Book.Card("cautions", "loose-floats"); ok {
				text += "\n\n**Caution:** " + k.Text
			}
			break
		}
	}
	return text
}

// ChartRowsText says the rows that ChartPicture draws, each by its repeat, for
// whoever hears the page or cannot see the picture.
func ChartRowsText(p *engine.Plan) string {
	var rows []string
	for i, r := range p.Chart.Chart {
		rows = append(rows, fmt.Sprintf("row %d is %s again and again", i+1, signs(r)))
	}
	return upper(strings.Join(rows, ", ")) + ", balanced at the edges. *Card for row 1* names its needles."
}

// ChartPicture draws the rows over their needles, the last knitted on top, and
// marks the floats past the limit.
func ChartPicture(p *engine.Plan) string {
	c := p.Chart
	var out strings.Builder
	used := map[byte]bool{}
	for j, piece := range c.Pieces {
		var lanes []lane
		for i := len(c.Chart) - 1; i >= 0; i-- {
			signs := chartSigns(c.Rows[i][piece.First:piece.First+piece.Stitches], c.Cards[i][j])
			for _, s := range signs {
				used[s] = true
			}
			lanes = append(lanes, lane{name: fmt.Sprintf("row%d", i+1), each: signs})
		}
		lines := bed(piece.Stitches, lanes)
		if lines == nil {
			return ""
		}
		if len(c.Pieces) > 1 {
			fmt.Fprintf(&out, "Piece %d:\n\n", j+1)
		}
		out.WriteString(picture(bedLabel, "x~cbX", lines) + "\n")
	}
	return out.String() + legend("Row 1 is knitted first. x contrast, . main"+chartLegend(used)+". Figures are the needles' last ones; the bar is the centre.")
}

// chartLegend explains the signs beyond the two colours that a picture has.
func chartLegend(used map[byte]bool) string {
	text := ""
	for _, s := range []struct {
		sign byte
		says string
	}{
		{'~', "; ~ main stitches passed by a contrast float over the limit"}, {'X', "; X contrast stitches passed by a main one"},
		{'c', "; c where it is caught"}, {'b', "; b an end needle out for both yarns"},
	} {
		if used[s.sign] {
			text += s.says
		}
	}
	return text
}

func chartSigns(row []bool, card engine.RowCard) []byte {
	b := make([]byte, len(row))
	for i, contrast := range row {
		if b[i] = '.'; contrast {
			b[i] = 'x'
		}
	}
	for _, f := range card.Over {
		for col := f.First; col < f.First+f.Stitches; col++ {
			if b[col] = 'X'; f.Contrast {
				b[col] = '~'
			}
		}
		for _, col := range f.Catches {
			b[col] = 'c'
		}
	}
	for _, col := range card.Ends {
		b[col] = 'b'
	}
	return b
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
			next := Count(ph.Times, "needle", "needles")
			if ph.Times == 1 {
				next = "needle"
			}
			out += fmt.Sprintf(", then the next %s (to %s)", next, name(at))
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
