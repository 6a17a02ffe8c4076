package page

import (
	"bytes"
	_ "embed" // the page's template and style
	"html/template"
	"strings"

	"github.com/yuin/goldmark"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

//go:embed page.tmpl
var pageText string

//go:embed page.css
var styleText string

// HTML is the page of plan p as one file for A4 and Letter: no network, no
// script, no fonts of its own. said is what the knitter told, name the
// project's, "" where it has none. An error means that a text of the rules
// could not be turned into HTML.
func HTML(v answer.Voice, p *engine.Plan, said engine.Inputs, name string) (string, error) {
	s := lay(v, p, said, name)
	t, err := template.New("page").Funcs(functions(s)).Parse(pageText)
	if err != nil {
		return "", err
	}
	var b bytes.Buffer
	if err := t.Execute(&b, s); err != nil {
		return "", err
	}
	return b.String(), nil
}

// functions are what the template calls. Only text made here, from numbers or
// by goldmark with raw HTML off, is passed on unescaped.
func functions(s sheet) template.FuncMap {
	return template.FuncMap{
		"style":   func() template.CSS { return template.CSS(styleText) },
		"md":      toHTML,
		"svg":     func(text string) template.HTML { return template.HTML(text) },
		"strip":   func() []block { return strip(s) },
		"legend":  func() []sign { return legend(s) },
		"tables":  tables,
		"grade":   func() []string { return grade(s.plan) },
		"section": func() string { return crossSection(s) },
		"lean":    func() string { return leanWords(s) },
		"single":  func(cols []int) [][]string { return single(cols, s.Stitches) },
		"grouped": func(cols []int) [][]string { return grouped(cols, s.Stitches) },
		"edge":    func() string { return frontEdge(s.plan) },
		"layers":  func() []int { return upTo(s.layersOfHoles()) },
		"number":  func(i int) int { return i + 1 },
		"care":    func() string { return careFirst },
	}
}

// toHTML turns Markdown of the rules into HTML. Raw HTML in it is left out,
// which is what goldmark does unless told otherwise.
func toHTML(markdown string) (template.HTML, error) {
	var b strings.Builder
	err := goldmark.New().Convert([]byte(markdown), &b)
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
