package main

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// clean is text without anything that a terminal would obey: control and
// format characters (which hold the escape, the C1 set and the bidirectional
// overrides), private-use characters (of which page.go uses a few as marks)
// and bytes that are not UTF-8. Newlines stay; tabs, carriage returns and the
// other line separators become spaces.
func clean(s string) string {
	if plainASCII(s) {
		return s
	}
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n':
			return r
		case r == '\t' || r == '\r' || r == '\u2028' || r == '\u2029':
			return ' '
		case r == utf8.RuneError || obeyed(r):
			return -1
		}
		return r
	}, s)
}

// obeyed reports a character that is not shown but does something, or that has
// no meaning of its own.
func obeyed(r rune) bool {
	if r < 0xa0 {
		return r < ' ' || r > '~'
	}
	return unicode.In(r, unicode.Cf, unicode.Co, unicode.Cs, unicode.Zl, unicode.Zp)
}

func plainASCII(s string) bool {
	for i := range len(s) {
		if c := s[i]; c != '\n' && (c < ' ' || c > '~') {
			return false
		}
	}
	return true
}

// seal is the last look at what the library made: what is left of escape
// sequences must be the colours and weights of our own style, and none at all
// when plain.
func seal(s string, plain bool) string {
	if !strings.Contains(s, "\x1b") {
		return clean(s)
	}
	var b strings.Builder
	for s != "" {
		i := strings.IndexByte(s, '\x1b')
		if i < 0 {
			i = len(s)
		}
		b.WriteString(clean(s[:i]))
		s = s[i:]
		if n := styleLen(s); n > 0 {
			if !plain {
				b.WriteString(s[:n])
			}
			s = s[n:]
		} else if s != "" {
			s = s[1:]
		}
	}
	return b.String()
}

// styleLen is the length of the escape sequence "ESC [ digits and semicolons
// m" at the start of s, 0 if there is none.
func styleLen(s string) int {
	if !strings.HasPrefix(s, "\x1b[") {
		return 0
	}
	for i := 2; i < len(s); i++ {
		switch c := s[i]; {
		case c == 'm':
			return i + 1
		case c != ';' && (c < '0' || c > '9'):
			return 0
		}
	}
	return 0
}

// jsonSafe writes the characters that clean would drop as JSON escapes, so that
// a line of JSON is harmless on a terminal and still means the same. It is for
// finished JSON, where such characters can only stand inside strings.
func jsonSafe(b []byte) []byte {
	if plainASCII(string(b)) {
		return b
	}
	var out []byte
	for _, r := range string(b) {
		if r != '\n' && obeyed(r) {
			out = appendEscape(out, r)
			continue
		}
		out = utf8.AppendRune(out, r)
	}
	return out
}

// appendEscape adds the \uXXXX form of r, two of them above the basic plane.
func appendEscape(out []byte, r rune) []byte {
	if r > 0xffff {
		r -= 0x10000
		out = appendEscape(out, 0xd800+r>>10)
		r = 0xdc00 + r&0x3ff
	}
	const hex = "0123456789abcdef"
	return append(out, '\\', 'u', hex[r>>12&15], hex[r>>8&15], hex[r>>4&15], hex[r&15])
}
