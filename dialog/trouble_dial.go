package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// dialNumbers is what rows at a wrong setting do to the band: the depth of
// their layer, the width at those rows, and how many rows to knit inside so
// that the two layers match. sign is -1 for looser, +1 for tighter, where the
// line gives no dial.
func (c *turn) dialNumbers(p *engine.Plan, sign int) string {
	s := c.m.Slip
	rows := p.Tension()
	if s.Forgot && c.s.Making.On {
		if row, _, _, ok := c.forgotten(p); ok && row <= c.s.Making.Row {
			return c.forgottenText(p)
		}
	}
	delta, known := c.slipClicks(p, s, sign)
	if s.Rows == 0 || !known {
		return c.dialPerRow(p, sign)
	}
	first := s.First
	if first == 0 && c.s.Making.On && c.s.Making.Row >= s.Rows {
		first = c.s.Making.Row - s.Rows + 1
	}
	if first == 0 {
		first = 1
	}
	if first+s.Rows-1 > len(rows) {
		return fmt.Sprintf("The band has rows 1 to %d; say which of them it concerns.", len(rows))
	}
	actual := make([]int, len(rows))
	for i, r := range rows {
		actual[i] = r.Clicks
		if i+1 >= first && i+1 < first+s.Rows {
			actual[i] = delta(r.Clicks)
		}
	}
	return c.layersText(p, actual, first, s.Rows)
}

// slipCard is the trouble of rows said with their dial: too loose or too
// tight.
func (c *turn) slipCard() string {
	s, p := c.m.Slip, c.kept()
	if s.Forgot {
		if _, was, is, ok := c.forgotten(p); ok && was > is {
			return "wrong-dial-tight"
		}
		return "wrong-dial-loose"
	}
	meant := s.Meant
	if !s.HasMeant {
		at := s.First
		if at == 0 {
			at = c.s.Making.Row
		}
		if rows := p.Tension(); at > 0 && at <= len(rows) && p.In.Has(engine.MainTension) {
			meant = p.In.Num(engine.MainTension).Sub(engine.Frac(int64(rows[at-1].Clicks), int64(max(1, p.In.Int(engine.ClicksPerNumber)))))
		}
	}
	if s.Used.Less(meant) {
		return "wrong-dial-tight"
	}
	return "wrong-dial-loose"
}

// forgotten is the row before which the dial was not turned, with the clicks
// that it then stood at and those it should have had: the row that was said,
// or the last change among the rows knitted. ok is false where no change
// was due at that row.
func (c *turn) forgotten(p *engine.Plan) (row, was, is int, ok bool) {
	rows := p.Tension()
	row = c.m.Slip.First
	if row == 0 {
		for i := 1; i < len(rows) && i < c.s.Making.Row; i++ {
			if rows[i].Clicks != rows[i-1].Clicks {
				row = i + 1
			}
		}
	}
	if row < 2 || row > len(rows) || rows[row-1].Clicks == rows[row-2].Clicks {
		return row, 0, 0, false
	}
	return row, rows[row-2].Clicks, rows[row-1].Clicks, true
}

// notForgotten says that nothing is lost, where no change was due at the row
// that was said or its row is still to be knitted; "" where one was missed.
func (c *turn) notForgotten() string {
	p := c.kept()
	rows := p.Tension()
	row, _, is, ok := c.forgotten(p)
	at := min(c.s.Making.Row, len(rows)-1)
	switch {
	case !c.m.Slip.Forgot || len(rows) == 0:
		return ""
	case !ok && row >= 1 && row <= len(rows):
		return fmt.Sprintf("**No change was due at row %d:** it is knitted at %s, as the row before it.", row, answer.DialNow(rows[row-1]))
	case !ok:
		return fmt.Sprintf("**No change was due so far.** Row %d is at %s.", rows[at].Row, answer.DialNow(rows[at]))
	case c.s.Making.Row < row:
		return fmt.Sprintf("**Nothing is lost:** row %d is not counted as knitted yet. Set %s now, before it.", row, setting(p, is))
	}
	return ""
}

// forgottenText is what a change that was forgotten does, from its row to the
// row knitted last.
func (c *turn) forgottenText(p *engine.Plan) string {
	row, was, _, _ := c.forgotten(p)
	actual := clicksOf(p.Tension())
	knitted := min(c.s.Making.Row, len(actual)) // a plan since changed may have fewer
	for i := row - 1; i < knitted; i++ {
		actual[i] = was
	}
	return c.layersText(p, actual, row, knitted-row+1)
}

// slipClicks is, for the clicks a row was to have, those it was knitted with.
func (c *turn) slipClicks(p *engine.Plan, s listen.Slip, sign int) (func(int) int, bool) {
	per := p.In.Num(engine.ClicksPerNumber)
	switch {
	case s.HasUsed && p.In.Has(engine.MainTension):
		k := p.In.Num(engine.MainTension).Sub(s.Used).Mul(per).Round()
		return func(int) int { return k }, true
	case s.HasUsed && s.HasMeant:
		d := s.Meant.Sub(s.Used).Mul(per).Round()
		return func(k int) int { return k + d }, true
	case s.HasOff:
		d := sign * s.Off.Mul(per).Add(s.Clicks).Round()
		return func(k int) int { return k + d }, true
	}
	return nil, false
}

// evenRows is the plan of so many rows at one setting, in a single layer: the
// engine's own measure of what a row at that setting comes to.
func (c *turn) evenRows(p *engine.Plan, rows, clicks int) *engine.Plan {
	in := p.In.Without(engine.Depth).Without(engine.MainTension)
	return engine.Solve(in.With(engine.DepthRows, engine.Int(int64(rows))).With(engine.Layers, engine.Int(1)).
		With(engine.RowsPerClick, engine.Num{}).With(engine.StartClicks, engine.Int(int64(clicks))))
}

// depthOf is how deep rows at those clicks are together.
func (c *turn) depthOf(p *engine.Plan, clicks []int) engine.Num {
	var sum engine.Num
	for i := 0; i < len(clicks); {
		j := i + 1
		for j < len(clicks) && clicks[j] == clicks[i] {
			j++
		}
		sum = sum.Add(c.evenRows(p, j-i, clicks[i]).DepthResult)
		i = j
	}
	return sum
}

// layersText compares the layers as knitted with the plan.
func (c *turn) layersText(p *engine.Plan, actual []int, first, n int) string {
	r := p.LayerRows
	v := c.voice()
	rows := p.Tension()
	what, from := "outer layer", 0
	if !p.Doubled {
		what = "band"
	} else if first > len(rows)-r {
		what, from = "inner layer", len(rows)-r
	} else if first == r+1 && p.FoldRow > 0 {
		return "That is the fold row alone: the depth stays, only the fold is crisper or softer."
	}
	was := c.depthOf(p, clicksOf(rows[from:from+r]))
	is := c.depthOf(p, actual[from:from+r])
	i := first - 1
	text := fmt.Sprintf("%s at %s instead of %s: the %s comes to %s instead of %s (%s). Round the band at those rows: %s instead of %s.",
		title(answer.RowSpan(first, first+n-1)), setting(p, actual[i]), setting(p, rows[i].Clicks), what,
		v.Fine(is.Float()), v.Fine(was.Float()), v.Small(is.Sub(was).Float()),
		v.Len(c.evenRows(p, 3, actual[i]).FoldCircumference.Float()), v.Len(c.evenRows(p, 3, rows[i].Clicks).FoldCircumference.Float()))
	if !p.Doubled {
		m := nearestCut(c, p, actual, was, first+n-1)
		return text + rowsInstead(m, r, "in the band")
	}
	inner := actual[len(actual)-r:]
	knitted := 0
	if c.s.Making.On {
		knitted = max(0, c.s.Making.Row-(len(actual)-r))
	}
	if what == "inner layer" {
		knitted = max(knitted, first+n-1-from)
	}
	m := nearestCut(c, p, inner, c.depthOf(p, actual[:r]), knitted)
	return text + rowsInstead(m, r, "inside")
}

func rowsInstead(m, r int, place string) string {
	switch {
	case m == r:
		return fmt.Sprintf(" Knit %s %s as planned: no other number comes nearer.", rowsWord(r), place)
	case m < r:
		return fmt.Sprintf(" Knit %s %s: %s fewer comes nearest.", rowsWord(m), place, rowsWord(r-m))
	}
	return fmt.Sprintf(" Knit %s %s: %s more comes nearest.", rowsWord(m), place, rowsWord(m-r))
}

// nearestCut is how many rows of a layer, cut short or gone on with at its
// last setting, come nearest to the wanted depth; at least those knitted.
func nearestCut(c *turn, p *engine.Plan, layer []int, want engine.Num, knitted int) int {
	best := max(len(layer), knitted)
	bestOff := c.depthOf(p, layer).Sub(want).Abs()
	for m := max(1, knitted); m <= len(layer)+6; m++ {
		rows := append([]int(nil), layer...)
		for len(rows) < m {
			rows = append(rows, layer[len(layer)-1])
		}
		if off := c.depthOf(p, rows[:m]).Sub(want).Abs(); off.Less(bestOff) {
			best, bestOff = m, off
		}
	}
	return best
}

func clicksOf(rows []engine.TensionRow) []int {
	out := make([]int, len(rows))
	for i, r := range rows {
		out[i] = r.Clicks
	}
	return out
}

// setting is a number of clicks as the knitter sets it: the dial number where
// the garment's is known.
func setting(p *engine.Plan, k int) string {
	r := engine.TensionRow{Clicks: k}
	if per := p.In.Num(engine.ClicksPerNumber); p.In.Has(engine.MainTension) && per.Sign() > 0 {
		dial := p.In.Num(engine.MainTension).Sub(engine.Int(int64(k)).Div(per)).Float()
		r.Dial = &dial
	}
	return answer.DialNow(r)
}

// dialPerRow is what one row a whole number out does, where the line does not
// say enough.
func (c *turn) dialPerRow(p *engine.Plan, sign int) string {
	number := p.In.Int(engine.ClicksPerNumber) * sign
	d := c.evenRows(p, 1, number).DepthResult.Sub(c.evenRows(p, 1, 0).DepthResult)
	word := "looser"
	if sign > 0 {
		word = "tighter"
	}
	text := fmt.Sprintf("Each row a whole number %s changes the depth by %s. Say how many and where, and I work out the rows inside: *3 rows at dial 5 instead of 4*.",
		word, c.voice().Small(d.Float()))
	if m := c.s.Making; m.On && m.Row > 0 && m.Row <= p.TotalRows {
		text += fmt.Sprintf(" Row %d was to be at %s.", m.Row, answer.DialNow(p.Tension()[m.Row-1]))
	}
	return text
}
