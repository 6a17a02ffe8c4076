package dialog_test

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// What is told as not done, or asked, moves no place; what was counted and is
// not done is said so.
func TestNotDone(t *testing.T) {
	tk := talk(t)
	for _, c := range []struct{ context, said, want string }{
		{"making rows", "I haven't done that", "row 5 of"},
		{"making rows", "nearly done with row 10", "row 5 of"},
		{"making rows", "is row 5 done", "row 5 of"},
		{"making rows", "have I done 9 rows", "row 5 of"},
		{"making rows", "done?", "row 5 of"},
		{"making rows", "I have not knitted row 3", "row 3 of"},
		{"making rows", "done, next?", "row 7 of"},
		{"making latch", "I have not latched L46", "(L46 is not among those of this step.)"},
		{"making latch", "I forgot to latch L49", "(L49 is still to come.)"},
		{"making hem", "is it finished", "The ends, then the middle"},
	} {
		_, r := tk.Turn(arrive(t, tk, c.context), c.said)
		require.Equal(t, "step", r.Kind, c.said)
		require.Contains(t, r.Markdown, c.want, c.said)
	}
	s, _ := tk.Turn(arrive(t, tk, "making latch"), "latched up to L43")
	_, r := tk.Turn(s, "I have not latched L45")
	require.Contains(t, r.Markdown, "(L45 was counted already: do it now, then go on here.)")
	require.Contains(t, r.Markdown, "L41", "the place is kept")
}
