package engine

// Choice is one count a band could have, and the neck it gives. Stitches is 0
// where there is no such count.
type Choice struct {
	Stitches int
	Neck     Num // cm, closed
}

// maxStitches keeps a slip of the pen from asking for a row of a million
// needles: no possible neck and gauge come near it.
const maxStitches = 5000

// wholeNum is a count as a Num.
func wholeNum(i int) Num { return Int(int64(i)) }

// closing is the set of counts that close symmetrically in one rib:
// first, first+step, first+2*step ...
type closing struct{ first, step int }

// closingOf gives the counts of in's rib with its edge stitches. With edge e
// at both ends, a knit, b purl and k purl groups, N = 2e + k*b + (k-1)*a
// (trade practice: flat ribs with equal knit edges). Any count closes a plain
// band. A count that the seams eat up is no band and is left out.
func closingOf(in Inputs) closing {
	c := closing{first: 1, step: 1}
	if !in.Rib.IsPlain() {
		c = closing{first: 2*edge(in) + in.Rib.Purl, step: in.Rib.Knit + in.Rib.Purl}
	}
	if lost := in.Num(SeamStitches).Mul(Int(2)).Floor(); c.first <= lost {
		c.first += ((lost-c.first)/c.step + 1) * c.step
	}
	return c
}

// edge is the knit stitches at each end of the band.
func edge(in Inputs) int { return min(max(in.Int(EdgeStitches), 0), maxStitches) }

// nearest is the closing count nearest to wanted; on a tie the larger, since
// a tight neck is the worse fault.
func (c closing) nearest(wanted Num) int {
	i := wanted.Sub(wholeNum(c.first)).Div(wholeNum(c.step)).Round()
	return c.first + max(i, 0)*c.step
}

// atMost is the largest closing count not above n, 0 where there is none.
func (c closing) atMost(n int) int {
	if n < c.first {
		return 0
	}
	return n - (n-c.first)%c.step
}

// above is the smallest closing count over n.
func (c closing) above(n int) int {
	if n < c.first {
		return c.first
	}
	return c.atMost(n) + c.step
}

// neckWanted is the finished neck asked for: said, or the body's neck girth
// with its ease.
func neckWanted(in Inputs) (Num, bool) {
	switch {
	case in.Has(Neck):
		return in.Num(Neck), true
	case in.Has(NeckBody):
		return in.Num(NeckBody).Add(in.Num(Ease)), true
	}
	return Num{}, false
}

// overlap is how much of the neck the front bands cover: the two fronts of a
// cardigan overlap by one band.
func overlap(in Inputs) Num {
	if in.Garment == Cardigan {
		return in.Num(FrontBand)
	}
	return Num{}
}

// Overlap is how much of the neck the front bands cover, cm; 0 for a pullover.
func (p *Plan) Overlap() Num { return overlap(p.In) }

// seamWidth is what shows of n stitches at the seam, cm; the stitch gauge is
// set and not 0.
func seamWidth(in Inputs, n int) Num {
	shown := wholeNum(n).Sub(in.Num(SeamStitches).Mul(Int(2)))
	return shown.Mul(Int(10)).Div(in.Num(StitchGauge))
}

// choice is the count n with the neck it gives, none where n is 0.
func choice(in Inputs, n int) Choice {
	if n <= 0 {
		return Choice{}
	}
	return Choice{Stitches: n, Neck: seamWidth(in, n).Add(overlap(in))}
}

// solveStitches fills in the counts: wanted, chosen, its neighbours, what the
// bed and the yoke allow.
func (p *Plan) solveStitches() {
	in := p.In
	gauged := in.Num(StitchGauge).Sign() > 0 && in.Has(KeyGarment)
	p.NeckWanted, p.has.neck = neckWanted(in)
	if gauged && p.has.neck {
		width := p.NeckWanted.Sub(overlap(in))
		p.WantedStitches = width.Mul(in.Num(StitchGauge)).Div(Int(10)).
			Add(in.Num(SeamStitches).Mul(Int(2)))
		p.has.wanted = width.Sign() > 0
		p.bandTooWide = !p.has.wanted
	}
	if !gauged || !in.Has(KeyRib) {
		return
	}
	counts := closingOf(in)
	if in.Has(BedNeedles) {
		p.BedChoice = choice(in, counts.atMost(min(in.Int(BedNeedles), maxStitches)))
	}
	if p.has.wanted && p.WantedStitches.Less(Int(maxStitches)) {
		p.solveBand(counts)
	}
}

func (p *Plan) solveBand(counts closing) {
	in := p.In
	n := counts.nearest(p.WantedStitches)
	p.has.band = true
	p.BandStitches = n
	p.NeckResult = choice(in, n).Neck
	p.Smaller = choice(in, counts.atMost(n-1))
	p.Larger = choice(in, counts.above(n))
	p.SeamWidth = seamWidth(in, n)
	p.FitsBed, p.Pieces = true, 1
	if bed := in.Int(BedNeedles); bed > 0 {
		p.FitsBed, p.Pieces = n <= bed, bedPieces(n, bed, joinTakes(in))
	}
	p.FitsYoke = true
}

// solveWaiting fills in how the band is hung from the stitches that wait.
func (p *Plan) solveWaiting() {
	yoke, ok := p.waiting()
	if !ok || !p.has.band {
		return
	}
	n := p.Knitted()
	p.has.yoke = true
	p.YokeDecreases = yoke - n
	p.FitsYoke = n <= yoke
	p.YokeChoice = p.mostOfYoke(yoke)
	switch {
	case !p.FitsYoke:
	case len(p.Parts) < 2:
		p.hang(yoke)
	default:
		for _, q := range p.OnBed() {
			p.Stages = max(p.Stages, q.Stages)
		}
	}
}

// mostOfYoke is the largest band that so many waiting stitches fill, with what
// its joins take where it is wider than the bed.
func (p *Plan) mostOfYoke(yoke int) Choice {
	counts, bed, take := closingOf(p.In), p.In.Int(BedNeedles), joinTakes(p.In)
	n := counts.atMost(yoke)
	for n > 0 && n+take*(bedPieces(n, bed, take)-1) > yoke {
		n = counts.atMost(n - 1)
	}
	return choice(p.In, n)
}
