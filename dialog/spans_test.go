package dialog_test

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// spoken is how a value of a key is said, # standing for the number, by
// testdata/spans.txt.
func spoken(t *testing.T) map[engine.Key]string {
	t.Helper()
	text, err := os.ReadFile("../testdata/spans.txt")
	require.NoError(t, err)
	said := map[engine.Key]string{}
	for line := range strings.Lines(string(text)) {
		line = strings.TrimSpace(line)
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		key, how, ok := strings.Cut(line, " | ")
		require.True(t, ok, line)
		said[engine.Key(key)] = how
	}
	return said
}

// TestSpansBothEnds says, for every key with a span, a value at each end of
// what is usual and of what is possible, and one just within and just beyond.
// Usual values are taken without a word, possible ones with one, and others
// are asked about and set nothing.
func TestSpansBothEnds(t *testing.T) {
	book, tk := talkOf(t)
	said := spoken(t)
	start := arrive(t, tk, "plan")
	tried := 0
	for _, card := range book.Keys {
		if !card.HasSpan {
			continue
		}
		how, ok := said[card.Key]
		if !ok {
			how = card.Label + " # " + card.Unit
		}
		for _, v := range ends(card) {
			tried++
			line := strings.Replace(how, "#", quantity.Print(v, quantity.None), 1)
			_, r := tk.Turn(start, line)
			wanted, got := verdictOf(card, v), verdictIn(card, v, r)
			if wanted != got {
				t.Errorf("%s: %q is %s, not %s: %s", card.Key, line, got, wanted, firstLine(r.Markdown))
			}
		}
	}
	t.Logf("%d values", tried)
}

// ends are the values at, just within and just beyond both ends of both spans.
func ends(card rules.KeyCard) []engine.Num {
	step := engine.Frac(1, 100)
	switch card.Dimension {
	case rules.Rows, rules.Stitches, rules.Needles, rules.Bumps, rules.LayersDim, rules.Clicks, rules.Count:
		step = engine.Int(1)
	}
	var out []engine.Num
	for _, span := range [][2]engine.Num{card.Usual, card.Possible} {
		for _, end := range span {
			out = append(out, end.Sub(step), end, end.Add(step))
		}
	}
	return out
}

// verdictOf is what rules/keys.md makes of v.
func verdictOf(card rules.KeyCard, v engine.Num) string {
	switch {
	case v.Less(card.Possible[0]) || card.Possible[1].Less(v):
		return "refused"
	case v.Less(card.Usual[0]) || card.Usual[1].Less(v):
		return "unusual"
	}
	return "usual"
}

// verdictIn is what the conversation made of it.
func verdictIn(card rules.KeyCard, v engine.Num, r dialog.Reply) string {
	set, there := r.Changes[string(card.Key)]
	switch {
	case r.Kind == "unclear" && len(r.Changes) == 0:
		return "refused"
	case !there || len(r.Changes) != 1 || fmt.Sprint(set) != fmt.Sprint(math.Round(v.Float()*1e4)/1e4):
		return fmt.Sprintf("%s %v", r.Kind, r.Changes)
	case strings.Contains(r.Markdown, "That is unusual for the "+card.Label):
		return "unusual"
	}
	return "usual"
}

func firstLine(s string) string {
	l, _, _ := strings.Cut(s, "\n")
	return l
}
