package dialog

import (
	"fmt"
	"strconv"

	"foldrow/engine"
)

// converted tells a length in the other unit: as it is said, and to a hundredth
// where that is rounded.
func (c *turn) converted() (State, Reply) {
	cm := c.m.Figure
	exact := cm.Div(engine.Frac(254, 100))
	from := c.voice()
	from.Unit = "in"
	if c.m.In == "in" {
		from.Unit = "cm"
	}
	text := fmt.Sprintf("%s is **%s**", from.Figure(engine.Neck, cm.Float()), c.voice().Figure(engine.Neck, cm.Float()))
	if c.m.In == "in" && !exact.Mul(engine.Int(8)).IsInt() {
		text += fmt.Sprintf(", %s in to be exact", strconv.FormatFloat(exact.Float(), 'f', 2, 64))
	}
	return c.s, c.reply("number", text+". Nothing is changed by asking.")
}

// overSpan is what the swatch has over a length. Of rows it names what a band of
// that depth has, which is more: its rows are tighter.
func (c *turn) overSpan(p *engine.Plan) (State, Reply) {
	k := c.m.Keys[0]
	if !p.In.Has(k) {
		return c.s, c.reply("number", c.notYet(c.m.Keys))
	}
	v, cm := c.voice(), c.m.Figure
	if c.m.FigUnit == "in" {
		v.Unit = "in"
	}
	c.answerKeys(p, k)
	count := p.In.Num(k).Mul(cm).Div(engine.Int(10))
	what := "stitches"
	if k == engine.RowGauge {
		what = "rows"
	}
	figure := "**" + strconv.Itoa(count.Round()) + " " + what + "**"
	if !count.IsInt() {
		figure = "about " + figure + " (" + strconv.FormatFloat(count.Float(), 'f', 1, 64) + ")"
	}
	text := fmt.Sprintf("In %s: %s, by your swatch.", v.Figure(engine.Depth, cm.Float()), figure)
	if deep := p.In.With(engine.Depth, cm).Without(engine.DepthRows); k == engine.RowGauge && p.BandStitches > 0 && cm.Cmp(engine.Int(8)) < 0 {
		if rows := c.solve(deep).LayerRows; rows > 0 && count.Round() != rows {
			text += fmt.Sprintf(" A band as deep as that has %d a layer, since its rows are tighter.", rows)
		}
	}
	return c.s, c.reply("number", text)
}

// unfolded is the height of all rows of the band before it is turned in.
func (c *turn) unfolded(p *engine.Plan) (State, Reply) {
	if p.TotalRows == 0 {
		return c.s, c.reply("number", c.notYet([]engine.Key{engine.DepthResult}))
	}
	c.answerKeys(p, engine.TotalRows, engine.DepthResult)
	v := c.voice()
	if p.In.Int(engine.Layers) < 2 {
		return c.s, c.reply("number", fmt.Sprintf("It is not folded: **%s** high, %d rows.", v.Value(p, engine.DepthResult), p.TotalRows))
	}
	depth, _ := p.Float(engine.DepthResult)
	high := 2 * depth
	if p.FoldRow > 0 {
		high += 10 / p.In.Num(engine.RowGauge).Float()
	}
	return c.s, c.reply("number", fmt.Sprintf("Before it is folded the band is about **%s** high: %d rows, the closing row not counted.", v.Figure(engine.Depth, high), p.TotalRows))
}
