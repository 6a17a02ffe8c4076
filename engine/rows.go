package engine

import "sort"

// Rows of one layer: a search stays between these, and no band is planned
// above MaxRows.
const (
	MinRows = 3
	MaxRows = 80
)

// tightest is how much tighter than the garment a row may be, as a fraction
// of stitch size. A limit of ours: published bands go about four dial numbers
// tighter.
var tightest = Frac(1, 5)

// clickFraction is the change in stitch size for one click, as a fraction:
// said, or one whole dial number's shared among its clicks.
func clickFraction(in Inputs) Num {
	percent := in.Num(ClickEffect)
	if !in.Has(ClickEffect) {
		percent = in.Num(NumberEffect).Div(in.Num(ClicksPerNumber))
	}
	if percent.Sign() < 0 {
		return Num{}
	}
	return percent.Div(Int(100))
}

// grading is how the tension changes in the outer layer: row i stands at
// start + floor((i-1)/every) clicks, held at limit.
type grading struct {
	start, every, limit int
	limited             bool
	byDial              bool // the dial's lowest number is the limit, not tightest
}

func gradingOf(in Inputs, click Num) grading {
	g := grading{start: in.Int(StartClicks), every: in.Int(RowsPerClick)}
	if click.Sign() > 0 {
		g.limit, g.limited = tightest.Div(click).Floor(), true
	}
	if in.Has(MainTension) {
		dial := in.Num(MainTension).Sub(in.Num(DialMin)).Mul(in.Num(ClicksPerNumber)).Floor()
		if dial = max(dial, 0); !g.limited || dial < g.limit {
			g.limit, g.limited, g.byDial = dial, true, true
		}
	}
	return g
}

// wanted is the clicks of outer row i (1, 2 ...) before any limit.
func (g grading) wanted(i int) int {
	if g.every <= 0 {
		return g.start
	}
	return g.start + (i-1)/g.every
}

// at is the clicks of outer row i (1, 2 ...).
func (g grading) at(i int) int {
	if k := g.wanted(i); !g.limited || k <= g.limit {
		return k
	}
	return g.limit
}

// clickSums is, for every number of rows up to one past MaxRows, the sum of
// their clicks. A layer of R rows is (R - click*sum[R])/r deep.
type clickSums [MaxRows + 2]int

func (g grading) sums() *clickSums {
	var s clickSums
	for i := 1; i < len(s); i++ {
		s[i] = s[i-1] + g.at(i)
	}
	return &s
}

// nearestRows is the rows whose depth is nearest to the wanted one, the
// larger on a tie, and whether that depth is within reach of MinRows to
// MaxRows. rows is the wanted depth in rows of the garment. Depth grows with
// every row, so it is enough to find the first midpoint above the wish.
func nearestRows(rows, click Num, sums *clickSums) (int, bool) {
	twice := rows.Mul(Int(2))
	past := func(r int) bool { // nearer to r+1 rows than to r, or as near
		mid := wholeNum(2*r + 1).Sub(click.Mul(wholeNum(sums[r] + sums[r+1])))
		return !twice.Less(mid)
	}
	r := MinRows + sort.Search(MaxRows-MinRows, func(i int) bool { return !past(MinRows + i) })
	return r, past(MinRows-1) && !past(MaxRows)
}

// solveRows fills in the rows of a layer, their tension and their depth.
func (p *Plan) solveRows() {
	in := p.In
	p.Click = clickFraction(in)
	p.grading = gradingOf(in, p.Click)
	sums := p.grading.sums()
	gauge := in.Num(RowGauge).Div(Int(10)) // rows per cm
	switch {
	case in.Has(DepthRows):
		said := in.Int(DepthRows)
		p.LayerRows = min(max(said, 1), MaxRows)
		p.DepthReachable = p.LayerRows == said
	case in.Has(Depth) && gauge.Sign() > 0:
		p.LayerRows, p.DepthReachable = nearestRows(in.Num(Depth).Mul(gauge), p.Click, sums)
	default:
		return
	}
	p.has.rows = true
	p.Doubled = in.Int(Layers) >= 2
	p.layers = 1
	if p.Doubled {
		p.layers = 2
	}
	p.TotalRows = p.layers * p.LayerRows
	if p.Doubled && in.Int(FoldRow) > 0 {
		p.FoldRow = in.Int(FoldRow)
		p.TotalRows++
	}
	p.LayerClicks = sums[p.LayerRows]
	p.FoldClicks = p.grading.at(p.LayerRows)
	p.TensionHeld = p.grading.wanted(p.LayerRows) > p.FoldClicks
	if gauge.Sign() > 0 {
		p.has.depth = true
		p.DepthResult = p.layerHeight().Div(gauge)
	}
}

// layerHeight is the height of one layer in rows of the garment: each row
// counts for as much as its tension leaves of it.
func (p *Plan) layerHeight() Num {
	return wholeNum(p.LayerRows).Sub(p.Click.Mul(wholeNum(p.LayerClicks)))
}

// TensionRow is the dial for one row of the band, counted from the yoke.
type TensionRow struct {
	Row    int      `json:"row"`
	Clicks int      `json:"clicks"`         // tighter than the garment; below 0 looser
	Dial   *float64 `json:"dial,omitempty"` // nil where the garment's dial number is unknown
}

// Tension is the dial row by row: the outer layer, the fold row if there is
// one, then the inner layer as the outer one mirrored. It is nil where the
// rows are not known yet.
func (p *Plan) Tension() []TensionRow {
	if !p.has.rows {
		return nil
	}
	rows := make([]TensionRow, 0, p.TotalRows)
	add := func(clicks int) {
		rows = append(rows, TensionRow{Row: len(rows) + 1, Clicks: clicks, Dial: p.dial(clicks)})
	}
	for layer := range p.layers {
		if layer == 1 && p.FoldRow > 0 {
			add(-p.FoldRow)
		}
		for i := range p.LayerRows {
			if layer%2 == 1 {
				i = p.LayerRows - 1 - i
			}
			add(p.grading.at(i + 1))
		}
	}
	return rows
}

func (p *Plan) dial(clicks int) *float64 {
	if !p.In.Has(MainTension) {
		return nil
	}
	d := p.In.Num(MainTension).Sub(wholeNum(clicks).Div(p.In.Num(ClicksPerNumber))).Float()
	return &d
}
