package main

import (
	"errors"

	"foldrow/dialog"
)

// guarded does f and reports whether it came to its end. It is a last net under
// faults of ours that nobody has found yet, so that one line costs nobody her
// evening; nothing may count on it, and what it catches is to be mended where it broke.
func guarded(f func()) (ok bool) {
	defer func() { ok = recover() == nil }()
	f()
	return
}

// unanswered is the reply to a line over which the program stumbled.
const unanswered = "This line could not be answered: there is a fault in the program. Nothing was changed by it, and what was said before stands. Try other words, or go on with something else."

// errFault says that the reading of lines stumbled.
var errFault = errors.New("there is a fault in the line editor")

// turn is one turn of the conversation from s. Where the program stumbled, ok is
// false, the state is s, and there is nothing to keep.
func (c *chat) turn(s dialog.State, said string) (next dialog.State, r dialog.Reply, ok bool) {
	if guarded(func() { next, r = c.talk.Turn(s, said) }) {
		return next, r, true
	}
	return s, dialog.Reply{
		Turn: s.Turn, Said: said, Kind: "unclear", Markdown: unanswered,
		Changes: map[string]any{}, Inputs: map[string]any{}, Results: map[string]any{},
	}, false
}
