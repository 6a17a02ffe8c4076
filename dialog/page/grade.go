package page

import (
	"fmt"
	"slices"
	"strings"

	"foldrow/engine"
)

// Sizes of the tension picture in mm.
const (
	rowWide   = 5.6
	chunkRows = 28 // rows in one picture
	axisWide  = 20.0
	gradeTop  = 10.0
	gradeEnd  = 5.0 // room for the fold's name at the right
)

// scale is where a setting stands in a tension picture.
type scale struct {
	min, max int     // clicks
	gap      float64 // mm from one click to the next
}

func scaleOf(rows []engine.TensionRow) scale {
	s := scale{min: rows[0].Clicks, max: rows[0].Clicks}
	for _, r := range rows {
		s.min, s.max = min(s.min, r.Clicks), max(s.max, r.Clicks)
	}
	// Ten levels or so are seen at a glance; many more are drawn closer.
	s.gap = max(2.5, min(6, 60/float64(s.max-s.min+1)))
	return s
}

func (s scale) y(clicks int) float64 { return gradeTop + s.gap*float64(clicks-s.min) }

// grade draws the tension going down to the fold and up again. A long band is
// cut at the fold, and each part into pictures of about as many rows; a
// stretch of rows at one setting needs none.
func grade(p *engine.Plan) []string {
	var out []string
	for _, rows := range gradeParts(p) {
		if s := scaleOf(rows); s.min < s.max {
			out = append(out, gradePiece(p, s, rows))
		}
	}
	return out
}

// gradeParts are the rows of each picture.
func gradeParts(p *engine.Plan) [][]engine.TensionRow {
	rows := p.Tension()
	if len(rows) == 0 {
		return nil
	}
	parts := [][]engine.TensionRow{rows}
	if fold := len(rows) - p.LayerRows; p.Doubled && len(rows) > chunkRows {
		parts = [][]engine.TensionRow{rows[:fold], rows[fold:]} // a fold row ends the first
	}
	var out [][]engine.TensionRow
	for _, part := range parts {
		pieces := (len(part) + chunkRows - 1) / chunkRows
		for i := range pieces {
			out = append(out, part[i*len(part)/pieces:(i+1)*len(part)/pieces])
		}
	}
	return out
}

func gradePiece(p *engine.Plan, s scale, rows []engine.TensionRow) string {
	bottom := s.y(s.max)
	label := fmt.Sprintf("Tension of rows %d to %d, tighter further down; the list of rows gives every setting in words",
		rows[0].Row, rows[len(rows)-1].Row)
	d := draw(axisWide+rowWide*float64(len(rows))+gradeEnd, bottom+8, label)
	axis(d, p, s)
	var line strings.Builder
	for i, r := range rows {
		x, y := axisWide+rowWide*float64(i), s.y(r.Clicks)
		if i == 0 {
			fmt.Fprintf(&line, "M%s %s", mm(x), mm(y))
		} else if r.Clicks != rows[i-1].Clicks {
			fmt.Fprintf(&line, " V%s", mm(y))
		}
		fmt.Fprintf(&line, " H%s", mm(x+rowWide))
		if r.Row < 100 || r.Row%2 == 0 { // three digits take the room of two rows
			d.text(x+rowWide/2, bottom+7, large, "middle", "", fmt.Sprint(r.Row))
		}
		foldMark(d, p, r, x, s)
	}
	d.path("heavy", line.String())
	if s.gap >= 3.6 {
		runLabels(d, p, s, rows)
	}
	return d.String()
}

// axis draws a thin line for every setting, and names as many as there is room.
func axis(d *drawing, p *engine.Plan, s scale) {
	named := -10.0
	for k := s.min; k <= s.max; k++ {
		y := s.y(k)
		d.line("thin", axisWide, y, d.width-gradeEnd, y)
		if y-named >= large {
			d.text(axisWide-2, y+1.5, large, "end", "bold", settingAt(p, k))
			named = y
		}
	}
	unit := "clicks"
	if p.In.Has(engine.MainTension) {
		unit = "dial"
	}
	d.text(0, 3.2, small, "start", "", unit)
	d.text(0, s.y(s.max)+7, small, "start", "", "row")
}

// settingAt is the setting at so many clicks, whether a row has it or not: the
// way to a fold row jumps over some.
func settingAt(p *engine.Plan, clicks int) string {
	at := engine.TensionRow{Clicks: clicks}
	for _, r := range p.Tension() {
		if r.Dial != nil {
			dial := *r.Dial + float64(r.Clicks-clicks)/float64(max(1, p.In.Int(engine.ClicksPerNumber)))
			at.Dial = &dial
			break
		}
	}
	return setting(p, at)
}

// runLabels names each stretch of rows where its setting fits over the line.
func runLabels(d *drawing, p *engine.Plan, s scale, rows []engine.TensionRow) {
	for i := 0; i < len(rows); {
		j := i
		for j < len(rows) && rows[j].Clicks == rows[i].Clicks {
			j++
		}
		text, room := narrow(setting(p, rows[i])), rowWide*float64(j-i)
		if wide(text, large)+0.6 <= room {
			d.text(axisWide+rowWide*float64(i)+room/2, s.y(rows[i].Clicks)-1.2, large, "middle", "bold", text)
		}
		i = j
	}
}

// narrow writes the thirds of a dial number as one sign each.
func narrow(dial string) string {
	return strings.NewReplacer(" 1/3", "⅓", " 2/3", "⅔", "1/3", "⅓", "2/3", "⅔").Replace(dial)
}

// foldMark draws the fold: after the outer layer's last row, or through the
// fold row itself. The line leaves room for the setting that stands over the
// tension there.
func foldMark(d *drawing, p *engine.Plan, r engine.TensionRow, x float64, s scale) {
	at, row := x+rowWide, r.Row
	if p.FoldRow > 0 {
		at, row = x+rowWide/2, row-1
	}
	if !p.Doubled || row != p.LayerRows {
		return
	}
	y := s.y(r.Clicks)
	if over := y - 1.6 - large; over > 4.5 {
		d.line("dashed", at, 4, at, over)
	}
	d.line("dashed", at, y+0.7, at, s.y(s.max)+3)
	d.text(at, 3.2, small, "middle", "", "fold")
}

// flat reports whether some stretch of rows is left without a picture.
func flat(p *engine.Plan) bool {
	return slices.ContainsFunc(gradeParts(p), func(rows []engine.TensionRow) bool {
		s := scaleOf(rows)
		return s.min == s.max
	})
}
