package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// troubleNumbers is what a trouble means for this plan beyond what its card
// says, with the engine's numbers; "" where there is nothing to add.
func (c *turn) troubleNumbers(id string, p *engine.Plan) string {
	switch id {
	case "wrong-dial-loose":
		return c.dialNumbers(p, -1)
	case "wrong-dial-tight":
		return c.dialNumbers(p, 1)
	case "lost-row-count", "lost-place", "carriage-skipped", "jammed-carriage":
		return c.countNumbers(p)
	case "undo-row", "yarn-broke":
		return c.takeBackNumbers(p)
	case "rows-uneven-layers", "depth-off":
		return c.rowNumbers(p)
	case "count-out", "puckers", "neck-small", "neck-wide", "too-tight-head":
		return c.stitchNumbers(p)
	case "rehung-too-many":
		return c.recountNumbers(p, 1)
	case "rehung-too-few":
		return c.recountNumbers(p, -1)
	case "decrease-wrong-place", "half-pair-lost":
		return c.pairNumbers(p)
	case "yarn-short-sewing", "cut-wrong-yarn":
		return c.sewingNumbers(p)
	case "yarn-short-band":
		return c.yarnNumbers(p)
	case "flare", "stands-up", "leans-out", "floppy-fold":
		return c.leanNumbers(p)
	case "dropped-stitch", "dropped-rows-ago", "run-to-waste", "run-past-waste", "wrong-needle-dropped", "closed-latch",
		"split-stitch", "latched-wrong-side", "missed-bar", "missed-bump", "hem-stitch-off":
		return c.needleNumbers(p)
	}
	return ""
}

// countNumbers is where the steps have her, and the dial on the rows about it.
func (c *turn) countNumbers(p *engine.Plan) string {
	m := c.s.Making
	if !m.On || m.Row == 0 {
		return ""
	}
	rows := p.Tension()
	text := fmt.Sprintf("The steps have %s knitted.", rowsWord(m.Row))
	for n := max(m.Row-1, 0); n <= min(m.Row+1, len(rows)-1); n++ {
		text += fmt.Sprintf(" With %d knitted, the next is at %s.", n, answer.DialNow(rows[n]))
	}
	return text + " Say *row 5 done* with your own count."
}

// takeBackNumbers is the row that is knitted again, and its dial.
func (c *turn) takeBackNumbers(p *engine.Plan) string {
	m := c.s.Making
	if !m.On || m.Row == 0 || m.Row > p.TotalRows {
		return ""
	}
	return fmt.Sprintf("With the last row out again %s knitted; row %d is at %s. Then say *I'm on row %d*.",
		rowsWord(m.Row-1)+" "+isAre(m.Row-1), m.Row, answer.DialNow(p.Tension()[m.Row-1]), m.Row)
}

// rowNumbers is what one row more or less a layer comes to.
func (c *turn) rowNumbers(p *engine.Plan) string {
	text := ""
	for _, d := range []int{-1, 1} {
		in := p.In.Without(engine.Depth).With(engine.DepthRows, engine.Int(int64(p.LayerRows+d)))
		q := engine.Solve(in)
		if q.LayerRows == p.LayerRows+d && q.LayerRows >= engine.MinRows {
			text += fmt.Sprintf(" %s a layer: %s deep.", title(rowsWord(q.LayerRows)), c.voice().Len(q.DepthResult.Float()))
		}
	}
	if text == "" {
		return ""
	}
	return fmt.Sprintf("%s a layer: %s deep.", title(rowsWord(p.LayerRows)), c.voice().Len(p.DepthResult.Float())) + text
}

// stitchNumbers is the neck of the counts next to the plan's, and of one
// stitch more or less.
func (c *turn) stitchNumbers(p *engine.Plan) string {
	v := c.voice()
	list := []int{p.BandStitches - 1, p.BandStitches, p.BandStitches + 1}
	if n := c.m.Slip.Count; n > 5 && n != p.BandStitches && n < 2*p.BandStitches {
		list = append(list, n)
	}
	text := ""
	for _, n := range list {
		neck, ok := engine.NeckOf(p.In, n)
		if !ok {
			continue
		}
		closes := ""
		if _, _, yes := engine.Closing(p.In, n); !yes {
			closes = " (the rib ends unevenly)"
		}
		text += fmt.Sprintf(" %d stitches give a neck of %s%s.", n, v.Len(neck.Float()), closes)
	}
	for _, next := range []engine.Choice{p.Smaller, p.Larger} {
		if next.Stitches > 0 && (next.Stitches < p.BandStitches-1 || next.Stitches > p.BandStitches+1) {
			text += fmt.Sprintf(" The next that closes: %d for %s.", next.Stitches, v.Len(next.Neck.Float()))
		}
	}
	if len(text) > 0 {
		return text[1:]
	}
	return text
}

// recountNumbers is the map for the count that was really there.
func (c *turn) recountNumbers(p *engine.Plan, sign int) string {
	n := c.m.Slip.Count
	yoke, _, ok := p.Waiting()
	if n == 0 || n > 60 || !ok {
		return ""
	}
	yoke += sign * n
	q := engine.Solve(p.In.With(engine.YokeStitches, engine.Int(int64(yoke))))
	if q.Rehang == nil {
		return fmt.Sprintf("If the yoke had %d, the band's %d do not go from it one or two to a needle.", yoke, p.BandStitches)
	}
	return fmt.Sprintf("If the yoke had %d: %s, %s. Say *%d stitches on the yoke* to keep that.", yoke,
		answer.Count(q.YokeDecreases, "decrease", "decreases"), answer.RehangWords(q), yoke)
}

// pairNumbers is the pairs of the map next to the needle that was named.
func (c *turn) pairNumbers(p *engine.Plan) string {
	col, name, ok := c.needleSaid(p)
	two := answer.Doubled(p)
	if !ok || len(two) == 0 {
		return ""
	}
	below, above := -1, -1
	for _, t := range two {
		if t == col {
			return name + " is on the map: it carries two."
		}
		if t < col {
			below = t
		} else if above < 0 {
			above = t
		}
	}
	text := name + " is not on the map. The pairs next to it:"
	for _, t := range []int{below, above} {
		if t >= 0 {
			text += " " + engine.NeedleName(t, p.BandStitches) + ","
		}
	}
	return text[:len(text)-1] + "."
}

// leanNumbers is what more grading does to the fold and the lean.
func (c *turn) leanNumbers(p *engine.Plan) string {
	every := p.In.Int(engine.RowsPerClick)
	v := c.voice()
	text := ""
	for _, n := range []int{every - 1, every - 2, 2} {
		if n < 1 || n == every || text != "" {
			continue
		}
		q := engine.Solve(p.In.Without(engine.Depth).With(engine.DepthRows, engine.Int(int64(p.LayerRows))).With(engine.RowsPerClick, engine.Int(int64(n))))
		text = fmt.Sprintf("For the next one: %s before each click brings the fold from %s to %s round, and the lean from %.0f to %.0f degrees.",
			rowsWord(n), v.Len(p.FoldCircumference.Float()), v.Len(q.FoldCircumference.Float()), p.LeanDegrees, q.LeanDegrees)
	}
	if p.Smaller.Stitches > 0 {
		text += fmt.Sprintf(" The next smaller count, %d, makes the neck %s.", p.Smaller.Stitches, v.Len(p.Smaller.Neck.Float()))
	}
	return text
}

// needleNumbers is what the named needle is in this plan: a column of the rib
// is mended toward you, a plain one from behind.
func (c *turn) needleNumbers(p *engine.Plan) string {
	col, name, ok := c.needleSaid(p)
	if !ok {
		return ""
	}
	text := name + " is a plain column: latched up from behind."
	if has(p.RibColumns, col) {
		text = name + " is a column of the rib: latched on the side facing you."
	}
	if has(p.HemColumns, col) {
		text += " A bump of the hem hangs on it."
	}
	return text
}

// needleSaid is the needle that the line names, in its column of the band.
func (c *turn) needleSaid(p *engine.Plan) (col int, name string, ok bool) {
	name = c.m.Slip.Needle
	col, ok = engine.NeedleColumn(name, p.BandStitches)
	return col, name, ok
}

func has(list []int, x int) bool {
	for _, y := range list {
		if x == y {
			return true
		}
	}
	return false
}
