package engine_test

import (
	"math"
	"math/big"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"foldrow/engine"
	"foldrow/rules"
)

// A model is the band worked out the slow way: a row of stitches laid one by
// one, a dial turned row by row, a loop of yarn for each stitch. It shares no
// code with the engine but its inputs.
type model struct {
	in       engine.Inputs
	stitches []bool // of one row, from the left: is it purl on the public side
	outer    []int  // clicks tighter, row by row of the outer layer
	all      []int  // the same of every row of the band
	height   *big.Rat
	pieces   int // of a band wider than the bed
}

func (m *model) rat(k engine.Key) *big.Rat { return m.in.Num(k).Rat() }

func (m *model) float(k engine.Key) float64 { return m.in.Num(k).Float() }

func modelOf(in engine.Inputs) *model {
	m := &model{in: in}
	width := m.rat(engine.Neck)
	if in.Garment == engine.Cardigan {
		width.Sub(width, m.rat(engine.FrontBand))
	}
	wanted := width.Mul(width, new(big.Rat).Quo(m.rat(engine.StitchGauge), big.NewRat(10, 1)))
	wanted.Add(wanted, m.rat(engine.SeamStitches)).Add(wanted, m.rat(engine.SeamStitches))
	edge := in.Int(engine.EdgeStitches)
	n := nearest(1, 900, wanted, func(n int) (*big.Rat, bool) {
		return big.NewRat(int64(n), 1), n > 2*edge && laidOut(n, edge, in.Rib)
	})
	m.stitches = make([]bool, n)
	for i := edge; i < n-edge; i++ {
		m.stitches[i] = (i-edge)%(in.Rib.Knit+in.Rib.Purl) < in.Rib.Purl
	}
	m.turnTheDial()
	return m
}

// effect is the share by which one click tightens.
func (m *model) effect() *big.Rat {
	e := m.rat(engine.NumberEffect)
	e.Quo(e, m.rat(engine.ClicksPerNumber))
	return e.Quo(e, big.NewRat(100, 1))
}

// turnTheDial knits the outer layer until another row would lead further from
// the depth, then the fold row and the inner layer back.
func (m *model) turnTheDial() {
	row := big.NewRat(10, 1)
	row.Quo(row, m.rat(engine.RowGauge))
	fifth, depth := big.NewRat(1, 5), m.rat(engine.Depth)
	clicks, since := 0, 0
	sum, best := new(big.Rat), new(big.Rat)
	var rows []int
	for len(rows) < engine.MaxRows {
		if per := m.in.Int(engine.RowsPerClick); per > 0 && since == per {
			next := new(big.Rat).Mul(m.effect(), big.NewRat(int64(clicks+1), 1))
			if next.Cmp(fifth) <= 0 {
				clicks++
			}
			since = 0
		}
		since++
		rows = append(rows, clicks)
		tight := new(big.Rat).Mul(m.effect(), big.NewRat(int64(clicks), 1))
		sum.Add(sum, tight.Mul(row, tight.Sub(big.NewRat(1, 1), tight)))
		if len(rows) < engine.MinRows {
			continue
		}
		if off := away(sum, depth); m.outer == nil || off.Cmp(best) <= 0 {
			best.Set(off)
			m.outer, m.height = slices.Clone(rows), new(big.Rat).Set(sum)
		}
	}
	m.all = slices.Clone(m.outer)
	if m.in.Int(engine.Layers) == 2 {
		if f := m.in.Int(engine.FoldRow); f > 0 {
			m.all = append(m.all, -f)
		}
		back := slices.Clone(m.outer)
		slices.Reverse(back)
		m.all = append(m.all, back...)
	}
}

// yarn is every loop of every row, the closing row of a doubled band, and the
// yarn that goes two needles on and one back, with its tails; in metres.
func (m *model) yarn() float64 {
	loop := math.Sqrt(21.6 / (m.float(engine.StitchGauge) / 10 * m.float(engine.RowGauge) / 10))
	click, _ := m.effect().Float64()
	cm := 0.0
	for _, clicks := range m.all {
		for range m.stitches {
			cm += loop * (1 - click*float64(clicks))
		}
	}
	if m.in.Int(engine.Layers) == 2 {
		for range m.stitches {
			cm += loop
		}
	}
	return (cm + m.sewing()) / 100
}

func (m *model) sewing() float64 {
	cm := 30.0 * float64(m.pieces)
	for range m.stitches {
		cm += 3 * m.float(engine.NeedlePitch) / 10
	}
	return cm
}

// inPieces adds, join by join, the stitches that the seams of a band wider than
// the bed take up, a seam's loss at both edges, until the pieces that the plan
// has hold them all; fewer never would.
func (m *model) inPieces(t *rapid.T, p *engine.Plan) {
	m.pieces = 1
	for len(m.stitches) > m.pieces*m.in.Int(engine.BedNeedles) || m.pieces < p.Pieces {
		m.stitches = append(m.stitches, make([]bool, 2*m.in.Int(engine.SeamStitches))...)
		m.pieces++
	}
	require.Equal(t, m.pieces, p.Pieces, "pieces")
	require.Equal(t, len(m.stitches), p.Knitted(), "stitches on needles")
}

// hem is the columns whose bumps are hung, by the rule of the design: a list
// at even steps, taken from both ends toward the middle, in which a latched
// column gives way to its nearest neighbour, the outer one on a tie.
func (m *model) hem() []int {
	n, every := len(m.stitches), m.in.Int(engine.HemEvery)
	var list []int
	for c := 1; c <= n-2; c += every {
		list = append(list, c)
	}
	if len(list) > 0 && list[len(list)-1] != n-2 {
		list = append(list, n-2)
	}
	if every == 1 {
		return list
	}
	hung := map[int]bool{}
	take := func(c int) {
		if !m.stitches[c] {
			hung[c] = true
			return
		}
		out := -1
		if 2*c > n-1 {
			out = 1
		}
		for d := 1; d < every; d++ {
			for _, to := range []int{c + d*out, c - d*out} {
				if to >= 0 && to < n && !m.stitches[to] && !hung[to] && !slices.Contains(list, to) {
					hung[to] = true
					return
				}
			}
		}
	}
	for i, j := 0, len(list)-1; i <= j; i, j = i+1, j-1 {
		take(list[i])
		if i != j {
			take(list[j])
		}
	}
	var out []int
	for c := range n {
		if hung[c] {
			out = append(out, c)
		}
	}
	return out
}

// TestPlanAgainstTheSlowWay works out plans from inputs drawn within their
// usual spans and holds every main result to the model's.
func TestPlanAgainstTheSlowWay(t *testing.T) {
	book, err := rules.Load()
	require.NoError(t, err)
	rapid.Check(t, func(t *rapid.T) {
		rib := rapid.SampledFrom([]engine.Rib{{Knit: 1, Purl: 1}, {Knit: 2, Purl: 1}, {Knit: 2, Purl: 2}, {Knit: 3, Purl: 1}, {Knit: 1, Purl: 2}, {Knit: 3, Purl: 3}}).Draw(t, "rib")
		in := book.Defaults(rib).WithRib(rib).WithGarment(rapid.SampledFrom([]engine.Garment{engine.Cardigan, engine.Pullover}).Draw(t, "garment"))
		for _, d := range []struct {
			key       engine.Key
			low, high int64
			of        int64
		}{
			{engine.Neck, 3400, 6000, 100}, {engine.StitchGauge, 120, 400, 10}, {engine.RowGauge, 140, 600, 10}, {engine.Depth, 150, 600, 100},
			{engine.EdgeStitches, 1, 3, 1}, {engine.SeamStitches, 0, 2, 1}, {engine.HemEvery, 1, 3, 1}, {engine.Layers, 1, 2, 1},
			{engine.FrontBand, 15, 60, 10}, {engine.RowsPerClick, 0, 4, 1}, {engine.NumberEffect, 30, 70, 10}, {engine.ClicksPerNumber, 2, 4, 1},
			{engine.FoldRow, 0, 3, 1}, {engine.NeedlePitch, 35, 90, 10},
		} {
			in = in.With(d.key, engine.Frac(rapid.Int64Range(d.low, d.high).Draw(t, string(d.key)), d.of))
		}
		p, m := engine.Solve(in), modelOf(in)
		n := len(m.stitches)
		require.Equal(t, n, p.BandStitches)
		require.Equal(t, len(m.outer), p.LayerRows)
		require.Equal(t, len(m.all), p.TotalRows)
		require.Zero(t, p.DepthResult.Rat().Cmp(m.height), "depth")
		var clicks []int
		for _, row := range p.Tension() {
			clicks = append(clicks, row.Clicks)
		}
		require.Equal(t, m.all, clicks)
		var purl []int
		for c, is := range m.stitches {
			if is {
				purl = append(purl, c)
			}
		}
		require.Equal(t, purl, p.RibColumns)
		near(t, p, engine.LoopsToLatch, float64(len(purl)*len(m.all)))
		if in.Int(engine.Layers) == 2 {
			require.Equal(t, m.hem(), p.HemColumns)
		}
		m.rounds(t, p)
		m.inPieces(t, p)
		near(t, p, engine.OffYarn, m.sewing())
		near(t, p, engine.BandYarn, m.yarn())
	})
}

// rounds holds what the band measures round its edges, and how it leans.
func (m *model) rounds(t *rapid.T, p *engine.Plan) {
	front := 0.0
	if m.in.Garment == engine.Cardigan {
		front = m.float(engine.FrontBand)
	}
	seam := 0.0
	for range len(m.stitches) - 2*m.in.Int(engine.SeamStitches) {
		seam += 10 / m.float(engine.StitchGauge)
	}
	click, _ := m.effect().Float64()
	fold := seam * (1 - click*float64(m.outer[len(m.outer)-1]))
	rest := fold * m.float(engine.RibDraw)
	deep, _ := m.height.Float64()
	near(t, p, engine.NeckResult, seam+front)
	near(t, p, engine.SeamWidth, seam)
	near(t, p, engine.FoldCircumference, fold+front)
	near(t, p, engine.RelaxedCircumference, rest+front)
	near(t, p, engine.StretchedCircumference, rest*m.float(engine.RibStretch)+front)
	near(t, p, engine.LeanDegrees, math.Asin(min(1, (seam-fold)/(2*math.Pi*deep)))*180/math.Pi)
}

func near(t *rapid.T, p *engine.Plan, k engine.Key, want float64) {
	got, ok := p.Float(k)
	if !ok || math.Abs(got-want) > 1e-9*math.Max(1, math.Abs(want)) {
		t.Fatalf("%s is %v (%v), the slow way %v", k, got, ok, want)
	}
}
