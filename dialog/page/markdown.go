package page

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// Markdown is the page of plan p as plain Markdown. said is what the knitter
// told, n what else stands on it. Its boxes, "[ ]", are ticked with a pencil.
func Markdown(v answer.Voice, p *engine.Plan, said engine.Inputs, n Notes) string {
	s := lay(v, p, said, n)
	m := &markdown{}
	m.para("# " + literal(s.Title))
	if s.Supposed != "" {
		m.para("**WHAT IF.** " + s.Supposed)
	}
	m.para(s.Under)
	if s.Date != "" {
		m.para("Printed " + literal(s.Date) + ".")
	}
	var lines []string
	for _, h := range s.Heads {
		lines = append(lines, "- "+h.words())
	}
	m.list(lines)
	for _, w := range s.Warnings {
		m.para("**Caution:** " + w)
	}
	m.hang(s)
	m.rows(s)
	m.needles(s)
	m.yoke(s)
	m.chart(s)
	m.fronts(s)
	m.order(s)
	m.sit(s)
	m.end(s)
	return m.String()
}

func (h head) words() string {
	s := "**" + h.Figure + "** " + h.Label
	if h.Note != "" {
		s += " (" + h.Note + ")"
	}
	return s
}

// literal keeps a text from meaning anything in Markdown.
func literal(s string) string {
	var b strings.Builder
	for _, r := range s {
		if strings.ContainsRune("\\`*_{}[]<>()#+-.!|&~:/", r) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	return b.String()
}

// markdown puts parts together with an empty line between.
type markdown struct{ strings.Builder }

func (m *markdown) para(s string) {
	if s == "" {
		return
	}
	if m.Len() > 0 {
		m.WriteString("\n")
	}
	m.WriteString(strings.TrimRight(s, "\n") + "\n")
}

func (m *markdown) list(lines []string) { m.para(strings.Join(lines, "\n")) }

func (m *markdown) order(s sheet) {
	if len(s.Order) == 0 {
		return
	}
	m.para("## Order of work")
	var lines []string
	for i, st := range s.Order {
		line := fmt.Sprintf("%d. [ ] **%s**", i+1, st.Title)
		if st.Text != "" {
			line += ": " + strings.ReplaceAll(st.Text, "\n\n", " ")
		}
		lines = append(lines, line)
	}
	m.list(lines)
}

func (m *markdown) hang(s sheet) {
	if s.Rehang == "" {
		return
	}
	m.para("## Hang again")
	m.para(s.Rehang)
	m.boxes("Needles that carry two", s.Doubled, s.Stitches)
}

func (m *markdown) needles(s sheet) {
	if s.Stitches == 0 {
		return
	}
	m.para("## The needles")
	if len(lanesOf(s)) == 0 {
		m.para(fmt.Sprintf("%s to %s, all in work; none is latched and no bump is hung.", engine.NeedleName(0, s.Stitches), engine.NeedleName(s.Stitches-1, s.Stitches)))
	} else if lines, words := answer.CutStrip(s.plan, 5); lines != nil {
		m.para("```\n" + strings.Join(lines, "\n") + "\n```")
		m.para(words)
	}
	if len(s.Latch) > 0 {
		m.para("**Drop and latch** " + s.LatchWords + ".")
		m.boxes("Columns to latch", s.Latch, s.Stitches)
	}
	if len(s.Empty) > 0 {
		m.para("**Leave out of work** " + s.EmptyWords + ".")
		m.boxes("Needles out of work", s.Empty, s.Stitches)
	}
	if len(s.Hem) > 0 {
		m.para("**Hang the hem** on " + s.HemWords + ".")
		m.boxes("Bumps to hang", s.Hem, s.Stitches)
	}
}

// boxes is a needle list with a box for each, ten to a line.
func (m *markdown) boxes(title string, cols []int, stitches int) {
	if len(cols) == 0 {
		return
	}
	lines := []string{fmt.Sprintf("%s (%d):", title, len(cols)), ""}
	for i := 0; i < len(cols); i += 10 {
		line := "-"
		for _, c := range cols[i:min(i+10, len(cols))] {
			line += " [ ] " + engine.NeedleName(c, stitches)
		}
		lines = append(lines, line)
	}
	m.list(lines)
}

func (m *markdown) rows(s sheet) {
	if len(s.Groups) == 0 {
		return
	}
	m.para("## Rows and tension")
	var lines []string
	for _, g := range s.Groups {
		line := "- " + g.Part
		if g.Part != "" {
			line += ", "
		}
		line += "**" + g.Words + "**:"
		for _, r := range g.Rows {
			line += fmt.Sprintf(" [ ] %d", r)
		}
		lines = append(lines, line)
	}
	m.list(lines)
	if picture, words := answer.TensionPicture(s.plan); picture != nil && graded(s.plan) {
		m.para("```\n" + strings.Join(picture, "\n") + "\n```")
		m.para(words)
	}
}

func (m *markdown) sit(s sheet) {
	if len(s.Sizes) == 0 {
		return
	}
	m.para("## How it will sit")
	var lines []string
	for _, z := range s.Sizes {
		line := "- " + z.Label + ": **" + z.Value + "**"
		if z.Spread != "" {
			line += " (" + z.Spread + ")"
		}
		lines = append(lines, line+": "+z.Note+" (source "+z.Refs+")")
	}
	m.list(lines)
	m.para(s.KindNote)
}

func (m *markdown) end(s sheet) {
	var lines []string
	if len(s.Cautions) > 0 {
		m.para("## Take care")
		m.para(careFirst)
		for _, c := range s.Cautions {
			lines = append(lines, "- **"+c.Title+".** "+c.Text)
		}
		m.list(lines)
	}
	if len(s.Assumed) > 0 {
		m.para("## Assumed, since nothing else was said")
		lines = nil
		for _, a := range s.Assumed {
			lines = append(lines, "- "+a.Label+": **"+a.Value+"** (source "+a.Refs+")")
		}
		m.list(lines)
	}
	if len(s.Sources) > 0 {
		m.para("## Sources of the figures")
		lines = nil
		for i, where := range s.Sources {
			lines = append(lines, fmt.Sprintf("%d. %s", i+1, where))
		}
		m.list(lines)
	}
}

// careFirst stands over the cautions.
const careFirst = "Local rules and the advice of qualified people come first."
