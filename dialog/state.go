package dialog

import (
	"encoding/json"

	"foldrow/dialog/listen"
	"foldrow/engine"
)

// State is all that the conversation remembers between two lines. It is a
// value: a turn makes a new one. The fields are what the notebook keeps.
type State struct {
	Turn int
	Said engine.Inputs // what the knitter said, kept

	Unit string // "cm" or "in": her own unit so far, "" where none was said

	OnTable bool          // a what-if stands
	Table   engine.Inputs // its inputs
	Chain   []engine.Key  // what was supposed in it, in order
	Aside   *Aside        // how talk stood before it, nil where no what-if stands

	Skipped []string     // questions left for later
	Misses  int          // lines not understood in a row
	Topic   engine.Key   // what was spoken of last
	WhyKey  engine.Key   // what the last why was about
	Last    []listen.Set // what the last line set, for "no, I meant rows"
	Doubt   []listen.Set // values asked about: a yes takes them
	Amount  listen.Ask   // a change whose amount was asked for
	Wanted  engine.Key   // what the last reply asked to be told, so that a lone number is that
	Mild    bool         // it asked for Wanted by the way
	Apart   [2]string    // two troubles being told apart
	Making  Making       // where she stands at the machine
	Warned  []Warned     // cautions said in full of late

	Depth  int     // how many changes can be undone
	Redone bool    // this turn brought back what an undo had taken
	before *State  // the state before the last change
	memo   *solved // the plan that stands, worked out in the turn before
	undone *State  // the state that the last undo left; nil once something else has changed
}

// Aside is what a what-if changes in how one talks and not in the plan, to be
// given back when it is dropped.
type Aside struct {
	Unit   string       `json:"unit,omitempty"`
	Topic  engine.Key   `json:"topic,omitempty"`
	WhyKey engine.Key   `json:"why,omitempty"`
	Last   []listen.Set `json:"last,omitempty"`
}

// supposing is s with a what-if on the table.
func (s State) supposing(in engine.Inputs, chain []engine.Key) State {
	if !s.OnTable {
		s.Aside = &Aside{s.Unit, s.Topic, s.WhyKey, s.Last}
	}
	s.OnTable, s.Table, s.Chain = true, in, chain
	return s
}

// settled is s without its what-if, which was kept.
func (s State) settled() State {
	s.OnTable, s.Table, s.Chain, s.Aside = false, engine.Inputs{}, nil, nil
	return s
}

// asBefore is s without its what-if, as it stood before it.
func (s State) asBefore() State {
	if s.OnTable && s.Aside != nil {
		s.Unit, s.Topic, s.WhyKey, s.Last = s.Aside.Unit, s.Aside.Topic, s.Aside.WhyKey, s.Aside.Last
	}
	return s.settled()
}

// Making is where the knitter stands in the order of work.
type Making struct {
	On     bool   `json:"on,omitempty"`
	Step   string `json:"step,omitempty"`   // id of the step
	Piece  int    `json:"piece,omitempty"`  // piece of a band wider than the bed, from 0
	Row    int    `json:"row,omitempty"`    // rows of the band knitted
	Column string `json:"column,omitempty"` // the last needle done in a step along the needles
	Done   int    `json:"done,omitempty"`   // how many are done there, in the order in which they are worked
	Way    string `json:"way,omitempty"`    // side from which the columns are latched, "" the left
	Over   bool   `json:"over,omitempty"`   // the last step is done
	Chart  int    `json:"chart,omitempty"`  // row of the colour chart to knit now, 0 away from it
	After  After  `json:"after,omitzero"`
}

// After is what the finished band measures, cm as exact text, "" where it was
// not said: kept for the next band in this yarn on this machine.
type After struct {
	Neck  string `json:"neck,omitempty"`  // round the join
	Bare  bool   `json:"bare,omitempty"`  // Neck is of the knitted piece, without the front bands' overlap
	Depth string `json:"depth,omitempty"` // folded
	Edge  string `json:"edge,omitempty"`  // round the free edge, relaxed
}

// stateJSON is the form of a State on disk: inputs as exact text, nothing
// that can be worked out again.
type stateJSON struct {
	Turn    int               `json:"turn"`
	Said    map[string]string `json:"said,omitempty"`
	Unit    string            `json:"unit,omitempty"`
	Table   map[string]string `json:"table,omitempty"`
	OnTable bool              `json:"on_table,omitempty"`
	Chain   []engine.Key      `json:"chain,omitempty"`
	Aside   *Aside            `json:"aside,omitempty"`
	Skipped []string          `json:"skipped,omitempty"`
	Misses  int               `json:"misses,omitempty"`
	Last    []listen.Set      `json:"last,omitempty"`
	Doubt   []listen.Set      `json:"doubt,omitempty"`
	Topic   engine.Key        `json:"topic,omitempty"`
	WhyKey  engine.Key        `json:"why,omitempty"`
	Apart   [2]string         `json:"apart,omitzero"`
	Amount  listen.Ask        `json:"amount,omitzero"`
	Wanted  engine.Key        `json:"wanted,omitempty"`
	Mild    bool              `json:"mild,omitempty"`
	Making  Making            `json:"making"`
	Warned  []Warned          `json:"warned,omitempty"`
	Depth   int               `json:"depth,omitempty"`
	Undone  bool              `json:"undone,omitempty"` // an undo can be taken back
	Redone  bool              `json:"redone,omitempty"`
}

// MarshalJSON writes the state for the notebook.
func (s State) MarshalJSON() ([]byte, error) {
	return json.Marshal(stateJSON{
		Aside: s.Aside,
		Turn:  s.Turn, Said: inputsText(s.Said), Unit: s.Unit, Table: inputsText(s.Table), OnTable: s.OnTable,
		Chain: s.Chain, Skipped: s.Skipped, Misses: s.Misses, Last: s.Last, Doubt: s.Doubt, Topic: s.Topic, WhyKey: s.WhyKey, Apart: s.Apart, Amount: s.Amount, Wanted: s.Wanted, Mild: s.Mild, Making: s.Making, Warned: s.Warned, Depth: s.Depth,
		Undone: s.undone != nil, Redone: s.Redone,
	})
}

// UnmarshalJSON reads what MarshalJSON wrote; values it does not know are
// left out rather than guessed.
func (s *State) UnmarshalJSON(b []byte) error {
	var j stateJSON
	if err := json.Unmarshal(b, &j); err != nil {
		return err
	}
	*s = State{
		Turn: j.Turn, Said: inputsOf(j.Said), Unit: j.Unit, Table: inputsOf(j.Table), OnTable: j.OnTable,
		Chain: j.Chain, Skipped: j.Skipped, Misses: j.Misses, Last: j.Last, Doubt: j.Doubt, Topic: j.Topic, WhyKey: j.WhyKey, Apart: j.Apart, Amount: j.Amount, Wanted: j.Wanted, Mild: j.Mild, Making: j.Making, Warned: j.Warned, Depth: j.Depth,
		Redone: j.Redone, Aside: j.Aside,
	}
	if j.Undone {
		s.undone = &State{} // to be found again among the states before it
	}
	return nil
}

func inputsText(in engine.Inputs) map[string]string {
	m := map[string]string{}
	for _, k := range engine.InputKeys() {
		if v := in.Value(k); v != "" {
			m[string(k)] = v
		}
	}
	return m
}

func inputsOf(m map[string]string) engine.Inputs {
	var in engine.Inputs
	for k, v := range m {
		if next, ok := in.Parse(engine.Key(k), v); ok {
			in = next
		}
	}
	return in
}

// Resume folds the states of a notebook, oldest first, into the last one, with
// every earlier one reachable by undo, down to the beginning that no notebook
// holds, and what was undone by redo.
func Resume(states []State) (State, bool) {
	if len(states) == 0 {
		return State{}, false
	}
	last := &State{}
	for _, s := range states {
		s.follow(last)
		last = &s
	}
	return *last, true
}

// follow links s to the state of the turn before it.
func (s *State) follow(last *State) {
	undone := s.undone != nil
	s.before, s.undone = nil, nil
	switch {
	case s.Redone && last.undone != nil:
		s.before, s.undone = last.undone.before, last.undone.undone
	case s.Depth > last.Depth:
		s.before = last
	default:
		s.before = last
		for s.before != nil && s.before.Depth >= s.Depth {
			s.before = s.before.before
		}
		if undone {
			s.undone = last.undone
			if s.Depth < last.Depth {
				s.undone = last
			}
		}
	}
}

// changed is next as the successor of s by a change that undo can take back.
func (s State) changed(next State) State {
	prev := s
	prev.undone, prev.memo = nil, nil
	next.before, next.undone, next.Depth = &prev, nil, s.Depth+1
	return next
}
