package listen

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/rules"
)

// TestStemsAreShared: asked again, and through however many chunks, a phrase
// gives what its words give one by one.
func TestStemsAreShared(t *testing.T) {
	book, err := rules.Load()
	if err != nil {
		t.Fatal(err)
	}
	shared := newStems(0)
	var phrases []string
	for _, file := range []string{"howto", "troubles", "steps"} {
		for _, c := range book.Cards(file) {
			phrases = append(phrases, append(c.List("words"), c.Fields["title"])...)
		}
	}
	phrases = append(phrases, "", "Can't", "(the) hem, isn't it?", " two  spaces ")
	for range 2 {
		for _, phrase := range phrases {
			want := stemsOf(phrase)
			if got := shared.of(phrase); !slices.Equal(got, want) {
				t.Fatalf("%q: %q, want %q", phrase, got, want)
			}
		}
	}
}

// TestSlightLinesTellOfNoCard: such a line does not fill the shelf, and would
// find nothing in it either.
func TestSlightLinesTellOfNoCard(t *testing.T) {
	book, err := rules.Load()
	if err != nil {
		t.Fatal(err)
	}
	s := newShelf(func() []rules.Card { return book.Cards("troubles") })
	for _, line := range []string{"28 stitches and 40 rows", "42 cm", "what is it", "3"} {
		if f, _ := s.best(newLine(line)); f.card != "" || s.weight != nil {
			t.Errorf("%s: %+v", line, f)
		}
		if f, _ := newShelf(func() []rules.Card { return book.Cards("troubles") }).bestOf(newLine(line).tokens); f.mass >= 1.5 {
			t.Errorf("%s is worth %.2f to %s", line, f.mass, f.card)
		}
	}
}

// oneOf stems only words that may have the stem; every irregular form must be
// among those.
func TestMayBe(t *testing.T) {
	for form, st := range irregular {
		require.True(t, mayBe(st, form), "%s of %s", st, form)
	}
}
