package engine

import (
	"encoding/json"
	"testing"
)

// with is in with one number after another set from their text.
func with(t interface{ Fatalf(string, ...any) }, in Inputs, pairs ...string) Inputs {
	for i := 0; i+1 < len(pairs); i += 2 {
		next, ok := in.Parse(Key(pairs[i]), pairs[i+1])
		if !ok {
			t.Fatalf("cannot set %s to %q", pairs[i], pairs[i+1])
		}
		in = next
	}
	return in
}

// usual is the defaults of the design's table, with 1x1 rib's factors.
func usual(t interface{ Fatalf(string, ...any) }) Inputs {
	return with(t, Inputs{},
		"layers", "2", "edge_stitches", "2", "front_band", "3", "seam_stitches", "1",
		"hem_every", "2", "dial_min", "1", "clicks_per_number", "2", "rows_per_click", "2",
		"start_clicks", "0", "number_effect", "9/2", "fold_row", "0", "bed_needles", "150",
		"needle_pitch", "13/2", "rib_draw", "7/10", "rib_stretch", "49/25",
		"edge_stretch", "7/5", "ease", "2")
}

// cardigan is a whole plan on the usual defaults: 22/30 in 10 cm, a 42 cm
// neck, 1x1 and a 3 cm band.
func cardigan(t interface{ Fatalf(string, ...any) }) Inputs {
	return with(t, usual(t), "garment", "cardigan", "stitch_gauge", "22", "row_gauge", "30",
		"neck", "42", "rib", "1x1", "depth", "3", "main_tension", "5",
		"yoke_stitches", "120", "yarn_length", "225", "yarn_left", "50")
}

func TestValueIsJSON(t *testing.T) {
	p := Solve(cardigan(t))
	for _, k := range ResultKeys() {
		v, ok := p.Value(k)
		if !ok && k != HeadOpening {
			t.Errorf("%s is missing from a whole plan", k)
			continue
		}
		b, err := json.Marshal(v)
		if err != nil {
			t.Errorf("%s: %v", k, err)
		}
		t.Logf("%s = %s", k, b)
	}
}

func BenchmarkSolve(b *testing.B) {
	in := cardigan(b)
	b.ReportAllocs()
	for b.Loop() {
		Solve(in)
	}
}
