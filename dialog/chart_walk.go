package dialog

import (
	"fmt"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// chartStep walks the rows of the colour chart at the machine, one card a
// step; ok is false where the line is not about the chart.
func (c *turn) chartStep(p *engine.Plan) (State, Reply, bool) {
	now, what := c.s.Making.Chart, c.m.Move.What
	if what != "chart" && what != "chart-off" && now == 0 {
		return c.s, Reply{}, false
	}
	ch := p.Chart
	switch {
	case what == "start":
		c.s.Making.Chart = 0 // on to the band
		return c.s, Reply{}, false
	case ch == nil || ch.Cards == nil:
		c.s.Making.Chart = 0
		return c.s, c.reply("step", "There is no chart to walk yet. For example: *chart x..x.. / .xx... over 105 stitches*."), true
	case what == "chart-off":
		s, r := c.chartAt(p, 0, "The chart is left; say *start the chart* to come back to it.")
		return s, r, true
	}
	s, r := c.chartMove(p, min(now, len(ch.Rows)), len(ch.Rows))
	return s, r, true
}

// chartMove goes where the line says among the rows of the chart.
func (c *turn) chartMove(p *engine.Plan, now, rows int) (State, Reply) {
	m := c.m.Move
	switch m.What {
	case "chart":
		return c.chartAt(p, 1, "")
	case "next", "skip", "finished":
		return c.chartAt(p, now+1, "")
	case "back":
		if now == 1 {
			return c.chartReply(p, "(This is the first row.)")
		}
		return c.chartAt(p, now-1, "")
	case "row":
		to := m.Row
		if m.Done {
			to++
		}
		if m.Row < 1 || m.Row > rows {
			return c.unsure(fmt.Sprintf("The chart has rows 1 to %d.", rows))
		}
		return c.chartAt(p, to, "")
	case "done":
		if m.Count < 1 || now+m.Count > rows+1 {
			return c.unsure(fmt.Sprintf("You are at row %d of %d of the chart.", now, rows))
		}
		return c.chartAt(p, now+m.Count, "")
	case "where":
		return c.chartReply(p, fmt.Sprintf("%s knitted, %d to go.", title(rowsWord(now-1)), rows-now+1))
	}
	return c.chartReply(p, "")
}

// chartAt makes row the one to knit now, so that undo takes it back; past the
// last one the chart is done, at 0 it is left.
func (c *turn) chartAt(p *engine.Plan, row int, note string) (State, Reply) {
	next := c.s
	next.Making.Chart, next.Last = row, nil
	over := row > len(p.Chart.Rows)
	if over {
		next.Making.Chart = 0
	}
	c.s = c.s.changed(next)
	c.about = &c.s.Said
	switch {
	case over:
		return c.s, c.reply("step", c.chartOver(p))
	case row == 0:
		return c.s, c.reply("step", note)
	}
	return c.chartReply(p, note)
}

// chartReply is the card of the row to knit now.
func (c *turn) chartReply(p *engine.Plan, note string) (State, Reply) {
	ch, v := p.Chart, c.voice()
	row := min(c.s.Making.Chart, len(ch.Rows))
	dial, last := "", ""
	if row == 1 {
		dial = v.WalkDial(p)
	}
	if row == len(ch.Rows) {
		last = "The last row of the chart."
	}
	head := fmt.Sprintf("Chart row %d of %d", row, len(ch.Rows))
	if ch.Stage > 0 {
		head += fmt.Sprintf(", stage %d", ch.Stage)
	}
	items := append([]string{note, dial}, v.RowCard(p, row-1)...)
	c.rowFacts(p, row-1)
	return c.s, c.reply("step", answer.Screen(head, append(items, last)...))
}

// chartOver is said when the last row of the chart is knitted: how it goes on.
func (c *turn) chartOver(p *engine.Plan) string {
	text := "**The chart is knitted.** " + answer.ChartToBand(p.Chart)
	if ch := p.Chart; ch.Plain > 0 {
		text += fmt.Sprintf(" %s of the stage are left plain.", title(rowsWord(ch.Plain)))
	}
	if y := p.Yoke; y != nil && p.Chart.Stage > 0 && p.Chart.Stage < len(y.Stages)-1 {
		return text + fmt.Sprintf(" Then: *how do I hang stage %d*.", p.Chart.Stage+1)
	}
	if p.BandStitches > 0 && p.LayerRows > 0 {
		return text + " Then: *start knitting* the neckband."
	}
	return text
}

// chartWhere is where she stands in the chart, "" away from it.
func (c *turn) chartWhere() string {
	if c.s.Making.Chart == 0 {
		return ""
	}
	p := c.kept()
	if p.Chart == nil {
		return ""
	}
	return fmt.Sprintf("row %d of %d of the chart.", c.s.Making.Chart, len(p.Chart.Rows))
}
