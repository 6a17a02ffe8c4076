package engine

import (
	"slices"
	"testing"
)

func TestPickUp(t *testing.T) {
	tests := []struct {
		name                      string
		edge                      PickUpEdge
		wanted                    string
		stitches, smaller, larger int
		of, every                 int
		off                       string
	}{
		{"W47 plain, 20 and 26 to 10 cm over 50 cm",
			PickUpEdge{Length: Int(50), Rows: 130, Gauge: Int(20), Rib: Plain()}, "100", 100, 99, 101, 7, 9, "10/9"},
		{"2x2 with two edge stitches: 4n+2",
			PickUpEdge{Length: Int(50), Rows: 130, Gauge: Int(20), Rib: Rib{2, 2}, EdgeStitches: 2}, "100", 102, 98, 106, 7, 9, "-8/9"},
		{"the neckband's end counts once",
			PickUpEdge{Length: Int(47), NeckbandDepth: Int(3), Rows: 120, NeckbandRows: 10, Gauge: Int(20), Rib: Plain()},
			"100", 100, 99, 101, 7, 9, "10/9"},
		{"more stitches than rows",
			PickUpEdge{Length: Int(10), Rows: 20, Gauge: Int(24), Rib: Plain()}, "24", 24, 23, 25, 6, 5, "0"},
		{"rows not known",
			PickUpEdge{Length: Int(10), Gauge: Int(24), Rib: Plain()}, "24", 24, 23, 25, 0, 0, "0"},
		{"the smallest rib",
			PickUpEdge{Length: Int(1), Gauge: Int(20), Rib: Rib{2, 2}, EdgeStitches: 2}, "2", 6, 0, 10, 0, 0, "0"},
	}
	for _, tt := range tests {
		p, ok := PickUpFor(tt.edge)
		if !ok || p.Wanted.String() != tt.wanted || p.Stitches != tt.stitches || p.Smaller != tt.smaller || p.Larger != tt.larger {
			t.Errorf("%s: %+v", tt.name, p)
		}
		if p.Of != tt.of || p.Every != tt.every || p.Off.String() != tt.off {
			t.Errorf("%s: %d of %d, off %s; want %d of %d, %s", tt.name, p.Of, p.Every, p.Off, tt.of, tt.every, tt.off)
		}
		sum := 0
		for _, s := range p.Map {
			sum += s
		}
		if p.Rows > 0 && (sum != p.Stitches || len(p.Map) != p.Rows) {
			t.Errorf("%s: the map has %d stitches on %d rows", tt.name, sum, len(p.Map))
		}
	}
	for _, e := range []PickUpEdge{{Length: Int(50)}, {Gauge: Int(20)}} {
		if p, ok := PickUpFor(e); ok {
			t.Errorf("%+v gave %+v", e, p)
		}
	}
}

// W47: 10 of 13 is three of 4, three of 4 and four of 5.
func TestPickUpMapPublished(t *testing.T) {
	m := PickUpMap(10, 13)
	var passed []int
	for row, s := range m {
		if s == 0 {
			passed = append(passed, row)
		}
	}
	if got := stepsAround(passed, 13); !slices.Equal(got, []int{4, 4, 5}) {
		t.Errorf("10 of 13: groups of %v rows", got)
	}
	if m[0] == 0 || m[12] == 0 {
		t.Errorf("10 of 13 passes over an end row: %v", m)
	}
	if PickUpMap(27, 13) != nil || PickUpMap(-1, 13) != nil {
		t.Error("a map that no row can give")
	}
}

func TestBestFraction(t *testing.T) {
	tests := []struct {
		x         Num
		of, every int
	}{
		{Frac(10, 13), 7, 9},
		{Frac(3, 5), 3, 5},
		{Frac(6, 8), 3, 4},
		{Frac(5, 7), 5, 7},
		{Frac(6, 5), 6, 5},
		{Int(1), 1, 1},
		{Frac(999, 1000), 1, 1},
	}
	for _, tt := range tests {
		if of, every := BestFraction(tt.x, 10); of != tt.of || every != tt.every {
			t.Errorf("%s: %d of %d, want %d of %d", tt.x, of, every, tt.of, tt.every)
		}
	}
	// W48: one edge of 200 rows by four rules.
	for _, tt := range []struct{ of, every, want int }{{3, 5, 120}, {2, 3, 133}, {3, 4, 150}, {10, 13, 154}} {
		if got := PickUpBy(tt.of, tt.every, 200); got != tt.want {
			t.Errorf("200 rows by %d of %d: %d, want %d", tt.of, tt.every, got, tt.want)
		}
	}
	if got := FrontLess(60, 6); got.String() != "57" {
		t.Errorf("W62: %s", got)
	}
}
