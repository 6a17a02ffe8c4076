package rules

import (
	"math"
	"testing"

	"foldrow/engine"
)

// The published figures: 1x1 draws in to 0.70 (0.50 to 0.75), 1x1 stretches
// 1.96-fold and 2x2 2.23-fold in one hand test.
func TestPublishedRibs(t *testing.T) {
	b := book(t)
	one := b.RibFactors(engine.Rib{Knit: 1, Purl: 1})
	two := b.RibFactors(engine.Rib{Knit: 2, Purl: 2})
	for _, tt := range []struct {
		name string
		got  engine.Num
		want string
	}{
		{"draw", one.Draw, "0.70"}, {"draw low", one.DrawLow, "0.50"}, {"draw high", one.DrawHigh, "0.75"},
		{"stretch", one.Stretch, "1.96"}, {"stretch of 2x2", two.Stretch, "2.23"},
	} {
		if !tt.got.Equal(num(t, tt.want)) {
			t.Errorf("%s is %s, want %s", tt.name, tt.got, tt.want)
		}
	}
}

// A card that is not measured says what the interpolation says; of 1x1 and 2x2
// all figures do, published or laid between. Another measured rib is held by a
// row of TestPublishedRibs, with its source.
func TestRibCardsAgreeWithTheEstimate(t *testing.T) {
	checked := 0
	for _, r := range book(t).Ribs {
		laid := r.Rib.Knit == r.Rib.Purl && r.Rib.Knit <= 2
		if r.Measured && !laid {
			continue
		}
		e := estimate(r.Rib)
		if !e.Draw.Equal(r.Draw) || !e.Stretch.Equal(r.Stretch) || !e.DrawHigh.Equal(r.DrawHigh) {
			t.Errorf("%s: card %s %s %s, estimate %s %s %s", r.Rib, r.Draw, r.Stretch, r.DrawHigh, e.Draw, e.Stretch, e.DrawHigh)
		}
		checked++
	}
	if checked < 7 {
		t.Errorf("only %d ribs checked", checked)
	}
}

// The same rule in floating point, and what it must keep: plain at one end,
// no rib wider than plain, the same rib seen from either side alike.
func TestEstimate(t *testing.T) {
	b := book(t)
	for a := 1; a <= 20; a++ {
		for p := 1; p <= 20; p++ {
			r := estimate(engine.Rib{Knit: a, Purl: p})
			x, y := float64(a), float64(p)
			even := math.Min(1.96+(2*x*y/(x+y)-1)*0.27, 2.4)
			u := math.Abs(x-y) / (2 * (x + y))
			draw := 0.7*1.96/even*(1-u) + u
			stretch := (0.7*1.96*(1-u) + 1.2*u) / draw
			if math.Abs(r.Draw.Float()-draw) > 0.0051 || math.Abs(r.Stretch.Float()-stretch) > 0.0051 {
				t.Fatalf("%dx%d: %v and %v, want %v and %v", a, p, r.Draw.Float(), r.Stretch.Float(), draw, stretch)
			}
			if r.Draw.Less(r.DrawLow) || r.DrawHigh.Less(r.Draw) || !r.DrawHigh.Less(engine.Int(1)) {
				t.Errorf("%dx%d: draw %s in %s to %s", a, p, r.Draw, r.DrawLow, r.DrawHigh)
			}
			if r.Stretch.Less(r.StretchLow) || r.StretchHigh.Less(r.Stretch) {
				t.Errorf("%dx%d: stretch %s", a, p, r.Stretch)
			}
			if o := estimate(engine.Rib{Knit: p, Purl: a}); !o.Draw.Equal(r.Draw) || !o.Stretch.Equal(r.Stretch) {
				t.Errorf("%dx%d differs from its other side", a, p)
			}
		}
	}
	if r := b.RibFactors(engine.Rib{Knit: 9, Purl: 4}); r.Measured || r.Text == "" || r.Label != "9x4 rib" {
		t.Errorf("9x4 is %+v", r)
	}
	if r := b.RibFactors(engine.Rib{}); r.Label != "" {
		t.Errorf("no rib is %+v", r)
	}
}

func TestWordsOfRibs(t *testing.T) {
	owner := map[string]string{}
	for _, r := range book(t).Ribs {
		for _, w := range r.Words {
			owner[w] = r.Rib.String()
		}
	}
	for word, want := range map[string]string{
		"single rib": "1x1", "k1p1": "1x1", "one by one": "1x1", "double rib": "2x2", "k2p2": "2x2", "two by one": "2x1",
		"k3 p1": "3x1", "knit three purl two": "3x2", "stocking stitch": "plain", "stockinette": "plain", "1 x 2": "1x2", "3 by 3": "3x3",
	} {
		if owner[word] != want {
			t.Errorf("%q names %q, want %s", word, owner[word], want)
		}
	}
}
