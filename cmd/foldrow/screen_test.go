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
	lines   [][]cell
	now     string // the style that is on
	row     int
	col     int
	rest    []byte   // an unfinished sequence or letter
	unknown []string // sequences that it does not know
	styled  bool     // a colour or weight was used
	raw     []byte
}

// cell is one place on the screen: its letter, and its style in words.
type cell struct {
	r     rune
	style string
}

func newScreen(cols int) *screen { return &screen{cols: cols, lines: [][]cell{nil}} }

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
		line = append(line, cell{r: ' '})
	}
	line[s.col] = cell{r, s.now}
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
		s.style(string(b[2:end]))
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

// style takes on what the numbers of an escape sequence switch.
func (s *screen) style(numbers string) {
	names := map[string]string{"1": "bold", "4": "underline", "31": "red", "35": "magenta"} // no others read on both grounds
	if numbers == "30;47" {                                                                 // the two together do: what the editor offers next
		s.now = "offered"
		return
	}
	for n := range strings.SplitSeq(numbers, ";") {
		switch name, ok := names[n]; {
		case n == "0" || n == "":
			s.now = ""
		case !ok:
			s.unknown = append(s.unknown, "style "+n)
		default:
			s.now = strings.TrimSpace(s.now + " " + name)
		}
	}
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
		var letters strings.Builder
		for _, c := range line {
			letters.WriteRune(c.r)
		}
		b.WriteString(strings.TrimRight(letters.String(), " ") + "\n")
	}
	return b.String()
}

// styledText is the same with each stretch that is not plain in braces, named:
// "{bold: 107 stitches}". Spaces at the ends of lines stay.
func (s *screen) styledText() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	var b strings.Builder
	for _, line := range s.lines {
		style := ""
		for _, c := range line {
			if c.style != style {
				if style != "" {
					b.WriteString("}")
				}
				if style = c.style; style != "" {
					b.WriteString("{" + style + ": ")
				}
			}
			b.WriteRune(c.r)
		}
		if style != "" {
			b.WriteString("}")
		}
		b.WriteString("\n")
	}
	return b.String()
}
