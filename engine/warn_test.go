package engine

import "testing"

// TestWarnings: each caution comes where it is due and brings its numbers.
func TestWarnings(t *testing.T) {
	for _, c := range []struct {
		name   string
		pairs  []string
		code   string // "" for none at all
		values map[string]string
	}{
		{"a sound plan", nil, "", nil},
		{"rows and stitches swapped", []string{"stitch_gauge", "30", "row_gauge", "22"}, SwatchRatio, map[string]string{"ratio": "11/15"}},
		{"ratio at its end", []string{"stitch_gauge", "20", "row_gauge", "32"}, "", nil},
		{"ratio past it", []string{"stitch_gauge", "20", "row_gauge", "33"}, SwatchRatio, map[string]string{"ratio": "33/20"}},
		{"fine yarn on a coarse bed", []string{"needle_pitch", "9.2"}, PitchRatio, map[string]string{"ratio": "125/253"}},
		{"coarse yarn on a fine bed", []string{"needle_pitch", "9/2"}, PitchRatio, map[string]string{"ratio": "100/99"}},
		{"a band as wide as the neck", []string{"front_band", "42"}, BandOverNeck, map[string]string{"neck": "42", "front_band": "42"}},
		{"bed", []string{"bed_needles", "80"}, BedTooSmall, map[string]string{"band_stitches": "87", "bed_needles": "80", "choice": "79", "choice_neck": "38", "pieces": "2"}},
		{"yoke", []string{"yoke_stitches", "86"}, YokeTooSmall, map[string]string{"yoke_stitches": "86", "choice": "85"}},
		{"stages", []string{"yoke_stitches", "175"}, TwoStages, map[string]string{"yoke_decreases": "88", "stages": "2"}},
		{"no stages", []string{"yoke_stitches", "174"}, "", nil},
		{"held by the dial", []string{"main_tension", "2"}, TensionHeld, map[string]string{"row": "7", "clicks": "2", "by_dial": "1"}},
		{"held at a fifth", []string{"main_tension", "9", "depth_rows", "30"}, TensionHeld, map[string]string{"row": "19", "clicks": "8", "by_dial": "0"}},
		{"too shallow", []string{"depth", "1/2"}, DepthOutOfReach, map[string]string{"depth": "1/2", "layer_rows": "3"}},
		{"too many rows", []string{"depth_rows", "90", "rows_per_click", "0"}, DepthOutOfReach, map[string]string{"depth_rows": "90", "layer_rows": "80"}},
		{"cannot lean so", []string{"neck", "80", "start_clicks", "8", "depth_rows", "3"}, LeanHeld, nil},
		{"short", []string{"yarn_left", "10"}, YarnIsShort, map[string]string{"need_low": "71/5", "need_high": "78/5", "yarn_left": "10"}},
		{"tight", []string{"yarn_left", "15"}, YarnIsTight, map[string]string{"need_low": "71/5", "need_high": "78/5"}},
		{"a pullover's head", []string{"garment", "pullover"}, HeadUnknown, nil},
		{"tight head", []string{"garment", "pullover", "neck", "38", "head", "57"}, HeadTight, map[string]string{"needed": "59", "edge": "0"}},
		{"tight edge", []string{"garment", "pullover", "neck", "40", "head", "56", "rib_stretch", "3"}, HeadTight, map[string]string{"needed": "58", "edge": "1"}},
		{"a head that passes", []string{"garment", "pullover", "neck", "44", "head", "45"}, "", nil},
	} {
		ws := Solve(with(t, cardigan(t), c.pairs...)).Warnings()
		if c.code == "" {
			if len(ws) != 0 {
				t.Errorf("%s: %v, want none", c.name, ws)
			}
			continue
		}
		found := false
		for _, w := range ws {
			if w.Code != c.code {
				continue
			}
			found = true
			for name, want := range c.values {
				if n, ok := w.Values[name]; !ok || n.String() != want {
					t.Errorf("%s: %s = %v, want %s", c.name, name, n, want)
				}
			}
		}
		if !found {
			t.Errorf("%s: %v, want %s", c.name, ws, c.code)
		}
	}
}
