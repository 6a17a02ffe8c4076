package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Sums for who reads inches are in her own figures, and what is shown adds up.
func TestSumsInInches(t *testing.T) {
	tests := []struct {
		lines []string
		want  string
		not   string
	}{
		// 16.5 * 7 + 2 = 117.5; 2x1 closes on 116 and 119, the tie goes up.
		{[]string{"pullover", "7 stitches and 10 rows to the inch", "16 1/2 in", "2x1", "1 1/4 in", "why 119"}, "`16.5 * 7 + 2 * 1 = 117.5 -> 119`", "tkga"},
		{[]string{"pullover", "7 stitches and 10 rows to the inch", "16 1/2 in", "2x2", "1 1/4 in", "why 118"}, "`16.5 * 7 + 2 * 1 = 117.5 -> 118`", "41.91"},
		{[]string{"pullover", "28/40", "42 cm", "2x2", "3 cm", "why the band stitches"}, "tkga.org", "knittinghelp.com, thread 58695; 2x2"},
		// 9 and 7/8 are the 9 7/8 that are offered; 2 cm alone would be 3/4.
		{[]string{"cardigan", "7 stitches and 10 rows to the inch", "for a 6 month old baby"}, "a base of about **9 in**, reckoned at 1.11 of the neck halfway up, and 7/8 in ease, make 9 7/8 in", "3/4 in ease"},
	}
	for _, tt := range tests {
		tk := talk(t)
		s, _ := tk.Begin()
		_, r := say(t, tk, s, tt.lines...)
		require.Contains(t, r.Markdown, tt.want, tt.lines)
		require.NotContains(t, r.Markdown, tt.not, tt.lines)
	}
}

// A supposition before the five answers says what is known by then and promises
// nothing: 39 cm at 28 in 10 cm and 2 are 111.2, so 110 in 2x2, (110-2)/2.8 + 3.
func TestSupposedEarly(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "cardigan", "28/40", "42 cm", "1x1", "what if 2x2")
	require.Contains(t, r.Markdown, "That would give 110 stitches, neck 41.6 cm.")
	require.Equal(t, "1x1", r.Facts().Inputs["rib"].(string)[:3])
	_, r = say(t, tk, s, "3 cm")
	require.Contains(t, r.Markdown, "**111 stitches**")
}
