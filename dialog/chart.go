package dialog

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// chartAnswer is the chart, one row's card, or its picture.
func (c *turn) chartAnswer(p *engine.Plan, row int) string {
	v := c.voice()
	switch {
	case p.Chart.Cards == nil:
		return v.Chart(p)
	case row >= 0:
		c.rowFacts(p, row)
		return v.CardText(p, row)
	case c.m.Move.Row > 0:
		return fmt.Sprintf("The chart has rows 1 to %d.", len(p.Chart.Rows))
	case c.lineHas("draw", "picture", "show"):
		return answer.ChartRowsText(p) + "\n\n" + answer.ChartPicture(p)
	}
	c.chartFacts(p)
	return v.Chart(p)
}

func (c *turn) chartFacts(p *engine.Plan) {
	c.answerKeys(p, engine.ChartNeedles, engine.ChartContrast, engine.ChartMain, engine.FloatLongest, engine.FloatLongestCm, engine.FloatMost, engine.MainYarn, engine.ContrastYarn)
}

// rowFacts notes one row for JSON under the keys of the lists.
func (c *turn) rowFacts(p *engine.Plan, row int) {
	for _, k := range []engine.Key{engine.ChartNeedles, engine.ChartContrast, engine.ChartMain, engine.ChartCatches, engine.ChartMainYarn, engine.ChartSecondYarn} {
		switch list, _ := p.Value(k); l := list.(type) {
		case [][]string:
			c.answer(k, l[row])
		case []int:
			c.answer(k, l[row])
		case []float64:
			c.answer(k, round4(l[row]))
		}
	}
}

// floatLimit is the longest float that is left alone, whether one of so many
// stitches passes it, and what the chart's own come to.
func (c *turn) floatLimit(p *engine.Plan) string {
	in := p.In
	spec := engine.RowSpec{Gauge: in.Num(engine.StitchGauge), LimitLength: in.Num(engine.FloatLimit), LimitStitches: in.Int(engine.FloatStitches)}
	card := engine.Row(nil, spec)
	c.answer(engine.FloatMost, card.Limit)
	limit := c.voice().FloatLimit(card.Limit, spec, c.caution("loose-floats"))
	switch {
	case c.m.Count > card.Limit:
		return fmt.Sprintf("A float of **%s is too long** to be left alone: catch it on the way. ", answer.Count(c.m.Count, "stitch", "stitches")) + limit
	case c.m.Count > 0:
		return fmt.Sprintf("A float of **%s can be left alone**. ", answer.Count(c.m.Count, "stitch", "stitches")) + limit
	case p.Chart != nil && p.Chart.Cards != nil:
		c.answerKeys(p, engine.FloatLongest, engine.FloatLongestCm)
		return c.voice().Floats(p) + "\n\n" + limit
	}
	return limit
}

func (c *turn) chartSet(p *engine.Plan, keys []engine.Key) string {
	if p.Chart == nil {
		return ""
	}
	text := c.voice().Chart(p)
	if p.Chart.Cards != nil {
		c.chartFacts(p)
	}
	if ask := answer.ChartChoice(p.Chart); ask != "" && hasKey(keys, engine.KeyChart) {
		text += " " + ask
	}
	return text
}

// withRow is the chart with that row in place of its own, or after its last
// (also at "+"), or without it where row is "". A row whose width does not go into the repeat, nor the repeat into it, is asked
// about: it would make another repeat of all rows.
func withRow(chart, at, row string) (string, listen.Problem) {
	rows := strings.Split(chart, "/")
	n, err := strconv.Atoi(at)
	if at == "+" {
		n, err = len(rows)+1, nil
	}
	wide := len(rows[0])
	switch {
	case err == nil && row == "" && n >= 1 && n <= len(rows) && len(rows) > 1:
		return strings.Join(slices.Delete(rows, n-1, n), "/"), listen.Problem{}
	case row == "" && len(rows) == 1:
		return "", listen.Problem{Code: "chart-last"}
	case err != nil || n < 1 || n > len(rows)+1:
		return "", listen.Problem{Code: "chart-row", Count: len(rows), Read: at}
	case len(row) == 0 || wide%len(row) != 0 && len(row)%wide != 0:
		return "", listen.Problem{Code: "chart-width", Count: len(row), Low: engine.Int(int64(wide)), Read: at}
	case n > len(rows):
		rows = append(rows, row)
	default:
		rows[n-1] = row
	}
	return strings.Join(rows, "/"), listen.Problem{}
}
