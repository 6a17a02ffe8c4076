package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Each term leads on to a how-to that there is, and says in a few plain words
// what it means, without the plan where there is none.
func TestTerms(t *testing.T) {
	b, err := Load()
	require.NoError(t, err)
	for _, c := range b.Cards("terms") {
		if more := c.Fields["more"]; more != "" {
			_, ok := b.Card("howto", more)
			require.True(t, ok, "%s leads to %s", c.ID, more)
		}
		first, _, _ := strings.Cut(c.Text, "\n\n")
		require.NotEmpty(t, c.Fields["title"], c.ID)
		require.NotEmpty(t, c.List("words"), c.ID)
		require.NotContains(t, first, "{", c.ID)
		require.LessOrEqual(t, len(strings.Fields(first)), 45, c.ID)
	}
}
