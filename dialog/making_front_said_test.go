package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
)

// TestSaidAtTheFronts: what is said in the words of the neckband's steps is
// about the front band's step at hand, and never leads back to the neckband.
func TestSaidAtTheFronts(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	s, _ = say(t, tk, s, "cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm", "6 buttons", "the front edge is 50 cm", "start knitting", "go on to the front bands")
	latch, _ := say(t, tk, s, "next", "next")
	hem, _ := say(t, tk, latch, "next")
	at := map[string]dialog.State{"hang": s, "latch": latch, "hem": hem}
	for _, c := range []struct{ from, said, want string }{
		{"hang", "which needles", "149 (L75 to R74)"},
		{"latch", "which needles now", "L73 to R72 (73 needles)"},
		{"latch", "latched up to L20", "(No needles counted here;"},
		{"latch", "L50 done", "17 of 25"},
		{"latch", "all latched", "Hang the hem of the first front band"},
		{"hem", "the hem is hung", "Sew off the first front band"},
		{"hem", "all latched", "(That lies behind you; you are here.)"},
	} {
		_, r := tk.Turn(at[c.from], c.said)
		require.Equal(t, "step", r.Kind, c.said)
		require.Contains(t, r.Markdown, c.want, c.said)
	}
}
