package quantity

import (
	"strings"

	"foldrow/engine"
)

// maxDigits is how many digits a number may have. Nothing in knitting needs
// more, and it keeps every value in two machine words.
const maxDigits = 12

// digitsEnd is where the run of digits, points and commas from i ends; a
// point or comma belongs to it only with a digit behind it.
func digitsEnd(line string, i int) int {
	for i < len(line) {
		c := line[i]
		if !isDigit(rune(c)) && !((c == '.' || c == ',') && i+1 < len(line) && isDigit(rune(line[i+1]))) {
			return i
		}
		i++
	}
	return i
}

// appendLiteral adds what the run line[i:end] says: one number, or several
// where its commas separate ("22,24,26"), or a word where it is no number
// ("1.2.3").
func appendLiteral(toks []token, line string, i, end int, gap bool) []token {
	text := line[i:end]
	dots, commas := strings.Count(text, "."), strings.Count(text, ",")
	lastDot, lastComma := strings.LastIndexByte(text, '.'), strings.LastIndexByte(text, ',')
	t := token{kind: digits, text: text, start: i, end: end, gap: gap}
	switch {
	case commas == 0 && dots <= 1:
		return append(toks, t.decimal(text, "."))
	case commas == 1 && dots == 0 && !grouped(text, ","):
		t = t.decimal(text, ",")
		t.gauge = likeGauge(text)
		return append(toks, t)
	case commas == 0 && grouped(text, "."):
		return append(toks, t.decimal(strings.ReplaceAll(text, ".", ""), "."))
	case dots == 0 && grouped(text, ","):
		t = t.decimal(strings.ReplaceAll(text, ",", ""), ".")
		t.doubt = commas == 1 && !strings.HasSuffix(text, ",000")
		return append(toks, t)
	case dots == 1 && lastComma < lastDot && grouped(text[:lastDot], ","):
		return append(toks, t.decimal(strings.ReplaceAll(text, ",", ""), "."))
	case commas == 1 && lastDot < lastComma && grouped(text[:lastComma], "."):
		return append(toks, t.decimal(strings.ReplaceAll(text, ".", ""), ","))
	case commas == 0: // several points: a version or a date
		t.kind = word
		return append(toks, t)
	}
	return appendList(toks, line, i, end, gap)
}

// appendList adds the numbers that commas separate in line[i:end].
func appendList(toks []token, line string, i, end int, gap bool) []token {
	for {
		n := strings.IndexByte(line[i:end], ',')
		if n < 0 {
			return appendLiteral(toks, line, i, end, gap)
		}
		toks = appendLiteral(toks, line, i, i+n, gap)
		i += n + 1
		toks = append(toks, token{kind: mark, text: ",", start: i - 1, end: i})
		gap = false
	}
}

// grouped reports whether sep cuts text into groups of three digits, with one
// to three before them, not beginning with 0.
func grouped(text, sep string) bool {
	head, rest, found := strings.Cut(text, sep)
	if !found || head == "" || len(head) > 3 || head[0] == '0' {
		return false
	}
	for found {
		head, rest, found = strings.Cut(rest, sep)
		if len(head) != 3 || !allDigits(head) {
			return false
		}
	}
	return true
}

// likeGauge reports whether "28,40" may be 28 stitches and 40 rows rather
// than 28.4: two digits on both sides, the second part not the smaller, both
// within what is knitted (the usual spans of a gauge, common practice).
func likeGauge(text string) bool {
	return len(text) == 5 && text[2] == ',' && text[:2] >= "12" && text[:2] <= "40" && text[3:] >= text[:2] && text[3:] <= "60"
}

func allDigits(s string) bool {
	for _, r := range s {
		if !isDigit(r) {
			return false
		}
	}
	return true
}

// decimal sets t to the number text, whose decimal sign is sep.
func (t token) decimal(text, sep string) token {
	head, tail, found := strings.Cut(text, sep)
	t.whole = !found
	t.zero = len(head) > 1 && head[0] == '0'
	if len(head)+len(tail) > maxDigits {
		t.long = true
		return t
	}
	n, d := int64(0), int64(1)
	for _, c := range head + tail {
		n = n*10 + int64(c-'0')
	}
	for range tail {
		d *= 10
	}
	t.val = engine.Frac(n, d)
	return t
}

// vulgarFraction is the value of the single characters for fractions.
func vulgarFraction(r rune) (engine.Num, bool) {
	n, d := int64(0), int64(0)
	switch r {
	case '½':
		n, d = 1, 2
	case '⅓', '⅔':
		n, d = 1+int64(r-'⅓'), 3
	case '¼', '¾':
		n, d = 1+int64(r-'¼'), 4
	case '⅕', '⅖', '⅗', '⅘':
		n, d = 1+int64(r-'⅕'), 5
	case '⅙', '⅚':
		n, d = 1+4*int64(r-'⅙'), 6
	case '⅐':
		n, d = 1, 7
	case '⅛', '⅜', '⅝', '⅞':
		n, d = 1+2*int64(r-'⅛'), 8
	case '⅑':
		n, d = 1, 9
	case '⅒':
		n, d = 1, 10
	default:
		return engine.Num{}, false
	}
	return engine.Frac(n, d), true
}
