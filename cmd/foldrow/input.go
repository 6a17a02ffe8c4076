package main

import (
	"bufio"
	"errors"
	"io"
	"strings"
	"unicode/utf8"

	utf16 "golang.org/x/text/encoding/unicode"
)

// maxLine is the longest line taken, in bytes. No answer is a tenth of it; what
// is longer was piped in by mistake.
const maxLine = 16 << 10

// typed is one line as it came in, made harmless by tidy.
type typed struct {
	text   string
	cut    int  // bytes left out because the line was too long
	pasted bool // came together with other lines
	more   bool // others came with it and are still to come
	ahead  bool // came before anyone can have read the prompt
}

// source gives the lines of the conversation: an editor on a terminal, a pipe
// otherwise. next returns io.EOF at the end and errInterrupt for Ctrl-C; history
// puts earlier lines where the up arrow finds them; restore gives the terminal
// back as it was, even while next waits.
type source interface {
	next() (typed, error)
	history(lines []string)
	restore()
}

var errInterrupt = errors.New("interrupted")

// pipe reads lines where there is no terminal on both ends, or one that cannot
// move its cursor. It knows no keys: every byte is text.
type pipe struct {
	in     *bufio.Reader
	prompt func() // shows the prompt; nil for none
	begun  bool   // something was read
}

func newPipe(in io.Reader) *pipe { return &pipe{in: bufio.NewReaderSize(in, maxLine)} }

func (p *pipe) history([]string) {}

func (p *pipe) restore() {}

// next reads to the next newline or the end. Of a longer line only the first
// maxLine bytes are kept, whatever its length.
func (p *pipe) next() (typed, error) {
	if p.prompt != nil {
		p.prompt()
	}
	if err := p.begin(); err != nil {
		return typed{}, err
	}
	line, err := p.in.ReadSlice('\n')
	text := string(line)
	cut := 0
	for errors.Is(err, bufio.ErrBufferFull) {
		line, err = p.in.ReadSlice('\n')
		cut += len(line)
	}
	if err != nil && !(errors.Is(err, io.EOF) && text != "") {
		return typed{}, err
	}
	if cut > 0 {
		text = wholeRunes(text)
	}
	text = strings.TrimRight(text, "\r\n")
	if err != nil && text == ctrlZ {
		return typed{}, err
	}
	return typed{text: tidy(text), cut: cut}, nil
}

// ctrlZ alone is what Windows programs that join files may put after the last line.
// It is no answer, and least of all Enter.
const ctrlZ = "\x1a"

// begin looks at how the input begins, once: files that Windows programs write as
// two bytes a character carry a mark that no other text begins with. No more is
// waited for than what it takes to tell.
func (p *pipe) begin() error {
	if p.begun {
		return nil
	}
	first, err := p.in.Peek(1)
	if err != nil {
		return err
	}
	p.begun = true
	if first[0] < 0xfe {
		return nil
	}
	switch mark, _ := p.in.Peek(2); string(mark) {
	case "\xff\xfe", "\xfe\xff":
		text := utf16.UTF16(utf16.LittleEndian, utf16.ExpectBOM).NewDecoder().Reader(p.in)
		p.in = bufio.NewReaderSize(text, maxLine)
	}
	return nil
}

// wholeRunes drops the beginning of a character that was cut in two.
func wholeRunes(s string) string {
	for i := 1; i < utf8.UTFMax && i <= len(s); i++ {
		if b := s[len(s)-i]; utf8.RuneStart(b) {
			if !utf8.FullRuneInString(s[len(s)-i:]) {
				return s[:len(s)-i]
			}
			break
		}
	}
	return s
}

// tidy makes what was typed safe to keep and to show: bytes that are not UTF-8
// become the replacement character, control characters become spaces, because
// leaving one out could join two numbers, and invisible ones are dropped.
func tidy(s string) string {
	if plainASCII(s) {
		return s
	}
	return strings.Map(func(r rune) rune {
		switch {
		case r < ' ' || r > '~' && r < 0xa0 || r == '\u2028' || r == '\u2029':
			return ' '
		case obeyed(r):
			return -1
		}
		return r
	}, strings.ToValidUTF8(s, "\ufffd"))
}
