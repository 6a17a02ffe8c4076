package dialog

import (
	"errors"
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// pickUp is how many stitches a front band is begun with.
func (c *turn) pickUp() string {
	said := c.m.Parts
	g, r := c.partGauge(said), c.known(engine.RowGauge)
	if g.Sign() <= 0 {
		return "For that I need the band's stitch gauge. Say it with the edge, for example: *pick up along 52 cm at 28 stitches per 10 cm*."
	}
	if said.Length.Sign() == 0 && said.Rows > 0 && r.Sign() > 0 {
		said.Length = engine.Int(int64(10 * said.Rows)).Div(r)
	}
	if said.Length.Sign() == 0 {
		return c.pickUpRatio(g, r)
	}
	if said.Length.Less(engine.Int(2)) || engine.Int(200).Less(said.Length) {
		return fmt.Sprintf("An edge of %s is no front edge that I plan (2 to 200 cm). For example: *how many stitches do I pick up along a 52 cm front edge*.", c.voice().Len(said.Length.Float()))
	}
	p := c.plan()
	e := engine.FrontEdge{Length: said.Length, Rows: said.Rows, Gauge: g, Rib: p.In.Rib, EdgeStitches: p.In.Num(engine.EdgeStitches).Floor()}
	estimated := e.Rows == 0 && r.Sign() > 0
	if estimated {
		e.Rows = said.Length.Mul(r).Div(engine.Int(10)).Round()
	}
	if !said.Bare && p.LayerRows > 0 {
		e.NeckbandDepth, e.NeckbandRows = p.DepthResult, p.LayerRows
	}
	up, ok := engine.PickUpFor(e)
	if !ok {
		return "That edge gives no stitches. For example: *how many stitches do I pick up along a 52 cm front edge*."
	}
	c.answer("pick_up_stitches", up.Stitches)
	if up.Every > 0 {
		c.answer("pick_up_ratio", fmt.Sprintf("%d of %d", up.Of, up.Every))
		c.answer("pick_up_off", round4(up.Off.Float()))
	}
	return c.voice().PickUp(e, up, said.Gauge.Sign() > 0, estimated)
}

// pickUpRatio is the ratio by gauge alone, where no length was said.
func (c *turn) pickUpRatio(g, r engine.Num) string {
	if r.Sign() <= 0 {
		return "For the ratio I need the row gauge, for the count the length of the edge. For example: *how many stitches do I pick up along a 52 cm front edge*."
	}
	of, every := engine.BestFraction(g.Div(r), 10)
	c.answer("pick_up_ratio", fmt.Sprintf("%d of %d", of, every))
	return fmt.Sprintf("Pick up **%d of every %d rows**: stitch gauge over row gauge is %s. Say the length of the edge (*front 52 cm*) and I will give the count and the map.",
		of, every, answer.Decimal(g.Div(r).Float(), 3))
}

const (
	usualMargin = 3 // stitches outside the holes where none are said (common practice)
	usualHole   = 2 // stitches of a hole where none are said (common practice)
)

// buttonholes lays holes along a band.
func (c *turn) buttonholes() (string, []string) {
	said := c.m.Parts
	var notes []string
	if said.Stitches == 0 && said.Length.Sign() > 0 {
		if g := c.partGauge(said); g.Sign() > 0 {
			said.Stitches = said.Length.Mul(g).Div(engine.Int(10)).Round()
			notes = append(notes, fmt.Sprintf("taking %s as %d stitches", c.voice().Len(said.Length.Float()), said.Stitches))
		}
	}
	if said.Holes == 0 || said.Stitches == 0 {
		return "For the buttonholes I need their number and the stitches of the band. For example: *5 buttonholes of 3 stitches over 96, margins 4*.", nil
	}
	if tooMany(said.Stitches, said.Holes) {
		return fmt.Sprintf("I lay buttonholes over at most %d stitches. For example: *5 buttonholes of 3 stitches over 96, margins 4*.", mostStitches), nil
	}
	if said.Size == 0 {
		said.Size = usualHole
		if g := c.partGauge(said); said.Button.Sign() > 0 && g.Sign() > 0 {
			said.Size = max(1, engine.FitButton(said.Button).Hole.Mul(g).Div(engine.Int(10)).Round())
		}
		notes = append(notes, fmt.Sprintf("taking %s a hole", answer.Count(said.Size, "stitch", "stitches")))
	}
	if said.Margin < 0 {
		said.Margin = usualMargin
		notes = append(notes, fmt.Sprintf("taking margins of %d", said.Margin))
	}
	spec := engine.HoleSpec{Stitches: said.Stitches, Holes: said.Holes, Size: said.Size, Start: said.Margin, End: said.Margin}
	holes, err := engine.SpaceHoles(spec)
	var fault *engine.HolesError
	if errors.As(err, &fault) {
		return c.voice().HolesFault(spec, fault), nil
	}
	c.answer("buttonhole_positions", firsts(holes.First))
	c.answer("buttonhole_gaps", holes.Gaps)
	cautions := c.caution("buttons-children")
	bed := c.known(engine.BedNeedles).Floor()
	if spec.Stitches <= bed {
		c.answer("buttonhole_needles", names(holes.First, spec.Stitches))
	}
	text := c.voice().Buttonholes(spec, holes, notes, bed) + c.mirrored()
	if said.Button.Sign() > 0 {
		text += "\n\n" + c.voice().ButtonFit(said.Button, engine.FitButton(said.Button))
	}
	return text + answer.Cautioned(cautions), cautions
}

// firsts counts columns from 1, as stitches from the left edge are counted.
func firsts(cols []int) []int {
	out := make([]int, len(cols))
	for i, c := range cols {
		out[i] = c + 1
	}
	return out
}

// mirrored tells of the second layer of a doubled front band, with the rows
// where the plan knows its width and gauge.
func (c *turn) mirrored() string {
	in := c.filled(c.base())
	if in.Num(engine.Layers).Floor() < 2 {
		return ""
	}
	text := "\n\nIn a doubled band make each hole twice, on the same needles, mirrored about the fold"
	g := c.known(engine.RowGauge)
	rows := c.known(engine.FrontBand).Mul(g).Div(engine.Int(10)).Round()
	if rows < 2 {
		return text + "."
	}
	fold := in.Num(engine.FoldRow).Sign() > 0
	row := (rows + 1) / 2
	mirror := engine.MirrorRow(row, rows, fold)
	c.answer("buttonhole_rows", []int{row, mirror})
	return text + fmt.Sprintf(": with %d rows a layer (a band of %s) in row %d and again in row %d.", rows, c.voice().Len(c.known(engine.FrontBand).Float()), row, mirror)
}

// buttonSize is the overlap and the hole for a button.
func (c *turn) buttonSize() (string, []string) {
	d := c.m.Parts.Button
	if d.Less(engine.Frac(3, 10)) || engine.Int(8).Less(d) {
		return fmt.Sprintf("A button of %s across is outside what I plan (3 to 80 mm). For example: *overlap for a 20 mm button*.", c.voice().Len(d.Float())), nil
	}
	fit := engine.FitButton(d)
	c.answer("buttonhole_length", round4(fit.Hole.Float()))
	c.answer("overlap_low", round4(fit.BandLow.Float()))
	c.answer("overlap_high", round4(fit.BandHigh.Float()))
	cautions := c.caution("buttons-children")
	return c.voice().ButtonFit(d, fit) + answer.Cautioned(cautions), cautions
}

// yarnCount tells a yarn's thickness in another count.
func (c *turn) yarnCount() string {
	p := c.m.Parts
	tex, ok := engine.Tex(p.Count, p.CountValue, p.Plies)
	if !ok {
		return "That is no yarn count that I know. For example: *2/24 worsted count in metres per 100 g*."
	}
	metres, _ := engine.FromTex(tex, engine.MetresPer)
	c.answer("tex", round4(tex.Float()))
	c.answer(engine.YarnLength, round4(metres.Float()))
	to := p.To
	if to == "" {
		to = engine.MetresPer
	}
	value, _ := engine.FromTex(tex, to)
	if to != engine.MetresPer && to != engine.TexCount {
		c.answer("yarn_count", round4(value.Float()))
	}
	return answer.YarnCount(p.Count, p.CountValue, p.Plies, to, value, tex, metres)
}
