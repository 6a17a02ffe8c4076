package main

import "sync"

// ctrlZKey is the key that stops a program where a shell can start it again; bellKey
// is one that does nothing while a line is typed.
const (
	ctrlZKey = 26
	bellKey  = 7
)

// screenMode switches the terminal between lines and single keys, and knows which
// it is in: the program may be stopped at any moment and has to find the terminal
// again as it left it.
type screenMode struct {
	m           sync.Mutex
	raw         bool
	enter, exit func() error
	anew        func() // enter, whatever the terminal was found as
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

// again asks for single keys anew, where a shell took them back. What the terminal
// was before is known already: the shell may have left it as we had it.
func (s *screenMode) again() (raw bool) {
	s.m.Lock()
	defer s.m.Unlock()
	if s.raw {
		s.anew()
	}
	return s.raw
}

// stop takes the prompt off the screen, stops the program, and shows the prompt again
// with what was typed.
func (e *editor) stop() {
	if canStop() {
		e.rl.Clean()
		e.out.flush()
		e.mode.aside(standStill)
		e.rl.Refresh()
	}
}

// goOn is called when the program goes on after it was stopped from outside.
func (e *editor) goOn() {
	if e.mode.again() {
		e.rl.Refresh()
	}
}
