package engine

// holeClear is how many stitches a join of two pieces keeps from a buttonhole
// (common practice): a hole at a join tears.
const holeClear = 2

// frontParts lays a front band on the bed: in one, or in pieces on as equal
// numbers of needles as may be, with every join moved the least that keeps it
// clear of the holes, out of a purl group and both pieces on the bed. Where the
// bed leaves no room for that it is a piece more; where that does not help the
// equal shares stand.
func (p *Plan) frontParts() {
	f, bed, take := p.Front, p.In.Int(BedNeedles), joinTakes(p.In)
	if !f.has.count {
		return
	}
	purl := make([]bool, f.Stitches)
	for _, c := range p.FrontRibColumns() {
		purl[c] = true
	}
	whole := func(cut int) bool { return cut < 1 || cut >= len(purl) || !purl[cut-1] || !purl[cut] }
	fewest := max(1, f.Pieces)
	for k := fewest; k <= fewest+2 && k <= f.Stitches; k++ {
		was := f.Parts
		f.Parts = cutParts(f.Stitches, k, take)
		settled := true
		for i := range k - 1 {
			settled = f.clearJoin(i, bed, whole) && settled
		}
		if settled {
			f.Pieces = min(f.Pieces, 1) * k // 0 where the bed is not known
			return
		}
		if was != nil {
			f.Parts = was
		}
	}
}

// clearJoin moves the join behind piece i, false where no place is clear and
// right.
func (f *Front) clearJoin(i, bed int, right func(cut int) bool) bool {
	cut := f.Parts[i+1].First
	for off := range bed {
		for _, by := range [...]int{off, -off} {
			if f.clear(cut+by) && right(cut+by) && moveJoin(f.Parts, i, by, bed) {
				return true
			}
		}
	}
	return false
}

// PartOf is the piece in which column col lies, and its number from 0.
func (f *Front) PartOf(col int) (t Part, i int) {
	for i, t = range f.Parts {
		if t.Has(col) {
			break
		}
	}
	return t, i
}

// clear reports whether a join before stitch cut, from 0, keeps from every hole.
func (f *Front) clear(cut int) bool {
	if !f.has.holes {
		return true
	}
	for _, first := range f.Holes.First {
		if cut > first-holeClear && cut < first+max(f.Spec.Size, 1)+holeClear {
			return false
		}
	}
	return true
}
