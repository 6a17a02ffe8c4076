package dialog_test

import (
	"encoding/json"
	"strings"
	"unicode"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
	"foldrow/engine"
	"foldrow/rules"
)

// setsNothing are the kinds of reply after which the plan stands as before.
var setsNothing = map[string]bool{
	"unclear": true, "outside": true, "number": true, "why": true, "backwards": true, "compare": true, "shake": true,
	"measure": true, "howto": true, "trouble": true, "show": true, "help": true, "notebook": true,
}

// holds is what must be so after any line in any state: a line that is not
// understood changes nothing, the contract of JSON is kept, the state survives
// the notebook, nothing in the plan is beyond its span, and nothing comes back
// that a terminal would obey.
func holds(t require.TestingT, book *rules.Book, s dialog.State, line string, next dialog.State, r dialog.Reply) {
	if setsNothing[r.Kind] {
		require.Equal(t, standing(t, s), standing(t, next), line)
		require.Empty(t, r.Changes, line)
	}
	if r.Kind == "unclear" || r.Kind == "outside" {
		require.Empty(t, r.Answer, line)
		require.Equal(t, s.Making, next.Making, line)
	}
	require.Equal(t, s.Turn+1, next.Turn)
	require.NotEmpty(t, r.Markdown+r.Order.What, line)
	require.False(t, strings.ContainsFunc(r.Markdown+r.Said+r.Order.Name+r.Order.To, obeyed), "%q: %q", line, r.Markdown)
	_, err := json.Marshal(r)
	require.NoError(t, err, line)
	survives(t, next)
	within(t, book, next, line)
}

// obeyed is a character that does something instead of being shown.
func obeyed(c rune) bool {
	return c != '\n' && unicode.IsControl(c) || unicode.In(c, unicode.Cf, unicode.Co, unicode.Zl, unicode.Zp)
}

// survives: the state is the same after the notebook.
func survives(t require.TestingT, s dialog.State) {
	raw, err := json.Marshal(s)
	require.NoError(t, err)
	var back dialog.State
	require.NoError(t, json.Unmarshal(raw, &back))
	again, err := json.Marshal(back)
	require.NoError(t, err)
	require.Equal(t, string(raw), string(again))
}

// within: no number of the plan or of the what-if is beyond what is possible.
func within(t require.TestingT, book *rules.Book, s dialog.State, line string) {
	for _, k := range engine.InputKeys() {
		card, ok := book.Key(k)
		if !ok || !card.HasSpan {
			continue
		}
		for _, in := range []engine.Inputs{s.Said, s.Table} {
			if v := in.Num(k); in.Has(k) && (v.Less(card.Possible[0]) || card.Possible[1].Less(v)) {
				require.Failf(t, "beyond its span", "%q set %s to %s", line, k, v)
			}
		}
	}
}
