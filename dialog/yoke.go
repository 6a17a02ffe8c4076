package dialog

import (
	"fmt"
	"strconv"
	"strings"

	"foldrow/dialog/listen"
	"foldrow/engine"
)

// onYoke answers a question about the yoke or its chart. What the line brings
// with it serves this answer only.
func (c *turn) onYoke() (State, Reply) {
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	if len(a.keys) > 0 {
		c.about = &a.in
	}
	p := c.solve(a.in)
	text := c.yokeAnswer(p)
	if len(a.keys) > 0 {
		text += "\n\nThe plan is not changed; say it without the question to set it."
	}
	return c.s, c.reply("number", text)
}

const yokeNeeded = "For the stages I need the stitches of the first one, or of the body below it; three or four stages are usual (common practice). For example: *yoke of 264 stitches in 4 stages*, *yoke from 240 to 105*, or *yoke for a body of 180 stitches*."

// yokeAnswer is the part of the yoke or the chart that the line is about.
func (c *turn) yokeAnswer(p *engine.Plan) string {
	v := c.voice()
	stage, row := c.stageAsked(p), c.rowAsked(p)
	switch {
	case c.m.Topic == "float-limit":
		return c.floatLimit(p)
	case c.m.Topic == "chart" && p.Chart == nil:
		return "For a row card I need the row. For example: *contrast every fourth over 105 stitches*, or *chart x..x.. / .xx...*, x being contrast."
	case c.m.Topic == "chart":
		return c.chartAnswer(p, row)
	case c.m.Topic == "chart-needle":
		return c.chartNeedle(p)
	case c.m.Topic == "repeats-fit":
		return c.repeatsFit(p)
	case c.m.Topic == "yoke-depth":
		return c.depthAnswer(p)
	case p.Yoke == nil || p.Yoke.Spec.Start == 0:
		return yokeNeeded
	case p.Yoke.Stages == nil:
		return v.Yoke(p)
	case stage >= 0 && !c.lineHas("draw"):
		c.answer(engine.StageRehang, p.Yoke.Stages[stage].Hangings)
		c.answer(oneStage, stage+1)
		c.answer(oneStageCount, p.Yoke.Stages[stage].Count)
		return v.Hang(p, stage)
	case c.lineHas("pieces", "needles"):
		c.answerKeys(p, engine.StageNeedles, engine.StagePieces, engine.OnePieceFrom)
		return v.Pieces(p)
	case c.lineHas("draw", "profile", "picture", "shape"):
		c.answerKeys(p, engine.StageCounts, engine.YokeDepthResult, engine.YokeSlope)
		return v.Profile(p)
	}
	c.yokeFacts(p)
	return v.Yoke(p)
}

// yokeFacts notes the yoke's main lists for JSON.
func (c *turn) yokeFacts(p *engine.Plan) {
	c.answerKeys(p, engine.StageCounts, engine.StageDecreases, engine.StagePieces)
}

func (c *turn) answerKeys(p *engine.Plan, keys ...engine.Key) {
	for _, k := range keys {
		if val, ok := valueJSON(p, k); ok {
			c.answer(k, val)
		}
	}
}

// stageAsked is the stage that a question names, from 0; -1 where it names
// none.
func (c *turn) stageAsked(p *engine.Plan) int {
	if c.m.Count < 1 || p.Yoke == nil || c.m.Count > len(p.Yoke.Stages) {
		return -1
	}
	return c.m.Count - 1
}

// rowAsked is the row of the chart that a question names, from 0; -1 for none.
func (c *turn) rowAsked(p *engine.Plan) int {
	if c.m.Move.Row < 1 || p.Chart == nil || c.m.Move.Row > len(p.Chart.Rows) {
		return -1
	}
	return c.m.Move.Row - 1
}

// lineHas reports whether one of the words stands in the line as a part of the
// meaning that the listener handed on.
func (c *turn) lineHas(words ...string) bool {
	for _, w := range words {
		if c.m.Part == w {
			return true
		}
	}
	return false
}

// depthAnswer is how deep the yoke is, or should be for a bust.
func (c *turn) depthAnswer(p *engine.Plan) string {
	y := p.Yoke
	switch {
	case y != nil && y.HasBust:
		c.answerKeys(p, engine.YokeDepthLow, engine.YokeDepthHigh, engine.YokeDepthRule, engine.YokeRowsResult, engine.YokeDepthResult)
		if y.HasDepth && y.Stages != nil {
			return c.voice().Profile(p)
		}
		return c.voice().YokeDepth(p)
	case y != nil && y.HasDepth && y.Stages != nil:
		c.answerKeys(p, engine.YokeRowsResult, engine.YokeDepthResult, engine.YokeSlope)
		return c.voice().Profile(p)
	}
	return "For the depth I need the bust or chest it is for, or the depth you want. For example: *how deep is the yoke for a 94 cm bust*, *yoke 22 cm deep*."
}

// partText is the answer of the part around the band that the keys belong to,
// shown once something of it was set; "" where they belong to none.
func (c *turn) partText(p *engine.Plan, keys []engine.Key) string {
	var text string
	seen := map[string]bool{}
	for _, k := range keys {
		card, _ := c.book.Key(k)
		if card.Part == "" || seen[card.Part] {
			continue
		}
		seen[card.Part] = true
		part := ""
		switch card.Part {
		case "yoke":
			part = c.yokeSet(p, k)
		case "chart":
			part = c.chartSet(p, keys)
		}
		if part != "" {
			text += "\n\n" + part
		}
	}
	return text
}

// yokeSet is what to show when the yoke was changed: a count found on a stage
// leads to the next hanging at once.
func (c *turn) yokeSet(p *engine.Plan, k engine.Key) string {
	y := p.Yoke
	if k == engine.StageHad && y != nil && y.Stages != nil {
		for i := len(y.Stages) - 2; i >= 0; i-- {
			if c.hadNow(i) {
				c.answer(engine.StageRehang, y.Stages[i+1].Hangings)
				return c.voice().Hang(p, i+1)
			}
		}
	}
	if y != nil && y.Stages != nil {
		c.yokeFacts(p)
	}
	text := c.voice().Yoke(p)
	if text == "" && (k == engine.KeyYokeMethod || k == engine.YokeStages || k == engine.StageRepeats) {
		return yokeNeeded
	}
	return text
}

// hadNow reports whether this line told the count found on stage i.
func (c *turn) hadNow(i int) bool {
	for _, s := range c.m.Sets {
		if s.Key == engine.StageHad && len(s.Text) > 1 && s.Text[:len(s.Text)-len(afterSign(s.Text))-1] == fmt.Sprint(i+1) {
			return true
		}
	}
	return false
}

func afterSign(s string) string {
	for i := range s {
		if s[i] == '=' {
			return s[i+1:]
		}
	}
	return s
}

// merged is a list that a line adds to: counts found on further stages stand
// beside those told before, and one row of a chart beside its others.
func merged(in engine.Inputs, s listen.Set) (string, listen.Problem) {
	if s.Key == engine.StageHad && in.Has(s.Key) {
		return in.Text(s.Key) + " " + s.Text, listen.Problem{}
	}
	if s.Key == engine.StageRepeats && strings.Contains(s.Text, "=") {
		return withRepeats(in, s.Text)
	}
	if at, row, one := strings.Cut(s.Text, "="); one && s.Key == engine.KeyChart {
		return withRow(in.Text(s.Key), at, row)
	}
	return s.Text, listen.Problem{}
}

// withRepeats is the repeats by stage with those of single stages ("2=8") in
// place of their own; a stage without one takes any count, which is a repeat of
// one stitch.
func withRepeats(in engine.Inputs, pairs string) (string, listen.Problem) {
	had := strings.Fields(in.Text(engine.StageRepeats))
	list := make([]string, engine.StageCount(in))
	for i := range list {
		list[i] = "1"
		if len(had) > 0 {
			list[i] = had[min(i, len(had)-1)]
		}
	}
	for _, pair := range strings.Fields(pairs) {
		at, repeat, _ := strings.Cut(pair, "=")
		n, err := strconv.Atoi(at)
		if err != nil || n < 1 || n > len(list) {
			return "", listen.Problem{Code: "no-stage", Count: len(list), Read: at}
		}
		list[n-1] = repeat
	}
	return strings.Join(list, " "), listen.Problem{}
}
