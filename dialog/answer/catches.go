package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// Catches names the needles at which floats past the limit are caught, by
// row, or says that there are none. Each row of the chart is told once.
func (v Voice) Catches(p *engine.Plan) string {
	c := p.Chart
	var rows []string
	for i := range c.Chart {
		for j, card := range c.Cards[i] {
			if len(card.Over) == 0 {
				continue
			}
			piece := ""
			if len(c.Pieces) > 1 {
				piece = fmt.Sprintf(", piece %d", j+1)
			}
			rows = append(rows, fmt.Sprintf("- Row %d%s: %s", i+1, piece, catchLine(card.Over, c.Pieces[j].Stitches)))
		}
	}
	limit := "the limit of " + Count(c.Limit, "stitch", "stitches")
	if len(rows) == 0 {
		return fmt.Sprintf("**None**: no float of this chart passes %s; the longest is %d.", limit, c.LongestFloat().Stitches)
	}
	text := "Floats past " + limit + ", lifted onto these needles before the next row:\n\n" + strings.Join(rows, "\n")
	if card, ok := v.Book.Card("cautions", "loose-floats"); ok {
		text += "\n\n**Caution:** " + card.Text
	}
	return text
}

// ChartNeedles names the needles to bring forward, by row.
func (v Voice) ChartNeedles(p *engine.Plan) string {
	var rows []string
	for i := range p.Chart.Chart {
		rows = append(rows, fmt.Sprintf("**Row %d**\n\n- %s", i+1, strings.Join(v.RowCard(p, i), "\n- ")))
	}
	return strings.Join(rows, "\n\n")
}
