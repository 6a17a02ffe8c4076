package dialog

import (
	"os"
	"regexp"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog/listen"
	"foldrow/engine"
	"foldrow/rules"
)

// What code and cards call by the same name is there on both sides: else a
// card is loaded and does nothing, or a question is asked without words.

func begun(t *testing.T, lines ...string) (*Talk, State) {
	book, err := rules.Load()
	require.NoError(t, err)
	talk, err := Start(book)
	require.NoError(t, err)
	s, _ := talk.Begin()
	for _, line := range append([]string{"cardigan", "28 stitches and 40 rows", "40 cm", "1x1", "3 cm"}, lines...) {
		s, _ = talk.Turn(s, line)
	}
	return talk, s
}

// TestEveryMoveIsKnown: the topic of each card of kind machine leads somewhere,
// and is not passed over by showing the step once more.
func TestEveryMoveIsKnown(t *testing.T) {
	talk, s := begun(t, "start knitting", "I'm on row 5")
	lookAgain := func(topic string) bool {
		c := talk.at(s, "")
		c.about = &c.s.Said
		again := *c
		c.m = listen.Meaning{Kind: listen.Step, Move: listen.Move{What: topic, Count: 2, Row: 7, Along: "latch"}}
		next, got := c.move(c.standing(c.kept()))
		_, plain := again.stepReply("")
		return next.Making == s.Making && got.Markdown == plain.Markdown
	}
	require.True(t, lookAgain("no-such-move"))
	// the listener makes other moves of these; a look at the place is meant by the last two
	other := map[string]bool{"all-done": true, "at": true, "counted": true, "side": true, "repeat": true, "where": true}
	seen := 0
	for _, card := range talk.book.Cards("machine") {
		if topic := card.Fields["topic"]; card.Fields["kind"] == "machine" && !other[topic] {
			require.False(t, lookAgain(topic), "machine.md:%d: no move %q", card.Line, topic)
			seen++
		}
	}
	require.GreaterOrEqual(t, seen, 15)
}

// TestEveryQuestionHasWords: whatever the interview asks has its words and an
// example on the card that it is asked from.
func TestEveryQuestionHasWords(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	for _, q := range interview {
		card, ok := book.Key(questionKey(q))
		require.True(t, ok, q)
		require.NotEmpty(t, card.Question, q)
		require.NotEmpty(t, card.Example, q)
		require.NotEmpty(t, card.Why, q)
	}
}

// TestEveryWarningHasACard: each code of engine/warn.go has its card, and each
// card its code.
func TestEveryWarningHasACard(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	source, err := os.ReadFile("../engine/warn.go")
	require.NoError(t, err)
	codes := regexp.MustCompile(`(?m)^\t\w+ += "([a-z-]+)"`).FindAllSubmatch(source, -1)
	require.GreaterOrEqual(t, len(codes), 17)
	known := map[string]bool{}
	for _, c := range codes {
		known[string(c[1])] = true
		_, ok := book.Card("warnings", string(c[1]))
		require.True(t, ok, "no card for %s", c[1])
	}
	require.True(t, known[engine.HeadTight])
	for _, card := range book.Cards("warnings") {
		require.True(t, known[card.ID], "warnings.md:%d: no code %s", card.Line, card.ID)
	}
}
