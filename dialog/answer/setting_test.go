package answer

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"foldrow/engine"
	"foldrow/rules"
)

// What was taken is said back as a person would say it: nothing of a thing,
// one of it, and many; "" where the key's span does not reach so far. Many is
// 12, or the most that is usual where 12 cannot be.
func TestEcho(t *testing.T) {
	tests := []struct {
		key             engine.Key
		none, one, many string
	}{
		{"stitch_gauge", "", "", "12 stitches in 10 cm"},
		{"row_gauge", "", "", "12 rows in 10 cm"},
		{"neck", "", "", "neck 60 cm"},
		{"depth", "", "the band 1 cm deep", "the band 12 cm deep"},
		{"depth_rows", "", "", "rows of one layer 12"},
		{"layers", "", "a single layer", "doubled"},
		{"edge_stitches", "no edge stitches", "1 stitch at each edge", "3 stitches at each edge"},
		{"front_band", "", "front bands 1 cm wide", "front bands 12 cm wide"},
		{"seam_stitches", "nothing lost to the seam", "1 stitch lost to the seam at each end", "2 stitches lost to the seam at each end"},
		{"hem_every", "", "hang every bump", "hang every 3rd bump"},
		{"main_tension", "the garment at dial 0", "the garment at dial 1", "the garment at dial 12"},
		{"dial_min", "the dial goes down to 0", "the dial goes down to 1", "the dial goes down to 1"},
		{"clicks_per_number", "", "1 click from one dial number to the next", "4 clicks from one dial number to the next"},
		{"rows_per_click", "no grading", "a click every row", "a click every 12 rows"},
		{"start_clicks", "the band begins at the garment's dial number", "the band begins 1 click tighter than the garment", "the band begins 12 clicks tighter than the garment"},
		{"number_effect", "", "one dial number changes a stitch by 1 %", "one dial number changes a stitch by 12 %"},
		{"click_effect", "", "one click changes a stitch by 1 %", "one click changes a stitch by 12 %"},
		{"fold_row", "no fold row", "a fold row 1 click looser", "a fold row 12 clicks looser"},
		{"bed_needles", "", "", "a bed of 250 needles"},
		{"needle_pitch", "", "", "needles 12 mm apart"},
		{"yoke_stitches", "", "", "12 stitches waiting on the yoke"},
		{"rib_draw", "", "the rib relaxes to 1 of its plain width", "the rib relaxes to 1 of its plain width"},
		{"rib_stretch", "", "the rib stretches to 1 times its width at rest", "the rib stretches to 2.4 times its width at rest"},
		{"edge_stretch", "", "the sewn-off edge stretches to 1 times its width at rest", "the sewn-off edge stretches to 1.6 times its width at rest"},
		{"head", "", "", "a head of 64 cm"},
		{"neck_body", "", "", "the neck of the body 50 cm"},
		{"ease", "no ease at the neck", "1 cm of ease at the neck", "12 cm of ease at the neck"},
		{"yarn_length", "", "", "500 m in 100 g"},
		{"yarn_left", "", "1 g of yarn left", "12 g of yarn left"},
		{"row_yarn", "", "the yarn measures 1 cm a stitch", "the yarn measures 3.6 cm a stitch"},
		{"stitch_weight", "", "a stitch weighs 1 mg", "a stitch weighs 12 mg"},
		{"neck_mid", "", "", "the neck halfway up 46 cm"},
		{"neck_factor", "", "a neck factor of 1", "a neck factor of 1.18"},
		{"slit", "no slit at the neck", "a slit of 1 cm at the neck", "a slit of 12 cm at the neck"},
		{"neck_front_held", "no stitches held at the front neck", "1 stitch held at the front neck", "12 stitches held at the front neck"},
		{"neck_front_rows", "no slope at the front neck", "1 row along each front neck slope", "12 rows along each front neck slope"},
		{"neck_back_held", "no stitches held at the back neck", "1 stitch held at the back neck", "12 stitches held at the back neck"},
		{"neck_back_rows", "no slope at the back neck", "1 row along each back neck slope", "12 rows along each back neck slope"},
		{"neck_sleeve_held", "no stitches held at the sleeve tops", "1 stitch held at each sleeve top", "12 stitches held at each sleeve top"},
		{"pick_ratio", "", "pick up 1 for every 1 row of the slope", "pick up 1 for every 1 row of the slope"},
		{"rest_hours", "no rest", "a rest of 1 hour", "a rest of 12 hours"},
		{"front_edge", "", "", "a front edge of 12 cm"},
		{"front_rows", "", "", "12 rows along the front edge"},
		{"neckband_end", "the neckband's end not added", "the neckband's end added", "the neckband's end added"},
		{"front_gauge", "", "", "the front band at 12 stitches in 10 cm"},
		{"front_row_gauge", "", "", "the front band at 12 rows in 10 cm"},
		{"front_layers", "", "single front bands", "doubled front bands"},
		{"front_count", "", "", "12 stitches counted for the front band"},
		{"buttonholes", "no buttonholes", "1 hole for the buttons", "12 holes for the buttons"},
		{"hole_spacing", "", "buttons 1 cm apart", "buttons 12 cm apart"},
		{"hole_stitches", "", "1 stitch to a buttonhole", "12 stitches to a buttonhole"},
		{"hole_margin", "no margin outside the holes", "1 stitch outside the holes at each end", "12 stitches outside the holes at each end"},
		{"button", "", "", "buttons of 12 mm"},
		{"yoke_first", "", "", "12 stitches on the first stage"},
		{"body_stitches", "", "", "a body of 12 stitches"},
		{"bust", "", "", "a bust of 140 cm"},
		{"yoke_neck", "", "1 stitch at the neck of the yoke", "12 stitches at the neck of the yoke"},
		{"stages", "", "a yoke of 1 stage", "a yoke of 12 stages"},
		{"stage_edge", "no stitches beside the repeats", "1 stitch beside the repeats", "12 stitches beside the repeats"},
		{"yoke_depth", "", "", "a yoke 12 cm deep"},
		{"yoke_rows", "", "", "12 rows in the yoke"},
		{"chart_stage", "", "the chart on stage 1", "the chart on stage 12"},
		{"chart_stitches", "", "", "the chart over 12 stitches"},
		{"chart_times", "", "the chart once", "the chart 12 times over"},
		{"float_limit", "", "floats up to 1 cm left alone", "floats up to 12 cm left alone"},
		{"float_stitches", "", "floats up to 1 stitch left alone", "floats up to 12 stitches left alone"},
	}
	book, err := rules.Load()
	require.NoError(t, err)
	v := Voice{Book: book, Unit: "cm"}
	tried := map[engine.Key]bool{}
	for _, tt := range tests {
		tried[tt.key] = true
		card, ok := book.Key(tt.key)
		require.True(t, ok, tt.key)
		possible := func(n engine.Num) bool {
			return !card.HasSpan || !n.Less(card.Possible[0]) && !card.Possible[1].Less(n)
		}
		echo := func(n engine.Num) string { return v.Echo(tt.key, n, v.Figure(tt.key, n.Float())) }
		for n, want := range map[int64]string{0: tt.none, 1: tt.one} {
			if want == "" {
				assert.False(t, possible(engine.Int(n)), "%s of %d can be said", tt.key, n)
				continue
			}
			assert.Equal(t, want, echo(engine.Int(n)))
		}
		many := engine.Int(12)
		if !possible(many) {
			many = card.Usual[1]
		}
		assert.Equal(t, tt.many, echo(many))
	}
	for _, k := range engine.InputKeys() {
		assert.True(t, tried[k] || !engine.IsNumber(k), "%s: say how it is echoed", k)
	}
}
