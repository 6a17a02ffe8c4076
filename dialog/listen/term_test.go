package listen

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/rules"
)

// TestTermsApart: each word of rules/terms.md leads to its own card; two cards with
// words of one stem would hide one another.
func TestTermsApart(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	x, err := NewLexicon(book)
	require.NoError(t, err)
	for _, c := range book.Cards("terms") {
		for _, w := range c.List("words") {
			require.Equal(t, c.ID, x.terms[joinedStems(strings.Fields(w))].id, w)
		}
	}
}
