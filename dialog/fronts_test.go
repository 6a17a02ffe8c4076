package dialog_test

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
	"foldrow/rules"
)

// front is one line said once the front edge is known, and what must come of
// it.
type front struct {
	said, kind string
	changes    map[string]any
	answer     map[string]any
	says       string
}

// TestFronts: what is told is set, what is asked is answered and sets nothing.
// Worked by hand: 28 stitches in 10 cm over 52 cm and 3.0475 cm of neckband are
// 154.1, for 1x1 with two edge stitches 155; 208 rows and 13 of the neckband are
// 221; (96 - 8 - 15) / 4 = 18 1/4; 20 mm and 3 mm at 28 stitches are 6.4;
// a loop of sqrt(21.6 * 100 / (28 * 40)) = 1.38873 cm makes 2 * (155 * 1.38873 * 25 + 3 * 155 * 0.65 + 30) / 100 =
// 114.27 m of both bands.
func TestFronts(t *testing.T) {
	for _, tt := range []front{
		{"how many stitches do I pick up along a 52 cm front edge?", "number", nil, map[string]any{
			"front_stitches": 155, "front_ratio": "7 of 10", "front_ratio_error": -0.3}, "counted once"},
		{"how many to pick up along 52 cm with the neckband at 30 sts per 10 cm", "number", nil, map[string]any{"front_stitches": 157, "front_ratio": "3 of 4"}, "make 156"},
		{"how many to pick up along a 50cm front band", "number", nil, map[string]any{"front_stitches": 149}, ""},
		{"208 rows along the edge", "change", map[string]any{"front_rows": 208.0}, nil, "Over the edge's 221 rows that"},
		{"the front band has 30 stitches in 10 cm", "change", map[string]any{"front_gauge": 30.0}, map[string]any{"front_stitches": 165}, "at 30 stitches"},
		{"front bands in 2x2", "change", map[string]any{"front_rib": "2x2"}, map[string]any{"front_stitches": 154}, "for a 2x2 rib"},
		{"with the neckband", "unclear", nil, nil, ""},
		{"front edge 52 cm with the neckband", "change", map[string]any{"front_edge": 52.0, "neckband_end": 0.0}, map[string]any{"front_stitches": 145}, "make 145.6"},
		{"single front bands", "change", map[string]any{"front_layers": 1.0}, map[string]any{"front_layer_rows": 12, "front_total_rows": 12}, "single layer"},

		{"seven buttonholes", "change", map[string]any{"buttonholes": 7.0}, map[string]any{
			"hole_positions": []int{4, 28, 53, 77, 102, 126, 151}, "hole_rows": []int{6, 19}}, "safety rules come first"},
		{"5 buttonholes of 3 sts over 96, margins 4", "change", map[string]any{"buttonholes": 5.0, "hole_stitches": 3.0, "front_count": 96.0, "hole_margin": 4.0}, map[string]any{
			"hole_positions": []int{5, 26, 47, 69, 90}, "hole_gaps": []int{18, 18, 19, 18}, "hole_rows": []int{6, 19}}, "mirrored about the fold"},
		{"how would 7 buttonholes sit over 120 stitches?", "number", nil, map[string]any{
			"hole_positions": []int{4, 23, 41, 60, 79, 97, 116}, "hole_gaps": []int{17, 16, 17, 17, 16, 17}}, "needles L57+L56"},
		{"7 buttons on 96 stitches", "change", map[string]any{"buttonholes": 7.0, "front_count": 96.0}, map[string]any{"hole_positions": []int{4, 19, 33, 48, 63, 77, 92}}, ""},
		{"40 buttonholes over 96", "change", map[string]any{"buttonholes": 40.0, "front_count": 96.0}, nil, "at most 30 do"},
		{"buttons 8 cm apart", "change", map[string]any{"hole_spacing": 8.0}, map[string]any{"buttonholes": 8.0}, "8 buttonholes"},
		{"how many buttonholes at 8 cm apart", "number", nil, map[string]any{"buttonholes": 8.0}, ""},
		{"overlap for a 20 mm button", "number", nil, map[string]any{"overlap_low": 2.0, "overlap_high": 3.27, "hole_length": 2.3}, "23 mm"},
		{"20 mm buttons", "change", map[string]any{"button": 20.0}, nil, "6 stitches at 28"},
		{"45 mm buttons", "change", map[string]any{"button": 45.0}, nil, "wants an overlap of 4.5 cm"},

		{"how long an edge for 96 stitches", "backwards", nil, map[string]any{"front_length": 31.2382}, ""},
		{"which margin makes the gaps even for 5 buttonholes over 96", "backwards", nil, map[string]any{"hole_margin": 3, "hole_gap": 20.0}, ""},
		{"what if the front edge is 50 cm", "whatif", map[string]any{"front_edge": 50.0}, nil, "| 149 |"},
		{"what if I use 9 buttons", "whatif", map[string]any{"buttonholes": 9.0}, nil, "gaps as knitted"},
		{"compare 5 and 7 buttonholes", "compare", nil, nil, "5 holes"},
		{"why 155", "why", nil, map[string]any{"front_stitches": 155}, "(52 + 3.0475) * 28 / 10"},
		{"why the pick-up ratio", "why", nil, map[string]any{"front_ratio": "7 of 10"}, "155 / (208 + 13) = 0.7014"},
		{"how wide is the front band", "number", nil, nil, ""},
		{"how many rows for the front band", "number", nil, map[string]any{"front_layer_rows": 12}, "12 rows a layer"},
		{"how much yarn for the front bands", "number", nil, map[string]any{"front_yarn": 116.3383}, ""},
		{"how much yarn for everything", "number", nil, map[string]any{"all_yarn": 155.6941}, "its closing row"},
	} {
		t.Run(tt.said, func(t *testing.T) {
			tk := talk(t)
			s, _ := tk.Turn(arrive(t, tk, "plan"), "the front edge is 52 cm")
			after, r := tk.Turn(s, tt.said)
			require.Equal(t, tt.kind, r.Kind, r.Markdown)
			if tt.changes == nil {
				tt.changes = map[string]any{}
				require.Equal(t, s.Said, after.Said)
			}
			require.Equal(t, tt.changes, r.Changes)
			require.Contains(t, r.Markdown, tt.says)
			for k, want := range tt.answer {
				if f, ok := want.(float64); ok {
					require.InDelta(t, f, r.Answer[k], 0.05, "%s in %v", k, r.Answer)
					continue
				}
				require.Equal(t, want, r.Answer[k], k)
			}
		})
	}
}

// TestOfferedLines: the line that an answer offers to set something sets it.
func TestOfferedLines(t *testing.T) {
	tk := talk(t)
	book, err := rules.Load()
	require.NoError(t, err)
	for _, card := range book.Keys {
		if card.Part != "fronts" {
			continue
		}
		s, _ := tk.Turn(arrive(t, tk, "plan"), "the front edge is 52 cm")
		_, r := tk.Turn(s, card.Example)
		require.Equal(t, "change", r.Kind, "%s: %s\n%s", card.Key, card.Example, r.Markdown)
		require.Contains(t, r.Changes, string(card.Key), card.Example)
	}
}

// TestFrontsBare: without an edge the questions say what is missing, and the
// ratio is known by gauge alone.
func TestFrontsBare(t *testing.T) {
	tk := talk(t)
	for _, tt := range []front{
		{said: "pick-up ratio for front bands", kind: "number", answer: map[string]any{"front_ratio": "7 of 10"}, says: "0.7"},
		{said: "how many stitches do I pick up along the front", kind: "number", says: "the front edge is 52 cm"},
		{said: "seven buttonholes", kind: "change", says: "your own count"},
		{said: "what is usual for the margin outside the holes", kind: "measure", says: "Sources differ"},
		{said: "how do I make buttonholes in the front band?", kind: "howto", says: "neighbour"},
	} {
		_, r := tk.Turn(arrive(t, tk, "plan"), tt.said)
		require.Equal(t, tt.kind, r.Kind, "%s: %s", tt.said, r.Markdown)
		require.Contains(t, r.Markdown, tt.says, tt.said)
		for k, want := range tt.answer {
			require.Equal(t, want, r.Answer[k], k)
		}
	}
}

// TestFrontsGoOn: what was said of the front bands survives a restart, a
// what-if goes on from the one before, and undo takes it back.
func TestFrontsGoOn(t *testing.T) {
	tk := talk(t)
	s := arrive(t, tk, "plan")
	s, r := tk.Turn(s, "why the stitches")
	require.NotContains(t, r.Facts().Inputs, "hole_margin", "a part not in use shows no defaults")
	s, _ = tk.Turn(s, "the front edge is 52 cm")
	s, _ = tk.Turn(s, "front bands in 2x2")
	s, _ = tk.Turn(s, "seven buttonholes")
	b, err := json.Marshal(s)
	require.NoError(t, err)
	var again dialog.State
	require.NoError(t, json.Unmarshal(b, &again))
	require.Equal(t, s.Said, again.Said)
	s, _ = tk.Turn(again, "what if I use 9 buttons")
	s, r = tk.Turn(s, "and with 5?")
	require.Equal(t, map[string]any{"buttonholes": 5.0}, r.Changes)
	require.Equal(t, 5.0, r.Facts().Inputs["buttonholes"])
	s, _ = tk.Turn(s, "keep")
	s, r = tk.Turn(s, "undo")
	require.Equal(t, 7.0, r.Facts().Inputs["buttonholes"])
}

// TestYarnCounts: a count asked for is told, a count of one's own is set. By
// hand: 12 x 560 yd in a pound are 1354.69 m in 100 g; 3000 stitches of 9 g are
// 3 g a thousand.
func TestYarnCounts(t *testing.T) {
	tk := talk(t)
	for _, tt := range []front{
		{"2/24 worsted count in metres per 100 g", "number", nil, map[string]any{"yarn_length": 1354.6895}, "2 threads"},
		{"what is 437 yards to 100 g", "number", nil, map[string]any{"yarn_length": 399.5928}, "399.6 m"},
		{"Nm 2/30 in tex", "number", nil, map[string]any{"yarn_tex": 66.6667}, "66.7 tex"},
		{"my yarn is Nm 2/30", "change", map[string]any{"yarn_length": 1500.0}, nil, ""},
		{"my swatch of 50 stitches and 60 rows weighs 9 g", "change", map[string]any{"stitch_weight": 3.0}, nil, ""},
	} {
		_, r := tk.Turn(arrive(t, tk, "plan"), tt.said)
		require.Equal(t, tt.kind, r.Kind, "%s: %s", tt.said, r.Markdown)
		if tt.changes != nil {
			require.Equal(t, tt.changes, r.Changes)
		}
		require.Contains(t, r.Markdown, tt.says)
		for k, want := range tt.answer {
			require.InDelta(t, want, r.Answer[k], 1e-4, k)
		}
	}
}
