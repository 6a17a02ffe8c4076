package quantity

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"foldrow/engine"
)

type kind uint8

const (
	word   kind = iota // letters, with apostrophes inside: "cm", "i'm"
	digits             // "28", "2,5", "1,000", ".5"
	vulgar             // "½"
	mark               // any other single character
)

// token is one piece of the line. Marks that mean the same carry one text:
// all dashes "-", slashes "/", crosses "x", inch marks `"`, foot marks "'".
type token struct {
	kind       kind
	text       string // lower case
	start, end int    // byte span
	gap        bool   // a blank, or the start of the line, is before it
	val        engine.Num
	whole      bool // digits without a decimal part
	zero       bool // digits that begin with a superfluous 0, as in "000"
	doubt      bool // one group of three after a comma: "4,500"
	gauge      bool // it may be two numbers: "28,40"
	long       bool // more digits than are read
}

// isWord reports whether t is one of ws.
func (t *token) isWord(ws ...string) bool { return t.kind == word && oneOf(t.text, ws...) }

// is reports whether t is the mark or word s, told apart from digits only.
func (t *token) is(s string) bool { return (t.kind == mark || t.kind == word) && t.text == s }

func oneOf(s string, ws ...string) bool {
	for _, w := range ws {
		if s == w {
			return true
		}
	}
	return false
}

// tokenize cuts line into tokens. Each byte is looked at a fixed number of
// times.
func tokenize(line string) []token {
	toks := make([]token, 0, len(line)/3+4)
	gap := true
	for i := 0; i < len(line); {
		r, size := utf8.DecodeRuneInString(line[i:])
		switch {
		case unicode.IsSpace(r):
			gap = true
			i += size
			continue
		case isDigit(r), r == '.' && startsDecimal(line, i):
			end := digitsEnd(line, i)
			toks = appendLiteral(toks, line, i, end, gap)
			i = end
		case unicode.IsLetter(r):
			end := wordEnd(line, i)
			toks = append(toks, token{kind: word, text: strings.ToLower(line[i:end]), start: i, end: end, gap: gap})
			i = end
		default:
			t := token{kind: mark, text: plainMark(r, line[i:i+size]), start: i, end: i + size, gap: gap}
			if v, ok := vulgarFraction(r); ok {
				t.kind, t.val = vulgar, v
			}
			toks = append(toks, t)
			i += size
		}
		gap = false
	}
	return quotes(joinMarks(toks))
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

// startsDecimal reports whether the point at i begins a number: ".5".
func startsDecimal(line string, i int) bool {
	if i+1 >= len(line) || !isDigit(rune(line[i+1])) {
		return false
	}
	before, _ := utf8.DecodeLastRuneInString(line[:i])
	return i == 0 || !(unicode.IsLetter(before) || before == '.')
}

func wordEnd(line string, i int) int {
	for i < len(line) {
		r, size := utf8.DecodeRuneInString(line[i:])
		if r == '\'' || r == '’' {
			next, _ := utf8.DecodeRuneInString(line[i+size:])
			if !unicode.IsLetter(next) {
				return i
			}
		} else if !unicode.IsLetter(r) && !unicode.Is(unicode.Mn, r) {
			return i
		}
		i += size
	}
	return i
}

func plainMark(r rune, s string) string {
	switch r {
	case '-', '‐', '‑', '‒', '–', '—', '−':
		return "-"
	case '/', '⁄', '∕':
		return "/"
	case '×', '*', '✕':
		return "x"
	case '"', '”', '″':
		return `"`
	case '\'', '’', '′':
		return "'"
	case '~', '≈':
		return "~"
	}
	return s
}

// joinMarks makes one inch mark of two foot marks: 2”.
func joinMarks(toks []token) []token {
	out := toks[:0]
	for _, t := range toks {
		if n := len(out); n > 0 && t.is("'") && !t.gap && out[n-1].is("'") {
			out[n-1].text, out[n-1].end = `"`, t.end
			continue
		}
		out = append(out, t)
	}
	return out
}

// quotes gives the marks that quote a word or a line ("40" in inverted
// commas) another text, so that they are not read as inches or feet.
func quotes(toks []token) []token {
	open := ""
	for i := range toks {
		t := &toks[i]
		switch {
		case t.is("“"):
			open = `"`
		case t.is("‘"):
			open = "'"
		case !t.is(`"`) && !t.is("'"):
		case t.text == open && !t.gap:
			t.text, open = "quote", ""
		case open == "" && (t.gap || toks[i-1].is("(")) && i+1 < len(toks) && !toks[i+1].gap:
			t.text, open = "quote", t.text
		}
	}
	return toks
}
