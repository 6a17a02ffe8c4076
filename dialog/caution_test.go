package dialog_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
)

// A caution is said in full, then named for a dozen turns, then said in full
// again; the notebook keeps which.
func TestCautionsAreNotRepeated(t *testing.T) {
	tk := talk(t)
	const full, short = "do not run a hand or sleeve along them", "**Caution**, as before: needle hooks"
	s, r := tk.Turn(arrive(t, tk, "making"), "I dropped a stitch")
	require.Contains(t, r.Markdown, full)
	raw, err := json.Marshal(s)
	require.NoError(t, err)
	var resumed dialog.State
	require.NoError(t, json.Unmarshal(raw, &resumed))
	for name, s := range map[string]dialog.State{"gone on": s, "resumed": resumed} {
		for range 12 {
			s, r = tk.Turn(s, "I dropped a stitch")
			require.Contains(t, r.Markdown, short, name)
			require.NotContains(t, r.Markdown, full, name)
		}
		_, r = tk.Turn(s, "I dropped a stitch")
		require.Contains(t, r.Markdown, full, name)
	}
}

// A caution about babies is not said where the wearer is known to be grown up.
func TestCautionForBabies(t *testing.T) {
	tk := talk(t)
	for wearer, said := range map[string]bool{"it is for a baby of 6 months": true, "it is for a woman": false} {
		s, r := tk.Turn(arrive(t, tk, "making"), wearer)
		require.Equal(t, "change", r.Kind, wearer)
		_, r = tk.Turn(s, "the neck is too tight")
		require.Equal(t, "trouble", r.Kind)
		require.Equal(t, said, strings.Contains(r.Markdown, "never leave it half on"), wearer)
	}
}
