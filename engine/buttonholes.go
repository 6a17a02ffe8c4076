package engine

// HoleSpec is a row of buttonholes along a band, in stitches.
type HoleSpec struct {
	Stitches   int // of the band
	Holes      int
	Size       int // stitches of one hole
	Start, End int // stitches before the first and after the last hole
}

// Buttonholes is where the holes lie.
type Buttonholes struct {
	Gap   Num   // between holes, before rounding; 0 for a single hole
	Gaps  []int // as knitted: they differ by at most one and mirror where they can
	First []int // column of the first stitch of each hole, from the left
}

// HolesError: so many holes do not fit with a stitch between. Most is how many
// do, 0 where not even one fits between the margins.
type HolesError struct{ Holes, Most int }

func (e *HolesError) Error() string {
	return "buttonholes: " + itoa(e.Holes) + " do not fit, at most " + itoa(e.Most)
}

// SpaceHoles lays the holes: n holes have n-1 gaps and two ends, so each gap
// is (stitches - ends - n*size)/(n-1), and what is left over goes in one
// stitch at a time (knittingrobin.blogspot.com 2012). A single hole stands in
// the middle of what the ends leave. The error is a *HolesError.
func SpaceHoles(s HoleSpec) (Buttonholes, error) {
	size := max(s.Size, 1)
	inside := s.Stitches - s.Start - s.End
	most := 0
	if inside >= size && s.Start >= 0 && s.End >= 0 {
		most = (inside + 1) / (size + 1)
	}
	if s.Holes < 1 || s.Holes > most {
		return Buttonholes{}, &HolesError{Holes: s.Holes, Most: most}
	}
	free := inside - s.Holes*size
	if s.Holes == 1 {
		return Buttonholes{First: []int{s.Start + (free+1)/2}}, nil
	}
	b := Buttonholes{
		Gap:   Frac(int64(free), int64(s.Holes-1)),
		Gaps:  evenGaps(free, s.Holes-1),
		First: []int{s.Start},
	}
	for i, gap := range b.Gaps {
		b.First = append(b.First, b.First[i]+size+gap)
	}
	return b, nil
}

// MirrorRow is the row of a doubled band that comes to lie on row of the
// outer layer when the band is folded: the same hole is made there too, on
// the same needles. Rows count from 1; a fold row lies between the layers.
func MirrorRow(row, layerRows int, foldRow bool) int {
	m := 2*layerRows + 1 - row
	if foldRow {
		m++
	}
	return m
}

// ButtonFit is what a button asks of its band, in cm. The rules are those of
// sewing with woven cloth, which stretches less; published sources differ, so
// both ends are given.
type ButtonFit struct {
	Hole              Num // length of the hole: diameter and 3 mm (frkbustad.blogspot.com 2010, for a thin button)
	EdgeLow, EdgeHigh Num // button's centre to the edge: half the diameter (an agricultural e-course on sewing), three quarters (a sewing handbook)
	BandLow, BandHigh Num // overlap: the diameter (fashion-incubator.com), twice half of it and 1/4 in (mysuitshop.com standards)
}

// FitButton is the fit for a button of that diameter in cm.
func FitButton(diameter Num) ButtonFit {
	return ButtonFit{
		Hole:     diameter.Add(Frac(3, 10)),
		EdgeLow:  diameter.Div(Int(2)),
		EdgeHigh: diameter.Mul(Frac(3, 4)),
		BandLow:  diameter,
		BandHigh: diameter.Add(Frac(127, 100)),
	}
}
