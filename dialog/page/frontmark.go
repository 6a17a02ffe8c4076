package page

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
)

// fronts writes the front bands as Markdown.
func (m *markdown) fronts(s sheet) {
	f := s.Fronts
	if f == nil {
		return
	}
	m.para("## The front bands")
	for _, t := range f.PickUp {
		m.para(t)
	}
	m.para(f.PinWords)
	m.para(f.Band)
	m.para(f.Dial)
	var lines []string
	for _, k := range f.Knit {
		line := "- " + k.Name + ":"
		for _, r := range k.Rows {
			line += fmt.Sprintf(" [ ] %d", r)
		}
		lines = append(lines, line)
	}
	m.list(lines)
	m.frontNeedles(f)
	m.holes(f)
	m.para(f.Button)
	for _, t := range f.First {
		m.para(t)
	}
}

// frontNeedles is the columns to latch and the bumps to hang, two boxes for
// the two fronts.
func (m *markdown) frontNeedles(f *fronts) {
	if len(f.Parts) == 0 {
		return
	}
	m.para("### The needles of a front band")
	m.para(f.Side + " Two boxes: one for each front.")
	for _, part := range f.Parts {
		m.para(strings.TrimPrefix(part.Name+": "+part.Where+".", ": "))
		m.both("Drop and latch", part.Latch)
		m.both("Hang the bump", part.Hem)
	}
}

func (m *markdown) both(title string, groups [][]string) {
	if len(groups) == 0 {
		return
	}
	lines := []string{title + ":", ""}
	for _, g := range pairLines(groups) {
		line := "-"
		for _, names := range g {
			line += " [ ] [ ] " + strings.Join(names, "+")
		}
		lines = append(lines, line)
	}
	m.list(lines)
}

// holes is a line for each buttonhole, with a box for each layer.
func (m *markdown) holes(f *fronts) {
	if len(f.Holes) == 0 {
		return
	}
	m.para("### " + answer.Count(len(f.Holes), "buttonhole", "buttonholes"))
	m.para("Counted from the lower end. A box for each layer in which it is made.")
	var lines []string
	for i, h := range f.Holes {
		lines = append(lines, fmt.Sprintf("- %s%d: stitches %s, needles %s; pin the button at stitch %s", strings.Repeat("[ ] ", f.Layers), i+1, h.Stitches, h.Needles, h.Pin))
	}
	m.list(lines)
	m.para(f.Gaps)
	m.para(f.Rows)
}

// upTo is the numbers 1 to n, for a template that draws so many boxes.
func upTo(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i + 1
	}
	return out
}
