package engine

import "testing"

// TestLoopLengthPublished: rows K16 to K23 of the knit geometry table, loop
// length in mm from a hand gauge and the area constants that Spencer, Knitting
// Technology, gives after Munden 1959.
func TestLoopLengthPublished(t *testing.T) {
	for _, c := range []struct {
		id             string
		stitches, rows int64
		ks, mm         float64
	}{
		{"K16 dry relaxed", 20, 28, 19.0, 18.42},
		{"K17 washed", 20, 28, 21.6, 19.64},
		{"K18 fully relaxed", 20, 28, 23.1, 20.31},
		{"K19 washed", 28, 40, 21.6, 13.89},
		{"K20 washed", 22, 30, 21.6, 18.09},
		{"K21 washed", 18, 24, 21.6, 22.36},
		{"K22 washed", 14, 20, 21.6, 27.77},
		{"K23 washed", 12, 16, 21.6, 33.54},
	} {
		if got := loopLength(Int(c.stitches), Int(c.rows), c.ks) * 10; got < c.mm-0.01 || got > c.mm+0.01 {
			t.Errorf("%s: %.3f mm, want %.2f", c.id, got, c.mm)
		}
		p := Solve(with(t, usual(t)).With(StitchGauge, Int(c.stitches)).With(RowGauge, Int(c.rows)))
		if v, _ := p.Float(LoopLength); c.ks == 21.6 && (v*10 < c.mm-0.01 || v*10 > c.mm+0.01) {
			t.Errorf("%s: the plan says %.3f mm", c.id, v*10)
		}
	}
	if ksLow != 19.0 || ksMid != 21.6 || ksHigh != 23.1 {
		t.Error("the area constants are not the published ones")
	}
}

// TestSewingOffPublished: W56, three times the width for backstitch on the
// needles (common practice; the same factor at knitca 2010): 25.4 cm take
// 76.2 cm, and our tails.
func TestSewingOffPublished(t *testing.T) {
	in := with(t, usual(t), "garment", "pullover", "rib", "plain", "seam_stitches", "0",
		"stitch_gauge", "10", "neck", "40", "needle_pitch", "127/20") // 40 needles are 25.4 cm
	if v, ok := Solve(in).Float(OffYarn); !ok || !near(v-offTails, 76.2) {
		t.Errorf("sewing off takes %v cm, want 76.2 and the tails", v)
	}
}

// TestYarnEnough: the need with a tenth more, at both ends of the estimate,
// against what is left. The plan needs 28.980 to 31.749 m, at 225 m in 100 g
// 12.880 to 14.111 g: 14.168 and 15.522 with the margin.
func TestYarnEnough(t *testing.T) {
	for _, c := range []struct {
		left string
		want YarnState
	}{
		{"15.53", YarnEnough}, {"15.52", YarnTight}, {"14.17", YarnTight}, {"14.16", YarnShort}, {"0", YarnShort},
	} {
		if got := Solve(with(t, cardigan(t), "yarn_left", c.left)).Yarn; got != c.want {
			t.Errorf("%s g left: state %d, want %d", c.left, got, c.want)
		}
	}
	if got := Solve(cardigan(t).Without(YarnLeft)).Yarn; got != YarnUnknown {
		t.Errorf("nothing said of what is left: state %d", got)
	}
	// Measured, it is one number: 30.6195 m are 13.609 g, 14.970 with the margin.
	measured := with(t, cardigan(t), "row_yarn", "1.8")
	for left, want := range map[string]YarnState{"14.98": YarnEnough, "14.96": YarnShort} {
		if got := Solve(with(t, measured, "yarn_left", left)).Yarn; got != want {
			t.Errorf("measured, %s g left: state %d, want %d", left, got, want)
		}
	}
}

// TestSingleLayerYarn: a single layer has no fold and no closing row.
func TestSingleLayerYarn(t *testing.T) {
	p := Solve(with(t, cardigan(t), "layers", "1", "fold_row", "4", "row_yarn", "2"))
	if v, _ := p.Float(BandYarn); !near(v, (87*2*8.64+199.65)/100) {
		t.Errorf("a single layer takes %v m, want %v", v, (87*2*8.64+199.65)/100)
	}
}
