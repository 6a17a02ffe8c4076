// Package dialog is the conversation: what was said and where it stands go in,
// the new standing and the reply come out. Turn is a pure function; files,
// clock and terminal stay outside.
//
// The way of one line: listen.Read gives its meaning, one method of turn per
// kind of meaning gives new state and facts, package answer writes the facts
// as Markdown, and reply makes the Reply.
package dialog

import (
	"strings"
	"sync"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// Reply is what one turn gives back: the facts for scripts and the Markdown
// for the knitter, both made from the same plan. The field names are those of
// the JSON Lines contract. Inputs and Results are empty until Facts lays them
// out.
type Reply struct {
	Turn     int            `json:"turn"`
	Said     string         `json:"said"`
	Kind     string         `json:"kind"`
	Changes  map[string]any `json:"changes"`
	Asks     *string        `json:"asks"`
	Answer   map[string]any `json:"answer,omitempty"`
	Inputs   map[string]any `json:"inputs"`
	Results  map[string]any `json:"results"`
	Cautions []string       `json:"cautions"`
	Markdown string         `json:"markdown"`

	// Order is what the notebook is asked to do, for whoever keeps it.
	Order Order `json:"-"`

	plan *engine.Plan
}

// Order is a wish about the notebook, which the conversation itself cannot
// fulfil: it touches no files.
type Order struct {
	What     string // "", "leave", "save", "list", "open", "rename", "copy", "delete", "write", "page"
	Name, To string
}

// Talk is the conversation's fixed part: what it knows and what it understands.
// It does not change and may be shared.
type Talk struct {
	book    *rules.Book
	lexicon func() (*listen.Lexicon, error)
}

// Start makes a conversation from the trade's knowledge. An error names the
// phrasing in rules/ that cannot be read.
func Start(book *rules.Book) (*Talk, error) {
	t := Soon(book)
	return t, t.Ready()
}

// Soon is Start without waiting: the greeting and the first question need no
// words to be known, and nobody answers them in the few milliseconds that the
// words take. Ready must be asked before the first turn.
func Soon(book *rules.Book) *Talk {
	t := &Talk{book: book, lexicon: sync.OnceValues(func() (*listen.Lexicon, error) { return listen.NewLexicon(book) })}
	go t.lexicon()
	return t
}

// Ready waits until lines can be understood.
func (t *Talk) Ready() error {
	_, err := t.lexicon()
	return err
}

// hear gives the meaning of a line.
func (t *Talk) hear(line string, ctx listen.Context) listen.Meaning {
	lex, err := t.lexicon()
	if err != nil {
		return listen.Meaning{Kind: listen.Unclear, Problem: listen.Problem{Code: "not-understood"}}
	}
	return lex.Read(line, ctx)
}

// Begin is the greeting and the first question.
func (t *Talk) Begin() (State, Reply) {
	var s State
	c := t.at(s, "")
	return s, c.reply("show", "**foldrow** plans and guides the neckband. Five questions; answer in cm or inches, or ask *how?*, *what is usual?*, *why?* at any of them.")
}

// Welcome is the greeting where work goes on from an earlier day: one line on
// where it stands, what lies on the table, and the question that is open.
func (t *Talk) Welcome(s State) Reply {
	c := t.at(s, "")
	switch {
	case c.gist() == "":
		return c.goOn("")
	case c.voice().Short(c.kept()) != "":
		return c.goOn(" The plan: " + c.gist() + ".")
	}
	return c.goOn(" So far: " + c.gist() + ".")
}

// WelcomeBack is Welcome where the gist stands on the screen already.
func (t *Talk) WelcomeBack(s State) Reply { return t.at(s, "").goOn("") }

func (c *turn) goOn(gist string) Reply {
	text := "Back to work." + gist
	if where := c.whereText(); where != "" {
		text += " You were at: " + where
	}
	if c.s.OnTable {
		text += "\n\n" + c.supposed()
	}
	return c.reply("show", text)
}

// Turn takes one line. The state is as before, but for the count of turns,
// where the line is not understood.
func (t *Talk) Turn(s State, line string) (State, Reply) {
	s.Turn++
	s.Redone = false
	clean, _ := listen.Clean(line)
	c := t.at(s, clean)
	c.m = t.hear(line, c.context())
	only := c.m.In // a unit for this answer
	if only != "" {
		c.s.Unit = string(only)
	}
	c.beginsAt()
	next, reply := c.run()
	next.Wanted, next.Mild = c.wanted, c.mild
	if only != "" {
		next.Unit = s.Unit
	}
	next = c.withOffer(c.withMemo(c.withWarned(next)))
	reply.Markdown = c.withLeft(reply)
	if c.m.Then != "" && reply.Kind != "unclear" {
		return t.andThen(next, reply, c.m.Then, t.open(s))
	}
	return next, reply
}

// withLeft is the text of the reply with the numbers named that nothing was made of.
func (c *turn) withLeft(r Reply) string {
	if len(c.m.Left) == 0 || r.Kind == "unclear" || strings.Contains(r.Markdown, notTaken) {
		return r.Markdown
	}
	return c.notTaken() + "\n\n" + r.Markdown
}

// andThen answers what a line asks for besides its values, once they stand; a
// question about what was asked is of the question that was open before them.
func (t *Talk) andThen(s State, first Reply, then, asked string) (State, Reply) {
	c := t.at(s, first.Said)
	question := c.question()
	ctx := c.context()
	if asked != "" && asked != "keep" {
		ctx.Open = asked
	}
	c.m = t.hear(then, ctx)
	if c.m.Kind == listen.Measure && len(c.m.Keys) == 0 && asked != "" && ctx.Open == asked {
		c.m.Keys = []engine.Key{questionKey(asked)}
	}
	if c.m.Kind != listen.Measure && ctx.Open != t.open(s) {
		c.m = t.hear(then, c.context())
	}
	next, r := c.run()
	if r.Kind == "unclear" {
		return s, first
	}
	next.Wanted, next.Mild = c.wanted, c.mild
	r.Kind, r.Changes = first.Kind, first.Changes
	r.Markdown = strings.TrimSuffix(first.Markdown, "\n\n"+question) + "\n\n" + r.Markdown
	if r.Answer == nil {
		r.Answer = first.Answer
	}
	return c.withWarned(next), r
}

// turn is one line being answered.
type turn struct {
	*Talk
	s    State
	said string
	m    listen.Meaning

	changes map[string]any
	answers map[string]any
	about   *engine.Inputs // inputs of the plan the reply is about, nil for the standing one
	order   Order
	wanted  engine.Key // what the reply asks to be told
	mild    bool       // it asks for it by the way
	more    []string   // cautions of the answer besides the plan's own
	warned  []Warned   // cautions that it says in full
	named   []string   // cautions that it only names
	solved  []*solved
	reset   bool // the place went back over rows: the dial stands where they left it
	came    bool // she has just come to the step that is shown
}

func (t *Talk) at(s State, said string) *turn {
	c := &turn{Talk: t, s: s, said: said}
	if s.memo != nil {
		c.solved = append(make([]*solved, 0, 3), s.memo)
	}
	return c
}

// withMemo is s with the plan that stands, so that the next turn need not work
// it out again; it goes with what was said and so can never be another's.
func (c *turn) withMemo(s State) State {
	if s.memo != nil && s.memo.said == s.Said {
		return s
	}
	s.memo = nil
	for i := range c.solved {
		if c.solved[i].said == s.Said {
			s.memo = c.solved[i]
		}
	}
	return s
}

func (c *turn) context() listen.Context {
	ctx := listen.Context{
		Open: c.open(c.s), Unit: quantity.Unit(c.s.Unit), Making: c.s.Making.On || c.s.Making.Chart > 0,
		Chart: c.base().Has(engine.KeyChart), Walk: c.s.Making.Chart > 0,
		Holes: c.base().Int(engine.Holes) > 0 || c.base().Has(engine.HoleSpacing), Closed: c.base().Garment == engine.Pullover,
		Topic: c.s.Topic, Confirm: len(c.s.Doubt) > 0, Amount: c.s.Amount, Wanted: c.s.Wanted, Apart: c.s.Apart,
	}
	if c.s.Mild {
		ctx.Least = c.plan().NeckWanted // a neck may be meant as well
	}
	if w, ok := c.atMachine(); ok {
		_, last := w.rowSteps()
		ctx.Step, ctx.Knitted = w.card().ID, w.at > last
		ctx.Off = w.m.Over || w.at > w.index("sew-off")
	}
	return ctx
}

func (c *turn) voice() answer.Voice {
	u := quantity.Unit(c.s.Unit)
	if u == "" {
		u = "cm"
	}
	return answer.Voice{Book: c.book, Unit: u}
}

// filled is said with the defaults of the trade under it.
func (t *Talk) filled(said engine.Inputs) engine.Inputs {
	return t.book.Filled(said)
}

// plan is the plan that stands: the what-if's while one is on the table.
func (c *turn) plan() *engine.Plan { return c.solve(c.base()) }

// base is the inputs that talk is about just now.
func (c *turn) base() engine.Inputs {
	if c.about != nil {
		return *c.about
	}
	if c.s.OnTable {
		return c.s.Table
	}
	return c.s.Said
}

// kept is the plan that was decided on.
func (c *turn) kept() *engine.Plan { return c.solve(c.s.Said) }

// solve is the plan for what was said. One turn asks for the same one or two
// plans many times, so they are remembered until it is answered.
func (c *turn) solve(said engine.Inputs) *engine.Plan {
	for _, have := range c.solved {
		if have.said == said {
			return have.plan
		}
	}
	p := engine.Solve(c.filled(said))
	c.solved = append(c.solved, &solved{said, p})
	return p
}

type solved struct {
	said engine.Inputs
	plan *engine.Plan
}
