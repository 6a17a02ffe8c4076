package engine

import "math"

// ChartPlan is a colour chart laid over one stage of the yoke. Rows are in the
// order of knitting.
type ChartPlan struct {
	Chart  [][]bool // the repeat as said
	Stage  int      // from 1; 0 where the chart runs over a count said for itself
	Width  int      // stitches of a row
	Place  Place
	Mirror int  // rows of the repeat that are their own mirror image as placed
	Choice bool // another middle would do as well and give other edges
	Times  int  // how often the chart is knitted
	Plain  int  // rows of the stage left plain after it

	Pieces []Piece     // of the row on the bed
	Rows   [][]bool    // whole rows, Times charts of them
	Cards  [][]RowCard // by row, then by piece
	Fault  error       // *WideError or *PieceError; Cards are then empty

	Limit                    int // stitches a float may pass
	Longest, LongestContrast Float
	Main, Contrast           int   // stitches of all pattern rows
	Passed                   int   // contrast stitches in rows with main ones: the main yarn floats there
	Behind                   int   // main stitches in rows with contrast ones
	MainCm, ContrastCm       []Num // yarn by row; nil without a gauge
	MainAll, ContrastAll     Num   // of the stage, cm, its plain rows counted
}

// WideError: the repeat is wider than the row it is laid over.
type WideError struct{ Repeat, Width int }

func (e *WideError) Error() string {
	return "chart: a repeat of " + itoa(e.Repeat) + " on " + itoa(e.Width) + " stitches"
}

// chartOver is the row that a chart runs over: a count of its own, else a
// stage of the yoke, the last where none is named, else what waits.
func (p *Plan) chartOver() (stage, width int) {
	if p.In.Has(ChartStitches) {
		return 0, max(0, min(p.In.Int(ChartStitches), maxStitches))
	}
	if y := p.Yoke; y != nil && len(y.Stages) > 1 {
		stage = len(y.Stages) - 1
		if n := p.In.Int(ChartStage); n >= 1 && n < stage {
			stage = n
		}
		return stage, y.Stages[stage-1].Stitches()
	}
	n, _ := p.waiting()
	return 0, max(0, min(n, maxStitches))
}

// solveChart makes the card of every row.
func (p *Plan) solveChart() {
	in := p.In
	if !in.Has(KeyChart) {
		return
	}
	c := &ChartPlan{Chart: chartOf(in.Text(KeyChart)), Times: max(1, min(in.Int(ChartTimes), mostChartRows)), Place: Place(in.Text(ChartPlace))}
	if c.Place == "" {
		c.Place = PlaceBalanced
	}
	p.Chart = c
	c.Stage, c.Width = p.chartOver()
	spec := p.rowSpec()
	c.Limit = spec.limit()
	if c.Width == 0 {
		return
	}
	repeat := len(c.Chart[0])
	if repeat > c.Width {
		c.Fault = &WideError{Repeat: repeat, Width: c.Width}
		return
	}
	if c.Pieces, c.Fault = chartPieces(in, p.Yoke, c.Stage, c.Width, repeat); c.Fault != nil {
		return
	}
	var once [][]bool
	once, c.Mirror = lay(c.Chart, c.Width, c.Place)
	c.Choice = otherMiddle(c.Chart, c.Width, c.Place)
	for range c.Times {
		c.Rows = append(c.Rows, once...)
	}
	c.cards(len(once), spec)
	if y := p.Yoke; y != nil && c.Stage > 0 && y.Rows != nil {
		c.Plain = max(0, y.Rows[c.Stage-1]-len(c.Rows))
	}
	c.yarn(spec)
}

// rowSpec is what the rows of a chart are judged by. Their loop is the plan's
// own, to a hundredth of a millimetre, so that one plan has one estimate; three
// widths a stitch stand in where no row gauge is known.
func (p *Plan) rowSpec() RowSpec {
	in := p.In
	s := RowSpec{Gauge: in.Num(StitchGauge), LimitLength: in.Num(FloatLimit), LimitStitches: in.Int(FloatStitches), Loop: in.Num(RowYarn)}
	if s.Loop.Sign() <= 0 && p.has.loop {
		s.Loop = Frac(int64(math.Round(p.LoopLength*1000)), 1000)
	}
	return s
}

// chartPieces is the row as the bed takes it: the stage's own pieces where
// they are split on the chart's repeat, else split on it here.
func chartPieces(in Inputs, y *YokePlan, stage, width, repeat int) ([]Piece, error) {
	bed := in.Int(BedNeedles)
	if y != nil && stage > 0 && y.Spec.Stages[stage-1].Repeat == repeat && y.Stages[stage-1].Count == width {
		if ps := y.Stages[stage-1].Pieces; ps != nil {
			return ps, nil
		}
	}
	if bed < 1 {
		bed = width
	}
	s := Stage{Count: width}
	return YokeSpec{Bed: bed}.pieces(max(stage-1, 0), s, StageSpec{Repeat: repeat, Edge: width % repeat})
}

// otherMiddle reports whether the middle of a repeat and the join of two would
// both mirror all rows at the centre and yet give different rows: which is
// wanted is then the knitter's choice. So it is where neither mirrors them.
func otherMiddle(chart [][]bool, n int, at Place) bool {
	if at != PlaceBalanced || len(chart[0]) < 2 {
		return false
	}
	a, ma := lay(chart, n, PlaceMiddle)
	b, mb := lay(chart, n, PlaceBetween)
	if (ma == len(chart)) != (mb == len(chart)) {
		return false
	}
	for i := range a {
		for j := range a[i] {
			if a[i][j] != b[i][j] {
				return true
			}
		}
	}
	return false
}

// cards makes the cards of the chart's rows once; when the chart is repeated
// its cards are those again.
func (c *ChartPlan) cards(rows int, spec RowSpec) {
	for i := range c.Rows {
		if i >= rows {
			c.Cards = append(c.Cards, c.Cards[i-rows])
			continue
		}
		var cards []RowCard
		for _, piece := range c.Pieces {
			card := Row(c.Rows[i][piece.First:piece.First+piece.Stitches], spec)
			cards = append(cards, card)
			if card.LongestMain.Stitches > c.Longest.Stitches {
				c.Longest = card.LongestMain
			}
			if card.LongestContrast.Stitches > c.LongestContrast.Stitches {
				c.LongestContrast = card.LongestContrast
			}
		}
		c.Cards = append(c.Cards, cards)
	}
	for _, cards := range c.Cards {
		for _, card := range cards {
			c.Main, c.Contrast = c.Main+card.Main, c.Contrast+card.Contrast
			if card.Main > 0 {
				c.Passed += card.Contrast
			}
			if card.Contrast > 0 {
				c.Behind += card.Main
			}
		}
	}
}

// loopAndStitch is the yarn in one stitch and the width of one, cm; zero
// without a gauge.
func (s RowSpec) loopAndStitch() (loop, stitch Num) {
	if s.Gauge.Sign() <= 0 {
		return Num{}, Num{}
	}
	stitch = Int(10).Div(s.Gauge)
	if loop = s.Loop; loop.Sign() <= 0 {
		loop = stitch.Mul(Int(3))
	}
	return loop, stitch
}

// yarn sums what the rows take of each colour, and the stage's plain rows in
// the main one.
func (c *ChartPlan) yarn(spec RowSpec) {
	loop, stitch := spec.loopAndStitch()
	if stitch.Sign() == 0 {
		return
	}
	for _, cards := range c.Cards {
		var main, contrast Num
		for _, card := range cards {
			main, contrast = main.Add(card.MainYarn), contrast.Add(card.ContrastYarn)
		}
		c.MainCm, c.ContrastCm = append(c.MainCm, main), append(c.ContrastCm, contrast)
	}
	plain := wholeNum(c.Plain * c.Width)
	c.MainAll = wholeNum(c.Main).Add(plain).Mul(loop).Add(wholeNum(c.Passed).Mul(stitch))
	c.ContrastAll = wholeNum(c.Contrast).Mul(loop).Add(wholeNum(c.Behind).Mul(stitch))
}

// LongestFloat is the longer of the two yarns' longest floats.
func (c *ChartPlan) LongestFloat() Float {
	if c.LongestContrast.Stitches > c.Longest.Stitches {
		return c.LongestContrast
	}
	return c.Longest
}
