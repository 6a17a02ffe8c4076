package main

import (
	"sync"

	"github.com/chzyer/readline"
)

// ctrlZKey is the key that stops a program where a shell can start it again.
const ctrlZKey = 26

// screenMode switches the terminal between lines and single keys, and knows which
// it is in: the program may be stopped at any moment and has to find the terminal
// again as it left it.
type screenMode struct {
	m           sync.Mutex
	raw         bool
	enter, exit func() error
}

// begin goes over to single keys.
func (s *screenMode) begin() error {
	s.m.Lock()
	defer s.m.Unlock()
	if s.raw {
		return nil
	}
	s.raw = true
	return s.enter()
}

// end gives the terminal back as it was found.
func (s *screenMode) end() error {
	s.m.Lock()
	defer s.m.Unlock()
	if !s.raw {
		return nil
	}
	s.raw = false
	return s.exit()
}

// aside does f with the terminal as it was found, if it is not so already, and
// then goes on with single keys. An error leaves the terminal as it is, which is
// all that can be done.
func (s *screenMode) aside(f func()) {
	s.m.Lock()
	defer s.m.Unlock()
	if !s.raw {
		f()
		return
	}
	_ = s.exit()
	f()
	_ = s.enter()
}

// again asks for single keys anew, where a shell took them back.
func (s *screenMode) again() (raw bool) {
	s.m.Lock()
	defer s.m.Unlock()
	if s.raw {
		singleKeys()
	}
	return s.raw
}

// key is asked about each key before the library: the one for stopping takes the
// prompt off the screen, stops, and shows it again with what was typed. The
// library gets one that does nothing in its place.
func (e *editor) key(r rune) (rune, bool) {
	if r != ctrlZKey {
		return r, true
	}
	if canStop() {
		e.rl.Clean()
		e.mode.aside(standStill)
		e.rl.Refresh()
	}
	return readline.CharBell, true
}

// goOn is called when the program goes on after it was stopped from outside.
func (e *editor) goOn() {
	if e.mode.again() {
		e.rl.Refresh()
	}
}
