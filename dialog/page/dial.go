package page

import (
	"fmt"
	"math"
	"strconv"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// group is rows that follow each other at one setting of the dial.
type group struct {
	Part  string // "outer layer", "fold row", "inner layer", "" for a single layer
	Dial  string // large: "4.5", or clicks tighter than the garment
	Words string // the same as words: "dial 4.5", "3 clicks tighter"
	Rows  []int
}

// groups cuts the band's rows where the dial moves and where the layer ends.
func groups(p *engine.Plan) []group {
	var gs []group
	last := engine.TensionRow{}
	for _, r := range p.Tension() {
		part := partOf(p, r.Row)
		if n := len(gs); n == 0 || r.Clicks != last.Clicks || gs[n-1].Part != part {
			gs = append(gs, group{Part: part, Dial: setting(p, r), Words: words(p, r)})
		}
		g := &gs[len(gs)-1]
		g.Rows = append(g.Rows, r.Row)
		last = r
	}
	return gs
}

// tables sets the groups of the inner layer beside those before it, as they
// mirror each other.
func tables(gs []group) [][]group {
	for i, g := range gs {
		if g.Part == "inner layer" {
			return [][]group{gs[:i], gs[i:]}
		}
	}
	return [][]group{gs}
}

// partOf is the part of the band that a row belongs to.
func partOf(p *engine.Plan, row int) string {
	switch {
	case !p.Doubled:
		return ""
	case row <= p.LayerRows:
		return "outer layer"
	case row == p.LayerRows+1 && p.FoldRow > 0:
		return "fold row"
	}
	return "inner layer"
}

// words is one row's setting in words.
func words(p *engine.Plan, r engine.TensionRow) string {
	if r.Dial != nil {
		return "dial " + setting(p, r)
	}
	return answer.DialAt(r)
}

// dialHead says what a group's Dial is.
func dialHead(p *engine.Plan) string {
	if p.In.Has(engine.MainTension) {
		return "the dial number"
	}
	return "clicks tighter than the garment"
}

// setting is one row's setting: the dial number where the garment's is known,
// else clicks.
func setting(p *engine.Plan, r engine.TensionRow) string {
	switch {
	case r.Dial != nil:
		return dialNumber(*r.Dial, p.In.Int(engine.ClicksPerNumber))
	case r.Clicks < 0:
		return fmt.Sprintf("%d looser", -r.Clicks)
	}
	return strconv.Itoa(r.Clicks)
}

// dialNumber writes a dial number as the dial shows it: 4.5, and 4 2/3 rather
// than 4.667 on a dial with thirds.
func dialNumber(d float64, clicks int) string {
	if h := math.Round(d * 100); math.Abs(h/100-d) < 1e-9 {
		return strconv.FormatFloat(h/100, 'f', -1, 64)
	}
	whole := math.Floor(d)
	part := (d - whole) * float64(clicks)
	if math.Abs(part-math.Round(part)) > 1e-6 {
		return strconv.FormatFloat(math.Round(d*100)/100, 'f', -1, 64)
	}
	frac := fmt.Sprintf("%d/%d", int(math.Round(part)), clicks)
	if whole == 0 {
		return frac
	}
	return fmt.Sprintf("%d %s", int(whole), frac)
}

// dialSpan is the headline of the grading: from the first row to the fold.
func dialSpan(p *engine.Plan) (figure, label, note string) {
	rows := p.Tension()
	if len(rows) == 0 {
		return "", "", ""
	}
	first, end := rows[0], rows[p.LayerRows-1]
	to := "from the first row to the fold"
	if !p.Doubled {
		to = "from the first row to the last"
	}
	figure = setting(p, first)
	if first.Clicks != end.Clicks {
		figure += " to " + setting(p, end)
	} else {
		to = "for every row"
	}
	if first.Dial == nil {
		return figure, "clicks tighter", to
	}
	return figure, "on the dial", to
}
