package dialog

import (
	"strings"

	"foldrow/dialog/listen"
	"foldrow/engine"
)

// onValues: answers to the open question and changes to anything named.
func (c *turn) onValues() (State, Reply) {
	if c.m.Topic == "revise" {
		return c.onRevise()
	}
	before := c.base()
	a := c.apply(before, c.m.Sets)
	if a.problem.Code == "" && odd(a.in, a.keys) && !sameSets(c.s.Doubt, c.m.Sets) && (c.open(c.s) == "gauge" || len(a.keys) > 1) {
		next, r := c.onUnclear(listen.Problem{Code: "ratio", Key: engine.RowGauge, Low: a.in.Num(engine.StitchGauge), High: a.in.Num(engine.RowGauge)})
		next.Doubt = c.m.Sets
		return next, r
	}
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	if why := c.farFromStage(a); why != "" {
		sets := c.m.Sets
		next, r := c.unsure(why)
		next.Doubt = sets
		return next, r
	}
	if p := c.blockedByMaking(a); p != "" {
		return c.s, c.reply("unclear", p)
	}
	return c.take(a, before)
}

// take makes the values the standing ones.
func (c *turn) take(a applied, before engine.Inputs) (State, Reply) {
	wasOpen := c.open(c.s)
	kind := "change"
	for _, k := range a.keys {
		if listen.OpenOf(k) == wasOpen {
			kind = "answer"
		}
	}
	if c.s.OnTable && a.in == c.s.Said {
		return c.backAtPlan(a)
	}
	next, prev := c.s, c.supposedBefore()
	if c.s.OnTable {
		// a change said while a what-if stands belongs to it
		kind = "whatif"
		next.Table = a.in
		next.Chain = joined(next.Chain, a.keys)
	} else {
		next.Said = a.in
	}
	next.Unit = c.unitAfter()
	next.Doubt, next.Last, next.Topic = nil, c.m.Sets, topicOf(a.keys)
	next.Skipped = stillSkipped(next.Skipped, a.keys)
	c.s = c.s.changed(next)
	c.s.Doubt = c.offeredNeck(a.keys)
	for _, k := range reported(a.keys, next) {
		c.change(k, a.in)
	}
	if kind == "whatif" {
		return c.s, c.reply(kind, c.echo(a)+c.advice(a.keys)+"\n\n"+c.differencesFrom(prev))
	}
	return c.s, c.reply(kind, c.afterChange(a, before, wasOpen))
}

func reported(keys []engine.Key, s State) []engine.Key {
	if s.OnTable {
		return s.Chain
	}
	return keys
}

// stillSkipped is the questions left for later that these values do not answer.
func stillSkipped(skipped []string, keys []engine.Key) []string {
	var out []string
	for _, q := range skipped {
		hit := false
		for _, k := range keys {
			hit = hit || listen.OpenOf(k) == q
		}
		if !hit {
			out = append(out, q)
		}
	}
	return out
}

// unitAfter is the knitter's unit once this line has been heard.
func (c *turn) unitAfter() string {
	for i := len(c.m.Sets) - 1; i >= 0; i-- {
		if u := c.m.Sets[i].Unit; (u == "cm" || u == "in") && !(c.m.Sets[i].Bare && c.s.Unit != "") {
			return string(u) // one chosen for a bare number is no word against her own
		}
	}
	return c.s.Unit
}

// topicOf is what "2 cm more" will mean next.
func topicOf(keys []engine.Key) engine.Key {
	if len(keys) == 0 {
		return ""
	}
	return keys[len(keys)-1]
}

// afterChange is what to show once values were taken: the plan when it is
// first whole, the differences when it was whole before.
func (c *turn) afterChange(a applied, before engine.Inputs, wasOpen string) string {
	text := c.echo(a) + c.advice(a.keys)
	open := c.open(c.s)
	block := c.frontText(c.plan(), a.keys)
	if block != "" {
		text += "\n\n" + block
	}
	switch {
	case open != "":
		return text + c.partText(c.plan(), a.keys)
	case wasOpen != "":
		c.wantsHead()
		return text + "\n\n" + c.voice().Plan(c.plan(), c.s.Said) + "\n\n" + c.whatNext()
	}
	if part := c.partText(c.plan(), a.keys); part != "" {
		return text + part
	}
	d := c.voice().Differences(c.solve(before), c.plan())
	if block != "" && asksFronts(a.keys) {
		return strings.TrimSpace(text + "\n\n" + c.frontChange(c.solve(before), c.plan(), a.keys))
	}
	switch {
	case d == "" && hasKey(a.keys, engine.YarnLeft) && c.lasts(c.plan()) != "":
		d = c.lasts(c.plan())
	case asksFronts(a.keys) && (d == "" || block == "" && !before.HasFronts()):
		d = c.frontNotYet(a.keys[len(a.keys)-1])
	case d == "":
		d = "The plan stays as it is."
	}
	return text + "\n\n" + d
}

func (c *turn) whatNext() string {
	return "Now say *why* of any number, *what if* of anything, *show the needles*, *show the tension*, *show the band from the side*, *print it*, *start knitting*."
}

// onRevise: "no, I meant rows" says the last line again with another unit.
func (c *turn) onRevise() (State, Reply) {
	if len(c.s.Last) == 0 || c.s.before == nil {
		return c.onUnclear(listen.Problem{Code: "nothing-to-revise"})
	}
	was := c.s.Last[len(c.s.Last)-1]
	line := c.again(was)
	if line == "" {
		return c.onUnclear(listen.Problem{Code: "nothing-to-revise"})
	}
	stood := c.s
	c.s = *stood.before
	c.s.Turn = stood.Turn
	c.m = c.hear(line, c.context())
	if c.m.Kind == listen.Values {
		if next, r := c.onValues(); r.Kind != "unclear" {
			return next, r
		}
	}
	c.s, c.changes = stood, nil // what cannot be meant takes nothing back
	if c.m.Kind != listen.Values {
		return c.onUnclear(c.m.Problem)
	}
	return c.onValues()
}

// again is the last value as a line with the unit that was meant.
func (c *turn) again(was listen.Set) string {
	number := was.Value
	if was.Unit == "in" && was.Key != engine.DepthRows {
		number = was.Value.Div(engine.Frac(254, 100))
	}
	switch c.m.Name {
	case "row":
		if was.Key == engine.Depth {
			return number.String() + " rows a layer"
		}
		if was.Key == engine.StitchGauge {
			return number.String() + " rows in 10 cm"
		}
	case "st":
		if was.Key == engine.RowGauge {
			return number.String() + " stitches in 10 cm"
		}
	case "cm", "in":
		if was.Key == engine.DepthRows {
			return "depth " + number.String() + " " + c.m.Name
		}
		return c.voice().Label(was.Key) + " " + number.String() + " " + c.m.Name
	case "":
		for _, k := range c.m.Keys {
			return c.voice().Label(k) + " " + number.String()
		}
	}
	return ""
}

func sameSets(a, b []listen.Set) bool {
	if len(a) == 0 || len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Key != b[i].Key || a[i].Text != b[i].Text || !a[i].Value.Equal(b[i].Value) {
			return false
		}
	}
	return true
}
