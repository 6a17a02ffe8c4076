package engine

import (
	"errors"
	"slices"
	"strings"
	"testing"
)

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
		got := HolePlaces(Int(int64(want[0])), Int(int64(want[n-1])), n)
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
	if got := HolePlaces(Int(7), Int(50), 1); len(got) != 1 || !got[0].Equal(Int(7)) {
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
