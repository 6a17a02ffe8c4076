package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog/answer"
)

// A jump names all that it takes as done: 119 stitches of 2x1 have 26 rows, 39
// columns and 59 bumps.
func TestJumpNamesWhatIsPassed(t *testing.T) {
	plan := []string{"cardigan", "29/41", "43 cm", "2x1", "3 cm"}
	tests := []struct {
		lines []string
		want  string
	}{
		{[]string{"I'm on row 9", "skip to the hem"}, "(Taken as done: rows 9 to 26, 39 columns.)"},
		{[]string{"I'm on row 9", "skip to the closing row"}, "rows 9 to 26, 39 columns, 59 bumps.)"},
		{[]string{"I'm on row 9", "skip to the latching"}, "(Rows 9 to 26 taken as knitted.)"},
		{[]string{"start from the hem", "next", "skip to the closing row"}, "(Taken as done: 56 bumps.)"},
		{[]string{"start from the hem", "next", "where am I"}, "The ends and the middle hung: 3 of 59."},
		{[]string{"start from the hem", "next", "I dropped a stitch"}, "hang the hem, the ends and the middle hung."},
	}
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, plan...)
	for _, tt := range tests {
		_, r := say(t, tk, s, tt.lines...)
		require.Contains(t, r.Markdown, tt.want, tt.lines)
		require.LessOrEqual(t, answer.Glance(r.Markdown), 30, tt.lines)
	}
	_, r := say(t, tk, s, "start from the hem", "hem is hung")
	require.NotContains(t, r.Markdown, "bumps", "what was told is not passed over")
}
