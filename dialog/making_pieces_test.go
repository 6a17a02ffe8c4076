package dialog_test

import (
	"encoding/json"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog/answer"
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
			require.LessOrEqual(t, answer.Glance(r.Markdown), 8, "%s: %s", name, r.Markdown)
		}
		require.True(t, s.Making.Over, name)
		for ; s.Making.Step != "ready" || s.Making.Done > 0; steps-- {
			require.Positive(t, steps, name)
			s, _ = tk.Turn(s, "back")
		}
	}
}

// 154 stitches of 2x2 on 150 needles are two pieces of 77, each with a stitch
// for the seam between them: from 180 on the yoke 90 for each 78, so 12 pairs;
// 38 columns each.
func TestMakingInPieces(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "pullover", "30/42", "50.2 cm", "2x2", "4.5 cm", "180 on the yoke", "start knitting")
	require.Contains(t, r.Markdown, "L45 to R45 (yoke parts), L39 to R39 (band pieces)")
	require.Contains(t, r.Markdown, "all 90 needles")
	s, r = say(t, tk, s, "next")
	require.Contains(t, r.Markdown, "1 to 90 (L45 to R45), 91 to 180 (L45 to R45)")
	s, r = say(t, tk, s, "start from hang again")
	require.Contains(t, r.Markdown, "Hang again with the decreases, piece 1 of 2")
	require.Contains(t, r.Markdown, "Yoke stitches 1 to 90, from the left. R39 goes into the join. Hang L39 to")
	require.Contains(t, r.Markdown, "Pairs in all: 12")
	s, r = say(t, tk, s, "start from the latching")
	require.Contains(t, r.Markdown, "of 38: L37 L36")
	// The tail is 3 * 78 * 0.65 + 30 = 182.1 cm.
	s, r = say(t, tk, s, "start from sewing off")
	require.Contains(t, r.Markdown, "The tail: 183 cm")
	s, r = say(t, tk, s, "next")
	require.Contains(t, r.Markdown, "Hang again with the decreases, piece 2 of 2")
	require.Contains(t, r.Markdown, "Yoke stitches 91 to 180, from the left. L39 goes into the join.")
	s, r = say(t, tk, s, "back")
	require.Contains(t, r.Markdown, "Sew the stitches off with backstitch, piece 1 of 2")
	s, r = say(t, tk, s, "next", "start from sewing off", "next")
	require.Contains(t, r.Markdown, "Check before anything is pulled, all 2 pieces")
	require.Contains(t, r.Markdown, "Aim: 50.7 cm end to end.")
	s, r = say(t, tk, s, "next", "next")
	require.Contains(t, r.Markdown, "Join 1 of 1: piece 1's right end, as it hung, to piece 2's left end, 1 stitch of each inside.")
	require.Contains(t, r.Markdown, "Caution:")
	s, _ = say(t, tk, s, "next", "next")
	require.Equal(t, "close-ends", s.Making.Step)
}

// TestJoinsOneByOne: three pieces of a cardigan have two joins, each told by
// itself, there and back, and none closes the round.
func TestJoinsOneByOne(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "cardigan", "50/70", "63 cm", "2x2", "4 cm", "how do I join the pieces")
	require.Contains(t, r.Markdown, "2 joins:")
	require.Contains(t, r.Markdown, "the band's two ends go into the front bands")
	require.Contains(t, r.Markdown, "Caution:")
	s, r = say(t, tk, s, "start knitting", "start from joining the pieces")
	require.Contains(t, r.Markdown, "Join 1 of 2: piece 1's right end")
	s, r = say(t, tk, s, "next")
	require.Contains(t, r.Markdown, "Join 2 of 2: piece 2's right end")
	_, at := tk.Turn(s, "where am I")
	require.Contains(t, at.Markdown, "Join 2 of 2")
	_, r = tk.Turn(s, "back")
	require.Contains(t, r.Markdown, "Join 1 of 2")
	s, _ = tk.Turn(s, "next")
	require.Equal(t, "set-band", s.Making.Step)
}

// TestPiecesAsked: what is asked about the pieces is told from the plan, away
// from the machine and at it, and that a band is in one piece where it is.
func TestPiecesAsked(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, "pullover", "30/42", "50.2 cm", "2x2", "4.5 cm", "180 on the yoke")
	asked := []struct{ said, says string }{
		{"why two pieces", "154 stitches are more than 150 needles. So **2 pieces**"},
		{"why in pieces", "so the finished neck stays 50.7 cm. In one piece at most 150 fit, for a neck of 49.3 cm"},
		{"why 78 stitches", "So **2 pieces**"},
		{"where does piece 2 start", "**Piece 2 of 2:** it hangs stitches 91 to 180 of the yoke"},
		{"where does the second piece start on the yoke", "stitches 91 to 180 of the yoke"},
		{"where does the first piece begin", "**Piece 1 of 2:** it hangs stitches 1 to 90 of the yoke"},
		{"how many stitches in piece 2", "**78 stitches**, 1 of them for the join; hung from 90 of the yoke, so 12 decreases"},
		{"how do I join the pieces", "**2 joins:** the right end of piece 1 to the left end of piece 2; last the band's two ends, which closes the round"},
		{"how many joins", "**2 joins:**"},
		{"which needles for piece 2", "needles L39 to R39 (L39 goes into the join)"},
		{"which needles for piece 3", "The band has 2 pieces"},
	}
	for _, at := range []string{"plan", "start knitting"} {
		s, _ = say(t, tk, s, at)
		for _, tt := range asked {
			after, r := tk.Turn(s, tt.said)
			require.Contains(t, r.Markdown, tt.says, tt.said)
			require.Empty(t, r.Changes, tt.said)
			require.Equal(t, s.Said, after.Said, tt.said)
			require.Equal(t, s.Making, after.Making, tt.said)
		}
	}
	s, _ = tk.Begin()
	s, _ = say(t, tk, s, "pullover", "30/42", "42 cm", "2x2", "4.5 cm")
	for _, tt := range asked {
		if tt.said == "why 78 stitches" {
			continue
		}
		_, r := tk.Turn(s, tt.said)
		require.Contains(t, r.Markdown, "The band is in one piece: its 130 stitches fit 150 needles", tt.said)
	}
}

// 250 stitches for 111 needles: two on a needle leave 125 at least, so the
// first hanging is on the 150 that the bed has, the second on 111. Between
// them 100 and 39 pairs.
func TestMakingInHangings(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "250 on the yoke", "start knitting", "start from hang again")
	require.Contains(t, r.Markdown, "Hanging 1 of 2: hang L75 to")
	_, ready := say(t, tk, s, "start from the beginning")
	require.Contains(t, ready.Markdown, "L63 to R62 (yoke parts), L75 to R75 (hanging 1), L56 to R55 (band)")
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
