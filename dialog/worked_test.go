package dialog_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// loop is the length of a loop, cm, at 28 stitches and 40 rows in 10 cm in
// washed plain knitting: the square root of 21.6 over 2.8 * 4 (Munden, as
// tabulated in Spencer's Knitting Technology).
var loop = math.Sqrt(21.6 / (2.8 * 4))

// TestWorkedByHand says three jobs as a knitter would, and holds every number
// against the same worked out with pencil and calculator.
func TestWorkedByHand(t *testing.T) {
	for _, tt := range []struct {
		name string
		said []string
		want map[string]any
	}{
		{"fronts with buttonholes", []string{"cardigan 28/40 neck 42 1x1 depth 3", "front edge 40 cm", "seven buttonholes", "20 mm buttons"}, map[string]any{
			// (42 - 3) * 2.8 + 2 = 111.2; counts of 1x1 with two at each end are odd.
			"band_stitches": 111,
			// 13 rows, clicks 0 0 1 1 2 2 3 3 4 4 5 5 6 sum to 36: (13 - 36 * 0.0225) / 4.
			"layer_rows": 13, "depth_result": 3.0475,
			// (40 + 3.0475) * 2.8 = 120.533, of 119, 121, 123 the nearest.
			"front_stitches": 121, "front_left": "L61", "front_right": "R60",
			// 40 * 4 = 160 rows and the 13 of the neckband's outer layer. 121 / 173 is
			// 0.69942: 7/10 is 0.0006 off, 5/7 0.015, 2/3 0.033. 173 * 0.7 - 121 = 0.1.
			"front_ratio": "7 of 10", "front_ratio_error": 0.1,
			"front_length": 121/2.8 - 3.0475,
			// 3 * 4 rows; a hole in the 6th and in the one that lies on it, 25 - 6.
			"front_layer_rows": 12, "front_total_rows": 24, "hole_rows": []int{6, 19},
			// 20 mm and 3 mm (frkbustad.blogspot.com 2010) at 2.8 are 6.44. 121 - 2 * 3 -
			// 7 * 6 = 73 over 6 gaps: 12 each and 1 over, in the middle.
			"hole_length": 2.3, "hole_gap": 73.0 / 6, "hole_gaps": []int{12, 12, 12, 13, 12, 12},
			"hole_positions": []int{4, 22, 40, 58, 77, 95, 113}, "hole_distance": (73.0/6 + 6) / 2.8,
			// 20 mm, and half an inch more (sewing professionals' standards).
			"overlap_low": 2.0, "overlap_high": 3.27,
			// Both: 24 rows and the closing row, and three widths at 6.5 mm with 30 cm.
			"front_yarn": 2 * (121*25*loop + 3*121*0.65 + 30) / 100,
			// 2 * (13 - 0.81) + 1 rows at the garment's tension.
			"band_yarn": (111*25.38*loop + 3*111*0.65 + 30) / 100,
			"all_yarn":  (111*25.38*loop+3*111*0.65+30)/100 + 2*(121*25*loop+3*121*0.65+30)/100,
		}},
		{"yarn from a weighed swatch", []string{"cardigan 28/40 neck 42 1x1 depth 3", "a swatch of 50 stitches and 60 rows weighs 9 g", "front edge 40 cm", "60 g left"}, map[string]any{
			// 9 g over 3000 stitches are 3 mg; 100 g are 33333 stitches of that loop, and
			// 1000 m weigh 3 mg over the loop.
			"yarn_length": 100 / 0.003 * loop / 100, "yarn_tex": 3 / loop * 100,
			"loop_length": loop, "tightness": math.Sqrt(3/loop*100) / (10 * loop),
			"off_yarn": 3*111*0.65 + 30, "closing_yarn": 111 * loop / 100,
			// In stitches: 111 * 25.38, and what is sewn off over the loop, 3 mg each.
			"band_yarn_grams":  0.003 * (111*25.38 + (3*111*0.65+30)/loop),
			"front_yarn_grams": 0.003 * 2 * (121*25 + (3*121*0.65+30)/loop),
			"all_yarn_grams":   0.003 * (111*25.38 + (3*111*0.65+30)/loop + 2*(121*25+(3*121*0.65+30)/loop)),
		}},
		{"head over a pullover's band", []string{"pullover 28/40 neck 50 1x1 depth 3", "head 60"}, map[string]any{
			// 50 * 2.8 + 2 = 142 lies between 141 and 143: the larger.
			"band_stitches": 143, "neck_result": 141 / 2.8, "seam_width": 141 / 2.8,
			// The fold stands 6 clicks of 2.25 % tighter.
			"fold_clicks": 6, "fold_circumference": 141 / 2.8 * 0.865,
			"relaxed_circumference":   141 / 2.8 * 0.865 * 0.7,
			"stretched_circumference": 141 / 2.8 * 0.865 * 0.7 * 1.96,
			// The seam would reach 50.357 * 1.4 = 70.5, the fold 59.763: the weaker holds.
			"head_opening": 141 / 2.8 * 0.865 * 0.7 * 1.96, "head_needed": 62.0,
			"head_missing": 62 - 141/2.8*0.865*0.7*1.96,
			"head_largest": 141/2.8*0.865*0.7*1.96 - 2,
			// 2.237 over two sides is 1.12, to the next half centimetre.
			"slit_length":  1.5,
			"lean_degrees": math.Asin(141/2.8*0.135/(2*math.Pi*3.0475)) * 180 / math.Pi,
		}},
		{"head over it with a slit", []string{"pullover 28/40 neck 50 1x1 depth 3", "head 60", "slit 6 cm"}, map[string]any{
			"head_opening": 141/2.8*0.865*0.7*1.96 + 12, "head_missing": 0.0,
		}},
		{"head over a firm edge", []string{"pullover 28/40 neck 50 1x1 depth 3", "head 56", "edge stretch 1.1"}, map[string]any{
			"head_opening": 141 / 2.8 * 1.1, // the sewn edge is the weaker one
			"head_missing": 58 - 141/2.8*1.1,
		}},
		{"head over a mock rib", []string{"pullover 28/40 neck 50 1x1 depth 3", "head 56", "mock rib"}, map[string]any{
			// All rows 8 clicks tighter: 0.82; drawn in and stretched as we estimate.
			"band_stitches": 143, "fold_circumference": 141 / 2.8 * 0.82, "relaxed_circumference": 141 / 2.8 * 0.82 * 0.85,
			"head_opening": 141 / 2.8 * 0.82 * 0.85 * 1.3,
			// 3 * 4 / 0.82 = 14.6 rows. 143 = 2 + 70 purl + 69 knit + 2.
			"layer_rows": 15, "work_stitches": 73, "hem_count": 70,
		}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			tk := talk(t)
			s, _ := tk.Begin()
			_, r := say(t, tk, s, tt.said...)
			facts := r.Facts()
			for k, want := range tt.want {
				got, ok := facts.Results[k]
				if !ok {
					got, ok = facts.Inputs[k]
				}
				require.True(t, ok, k)
				if f, isFloat := want.(float64); isFloat {
					require.InDelta(t, f, got, 0.0001, k)
					continue
				}
				require.Equal(t, want, got, k)
			}
		})
	}
}
