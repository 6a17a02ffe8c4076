package engine

// BandShares are the stitches of the pieces in which a band wider than the bed
// is knitted; BandHangings the maps by which a yoke with more than twice the
// band's stitches is hung, one after the other.
const (
	BandShares   Key = "band_shares"
	BandHangings Key = "band_hangings"
)

// Hanging is one hanging of the band on needles that the bed has. Where a
// needle would take more than two, the yoke is hung in rounds with a plain row
// between, and a round wider than the bed in pieces.
type Hanging struct {
	Round, Rounds int // from 1
	Piece, Pieces int // from 1
	Map           []int
}

// Stitches is how many stitches are hung.
func (h Hanging) Stitches() int {
	n := 0
	for _, s := range h.Map {
		n += s
	}
	return n
}

// bedPieces is the fewest pieces for n stitches on that bed. A piece takes one
// stitch more at each of its joins (common practice: the seam takes it up).
func bedPieces(n, bed int) int {
	if bed < 1 || n <= bed {
		return 1
	}
	k := 2
	for k < n && (n+k-1)/k+min(k-1, 2) > bed {
		k++
	}
	return k
}

// solvePieces shares the band out where the bed is too short: as equal as may
// be, a join between two knit columns rather than beside a purl one, and never
// within a purl group, which would show as a half rib.
func (p *Plan) solvePieces() {
	if !p.has.band || p.Pieces < 2 {
		return
	}
	purl := make([]bool, p.BandStitches)
	for _, c := range p.RibColumns {
		purl[c] = true
	}
	p.Shares = evenGaps(p.BandStitches, p.Pieces)
	cut := 0
	for i := 0; i+1 < len(p.Shares); i++ {
		cut += p.Shares[i]
		by := p.moveJoin(purl, cut, i)
		p.Shares[i] += by
		p.Shares[i+1] -= by
		cut += by
	}
}

// moveJoin is how far the join before column cut, after piece i, is moved.
func (p *Plan) moveJoin(purl []bool, cut, i int) int {
	best, least := 0, 3
	most := p.In.Int(BedNeedles) - min(p.Pieces-1, 2)
	for off := range p.In.Rib.Knit + p.In.Rib.Purl {
		for _, by := range [...]int{off, -off} {
			left, right := p.Shares[i]+by, p.Shares[i+1]-by
			if left < 1 || right < 1 || left > most || right > most {
				continue
			}
			purls := 0
			for _, c := range [...]int{cut + by - 1, cut + by} {
				if purl[c] {
					purls++
				}
			}
			if purls < least {
				best, least = by, purls
			}
		}
	}
	return best
}

// OnBed is the band as it hangs on the bed: the plan itself, or one plan for
// each piece, with the needles, columns, bumps, decreases and sewing yarn of
// that piece. Lengths and rows are those of the whole band.
func (p *Plan) OnBed() []*Plan {
	if len(p.Shares) < 2 {
		return []*Plan{p}
	}
	pieces, first := make([]*Plan, len(p.Shares)), 0
	for i, n := range p.Shares {
		q := *p
		q.Shares, q.Pieces, q.FitsBed, q.BandStitches = nil, 1, true, n
		q.RibColumns = columnsIn(p.RibColumns, first, n)
		if p.has.mock {
			q.EmptyColumns = columnsIn(p.EmptyColumns, first, n)
			q.WorkStitches = n - len(q.EmptyColumns)
		}
		q.solveHem()
		if q.has.off {
			q.OffYarn = q.offYarn()
		}
		if yoke, ok := p.waiting(); ok && p.FitsYoke {
			from, to := yoke*first/p.BandStitches, yoke*(first+n)/p.BandStitches
			q.hang(to - from)
		}
		pieces[i] = &q
		first += n
	}
	return pieces
}

// columnsIn is the columns from first on, n of them, counted from first.
func columnsIn(cols []int, first, n int) []int {
	var out []int
	for _, c := range cols {
		if c >= first && c < first+n {
			out = append(out, c-first)
		}
	}
	return out
}

// hang fills in how so many waiting stitches are hung on the band's needles.
func (p *Plan) hang(waiting int) {
	n, bed := p.BandStitches, p.In.Int(BedNeedles)
	p.YokeDecreases = waiting - n
	p.Rehang, p.Hangings = Spread(waiting, n), nil
	rounds := spreadRounds(waiting, n, bed)
	p.Stages = max(len(rounds), 1)
	if p.Stages == 1 {
		p.keepOffEmpty()
		return
	}
	for r, m := range rounds {
		shares := evenGaps(len(m), max(1, (len(m)+max(bed, 1)-1)/max(bed, 1)))
		if bed < 1 {
			shares = []int{len(m)}
		}
		for i, share := range shares {
			p.Hangings = append(p.Hangings, Hanging{Round: r + 1, Rounds: len(rounds), Piece: i + 1, Pieces: len(shares), Map: m[:share]})
			m = m[share:]
		}
	}
}

func hangingMaps(hs []Hanging) [][]int {
	maps := make([][]int, len(hs))
	for i, h := range hs {
		maps[i] = h.Map
	}
	return maps
}
