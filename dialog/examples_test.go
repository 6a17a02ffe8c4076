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
			for _, when := range append(c.List("when"), "") {
				s := arrive(t, tk, at[when])
				if _, r := tk.Turn(s, line); when != "" || len(c.List("when")) == 0 {
					require.NotContains(t, []string{"unclear", "outside"}, r.Kind, "%s, %s: %s", when, c.ID, line)
				}
			}
		}
	}
}

// A whole line that is offered for completion at an empty prompt is understood
// there, in centimetres and in inches.
func TestCompletionsAreUnderstood(t *testing.T) {
	tk := talk(t)
	for _, c := range []string{"open garment", "open gauge", "open neck", "open rib", "open depth", "plan", "whatif", "making", "plan inches"} {
		for _, unit := range []string{"cm", "in"} {
			s := arrive(t, tk, c)
			s.Unit = unit
			o := tk.Completions(s)
			require.NotEmpty(t, o.Lines)
			require.Less(t, len(o.Now), 16)
			lines := append(append([]string{}, o.Now...), o.Fit...)
			if c == "plan" {
				lines = append(lines, "show the yoke", "draw the yoke", "show the chart", "draw the chart")
				require.Subset(t, o.Lines, lines[len(lines)-4:])
			}
			for _, line := range lines {
				if strings.HasSuffix(line, " ") {
					continue // a beginning
				}
				_, r := tk.Turn(s, line)
				require.NotContains(t, []string{"unclear", "outside"}, r.Kind, "%s: %s", c, line)
			}
		}
	}
}

// The question speaks the knitter's own unit once she has said one, and Enter
// takes what it offers.
func TestQuestionsInHerUnit(t *testing.T) {
	tk := talk(t)
	for _, tt := range []struct{ at, unit, want string }{
		{"open neck", "cm", "For example: 42 cm."}, {"open neck", "in", "For example: 16 1/2 in."},
		{"open gauge", "in", "For example: 7 stitches and 10 rows to the inch."},
		{"open depth", "in", "For example: 1 1/4 in. Enter alone takes 1 1/4 in."},
	} {
		s := arrive(t, tk, tt.at)
		s.Unit = tt.unit
		_, r := tk.Turn(s, "why do you ask?")
		require.Contains(t, r.Markdown, tt.want)
		if tt.at == "open depth" {
			_, r = tk.Turn(s, "")
			require.Equal(t, 3.175, r.Changes["depth"])
		}
	}
}

// A key's example in inches sets what its other example sets.
func TestExamplesInInches(t *testing.T) {
	tk := talk(t)
	book, err := rules.Load()
	require.NoError(t, err)
	for _, k := range book.Keys {
		if k.Inches == "" {
			continue
		}
		s := arrive(t, tk, exampleContext(string(k.Key)))
		_, r := tk.Turn(s, k.Inches)
		require.Contains(t, r.Changes, string(k.Key), "%s: %s", k.Key, k.Inches)
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
