package dialog_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/rules"
)

// Every example that a refusal offers must be understood and set what it is
// an example of: an example that does not work is worse than none.
func TestExamplesAreUnderstood(t *testing.T) {
	tk := talk(t)
	book, err := rules.Load()
	require.NoError(t, err)
	for _, k := range book.Keys {
		if k.Example == "" {
			continue
		}
		s := arrive(t, tk, exampleContext(string(k.Key)))
		_, r := tk.Turn(s, k.Example)
		require.Contains(t, []string{"answer", "change"}, r.Kind, "%s: %s", k.Key, k.Example)
		require.Contains(t, r.Changes, string(k.Key), "%s: %s", k.Key, k.Example)
	}
}

func exampleContext(k string) string {
	switch k {
	case "garment", "neck", "rib", "depth":
		return "open " + k
	case "stitch_gauge", "row_gauge":
		return "open gauge"
	}
	return "plan"
}

// What help offers is understood where it is offered.
func TestHelpIsUnderstood(t *testing.T) {
	tk := talk(t)
	book, err := rules.Load()
	require.NoError(t, err)
	at := map[string]string{"question": "open neck", "plan": "plan", "keep": "whatif", "": "plan", "making": "making"}
	for _, c := range book.Cards("help") {
		for _, line := range c.List("words") {
			s := arrive(t, tk, at[c.Fields["when"]])
			_, r := tk.Turn(s, line)
			require.NotContains(t, []string{"unclear", "outside"}, r.Kind, "%s: %s", c.ID, line)
		}
	}
}

// The emphasised examples in every reply to a refused line are understood
// too.
func TestOfferedLinesAreUnderstood(t *testing.T) {
	tk := talk(t)
	for _, c := range []string{"open garment", "open gauge", "open neck", "open rib", "open depth", "plan", "whatif"} {
		s := arrive(t, tk, c)
		_, r := tk.Turn(s, "zzzz qqqq")
		for i, part := range strings.Split(r.Markdown, "*") {
			if i%2 == 0 || part == "" || strings.HasPrefix(part, "Is it") {
				continue
			}
			if _, got := tk.Turn(s, part); strings.Count(part, " ") < 8 {
				require.NotContains(t, []string{"unclear", "outside"}, got.Kind, "in %s: %s", c, part)
			}
		}
	}
}
