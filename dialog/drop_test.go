package dialog_test

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
)

// TestDropLeavesNothing: a what-if that is dropped, or undone, leaves the state as
// it was, but for the count of turns and the cautions that were read.
func TestDropLeavesNothing(t *testing.T) {
	tk := talk(t)
	inches := []string{"cardigan", "7 sts and 10 rows to the inch", "16 1/2", "1x1", "1 1/4 in", "why the stitches"}
	cm := []string{"cardigan", "28/40", "42 cm", "1x1", "3 cm", "the yoke has 144 stitches"}
	for _, c := range []struct {
		start []string
		lines []string
	}{
		{inches, []string{"what if 4 cm deep", "drop"}},
		{inches, []string{"what if 4 cm deep", "undo"}},
		{inches, []string{"what if 4 cm deep", "and 2x2", "no"}},
		{inches, []string{"what if the neck is 43 cm", "neck 45 cm", "drop"}},
		{inches, []string{"what if the neck is 43 cm", "why the stitches", "drop"}},
		{inches, []string{"what if 5 cm", "no, stay with 1 1/4 in"}},
		{cm, []string{"what if 17 in", "drop"}},
		{cm, []string{"what if the band is 1 1/2 inches deep", "forget it"}},
	} {
		s, _ := tk.Begin()
		for _, l := range c.start {
			s, _ = tk.Turn(s, l)
		}
		after := s
		var r dialog.Reply
		for i, l := range c.lines {
			after, r = tk.Turn(after, l)
			require.NotEqual(t, "unclear", r.Kind, l)
			if i == 0 {
				require.Equal(t, "whatif", r.Kind, l)
				after = reread(t, after) // as from the notebook
			}
		}
		require.JSONEq(t, plain(t, s), plain(t, after), "%v", c.lines)
	}
}

// reread is the state written and read again.
func reread(t *testing.T, s dialog.State) dialog.State {
	b, err := json.Marshal(s)
	require.NoError(t, err)
	var out dialog.State
	require.NoError(t, json.Unmarshal(b, &out))
	return out
}

// plain is the state as the notebook holds it, without what every turn changes.
func plain(t *testing.T, s dialog.State) string {
	s.Turn, s.Warned, s.Depth = 0, nil, 0
	b, err := json.Marshal(s)
	require.NoError(t, err)
	return string(b)
}
