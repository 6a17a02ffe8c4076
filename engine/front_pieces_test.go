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
		{"no holes: equal", 176, 0, 150, []int{88, 88}},
		{"an odd count", 177, 0, 150, []int{88, 89}},
		{"three pieces", 301, 0, 150, []int{100, 101, 100}},
		// five holes of two over 176, three outside: the third is on stitches 88 and 89
		{"the join leaves the middle hole alone", 176, 5, 150, []int{91, 85}},
		{"three, since two have no needle left for the join", 300, 0, 150, []int{100, 100, 100}},
		{"one piece", 120, 5, 150, nil},
	} {
		in := Inputs{}.WithGarment(Cardigan).With(StitchGauge, Int(28)).With(RowGauge, Int(40)).With(BedNeedles, Int(int64(tt.bed))).
			With(FrontCount, Int(int64(tt.n)))
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
