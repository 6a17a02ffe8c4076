package dialog_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestCautionsInFacts: whatever a reply warns of stands in the list for scripts as
// well, once, also what was said a short while ago and is only named now.
func TestCautionsInFacts(t *testing.T) {
	tk := talk(t)
	for _, tt := range []struct{ line, caution string }{
		{"the yarn broke", "The mast wires spring up"},
		{"how do I steam it", "Steam burns before it is seen"},
		{"start knitting", "Hair and sleeves tied back; hooks are sharp."},
		{"I dropped a stitch", "hooks and latches scratch"},
		{"the yarn is acrylic", "Direct heat flattens acrylic"},
		{"what if my bed has 100 needles", "100"},
	} {
		s := arrive(t, tk, "plan")
		for _, again := range []string{"full", "named"} {
			next, r := tk.Turn(s, tt.line)
			all := strings.Join(r.Cautions, "\n")
			require.Contains(t, all, tt.caution, "%s, %s", tt.line, again)
			for _, c := range r.Cautions {
				require.Equal(t, 1, strings.Count("\n"+all+"\n", "\n"+c+"\n"), tt.line)
			}
			for _, part := range strings.Split(r.Markdown, "**Caution:** ")[1:] {
				part, _, _ = strings.Cut(part, "\n")
				require.Contains(t, r.Cautions, part, tt.line)
			}
			s = next
		}
	}
}

// TestAnswersOfQuestions: a question leaves what it asked for, each thing in one
// form: a stage's count is a number, all the stages' a list.
func TestAnswersOfQuestions(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	s, _ = tk.Turn(s, "yoke of 264 stitches in 4 stages with a repeat of 12")
	for line, want := range map[string]map[string]any{
		"compare 1x1 and 2x2":          {"rib": []any{"1x1", "2x2"}, "band_stitches": []any{105, 106}},
		"how big a swatch":             {"swatch_stitches": 42, "swatch_width": 15.0},
		"is 97 stitches enough":        {"band_stitches": 105},
		"how do I hang stage 3":        {"stage": 3, "stage_count": 180},
		"how many stitches on stage 2": {"stage": 2, "stage_count": 228},
		"why stage 2":                  {"stage": 2, "stage_count": 228},
		"show the yoke":                {"stage_counts": []int{264, 228, 180, 144, 105}},
	} {
		_, r := tk.Turn(s, line)
		for k, v := range want {
			require.EqualValues(t, v, r.Answer[k], "%s: %s", line, k)
		}
	}
}
