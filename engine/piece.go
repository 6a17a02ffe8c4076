package engine

// BandPieces is how many pieces a band wider than the bed is knitted in,
// BandJoins how many seams join them and its ends; neither is there where the
// bed takes the band at once.
const (
	BandPieces Key = "band_pieces"
	BandJoins  Key = "band_joins"
)

// Part is one piece of a band that the bed does not take at once. It has the
// band's stitches from column First on, Band of them, and at a joined edge
// those that the seam of the join takes up.
type Part struct {
	First, Band int
	Left, Right int // stitches for the seam at each side, 0 at an end of the band
}

// Needles is how many needles the piece hangs on.
func (t Part) Needles() int { return t.Left + t.Band + t.Right }

// Has reports whether column col of the band lies in the piece.
func (t Part) Has(col int) bool { return col >= t.First && col < t.First+t.Band }

// Column is column col of the band among the needles of the piece.
func (t Part) Column(col int) int { return col - t.First + t.Left }

// Needle is the needle on which column col of the band hangs.
func (t Part) Needle(col int) string { return NeedleName(t.Column(col), t.Needles()) }

// Columns is those of some columns of the band that lie in the piece, counted
// among its needles.
func (t Part) Columns(cols []int) []int {
	var out []int
	for _, c := range cols {
		if t.Has(c) {
			out = append(out, t.Column(c))
		}
	}
	return out
}

// joinTakes is how many stitches the seam of one join takes up: as many at
// each edge as at an end of the band, so that the width stays that of the
// count. Half a stitch at each edge is one in all.
func joinTakes(in Inputs) int {
	take := in.Num(SeamStitches).Mul(Int(2)).Round()
	if take < 0 || in.Has(BedNeedles) && take >= in.Int(BedNeedles) {
		return 0 // a bed that holds nothing but seams
	}
	return take
}

// bedPieces is the fewest pieces for n stitches on that bed, where every join
// takes so many more: n + take*(k-1) fill k beds at most, and the pieces hang
// on as many needles each.
func bedPieces(n, bed, take int) int {
	if bed < 1 || n <= bed {
		return 1
	}
	return (n - take + bed - take - 1) / (bed - take)
}

// cutParts is n stitches in k pieces on as equal numbers of needles as may be.
func cutParts(n, k, take int) []Part {
	parts, first := make([]Part, k), 0
	for i, needles := range evenGaps(n+take*(k-1), k) {
		t := Part{First: first}
		if i > 0 {
			t.Left = take / 2
		}
		if i < k-1 {
			t.Right = take - take/2
		}
		t.Band = needles - t.Left - t.Right
		parts[i] = t
		first += t.Band
	}
	return parts
}

// moveJoin moves the join behind piece i by so many stitches, false where a
// piece would lose all of its own or not fit the bed.
func moveJoin(parts []Part, i, by, bed int) bool {
	a, b := parts[i], parts[i+1]
	a.Band, b.Band, b.First = a.Band+by, b.Band-by, b.First+by
	if a.Band < 1 || b.Band < 1 || a.Needles() > bed || b.Needles() > bed {
		return false
	}
	parts[i], parts[i+1] = a, b
	return true
}

// needlesOf is the needles of each piece.
func needlesOf(parts []Part) []int {
	out := make([]int, len(parts))
	for i, t := range parts {
		out[i] = t.Needles()
	}
	return out
}

// Knitted is the stitches of the band as they hang on needles: those that the
// joins of its pieces take up are knitted too.
func (p *Plan) Knitted() int { return knitted(p.BandStitches, p.Parts) }

func knitted(n int, parts []Part) int {
	for _, t := range parts {
		n += t.Left + t.Right
	}
	return n
}

// Joins is how many seams join the pieces: those between them, and the one
// that closes the ends of a pullover's band, unless a slit leaves them open.
// 0 where the band is in one piece.
func (p *Plan) Joins() int {
	switch {
	case len(p.Parts) < 2:
		return 0
	case p.In.Garment == Pullover && p.In.Num(Slit).Sign() <= 0:
		return len(p.Parts)
	}
	return len(p.Parts) - 1
}
