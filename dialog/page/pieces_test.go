package page

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog/answer"
)

// TestPagesAndAnswersNameTheSame: of a band in pieces the sheet tells the
// needles, the place on the yoke, the joins and the buttonholes in the words of
// the answers.
func TestPagesAndAnswersNameTheSame(t *testing.T) {
	pieces, holes := 0, 0
	for _, s := range samples {
		v, p, said := s.solve(t)
		page := Markdown(v, p, said, Notes{})
		for _, q := range p.OnBed() {
			if q.Piece == nil {
				continue
			}
			pieces++
			require.Contains(t, page, answer.SeamNeedles(q.Piece.Part))
			require.Contains(t, page, answer.PieceYoke(q))
			require.Contains(t, page, answer.Joints(p))
			for _, list := range strings.Split(answer.PieceNeedles(q), "\n- ")[1:] {
				_, needles, ok := strings.Cut(strings.TrimSuffix(list, "."), ": ")
				require.True(t, ok, list)
				require.Contains(t, strings.ToLower(page), strings.ToLower(needles))
			}
		}
		if p.Front == nil || len(p.Front.Parts) < 2 {
			continue
		}
		for _, col := range p.Front.Holes.First {
			holes++
			require.Contains(t, page, answer.HoleNeedles(col, p.Front))
		}
		require.Contains(t, page, answer.HoleNeedleList(p.Front))
	}
	require.Positive(t, pieces)
	require.Positive(t, holes)
}
