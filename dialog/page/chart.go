package page

import (
	"fmt"
	"slices"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// chart is the colour chart on the page: what it is laid over, and a card for
// each row.
type chart struct {
	Text  string // Markdown; all there is where the chart cannot be laid out
	Cards []card
}

// card is one row of the chart as it is worked, with a box for each time that
// it is knitted.
type card struct {
	Title string
	Boxes []int
	Lines []string
}

// layChart gathers the chart, nil where none was said. v writes for paper.
func layChart(v answer.Voice, p *engine.Plan) *chart {
	c := p.Chart
	if c == nil {
		return nil
	}
	out := &chart{Text: v.Chart(p)}
	if c.Fault != nil {
		out.Text = "The chart is not printed, since it cannot be laid out. " + out.Text
	}
	if c.Cards == nil {
		return out
	}
	for i := range c.Chart {
		out.Cards = append(out.Cards, card{fmt.Sprintf("Row %d", i+1), upTo(c.Times), v.RowCard(p, i)})
	}
	return out
}

// chartReading says how the drawn repeat is read, in both forms of the page.
const chartReading = "two repeats, row 1 is knitted first and lies at the bottom."

// Sizes of the drawn repeat in mm.
const (
	repeatsDrawn = 2
	cellMost     = 6.0
	chartWide    = 160.0
	chartHigh    = 190.0
	chartLeft    = 14.0
)

// chartGrid draws the repeat twice, side by side; "" without a chart that is
// laid out.
func chartGrid(p *engine.Plan) string {
	c := p.Chart
	if c == nil || c.Cards == nil {
		return ""
	}
	rows, cols := len(c.Chart), len(c.Chart[0])*repeatsDrawn
	cell := min(cellMost, chartWide/float64(cols), chartHigh/float64(rows))
	d := draw(chartLeft+cell*float64(cols)+1, cell*float64(rows)+1, "The chart, two repeats side by side; the cards name the needles of each row")
	for i, row := range c.Chart {
		y := cell * float64(rows-1-i)
		for j := range cols {
			class := "mid"
			if row[j%len(row)] {
				class = "square"
			}
			d.path(class, fmt.Sprintf("M%s %s h%s v%s h-%s Z", mm(chartLeft+cell*float64(j)), mm(y+0.5), mm(cell), mm(cell), mm(cell)))
		}
		if cell >= small || (i+1)%5 == 0 {
			d.text(chartLeft-2, y+0.5+cell/2+1.2, small, "end", "", fmt.Sprint(i+1))
		}
	}
	x := chartLeft + cell*float64(len(c.Chart[0]))
	d.line("heavy", x, 0, x, d.height)
	return d.String()
}

// mostBeds is how high in mm the rows over their needles may come, about two
// sheets: more would only say again what the cards say.
const mostBeds = 500.0

// pieceBed is one piece of the row on the bed.
type pieceBed struct {
	Title string // "" where the row is one piece
	Strip []block
}

// chartBeds draws the needles of every row, piece by piece; nil where that
// would fill sheet after sheet.
func chartBeds(p *engine.Plan) []pieceBed {
	c := p.Chart
	if c == nil || c.Cards == nil {
		return nil
	}
	strips := len(c.Pieces) + c.Width/blockNeedles
	if float64(strips)*(bedHigh+laneHigh*float64(len(c.Chart))) > mostBeds {
		return nil
	}
	var out []pieceBed
	for j, piece := range c.Pieces {
		title := ""
		if len(c.Pieces) > 1 {
			title = fmt.Sprintf("Piece %d of %d", j+1, len(c.Pieces))
		}
		out = append(out, pieceBed{title, bed(piece.Stitches, chartLanes(c, j))})
	}
	return out
}

// chartLanes are the rows of piece j, the last knitted on top.
func chartLanes(c *engine.ChartPlan, j int) []lane {
	piece := c.Pieces[j]
	var lanes []lane
	for i := len(c.Chart) - 1; i >= 0; i-- {
		row, card := c.Rows[i][piece.First:piece.First+piece.Stitches], c.Cards[i][j]
		var catches []int
		for _, f := range card.Over {
			catches = append(catches, f.Catches...)
		}
		lanes = append(lanes, lane{name: fmt.Sprintf("row %d", i+1), sign: func(col int) sketch {
			switch {
			case slices.Contains(card.Ends, col):
				return endSign
			case slices.Contains(catches, col):
				return catchSign
			case row[col]:
				return contrastSign
			}
			return nil
		}})
	}
	return lanes
}

// chartLegend explains the signs that the rows use.
func chartLegend(p *engine.Plan) []sign {
	c := p.Chart
	if chartBeds(p) == nil {
		return nil
	}
	keys := []key{{"bring forward: this needle carries the contrast yarn", contrastSign}}
	ends, over := false, false
	for i := range c.Chart {
		for _, card := range c.Cards[i] {
			ends, over = ends || len(card.Ends) > 0, over || len(card.Over) > 0
		}
	}
	if ends {
		keys = append(keys, key{"an end needle, out only to catch both yarns", endSign})
	}
	if over {
		keys = append(keys, key{"catch the long float here", catchSign})
	}
	return legend([]lane{{keys: keys}})
}

// contrastSign is a filled square, as the chart has it.
func contrastSign(d *drawing, x, y float64) {
	d.path("solid", fmt.Sprintf("M%s %s h3.8 v3.8 h-3.8 Z", mm(x-1.9), mm(y-1.9)))
}

// endSign is an open square.
func endSign(d *drawing, x, y float64) {
	d.path("thick", fmt.Sprintf("M%s %s h3.4 v3.4 h-3.4 Z", mm(x-1.7), mm(y-1.7)))
}

// catchSign is a cross.
func catchSign(d *drawing, x, y float64) {
	d.path("thick", fmt.Sprintf("M%s %s l3.4 3.4 m0 -3.4 l-3.4 3.4", mm(x-1.7), mm(y-1.7)))
}
