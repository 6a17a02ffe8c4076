//go:build unix

package main

import (
	"strconv"
	"strings"
	"sync"
	"unicode/utf8"
)

// screen is the least of a terminal: what the program writes, placed in lines,
// as a person would see it scrolled back. It knows the few sequences that the
// line editor and our style use, and notes any other.
type screen struct {
	mu      sync.Mutex
	cols    int
	lines   [][]rune
	row     int
	col     int
	rest    []byte   // an unfinished sequence or letter
	unknown []string // sequences that it does not know
	styled  bool     // a colour or weight was used
	raw     []byte
}

func newScreen(cols int) *screen { return &screen{cols: cols, lines: [][]rune{nil}} }

// Write takes what the program writes.
func (s *screen) Write(p []byte) (int, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.raw = append(s.raw, p...)
	b := append(s.rest, p...)
	for len(b) > 0 {
		n := s.take(b)
		if n == 0 {
			break
		}
		b = b[n:]
	}
	s.rest = append([]byte(nil), b...)
	return len(p), nil
}

// take handles one letter or sequence and gives its length, 0 if it is not
// whole yet.
func (s *screen) take(b []byte) int {
	switch c := b[0]; {
	case c == 0x1b:
		return s.sequence(b)
	case c == '\r':
		s.col = 0
	case c == '\n':
		s.row, s.col = s.row+1, 0
		s.grow()
	case c == '\b':
		s.col = max(0, s.col-1)
	case c == 7:
	case c < ' ' || c == 127:
		s.unknown = append(s.unknown, strconv.Quote(string(rune(c))))
	default:
		if !utf8.FullRune(b) {
			return 0
		}
		r, n := utf8.DecodeRune(b)
		s.put(r)
		return n
	}
	return 1
}

func (s *screen) put(r rune) {
	if s.cols > 0 && s.col >= s.cols {
		s.row, s.col = s.row+1, 0
	}
	s.grow()
	line := s.lines[s.row]
	for len(line) <= s.col {
		line = append(line, ' ')
	}
	line[s.col] = r
	s.lines[s.row] = line
	s.col++
}

func (s *screen) grow() {
	for len(s.lines) <= s.row {
		s.lines = append(s.lines, nil)
	}
}

func (s *screen) sequence(b []byte) int {
	if len(b) < 2 {
		return 0
	}
	end := 2
	for end < len(b) && (b[end] == ';' || b[end] >= '0' && b[end] <= '9') {
		end++
	}
	if b[1] != '[' {
		s.unknown = append(s.unknown, strconv.Quote(string(b[:2])))
		return 2
	}
	if end == len(b) {
		return 0
	}
	n, _ := strconv.Atoi(string(b[2:end])) // 0 where there is none, or several
	switch b[end] {
	case 'm':
		s.styled = true
	case 'A':
		s.row = max(0, s.row-max(n, 1))
	case 'B':
		s.row += max(n, 1)
		s.grow()
	case 'C':
		s.col += max(n, 1)
	case 'D':
		s.col = max(0, s.col-max(n, 1))
	case 'J':
		s.cut()
		s.lines = s.lines[:s.row+1]
	case 'K':
		if n == 2 {
			s.lines[s.row] = nil
		} else {
			s.cut()
		}
	default:
		s.unknown = append(s.unknown, strconv.Quote(string(b[:end+1])))
	}
	return end + 1
}

// cut empties the line from the cursor on.
func (s *screen) cut() {
	if s.col < len(s.lines[s.row]) {
		s.lines[s.row] = s.lines[s.row][:s.col]
	}
}

// text is what stands on the screen and above it, without spaces at the ends
// of lines.
func (s *screen) text() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	var b strings.Builder
	for _, line := range s.lines {
		b.WriteString(strings.TrimRight(string(line), " ") + "\n")
	}
	return b.String()
}
