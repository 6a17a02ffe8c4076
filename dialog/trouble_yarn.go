package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// sewingNumbers is the yarn that the rest of the edge takes, from the needle
// she has come to.
func (c *turn) sewingNumbers(p *engine.Plan) string {
	n := p.BandStitches
	v := c.voice()
	col, name, ok := c.needleSaid(p)
	if !ok && c.s.Making.Column != "" {
		name = c.s.Making.Column
		col, ok = engine.NeedleColumn(name, n)
	}
	if !ok {
		return fmt.Sprintf("With half the edge left: %s, tails included. Say the needle you have come to, *sewn up to L10*, and I work out the rest.", v.Len(c.sewing(p, (n+1)/2)))
	}
	left, right := n-1-col, col
	return fmt.Sprintf("From %s on: %s if you sew toward the right (%s left), %s toward the left (%s), tails included.", name,
		v.Len(c.sewing(p, left)), answer.Count(left, "stitch", "stitches"), v.Len(c.sewing(p, right)), answer.Count(right, "stitch", "stitches"))
}

// sewing is the yarn, cm, to sew off the last n stitches with a new length.
// It grows evenly with the width, so the engine's tails (a bed of no width)
// and the whole edge fix it.
func (c *turn) sewing(p *engine.Plan, n int) float64 {
	tails := engine.Solve(p.In.With(engine.NeedlePitch, engine.Num{})).OffYarn
	share := engine.Frac(int64(n), int64(p.BandStitches))
	return p.OffYarn.Sub(tails).Mul(share).Add(tails).Float()
}

// yarnNumbers is what the rest of the band still takes, and the deepest band
// that what is left is enough for.
func (c *turn) yarnNumbers(p *engine.Plan) string {
	v := c.voice()
	text := ""
	if m := c.s.Making; m.On && m.Row > 0 && p.BandYarn > 0 {
		low, high := c.yarnToCome(p, m.Row, lowYarn), c.yarnToCome(p, m.Row, highYarn)
		need := v.Metres(low)
		if h := v.Metres(high); h != need {
			need += " to " + h
		}
		text = fmt.Sprintf("%s knitted; the rest takes %s, sewing included.", title(rowsWord(m.Row))+" "+isAre(m.Row), need)
	}
	if p.In.Has(engine.YarnLeft) && p.In.Has(engine.YarnLength) && c.s.Making.Row <= p.LayerRows {
		if q, ok := engine.DeepestBand(p.In, p.In.Num(engine.YarnLeft)); ok {
			text += fmt.Sprintf(" %s are enough, margin included, for %s a layer: %s deep.", v.Value(p, engine.YarnLeft), rowsWord(q.LayerRows), v.Len(q.DepthResult.Float()))
		}
	}
	return text
}

func lowYarn(p *engine.Plan) float64  { return orMid(p.BandYarnLow, p) }
func highYarn(p *engine.Plan) float64 { return orMid(p.BandYarnHigh, p) }

func orMid(x float64, p *engine.Plan) float64 {
	if x > 0 {
		return x
	}
	return p.BandYarn
}

// yarnToCome is the yarn, m, that the band still takes when done rows are
// knitted: the whole less what bands of only those rows take, without their
// sewing.
func (c *turn) yarnToCome(p *engine.Plan, done int, yarn func(*engine.Plan) float64) float64 {
	layer := func(rows int) float64 {
		if rows <= 0 {
			return 0
		}
		in := p.In.Without(engine.Depth).With(engine.DepthRows, engine.Int(int64(rows))).With(engine.Layers, engine.Int(1))
		q := engine.Solve(in)
		return yarn(q) - q.OffYarn.Float()/100
	}
	r := p.LayerRows
	if done <= r {
		return yarn(p) - layer(done)
	}
	fold := 0.0
	if p.FoldRow > 0 {
		fold = yarn(p) - yarn(engine.Solve(p.In.Without(engine.Depth).With(engine.DepthRows, engine.Int(int64(r))).With(engine.FoldRow, engine.Num{})))
	}
	rest := min(p.TotalRows-done, r)
	return yarn(p) - layer(r) - fold - (layer(r) - layer(rest))
}
