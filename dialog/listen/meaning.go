package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// Kind says what a line does.
type Kind string

// The kinds of a line. Those that the JSON contract names carry its word.
const (
	Nothing   Kind = ""          // an empty line: take the shown default
	Values    Kind = "values"    // values said: answers and changes alike
	WhatIf    Kind = "whatif"    // values supposed
	Keep      Kind = "keep"      // keep the what-if
	Drop      Kind = "drop"      // drop it
	Why       Kind = "why"       // why a number, or why not another
	Number    Kind = "number"    // a number asked for
	Compare   Kind = "compare"   // choices side by side
	Backwards Kind = "backwards" // a number asked for from another one
	Shake     Kind = "shake"     // what a small error does
	Measure   Kind = "measure"   // how to measure, what is usual, why asked
	HowTo     Kind = "howto"
	Trouble   Kind = "trouble"
	Step      Kind = "step"
	Show      Kind = "show"
	Undo      Kind = "undo"
	Notebook  Kind = "notebook"
	Help      Kind = "help"
	Unclear   Kind = "unclear"
	Parts     Kind = "parts" // a question about the yoke and its chart, or a yarn count
	After     Kind = "after" // what the finished band measures
	Outside   Kind = "outside"
	Chat      Kind = "chat"  // a greeting, thanks, a nod
	Vague     Kind = "vague" // more or less of something, without how much
)

// Set is one value said for one thing. The notebook keeps the last ones.
type Set struct {
	Key     engine.Key     `json:"key"`
	Value   engine.Num     `json:"value,omitzero"` // in the unit of Key
	Rib     engine.Rib     `json:"rib,omitzero"`
	Garment engine.Garment `json:"garment,omitempty"`
	Text    string         `json:"text,omitempty"` // of a key that is a word or a list
	// Relative: Value is to be added to what stands ("2 cm bigger").
	Relative bool `json:"relative,omitempty"`
	// Times: Value multiplies what stands ("twice as deep").
	Times bool `json:"times,omitempty"`
	// Over: Value is the width, cm, of so many stitches, and its share of their
	// plain width is meant.
	Over int `json:"over,omitempty"`
	// Wide: Value is a width, cm, and the stitches that fill it are meant.
	Wide bool `json:"wide,omitempty"`
	// Begin: a dial number that the band's first row is knitted at.
	Begin bool `json:"begin,omitempty"`
	// Unit is the unit the value was said in; Bare marks a number without
	// one, whose unit was chosen because it is plausible.
	Unit quantity.Unit `json:"unit,omitempty"`
	Bare bool          `json:"bare,omitempty"`
	// Hedged marks "about 40".
	Hedged bool `json:"hedged,omitempty"`
	// InAll: a count of rows for both layers together.
	InAll bool `json:"in_all,omitempty"`
	// Near is how many words lie between the number and what names its key;
	// 0 where the open question or the unit alone decided.
	Near int `json:"near,omitempty"`
}

// Move is where the knitter wants to go, or says she is, in the making.
type Move struct {
	What   string   // next finished back where repeat skip start done undone row ripped latched way goto spoils
	Count  int      // rows done
	Row    int      // the row she is on
	Needle string   // the needle she has come to
	Except []string // latched, all-but: needles that are not done
	Step   string   // the step's id
	Done   bool     // row: it is knitted, not being knitted
	Begun  bool     // latched: the needle is begun, and so not done
	Along  string   // latched: the steps along the needles it may be ("latch", "hem rehang")
	Way    string   // way: the side from which the columns are worked
}

// Problem says why a line has no meaning, with the parts of the sentence.
type Problem struct {
	Code  string // "range", "two-readings", "no-unit", "negative", ...
	Read  string // what was readable
	Key   engine.Key
	Keys  []engine.Key // the candidates
	Low   engine.Num
	High  engine.Num
	Unit  quantity.Unit
	Count int
}

// Fix is a spelling correction that was needed to understand the line.
type Fix struct{ From, To string }

// Meaning is what a line says.
type Meaning struct {
	Kind    Kind
	Sets    []Set
	First   Kind         // Keep or Drop, where the what-if on the table is settled before the rest
	Keys    []engine.Key // the things asked about
	Topic   string       // "usual", "how", "why-asked", "dont-know"; show: what; notebook: what; why: "not", "from"
	Figure  engine.Num   // "why 97", "what dial on row 5"
	HasFig  bool
	FigUnit quantity.Unit
	Part    string // "first", "last", "row": which part of a list
	Needle  string
	In      quantity.Unit // the answer is wanted in inches or cm
	Card    string        // how-to or trouble id
	Other   string        // the trouble that sounds alike
	Alike   []string      // of a line not understood: titles of the cards nearest to it
	Choices [][]Set       // compare: one list of sets a choice
	Move    Move          //
	Name    string        // notebook: project name
	Name2   string        // notebook: second name
	Count   int           // undo: how many
	Fixes   []Fix         //
	Notes   []string      // codes of what was chosen silently otherwise: "hedged"
	Then    string        // what the line asks for besides, to be heard once its values stand
	Left    []string      // numbers, as typed, that nothing was made of
	Problem Problem
	Thread  Thread   // topic yarn-count
	Vague   Ask      // of kind Vague
	Slip    Slip     // of kind Trouble
	After   Finished // of kind After
	Whom    engine.Whom
	Worn    bool // Whom is said
}

// Ask is a change wished without an amount ("a bit deeper"), which is asked
// for: the next lone amount belongs to it.
type Ask struct {
	Key      engine.Key `json:"key"`      // neck, depth or band_stitches
	Sign     int        `json:"sign"`     // +1 more, -1 less; 0 where nothing is asked
	Supposed bool       `json:"supposed"` // as a what-if
}

// Context is all that listening may know of the conversation.
type Context struct {
	Open   string        // key of the open question, "gauge", "keep" or ""
	Unit   quantity.Unit // "cm" or "in": the knitter's own so far
	Making bool          // she stands at the machine
	Chart  bool          // a colour chart is known
	Walk   bool          // she walks its rows
	Holes  bool          // buttonholes are planned
	Closed bool          // it is a pullover
	Topic  engine.Key    // what the last turn was about, for "2 cm more"
	// Confirm: a doubtful value was just asked about, so yes and no are answers.
	Confirm bool
	// Amount: it was just asked by how much something should change.
	Amount  Ask
	Wanted  engine.Key // what it was just asked to be told
	Least   engine.Num // a lone number up to it is not taken for Wanted: it may be another's
	Step    string     // id of the step she is at, "" away from the machine
	Knitted bool       // all rows of the band are knitted
	Off     bool       // the band is sewn off
	Apart   [2]string  // ids of the two troubles being told apart, "" where none are
}

// setsMeaning is a meaning with what the line sets, Unclear where that is
// doubtful.
func (r *reading) setsMeaning(k Kind) Meaning {
	if r.b.problem.Code != "" {
		return r.unclear()
	}
	m := Meaning{Kind: k, Sets: dedupe(r.b.sets), Left: r.leftOut()}
	for _, s := range m.Sets {
		if s.Hedged {
			m.Notes = append(m.Notes, "hedged")
			break
		}
	}
	return m
}

// leftOut is the numbers, as they were typed, that nothing was made of: what is
// taken is said back, and what is not as well.
func (r *reading) leftOut() []string {
	var out []string
	for _, i := range r.b.free() {
		q := r.l.tokens[i].q
		if q.Ordinal || q.Words || q.Rib || q.Unit == "" && q.Value.Equal(engine.Int(1)) {
			continue
		}
		out = append(out, strings.TrimSpace(r.l.text[q.Start:q.End]))
	}
	return out
}

func dedupe(in []Set) []Set {
	var out []Set
	for _, s := range in {
		dup := false
		for _, o := range out {
			dup = dup || o.Key == s.Key && same(o, s)
		}
		if !dup {
			out = append(out, s)
		}
	}
	return out
}

// OpenOf is the question that a key answers.
func OpenOf(k engine.Key) string {
	switch k {
	case engine.StitchGauge, engine.RowGauge:
		return "gauge"
	case engine.NeckBody:
		return "neck"
	case engine.DepthRows:
		return "depth"
	}
	return string(k)
}
