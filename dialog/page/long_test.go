package page

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/engine"
)

// TestLongChartsStayShort: a chart of many rows, or over many needles, is told
// by its cards alone, and the page says so.
func TestLongChartsStayShort(t *testing.T) {
	short := map[engine.Key]string{"chart": "x..x../.xx...", "chart_stitches": "144"}
	rows := map[engine.Key]string{"chart": strings.Repeat("x..x../.xx.../", 10) + "......", "chart_stitches": "144"}
	wide := map[engine.Key]string{"chart": "x..x../.xx...", "chart_stitches": "700"}
	for _, tt := range []struct {
		said  map[engine.Key]string
		drawn bool
	}{{short, true}, {rows, false}, {wide, false}} {
		v, p, said := samples[0].with(tt.said).solve(t)
		require.Equal(t, tt.drawn, len(chartBeds(p)) > 0)
		page, err := HTML(v, p, said, Notes{})
		require.NoError(t, err)
		require.Equal(t, !tt.drawn, strings.Contains(page, "not drawn over their needles"))
		require.Equal(t, len(p.Chart.Chart), strings.Count(page, `class="card"`))
	}
}
