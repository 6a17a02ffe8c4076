package dialog_test

import (
	"encoding/json"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

var onBed = regexp.MustCompile(`\b[LR](\d+)\b`)

// No needle is named that the bed of 150 does not have: L1 to L75, R1 to R75.
func TestNoNeedleOffTheBed(t *testing.T) {
	plans := map[string][]string{
		"154 stitches":     {"pullover", "30/42", "50.2 cm", "2x2", "4.5 cm", "180 on the yoke"},
		"350 stitches":     {"pullover", "40/56", "88 cm", "2x1", "4.5 cm", "400 on the yoke"},
		"mock, 350":        {"pullover", "40/56", "88 cm", "2x1", "4.5 cm", "mock rib"},
		"250 on the yoke":  {"cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "250 on the yoke"},
		"320 on the yoke":  {"cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "320 on the yoke"},
		"700, two to four": {"pullover", "30/42", "50.2 cm", "2x2", "4.5 cm", "700 on the yoke"},
	}
	for name, lines := range plans {
		tk := talk(t)
		s, r := tk.Begin()
		look := func(r string, facts any) {
			b, err := json.Marshal(facts)
			require.NoError(t, err)
			for _, m := range onBed.FindAllStringSubmatch(r+string(b), -1) {
				n, _ := strconv.Atoi(m[1])
				require.LessOrEqual(t, n, 75, "%s: %s in %s", name, m[0], r)
			}
		}
		for _, l := range append(lines, "show the plan", "show the needles", "in two pieces", "show the rehang map",
			"which needles do I latch", "what if the depth is 2 cm", "drop", "start knitting") {
			s, r = tk.Turn(s, l)
			look(r.Markdown, r.Facts())
		}
		steps := 0
		for ; !s.Making.Over && steps < 700; steps++ {
			s, r = tk.Turn(s, "next")
			look(r.Markdown, r.Facts())
		}
		require.True(t, s.Making.Over, name)
		for ; s.Making.Step != "ready" || s.Making.Done > 0; steps-- {
			require.Positive(t, steps, name)
			s, _ = tk.Turn(s, "back")
		}
	}
}

// 154 stitches of 2x2 on 150 needles are two pieces of 77, each through all
// its steps: from 180 on the yoke 90 for each, so 13 pairs; 38 columns each.
func TestMakingInPieces(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "pullover", "30/42", "50.2 cm", "2x2", "4.5 cm", "180 on the yoke", "start knitting", "start from hang again")
	require.Contains(t, r.Markdown, "Hang again with the decreases, piece 1 of 2")
	require.Contains(t, r.Markdown, "Hang L39 to")
	require.Contains(t, r.Markdown, "Pairs in all: 13")
	s, r = say(t, tk, s, "start from the latching")
	require.Contains(t, r.Markdown, "of 38: L37 L36")
	// The tail is 3 * 77 * 0.65 + 30 = 180.15 cm.
	s, r = say(t, tk, s, "start from sewing off")
	require.Contains(t, r.Markdown, "The tail: 181 cm")
	s, r = say(t, tk, s, "next")
	require.Contains(t, r.Markdown, "Hang again with the decreases, piece 2 of 2")
	s, r = say(t, tk, s, "back")
	require.Contains(t, r.Markdown, "Sew the stitches off with backstitch, piece 1 of 2")
	s, r = say(t, tk, s, "next", "start from sewing off", "next")
	require.Contains(t, r.Markdown, "Check before anything is pulled")
}

// 250 stitches for 111 needles: two on a needle leave 125 at least, so the
// first hanging is on the 150 that the bed has, the second on 111. Between
// them 100 and 39 pairs.
func TestMakingInHangings(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "250 on the yoke", "start knitting", "start from hang again")
	require.Contains(t, r.Markdown, "Hanging 1 of 2: hang L75 to")
	var maps [][]int
	b, err := json.Marshal(r.Facts().Results["band_hangings"])
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(b, &maps))
	sums := []int{}
	for _, m := range maps {
		n := 0
		for _, x := range m {
			n += x
		}
		sums = append(sums, n, len(m))
	}
	require.Equal(t, []int{250, 150, 150, 111}, sums)
	s, r = say(t, tk, s, "hung up to R75")
	require.Contains(t, r.Markdown, "Hanging 2 of 2: hang L56 to")
	_, r = say(t, tk, s, "hung up to R55")
	require.Contains(t, r.Markdown, "Knit the outer layer")
}
