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

// TestFrontPartsAreTheBand: whatever the rib and the holes, the pieces name every
// stitch of the front band once, on the bed and beside the seams; each hole lies
// in one piece, and no join within a purl group.
func TestFrontPartsAreTheBand(t *testing.T) {
	for _, rib := range []string{"1x1", "2x2", "1x2", "3x3"} {
		for n := int64(140); n < 620; n += 13 {
			in := Inputs{}.WithGarment(Cardigan).With(StitchGauge, Int(28)).With(RowGauge, Int(40)).With(BedNeedles, Int(150)).
				With(FrontCount, Int(n)).With(SeamStitches, Int(1)).With(EdgeStitches, Int(2)).With(HoleStitches, Int(2)).With(HoleMargin, Int(3)).With(Holes, Int(n/30))
			in, _ = in.WithText(KeyFrontRib, rib)
			p := Solve(in)
			f, named := p.Front, 0
			columns, purl := 0, map[int]bool{}
			for _, c := range p.FrontRibColumns() {
				purl[c] = true
			}
			for i, part := range f.Parts {
				joins := 2
				if i == 0 {
					joins--
				}
				if i == len(f.Parts)-1 {
					joins--
				}
				assert.Equal(t, named, part.First, "%s of %d", rib, n)
				assert.Equal(t, joins, part.Left+part.Right, "%s of %d", rib, n)
				assert.LessOrEqual(t, part.Needles(), 150)
				for c := part.First; c < part.First+part.Band; c++ {
					at, ok := NeedleColumn(part.Needle(c), part.Needles())
					assert.True(t, ok && at == part.Left+c-part.First, "%s of %d: stitch %d on %s", rib, n, c, part.Needle(c))
				}
				named, columns = named+part.Band, columns+len(part.Columns(p.FrontRibColumns()))
				assert.False(t, i > 0 && purl[part.First] && purl[part.First-1], "%s of %d: a join within a purl group", rib, n)
			}
			assert.Equal(t, int(n), named)
			assert.Len(t, p.FrontRibColumns(), columns)
			for _, first := range f.Holes.First {
				_, a := f.PartOf(first)
				_, b := f.PartOf(first + 1)
				assert.Equal(t, a, b, "%s of %d: a hole over a join", rib, n)
			}
		}
	}
}
