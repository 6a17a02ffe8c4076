package dialog

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A what-if over band, yoke, chart and fronts shows the band's own rows, says
// how many more there are, and keeps what stands under the table.
func TestALongTableSaysHowMuchIsLeft(t *testing.T) {
	table := func(rows int) string {
		text := "| | before | after |\n| --- | --- | --- |"
		for i := range rows {
			text += fmt.Sprintf("\n| number %d | 1 | 2 |", i)
		}
		return text + "\n\nAt the machine: needles L59 to R59."
	}
	require.Equal(t, table(mostTogether), foremost(table(mostTogether)), "few enough")
	got := foremost(table(24))
	require.Equal(t, mostRows, strings.Count(got, "\n| number"))
	require.Contains(t, got, fmt.Sprintf("| number %d | 1 | 2 |\n\n12 more numbers differ: *show the differences* lists all.\n\nAt the machine", mostRows-1))
	require.Equal(t, "Nothing in the plan changes.", foremost("Nothing in the plan changes."))
}
