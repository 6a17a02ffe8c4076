package answer

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"foldrow/engine"
)

// dialText is one row's setting: the dial number where it is known, else the
// clicks from the garment's tension.
func dialText(r engine.TensionRow) string {
	if r.Dial != nil {
		return "dial " + dialNumber(*r.Dial)
	}
	switch {
	case r.Clicks == 0:
		return "the garment's dial number"
	case r.Clicks < 0:
		return Count(-r.Clicks, "click", "clicks") + " looser"
	}
	return Count(r.Clicks, "click", "clicks") + " tighter"
}

// dialNumber is a dial setting as the dial is marked: thirds as "5 1/3",
// halves and quarters as decimals.
func dialNumber(d float64) string {
	thirds := math.Round(d * 3)
	if whole := math.Trunc(thirds / 3); math.Abs(d*3-thirds) < 1e-6 && thirds != whole*3 {
		return fmt.Sprintf("%d %d/3", int(whole), int(thirds-whole*3))
	}
	return trim(d, 2)
}

// tensionRuns groups rows that follow each other at one setting.
func tensionRuns(p *engine.Plan) []string {
	rows := p.Tension()
	var out []string
	for i := 0; i < len(rows); {
		j := i
		for j+1 < len(rows) && rows[j+1].Clicks == rows[i].Clicks {
			j++
		}
		out = append(out, RowSpan(rows[i].Row, rows[j].Row)+": "+dialText(rows[i]))
		i = j + 1
	}
	return out
}

// Grading is the dial for every row: in a few words, by setting, and drawn.
func (v Voice) Grading(p *engine.Plan) string {
	rows := p.Tension()
	if len(rows) == 0 {
		return ""
	}
	words := upper(gradingWords(p, rows)) + "."
	if rows[0].Dial == nil {
		words += " Say *main tension 6*, with your own number, and the dial numbers stand here."
	}
	return words + "\n\n" + tensionTable(p) + "\n" + tensionPicture(p)
}

// tensionTable lists the settings from the loosest, each with its rows.
func tensionTable(p *engine.Plan) string {
	rows := p.Tension()
	head := "clicks tighter"
	if rows[0].Dial != nil {
		head = "dial"
	}
	var b strings.Builder
	fmt.Fprintf(&b, "| %s | outer rows | inner rows |\n| --- | --- | --- |\n", head)
	if !p.Doubled {
		b.Reset()
		fmt.Fprintf(&b, "| %s | rows |\n| --- | --- |\n", head)
	}
	for _, k := range levels(rows) {
		var outer, inner, fold []int
		name := ""
		for _, r := range rows {
			switch {
			case r.Clicks != k:
				continue
			case p.FoldRow > 0 && r.Row == p.LayerRows+1:
				fold = append(fold, r.Row)
			case r.Row <= p.LayerRows:
				outer = append(outer, r.Row)
			default:
				inner = append(inner, r.Row)
			}
			name = setting(r)
		}
		if !p.Doubled {
			fmt.Fprintf(&b, "| %s | %s |\n", name, spans(outer))
			continue
		}
		in := spans(inner)
		if fold != nil {
			in = strings.TrimSuffix("fold "+spans(fold)+", "+in, ", ")
		}
		fmt.Fprintf(&b, "| %s | %s | %s |\n", name, spans(outer), in)
	}
	return b.String()
}

// levels are the settings that occur, in clicks, the loosest first.
func levels(rows []engine.TensionRow) []int {
	var out []int
	for _, r := range rows {
		if !slices.Contains(out, r.Clicks) {
			out = append(out, r.Clicks)
		}
	}
	slices.Sort(out)
	return out
}

// spans writes ascending numbers: "1, 2", "5 to 9".
func spans(list []int) string {
	var parts []string
	for i := 0; i < len(list); {
		j := i
		for j+1 < len(list) && list[j+1] == list[j]+1 {
			j++
		}
		switch {
		case j > i+1:
			parts = append(parts, fmt.Sprintf("%d to %d", list[i], list[j]))
		case j == i+1:
			parts = append(parts, fmt.Sprintf("%d, %d", list[i], list[j]))
		default:
			parts = append(parts, strconv.Itoa(list[i]))
		}
		i = j + 1
	}
	return strings.Join(parts, ", ")
}

// TensionPicture is the picture of the dial as lines, and what its signs mean;
// nil where the rows are not known.
func TensionPicture(p *engine.Plan) (lines []string, words string) {
	if p.Tension() == nil {
		return nil, ""
	}
	c, _, words := tensionCanvas(p)
	for _, line := range c.lines() {
		lines = append(lines, strings.TrimRight(line, " "))
	}
	return lines, words
}

func tensionPicture(p *engine.Plan) string {
	c, label, words := tensionCanvas(p)
	return picture(label, "#", c.lines()) + "\n" + legend(words)
}

// tensionCanvas draws every row as a mark at its setting, tighter further
// down, with the fold between the layers. label is the width of the settings'
// names at the left.
func tensionCanvas(p *engine.Plan) (c canvas, label int, words string) {
	rows := p.Tension()
	ks := levels(rows)
	name, wide := map[int]string{}, len("row")
	for _, r := range rows {
		name[r.Clicks] = setting(r)
		wide = max(wide, len(setting(r)))
	}
	fold := 0
	label = wide + 2
	if p.Doubled && p.FoldRow == 0 {
		fold = 1 // a column of its own
	}
	c = newCanvas(label+len(rows)+fold+3, len(ks)+1)
	for y, k := range ks {
		c.put(0, y, name[k])
	}
	c.put(0, len(ks), "row")
	at := func(row int) int {
		if row > p.LayerRows {
			return label + row - 1 + fold
		}
		return label + row - 1
	}
	for y := range ks {
		if p.Doubled {
			c.put(label+p.LayerRows, y, ":")
		}
	}
	for _, r := range rows {
		c.put(at(r.Row), slices.Index(ks, r.Clicks), "#")
		if r.Row == 1 || r.Row%5 == 0 {
			c.put(at(r.Row), len(ks), strconv.Itoa(r.Row))
		}
	}
	words = "Each # is one row, further down tighter."
	if p.Doubled {
		words = "Each # is one row, further down tighter; : is the fold."
	}
	return c, label, words
}

func setting(r engine.TensionRow) string {
	if r.Dial != nil {
		return dialNumber(*r.Dial)
	}
	return strconv.Itoa(r.Clicks)
}

// DialAt is the setting of one row in words.
func DialAt(r engine.TensionRow) string { return dialText(r) }
