package page

import (
	"fmt"
	"strings"
	"unicode"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// sheet is what stands on the page, in the order of the work. Markdown and
// HTML are both written from it, so neither can say more than the other.
// Fields named Text hold Markdown, all others plain text.
type sheet struct {
	Title, Under string
	Heads        []head
	Warnings     []string // Markdown
	Order        []step
	Stitches     int
	Rehang       string // in words, "" where nothing is hung again
	Parts        []bedPart
	DialHead     string
	Groups       []group
	KindNote     string // that a kind of band rests on our own figures
	Fronts       *fronts
	Yoke         *yoke
	Chart        *chart
	Sizes        []size
	Cautions     []caution
	Assumed      []assumption
	Sources      []string
	Supposed     string // that all this is a what-if, "" for the kept plan
	Date         string
	plan         *engine.Plan
	voice        answer.Voice
}

// head is one of the large numbers.
type head struct{ Figure, Label, Note string }

// lay gathers the page of a plan. said is what the knitter told; whatever else
// the plan rests on is named as assumed.
func lay(v answer.Voice, p *engine.Plan, said engine.Inputs, n Notes) sheet {
	v.Paper = true
	s := sheet{
		Title: "The neckband", Date: oneLine(n.Date), Supposed: supposed(v, p, n.Supposed), Under: under(v, p), Heads: heads(v, p), Warnings: v.Cautions(p),
		Order: order(v, p), Stitches: p.BandStitches, Rehang: rehang(p), Parts: bedParts(v, p),
		DialHead: dialHead(p), Groups: groups(p),
		KindNote: v.KindNote(p), Fronts: layFronts(v, p), Yoke: layYoke(v, p), Chart: layChart(v, p),
		Sizes: sizes(v, p), Cautions: cautions(v, p), Assumed: assumed(v, p, said),
		plan: p, voice: v,
	}
	if name := oneLine(n.Name); name != "" {
		s.Title = name
	}
	s.cite(v)
	return s
}

// Hundreds reports rows of three figures, which want wider boxes.
func (s sheet) Hundreds() bool { return s.plan.TotalRows > 99 }

// InPieces reports a band that the bed does not take in one.
func (s sheet) InPieces() bool { return len(s.Parts) > 1 }

// Boxes are those of each row: one for every piece of the band.
func (s sheet) Boxes() []int { return upTo(max(1, len(s.Parts))) }

// RowsFor says that every piece is knitted by the same rows, "" for one.
func (s sheet) RowsFor() string {
	if !s.InPieces() {
		return ""
	}
	return fmt.Sprintf("The band is knitted in %d pieces, each by itself from hanging to sewing off, and each by these rows: a box for every piece. Then %s.", len(s.Parts), answer.Joints(s.plan))
}

// oneLine is a name as one line of visible characters: control and format
// characters could turn the page's own words around.
func oneLine(s string) string {
	s = strings.Map(func(r rune) rune {
		if unicode.In(r, unicode.Cc, unicode.Cf, unicode.Co, unicode.Zl, unicode.Zp) || r == unicode.ReplacementChar {
			return ' '
		}
		return r
	}, s)
	return strings.Join(strings.Fields(s), " ")
}

// under is the line below the title: what is being made.
func under(v answer.Voice, p *engine.Plan) string {
	parts := []string{"Neckband"}
	if p.In.Garment != "" {
		parts[0] += " of a " + string(p.In.Garment)
	}
	if p.In.Text(engine.KeyBandKind) == engine.BandRolled {
		parts = append(parts, "plain, left to roll")
	} else if p.In.Rib.IsPlain() {
		parts = append(parts, "plain")
	} else if p.In.Rib.IsSet() {
		rib := p.In.Rib.String() + " rib"
		if len(p.EmptyColumns) > 0 {
			rib = p.In.Rib.String() + " mock rib, needles out of work"
		}
		parts = append(parts, rib)
	}
	if p.LayerRows > 0 && p.Doubled {
		parts = append(parts, "doubled, with a hung hem")
	} else if p.LayerRows > 0 {
		parts = append(parts, "a single layer")
	}
	if gauge := gauges(v, p); gauge != "" {
		parts = append(parts, "gauge "+gauge)
	}
	return strings.Join(parts, "; ") + "."
}
