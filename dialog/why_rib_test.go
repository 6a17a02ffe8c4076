package dialog_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// The reason for a rib's factors is that rib's own, with its own sources, and
// no other rib's: of every rib with a card, and of one without.
func TestWhyOfARibIsItsOwn(t *testing.T) {
	book, tk := talkOf(t)
	v := answer.Voice{Book: book}
	asked := 0
	for _, rib := range append(book.Ribs, book.RibFactors(engine.Rib{Knit: 5, Purl: 3})) {
		s := arrive(t, tk, "plan")
		s, set := tk.Turn(s, "use "+rib.Rib.String())
		for _, ask := range []string{"why the draw in of the rib", fmt.Sprintf("why is the rib stretch %.2f", rib.Stretch.Float())} {
			_, got := tk.Turn(s, ask)
			require.Equal(t, "why", got.Kind, "%s: %s", set.Markdown, ask)
			require.Contains(t, got.Markdown, rib.Text, ask)
			require.Contains(t, got.Markdown, "Source: "+v.Sources(rib.Source)+".", "%s of %s", ask, rib.Rib)
			asked++
		}
	}
	require.GreaterOrEqual(t, asked, 16)
}

// A mock rib's factors have the reason of the kind of band that brings them.
func TestWhyOfAMockRib(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Turn(arrive(t, tk, "plan"), "use mock rib")
	_, got := tk.Turn(s, "why the draw in of the rib")
	require.Contains(t, got.Markdown, "0.85 and 1.3 are our estimate")
	require.NotContains(t, got.Markdown, "half of plain")
}
