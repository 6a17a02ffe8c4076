package dialog

import (
	"cmp"
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// onWhatIf puts a second plan on the table, going on from the one that lies
// there, and shows only what differs from the kept one.
func (c *turn) onWhatIf() (State, Reply) {
	if q := c.open(c.s); q != "" && q != "keep" {
		return c.supposeEarly()
	}
	a := c.apply(c.base(), c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	if p := c.blockedByMaking(a); p != "" {
		if w, ok := c.atMachine(); ok && (block{w: w}).sewnOff() {
			return c.supposeForNext(a)
		}
		return c.s, c.reply("unclear", p)
	}
	if c.s.OnTable && a.in == c.s.Said {
		return c.backAtPlan(a)
	}
	prev := c.supposedBefore()
	next := c.s.supposing(a.in, joined(c.s.Chain, a.keys))
	next.Unit, next.Topic, next.Last = c.unitAfter(), topicOf(a.keys), nil
	c.s = next
	for _, k := range next.Chain {
		c.change(k, a.in)
	}
	return c.s, c.reply("whatif", c.echo(a)+c.advice(a.keys)+"\n\n"+c.differencesFrom(prev))
}

// supposedBefore is the what-if that lies on the table before this line goes on
// with it, nil where none does.
func (c *turn) supposedBefore() *engine.Plan {
	if !c.s.OnTable {
		return nil
	}
	return c.plan()
}

// mostTogether is how many lines of differences from the plan are shown again
// with each further step of a what-if; beyond it the step alone is shown.
const mostTogether = 16

// differencesFrom is what differs from the plan and, where the what-if went on
// from prev, what this step changed.
func (c *turn) differencesFrom(prev *engine.Plan) string {
	all := c.differences()
	if prev == nil {
		return foremost(all)
	}
	n := strings.Count(all, "\n| ") - 1 // but for the line under the heading
	if n <= mostTogether {
		return c.voice().Further(prev, c.plan()) + "\n\n" + all
	}
	step := c.voice().Differences(prev, c.plan())
	if step == "" {
		step = "This step changes no further number."
	} else {
		step = "This step:\n\n" + step
	}
	return step + fmt.Sprintf("\n\nAgainst the plan %d numbers differ: *show the differences* lists them.", n)
}

// mostRows is how many differences of a plan with yoke, chart and front bands
// are shown before the rest is left to be asked for.
const mostRows = 12

// foremost leaves the first rows of a long table, which are the band's own.
func foremost(text string) string {
	lines := strings.Split(text, "\n")
	rows := strings.Count(text, "\n| ") - 1
	if !strings.HasPrefix(text, "|") || rows <= mostTogether {
		return text
	}
	const head = 2
	kept := append(lines[:head+mostRows:head+mostRows], "",
		fmt.Sprintf("%d more numbers differ: *show the differences* lists all.", rows-mostRows))
	return strings.Join(append(kept, lines[head+rows:]...), "\n")
}

// backAtPlan: "no, stay with 1x1" supposes what stands already, so that nothing
// lies on the table any more.
func (c *turn) backAtPlan(a applied) (State, Reply) {
	c.s = c.s.asBefore()
	return c.s, c.reply("drop", c.echo(a)+"\n\nThat is the plan as it stands: the what-if is off the table.")
}

// supposeEarly: before the five questions are answered there is no plan to
// compare with, so a supposition serves this answer only.
func (c *turn) supposeEarly() (State, Reply) {
	a := c.apply(c.s.Said, c.m.Sets)
	if a.problem.Code != "" {
		return c.onUnclear(a.problem)
	}
	for _, k := range a.keys {
		c.change(k, a.in)
	}
	p := c.solve(a.in)
	text := c.echo(a) + "\n\n"
	switch short := c.voice().Short(p); {
	case short != "":
		text += "That would give " + short + "."
	case p.BandStitches > 0:
		text += fmt.Sprintf("That would give %d stitches, neck %s. The rows are not known yet; nothing is set. Ask it again once the questions are answered, and both plans are compared.",
			p.BandStitches, c.voice().Len(p.NeckResult.Float()))
	default:
		text += "Too little is told yet to say what that does, and nothing is set. Ask it again once the questions are answered."
	}
	return c.s, c.reply("whatif", text)
}

// supposeForNext: a band that is sewn off stays as it is, so what would have
// been otherwise is shown and not laid on the table.
func (c *turn) supposeForNext(a applied) (State, Reply) {
	for _, k := range a.keys {
		c.change(k, a.in)
	}
	c.about = &a.in
	d := c.voice().Differences(c.kept(), c.solve(a.in))
	if d == "" {
		d = "Nothing in the plan changes."
	}
	return c.s, c.reply("whatif", c.echo(a)+"\n\n"+d+"\n\nThe neckband is sewn off, so this is only to compare, or for the next one; the plan stays as it was knitted.")
}

func joined(keys, more []engine.Key) []engine.Key {
	out := append([]engine.Key(nil), keys...)
	for _, k := range more {
		if k == engine.Depth {
			out = engine.WithoutKey(out, engine.DepthRows)
		}
		if k == engine.DepthRows {
			out = engine.WithoutKey(out, engine.Depth)
		}
		out = append(engine.WithoutKey(out, k), k)
	}
	return out
}

func (c *turn) differences() string {
	d := c.voice().Differences(c.kept(), c.plan())
	if d == "" {
		return "Nothing in the plan changes."
	}
	if c.s.Making.On {
		d += "\n\n" + c.doneSoFar()
	}
	return d
}

// onKeep makes the what-if the plan.
func (c *turn) onKeep() (State, Reply) {
	if len(c.s.Doubt) > 0 {
		c.m.Sets = c.s.Doubt
		return c.onValues()
	}
	if !c.s.OnTable {
		return c.s, c.reply("keep", "There is no what-if on the table; the plan stands as it is.")
	}
	return c.s, c.reply("keep", c.takeTable()+". The plan is now "+c.voice().Short(c.plan())+".")
}

// takeTable makes the what-if the plan and says what was kept.
func (c *turn) takeTable() string {
	next := c.s.settled()
	next.Said = c.s.Table
	chain := c.s.Chain
	c.s = c.s.asBefore().changed(next)
	var parts []string
	for _, k := range chain {
		c.change(k, c.s.Said)
		parts = append(parts, c.voice().Label(k)+" "+c.voice().Value(c.plan(), k))
	}
	return "Kept: " + strings.Join(parts, ", ")
}

// onDrop clears the table.
func (c *turn) onDrop() (State, Reply) {
	if len(c.s.Doubt) > 0 {
		c.s.Doubt = nil
		return c.s, c.reply("drop", "Left out, then.")
	}
	if !c.s.OnTable {
		return c.onUnclear(listen.Problem{Code: "nothing-on-table"})
	}
	return c.s, c.reply("drop", c.clearTable()+". The plan stays at "+c.voice().Short(c.plan())+".")
}

// clearTable drops the what-if and says so.
func (c *turn) clearTable() string {
	c.s = c.s.asBefore()
	return "Dropped"
}

// onDecided: "keep it, but the neck 39" settles what lies on the table and then
// answers the rest; where the rest cannot be, nothing is settled either.
func (c *turn) onDecided() (State, Reply) {
	before, decide := c.s, c.takeTable
	if c.m.First == listen.Drop {
		decide = c.clearTable
	}
	settled := decide()
	c.m.First = ""
	next, r := c.run()
	if r.Kind == "unclear" {
		c.s, c.changes = before, nil
		return c.run()
	}
	r.Markdown = settled + ".\n\n" + r.Markdown
	return next, r
}

// onUndo steps back over so many changes and names what it took back.
func (c *turn) onUndo() (State, Reply) {
	if c.m.Topic == "redo" {
		return c.onRedo()
	}
	left := c.s // with its what-if, to be brought back
	if c.s.OnTable {
		c.s = c.s.asBefore()
		if c.m.Count <= 1 {
			return c.s, c.reply("undo", "The what-if is off the table; the plan stands as before.")
		}
		c.m.Count--
	}
	now, steps := c.s, 0
	for steps < c.m.Count && now.before != nil {
		turn := now.Turn
		now = *now.before
		now.Turn, now.Misses = turn, 0
		steps++
	}
	if steps == 0 {
		return c.s, c.reply("undo", "There is nothing to take back.")
	}
	stood, said, was := c.kept(), c.s.Said, c.s.Making
	c.s = now
	v := c.voice() // in the unit that holds again
	v.Unit = quantity.Unit(cmp.Or(now.Unit, left.Unit, string(v.Unit)))
	taken := v.Changed(stood, said, now.Said)
	c.s.undone = &left
	c.s = c.s.asBefore()
	text := "Taken back"
	if steps > 1 {
		text += fmt.Sprintf(" (%s)", answer.Count(steps, "step", "steps"))
	}
	switch {
	case taken != "":
		text += ": " + taken + "."
	case was != now.Making && c.whereText() != "":
		text += ": " + c.whereText()
	case was != now.Making:
		text += ": you are not at the machine any more."
	default:
		text += "."
	}
	if short := c.voice().Short(c.plan()); short != "" && c.open(c.s) == "" {
		text += " The plan is " + short + "."
	}
	return c.s, c.reply("undo", text)
}
