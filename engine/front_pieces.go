package engine

// holeClear is how many stitches a join of two pieces keeps from a buttonhole
// (common practice): a hole at a join tears.
const holeClear = 2

// shares is the stitches of each piece of a front band that the bed does not
// take at once: as equal as whole stitches allow, with every join moved the
// least that keeps it clear of the holes and both pieces on the bed. Where no
// place is clear the equal share stands.
func (f *Front) shares(bed int) []int {
	out := evenGaps(f.Stitches, f.Pieces)
	most := bed - min(f.Pieces-1, 2) // a stitch more at each join
	cut := 0
	for i := 0; i+1 < len(out); i++ {
		cut += out[i]
		for off := range bed {
			moved := false
			for _, by := range [...]int{off, -off} {
				if a, b := out[i]+by, out[i+1]-by; a > 0 && b > 0 && a <= most && b <= most && f.clear(cut+by) {
					out[i], out[i+1], cut, moved = a, b, cut+by, true
					break
				}
			}
			if moved {
				break
			}
		}
	}
	return out
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
