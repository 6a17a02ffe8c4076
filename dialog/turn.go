package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
	"foldrow/rules"
)

// run answers the line by its kind of meaning.
func (c *turn) run() (State, Reply) {
	if c.m.Kind != listen.Unclear && c.m.Kind != listen.Outside {
		c.s.Misses = 0
	}
	c.s.Amount = listen.Ask{} // asked of this line only
	c.s.Apart = [2]string{}   // and so is which of two troubles it is
	if c.m.First != "" {
		return c.onDecided()
	}
	switch c.m.Kind {
	case listen.Nothing:
		return c.onNothing()
	case listen.Values:
		return c.onValues()
	case listen.WhatIf:
		return c.onWhatIf()
	case listen.Keep:
		return c.onKeep()
	case listen.Drop:
		return c.onDrop()
	case listen.Why:
		return c.onWhy()
	case listen.Number:
		return c.onNumber()
	case listen.Compare:
		return c.onCompare()
	case listen.Backwards:
		return c.onBackwards()
	case listen.Shake:
		return c.onShake()
	case listen.Measure:
		return c.onMeasure()
	case listen.HowTo:
		if c.m.Topic == "choice" {
			return c.onMeasure()
		}
		return c.onHowTo()
	case listen.Trouble:
		return c.onTrouble()
	case listen.Step:
		return c.onStep()
	case listen.After:
		return c.onAfter()
	case listen.Show:
		return c.onShow()
	case listen.Undo:
		return c.onUndo()
	case listen.Notebook:
		return c.onNotebook()
	case listen.Help:
		return c.onHelp()
	case listen.Parts:
		return c.onYoke()
	case listen.Vague:
		return c.onVague()
	case listen.Chat:
		return c.onChat()
	case listen.Outside:
		return c.onOutside()
	}
	return c.onUnclear(c.m.Problem)
}

// interview is the order of the questions.
var interview = [...]string{"garment", "gauge", "neck", "rib", "depth"}

// open is the question that is open, worked out from the state each time: a
// what-if's first, then the first of the five without an answer.
func (t *Talk) open(s State) string {
	if s.OnTable {
		return "keep"
	}
	for _, q := range interview {
		if !answered(s.Said, q) && !skipped(s, q) {
			return q
		}
	}
	return ""
}

func answered(in engine.Inputs, q string) bool {
	switch q {
	case "gauge":
		return in.Has(engine.StitchGauge) && in.Has(engine.RowGauge)
	case "neck":
		return in.Has(engine.Neck) || in.Has(engine.NeckBody)
	case "depth":
		return in.Has(engine.Depth) || in.Has(engine.DepthRows)
	case "rib":
		return in.Has(engine.KeyRib) || in.Text(engine.KeyBandKind) == engine.BandRolled
	}
	return in.Has(engine.Key(q))
}

func skipped(s State, q string) bool {
	for _, k := range s.Skipped {
		if k == q {
			return true
		}
	}
	return false
}

// questionKey is the input whose card holds the question's words.
func questionKey(q string) engine.Key {
	if q == "gauge" {
		return engine.StitchGauge
	}
	return engine.Key(q)
}

// question is the open question as it is asked.
func (c *turn) question() string {
	q := c.open(c.s)
	switch q {
	case "":
		return ""
	case "keep":
		return "Keep this? (*keep* or *drop*)"
	case "gauge":
		if s := c.halfGauge(); s != "" {
			return s
		}
	}
	card, _ := c.book.Key(questionKey(q))
	asks := card.Question
	if c.base().Garment == engine.Pullover && card.QuestionPullover != "" {
		asks = card.QuestionPullover
	}
	text := "**" + asks + "**"
	if e := c.exampleOf(card); e != "" {
		text += " For example: " + e + "."
	}
	if base, ok := c.neckFromTable(c.filled(c.base())); ok && q == "neck" && !wearerSaid(c.m.Sets) {
		neck := base.Add(c.filled(c.base()).Num(engine.Ease))
		text += fmt.Sprintf(" *Yes* takes %s, which the tables make for %s.", c.voice().Len(neck.Float()), c.voice().Text(engine.KeyWearer, c.base().Text(engine.KeyWearer)))
	}
	if d, ok := c.offered(q); ok {
		text += fmt.Sprintf(" Enter alone takes %s.", d)
	}
	return text
}

// halfGauge asks for the half that is missing.
func (c *turn) halfGauge() string {
	st, row := c.s.Said.Has(engine.StitchGauge), c.s.Said.Has(engine.RowGauge)
	rows, stitches := "40 rows", "28 stitches"
	if c.s.Unit == "in" {
		rows, stitches = "10 rows to the inch", "7 stitches to the inch"
	}
	switch {
	case st && !row:
		return "**And how many rows in 10 cm (or 4 inches)?** For example: " + rows + "."
	case row && !st:
		return "**And how many stitches in 10 cm (or 4 inches)?** For example: " + stitches + "."
	}
	return ""
}

// offered is the answer that Enter alone takes, for the questions where one
// answer suits most necks.
func (c *turn) offered(q string) (string, bool) {
	switch {
	case q == "rib":
		return "1x1", true
	case q == "depth" && c.child():
		return c.childDepth(), true
	case q == "depth" && c.s.Unit == "in":
		return "1 1/4 in", true
	case q == "depth":
		return "3 cm", true
	}
	return "", false
}

// exampleOf is a card's example in the knitter's own unit.
func (c *turn) exampleOf(card rules.KeyCard) string {
	if card.Key == engine.Depth && c.child() {
		return c.childDepth()
	}
	if c.s.Unit == "in" && card.Inches != "" {
		return card.Inches
	}
	return card.Example
}

// onNothing: an empty line takes the shown default, or repeats where it is.
func (c *turn) onNothing() (State, Reply) {
	q := c.open(c.s)
	d, ok := c.offered(q)
	switch {
	case ok:
		c.m = c.hear(d, c.context())
		return c.onValues()
	case c.s.Making.Chart > 0 && c.kept().Chart != nil && c.kept().Chart.Cards != nil:
		return c.chartReply(c.kept(), "")
	case c.s.Making.On && q == "":
		return c.stepReply("")
	}
	if c.m.Topic == "default" {
		c.m.Kind, c.m.Topic = listen.Measure, "usual"
		return c.onMeasure()
	}
	return c.s, c.reply("show", "Nothing was typed.")
}

// reply seals the turn: the text, the open question, and the facts.
func (c *turn) reply(kind, text string) Reply {
	p := c.plan()
	asks := c.open(c.s)
	r := Reply{
		Turn: c.s.Turn, Said: c.said, Kind: kind, Changes: c.changes, Answer: c.answers,
		Cautions: c.cautions(c.voice().Cautions(p), text), Order: c.order, plan: p,
	}
	if r.Changes == nil {
		r.Changes = map[string]any{}
	}
	if asks != "" {
		r.Asks = &asks
	}
	var b strings.Builder
	for _, f := range c.m.Fixes {
		fmt.Fprintf(&b, "(reading %s as %s)\n\n", literal(f.From), f.To)
	}
	if c.s.Unit == "in" {
		text = answer.InchExamples(text)
	}
	b.WriteString(text + answer.Cautioned(c.more))
	if q := c.question(); q != "" && c.order.What != "leave" {
		b.WriteString("\n\n" + q)
	}
	r.Markdown = b.String()
	return r
}

// literal makes words of the knitter's safe to stand in Markdown: what would
// be read as marks there is taken out, and a long word is cut.
func literal(s string) string {
	var b strings.Builder
	n := 0
	for _, r := range s {
		if n++; n > 40 {
			b.WriteString("...")
			break
		}
		switch r {
		case '*', '_', '`', '[', ']', '<', '>', '#', '|', '~', '\\', '{', '}':
			b.WriteByte(' ')
		case '&':
			b.WriteString("and")
		default:
			b.WriteRune(r)
		}
	}
	return "\"" + strings.TrimSpace(b.String()) + "\""
}
