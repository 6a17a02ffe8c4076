package engine

// holeClear is how many stitches a join of two pieces keeps from a buttonhole
// (common practice): a hole at a join tears.
const holeClear = 2

// frontParts lays a front band on the bed: in one, or in pieces on as equal
// numbers of needles as may be, with every join moved the least that keeps it
// clear of the holes and both pieces on the bed. Where no place is clear the
// equal share stands.
func (p *Plan) frontParts() {
	f, bed := p.Front, p.In.Int(BedNeedles)
	if !f.has.count {
		return
	}
	f.Parts = cutParts(f.Stitches, max(1, f.Pieces), joinTakes(p.In))
	for i := range len(f.Parts) - 1 {
		f.clearJoin(i, bed)
	}
}

func (f *Front) clearJoin(i, bed int) {
	cut := f.Parts[i+1].First
	for off := range bed {
		for _, by := range [...]int{off, -off} {
			if f.clear(cut+by) && moveJoin(f.Parts, i, by, bed) {
				return
			}
		}
	}
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
