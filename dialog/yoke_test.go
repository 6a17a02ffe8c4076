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

// TestYoke says and asks things of the yoke and its chart. The counts were
// worked by hand: 240 to 105 in three cuts of 45 with the nearest repeats.
func TestYoke(t *testing.T) {
	for _, tt := range []struct {
		context, said, kind string
		answer              map[string]any
		says                string
	}{
		{"plan", "3 stages 240 to 105, repeats 12 8 6", "change", map[string]any{
			"stage_counts": []int{240, 192, 150, 105}, "stage_decreases": []int{48, 42, 45}, "stage_pieces": []int{2, 2, 1, 1}}, "195 (-3)"},
		{"open garment", "3 stages from 240 to 105 repeat 12", "change", map[string]any{"stage_counts": []int{240, 192, 156, 105}}, "Only the neckband fits"},
		{"plan", "yoke from 240 stitches", "change", map[string]any{"stage_counts": []int{240, 195, 150, 105}}, "taking 3 stages"},
		{"plan", "yoke for a body of 180 stitches", "change", map[string]any{"stage_counts": []int{242, 196, 151, 105}}, "published percentages"},
		{"plan", "4 stages 300 to 80 percentages", "change", map[string]any{"stage_counts": []int{300, 200, 150, 113, 80}}, "two quarters"},
		{"plan", "3 stages 300 to 80, a quarter then a third then two fifths off", "change", map[string]any{"stage_counts": []int{300, 225, 150, 80}}, "47 %"},
		{"plan", "3 stages 240 to 100 by a straight cone, heights 8 4 2 cm", "change", map[string]any{"stage_counts": []int{240, 160, 120, 100}}, "straight cone"},
		{"plan", "how would the yoke go from 240 in 3 stages?", "number", map[string]any{"stage_counts": []int{240, 195, 150, 105}}, "The plan is not changed"},
		{"plan", "what if the yoke is 240 in 3 stages", "whatif", nil, "240, 195, 150, 105"},
		{"plan", "help me with the yoke", "number", nil, "yoke for a body of 180 stitches"},
		{"plan", "3 stages 240 to 105 by percentages c", "change", nil, "published for 4 stages, not 3. The nearest that works: 240, 195, 150"},
		{"plan", "yoke from 400 stitches repeat 200", "change", nil, "a repeat of 150 or fewer fits"},
		{"plan", "yoke from 100 stitches to 5000", "unclear", nil, "2000"},
		{"plan", "yoke from 90", "change", nil, "at most 89 is reached"},
		{"plan", "how deep is the yoke for a 94 cm bust", "number", map[string]any{
			"yoke_depth_low": 19.0, "yoke_depth_high": 20.0, "yoke_depth_rule": 23.5}, "3.5 cm too deep"},
		{"plan", "100 stages 240 to 105", "unclear", nil, "20 stages"},
		{"plan", "how deep is the yoke", "number", nil, "94 cm bust"},

		{"plan", "contrast every fourth over 105 stitches", "change", map[string]any{"chart_contrast": []int{26}, "chart_main": []int{79}, "float_longest": 3, "float_most": 7}, "repeat 4, over **105 stitches**"},
		{"plan", "row 1 contrast every fourth, row 2 every other, row 3 the ones beside last row's over 105", "change", map[string]any{"chart_contrast": []int{26, 53, 52}}, "3 rows"},
		{"plan", "x..x.. over 105", "change", map[string]any{"chart_contrast": []int{35}, "float_longest": 2}, "both edges match"},
		{"plan", "x.........x over 96", "change", map[string]any{"float_longest": 9}, "9, catch"},
		{"plan", "x..x.. / .xx. over 144", "change", map[string]any{"chart_contrast": []int{48, 72}}, "repeat 12"},
		{"plan", "contrast every fourth over 300 stitches", "change", map[string]any{"chart_contrast": []int{75}}, "in 3 pieces"},
		{"plan", "contrast every fourth", "change", nil, "Over how many stitches"},
		{"plan", "longest float allowed", "number", map[string]any{"float_most": 7}, "2.5 cm"},
	} {
		t.Run(tt.said, func(t *testing.T) {
			tk := talk(t)
			s := arrive(t, tk, tt.context)
			after, r := tk.Turn(s, tt.said)
			require.Equal(t, tt.kind, r.Kind, r.Markdown)
			require.Contains(t, r.Markdown, tt.says)
			if tt.kind == "number" || tt.kind == "unclear" {
				require.Empty(t, r.Changes)
				require.Equal(t, s.Said, after.Said)
			} else {
				require.NotEmpty(t, r.Changes)
			}
			for k, want := range tt.answer {
				require.Equal(t, want, r.Answer[k], k)
			}
		})
	}
}

// TestYokeGoesOn: the yoke is part of the plan: what-ifs go on from each
// other, are kept and taken back, and stand after a restart.
func TestYokeGoesOn(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	say := func(line, kind, says string) dialog.Reply {
		t.Helper()
		var r dialog.Reply
		s, r = tk.Turn(s, line)
		require.Equal(t, kind, r.Kind, r.Markdown)
		require.Contains(t, r.Markdown, says)
		return r
	}
	say("3 stages 240 to 105, repeats 12 8 6", "change", "240, 192, 150, then 105")
	b, err := json.Marshal(s)
	require.NoError(t, err)
	s = dialog.State{}
	require.NoError(t, json.Unmarshal(b, &s))
	r := say("what if I use four stages", "whatif", "240, 208, 174, 138, 105")
	require.Equal(t, map[string]any{"stages": 4.0}, r.Changes)
	say("and with 5?", "whatif", "240, 216, 186, 162, 132, 105")
	say("keep", "keep", "stages")
	say("why 162 at stage 4", "why", "240 - (240 - 105) * 3 / 5 = 159 -> 162")
	say("undo", "undo", "The plan is")
	say("compare 3 and 4 stages", "compare", "240, 208, 174, 138, 105")
	say("how do I hang stage 2", "number", "**Stage 2: 192 stitches**")
	r = say("I have 191 on stage 2", "change", "150 stitches**, from 191, the count you have")
	require.Equal(t, map[string]any{"stage_had": "2=191"}, r.Changes)
	require.Equal(t, "2=191", r.Facts().Inputs["stage_had"])
	say("what are the decreases of the yoke", "number", "45") // the band's, from the last stage
	say("how many stages so that no cut is over a fifth", "backwards", "**6 stages**")
	say("what first stage gives 150 at stage 3", "backwards", "first stage")
	say("undo", "undo", "191 on stage 2")
	say("4 stages", "change", "Yoke of 4 stages")
	say("sequence a", "unclear", "published for 3 stages, and your yoke has 4")
	say("what if we use percentages", "whatif", "240, 160, 108, 105") // a supposition shows what it drops
	say("drop", "drop", "Dropped")
	say("sequence a in 3 stages", "change", "Yoke of 3 stages")
	say("5 stages", "change", "Yoke of 5 stages")
	say("use percentages", "unclear", "your yoke has 5")
	say("straight cone", "change", "Yoke of 5 stages")
	say("yoke by thirds", "unclear", "published for 3 stages")
	r = say("yoke from 288 in 5 stages, reps 12, now waiting 144", "change", "288, 252, 216, 180, 144, then 105")
	require.Equal(t, map[string]any{"yoke_first": 288.0, "stages": 5.0, "stage_repeats": "12", "yoke_stitches": 144.0}, r.Changes)
	r = say("stage edge 1", "change", "144 + 144") // whole repeats: the pieces part on one
	require.Equal(t, map[string]any{"stage_edge": 1.0}, r.Changes)
	require.NotContains(t, r.Markdown, "138")
}

// TestChartGoesOn: the chart takes the yoke's last stage, and its place and
// limit can be changed.
func TestChartGoesOn(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	for _, tt := range []struct{ said, kind, says string }{
		{"yoke of 240 in 3 stages", "change", "150"},
		{"chart x... / .x.x", "change", "over **150 stitches**, stage 3"},
		{"middle at the centre", "change", "The middle of a repeat is at the centre"},
		{"chart on stage 1", "change", "stage 1, in 2 pieces"},
		{"float limit 0.8 cm", "change", "3, catch"},
		{"card for row 2", "number", "Row 2 of 2"},
		{"card 2", "number", "Row 2 of 2"},
		{"card row 2", "number", "Row 2 of 2"},
		{"row card 2", "number", "Row 2 of 2"},
		{"c/w row 2", "number", "Row 2 of 2"},
		{"card", "number", "Chart of 2 rows"},
		{"catch floats", "number", "- Row 1, piece 1: "},
		{"float limit 5 stitches", "change", "Limit here: 5"},
		{"catch needles", "number", "**None**: no float of this chart passes the limit of 5 stitches; the longest is 3"},
		{"which needles come forward", "number", "**Row 2**"},
		{"row 2 xx..", "change", "| 1 | `x...` |"},
		{"chart row 2 .x.x", "change", "| 2 | `.x.x` |"},
		{"row 2 .x...", "unclear", "Row 2 would be 5 stitches wide"},
		{"row 4 x...", "unclear", "The chart has rows 1 to 2"},
		{"row 3 x...", "change", "Chart of 3 rows"},
		{"undo", "undo", "Taken back"},
		{"card for row 9", "number", "rows 1 to 2"},
		{"draw the chart", "number", "row1"},
		{"what if main tension is 6", "whatif", "| dial for two-colour rows | - | 7 |"},
		{"drop", "drop", "Dropped"},
		{"why the contrast yarn of the stage", "why", "* 1.389 + "},
	} {
		var r dialog.Reply
		s, r = tk.Turn(s, tt.said)
		require.Equal(t, tt.kind, r.Kind, "%s: %s", tt.said, r.Markdown)
		require.Contains(t, r.Markdown, tt.says, tt.said)
	}
}

// TestChartWalk: the rows of a chart are walked like the band's, one card a
// step, and undo takes a step back.
func TestChartWalk(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	for _, tt := range []struct{ said, says string }{
		{"start the chart", "There is no chart to walk yet"},
		{"chart x... / .x.x / x.x. over 105 stitches", "3 rows"},
		{"start the chart", "Chart row 1 of 3"},
		{"next", "Chart row 2 of 3"},
		{"", "Chart row 2 of 3"},
		{"where am I", "1 row knitted, 2 to go"},
		{"back", "Chart row 1 of 3"},
		{"back", "This is the first row"},
		{"row 3", "The last row of the chart"},
		{"row 7", "rows 1 to 3"},
		{"undo", "row 1 of 3 of the chart"},
		{"done 2 rows", "Chart row 3 of 3"},
		{"next", "**The chart is knitted.** The last row leaves 53 contrast loops"},
		{"start the chart", "Chart row 1 of 3"},
		{"start knitting", "1 of "},
	} {
		var r dialog.Reply
		s, r = tk.Turn(s, tt.said)
		require.Contains(t, r.Markdown, tt.says, tt.said)
	}
}

// needlesOf is the first piece's needles of a row card.
func needlesOf(r dialog.Reply) ([]string, bool) {
	l, ok := r.Answer["chart_needles"].([]string)
	return l, ok
}

// TestRowCardWords: the words of a row card lead to exactly the needles that
// the answer lists.
func TestRowCardWords(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	for _, pattern := range []string{"x..", "x.", "xx..", "x..x....", ".x", "x.........x", "xxxxxxx.", "x.x..xx...", "#--#-", "x..................................."} {
		for _, n := range []int{40, 41, 77, 96, 105, 149} {
			_, r := tk.Turn(s, fmt.Sprintf("what does %s over %d take, card for row 1", pattern, n))
			want, ok := needlesOf(r)
			require.True(t, ok, "%s over %d: %s", pattern, n, r.Markdown)
			var got []string
			for _, l := range strings.Split(r.Markdown, "\n") {
				side, words, ok := strings.Cut(l, ": ")
				if ok && (side == "- Left, out from the centre" || side == "- Right") && words != "none." {
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
