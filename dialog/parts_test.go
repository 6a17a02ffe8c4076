package dialog_test

import (
	"encoding/json"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
)

// TestParts asks the one-line questions around the neckband. The numbers were
// worked by hand: 240 to 105 in three cuts of 45 with the nearest repeats.
func TestParts(t *testing.T) {
	for _, tt := range []struct {
		context, said string
		answer        map[string]any
		says          string
	}{
		{"plan", "3 stages 240 to 105, repeats 12 8 6", map[string]any{
			"stage_counts": []int{240, 192, 150, 105}, "stage_decreases": []int{48, 42, 45}, "stage_pieces": []int{2, 2, 1, 1}}, "195 (-3)"},
		{"open garment", "3 stages from 240 to 105 repeat 12", map[string]any{"stage_counts": []int{240, 192, 156, 105}}, "Only the neckband fits"},
		{"plan", "yoke from 240 stitches", map[string]any{"stage_counts": []int{240, 195, 150, 105}}, "taking 3 stages"},
		{"plan", "yoke for a body of 180 stitches", map[string]any{"stage_counts": []int{242, 196, 151, 105}}, "published percentages"},
		{"plan", "4 stages 300 to 80 percentages", map[string]any{"stage_counts": []int{300, 200, 150, 113, 80}}, "as published"},
		{"plan", "3 stages 300 to 80, a quarter then a third then two fifths off", map[string]any{"stage_counts": []int{300, 225, 150, 80}}, "47 %"},
		{"plan", "3 stages 240 to 100 by a straight cone, heights 8 4 2 cm", map[string]any{"stage_counts": []int{240, 160, 120, 100}}, "straight cone"},
		{"plan", "help me with the yoke", nil, "yoke for a body of 180 stitches"},
		{"plan", "3 stages 240 to 105 by percentages c", nil, "published for 4 stages, not 3. The nearest that works: 240, 195, 150"},
		{"plan", "yoke from 400 stitches repeat 200", nil, "a repeat of 150 or fewer fits"},
		{"plan", "yoke from 100 stitches to 5000", nil, "2000 stitches at most"},
		{"plan", "how deep is the yoke for a 94 cm bust", map[string]any{
			"yoke_depth_low": 19.0, "yoke_depth_high": 20.0, "yoke_depth_rule": 23.5, "yoke_rows_low": 76}, "3.5 cm too deep"},
		{"plan", "100 stages 240 to 105", nil, "at most 20 stages"},
		{"plan", "how deep is the yoke", nil, "94 cm bust"},

		{"plan", "contrast every fourth over 105 stitches", map[string]any{"contrast_stitches": 26, "main_stitches": 79, "float_longest": 3, "float_limit": 7}, "L3, then every 4th needle 12 times (to L51); 13 in all"},
		{"plan", "x..x.. over 105", map[string]any{"contrast_stitches": 35, "float_longest": 2}, "both edges match"},
		{"plan", "x.........x over 96", map[string]any{"float_longest": 9}, "8 floats are past the limit"},
		{"plan", "contrast every fourth over 300 stitches", nil, "at most 148"},
		{"plan", "contrast every fourth", nil, "Over how many stitches"},
		{"plan", "longest float allowed", map[string]any{"float_limit": 7}, "2.5 cm"},
	} {
		t.Run(tt.said, func(t *testing.T) {
			tk := talk(t)
			s := arrive(t, tk, tt.context)
			after, r := tk.Turn(s, tt.said)
			require.Equal(t, "number", r.Kind)
			require.Empty(t, r.Changes)
			require.Equal(t, s.Said, after.Said)
			require.Contains(t, r.Markdown, tt.says)
			for k, want := range tt.answer {
				require.Equal(t, want, r.Answer[k], k)
			}
			if tt.answer == nil {
				require.Empty(t, r.Answer)
			}
		})
	}
}

// TestYokeGoesOn: the yoke asked about is remembered, also after a restart.
func TestYokeGoesOn(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	s, _ = tk.Turn(s, "3 stages 240 to 105, repeats 12 8 6")
	b, err := json.Marshal(s)
	require.NoError(t, err)
	var again dialog.State
	require.NoError(t, json.Unmarshal(b, &again))
	s, r := tk.Turn(again, "what if I use four stages")
	require.Equal(t, []int{240, 208, 174, 138, 105}, r.Answer["stage_counts"])
	require.Equal(t, "number", r.Kind)
	s, r = tk.Turn(s, "percentages")
	require.Contains(t, r.Markdown, "240, 208, 174, 138, then 105")
	require.Contains(t, r.Markdown, "at most 90 is reached")
	_, r = tk.Turn(s, "yoke from 200 stitches")
	require.Equal(t, []int{200, 168, 137, 105}, r.Answer["stage_counts"])
}

// TestNotParts: lines that share words with the parts keep their meaning.
func TestNotParts(t *testing.T) {
	tk := talk(t)
	for said, kind := range map[string]string{
		"how do I make buttonholes in the front band?": "howto",
		"the front bands will be 2.5 cm wide":          "change",
		"yoke 128":                                     "change",
		"what if my neck is 42 cm":                     "whatif",
		"how do I pick up a dropped stitch":            "howto",
		"make the nek 43":                              "change",
		"how do I catch the float":                     "howto",
		"what if I have 350 m per 100 g":               "whatif",
	} {
		_, r := tk.Turn(arrive(t, tk, "plan"), said)
		require.Equal(t, kind, r.Kind, said)
	}
}

// TestRowCardWords: the words of a row card lead to exactly the needles that
// the answer lists.
func TestRowCardWords(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	for _, pattern := range []string{"x..", "x.", "xx..", "x..x....", ".x", "x.........x", "xxxxxxx.", "x.x..xx...", "#--#-", "x..................................."} {
		for _, n := range []int{40, 41, 77, 96, 105, 149} {
			_, r := tk.Turn(s, fmt.Sprintf("%s over %d", pattern, n))
			want, ok := r.Answer["row_needles"].([]string)
			require.True(t, ok, "%s over %d: %s", pattern, n, r.Markdown)
			var got []string
			for _, l := range strings.Split(r.Markdown, "\n") {
				side, words, ok := strings.Cut(l, ": ")
				if ok && (side == "- left" || side == "- right") && words != "none" {
					got = append(got, follow(t, words)...)
				}
			}
			require.Equal(t, want, got, "%s over %d", pattern, n)
		}
	}
}

var turnOf = regexp.MustCompile(`(\d+)(?:st|nd|rd|th)|next`)

// follow walks the needles as a knitter would from the words.
func follow(t *testing.T, words string) []string {
	words, _, _ = strings.Cut(words, "; ")
	parts := strings.Split(words, ", then ")
	side := parts[0][:1]
	at, err := strconv.Atoi(parts[0][1:])
	require.NoError(t, err)
	out := []string{parts[0]}
	for _, p := range parts[1:] {
		p, _, _ = strings.Cut(p, " (to ")
		var steps []int
		times := 1
		if m := regexp.MustCompile(`^the next (\d+) needles?$`).FindStringSubmatch(p); m != nil {
			steps = []int{1}
			times, _ = strconv.Atoi(m[1])
		} else {
			for _, m := range turnOf.FindAllStringSubmatch(p, -1) {
				n := 1
				if m[1] != "" {
					n, _ = strconv.Atoi(m[1])
				}
				steps = append(steps, n)
			}
			switch m := regexp.MustCompile(`(\d+) times$`).FindStringSubmatch(p); {
			case m != nil:
				times, _ = strconv.Atoi(m[1])
			case strings.HasSuffix(p, "twice"):
				times = 2
			}
		}
		for range times {
			for _, st := range steps {
				at += st
				out = append(out, side+strconv.Itoa(at))
			}
		}
	}
	return out
}
