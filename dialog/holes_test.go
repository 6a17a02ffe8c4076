package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestPlannedHoles: once buttonholes are planned, "holes" means them, but a gap
// in the work stays a trouble. A margin told as a width becomes the stitches
// that fill it: 1 cm at 28 in 10 cm is 2.8, so 3.
func TestPlannedHoles(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	for _, tt := range []struct {
		said, kind string
		changes    map[string]any
		says       string
	}{
		{"7 buttonholes of 3 sts", "change", map[string]any{"buttonholes": 7.0, "hole_stitches": 3.0}, "I need the stitches of the band first"},
		{"holes 1cm margin", "change", map[string]any{"hole_margin": 3.0}, ""},
		{"needle nos for the holes", "number", nil, "I need the stitches of the band first"},
		{"120 sts on the front band", "change", map[string]any{"front_count": 120.0}, ""},
		{"needle nos for the holes", "number", nil, "- 1: stitches 4 to 6, needles L57 to L55"},
		{"holes 5", "change", map[string]any{"buttonholes": 5.0}, "**5 buttonholes of 3 stitches"},
		{"holes along the seam of the yoke", "trouble", nil, ""},
	} {
		next, r := tk.Turn(s, tt.said)
		require.Equal(t, tt.kind, r.Kind, "%s: %s", tt.said, r.Markdown)
		require.Contains(t, r.Markdown, tt.says, tt.said)
		if tt.changes != nil {
			require.Equal(t, tt.changes, r.Changes, tt.said)
		} else {
			require.Empty(t, r.Changes, tt.said)
		}
		s = next
	}
}

// TestFrontsInPieces: at the machine a front band wider than the bed is hung in
// pieces, and no step asks for more loops than the bed has needles.
func TestFrontsInPieces(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	s, r := say(t, tk, s, "176 stitches on the front band", "start the front band")
	require.Equal(t, "step", r.Kind)
	require.Contains(t, r.Markdown, "hang 89 (L45 to R44) and 89 (L45 to R44), 2 of these 178 for the join")
	require.NotContains(t, r.Markdown, "hang 176")
	s, r = say(t, tk, s, "go to the second front")
	require.Contains(t, r.Markdown, "89 (L45 to R44) and 89 (L45 to R44)")
	// Five holes of two over 176, three outside: on stitches 4, 46, 88, 130 and
	// 172. The join keeps two from the third, which ends with 89, so piece 1 has
	// the first 91 and a seam stitch, on L46 to R46: stitch 4 hangs on L43.
	_, r = say(t, tk, s, "5 buttonholes of 2 stitches", "where do the buttonholes go")
	for _, hole := range []string{"stitches 4 to 5, needles L43+L42 of piece 1", "stitches 46 to 47, needles L1+R1 of piece 1",
		"stitches 88 to 89, needles R42+R43 of piece 1", "stitches 130 to 131, needles L4+L3 of piece 2"} {
		require.Contains(t, r.Markdown, hole)
	}
	holes, _ := say(t, tk, s, "5 buttonholes of 2 stitches")
	for _, line := range []string{"which needles for the front band", "how many stitches in piece 2 of the front band", "why in pieces"} {
		_, r = tk.Turn(holes, line)
		require.Contains(t, r.Markdown, "92 (L46 to R46) and 86 (L43 to R43)", line)
		require.Empty(t, r.Changes, line)
	}
	_, r = say(t, tk, holes, "which needles do I latch on the front band")
	require.Contains(t, r.Markdown, "piece 1 from ")
	_, r = say(t, tk, holes, "start the front band", "go to the second front", "next")
	require.Contains(t, r.Markdown, "piece 1: L43+L42, L1+R1, R42+R43; piece 2: L4+L3, R39+R40")
	s, r = say(t, tk, s, "120 stitches on the front band", "start the front band")
	require.Contains(t, r.Markdown, "hang 120 loops")
	_, r = say(t, tk, s, "repeat")
	require.NotContains(t, r.Markdown, "pieces")
}

// TestMockRibAtTheMachine: the step that empties the needles and the one that
// knits agree on the dial, and no step wants a stitch on an empty needle.
func TestMockRibAtTheMachine(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, "cardigan", "28/40", "41 cm", "2x1", "3 cm", "dial 6", "mock rib", "start knitting")
	for range 14 {
		next, r := tk.Turn(s, "next")
		require.NotContains(t, r.Markdown, "Knit row 1 loose")
		require.NotContains(t, r.Markdown, "one stitch on every needle")
		s = next
	}
}
