package dialog

import (
	"fmt"
	"slices"
	"strings"

	"foldrow/engine"
)

// chartNeedle says whether the needle asked about comes forward in the row of
// the chart that is knitted now, in every piece of it.
func (c *turn) chartNeedle(p *engine.Plan) string {
	row := c.s.Making.Chart
	if p.Chart == nil || row < 1 || row > len(p.Chart.Cards) {
		return c.notYet([]engine.Key{engine.ChartNeedles})
	}
	c.rowFacts(p, row-1)
	var parts []string
	for i, piece := range p.Chart.Pieces {
		text := needleInRow(p.Chart.Cards[row-1][i], c.m.Needle, piece.Stitches, row)
		if len(p.Chart.Pieces) > 1 {
			text = fmt.Sprintf("Piece %d: %s", i+1, text)
		}
		parts = append(parts, text)
	}
	return strings.Join(parts, "\n\n")
}

// needleInRow is what a needle does in a row of so many stitches.
func needleInRow(card engine.RowCard, needle string, stitches, row int) string {
	at, ok := engine.NeedleColumn(needle, stitches)
	switch {
	case !ok:
		return fmt.Sprintf("%s is not in work: the row runs from %s to %s.", needle, engine.NeedleName(0, stitches), engine.NeedleName(stitches-1, stitches))
	case slices.Contains(card.Ends, at):
		return fmt.Sprintf("**Yes**, %s comes forward in row %d, to catch both yarns at the end.", needle, row)
	case slices.Contains(card.Left, at) || slices.Contains(card.Right, at):
		return fmt.Sprintf("**Yes**, %s comes forward in row %d: contrast.", needle, row)
	}
	return fmt.Sprintf("**No**, %s stays back in row %d: main.", needle, row)
}
