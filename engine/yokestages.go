package engine

// Stages plans a yoke: len(y.Stages) stages and, last, the neck on y.Neck
// stitches. The first stage keeps y.Start. Each stage between is found
// exactly by the method and then taken to the nearest repeat*n + edge that
// is not more than the stage before and not less than the neck, the larger on
// a tie: the repeat wins over equal cuts.
//
// Where the nearest counts do not fall from stage to stage, the set is taken
// whose squared distances come to the least.
//
// Errors: *CutsError, *NeckError, *HeightError, *RepeatError, *PieceError,
// *HadError.
func Stages(y YokeSpec) ([]Stage, error) {
	exact, err := y.exact()
	if err != nil {
		return nil, err
	}
	n := len(y.Stages)
	counts, err := y.counts(exact)
	if err != nil {
		return nil, err
	}
	stages := make([]Stage, n+1)
	below := Num{}
	for i := range stages {
		var spec StageSpec
		if i < n {
			spec = y.Stages[i]
		}
		s := Stage{Exact: exact[i], Count: counts[i], Had: y.Had[i], Below: below, Gap: -1}
		if i > 0 {
			s.cutFrom(stages[i-1].Stitches())
		}
		s.checkRepeat(spec)
		if s.Pieces, err = y.pieces(i, s, spec); err != nil {
			return nil, err
		}
		if y.Gauge.Sign() > 0 {
			s.Width = Int(int64(10 * s.Count)).Div(y.Gauge)
		}
		stages[i], below = s, below.Add(spec.Height)
	}
	return stages, nil
}

// exact is every stage's stitches before rounding, the neck's last.
func (y YokeSpec) exact() ([]Num, error) {
	n, shares := len(y.Stages), y.Method.cuts()
	switch {
	case n == 0 || shares != nil && len(shares) != n:
		return nil, &CutsError{Method: y.Method, Have: n, Want: max(len(shares), 1)}
	case y.Neck < 1 || y.Neck >= y.Start:
		return nil, &NeckError{Neck: y.Neck, Most: y.Start - 1}
	}
	start := Int(int64(y.Start))
	lost := start.Sub(Int(int64(y.Neck)))
	height, total := Num{}, Num{}
	for i, s := range y.Stages {
		if y.Method == StraightCone && s.Height.Sign() <= 0 {
			return nil, &HeightError{Stage: i}
		}
		total = total.Add(s.Height)
	}
	exact := []Num{start}
	for i := 1; i < n; i++ {
		height = height.Add(y.Stages[i-1].Height)
		var at Num
		switch {
		case shares != nil:
			at = exact[i-1].Mul(Int(1).Sub(shares[i-1]))
		case y.Method == StraightCone:
			at = start.Sub(lost.Mul(height).Div(total))
		default:
			at = start.Sub(lost.Mul(Frac(int64(i), int64(n))))
		}
		exact = append(exact, at)
	}
	if lowest := exact[n-1].Floor(); lowest < y.Neck {
		return nil, &NeckError{Neck: y.Neck, Most: lowest}
	}
	return append(exact, Int(int64(y.Neck))), nil
}

// closestDoubled is the fewest single needles between two doubled ones of any
// of the maps, -1 where no two are doubled.
func closestDoubled(maps [][]int) int {
	gap := -1
	for _, m := range maps {
		last := -1
		for col, stitches := range m {
			if stitches != 2 {
				continue
			}
			if last >= 0 && (gap < 0 || col-last-1 < gap) {
				gap = col - last - 1
			}
			last = col
		}
	}
	return gap
}

// counts are the counts with whole repeats, at least one.
func (s StageSpec) counts() closing {
	step := max(s.Repeat, 1)
	return closing{first: max(s.Edge, 0) + step, step: step}
}

// cutFrom sets what the cut from the stage before asks for.
func (s *Stage) cutFrom(before int) {
	s.Decreases = before - s.Count
	s.Hangings = SpreadStages(before, s.Count)
	if share := Frac(int64(s.Decreases), int64(before)); Frac(1, 3).Less(share) {
		s.Warnings = append(s.Warnings, YokeWarning{Code: SteepCut, Value: share})
	}
	s.Gap = closestDoubled(s.Hangings)
	if n := len(s.Hangings); n > 1 {
		s.Warnings = append(s.Warnings, YokeWarning{Code: SeveralHangings, Value: Int(int64(n))})
	}
}

// checkRepeat warns of a given count that breaks its repeat.
func (s *Stage) checkRepeat(spec StageSpec) {
	counts := spec.counts()
	if low := counts.atMost(s.Stitches()); spec.Repeat > 1 && low != s.Stitches() {
		s.Warnings = append(s.Warnings, YokeWarning{Code: BrokenRepeat, Lower: low, Higher: counts.above(s.Stitches())})
	}
}
