package dialog_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// What the plan prints of an input, its name and its value, can be typed back,
// and sets that input and no other.
func TestLabelsAreRead(t *testing.T) {
	book, tk := talkOf(t)
	start := arrive(t, tk, "plan")
	v := answer.Voice{Book: book, Unit: "cm"}
	tried := 0
	for _, card := range book.Keys {
		if !card.HasSpan || !engine.IsNumber(card.Key) {
			continue
		}
		value := card.Usual[0]
		if card.HasDefault {
			value = card.Default
		}
		figure := v.Figure(card.Key, value.Float())
		if card.Key == engine.NeckbandEnd || card.Key == engine.PickRatio {
			continue // said in words
		}
		tried++
		line := card.Label + " " + figure
		_, r := tk.Turn(start, line)
		assert.Len(t, r.Changes, 1, "%s: %q: %s %v", card.Key, line, r.Kind, r.Changes)
		got, ok := r.Changes[string(card.Key)].(float64)
		assert.True(t, ok, "%s: %q: %s %v", card.Key, line, r.Kind, r.Changes)
		if ok {
			assert.InDelta(t, value.Float(), got, 0.006, "%s: %q", card.Key, line)
		}
	}
	t.Logf("%d inputs", tried)
}

// A result that the plan has not got says what is missing, and every example it
// gives can be typed.
func TestMissingResultsSayWhatTheyNeed(t *testing.T) {
	book, tk := talkOf(t)
	start := arrive(t, tk, "plan")
	tried := 0
	for _, card := range book.Results {
		_, r := tk.Turn(start, "what is the "+card.Label)
		assert.NotContains(t, r.Markdown, "what is the plan", card.Key)
		if card.Without == "" {
			continue
		}
		examples := strings.Split(card.Without, "*")
		for i := 1; i < len(examples); i += 2 {
			tried++
			_, r := tk.Turn(start, examples[i])
			assert.Contains(t, []string{"answer", "change"}, r.Kind, "%s: %q: %s", card.Key, examples[i], r.Markdown)
			assert.NotEmpty(t, r.Changes, "%s: %q", card.Key, examples[i])
		}
	}
	assert.Greater(t, tried, 20)
}
