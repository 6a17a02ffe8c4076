package engine

import "fmt"

// recordYoke is how a number of the yoke came about.
func (p *Plan) recordYoke(k Key) (Record, bool) {
	y := p.Yoke
	if y == nil {
		return Record{}, false
	}
	switch k {
	case YokeStages:
		n := len(y.Spec.Stages)
		return Record{Rule: RuleStages, From: y.stagesFrom(p.In), Expr: itoa(n), Value: float64(n)}, n > 0
	case BodyStitches:
		return Record{Rule: RuleBodyCount, From: []Key{Bust, StitchGauge}, Expr: p.num(Bust) + " * " + p.num(StitchGauge) + " / 10",
			Value: float64(y.Body), Unrounded: p.In.Num(Bust).Mul(p.In.Num(StitchGauge)).Div(Int(10)).Float(), Rounding: RoundNearest}, y.Body > 0
	case YokeFirst:
		return Record{Rule: RuleYokeBase, From: []Key{BodyStitches}, Expr: fmt.Sprintf("%d + 2 * floor(%d * %d / 100 + 1 / 2) - 4 * floor(%d * %d / 100 + 1 / 2)",
			y.Body, y.Body, SleevePercent, y.Body, UnderarmPercent),
			Value: float64(y.Spec.Start), Unrounded: y.FirstFrom.Float(), Rounding: RoundRepeat}, y.Body > 0
	case YokeDepthRule:
		return Record{Rule: RuleQuarter, From: []Key{Bust}, Expr: p.num(Bust) + " / 4", Value: y.Published.Rule.Float()}, y.HasBust
	case YokeDepthLow, YokeDepthHigh:
		d := y.Published.Low
		if k == YokeDepthHigh {
			d = y.Published.High
		}
		return Record{Rule: RulePublished, From: []Key{Bust}, Expr: y.Published.expr(k, p.In.Num(Bust)), Value: d.Float()}, y.HasBust
	}
	if y.Stages == nil {
		return Record{}, false
	}
	return p.recordStages(k)
}

// stagesFrom is what tells how many stages there are where it was not said.
func (y *YokePlan) stagesFrom(in Inputs) []Key {
	for _, k := range []Key{KeyYokeMethod, StageRepeats, StageHeights, YokeFirst, BodyStitches} {
		if in.Has(k) {
			return []Key{k}
		}
	}
	return []Key{Bust}
}

func (p *Plan) recordStages(k Key) (Record, bool) {
	y := p.Yoke
	last := len(y.Stages) - 1
	switch k {
	case YokeNeck:
		return Record{Rule: RuleYokeNeck, From: []Key{BandStitches}, Expr: itoa(y.Spec.Neck), Value: float64(y.Spec.Neck)}, !y.NeckSaid
	case YokeStitches:
		n, ok := p.waiting()
		return Record{Rule: RuleWaiting, From: []Key{StageCounts}, Expr: itoa(n), Value: float64(n)}, ok
	case LargestCut:
		s := y.Stages[y.Steepest-1]
		return Record{Rule: RuleCut, From: []Key{StageCounts}, Value: s.Share().Mul(Int(100)).Float(),
			Expr: fmt.Sprintf("100 * (%d - %d) / %d", s.Decreases+s.Count, s.Count, s.Decreases+s.Count)}, true
	case DoubledGap:
		n, ok := p.partCount(k)
		return Record{Rule: RuleGap, From: []Key{StageRehang}, Value: float64(n), Unrounded: float64(n)}, ok
	case OnePieceFrom:
		return Record{Rule: RuleOnePiece, From: []Key{StageCounts, BedNeedles}, Value: float64(y.OneFrom)}, y.OneFrom > 0 && y.Spec.Bed > 0
	case YokeRowsResult:
		if y.Rows == nil {
			return Record{}, false
		}
		return p.recordYokeRows(), true
	case YokeDepthResult:
		return Record{Rule: RuleYokeDepth, From: []Key{YokeRowsResult, RowGauge}, Value: y.Depth.Float(),
			Expr: fmt.Sprintf("%d * 10 / %s", y.AllRows(), p.num(RowGauge))}, y.HasDepth
	case YokeSlope:
		return Record{Rule: RuleSlope, From: []Key{StageCounts, StitchGauge, YokeDepthResult}, Value: y.Slope,
			Expr: fmt.Sprintf("asin(min(1, (%d - %d) * 10 / %s / (2 * 3.14159265 * %s))) * 180 / 3.14159265",
				y.Stages[0].Count, y.Stages[last].Count, p.num(StitchGauge), fig(y.Depth))}, y.Slope > 0
	}
	return Record{}, false
}

// recordYokeRows is the sum of the stages' rows, or the depth in rows.
func (p *Plan) recordYokeRows() Record {
	y := p.Yoke
	r := Record{Rule: RuleYokeRows, From: []Key{y.RowsFrom}, Value: float64(y.AllRows())}
	r.Unrounded, r.Rounding = r.Value, RoundNearest
	depth := p.In.Num(YokeDepthWanted)
	switch y.RowsFrom {
	case Bust:
		r.From = []Key{YokeDepthLow, YokeDepthHigh, RowGauge}
		depth = y.Published.Low.Add(y.Published.High).Div(Int(2))
		r.Expr = fmt.Sprintf("(%s + %s) / 2 * %s / 10", fig(y.Published.Low), fig(y.Published.High), p.num(RowGauge))
	case YokeDepthWanted:
		r.From = append(r.From, RowGauge)
		r.Expr = p.num(YokeDepthWanted) + " * " + p.num(RowGauge) + " / 10"
	default:
		r.Expr, r.Rounding = itoa(y.Rows[0]), RoundNone
		for _, n := range y.Rows[1:] {
			r.Expr += " + " + itoa(n)
		}
		return r
	}
	r.Unrounded = depth.Mul(p.In.Num(RowGauge)).Div(Int(10)).Float()
	return r
}

// StageRecord is how the count of stage i, from 0, came about; the neck's is
// the last.
func (p *Plan) StageRecord(i int) (Record, bool) {
	y := p.Yoke
	if y == nil || i < 0 || i >= len(y.Stages) {
		return Record{}, false
	}
	last := len(y.Stages) - 1
	s := y.Stages[i]
	switch {
	case i == 0:
		return p.Record(YokeFirst)
	case i == last && y.NeckSaid:
		return p.Record(YokeNeck)
	case i == last:
		return p.Record(BandStitches)
	}
	r := Record{Key: StageCounts, Rule: RuleStage, From: []Key{YokeFirst, YokeNeck, YokeStages, KeyYokeMethod},
		Expr: y.stageExpr(i), Value: float64(s.Count), Unrounded: s.Exact.Float(), Rounding: RoundRepeat}
	if spec := y.Spec.Stages[i]; spec.Repeat > 1 {
		r.From = append(r.From, StageRepeats)
		r.Check = fmt.Sprintf("%d * %d + %d", (s.Count-spec.Edge)/spec.Repeat, spec.Repeat, spec.Edge)
	}
	return r, true
}

// stageExpr is the sum for the exact count of stage i, which is neither the
// first nor the neck.
func (y *YokePlan) stageExpr(i int) string {
	start, neck, n := y.Spec.Start, y.Spec.Neck, len(y.Spec.Stages)
	if cuts := y.Spec.Method.cuts(); cuts != nil {
		expr := itoa(start)
		for _, c := range cuts[:i] {
			expr += " * (1 - " + c.String() + ")"
		}
		return expr
	}
	if y.Spec.Method != StraightCone {
		return fmt.Sprintf("%d - (%d - %d) * %d / %d", start, start, neck, i, n)
	}
	var below, all Num
	for j, s := range y.Spec.Stages {
		if all = all.Add(s.Height); j < i {
			below = below.Add(s.Height)
		}
	}
	return fmt.Sprintf("%d - (%d - %d) * %s / %s", start, start, neck, fig(below), fig(all))
}

// recordChart is how a number of the colour chart came about.
func (p *Plan) recordChart(k Key) (Record, bool) {
	c := p.Chart
	if c == nil {
		return Record{}, false
	}
	whole := func(n int, rule string, from ...Key) Record {
		return Record{Rule: rule, From: from, Expr: itoa(n), Value: float64(n)}
	}
	switch k {
	case ChartRows:
		r := whole(len(c.Chart)*c.Times, RuleChart, KeyChart)
		r.Expr = fmt.Sprintf("%d * %d", len(c.Chart), c.Times)
		return r, true
	case ChartRepeat:
		return whole(len(c.Chart[0]), RuleChart, KeyChart), true
	case FloatMost:
		return p.recordFloatMost(), true
	}
	if c.Width == 0 {
		return Record{}, false
	}
	if k == ChartWidth {
		from := ChartStitches
		switch {
		case p.In.Has(ChartStitches):
		case c.Stage > 0:
			from = StageCounts
		default:
			from = YokeStitches
		}
		return whole(c.Width, RuleChart, from), true
	}
	if c.Cards == nil {
		return Record{}, false
	}
	return p.recordChartYarn(k)
}

func (p *Plan) recordFloatMost() Record {
	limit, g := p.In.Num(FloatLimit), p.In.Num(StitchGauge)
	r := Record{Rule: RuleFloatMost, Value: float64(p.Chart.Limit), Unrounded: float64(p.Chart.Limit), Rounding: RoundNone}
	switch {
	case p.In.Int(FloatStitches) > 0:
		r.From, r.Expr = []Key{FloatStitches}, p.num(FloatStitches)
	case g.Sign() > 0 && limit.Sign() > 0:
		r.From, r.Expr, r.Rounding = []Key{FloatLimit, StitchGauge}, "max(1, "+fig(limit)+" * "+fig(g)+" / 10)", RoundDown
		r.Unrounded = max(1, limit.Mul(g).Div(Int(10)).Float())
	default:
		r.From, r.Expr = []Key{KeyChart}, itoa(p.Chart.Limit)
	}
	return r
}

// recordChartYarn is the record of a number that only laid-out rows have.
func (p *Plan) recordChartYarn(k Key) (Record, bool) {
	c := p.Chart
	v, there := p.partMeasure(k)
	f := c.LongestFloat()
	spec := p.rowSpec()
	loop, stitch := spec.loopAndStitch()
	g := p.num(StitchGauge)
	loopExpr := "3 * 10 / " + g
	from := []Key{KeyChart, ChartWidth, StitchGauge}
	if spec.Loop.Sign() > 0 {
		loopExpr, from = fig(loop), append(from, LoopLength)
	}
	sum := func(loops, passed int) string {
		return fmt.Sprintf("(%d * %s + %d * 10 / %s) / 100", loops, loopExpr, passed, g)
	}
	r := Record{Rule: RuleChart, From: from, Value: v}
	switch k {
	case FloatLongest:
		return Record{Rule: RuleFloat, From: []Key{KeyChart, ChartWidth}, Expr: itoa(f.Stitches), Value: float64(f.Stitches)}, true
	case FloatLongestCm:
		r.Rule, r.From, r.Expr = RuleFloat, []Key{FloatLongest, StitchGauge}, fmt.Sprintf("%d * 10 / %s", f.Stitches, g)
	case ColourDial:
		r.Rule, r.From, r.Expr = RuleColourDial, []Key{MainTension}, fmt.Sprintf("%s + %d", p.num(MainTension), ColourworkNumbers)
	case MainYarn:
		r.Rule, r.Expr = RuleChartYarn, sum(c.Main+c.Plain*c.Width, c.Passed)
	case ContrastYarn:
		r.Rule, r.Expr = RuleChartYarn, sum(c.Contrast, c.Behind)
	case MainGrams:
		r.Rule, r.From, r.Expr = RuleGrams, []Key{MainYarn, YarnLength}, fmt.Sprintf("%s * 100 / %s", figure(c.MainAll.Float()/100), p.num(YarnLength))
	case ContrastGrams:
		r.Rule, r.From, r.Expr = RuleGrams, []Key{ContrastYarn, YarnLength}, fmt.Sprintf("%s * 100 / %s", figure(c.ContrastAll.Float()/100), p.num(YarnLength))
	default:
		return Record{}, false
	}
	return r, there && stitch.Sign() >= 0
}
