package engine

import "slices"

// hemColumns is the columns whose bump of the first band row is hung, from
// the left, and how many were wished for. Every bump between the ends for
// every = 1; else columns 1, 1+every ... and the last but one, so that both
// ends are closed. A wished column that was latched has no bump facing the
// knitter and gives way to a neighbour, or is left out.
func hemColumns(latched []int, every, n int) (hung []int, wished int) {
	if n < 3 {
		return nil, 0
	}
	every = min(max(every, 1), n)
	list := hemList(every, n)
	if every == 1 {
		return list, len(list)
	}
	taken := make([]bool, n) // latched, on the list, or hung
	bare := make([]bool, n)  // latched: no bump to hang
	for _, c := range latched {
		taken[c], bare[c] = true, true
	}
	for _, c := range list {
		taken[c] = true
	}
	hung = make([]int, 0, len(list))
	for l, r := 0, len(list)-1; l <= r; l, r = l+1, r-1 {
		hung = hang(hung, list[l], every, taken, bare)
		if l < r {
			hung = hang(hung, list[r], every, taken, bare)
		}
	}
	slices.Sort(hung)
	return hung, len(list)
}

func hemList(every, n int) []int {
	list := make([]int, 0, n/every+2)
	for c := 1; c <= n-2; c += every {
		list = append(list, c)
	}
	if list[len(list)-1] != n-2 {
		list = append(list, n-2)
	}
	return list
}

// hang hangs column c, or the nearest free one less than every away, trying
// first the side that lies further from the middle of the row.
func hang(hung []int, c, every int, taken, bare []bool) []int {
	if !bare[c] {
		return append(hung, c)
	}
	out := -1
	if 2*c > len(taken)-1 {
		out = +1
	}
	for d := 1; d < every; d++ {
		for _, to := range [2]int{c + out*d, c - out*d} {
			if to >= 0 && to < len(taken) && !taken[to] {
				taken[to] = true
				return append(hung, to)
			}
		}
	}
	return hung
}

// solveHem fills in the bumps to hang; a single layer has no hem.
func (p *Plan) solveHem() {
	if !p.has.band || p.In.Int(Layers) < 2 {
		return
	}
	p.has.hem = true
	if p.has.mock {
		p.HemColumns, p.HemWished = slices.Clone(p.EmptyColumns), len(p.EmptyColumns)
		return
	}
	p.HemColumns, p.HemWished = hemColumns(p.RibColumns, p.In.Int(HemEvery), p.BandStitches)
}

// hemCount is the bumps to hang, of all pieces together.
func (p *Plan) hemCount() int {
	n := 0
	for _, q := range p.OnBed() {
		n += len(q.HemColumns)
	}
	return n
}

// FrontHem is the columns of a front band whose bump of the first band row is
// hung, by the rule of the neckband's hem; nil in a single layer, and where
// the stitches are not known.
func (p *Plan) FrontHem() []int {
	f := p.Front
	if f == nil || !f.has.count || f.Layers < 2 {
		return nil
	}
	hung, _ := hemColumns(p.FrontRibColumns(), p.In.Int(HemEvery), f.Stitches)
	return hung
}
