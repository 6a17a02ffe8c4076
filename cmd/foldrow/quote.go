package main

import "strings"

// quoteWords turns emphasis into quotation marks, because bare text cannot show
// which words are to be typed: say *next* becomes say "next". Bold stays as it
// is, and so does everything in code and behind a backslash.
func quoteWords(markdown string) string {
	lines := strings.Split(markdown, "\n")
	fenced := false
	for i, line := range lines {
		if strings.HasPrefix(line, "```") {
			fenced = !fenced
		}
		if !fenced && strings.Contains(line, "*") {
			lines[i] = quoteLine(line)
		}
	}
	return strings.Join(lines, "\n")
}

// quoteLine gives line back unchanged if its emphasis does not pair up.
func quoteLine(line string) string {
	var b strings.Builder
	open, code := false, false
	for i := 0; i < len(line); i++ {
		c := line[i]
		switch {
		case c == '\\' && i+1 < len(line):
			b.WriteByte(c)
			i++
			c = line[i]
		case c == '`':
			code = !code
		case c == '*' && !code:
			n := len(line[i:]) - len(strings.TrimLeft(line[i:], "*"))
			if n == 1 && (open && line[i-1] != ' ' || !open && i+1 < len(line) && line[i+1] != ' ') {
				open, c = !open, '"'
				break
			}
			b.WriteString(line[i : i+n-1])
			i += n - 1
		}
		b.WriteByte(c)
	}
	if open {
		return line
	}
	return b.String()
}
