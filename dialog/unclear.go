package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/engine"
)

// onUnclear says what was read, what is wrong and one example that works. The
// second time it lists the forms, the third it offers to leave the question.
// The state stays as it was but for the count.
func (c *turn) onUnclear(p listen.Problem) (State, Reply) {
	c.changes, c.answers = nil, nil
	c.s.Misses++
	c.s.Doubt = nil
	text := c.problemText(p)
	if len(c.m.Alike) > 0 {
		text += " Near to that I know: *" + strings.Join(c.m.Alike, "*, *") + "*."
	}
	if p.Code == "not-understood" || p.Code == "" || p.Code == "no-words" {
		switch {
		case c.s.Misses == 2:
			text += " " + c.forms()
		case c.s.Misses >= 3:
			text += " " + c.wayOut()
		}
	}
	return c.s, c.reply("unclear", text)
}

// problems are what is said of a line whatever was in it.
var problems = map[string]string{
	"division-by-zero":  "I read a fraction over 0, which is no number. For example: 1/2.",
	"two-numbers":       "I read two numbers side by side and cannot tell which is meant. For example: 15 1/2 in.",
	"mixed":             "I read two numbers side by side and cannot tell which is meant. For example: 15 1/2 in.",
	"row":               "I cannot tell which row you are on. For example: *row 7*.",
	"rib":               "I read a rib that cannot be knitted so. Name the knit and the purl column, like 1x1, 2x1 or 2x2.",
	"long":              "That line is too long for me: nothing of it was taken. Say it in a sentence or two.",
	"rib-gauge":         "A swatch in rib tells no gauge: the band is knitted plain, and its columns are latched afterwards. Tell how wide it lies: *rib swatch of 40 stitches: 10 cm relaxed, 20 stretched*.",
	"compare":           "I cannot set those beside each other; nothing is changed. Name two values of one thing: *compare 1x1 and 2x2*, *compare 5 and 7 buttonholes*.",
	"swatch-weight":     "A weighed swatch tells the yarn only with its stitches and rows. For example: *a swatch of 50 stitches and 60 rows weighs 9 g*.",
	"gauge-first":       "For that I need the stitch gauge first: it tells how wide those stitches lie in plain knitting. For example: *28 stitches in 10 cm*.",
	"band-not-off":      "The band is still on the machine, where it measures nothing true: measure it sewn off and rested a day. To plan another neck say *neck 40 cm*.",
	"nothing-on-table":  "There is no what-if on the table to drop.",
	"nothing-to-revise": "I do not know which number you mean. Name it: for example *depth 10 rows*.",
}

// problemText is the sentence for a problem, made from its parts.
func (c *turn) problemText(p listen.Problem) string {
	label := "number"
	if p.Key != "" {
		label = c.voice().Label(p.Key)
	}
	low, high := trimNum(p.Low), trimNum(p.High)
	if text, ok := problems[p.Code]; ok {
		return text
	}
	switch p.Code {
	case "range":
		unit := unitWord(p)
		return fmt.Sprintf("I read %s to %s%s. Which of the two is it, %s or %s?", low, high, unit, low, high)
	case "half":
		return fmt.Sprintf("I read %s and then the line breaks off. Say the %s whole. %s", low, label, c.tryThis())
	case "word":
		return fmt.Sprintf("I read %s and then %s, which I do not know. Say the %s with its unit. %s", low, literal(p.Read), label, c.tryThis())
	case "two-values":
		return fmt.Sprintf("I read two values for the %s. Say the one you mean.", label)
	case "span":
		return c.spanText(p)
	case "ratio":
		return fmt.Sprintf("I read %s stitches and %s rows in 10 cm. Plain knitting has about 1.3 rows to a stitch: were the two swapped, or is the swatch not plain? Say them again the right way round, or *yes* to take them so.", trimNum(round1(p.Low)), trimNum(round1(p.High)))
	case "grouping":
		return fmt.Sprintf("I cannot tell whether that comma parts thousands or decimals. Write it without: %s.", c.example())
	case "too-long":
		return "That number has more digits than any neck. " + c.tryThis()
	case "negative":
		return fmt.Sprintf("I read a number below nothing for the %s. %s", label, c.tryFor(p.Key))
	case "not-whole":
		return fmt.Sprintf("I read %s, but only a whole number will do for the %s.", low, label)
	case "uneven-rows":
		return fmt.Sprintf("I read %s rows in all, which do not part into two equal layers. Say the rows of one layer.", low)
	case "drop-rows":
		rows := answer.Count(p.Count, "row", "rows")
		text := fmt.Sprintf("I cannot tell what is to go. Rows left out of the plan: *%s fewer a layer*.", rows)
		if c.s.Making.On {
			text += fmt.Sprintf(" Rows taken out again: *took out %s*.", rows)
		}
		return text + " A stitch that ran: *dropped a stitch*."
	case "negated":
		return fmt.Sprintf("I heard what the %s is not to be; nothing is changed. Say what it should be. %s", label, c.tryFor(p.Key))
	case "story":
		return fmt.Sprintf("I took that as a story and set nothing. To set the %s, say it outright. %s", label, c.tryFor(p.Key))
	case "limit":
		return fmt.Sprintf("I heard a limit for the %s, not a value; nothing is changed. Say the value. %s", label, c.tryFor(p.Key))
	case "unit":
		return fmt.Sprintf("I read %s for the %s, which does not go together; nothing is changed. %s", literal(p.Read), label, c.tryFor(p.Key))
	case "wearer", "wearer-age", "wearer-size", "wearer-sex":
		return c.wearerProblem(p)
	case "no-such-choice":
		return fmt.Sprintf("I cannot read that for the %s. ", c.voice().Label(p.Key)) + c.tryFor(p.Key)
	case "fingers":
		return "A measure in fingers or hands differs from one to the next: lay them on a tape and say that. Nothing of the line is taken. " + c.tryThis()
	case "chart-row":
		return fmt.Sprintf("The chart has rows 1 to %d; row %s is none of them. The next one would be row %d.", p.Count, p.Read, p.Count+1)
	case "dial-or-row":
		return fmt.Sprintf("Is %s a number of the dial or a row? Say *start at dial %s* or *start at row %s*.", low, low, low)
	case "between-marks":
		return fmt.Sprintf("That number lies between two marks of the dial. The garment is at dial %s; say the clicks. For example: *start 2 clicks tighter*.", low)
	case "chart-last":
		return "That is the only row of the chart. Write it anew. For example: *chart x..x.. / .xx...*."
	case "no-stage":
		return fmt.Sprintf("The yoke has stages 1 to %d; stage %s is none of them. Say how many it has first. For example: *yoke in %d stages*.", p.Count, p.Read, p.Count+1)
	case "chart-width":
		return fmt.Sprintf("Row %s would be %s wide, and the chart repeats over %s: the two do not go into each other. Write the row over %s, or the whole chart anew. For example: *chart x..x.. / .xx...*.", p.Read, answer.Count(p.Count, "stitch", "stitches"), low, low)
	case "cuts":
		return fmt.Sprintf("%s is published for %d stages, and your yoke has %s. Say *%s in %d stages* to take it, or keep the %s with *equal cuts* or *a straight cone*. Nothing has changed.", title(c.voice().Text(p.Key, p.Read)), p.Count, low, strings.ReplaceAll(p.Read, "_", " "), p.Count, low)
	case "nothing-to-change":
		return fmt.Sprintf("There is no %s yet that could change. Say it outright first.", label)
	case "unbound":
		return fmt.Sprintf("I read %s%s, but not what it is for. Name it: for example *neck 40 cm* or *depth 3 cm*.", low, unitWord(p))
	}
	return c.lost()
}

func round1(n engine.Num) engine.Num {
	return engine.Frac(int64(n.Mul(engine.Int(10)).Round()), 10)
}

func unitWord(p listen.Problem) string {
	switch p.Unit {
	case "":
		return ""
	case "st":
		return " stitches"
	case "row":
		return " rows"
	}
	return " " + string(p.Unit)
}

// spanText is the refusal of a value that cannot be, with the reason.
func (c *turn) spanText(p listen.Problem) string {
	card, _ := c.book.Key(p.Key)
	if !card.HasSpan {
		return fmt.Sprintf("I read %s for the %s, which cannot be. %s", trimNum(p.Low), c.voice().Label(p.Key), c.tryThis())
	}
	text := fmt.Sprintf("I read %s for the %s. It can be %s; mostly it is %s.",
		c.exact(p.Key, p.Low, p.Unit), card.Label, c.span(p.Key, card.Possible), c.span(p.Key, card.Usual))
	if double := p.Low.Add(p.Low); p.Key == engine.Neck && p.Low.Less(card.Possible[0]) && !double.Less(card.Usual[0]) && !card.Usual[1].Less(double) {
		text += fmt.Sprintf(" If that was measured flat, from side to side, it is twice as much all round: *neck %s*.", c.exact(p.Key, double, p.Unit))
	}
	return text + " " + fmt.Sprintf("For example: *%s*.", c.exampleFor(p.Key))
}

// example is a line that works at this point.
func (c *turn) example() string {
	q := c.open(c.s)
	switch q {
	case "":
		if c.s.Making.On {
			return "next"
		}
		if c.s.Unit == "in" {
			return "neck 16 1/2 in"
		}
		return "neck 42 cm"
	case "keep":
		return "and with 2x2"
	}
	card, _ := c.book.Key(questionKey(q))
	return c.exampleOf(card)
}

func (c *turn) tryFor(k engine.Key) string { return fmt.Sprintf("For example: *%s*.", c.exampleFor(k)) }

func (c *turn) tryThis() string { return fmt.Sprintf("For example: *%s*.", c.example()) }

// lost: nothing could be made of the line, or only a part of it.
func (c *turn) lost() string {
	if len(c.m.Keys) > 0 {
		label := c.voice().Label(c.m.Keys[0])
		if card, ok := c.book.Result(c.m.Keys[0]); ok {
			return fmt.Sprintf("I heard the %s, but not what about it. To hear it: *what is the %s*.", label, card.Label)
		}
		if engine.IsNumber(c.m.Keys[0]) {
			c.wanted = c.m.Keys[0] // a lone number after it is that
		}
		if e := c.exampleFor(c.m.Keys[0]); e != "" {
			return fmt.Sprintf("I heard the %s, but not what about it. To set it: *%s*. To hear it: *show my answers*, or *plan*.", label, e)
		}
		return fmt.Sprintf("I heard the %s, but not what about it. Ask *why the %s*, or say *plan*.", label, label)
	}
	if s := c.elsewhere(); s != "" {
		return s
	}
	if c.m.HasFig {
		return fmt.Sprintf("I read the number %s, but not what it is for. For example: *%s*.", trimNum(c.m.Figure), c.example())
	}
	return "I did not understand that; nothing has changed. " + c.tryThis()
}

// elsewhere names the one thing, other than the open question, that a lone
// length could be meant for.
func (c *turn) elsewhere() string {
	q := c.open(c.s)
	if !c.m.HasFig || q == "" || q == "keep" || c.m.FigUnit != "cm" && c.m.FigUnit != "in" {
		return ""
	}
	cm := c.m.Figure
	if c.m.FigUnit == "in" {
		cm = cm.Mul(engine.Frac(254, 100))
	}
	var fits []engine.Key
	for _, k := range []engine.Key{engine.Neck, engine.Depth} {
		if c.judge(k, cm) == usual && !c.s.Said.Has(k) && string(k) != q {
			fits = append(fits, k)
		}
	}
	if len(fits) != 1 {
		return ""
	}
	said := c.exact(fits[0], cm, c.m.FigUnit)
	return fmt.Sprintf("I read %s, which the open question cannot take. If it is the %s, say *%s %s*.", said, c.voice().Label(fits[0]), fits[0], said)
}

// forms lists what the open question takes.
func (c *turn) forms() string {
	switch c.open(c.s) {
	case "garment":
		return "I take *cardigan* or *pullover*."
	case "gauge":
		return "I take *28 stitches and 40 rows*, *7 sts 10 rows per inch*, *28/40*, or *40 stitches measure 14.2 cm and 60 rows 15 cm*."
	case "neck":
		return "I take *40 cm*, *16 in*, *15 1/2 inches*, or the body's own neck: *my neck measures 37 cm*."
	case "rib":
		return "I take *1x1*, *2x1*, *k2 p2*, any knit x purl, or *plain*."
	case "depth":
		return "I take *3 cm*, *1 1/4 in*, or rows: *11 rows a layer*."
	case "keep":
		return "I take *keep*, *drop*, or another *what if*."
	}
	return "I take changes (*neck 42 cm*), questions (*how many rows*, *why 97*), and *what if*."
}

// wayOut offers to leave the question for now.
func (c *turn) wayOut() string {
	if q := c.open(c.s); q != "" && q != "keep" {
		return "You can say *skip* and come back to this, or *help*."
	}
	return "Say *help* for examples, or *plan* to see where you stand."
}

// skipQuestion leaves the open question for later.
func (c *turn) skipQuestion() (State, Reply) {
	q := c.open(c.s)
	if q == "" || q == "keep" {
		return c.s, c.reply("step", "No question is open.")
	}
	next := c.s
	next.Skipped = append(append([]string(nil), c.s.Skipped...), q)
	c.s = c.s.changed(next)
	return c.s, c.reply("step", "Left open: "+strings.ReplaceAll(q, "_", " ")+". Say it whenever you know it.")
}
