package answer

import (
	"fmt"
	"math"
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
func tensionRuns(p engine.Plan) []string {
	rows := p.Tension()
	var out []string
	for i := 0; i < len(rows); {
		j := i
		for j+1 < len(rows) && rows[j+1].Clicks == rows[i].Clicks {
			j++
		}
		span := fmt.Sprintf("row %d", rows[i].Row)
		if j > i {
			span = fmt.Sprintf("rows %d to %d", rows[i].Row, rows[j].Row)
		}
		out = append(out, span+": "+dialText(rows[i]))
		i = j + 1
	}
	return out
}

// TensionTable is the dial for every row: outer layer down, inner layer
// beside it, since the two mirror each other about the fold.
func TensionTable(p engine.Plan) string {
	rows := p.Tension()
	if len(rows) == 0 {
		return ""
	}
	head := "clicks tighter"
	if rows[0].Dial != nil {
		head = "dial"
	}
	var b strings.Builder
	if !p.Doubled {
		fmt.Fprintf(&b, "| row | %s |\n| --- | --- |\n", head)
		for _, r := range rows {
			fmt.Fprintf(&b, "| %d | %s |\n", r.Row, setting(r))
		}
		return b.String()
	}
	fmt.Fprintf(&b, "| outer row | %s | inner row |\n| --- | --- | --- |\n", head)
	for i := range p.LayerRows {
		fmt.Fprintf(&b, "| %d | %s | %d |\n", rows[i].Row, setting(rows[i]), rows[len(rows)-1-i].Row)
	}
	if p.FoldRow > 0 {
		fmt.Fprintf(&b, "| fold %d | %s |  |\n", rows[p.LayerRows].Row, setting(rows[p.LayerRows]))
	}
	return b.String()
}

func setting(r engine.TensionRow) string {
	if r.Dial != nil {
		return dialNumber(*r.Dial)
	}
	return fmt.Sprint(r.Clicks)
}

// DialAt is the setting of one row in words.
func DialAt(r engine.TensionRow) string { return dialText(r) }
