package main

import (
	"bytes"
	"io"
	"sync"
)

// takenAway is how the editor empties a line of one row, which it does at each key to
// write the line again.
const takenAway = "\x1b[J\x1b[2K\r"

// clearRest empties the window from the cursor on.
const clearRest = "\x1b[J"

// rowUp takes the cursor from the beginning of a row to the one above. The editor goes
// one column back before it, which does nothing there, but on some terminals goes to
// the row above as well, so that the line would climb up the window at each key.
const rowUp = "\x1b[A\r"

// steady passes on what the editor writes. Where a line is taken away only to be
// written again it is written over instead, in one piece, so that what stays the same
// does not flicker where the terminal is far away.
type steady struct {
	out  io.Writer
	m    sync.Mutex
	held bool // a line is still to be taken away
}

func (s *steady) Write(p []byte) (int, error) {
	s.m.Lock()
	defer s.m.Unlock()
	if string(p) == takenAway {
		s.held = true
		return len(p), nil
	}
	line := bytes.ReplaceAll(p, []byte("\b"+rowUp), []byte(rowUp))
	if s.held {
		s.held = false
		line = over(line)
	}
	if _, err := s.out.Write(line); err != nil {
		return 0, err
	}
	return len(p), nil
}

// flush takes away a line that nothing was written over.
func (s *steady) flush() {
	s.m.Lock()
	defer s.m.Unlock()
	if s.held {
		s.held = false
		_, _ = io.WriteString(s.out, takenAway) // whoever writes next hears of a terminal that is gone
	}
}

// over writes a line over what stands there. What is left of that is emptied behind the
// text: before the cursor goes back into it, and below it where the line was ended.
func over(line []byte) []byte {
	if !bytes.HasPrefix(line, []byte(promptSign)) {
		return append([]byte(takenAway), line...)
	}
	end := len(line)
	if i := bytes.IndexByte(line, '\b'); i > 0 {
		end = i
		if line[i-1] == ' ' { // by which the editor goes to the next row; it is not to stay
			end++
		}
	}
	out := append([]byte("\r"), line[:end]...)
	return append(append(out, clearRest...), line[end:]...)
}
