package main

import (
	"slices"
	"strings"
)

// draw sets a block in lines for the window.
func (b block) draw(width, wide int, plain bool) []string {
	if b.legend {
		return wrap(strings.Join(b.lines, " "), width)
	}
	lines := fold(b.lines, b.label, wide)
	if plain || b.signs == "" {
		return lines
	}
	for i, line := range lines {
		if len(line) > b.label {
			lines[i] = line[:b.label] + paint(line[b.label:], b.signs)
		}
	}
	return lines
}

// Signs that stand out are bold, some in a colour that reads on a dark and on a
// light ground; they differ as characters as well.
var signColours = [...]string{"\x1b[35;1m", "\x1b[1m", "\x1b[31;1m"}

// paint styles the signs in a line, a run of one sign at a time.
func paint(line, signs string) string {
	var b strings.Builder
	for i := 0; i < len(line); {
		j := i + 1
		for j < len(line) && line[j] == line[i] {
			j++
		}
		if k := strings.IndexByte(signs, line[i]); k >= 0 {
			b.WriteString(signColours[k%len(signColours)] + line[i:j] + "\x1b[0m")
		} else {
			b.WriteString(line[i:j])
		}
		i = j
	}
	return b.String()
}

// fold cuts the lines of a picture that is too wide at the same columns, and
// sets the parts under each other with an empty line between, so that what
// stands above each other still does. It cuts where every line has a space if
// there is such a column in the last half of the width, and says the first
// label columns again before each part.
func fold(picture []string, label, width int) []string {
	rows, labels := make([][]rune, len(picture)), make([]string, len(picture))
	for i, line := range picture {
		r := []rune(line)
		n := min(label, len(r))
		labels[i] = string(r[:n]) + strings.Repeat(" ", label-n)
		rows[i] = r[n:]
	}
	width -= label
	var out []string
	part := func(n int) {
		for i, r := range rows {
			out = append(out, strings.TrimRight(labels[i]+string(r[:min(n, len(r))]), " "))
		}
	}
	for longest(rows) > width {
		cut := width
		for c := width; c > width/2; c-- {
			if !slices.ContainsFunc(rows, func(r []rune) bool { return c < len(r) && r[c] != ' ' && r[c-1] != ' ' }) {
				cut = c
				break
			}
		}
		part(cut)
		for i, r := range rows {
			rows[i] = r[min(cut, len(r)):]
		}
		if label > 0 && !slices.ContainsFunc(rows, func(r []rune) bool { return len(r) > 0 && r[0] != ' ' }) {
			for i, r := range rows {
				rows[i] = r[min(1, len(r)):]
			}
		}
		out = append(out, "")
	}
	part(longest(rows))
	return out
}

func longest(rows [][]rune) int {
	n := 0
	for _, r := range rows {
		n = max(n, len(r))
	}
	return n
}
