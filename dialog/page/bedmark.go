package page

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// hang writes how a band that hangs in one is hung; its pieces tell it
// themselves.
func (m *markdown) hang(s sheet) {
	if s.Rehang == "" || s.InPieces() {
		return
	}
	m.para("## Hang again")
	m.para(s.Rehang)
	for _, b := range s.Parts {
		m.hangings(b)
	}
}

func (m *markdown) hangings(b bedPart) {
	for _, h := range b.Hangs {
		switch {
		case h.Title != "":
			m.para("**" + h.Title + ".** " + h.Words)
		case b.Name != "":
			m.para(h.Words)
		}
		m.boxes(h.Note, h.Boxes)
	}
}

// needles writes the needles of the band, piece by piece.
func (m *markdown) needles(s sheet) {
	for _, b := range s.Parts {
		if b.Name == "" {
			m.para("## The needles")
		} else {
			m.para("## " + b.Name)
			m.para(b.Where)
			if len(b.Hangs) > 0 {
				m.para("### Hang again")
				m.hangings(b)
			}
			m.para("### The needles")
		}
		m.part(b)
	}
}

func (m *markdown) part(b bedPart) {
	if len(lanesOf(b)) == 0 {
		m.para(b.Needles() + ", all in work; none is latched and no bump is hung.")
	} else if lines, words := b.Picture(); lines != nil {
		m.para("```\n" + strings.Join(lines, "\n") + "\n```")
		m.para(words)
	}
	if n := len(b.Latch.Cols); n > 0 {
		m.para("**Drop and latch** " + b.Latch.Words + ".")
		m.boxes(fmt.Sprintf("Columns to latch (%d):", n), b.Latch)
	}
	if n := len(b.Empty.Cols); n > 0 {
		m.para("**Leave out of work** " + b.Empty.Words + ".")
		m.boxes(fmt.Sprintf("Needles out of work (%d):", n), b.Empty)
	}
	if n := len(b.Hem.Cols); n > 0 {
		m.para("**Hang the hem** on " + b.Hem.Words + ".")
		m.boxes(fmt.Sprintf("Bumps to hang (%d):", n), b.Hem)
	}
}

// boxes is a needle list with a box for each, ten to a line.
func (m *markdown) boxes(title string, list needleList) {
	if len(list.Cols) == 0 {
		return
	}
	lines := []string{title, ""}
	for i := 0; i < len(list.Cols); i += 10 {
		line := "-"
		for _, c := range list.Cols[i:min(i+10, len(list.Cols))] {
			line += " [ ] " + engine.NeedleName(c, list.n)
		}
		lines = append(lines, line)
	}
	m.list(lines)
}
