package engine

import "testing"

func TestShake(t *testing.T) {
	body := with(t, cardigan(t).Without(Neck), "neck_body", "40")
	for _, c := range []struct {
		name     string
		in       Inputs
		key      Key
		delta    string
		of       Key
		down, up float64
	}{
		{"half a stitch of gauge", cardigan(t), StitchGauge, "1/2", WantedStitches, 39*2.15 + 2, 39*2.25 + 2},
		{"a cm of neck", cardigan(t), Neck, "1", WantedStitches, 85.6, 90},
		{"a cm of neck that follows from the body", body, Neck, "1", WantedStitches, 85.6, 90},
		{"half a percent a click that follows from a number", cardigan(t), ClickEffect, "1/2", DepthResult, 8.72 / 3, 8.56 / 3},
		{"a row", with(t, cardigan(t), "depth_rows", "8"), DepthRows, "1", TotalRows, 14, 18},
		{"what was not said", cardigan(t), Head, "1", BandStitches, 87, 87},
	} {
		delta, _ := ParseNum(c.delta)
		down, up := Shake(c.in, c.key, delta)
		d, _ := down.Float(c.of)
		u, _ := up.Float(c.of)
		if !near(d, c.down) || !near(u, c.up) {
			t.Errorf("%s: %s %v to %v, want %v to %v", c.name, c.of, d, u, c.down, c.up)
		}
	}
}

// TestSpread: what the plan becomes at both ends of its estimates. A click is
// 1.5 % to 3.5 %. At 3.5 % ten rows come nearest: (10-0.7)/3 = 3.1.
func TestSpread(t *testing.T) {
	spans := Spans{DrawLow: Frac(1, 2), DrawHigh: Frac(3, 4), StretchLow: Frac(7, 5), StretchHigh: Frac(11, 5)}
	none := Spans{}.Measured(NumberEffect, Frac(9, 2)).Measured(EdgeStretch, Frac(7, 5))
	seam := 85 / 2.2
	big := with(t, cardigan(t), "garment", "pullover", "rib_stretch", "3")
	for _, c := range []struct {
		name      string
		in        Inputs
		spans     Spans
		key       Key
		low, high float64
		ok        bool
	}{
		{"rows", cardigan(t), spans, LayerRows, 9, 10, true},
		{"depth", cardigan(t), spans, DepthResult, 2.88, 3.1, true},
		{"fold", cardigan(t), spans, FoldCircumference, seam*0.86 + 3, seam*0.94 + 3, true},
		{"relaxed", cardigan(t), spans, RelaxedCircumference, seam*0.86*0.5 + 3, seam*0.94*0.75 + 3, true},
		{"stretched", cardigan(t), spans, StretchedCircumference, seam*0.86*0.5*1.4 + 3, seam*0.94*0.75*2.2 + 3, true},
		{"relaxed, rib measured", cardigan(t), spans.Measured(RibDraw, Frac(7, 10)), RelaxedCircumference, seam*0.86*0.7 + 3, seam*0.94*0.7 + 3, true},
		{"the click itself", cardigan(t), spans, ClickEffect, 1.5, 3.5, true},
		{"calibrated", with(t, cardigan(t), "click_effect", "2"), spans, FoldCircumference, 0, 0, false},
		{"all measured", cardigan(t), none, RelaxedCircumference, 0, 0, false},
		{"yarn, only the stitch uncertain", cardigan(t), none, BandYarn, 28.980124008, 31.749411208, true},
		{"loop", cardigan(t), none, LoopLength, 1.696699, 1.870829, true},
		{"loop, measured", with(t, cardigan(t), "row_yarn", "1.8"), spans, LoopLength, 0, 0, false},
		{"certain", cardigan(t), spans, BandStitches, 0, 0, false},
		{"not there", cardigan(t), spans, HeadOpening, 0, 0, false},
		{"the sewn edge decides", big, Spans{}.Measured(NumberEffect, Frac(9, 2)), HeadOpening, 93 / 2.2 * 1.3, 93 / 2.2 * 1.5, true},
	} {
		low, high, ok := Solve(c.in).Spread(c.key, c.spans)
		if ok != c.ok || ok && (low-c.low > 1e-5 || c.low-low > 1e-5 || high-c.high > 1e-5 || c.high-high > 1e-5) {
			t.Errorf("%s: %v to %v (%v), want %v to %v (%v)", c.name, low, high, ok, c.low, c.high, c.ok)
		}
	}
}
