package page

import (
	"bytes"
	_ "embed" // the page's template and style
	"html/template"
	"strings"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

//go:embed page.tmpl
var pageText string

//go:embed page.css
var styleText string

// HTML is the page of plan p as one file for A4 and Letter: no network, no
// script, no fonts of its own. said is what the knitter told, n what else
// stands on the sheets. An error means that a text of the rules could not be
// turned into HTML.
func HTML(v answer.Voice, p *engine.Plan, said engine.Inputs, n Notes) (string, error) {
	s := lay(v, p, said, n)
	t, err := template.New("page").Funcs(functions(s)).Parse(pageText)
	if err != nil {
		return "", err
	}
	var b bytes.Buffer
	if err := t.Execute(&b, s); err != nil {
		return "", err
	}
	return wholeFigures(b.String()), nil
}

// functions are what the template calls. Only text made here, from numbers or
// by goldmark with raw HTML off, is passed on unescaped.
func functions(s sheet) template.FuncMap {
	return template.FuncMap{
		"style":   func() template.CSS { return template.CSS(styleText + footStyle(s)) },
		"foot":    s.foot,
		"md":      toHTML,
		"svg":     func(text string) template.HTML { return template.HTML(text) },
		"profile": func() string { return profile(s.plan) },
		"grid":    func() string { return chartGrid(s.plan) },
		"reading": func() string { return chartReading },
		"beds":    func() []pieceBed { return chartBeds(s.plan) },
		"signs":   func() []sign { return chartLegend(s.plan) },
		"flat":    func() bool { return flat(s.plan) },
		"tables":  tables,
		"grade":   func() []string { return grade(s.plan) },
		"section": func() string { return crossSection(s) },
		"lean":    func() string { return leanWords(s) },
		"boxes":   s.Boxes,
		"pairs":   pairLines,
		"edge":    func() string { return frontEdge(s.plan) },
		"layers":  func() []int { return upTo(s.Fronts.Layers) },
		"number":  func(i int) int { return i + 1 },
		"care":    func() string { return careFirst },
	}
}

// toHTML turns Markdown of the rules into HTML. Raw HTML in it is left out,
// which is what goldmark does unless told otherwise.
func toHTML(markdown string) (template.HTML, error) {
	var b strings.Builder
	err := goldmark.New(goldmark.WithExtensions(extension.Table)).Convert([]byte(markdown), &b)
	return template.HTML(b.String()), err
}

// single names columns one by one.
func single(cols []int, stitches int) [][]string {
	out := make([][]string, len(cols))
	for i, c := range cols {
		out[i] = []string{engine.NeedleName(c, stitches)}
	}
	return out
}

// line is as many boxes as stand side by side on paper: ten needles, so that
// they are counted at a glance, or fewer where several go together.
type line [][]string

const lineNeedles = 10

// inLines sets groups of needles in lines. A bar before each group of several
// takes room as well: beside it five pairs would be one too many.
func inLines(groups [][]string) []line {
	for _, g := range groups {
		if len(g) > 1 {
			return cut(groups, lineNeedles-1, lineNeedles)
		}
	}
	return cut(groups, lineNeedles, lineNeedles)
}

// pairLines does the same where each has two boxes.
func pairLines(groups [][]string) []line { return cut(groups, 8, 6) }

// cut makes lines of so many needles, and at most so many groups.
func cut(groups [][]string, needles, most int) []line {
	widest := 1
	for _, g := range groups {
		widest = max(widest, len(g))
		if len(g[0]) > 3 { // names of three figures are wider
			needles, most = min(needles, 8), min(most, 8)
		}
	}
	each := max(1, min(most, needles/widest))
	var out []line
	for i := 0; i < len(groups); i += each {
		out = append(out, groups[i:min(i+each, len(groups))])
	}
	return out
}

// grouped names columns, those side by side together, so that the two needles
// of a wide rib's column are ticked as a pair.
func grouped(cols []int, stitches int) [][]string {
	var out [][]string
	for i, c := range cols {
		if i == 0 || c != cols[i-1]+1 {
			out = append(out, nil)
		}
		last := len(out) - 1
		out[last] = append(out[last], engine.NeedleName(c, stitches))
	}
	return out
}
