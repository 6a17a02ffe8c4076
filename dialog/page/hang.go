package page

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// hanging is one hanging of the yoke on the needles of a part.
type hanging struct {
	Title string // "Hanging 1 of 2", "" where there is one
	Words string
	Note  string // how many carry what, over the boxes
	Boxes needleList
}

// rehang says how many stitches are hung on how many needles, "" where the
// yoke is not known or too small.
func rehang(p *engine.Plan) string {
	yoke, _, ok := p.Waiting()
	if !ok || p.BandStitches == 0 || p.YokeDecreases < 0 {
		return ""
	}
	s := fmt.Sprintf("%d stitches on %d needles", yoke, p.Knitted())
	switch pieces := len(p.OnBed()); {
	case pieces > 1:
		return s + fmt.Sprintf(", in %d pieces.", pieces)
	case len(p.Hangings) > 0:
		return s + fmt.Sprintf(", in %d hangings with a plain row between, since no needle takes more than two.", p.Stages)
	}
	return s + ": " + answer.RehangWords(p) + "."
}

// hangings are the maps by which a part is hung, each with boxes for the
// needles to look out for.
func hangings(p *engine.Plan) []hanging {
	if rehang(p) == "" {
		return nil
	}
	if len(p.Hangings) == 0 {
		two := columns(p.Rehang, 2)
		return []hanging{{Words: capital(answer.RehangWords(p)) + ".", Note: carryTwo(two), Boxes: listOf(two, p.BandStitches)}}
	}
	var out []hanging
	for _, h := range p.Hangings {
		n, one, two := len(h.Map), columns(h.Map, 1), columns(h.Map, 2)
		g := hanging{
			Title: capital(answer.HangingName(h)),
			Words: fmt.Sprintf("%s on %s, %s to %s: %s.", answer.Count(h.Stitches(), "stitch", "stitches"), answer.Count(n, "needle", "needles"),
				engine.NeedleName(0, n), engine.NeedleName(n-1, n), answer.MapWords(h.Map)),
		}
		if len(two) > len(one) {
			g.Note, g.Boxes = fmt.Sprintf("%d needles carry one only:", len(one)), listOf(one, n)
		} else {
			g.Note, g.Boxes = carryTwo(two), listOf(two, n)
		}
		if h.Round < h.Rounds {
			g.Words += " Then a plain row, and off on waste yarn."
		}
		out = append(out, g)
	}
	return out
}

func carryTwo(cols []int) string { return fmt.Sprintf("%d needles carry two:", len(cols)) }

// columns are those that carry so many stitches.
func columns(m []int, stitches int) []int {
	var cols []int
	for c, s := range m {
		if s == stitches {
			cols = append(cols, c)
		}
	}
	return cols
}

// capital begins a text with a capital.
func capital(s string) string {
	if s == "" {
		return ""
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
