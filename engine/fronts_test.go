package engine

import (
	"errors"
	"slices"
	"strings"
	"testing"
)

func TestPickUp(t *testing.T) {
	tests := []struct {
		name                      string
		edge                      FrontEdge
		wanted                    string
		stitches, smaller, larger int
		of, every                 int
		off                       string
	}{
		{"W47 plain, 20 and 26 to 10 cm over 50 cm",
			FrontEdge{Length: Int(50), Rows: 130, Gauge: Int(20), Rib: Plain()}, "100", 100, 99, 101, 7, 9, "10/9"},
		{"2x2 with two edge stitches: 4n+2",
			FrontEdge{Length: Int(50), Rows: 130, Gauge: Int(20), Rib: Rib{2, 2}, EdgeStitches: 2}, "100", 102, 98, 106, 7, 9, "-8/9"},
		{"the neckband's end counts once",
			FrontEdge{Length: Int(47), NeckbandDepth: Int(3), Rows: 120, NeckbandRows: 10, Gauge: Int(20), Rib: Plain()},
			"100", 100, 99, 101, 7, 9, "10/9"},
		{"more stitches than rows",
			FrontEdge{Length: Int(10), Rows: 20, Gauge: Int(24), Rib: Plain()}, "24", 24, 23, 25, 6, 5, "0"},
		{"rows not known",
			FrontEdge{Length: Int(10), Gauge: Int(24), Rib: Plain()}, "24", 24, 23, 25, 0, 0, "0"},
		{"the smallest rib",
			FrontEdge{Length: Int(1), Gauge: Int(20), Rib: Rib{2, 2}, EdgeStitches: 2}, "2", 6, 0, 10, 0, 0, "0"},
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
	for _, e := range []FrontEdge{{Length: Int(50)}, {Gauge: Int(20)}} {
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
	if got := FrontStitches(60, 6); got.String() != "57" {
		t.Errorf("W62: %s", got)
	}
}

func TestButtonholesPublished(t *testing.T) {
	for _, row := range published(t, "buttonholes.csv") {
		s := HoleSpec{
			Stitches: whole(t, row["stitches"]), Holes: whole(t, row["holes"]), Size: whole(t, row["size"]),
			Start: whole(t, row["start"]), End: whole(t, row["end"]),
		}
		b, err := SpaceHoles(s)
		if err != nil {
			t.Errorf("%s: %v", row["id"], err)
			continue
		}
		var want []int
		for group := range strings.SplitSeq(row["gaps"], "+") {
			count, size, _ := strings.Cut(group, "of")
			for range whole(t, count) {
				want = append(want, whole(t, size))
			}
		}
		got := slices.Sorted(slices.Values(b.Gaps))
		if !slices.Equal(got, want) {
			t.Errorf("%s: gaps %v, want %v", row["id"], got, want)
		}
		if end := b.First[s.Holes-1] + s.Size + s.End; end != s.Stitches || b.First[0] != s.Start {
			t.Errorf("%s: holes from %d end at %d of %d", row["id"], b.First[0], end, s.Stitches)
		}
	}
}

func TestSpaceHoles(t *testing.T) {
	tests := []struct {
		s     HoleSpec
		first []int
		err   error
	}{
		{HoleSpec{Stitches: 21, Holes: 3, Size: 1, Start: 2, End: 2}, []int{2, 10, 18}, nil},
		{HoleSpec{Stitches: 22, Holes: 3, Size: 1, Start: 2, End: 2}, []int{2, 10, 19}, nil},
		{HoleSpec{Stitches: 11, Holes: 1, Size: 3, Start: 1, End: 1}, []int{4}, nil},
		{HoleSpec{Stitches: 7, Holes: 4, Size: 1}, []int{0, 2, 4, 6}, nil},
		{HoleSpec{Stitches: 7, Holes: 5, Size: 1}, nil, &HolesError{5, 4}},
		{HoleSpec{Stitches: 7, Holes: 0, Size: 1}, nil, &HolesError{0, 4}},
		{HoleSpec{Stitches: 7, Holes: 1, Size: 4, Start: 2, End: 2}, nil, &HolesError{1, 0}},
	}
	for _, tt := range tests {
		b, err := SpaceHoles(tt.s)
		var holes, want *HolesError
		if !slices.Equal(b.First, tt.first) || errors.As(err, &holes) != errors.As(tt.err, &want) || holes != nil && *holes != *want {
			t.Errorf("%+v: %v %v, want %v %v", tt.s, b.First, err, tt.first, tt.err)
		}
	}
	// W54: an odd number of holes puts one on the centre.
	b, err := SpaceHoles(HoleSpec{Stitches: 101, Holes: 7, Size: 1, Start: 2, End: 2})
	if err != nil || b.First[3] != 50 {
		t.Errorf("W54: the middle hole of 101 stitches is at %v %v", b.First, err)
	}
}

func TestMirrorRow(t *testing.T) {
	tests := []struct {
		row, layer int
		fold       bool
		want       int
	}{{1, 10, false, 20}, {10, 10, false, 11}, {1, 10, true, 21}, {10, 10, true, 12}, {5, 10, false, 16}}
	for _, tt := range tests {
		got := MirrorRow(tt.row, tt.layer, tt.fold)
		if got != tt.want || MirrorRow(got, tt.layer, tt.fold) != tt.row {
			t.Errorf("row %d of %d, fold row %v: %d, want %d", tt.row, tt.layer, tt.fold, got, tt.want)
		}
	}
}

// The published heights are whole cm with all of the rounding in one gap, so
// the check is on what they state: the ends, and gaps of 8 to 10 cm.
func TestHolePositionsPublished(t *testing.T) {
	for _, row := range published(t, "button-positions.csv") {
		want := wholes(t, row["positions"])
		n := len(want)
		got := HolePositions(Int(int64(want[0])), Int(int64(want[n-1])), n)
		for i, at := range got {
			if Frac(3, 2).Less(at.Sub(Int(int64(want[i]))).Abs()) {
				t.Errorf("%s %s: hole %d at %s, printed %d", row["id"], row["size"], i+1, at, want[i])
			}
			if i > 0 && (at.Sub(got[i-1]).Less(Int(8)) || Int(10).Less(at.Sub(got[i-1]))) {
				t.Errorf("%s %s: gap %d is %s", row["id"], row["size"], i, at.Sub(got[i-1]))
			}
		}
		if !got[0].Equal(Int(int64(want[0]))) || !got[n-1].Equal(Int(int64(want[n-1]))) {
			t.Errorf("%s %s: from %s to %s", row["id"], row["size"], got[0], got[n-1])
		}
	}
	if got := HolePositions(Int(7), Int(50), 1); len(got) != 1 || !got[0].Equal(Int(7)) {
		t.Errorf("one hole: %v", got)
	}
}

func TestFitButton(t *testing.T) {
	f := FitButton(Frac(3, 2)) // 15 mm
	got := []string{f.Hole.String(), f.EdgeLow.String(), f.EdgeHigh.String(), f.BandLow.String(), f.BandHigh.String()}
	if want := []string{"9/5", "3/4", "9/8", "3/2", "277/100"}; !slices.Equal(got, want) {
		t.Errorf("15 mm button: %v, want %v", got, want)
	}
	if got := LineSize(Int(24)); got.String() != "381/250" { // 15.24 mm
		t.Errorf("24 lines: %s cm", got)
	}
}
