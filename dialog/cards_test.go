package dialog_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
	"foldrow/rules"
)

// TestRightCard holds which card answers a question of technique or a mishap:
// a wrong card is worse than asking back. The table is ../testdata/cards.txt.
func TestRightCard(t *testing.T) {
	book, tk := talkOf(t)
	text, err := os.ReadFile("../testdata/cards.txt")
	require.NoError(t, err)
	states := map[string]dialog.State{}
	context, all, right, wrong := "", 0, 0, 0
	for n, line := range strings.Split(string(text), "\n") {
		switch {
		case line == "" || line[0] == '#':
			continue
		case line[0] == '@':
			context = strings.TrimSpace(line[1:])
			if _, ok := states[context]; !ok {
				states[context] = arrive(t, tk, context)
			}
			continue
		}
		said, cards, ok := strings.Cut(line, " | ")
		require.True(t, ok, "cards.txt:%d", n+1)
		for _, id := range strings.Fields(cards) {
			_, isWay := book.Card("howto", id)
			_, isTrouble := book.Card("troubles", id)
			require.True(t, isWay || isTrouble, "cards.txt:%d: no card %s", n+1, id)
		}
		_, got := tk.Turn(states[context], said)
		card := answeredBy(book, got)
		all++
		switch {
		case strings.Contains(" "+cards+" ", " "+card+" "):
			right++
		default:
			t.Logf("%d [%s] %s | want %s | %s %s", n+1, context, said, cards, got.Kind, card)
			if card != "" {
				wrong++
			}
		}
	}
	t.Logf("right %d of %d, a wrong card %d", right, all, wrong)
	require.GreaterOrEqual(t, all, 150)
	require.GreaterOrEqual(t, float64(right), 0.92*float64(all))
	require.LessOrEqual(t, float64(wrong), 0.02*float64(all))
}

// answeredBy is the id of the card that a reply is made from, "" for any other
// reply.
func answeredBy(book *rules.Book, r dialog.Reply) string {
	files := map[string]string{"howto": "howto", "trouble": "troubles"}
	for _, c := range book.Cards(files[r.Kind]) {
		if strings.Contains(r.Markdown, "**"+c.Fields["title"]+".**") {
			return c.ID
		}
	}
	return ""
}
