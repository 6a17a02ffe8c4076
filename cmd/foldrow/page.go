package main

import (
	"slices"
	"strings"
)

// The library wraps tables and pictures in its own way, so they pass it by:
// each leaves marks in the Markdown, characters from the private-use area that
// clean has taken out of everything else, and comes back afterwards.
const (
	cellMark  = "\ue000" // between the cells of a table row
	rowMark   = "\ue001" // before a table row
	blockMark = "\ue002" // stands for a picture
)

// page is Markdown with its tables and pictures marked.
type page struct {
	markdown string
	pictures [][]string // lines of each fenced block, in order
	tables   []table    // in order; their cells are in the Markdown
	read     bool
}

// split takes Markdown apart. A fenced block whose info string is "picture" is
// left out when the page is to be read aloud: words stand beside it.
func split(markdown string, plain, read bool) *page {
	p := &page{read: read}
	// A numeric entity could come out as any character.
	lines := strings.Split(strings.ReplaceAll(markdown, "&#", "&amp;#"), "\n")
	var out []string
	for i := 0; i < len(lines); {
		switch {
		case strings.HasPrefix(lines[i], "```"):
			end := i + 1
			for end < len(lines) && !strings.HasPrefix(lines[end], "```") {
				end++
			}
			if info := strings.TrimSpace(lines[i][3:]); !(read && info == "picture") {
				p.pictures = append(p.pictures, lines[i+1:end])
				out = append(out, "", blockMark, "")
			}
			i = min(end+1, len(lines))
		case tableAt(lines[i:]):
			end := i + 2
			for end < len(lines) && strings.HasPrefix(lines[end], "|") {
				end++
			}
			t, rows := cutTable(lines[i:end], plain)
			p.tables = append(p.tables, t)
			out = append(append(append(out, ""), rows...), "")
			i = end
		default:
			out = append(out, lines[i])
			i++
		}
	}
	p.markdown = strings.Join(out, "\n")
	return p
}

// join puts the rendered text together again in lines of the window's width.
func (p *page) join(text string, width int) []string {
	var out []string
	pictures, tables := p.pictures, p.tables
	lines := strings.Split(text, "\n")
	for i := 0; i < len(lines); i++ {
		line := lines[i]
		switch {
		case strings.Contains(line, blockMark) && len(pictures) > 0:
			out = append(out, fold(pictures[0], width)...)
			pictures = pictures[1:]
		case strings.Contains(line, rowMark) && len(tables) > 0:
			end := min(i+tables[0].rows, len(lines))
			out = append(out, tables[0].draw(lines[i:end], width, p.read)...)
			tables, i = tables[1:], end-1
		default:
			out = append(out, wrap(line, width)...)
		}
	}
	return out
}

// fold cuts the lines of a picture that is too wide at the same columns, and
// sets the parts under each other with an empty line between, so that what
// stands above each other still does. It cuts where every line has a space if
// there is such a column in the last quarter of the width.
func fold(picture []string, width int) []string {
	rows := make([][]rune, len(picture))
	for i, line := range picture {
		rows[i] = []rune(line)
	}
	var out []string
	for longest(rows) > width {
		cut := width
		for c := width; c > width*3/4; c-- {
			if !slices.ContainsFunc(rows, func(r []rune) bool { return c < len(r) && r[c] != ' ' && r[c-1] != ' ' }) {
				cut = c
				break
			}
		}
		for i, r := range rows {
			n := min(cut, len(r))
			out = append(out, strings.TrimRight(string(r[:n]), " "))
			rows[i] = r[n:]
		}
		out = append(out, "")
	}
	for _, r := range rows {
		out = append(out, strings.TrimRight(string(r), " "))
	}
	return out
}

func longest(rows [][]rune) int {
	n := 0
	for _, r := range rows {
		n = max(n, len(r))
	}
	return n
}
