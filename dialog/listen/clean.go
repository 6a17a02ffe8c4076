package listen

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// MaxLine is how many bytes of a line are read; nobody answers a question
// about a neck in more, and every later stage is bounded by it.
const MaxLine = 2000

// Clean makes a line safe to read and to show: invalid UTF-8, control and
// format characters (escape sequences, bidirectional marks, zero widths) are
// dropped, blanks become single spaces, and what lies past MaxLine is cut.
// It reports whether anything was cut off the end.
func Clean(line string) (string, bool) {
	cut := len(line) > MaxLine
	if cut {
		line = line[:MaxLine]
	}
	var b strings.Builder
	b.Grow(len(line))
	space := false
	for i := 0; i < len(line); {
		r, size := utf8.DecodeRuneInString(line[i:])
		i += size
		switch {
		case r == utf8.RuneError && size <= 1:
		case r == '\t' || r == '\n' || r == '\r' || unicode.IsSpace(r):
			space = b.Len() > 0
		case unicode.IsControl(r) || unicode.Is(unicode.Cf, r) || unicode.Is(unicode.Co, r):
		default:
			if space {
				b.WriteByte(' ')
				space = false
			}
			b.WriteRune(r)
		}
	}
	return b.String(), cut
}

// lower is the line in small letters, each as long in bytes as it was typed, so
// that a place in one is the same place in the other; the few letters whose
// small form is longer or shorter (Ⱥ, İ) stay as they are.
func lower(line string) string {
	return strings.Map(func(r rune) rune {
		if low := unicode.ToLower(r); utf8.RuneLen(low) == utf8.RuneLen(r) {
			return low
		}
		return r
	}, line)
}
