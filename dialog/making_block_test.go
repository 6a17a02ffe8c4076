package dialog_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// What is made rules some changes out: the reply says why, changes nothing,
// and what it offers instead is possible.
func TestBlockedByMaking(t *testing.T) {
	plan := []string{"cardigan", "28 stitches and 40 rows in 10 cm", "40 cm", "1x1", "11 rows a layer", "main tension 5", "start knitting"}
	single := []string{"pullover", "24 stitches and 32 rows in 10 cm", "44 cm", "2x2", "8 rows a layer", "single layer", "start knitting"}
	tests := []struct {
		name     string
		plan     []string
		at, said string
		blocked  bool
		why      string // in the reply where it is blocked
	}{
		{"neck before hanging", plan, "next", "neck 44 cm", false, ""},
		{"rib before hanging", plan, "next", "2x2", false, ""},
		{"neck once hung", plan, "start from the outer layer", "neck 44 cm", true, "105 stitches hang on the needles"},
		{"neck that keeps the count", plan, "I'm on row 4", "neck 39.9 cm", false, ""},
		{"gauge once hung", plan, "I'm on row 4", "27 stitches in 10 cm", true, "105 stitches hang"},
		{"garment once hung", plan, "I'm on row 4", "make it a pullover", true, "105 stitches hang"},
		{"edge stitches that move the count", plan, "I'm on row 4", "4 edge stitches", false, ""},
		{"rib that does not close", plan, "I'm on row 4", "2x2", true, "*3x1*"},
		{"rib that closes, before latching", plan, "start from the latching", "3x1", false, ""},
		{"rib once latching began", plan, "latched up to L40", "3x1", true, "being latched"},
		{"rib once hem is hung", plan, "start from the closing row", "3x1", true, "columns"},
		{"more rows before the fold", plan, "I'm on row 8", "14 rows a layer", false, ""},
		{"depth before the fold", plan, "row 11 done", "depth 4 cm", false, ""},
		{"fewer rows than knitted", plan, "I'm on row 8", "6 rows a layer", true, "7 rows are knitted"},
		{"just the rows knitted", plan, "I'm on row 8", "7 rows a layer", false, ""},
		{"rows after the fold", plan, "row 12 done", "14 rows a layer", true, "outer layer is knitted with 11 rows"},
		{"depth after the fold", plan, "row 12 done", "depth 4 cm", true, "outer layer is knitted"},
		{"row gauge where rows were said", plan, "row 12 done", "44 rows in 10 cm", false, ""},
		{"grading of knitted rows", plan, "I'm on row 8", "3 rows a click", true, "Row 3 is knitted at dial 4.5"},
		{"grading of rows to come", plan, "I'm on row 3", "no grading", false, ""},
		{"fold row before the fold", plan, "I'm on row 8", "fold row 3 clicks looser", false, ""},
		{"fold row after the fold", plan, "row 12 done", "fold row 3 clicks looser", true, "fold is behind you"},
		{"single before the fold", plan, "I'm on row 8", "single layer", false, ""},
		{"single after the fold", plan, "row 12 done", "single layer", true, "stays doubled"},
		{"hem before hanging", plan, "start from the hem", "hang every bump", false, ""},
		{"hem once bumps hang", plan, "hung the hem up to L40", "hang every bump", true, "Bumps hang already"},
		{"hem once hung", plan, "start from the closing row", "hang every bump", true, "hem is hung"},
		{"yarn at any time", plan, "start from the closing row", "40 g of yarn left", false, ""},
		{"what-if as well", plan, "row 12 done", "what if it is 4 cm deep", true, "outer layer is knitted"},
		{"neck once sewn off", plan, "start from the check", "neck 44 cm", true, "The neckband is sewn off"},
		{"rib once sewn off", plan, "start from the check", "2x2", true, "The neckband is sewn off"},
		{"single: rows until latching", single, "start from the latching", "10 rows a layer", false, ""},
		{"single: rows once latching", single, "latched up to L20", "10 rows a layer", true, "layer is knitted with 8 rows"},
		{"single: a second layer in time", single, "I'm on row 5", "double layer", false, ""},
		{"single: a second layer too late", single, "start from sewing off", "double layer", true, "single layer is being finished"},
	}
	tk := talk(t)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, _ := tk.Begin()
			s, r := say(t, tk, s, append(append([]string(nil), tt.plan...), tt.at)...)
			require.Equal(t, "step", r.Kind, r.Markdown)
			after, r := tk.Turn(s, tt.said)
			if !tt.blocked {
				require.NotEqual(t, "unclear", r.Kind, r.Markdown)
				require.NotEmpty(t, r.Changes, r.Markdown)
				return
			}
			require.Equal(t, "unclear", r.Kind, r.Markdown)
			require.Empty(t, r.Changes)
			require.Contains(t, r.Markdown, tt.why)
			require.Contains(t, r.Markdown, "Nothing has changed.")
			require.Equal(t, s.Said, after.Said)
			require.False(t, after.OnTable)
			require.Equal(t, s.Making, after.Making)
		})
	}
}

// A what-if that was possible is taken off the table when the knitting
// overtakes it.
func TestWhatIfOvertaken(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "cardigan", "28 stitches and 40 rows in 10 cm", "40 cm", "1x1", "11 rows a layer", "start knitting", "I'm on row 8", "what if it is 14 rows a layer")
	require.Equal(t, "whatif", r.Kind)
	require.Contains(t, r.Markdown, "So far 7 rows of 22 are knitted")
	s, r = say(t, tk, s, "done 2 rows")
	require.True(t, s.OnTable)
	s, r = say(t, tk, s, "done 5 rows")
	require.False(t, s.OnTable)
	require.Contains(t, r.Markdown, "off the table")
}

// A band that is sewn off stays; what would have been otherwise is shown all the
// same, and not laid on the table.
func TestWhatIfSewnOff(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, "cardigan", "28 stitches and 40 rows in 10 cm", "40 cm", "1x1", "11 rows a layer", "the front edge is 52 cm", "start the front band")
	for _, line := range []string{"what if 2x2", "what if the neck is 43 cm"} {
		after, r := tk.Turn(s, line)
		require.Equal(t, "whatif", r.Kind, r.Markdown)
		require.Contains(t, r.Markdown, "| stitches in the band | 105 |")
		require.Contains(t, r.Markdown, "The neckband is sewn off")
		require.False(t, after.OnTable)
		require.Equal(t, s.Said, after.Said)
		require.Nil(t, r.Asks)
	}
}

// The ribs that a refusal offers are taken when they are said.
func TestOfferedRibs(t *testing.T) {
	tk := talk(t)
	for _, rib := range []string{"1x1", "2x2", "2x1", "3x3"} {
		s, _ := tk.Begin()
		s, _ = say(t, tk, s, "cardigan", "28 stitches and 40 rows in 10 cm", "41 cm", rib, "11 rows a layer", "start knitting", "I'm on row 4")
		for _, other := range []string{"1x1", "2x2", "2x1", "3x1", "3x2", "3x3", "1x2"} {
			_, r := tk.Turn(s, other)
			if r.Kind != "unclear" {
				continue
			}
			_, list, ok := strings.Cut(r.Markdown, "these still close: ")
			if !ok {
				require.Contains(t, r.Markdown, "No other rib closes")
				continue
			}
			list, _, _ = strings.Cut(list, ". Still open")
			for _, offer := range strings.Split(list, ", ") {
				_, again := tk.Turn(s, strings.Trim(offer, "*"))
				if strings.HasSuffix(offer, "plain*") {
					continue // the word alone is for the listener's own tests
				}
				require.Equal(t, "change", again.Kind, "%s with %s on the needles: %s", offer, rib, again.Markdown)
				require.Equal(t, r.Facts().Results["band_stitches"], again.Facts().Results["band_stitches"])
			}
		}
	}
}
