package engine

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestFrontShares(t *testing.T) {
	for _, tt := range []struct {
		name     string
		n, holes int
		bed      int
		want     []int
	}{
		{"no holes: equal", 176, 0, 150, []int{89, 89}},
		{"an odd count", 177, 0, 150, []int{89, 90}},
		{"three pieces", 301, 0, 150, []int{102, 101, 102}},
		// five holes of two over 176, three outside: the third is on stitches 88 and 89
		{"the join leaves the middle hole alone", 176, 5, 150, []int{92, 86}},
		{"three, since two have no needle left for the join", 300, 0, 150, []int{101, 102, 101}},
		{"two, with the join's stitches on the last needles", 298, 0, 150, []int{150, 150}},
		{"one piece", 120, 5, 150, nil},
	} {
		in := Inputs{}.WithGarment(Cardigan).With(StitchGauge, Int(28)).With(RowGauge, Int(40)).With(BedNeedles, Int(int64(tt.bed))).
			With(FrontCount, Int(int64(tt.n))).With(SeamStitches, Int(1))
		if tt.holes > 0 {
			in = in.With(Holes, Int(int64(tt.holes))).With(HoleStitches, Int(2)).With(HoleMargin, Int(3))
		}
		v, ok := Solve(in).Value(FrontShares)
		assert.Equal(t, tt.want != nil, ok, tt.name)
		if ok {
			assert.Equal(t, tt.want, v, tt.name)
		}
	}
}
