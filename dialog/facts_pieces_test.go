package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestNeedlesByPiece: what names needles is told piece by piece where the bed
// does not take a band at once, to scripts as well; the counts are those of all
// pieces.
func TestNeedlesByPiece(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, r := say(t, tk, s, "cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "the bed has 100 needles",
		"180 stitches on the yoke", "the front edge is 50 cm", "7 buttons", "which needles do I latch")
	got := r.Facts().Results
	// 111 stitches, 2 at each end of the band: columns 2, 4 ... 108. The first
	// piece has 55 of them and one for the join on 56 needles, the second one
	// for the join and 56 on 57.
	for key, ends := range map[string][2][2]string{
		"rib_columns": {{"L26", "R27"}, {"L27", "R26"}},
		"hem_needles": {{"L27", "R28"}, {"L28", "R27"}},
	} {
		pieces := got[key].([]any)
		require.Len(t, pieces, 2, key)
		for i, p := range pieces {
			list := p.([]string)
			require.Equal(t, ends[i], [2]string{list[0], list[len(list)-1]}, "%s, piece %d", key, i+1)
		}
	}
	sum := 0
	for _, p := range got["rehang"].([]any) {
		for _, n := range p.([]int) {
			sum += n
		}
	}
	require.Equal(t, 180, sum, "every stitch of the yoke is hung once")
	// holes 4+5, 27+28, 51+52, 74+75 of 149 on 78 needles, the rest on 73
	require.Equal(t, [][]string{{"L36", "L35", "L13", "L12", "R12", "R13", "R35", "R36"}, {"L16", "L15", "R8", "R9", "R32", "R33"}}, got["hole_needles"])
	front := got["front_columns"].([][]string)
	require.Equal(t, []int{38, 35}, []int{len(front[0]), len(front[1])})
	require.Contains(t, r.Markdown, "54 in all")

	_, r = tk.Turn(s, "first hem needle")
	require.Contains(t, r.Markdown, "56 in all")
	_, r = tk.Turn(s, "is L26 a rib column")
	require.Contains(t, r.Markdown, "**Piece 1 of 2:** Yes, L26 is a latched column")
	require.Contains(t, r.Markdown, "**Piece 2 of 2:** No, L26 is not a latched column")
	s, _ = say(t, tk, s, "start knitting", "I'm on row 5")
	_, r = tk.Turn(s, "what happens on R28")
	require.Contains(t, r.Markdown, "It goes into the join and stays plain, and a bump of the hem is hung on it.")
}
