package main

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/charmbracelet/x/ansi"
)

// columns is the width of s on the screen, escape sequences not counted.
func columns(s string) int {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c > '~' {
			return ansi.StringWidth(s)
		}
	}
	return len(s)
}

// wrap breaks one rendered line into lines of at most width columns, on spaces
// only. What begins the line (indent, list mark, quote bar) sets the indent of
// the lines after it. A number stays with its unit. A style that is on at a
// break is switched off for the margin and on again after it.
func wrap(line string, width int) []string {
	line = strings.TrimRight(line, " ")
	if columns(line) <= width {
		return []string{line}
	}
	first, hang, text := margin(line)
	if columns(first) > width/2 {
		first, hang = "", ""
	}
	var lines []string
	cur, room, style := first, width-columns(first), ""
	empty := true
	for _, w := range units(text, room) {
		size := columns(w)
		if !empty && size+1 > room {
			lines = append(lines, closeStyle(cur, style))
			cur, room, empty = hang+style, width-columns(hang), true
		}
		if !empty {
			cur, room = cur+" ", room-1
		}
		cur, room, empty = cur+w, room-size, false
		style = styleAfter(style, w)
	}
	return append(lines, cur)
}

// margin splits a line into its beginning, the beginning of the lines that go
// on from it, and its text.
func margin(line string) (first, hang, text string) {
	rest := strings.TrimLeft(line, " ")
	first = line[:len(line)-len(rest)]
	for strings.HasPrefix(rest, quoteBar) {
		first, rest = first+quoteBar, rest[len(quoteBar):]
	}
	hang = first
	mark := 0
	if strings.HasPrefix(rest, itemMark) {
		mark = len(itemMark)
	} else if strings.HasPrefix(rest, readMark) {
		mark = len(readMark)
	} else if n := strings.IndexFunc(rest, func(r rune) bool { return r < '0' || r > '9' }); n > 0 && strings.HasPrefix(rest[n:], ". ") {
		mark = n + 2
	}
	return first + rest[:mark], hang + strings.Repeat(" ", columns(rest[:mark])), rest[mark:]
}

// units splits text on spaces into pieces that are never broken, except a word
// that holds no number and is wider than a line.
func units(text string, width int) []string {
	var out []string
	words := strings.Fields(text)
	for i := 0; i < len(words); i++ {
		piece := words[i]
		for i+1 < len(words) && together(words[i], words[i+1], words[i+2:]) && columns(piece)+1+columns(words[i+1]) <= width {
			i++
			piece += " " + words[i]
		}
		out = append(out, chop(piece, width)...)
	}
	return out
}

// together reports that a line must not end between a and b: a number and what it
// counts or belongs to, a number and its fraction, both sides of "3 x 5", "96 + 96"
// and "L46 to L44", a row or a stage and its number.
func together(a, b string, after []string) bool {
	a, b = ansi.Strip(a), ansi.Strip(b)
	next := ""
	if len(after) > 0 {
		next = bare(ansi.Strip(after[0]))
	}
	switch {
	case joint(a):
		return counted(bare(b))
	case counted(bare(a)) && joint(b):
		return counted(next)
	}
	a, b = bare(a), bare(b)
	switch word := strings.ToLower(strings.TrimSuffix(a, ":")); {
	case number(a):
		return named(b) || fraction(strings.TrimRight(b, stops))
	case month(word):
		return number(strings.TrimRight(b, stops)) // its year
	case word == "dial" || word == "row" || word == "rows":
		return counted(b)
	case !named(a) || strings.TrimRight(a, stops) != a:
		return false
	}
	// What stands before a number that nothing follows: "take 1", "stage 3.", "L5".
	return counted(b) && !(number(b) && (named(next) || fraction(strings.TrimRight(next, stops)))) && !(joint(next) && len(after) > 1)
}

// stops end a phrase.
const stops = ".,;:!?)"

// joint stands between two numbers that make one figure.
func joint(s string) bool {
	switch s {
	case "x", "×", "to", "+", "*":
		return true
	}
	return false
}

// named is a word of letters that a number before it may count.
func named(s string) bool {
	word := strings.ToLower(strings.TrimRight(s, stops))
	if unit(word) {
		return true
	}
	r, _ := utf8.DecodeRuneInString(word)
	return unicode.IsLetter(r) && !strings.ContainsFunc(word, unicode.IsNumber) && !loose(word)
}

// loose are the words that a number before them does not count and one after them
// does not need.
func loose(s string) bool {
	switch s {
	case "a", "again", "also", "an", "and", "are", "as", "at", "be", "because", "but", "by", "can", "do", "does", "down", "each",
		"every", "first", "followed", "for", "from", "give", "gives", "goes", "had", "has", "have", "if", "into", "is", "it", "its",
		"last", "more", "must", "nor", "not", "of", "off", "on", "only", "or", "over", "rather", "so", "than", "that", "the", "then",
		"there", "they", "through", "under", "until", "up", "want", "wants", "was", "were", "when", "where", "which", "while", "will",
		"with", "would", "you", "your":
		return true
	}
	return false
}

func month(s string) bool {
	switch s {
	case "january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december":
		return true
	}
	return false
}

// counted is a number or the name of a needle.
func counted(s string) bool {
	s = strings.TrimRight(s, stops)
	return number(s) || len(s) > 1 && (s[0] == 'L' || s[0] == 'R') && number(s[1:])
}

// bare is a word without what may stand before a number.
func bare(s string) string { return strings.TrimLeft(s, `(["'~≈<>=±+−-`) }

func number(s string) bool {
	r, _ := utf8.DecodeRuneInString(s)
	last, _ := utf8.DecodeLastRuneInString(s)
	return unicode.IsNumber(r) && unicode.IsNumber(last)
}

func fraction(s string) bool {
	r, size := utf8.DecodeRuneInString(s)
	if size == len(s) && unicode.Is(unicode.No, r) {
		return true
	}
	over, under, ok := strings.Cut(s, "/")
	return ok && number(over) && number(under)
}

func unit(s string) bool {
	switch s {
	case "cm", "mm", "m", "g", "yd", "in", "inch", "inches", "ft", "%", `"`, "″", "degrees",
		"st", "sts", "stitch", "stitches", "row", "rows", "needle", "needles", "click", "clicks",
		"loop", "loops", "column", "columns", "bump", "bumps", "metre", "metres", "gram", "grams", "times":
		return true
	}
	return false
}

// chop cuts a word that no line can hold. A number is left whole all the same:
// half of it would be another number.
func chop(word string, width int) []string {
	if columns(word) <= width || strings.ContainsFunc(word, unicode.IsNumber) || strings.Contains(word, "\x1b") {
		return []string{word}
	}
	var out []string
	for word != "" {
		piece := ansi.Truncate(word, width, "")
		if piece == "" {
			return append(out, word)
		}
		out = append(out, piece)
		word = word[len(piece):]
	}
	return out
}

// styleAfter is the style that is on after s, given the one before it.
func styleAfter(style, s string) string {
	for {
		i := strings.IndexByte(s, '\x1b')
		if i < 0 {
			return style
		}
		n := styleLen(s[i:])
		if n == 0 {
			return style
		}
		if seq := s[i : i+n]; seq == "\x1b[0m" || seq == "\x1b[m" {
			style = ""
		} else {
			style += seq
		}
		s = s[i+n:]
	}
}

func closeStyle(line, style string) string {
	if style == "" {
		return line
	}
	return line + "\x1b[0m"
}
