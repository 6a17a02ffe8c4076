package listen

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// What is passed as clean at a glance is what the slow way leaves as it is.
func TestCleanAtAGlance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line := rapid.StringOf(rapid.SampledFrom([]rune("aB 2\t.~\x7f\x00é\u00a0\u200b\u202e"))).Draw(t, "line")
		require.Equal(t, cleaned(line) == line && line != "", isClean(line) || line != "" && !ascii(line) && cleaned(line) == line, "%q", line)
		got, cut := Clean(line)
		require.False(t, cut)
		require.Equal(t, cleaned(line), got)
		require.Len(t, lower(line), len(line))
	})
}
