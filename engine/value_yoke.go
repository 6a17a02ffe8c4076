package engine

// yokeList is a result of the yoke that is a list; false where it is none or
// not known.
func (p *Plan) yokeList(k Key) (any, bool) {
	y := p.Yoke
	if y == nil || y.Stages == nil {
		return nil, false
	}
	ints := func(from int, f func(Stage) int) []int {
		var out []int
		for _, s := range y.Stages[from:] {
			out = append(out, f(s))
		}
		return out
	}
	nums := func(from int, f func(Stage) Num) []float64 {
		var out []float64
		for _, s := range y.Stages[from:] {
			out = append(out, f(s).Float())
		}
		return out
	}
	switch k {
	case StageCounts:
		return ints(0, func(s Stage) int { return s.Count }), true
	case StageDecreases:
		return ints(1, func(s Stage) int { return s.Decreases }), true
	case StageErrors:
		return nums(0, Stage.RoundedBy), true
	case StageCuts:
		return nums(1, func(s Stage) Num { return s.Share().Mul(Int(100)) }), true
	case StagePieces:
		return ints(0, func(s Stage) int { return len(s.Pieces) }), y.Spec.Bed > 0
	case StageNeedles:
		return y.pieceNeedles(), y.Spec.Bed > 0
	case StageRehang:
		var out [][][]int
		for _, s := range y.Stages[1:] {
			out = append(out, s.Hangings)
		}
		return out, true
	case StageRowsKey:
		return y.Rows, y.Rows != nil
	}
	return nil, false
}

// pieceNeedles is the first and last needle of every piece, by stage.
func (y *YokePlan) pieceNeedles() [][]string {
	var out [][]string
	for _, s := range y.Stages {
		var pieces []string
		for _, p := range s.Pieces {
			pieces = append(pieces, NeedleName(0, p.Stitches)+"-"+NeedleName(p.Stitches-1, p.Stitches))
		}
		out = append(out, pieces)
	}
	return out
}

// chartList is a result of the chart that is a list by row.
func (p *Plan) chartList(k Key) (any, bool) {
	c := p.Chart
	if c == nil || c.Cards == nil {
		return nil, false
	}
	switch k {
	case ChartNeedles:
		return c.byCard(func(card RowCard, n int) []string {
			return append(needleNames(card.Left, n), needleNames(card.Right, n)...)
		}), true
	case ChartCatches:
		return c.byCard(func(card RowCard, n int) []string {
			var cols []int
			for _, f := range card.Over {
				cols = append(cols, f.Catches...)
			}
			return needleNames(cols, n)
		}), true
	case ChartContrast, ChartMain:
		var out []int
		for _, cards := range c.Cards {
			sum := 0
			for _, card := range cards {
				if k == ChartMain {
					sum += card.Main
				} else {
					sum += card.Contrast
				}
			}
			out = append(out, sum)
		}
		return out, true
	case ChartMainYarn:
		return floats(c.MainCm), c.MainCm != nil
	case ChartSecondYarn:
		return floats(c.ContrastCm), c.ContrastCm != nil
	}
	return nil, false
}

// byCard is a list of needles for every row; the needles of a second piece and
// on are led by its number.
func (c *ChartPlan) byCard(f func(RowCard, int) []string) [][]string {
	out := make([][]string, 0, len(c.Cards))
	for _, cards := range c.Cards {
		row := []string{}
		for i, card := range cards {
			for _, name := range f(card, c.Pieces[i].Stitches) {
				if i > 0 {
					name = itoa(i+1) + ":" + name
				}
				row = append(row, name)
			}
		}
		out = append(out, row)
	}
	return out
}

func floats(ns []Num) []float64 {
	var out []float64
	for _, n := range ns {
		out = append(out, n.Float())
	}
	return out
}

// partCount is a whole number of the yoke or the chart.
func (p *Plan) partCount(k Key) (int, bool) {
	if y := p.Yoke; y != nil && y.Stages != nil {
		switch k {
		case DoubledGap:
			gap := -1
			for _, s := range y.Stages {
				if s.Gap >= 0 && (gap < 0 || s.Gap < gap) {
					gap = s.Gap
				}
			}
			return gap, gap >= 0
		case OnePieceFrom:
			return y.OneFrom, y.OneFrom > 0 && y.Spec.Bed > 0
		case YokeRowsResult:
			return y.AllRows(), y.Rows != nil
		}
	}
	if c := p.Chart; c != nil {
		switch k {
		case ChartRows:
			return len(c.Chart) * c.Times, true
		case ChartRepeat:
			return len(c.Chart[0]), true
		case ChartWidth:
			return c.Width, c.Width > 0
		case FloatLongest:
			return c.LongestFloat().Stitches, c.Cards != nil
		case FloatMost:
			return c.Limit, true
		}
	}
	return 0, false
}

// partMeasure is a real number of the yoke or the chart.
func (p *Plan) partMeasure(k Key) (float64, bool) {
	if y := p.Yoke; y != nil {
		switch k {
		case YokeDepthLow:
			return y.Published.Low.Float(), y.HasBust
		case YokeDepthHigh:
			return y.Published.High.Float(), y.HasBust
		case YokeDepthRule:
			return y.Published.Rule.Float(), y.HasBust
		case LargestCut:
			if y.Stages == nil {
				return 0, false
			}
			return y.Stages[y.Steepest-1].Share().Mul(Int(100)).Float(), true
		case YokeDepthResult:
			return y.Depth.Float(), y.HasDepth && y.Stages != nil
		case YokeSlope:
			return y.Slope, y.Slope > 0
		}
	}
	if c := p.Chart; c != nil && c.Cards != nil {
		metres := func(cm Num) (float64, bool) { return cm.Float() / 100, c.MainCm != nil }
		grams := func(cm Num) (float64, bool) {
			perGram := p.In.Num(YarnLength)
			return cm.Div(perGram).Float(), c.MainCm != nil && perGram.Sign() > 0
		}
		switch k {
		case FloatLongestCm:
			f := c.LongestFloat()
			return f.Length.Float(), p.In.Num(StitchGauge).Sign() > 0
		case ColourDial:
			return p.In.Num(MainTension).Add(Int(ColourworkNumbers)).Float(), p.In.Has(MainTension)
		case MainYarn:
			return metres(c.MainAll)
		case ContrastYarn:
			return metres(c.ContrastAll)
		case MainGrams:
			return grams(c.MainAll)
		case ContrastGrams:
			return grams(c.ContrastAll)
		}
	}
	return 0, false
}

// partInput is an input of the yoke that follows from another one.
func (p *Plan) partInput(k Key) (Num, bool) {
	y := p.Yoke
	if y == nil {
		return Num{}, false
	}
	switch k {
	case YokeFirst:
		return wholeNum(y.Spec.Start), y.Spec.Start > 0
	case BodyStitches:
		return wholeNum(y.Body), y.Body > 0
	case YokeStages:
		return wholeNum(len(y.Spec.Stages)), len(y.Spec.Stages) > 0
	case YokeNeck:
		return wholeNum(y.Spec.Neck), y.Stages != nil
	case YokeStitches:
		n, ok := p.waiting()
		return wholeNum(n), ok
	}
	return Num{}, false
}
