package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"foldrow/dialog"
)

// What an undo takes, a redo brings back, one undo at a time, until something
// else is changed.
func TestRedo(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	_, r := tk.Turn(s, "redo")
	require.Equal(t, "There is no undo to take back.", r.Markdown)
	wide, _ := say(t, tk, s, "neck 42 cm")
	both, _ := say(t, tk, wide, "2x2")
	s, _ = say(t, tk, both, "undo", "undo", "redo")
	require.Equal(t, standing(t, wide), standing(t, s))
	s, r = say(t, tk, s, "redo")
	require.Equal(t, standing(t, both), standing(t, s))
	require.Contains(t, r.Markdown, "Brought back: rib is 2x2 again.")
	s, _ = say(t, tk, s, "undo 2", "redo")
	require.Equal(t, standing(t, both), standing(t, s), "what one undo took, one redo brings")
	s, _ = say(t, tk, s, "undo", "depth 4 cm")
	_, r = tk.Turn(s, "redo")
	require.Equal(t, "There is no undo to take back.", r.Markdown)
	// at the machine it is the place
	s, _ = say(t, tk, s, "start knitting", "I'm on row 5", "undo")
	s, r = tk.Turn(s, "redo")
	require.Contains(t, r.Markdown, "Brought back: knit the outer layer, row 5 of 36")
	require.Equal(t, 4, s.Making.Row)
}

// Changes, undos and redos in any order leave the same after a restart as
// without one, and answer alike to what is taken back next.
func TestRedoAfterRestart(t *testing.T) {
	tk := talk(t)
	lines := []string{"undo", "redo", "undo", "redo", "undo 2", "2x2", "neck 42 cm", "1x1", "how many rows", "hang every bump", "no, I meant rows", "depth 4", "what if 3x1", "drop", "keep"}
	rapid.Check(t, func(rt *rapid.T) {
		s, _ := tk.Begin()
		states := []dialog.State{s}
		for _, l := range contexts["plan"] {
			s, _ = tk.Turn(s, l)
			states = append(states, s)
		}
		for range rapid.IntRange(1, 12).Draw(rt, "turns") {
			s, _ = tk.Turn(s, rapid.SampledFrom(lines).Draw(rt, "line"))
			states = append(states, s)
		}
		again := resume(rt, states)
		for _, l := range []string{"redo", "undo", "undo", "redo", "undo 3", "redo", "redo", "redo"} {
			var r, ra dialog.Reply
			s, r = tk.Turn(s, l)
			again, ra = tk.Turn(again, l)
			require.Equal(rt, r.Markdown, ra.Markdown, l)
			require.Equal(rt, standing(rt, s), standing(rt, again), l)
		}
	})
}
