package main

import (
	"strconv"
	"strings"
)

// The library wraps tables and pictures in its own way, so they pass it by:
// each leaves marks in the Markdown, characters from the private-use area that
// clean has taken out of everything else, and comes back afterwards.
const (
	cellMark  = "\ue000" // between the cells of a table row
	rowMark   = "\ue001" // before a table row
	blockMark = "\ue002" // stands for a picture
	titleMark = "\ue003" // after a title
)

// page is Markdown with its tables and pictures marked.
type page struct {
	markdown string
	blocks   []block // fenced, in order
	tables   []table // in order; their cells are in the Markdown
	plain    bool
	read     bool
}

// block is a fenced block. What its info string says:
//
//	picture        a drawing, left out when it is read aloud: words stand beside it
//	picture 6 v u  the same with labels 6 columns wide, and signs that stand out
//	legend         what the picture above shows, left out with it
type block struct {
	lines  []string
	label  int
	signs  string
	legend bool
}

// split takes Markdown apart.
func split(markdown string, plain, read bool) *page {
	p := &page{plain: plain, read: read}
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
			if b, drawn := readBlock(lines[i][3:], lines[i+1:end]); !(read && drawn) {
				p.blocks = append(p.blocks, b)
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
			line := lines[i]
			if strings.HasPrefix(line, "# ") {
				line += titleMark
			}
			out = append(out, line)
			i++
		}
	}
	p.markdown = strings.Join(out, "\n")
	return p
}

// readBlock reads an info string; drawn says that the block is for the eye.
func readBlock(info string, lines []string) (b block, drawn bool) {
	b.lines = lines
	words := strings.Fields(info)
	if len(words) == 0 || words[0] != "picture" && words[0] != "legend" {
		return b, false
	}
	b.legend = words[0] == "legend"
	for i, w := range words[1:] {
		if n, err := strconv.Atoi(w); err == nil && i == 0 {
			b.label = min(max(n, 0), minWidth/2)
		} else if len(w) == 1 {
			b.signs += w
		}
	}
	return b, true
}

// join puts the rendered text together again. Text is laid out in width
// columns; pictures may take wide ones, as far as the window goes.
func (p *page) join(text string, width, wide int) []string {
	var out []string
	blocks, tables := p.blocks, p.tables
	lines := strings.Split(text, "\n")
	for i := 0; i < len(lines); i++ {
		line := lines[i]
		switch {
		case strings.Contains(line, blockMark) && len(blocks) > 0:
			out = append(out, blocks[0].draw(width, wide, p.plain)...)
			blocks = blocks[1:]
		case strings.Contains(line, rowMark) && len(tables) > 0:
			end := min(i+tables[0].rows, len(lines))
			out = append(out, tables[0].draw(lines[i:end], width, p.read)...)
			tables, i = tables[1:], end-1
		case strings.Contains(line, titleMark):
			title := wrap(strings.Replace(line, titleMark, "", 1), width)
			out = append(out, title...)
			if p.plain && !p.read { // where nothing else tells it from the text
				out = append(out, strings.Repeat("=", columns(title[len(title)-1])))
			}
			for i+1 < len(lines) && lines[i+1] == "" && !p.read {
				i++ // a plan fills the window as it is
			}
		default:
			out = append(out, wrap(line, width)...)
		}
	}
	return out
}
