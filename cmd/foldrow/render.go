package main

import (
	"strings"

	"github.com/charmbracelet/glamour"
	"github.com/charmbracelet/glamour/ansi"
	"github.com/muesli/termenv"
)

// What begins a list item, one that is read aloud, and a quoted line; wrap knows
// them again.
const (
	itemMark = "• "
	readMark = "- "
	quoteBar = "│ "
)

// renderer turns the Markdown of a reply into lines for a window. It is for one
// goroutine: the library keeps state between calls.
type renderer struct {
	term  *glamour.TermRenderer
	plain bool // no escape sequences
	read  bool // read aloud: tables as lists, no pictures
}

// newRenderer makes one with our only style, which asks the terminal nothing.
// The width is left to wrap, because the library breaks lines inside numbers.
func newRenderer(plain, read bool) (*renderer, error) {
	style := uncoloured(read)
	if !plain {
		style = coloured(style)
	}
	t, err := glamour.NewTermRenderer(
		glamour.WithStyles(style),
		glamour.WithWordWrap(0),
		glamour.WithColorProfile(termenv.ANSI),
	)
	return &renderer{t, plain, read}, err
}

// render gives the text in lines of width columns, pictures in as many as wide,
// with no space at any line's end, no empty line at either end, and a newline
// after the last line. Lines are longer only where a number is.
func (r *renderer) render(markdown string, width, wide int) (string, error) {
	text := clean(markdown)
	if r.plain {
		text = quoteWords(text)
	}
	p := split(text, r.plain, r.read)
	text, err := r.term.Render(p.markdown)
	if err != nil {
		return "", err
	}
	var out []string
	text = quiet(text)
	if !r.plain {
		text = warn(text)
	}
	for _, line := range p.join(text, width, wide) {
		if line == "" && (len(out) == 0 || out[len(out)-1] == "") {
			continue
		}
		out = append(out, line)
	}
	return seal(strings.TrimRight(strings.Join(out, "\n"), "\n"), r.plain) + "\n", nil
}

// coloured tells headings by bold and a line under the first, numbers and
// questions by bold, words to type by underline and magenta, cautions by their
// word and red. Of the sixteen colours, as terminals usually mix them, these two
// read on black and on white: magenta 4.5 to 1 on either, red at least 3.6, while
// cyan and green have 2 on white, and blue 2 on black.
// Nothing is told by colour alone: sums, in code marks, stand on their own.
func coloured(s ansi.StyleConfig) ansi.StyleConfig {
	yes, magenta := true, "5"
	s.Heading.Bold = &yes
	s.H1.Underline = &yes
	s.Strong.Bold = &yes
	s.Emph.Underline, s.Emph.Color = &yes, &magenta
	return s
}

// warn colours the word that begins a caution; it is bold as well, and a word.
func warn(s string) string {
	const word, red = "Caution:", "\x1b[31;1mCaution:\x1b[0m"
	s = strings.ReplaceAll(s, "\x1b[1m"+word+"\x1b[0m", red)
	return strings.ReplaceAll(s, itemMark+word, itemMark+red)
}

// uncoloured is the same layout in bare text, where words to type stand in
// quotes and titles are underlined with characters. A bar beside quoted lines means nothing to the ear.
func uncoloured(read bool) ansi.StyleConfig {
	bar, item, one, none := quoteBar, itemMark, uint(1), uint(0)
	if read {
		bar, item = "  ", readMark
	}
	var s ansi.StyleConfig
	s.Document.Margin = &none
	s.Heading.BlockSuffix = "\n"
	s.Item.BlockPrefix = item
	s.Enumeration.BlockPrefix = ". "
	s.List.LevelIndent = 2
	s.BlockQuote.Indent, s.BlockQuote.IndentToken = &one, &bar
	s.Task.Ticked, s.Task.Unticked = "[x] ", "[ ] "
	s.HorizontalRule.Format = "\n"
	return s
}

// quiet drops the styles that the library switches on and off around nothing.
func quiet(s string) string {
	const off = "\x1b[0m"
	var b strings.Builder
	for {
		i := strings.IndexByte(s, '\x1b')
		if i < 0 {
			b.WriteString(s)
			return b.String()
		}
		b.WriteString(s[:i])
		s = s[i:]
		n := styleLen(s)
		if n > 0 && s[:n] != off && strings.HasPrefix(s[n:], off) {
			s = s[n+len(off):]
			continue
		}
		n = max(n, 1)
		b.WriteString(s[:n])
		s = s[n:]
	}
}
