package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Lengths and counts asked in passing, worked by hand: an inch is 2.54 cm by its
// definition, the swatch has 28 stitches and 40 rows in 10 cm.
func TestAskedInPassing(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	before := inputs(s)
	for line, want := range map[string]string{
		"what is 42 cm in inches":                "42 cm is **16 1/2 in**, 16.54 in to be exact", // 42 / 2.54 = 16.535
		"how much is 16 1/2 inches in cm":        "16 1/2 in is **41.9 cm**",                     // 41.91
		"how many stitches in 5 cm":              "In 5 cm: **14 stitches**",
		"how many rows per inch":                 "about **10 rows** (10.2)", // 4 * 2.54 = 10.16
		"how many rows in 5 cm":                  "In 5 cm: **20 rows**",
		"how high is the band when unfolded":     "**6.1 cm** high: 26 rows", // twice 3.0475
		"which repeats fit 226":                  "**226 stitches**: repeats of 2 or 113",
		"which repeats fit 149":                  "no repeat fits; 150 would take 2, 3, 5, 6, 10, 15, 25, 30, 50 or 75",
		"is a float of 7 ok":                     "**7 stitches can be left alone**", // 2.5 cm at 2.8 stitches
		"is a float of 8 ok":                     "**8 stitches is too long**",
		"can I decrease evenly from 132":         "27 stitches to lose", // onto the band's 105
		"I have a cardigan with a v neck":        "Other shapes of neck",
		"at dial 6 I get 28 and at dial 4 31 st": "4.84 %", // (1 - 28/31) / 2
	} {
		next, r := tk.Turn(s, line)
		require.Contains(t, r.Markdown, want, line)
		if r.Kind != "change" {
			require.Equal(t, before, inputs(next), line)
		}
	}
}
