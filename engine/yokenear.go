package engine

import "errors"

// NearestYoke is a yoke that works in place of one that does not, found by
// trying what its error speaks of; ok is false where nothing near was found.
func NearestYoke(y YokeSpec) (near YokePlan, ok bool) {
	for range 2 * MostStages {
		stages, err := Stages(y)
		if err == nil {
			return YokePlan{Spec: y, Stages: stages}, true
		}
		if y, ok = mended(y, err); !ok {
			return YokePlan{}, false
		}
	}
	return YokePlan{}, false
}

// mended is y with one thing changed that the error tells of.
func mended(y YokeSpec, err error) (YokeSpec, bool) {
	var cuts *CutsError
	var neck *NeckError
	var repeat *RepeatError
	var piece *PieceError
	y.Stages = append([]StageSpec(nil), y.Stages...)
	switch {
	case errors.As(err, &cuts) && len(y.Stages) > 0:
		y.Method = EqualCuts
	case errors.As(err, &neck) && y.Neck < y.Start && y.Method != EqualCuts:
		y.Method = EqualCuts
	case errors.As(err, &neck) && neck.Most >= 1:
		y.Neck = neck.Most
	case errors.As(err, &repeat):
		r := y.Stages[repeat.Stage]
		r.Repeat = fittingRepeat(r, repeat.Least, repeat.Most)
		y.Stages[repeat.Stage] = r
	case errors.As(err, &piece) && piece.Bed > piece.Edge:
		y.Stages[piece.Stage].Repeat = min(piece.Bed-piece.Edge, y.Stages[piece.Stage].Repeat-1)
	default:
		return y, false
	}
	return y, true
}

// fittingRepeat is the largest repeat below the stage's of which a whole
// number lies from least to most.
func fittingRepeat(s StageSpec, least, most int) int {
	for r := s.Repeat - 1; r > 1; r-- {
		s.Repeat = r
		if n := s.counts().atMost(most); n >= least && n > 0 {
			return r
		}
	}
	return 0
}

// RepeatsOf is the pattern repeats, from two stitches to half the stage, of which
// a whole number and the edge stitches make up n stitches.
func RepeatsOf(n, edge int) []int {
	var out []int
	for r := 2; r <= (n-edge)/2; r++ {
		if (n-edge)%r == 0 {
			out = append(out, r)
		}
	}
	return out
}

// FewestStages is the fewest stages, from the present way of cutting, so that
// no cut takes more than a share of the stitches; the counts are those of the
// plan with so many stages. ok is false where no number up to MostStages does.
func FewestStages(in Inputs, share Num) (n int, p *Plan, ok bool) {
	if YokeMethod(in.Text(KeyYokeMethod)).Cuts() > 0 {
		in = in.Without(KeyYokeMethod)
	}
	for n = 1; n <= MostStages; n++ {
		p = Solve(in.With(YokeStages, wholeNum(n)))
		if p.Yoke == nil || p.Yoke.Stages == nil {
			continue
		}
		if !share.Less(p.Yoke.Stages[p.Yoke.Steepest-1].Share()) {
			return n, p, true
		}
	}
	return 0, nil, false
}

// LargestFirst is the most stitches that the first stage can have so that no
// cut takes more than a share; ok is false where the neck is not known or no
// count does.
func LargestFirst(in Inputs, share Num) (first int, p *Plan, ok bool) {
	return searchFirst(in, func(y *YokePlan) bool { return !share.Less(y.Stages[y.Steepest-1].Share()) })
}

// FirstFor is the most stitches of the first stage with which a stage, from 1,
// has no more than count.
func FirstFor(in Inputs, stage, count int) (first int, p *Plan, ok bool) {
	return searchFirst(in, func(y *YokePlan) bool { return stage <= len(y.Stages) && y.Stages[stage-1].Count <= count })
}

// searchFirst is the largest first stage whose yoke does; plans that cannot be
// do not. Only the yoke is worked out for each of the thousands of counts.
func searchFirst(in Inputs, does func(*YokePlan) bool) (first int, p *Plan, ok bool) {
	in = in.Without(StageHad).Without(YokeStitches).Without(KeyChart)
	band := Solve(in.With(YokeFirst, Int(maxStitches/2)))
	if band.Yoke == nil || band.Yoke.Spec.Neck == 0 {
		return 0, nil, false
	}
	neck := band.Yoke.Spec.Neck
	for n := neck + 1; n <= min(maxStitches, 8*neck); n++ {
		q := Plan{In: in.With(YokeFirst, wholeNum(n)), BandStitches: band.BandStitches}
		q.solveYoke()
		if q.Yoke.Stages != nil && does(q.Yoke) {
			first, ok = n, true
		}
	}
	if !ok {
		return 0, nil, false
	}
	return first, Solve(in.With(YokeFirst, wholeNum(first))), true
}
