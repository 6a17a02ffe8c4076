package engine

import (
	"testing"

	"pgregory.net/rapid"
)

// TestRibCounts: W58, flat ribs with equal knit edges. Multiples published for
// 2x2 4n+2 (tkga.org), 2x1 3n+2 and 1x1 2n+1 (knittinghelp.com 58695), 3x1
// 4n+1 (lindysknitslaces.com); 1x1 and 3x2 with one edge stitch after the same
// formula.
func TestRibCounts(t *testing.T) {
	for _, c := range []struct {
		rib            string
		edge           string
		multiple, plus int
	}{
		{"2x2", "2", 4, 2}, {"2x1", "2", 3, 2}, {"1x1", "1", 2, 1}, {"3x1", "2", 4, 1},
		{"1x1", "2", 2, 1}, {"2x1", "1", 3, 0}, {"2x2", "1", 4, 0}, {"3x1", "1", 4, 3},
		{"3x2", "1", 5, 4}, {"3x2", "2", 5, 1}, {"1x2", "2", 3, 0}, {"plain", "2", 1, 0},
	} {
		in := with(t, usual(t), "rib", c.rib, "edge_stitches", c.edge)
		for n := 20; n < 60; n++ {
			if _, _, got := Closing(in, n); got != (n%c.multiple == c.plus) {
				t.Errorf("%s with %s edge stitches: %d closes: %v, want %dn+%d", c.rib, c.edge, n, got, c.multiple, c.plus)
			}
		}
	}
}

// TestNearestCount: the nearest closing count, and on a tie the larger, since
// a tight neck is the worse fault. Pullovers at 20 in 10 cm: a neck of w cm
// wants 2w+2 stitches.
func TestNearestCount(t *testing.T) {
	for _, c := range []struct {
		rib, neck            string
		want, smaller, above int
	}{
		{"1x1", "40", 83, 81, 85},       // 82 lies between 81 and 83
		{"1x1", "799/20", 81, 79, 83},   // 81.9
		{"1x1", "801/20", 83, 81, 85},   // 82.1
		{"2x2", "41", 86, 82, 90},       // 84: tie of 82 and 86
		{"2x2", "4099/100", 82, 78, 86}, // 83.98
		{"2x1", "40", 83, 80, 86},       // 82: 80 or 83
		{"plain", "161/4", 83, 82, 84},  // 82.5: tie of 82 and 83
		{"plain", "40", 82, 81, 83},
		{"3x3", "1/2", 7, 0, 13}, // 3: below the smallest, 2+3+2
	} {
		in := with(t, usual(t), "garment", "pullover", "stitch_gauge", "20", "rib", c.rib, "neck", c.neck)
		p := Solve(in)
		if p.BandStitches != c.want || p.Smaller.Stitches != c.smaller || p.Larger.Stitches != c.above {
			t.Errorf("%s, neck %s: %d (%d, %d), want %d (%d, %d)", c.rib, c.neck, p.BandStitches,
				p.Smaller.Stitches, p.Larger.Stitches, c.want, c.smaller, c.above)
		}
	}
}

// TestNeckFromBody: the neck follows from the body and its ease where no neck
// was said, and a cardigan's overlap comes off the knit width.
func TestNeckFromBody(t *testing.T) {
	in := with(t, cardigan(t).Without(Neck), "neck_body", "38", "ease", "4")
	p := Solve(in)
	if v, _ := p.Float(WantedStitches); !near(v, 87.8) {
		t.Errorf("38 cm and 4 cm ease want %v stitches, as a 42 cm neck 87.8", v)
	}
	if v, ok := p.Float(Neck); !ok || v != 42 {
		t.Errorf("neck = %v (%v), want 42", v, ok)
	}
	if v, _ := Solve(in.With(Neck, Int(45))).Float(WantedStitches); !near(v, 94.4) {
		t.Errorf("a neck that was said gives %v stitches, want 94.4", v)
	}
}

// TestBedAndYoke: W63, the standard percentage yoke 268, 201, 134, 80 on 150
// needles: only 134 and 80 fit in one piece (own arithmetic). Plain pullover
// bands at 10 in 10 cm without seams: a neck of n cm wants n stitches.
func TestBedAndYoke(t *testing.T) {
	base := with(t, usual(t), "garment", "pullover", "stitch_gauge", "10", "seam_stitches", "0", "rib", "plain")
	for _, c := range []struct {
		neck, yoke       string
		fits             bool
		pieces           int
		fitsYoke         bool
		decreases, stage int
	}{
		{"268", "268", false, 2, true, 0, 1},
		{"201", "268", false, 2, true, 67, 1},
		{"134", "201", true, 1, true, 67, 1},
		{"80", "134", true, 1, true, 54, 1},
		{"150", "134", true, 1, false, -16, 0},
		{"80", "160", true, 1, true, 80, 1},
		{"80", "161", true, 1, true, 81, 2},
		{"80", "268", true, 1, true, 188, 2},
		{"40", "268", true, 1, true, 228, 3},
	} {
		p := Solve(with(t, base, "neck", c.neck, "yoke_stitches", c.yoke))
		if p.FitsBed != c.fits || p.Pieces != c.pieces || p.FitsYoke != c.fitsYoke ||
			p.YokeDecreases != c.decreases || p.Stages != c.stage {
			t.Errorf("%s from %s: bed %v in %d, yoke %v less %d in %d stages, want %+v", c.neck, c.yoke,
				p.FitsBed, p.Pieces, p.FitsYoke, p.YokeDecreases, p.Stages, c)
		}
		sum := 0
		for _, q := range p.OnBed() {
			sum += total(q.Rehang)
		}
		if c.stage == 1 && sum != p.In.Int(YokeStitches) {
			t.Errorf("%s from %s: %d stitches are hung again", c.neck, c.yoke, sum)
		}
		if c.stage != 1 && p.Rehang != nil {
			t.Errorf("%s from %s: hung again in one go", c.neck, c.yoke)
		}
	}
}

func total(list []int) (sum int) {
	for _, n := range list {
		sum += n
	}
	return sum
}

// TestChoicesOfBedAndYoke: the most stitches that fit, and their neck.
func TestChoicesOfBedAndYoke(t *testing.T) {
	p := Solve(with(t, cardigan(t), "rib", "2x2", "neck", "80", "yoke_stitches", "120"))
	// (80-3)*2.2+2 = 171.4, so 170. 150 = 4*37+2 and 118 = 4*29+2.
	if p.BandStitches != 170 || p.BedChoice.Stitches != 150 || p.YokeChoice.Stitches != 118 {
		t.Errorf("band %d, bed %+v, yoke %+v", p.BandStitches, p.BedChoice, p.YokeChoice)
	}
	if want := Frac(148, 1).Div(Frac(22, 10)).Add(Int(3)); !p.BedChoice.Neck.Equal(want) {
		t.Errorf("150 stitches give %s cm, want %s", p.BedChoice.Neck, want)
	}
}

// TestCountsProperties: against counting through every count there is.
func TestCountsProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawInputs(t)
		p := Solve(in)
		edge, rib := in.Int(EdgeStitches), in.Rib
		best := -1
		for groups := 1; groups < 700; groups++ { // every count of the rib, from the design's formula
			n := 2*edge + groups*rib.Purl + (groups-1)*rib.Knit
			if rib.IsPlain() {
				n = groups
			}
			if n <= 2*in.Int(SeamStitches) {
				continue
			}
			if best < 0 || dist(n, p.WantedStitches).Cmp(dist(best, p.WantedStitches)) <= 0 {
				best = n
			}
		}
		if p.BandStitches != best {
			t.Fatalf("wanted %s in %s with %d: %d, nearest is %d", p.WantedStitches, rib, edge, p.BandStitches, best)
		}
		if back := Solve(in.With(Neck, p.NeckResult)); back.BandStitches != best {
			t.Fatalf("the neck of %d stitches asks for %d", best, back.BandStitches)
		}
	})
}

func dist(n int, wanted Num) Num { return wholeNum(n).Sub(wanted).Abs() }
