package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog/answer"
)

// TestPieceTold: a piece that is named as done, or come to, is where the
// making goes on; what is not there is asked back and moves nothing.
func TestPieceTold(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, "pullover", "30/42", "50.2 cm", "2x2", "4.5 cm", "the yoke has 180 stitches", "start knitting")
	first, _ := say(t, tk, s, "start from sewing off")
	second, _ := say(t, tk, first, "next")
	over, _ := say(t, tk, second, "piece 2 done")
	for _, c := range []struct {
		name       string
		from       int
		said, want string
	}{
		{"to the second", 1, "piece 1 done", "(Piece 1 taken as sewn off.)"},
		{"its stitches", 1, "I'm on piece 2", "Yoke stitches 91 to 180"},
		{"without a number", 1, "next piece", "piece 2 of 2"},
		{"the one she is at", 2, "I'm on piece 2", "4 of 15"},
		{"counted already", 2, "piece 1 done", "(Piece 1 is counted as done.)"},
		{"back", 2, "back to piece 1", "piece 1 of 2"},
		{"the last", 2, "piece 2 is finished", "11 of 15. Check before anything is pulled, all 2 pieces"},
		{"after all", 3, "piece 2 done", "(Piece 2 is counted as done.)"},
		{"none such", 2, "piece 3 done", "The band has 2 pieces."},
		{"not done", 1, "piece 1 is not done", "nothing"},
	} {
		at := s
		switch c.from {
		case 1:
			at = first
		case 2:
			at = second
		case 3:
			at = over
		}
		now, r := tk.Turn(at, c.said)
		require.Empty(t, r.Changes, c.name)
		if c.want == "nothing" {
			require.Equal(t, at.Making, now.Making, c.name)
			continue
		}
		require.Contains(t, r.Markdown, c.want, c.name)
	}
	wide, _ := tk.Begin()
	wide, _ = say(t, tk, wide, "pullover", "38/49", "58 cm", "1x1", "8 rows a layer", "230 stitches on the yoke", "start knitting")
	_, r := tk.Turn(wide, "piece 1 done")
	require.Contains(t, r.Markdown, "Yoke stitches 115 to 230")
	require.LessOrEqual(t, answer.Glance(r.Markdown), 8)
	whole, _ := tk.Begin()
	whole, _ = say(t, tk, whole, "pullover", "30/42", "40 cm", "2x2", "4.5 cm", "start knitting")
	_, r = tk.Turn(whole, "piece 1 done")
	require.Equal(t, "unclear", r.Kind)
	require.Contains(t, r.Markdown, "The band hangs in one piece.")
}
