package page

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// Sizes of the tension picture in mm.
const (
	rowWide   = 6.2
	chunkRows = 26 // rows in one picture
	axisWide  = 20.0
	gradeTop  = 10.0
	gradeEnd  = 4.0 // room for the fold's name at the right
)

// scale is where a setting stands in the tension pictures.
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
	s.gap = max(2.5, min(7, 70/float64(s.max-s.min+1)))
	return s
}

func (s scale) y(clicks int) float64 { return gradeTop + s.gap*float64(clicks-s.min) }

// grade draws the tension going down to the fold and up again. A long band is
// cut into several pictures of about as many rows.
func grade(p *engine.Plan) []string {
	rows := p.Tension()
	if len(rows) == 0 {
		return nil
	}
	s := scaleOf(rows)
	pieces := (len(rows) + chunkRows - 1) / chunkRows
	var out []string
	for i := range pieces {
		lo, hi := i*len(rows)/pieces, (i+1)*len(rows)/pieces
		out = append(out, gradePiece(p, s, rows[lo:hi]))
	}
	return out
}

func gradePiece(p *engine.Plan, s scale, rows []engine.TensionRow) string {
	bottom := s.y(s.max)
	label := fmt.Sprintf("Tension of rows %d to %d, tighter further down; the list of rows gives every setting in words",
		rows[0].Row, rows[len(rows)-1].Row)
	d := draw(axisWide+rowWide*float64(len(rows))+gradeEnd, bottom+9, label)
	axis(d, p, s, rows)
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
			d.text(x+rowWide/2, bottom+7.5, large, "middle", "", fmt.Sprint(r.Row))
		}
		foldMark(d, p, r.Row, x, bottom)
	}
	d.path("heavy", line.String())
	if s.gap >= 6 {
		runLabels(d, p, s, rows)
	}
	return d.String()
}

// axis draws a thin line for every setting, and names as many as there is room.
func axis(d *drawing, p *engine.Plan, s scale, rows []engine.TensionRow) {
	named := -10.0
	for k := s.min; k <= s.max; k++ {
		y := s.y(k)
		d.line("thin", axisWide, y, d.width-gradeEnd, y)
		if text := settingAt(p, k); text != "" && y-named >= large {
			d.text(axisWide-2, y+1.5, large, "end", "bold", text)
			named = y
		}
	}
	unit := "clicks"
	if p.In.Has(engine.MainTension) {
		unit = "dial"
	}
	d.text(0, 3.2, small, "start", "", unit)
	d.text(0, s.y(s.max)+7.5, small, "start", "", "row")
}

// settingAt is the setting of any row at so many clicks, "" where none is.
func settingAt(p *engine.Plan, clicks int) string {
	for _, r := range p.Tension() {
		if r.Clicks == clicks {
			return setting(p, r)
		}
	}
	return ""
}

// runLabels names each stretch of rows where its setting fits over the line.
func runLabels(d *drawing, p *engine.Plan, s scale, rows []engine.TensionRow) {
	for i := 0; i < len(rows); {
		j := i
		for j < len(rows) && rows[j].Clicks == rows[i].Clicks {
			j++
		}
		text, room := setting(p, rows[i]), rowWide*float64(j-i)
		if wide(text, large)+1 <= room {
			d.text(axisWide+rowWide*float64(i)+room/2, s.y(rows[i].Clicks)-1.2, large, "middle", "bold", text)
		}
		i = j
	}
}

// foldMark draws the fold: after the outer layer's last row, or through the
// fold row itself.
func foldMark(d *drawing, p *engine.Plan, row int, x, bottom float64) {
	at := x + rowWide
	if p.FoldRow > 0 {
		at, row = x+rowWide/2, row-1
	}
	if !p.Doubled || row != p.LayerRows {
		return
	}
	d.line("dashed", at, 4, at, bottom+3.5)
	d.text(at, 3.2, small, "middle", "", "fold")
}
