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
	if isClean(line) {
		return line, cut
	}
	return cleaned(line), cut
}

func cleaned(line string) string {
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
	return b.String()
}

// isClean is true only of a line that Clean leaves as it is; most are of plain
// letters and single blanks.
func isClean(line string) bool {
	blank := true
	for i := range len(line) {
		switch c := line[i]; {
		case c > '~' || c < ' ' || c == ' ' && blank:
			return false
		default:
			blank = c == ' '
		}
	}
	return !blank
}

// lower is the line in small letters, each as long in bytes as it was typed, so
// that a place in one is the same place in the other; the few letters whose
// small form is longer or shorter (Ⱥ, İ) stay as they are.
func lower(line string) string {
	if ascii(line) {
		return strings.ToLower(line) // which is quick for these
	}
	return strings.Map(func(r rune) rune {
		if low := unicode.ToLower(r); utf8.RuneLen(low) == utf8.RuneLen(r) {
			return low
		}
		return r
	}, line)
}

func ascii(line string) bool {
	for i := range len(line) {
		if line[i] >= utf8.RuneSelf {
			return false
		}
	}
	return true
}
