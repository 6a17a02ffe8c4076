package page

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// yoke is the yoke above the band on the page: the counts of its stages, then
// how each is hung from the one before, with a box.
type yoke struct {
	Text   string // Markdown; all there is where the stages cannot be laid out
	Stages []stage
	Note   string
}

// stage is one hanging; Text is Markdown.
type stage struct{ Title, Text string }

// layYoke gathers the yoke, nil where none was spoken of. v writes for paper.
func layYoke(v answer.Voice, p *engine.Plan) *yoke {
	if p.Yoke == nil {
		return nil
	}
	text := v.Yoke(p)
	if p.Yoke.Fault != nil {
		text = "The stages of the yoke are not printed, since they cannot be as told. " + text
	}
	if text == "" {
		return nil
	}
	out := &yoke{Text: text}
	last := len(p.Yoke.Stages) - 1
	for i := range p.Yoke.Stages {
		title, text := v.HangWords(p, i)
		if i == last && rehang(p) != "" {
			text = "See *Hang again*."
		}
		out.Stages = append(out.Stages, stage{title, text})
	}
	if last > 0 {
		out.Note = "Knit one plain row before a pattern row, and count before you go on."
	}
	return out
}

// Sizes of the yoke's profile in mm.
const (
	profileWide = 150.0
	profileHigh = 70.0
	profileLeft = 14.0
)

// profile draws the yoke laid flat, its neck at the top: each stage is as wide
// as its stitches, and as high as its rows where they are known. "" without
// stages.
func profile(p *engine.Plan) string {
	if p.Yoke == nil || len(p.Yoke.Stages) < 2 {
		return ""
	}
	y := p.Yoke
	n := len(y.Stages) - 1
	widest, rows := 1, 0
	for i, s := range y.Stages {
		widest = max(widest, s.Count)
		if i < n {
			rows += stageHeight(y, i)
		}
	}
	d := draw(profileLeft+profileWide+2, profileHigh+10, "The yoke laid flat, neck at the top; the table tells its stages in figures")
	half := func(count int) float64 { return profileWide * float64(count) / float64(widest) / 2 }
	mid, bottom := profileLeft+profileWide/2, 8+profileHigh
	for i := range n {
		high := profileHigh * float64(stageHeight(y, i)) / float64(max(rows, 1))
		w := half(y.Stages[i].Count)
		d.path("mid", fmt.Sprintf("M%s %s h%s v-%s h-%s Z", mm(mid-w), mm(bottom), mm(2*w), mm(high), mm(2*w)))
		if high >= large {
			d.text(mid, bottom-high/2+1.5, large, "middle", "", answer.Count(y.Stages[i].Count, "stitch", "stitches"))
			d.text(0, bottom-high/2+1.5, small, "start", "", fmt.Sprintf("stage %d", i+1))
		}
		bottom -= high
	}
	w := half(y.Stages[n].Count)
	d.line("heavy", mid-w, bottom, mid+w, bottom)
	d.text(mid, bottom-2, large, "middle", "bold", fmt.Sprintf("neck, %d", y.Stages[n].Count))
	return d.String()
}

// stageHeight is the rows of stage i, one where they are not known.
func stageHeight(y *engine.YokePlan, i int) int {
	if i < len(y.Rows) {
		return max(1, y.Rows[i])
	}
	return 1
}

// yoke writes the same as Markdown.
func (m *markdown) yoke(s sheet) {
	if s.Yoke == nil {
		return
	}
	m.para("## The yoke")
	m.para(s.Yoke.Text)
	for _, st := range s.Yoke.Stages {
		m.para("### [ ] " + st.Title)
		m.para(st.Text)
	}
	m.para(s.Yoke.Note)
}

// chart writes the colour chart as Markdown: the repeat in signs, the last row
// on top as it is knitted, then the card of each row.
func (m *markdown) chart(s sheet) {
	if s.Chart == nil {
		return
	}
	m.para("## The chart")
	m.para(s.Chart.Text)
	if len(s.Chart.Cards) == 0 {
		return
	}
	lines := []string{"```"}
	for i := len(s.plan.Chart.Chart) - 1; i >= 0; i-- {
		line := fmt.Sprintf("row %2d  ", i+1)
		for range repeatsDrawn {
			for _, contrast := range s.plan.Chart.Chart[i] {
				line += map[bool]string{true: "x", false: "."}[contrast]
			}
		}
		lines = append(lines, line)
	}
	m.list(append(lines, "```"))
	m.para("x contrast, . main; " + chartReading)
	for _, c := range s.Chart.Cards {
		m.para("### " + strings.Repeat("[ ] ", len(c.Boxes)) + c.Title)
		m.para("- " + strings.Join(c.Lines, "\n- "))
	}
}
