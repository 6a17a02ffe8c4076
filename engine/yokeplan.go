package engine

import "math"

// YokePlan is the yoke above the band, from its first stage to the neck.
type YokePlan struct {
	Spec   YokeSpec
	Stages []Stage // the neck last; nil where Fault tells why not
	Fault  error   // one of the errors of Stages

	Body      int  // stitches of the body the first stage was reckoned from, 0 where it was said
	FirstFrom Num  // those of the percentages, before the repeat
	NeckSaid  bool // the yoke ends on a count of its own, not on the band's

	Rows      []int // of each stage; nil where no depth and no row gauge is known
	RowsFrom  Key   // what they come from: StageHeights, YokeRows, YokeDepthWanted or Bust
	Depth     Num   // of all rows, cm
	HasDepth  bool
	Slope     float64 // degrees from upright, 0 without widths and depth
	Published YokeDepth
	HasBust   bool
	OneFrom   int // first stage from 1 that fits the bed in one piece and all after it; 0 none; len(Stages) only the neck
	Steepest  int // stage whose cut takes the largest share, from 1; len(Stages) the neck
}

// yokeSaid reports whether anything of the yoke was said that its plan is
// made from.
func yokeSaid(in Inputs) bool {
	return in.Has(YokeFirst) || in.Has(BodyStitches) || in.Has(Bust) && in.Num(StitchGauge).Sign() > 0
}

// solveYoke plans the yoke where its first stage is known or follows from the
// body; without it only what is published for the bust.
func (p *Plan) solveYoke() {
	in := p.In
	if !yokeSaid(in) && !in.Has(Bust) {
		return
	}
	y := &YokePlan{}
	p.Yoke = y
	if in.Has(Bust) {
		y.Published, y.HasBust = YokeDepthFor(in.Num(Bust)), true
	}
	if !yokeSaid(in) {
		return
	}
	y.Spec = yokeSpec(in)
	y.Spec.Neck, y.NeckSaid = in.Int(YokeNeck), in.Has(YokeNeck)
	if !y.NeckSaid {
		y.Spec.Neck = p.BandStitches
	}
	y.first(in)
	if y.Spec.Neck == 0 || y.Spec.Start == 0 {
		return
	}
	y.Stages, y.Fault = Stages(y.Spec)
	y.rows(in)
	if y.Fault != nil {
		return
	}
	y.Steepest, y.OneFrom = 1, 0
	for i, s := range y.Stages {
		if i > 0 && y.Stages[y.Steepest-1].Share().Less(s.Share()) {
			y.Steepest = i + 1
		}
	}
	for i := len(y.Stages) - 1; i >= 0 && len(y.Stages[i].Pieces) == 1; i-- {
		y.OneFrom = i + 1
	}
	y.slope(in)
}

// yokeSpec is what was said of the stages, each with its repeat and height;
// the last of a short list stands for the stages after it.
func yokeSpec(in Inputs) YokeSpec {
	s := YokeSpec{Method: YokeMethod(in.Text(KeyYokeMethod)), Bed: in.Int(BedNeedles), Gauge: in.Num(StitchGauge), Had: pairsOf(in.Text(StageHad))}
	if s.Method == "" {
		s.Method = EqualCuts
	}
	repeats, heights := listOf(in.Text(StageRepeats)), listOf(in.Text(StageHeights))
	n := StageCount(in)
	for i := range n {
		spec := StageSpec{Edge: in.Int(StageEdge), Height: Int(1)}
		if len(repeats) > 0 {
			spec.Repeat = repeats[min(i, len(repeats)-1)].Floor()
		}
		if len(heights) > 0 {
			spec.Height = heights[min(i, len(heights)-1)]
		}
		s.Stages = append(s.Stages, spec)
	}
	if in.Has(YokeStitches) && n > 0 {
		// what waits on the waste yarn is the last stage as it came out
		had := map[int]int{n - 1: min(in.Int(YokeStitches), maxStitches)}
		for i, c := range s.Had {
			had[i] = c
		}
		s.Had = had
	}
	return s
}

// usualStages is how many stages are planned where nothing tells: three
// decreases are the commonest (common practice).
const usualStages = 3

// StageCount is how many stages the yoke has: said, or as many as the method,
// the repeats or the heights tell.
func StageCount(in Inputs) int {
	switch n := YokeMethod(in.Text(KeyYokeMethod)).Cuts(); {
	case in.Has(YokeStages):
		return max(0, min(in.Int(YokeStages), MostStages))
	case n > 0:
		return n
	}
	if n := len(listOf(in.Text(StageRepeats))); n > 1 {
		return n
	}
	if n := len(listOf(in.Text(StageHeights))); n > 1 {
		return n
	}
	return usualStages
}

// first sets the stitches of the first stage: said, or by the percentages from
// the body and then at the nearest whole repeats.
func (y *YokePlan) first(in Inputs) {
	if in.Has(YokeFirst) {
		y.Spec.Start = min(in.Int(YokeFirst), maxStitches)
		return
	}
	if y.Body = bodyStitches(in); y.Body == 0 || len(y.Spec.Stages) == 0 {
		return
	}
	y.Body = min(y.Body, maxStitches/2)
	y.FirstFrom = wholeNum(YokeBase(y.Body))
	y.Spec.Start = y.Spec.Stages[0].counts().nearest(y.FirstFrom)
}

// bodyStitches is the body's stitches: said, or from the bust at this gauge.
func bodyStitches(in Inputs) int {
	if in.Has(BodyStitches) {
		return in.Int(BodyStitches)
	}
	return in.Num(Bust).Mul(in.Num(StitchGauge)).Div(Int(10)).Round()
}

// rows shares the yoke's rows among the stages: by their heights, or evenly
// from the rows or the depth said; else the middle of the published depths
// for the bust.
func (y *YokePlan) rows(in Inputs) {
	n, gauge := len(y.Spec.Stages), in.Num(RowGauge)
	switch {
	case in.Has(StageHeights) && gauge.Sign() > 0:
		y.RowsFrom = StageHeights
		for _, s := range y.Spec.Stages {
			y.Rows = append(y.Rows, s.Height.Mul(gauge).Div(Int(10)).Round())
		}
	case in.Has(YokeRows):
		y.RowsFrom, y.Rows = YokeRows, evenGaps(max(0, min(in.Int(YokeRows), maxStitches)), n)
	case in.Has(YokeDepthWanted) && gauge.Sign() > 0:
		y.RowsFrom, y.Rows = YokeDepthWanted, StageRows(in.Num(YokeDepthWanted), gauge, n)
	case y.HasBust && gauge.Sign() > 0:
		y.RowsFrom, y.Rows = Bust, StageRows(y.Published.Low.Add(y.Published.High).Div(Int(2)), gauge, n)
	}
	if y.Rows != nil && gauge.Sign() > 0 {
		y.Depth, y.HasDepth = wholeNum(y.AllRows()).Mul(Int(10)).Div(gauge), true
	}
}

// AllRows is the rows of all stages.
func (y *YokePlan) AllRows() int {
	sum := 0
	for _, r := range y.Rows {
		sum += r
	}
	return sum
}

// slope is how far the yoke leans from upright, as if it were one straight
// cone: the difference of the two circumferences over 2 pi is the distance it
// comes in, the depth its side.
func (y *YokePlan) slope(in Inputs) {
	if !y.HasDepth || y.Depth.Sign() <= 0 || in.Num(StitchGauge).Sign() <= 0 {
		return
	}
	last := len(y.Stages) - 1
	in1 := y.Stages[0].Width.Sub(y.Stages[last].Width).Float() / (2 * math.Pi * y.Depth.Float())
	y.Slope = math.Asin(math.Min(1, in1)) * 180 / math.Pi
}

// Share is the part of the stitches before it that a stage loses.
func (s Stage) Share() Num {
	return Frac(int64(s.Decreases), int64(s.Decreases+s.Count))
}

// Waiting is the stitches on which the yoke ends, and whether they follow from
// the last stage as planned rather than from a count that was told.
func (p *Plan) Waiting() (n int, planned, ok bool) {
	n, ok = p.waiting()
	return n, ok && !p.In.Has(YokeStitches), ok
}

// waiting is the stitches on which the yoke ends: those said to wait, or those
// of the last stage planned; false where neither is known, and for more than
// any yoke has: a hanging is worked out stitch by stitch.
func (p *Plan) waiting() (int, bool) {
	switch {
	case p.In.Has(YokeStitches):
		n := p.In.Int(YokeStitches)
		return n, n <= maxStitches
	case p.Yoke != nil && len(p.Yoke.Stages) > 1:
		return p.Yoke.Stages[len(p.Yoke.Stages)-2].Stitches(), true
	}
	return 0, false
}
