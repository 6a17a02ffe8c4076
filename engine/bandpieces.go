package engine

// BandShares are the stitches of the pieces in which a band wider than the bed
// is knitted, with those for their joins; BandHangings the maps by which a yoke
// with more than twice the band's stitches is hung, one after the other.
const (
	BandShares   Key = "band_shares"
	BandHangings Key = "band_hangings"
)

// solvePieces shares the band out where the bed is too short: on as equal
// numbers of needles as may be, a join between two knit columns rather than
// beside a purl one, and never within a purl group, which would show as a half
// rib. Where the bed leaves no room to move a join out of one it is a piece more.
func (p *Plan) solvePieces() {
	if !p.has.band || p.Pieces < 2 {
		return
	}
	purl := make([]bool, p.BandStitches)
	for _, c := range p.RibColumns {
		purl[c] = true
	}
	take, bed, fewest := joinTakes(p.In), p.In.Int(BedNeedles), p.Pieces
	for k := fewest; k <= fewest+2 && k < p.BandStitches; k++ {
		parts := cutParts(p.BandStitches, k, take)
		torn := false
		for i := range k - 1 {
			torn = p.settleJoin(parts, purl, i, bed) > 1 || torn
		}
		if k == fewest || !torn {
			p.Parts, p.Pieces = parts, k
		}
		if !torn {
			break
		}
	}
	p.Shares = needlesOf(p.Parts)
}

// settleJoin moves the join behind piece i the least that leaves the fewest
// purl columns beside it, and gives how many these are: two is within a group.
func (p *Plan) settleJoin(parts []Part, purl []bool, i, bed int) int {
	best, least := 0, 3
	for off := range p.In.Rib.Knit + p.In.Rib.Purl {
		for _, by := range [...]int{off, -off} {
			if !moveJoin(parts, i, by, bed) {
				continue
			}
			purls := 0
			for _, c := range [...]int{parts[i+1].First - 1, parts[i+1].First} {
				if purl[c] {
					purls++
				}
			}
			moveJoin(parts, i, -by, bed)
			if purls < least {
				best, least = by, purls
			}
		}
	}
	moveJoin(parts, i, best, bed)
	return least
}

// PiecePlace is where a piece belongs: which it is of how many, and which of the
// yoke's waiting stitches it hangs, counted from 1 from the left as the yoke
// hangs on the bed, purl side toward her; 0 where they are not known.
type PiecePlace struct {
	Part
	No, Of   int // from 1
	From, To int
}

// OnBed is the band as it hangs on the bed: the plan itself, or one plan for
// each piece, with the needles, columns, bumps, decreases and sewing yarn of
// that piece, the stitches for its joins among them, and its Piece. Lengths and
// rows are those of the whole band.
func (p *Plan) OnBed() []*Plan {
	if len(p.Parts) < 2 {
		return []*Plan{p}
	}
	pieces, before := make([]*Plan, len(p.Parts)), 0
	for i, t := range p.Parts {
		q, n := *p, t.Needles()
		q.Parts, q.Shares, q.Pieces, q.FitsBed, q.BandStitches = nil, nil, 1, true, n
		q.Piece = &PiecePlace{Part: t, No: i + 1, Of: len(p.Parts)}
		q.RibColumns = t.Columns(p.RibColumns)
		if p.has.mock {
			q.EmptyColumns = t.Columns(p.EmptyColumns)
			q.WorkStitches = n - len(q.EmptyColumns)
		}
		q.solveHem()
		if q.has.off {
			q.OffYarn = q.offYarn()
		}
		if yoke, ok := p.waiting(); ok && p.FitsYoke {
			all := p.Knitted()
			from, to := yoke*before/all, yoke*(before+n)/all
			q.Piece.From, q.Piece.To = from+1, to
			q.hang(to - from)
		}
		pieces[i] = &q
		before += n
	}
	return pieces
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
		from := 1
		for i, share := range shares {
			h := Hanging{Round: r + 1, Rounds: len(rounds), Piece: i + 1, Pieces: len(shares), Map: m[:share], From: from}
			p.Hangings = append(p.Hangings, h)
			m, from = m[share:], from+h.Stitches()
		}
	}
}
