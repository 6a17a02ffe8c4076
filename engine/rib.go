package engine

// ribColumns is the columns of n stitches that are dropped and latched: the
// purl columns of the public side, because one bed shows the wrong side. The
// rib is symmetric, so counting from the left of either side is the same.
// Plain has none; n closes (see closingOf).
func ribColumns(rib Rib, edge, n int) []int {
	if rib.IsPlain() {
		return nil
	}
	step := rib.Knit + rib.Purl
	columns := make([]int, 0, (n/step+1)*rib.Purl)
	for at := edge; at+rib.Purl+edge <= n; at += step {
		for i := range rib.Purl {
			columns = append(columns, at+i)
		}
	}
	return columns
}

// solveRib fills in the columns to latch.
func (p *Plan) solveRib() {
	if p.has.band {
		p.RibColumns = ribColumns(p.In.Rib, edge(p.In), p.BandStitches)
	}
}
