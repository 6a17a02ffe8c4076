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
		line := fmt.Sprintf("%d. %s**%s**", i+1, strings.Repeat("[ ] ", len(st.Boxes)), st.Title)
		if st.Text != "" {
			line += ": " + strings.ReplaceAll(st.Text, "\n\n", " ")
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
	m.para(s.RowsFor())
	var lines []string
	for _, g := range s.Groups {
		line := "- " + g.Part
		if g.Part != "" {
			line += ", "
		}
		line += "**" + g.Words + "**:"
		for _, r := range g.Rows {
			line += strings.Repeat(" [ ]", len(s.Boxes())) + fmt.Sprintf(" %d", r)
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
			label := a.Label
			if label != "" {
				label += ": "
			}
			lines = append(lines, "- "+label+"**"+a.Value+"** (source "+a.Refs+")")
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
