package listen

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"foldrow/rules"
)

func lexicon(t testing.TB) (*Lexicon, *rules.Book) {
	book, err := rules.Load()
	require.NoError(t, err)
	x, err := NewLexicon(book)
	require.NoError(t, err)
	return x, book
}

// The two halves of a card's question speak of this trouble and of the other,
// and are told apart by their own words.
func TestQuestionsApart(t *testing.T) {
	x, book := lexicon(t)
	tell := func(text string, first, second rules.Card) string {
		l := newLine(text)
		r := &reading{x: x, l: l, cues: x.findCues(l, Context{})}
		return r.tells(first, second)
	}
	pairs := 0
	for _, card := range book.Cards("troubles") {
		id := card.Fields["apart"]
		if id == "" {
			continue
		}
		pairs++
		other, ok := book.Card("troubles", id)
		require.True(t, ok, card.ID)
		this, that, ok := strings.Cut(card.Section("apart"), ", or ")
		require.True(t, ok, "%s: %s", card.ID, card.Section("apart"))
		assert.Equal(t, card.ID, tell(this, card, other), "%s: %s", card.ID, this)
		assert.Equal(t, other.ID, tell(that, card, other), "%s: %s", card.ID, that)
	}
	require.GreaterOrEqual(t, pairs, 20)
}
