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
	Doubled      []int  // columns that carry two
	DialHead     string
	Groups       []group
	LatchWords   string
	Latch        []int // columns
	EmptyWords   string
	Empty        []int  // columns of a mock rib, out of work
	KindNote     string // that a kind of band rests on our own figures
	Fronts       *fronts
	HemWords     string
	Hem          []int // columns
	Sizes        []size
	Cautions     []caution
	Assumed      []assumption
	plan         *engine.Plan
	voice        answer.Voice
}

// head is one of the large numbers.
type head struct{ Figure, Label, Note string }

// lay gathers the page of a plan. said is what the knitter told; whatever else
// the plan rests on is named as assumed.
func lay(v answer.Voice, p *engine.Plan, said engine.Inputs, name string) sheet {
	s := sheet{
		Title: "The neckband", Under: under(v, p), Heads: heads(v, p), Warnings: v.Cautions(p),
		Order: order(v, p), Stitches: p.BandStitches, Rehang: rehang(p), Doubled: answer.Doubled(p),
		DialHead: dialHead(p), Groups: groups(p), Latch: p.RibColumns, Hem: p.HemColumns,
		LatchWords: answer.NeedleRuns(p.RibColumns, p.BandStitches),
		HemWords:   answer.NeedleRuns(p.HemColumns, p.BandStitches),
		Empty:      p.EmptyColumns, EmptyWords: answer.NeedleRuns(p.EmptyColumns, p.BandStitches),
		KindNote: v.KindNote(p), Fronts: layFronts(v, p),
		Sizes: sizes(v, p), Cautions: cautions(v, p), Assumed: assumed(v, p, said),
		plan: p, voice: v,
	}
	if n := oneLine(name); n != "" {
		s.Title = n
	}
	return s
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
	if p.In.Rib.IsPlain() {
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
	var gauge []string
	for _, k := range []engine.Key{engine.StitchGauge, engine.RowGauge} {
		if s := v.Value(p, k); s != "" {
			gauge = append(gauge, s)
		}
	}
	if len(gauge) > 0 {
		parts = append(parts, "gauge "+strings.Join(gauge, ", "))
	}
	return strings.Join(parts, "; ") + "."
}

// heads are the numbers to be read from a distance.
func heads(v answer.Voice, p *engine.Plan) []head {
	var hs []head
	add := func(figure, label, note string) {
		if figure != "" {
			hs = append(hs, head{figure, label, note})
		}
	}
	count := func(k engine.Key) string {
		f, ok := p.Float(k)
		if !ok || f == 0 {
			return ""
		}
		return fmt.Sprint(int(f))
	}
	n := p.BandStitches
	add(count(engine.BandStitches), "stitches", "needles "+engine.NeedleName(0, n)+" to "+engine.NeedleName(n-1, n))
	if p.YokeDecreases > 0 {
		add(count(engine.YokeDecreases), "stitches to lose", "from "+v.Value(p, engine.YokeStitches)+" on the yoke")
	}
	add(rowHead(p))
	add(dialSpan(p))
	add(count(engine.ColumnCount), "columns to latch", loops(p))
	if n := len(p.EmptyColumns); n > 0 {
		add(fmt.Sprint(n), "needles out of work", v.Value(p, engine.WorkStitches)+" in work")
	}
	add(count(engine.HemCount), "bumps to hang", "of the first band row")
	if n > 0 {
		add(v.Value(p, engine.NeckResult), "neck", aside(v, p.NeckResult.Float(), p.NeckWanted.Float()))
	}
	add(v.Value(p, engine.DepthResult), "deep", aside(v, p.DepthResult.Float(), wantedDepth(p)))
	add(v.Value(p, engine.OffYarn), "of yarn to sew off", "backstitch, with tails")
	add(yarn(v, p))
	return hs
}

func rowHead(p *engine.Plan) (figure, label, note string) {
	if p.LayerRows == 0 {
		return "", "", ""
	}
	figure = fmt.Sprint(p.LayerRows)
	if !p.Doubled {
		return figure, "rows", "one layer"
	}
	note = fmt.Sprintf("%d in all", p.TotalRows)
	if p.FoldRow > 0 {
		note += ", one of them the fold row"
	}
	return figure, "rows a layer", note
}

func loops(p *engine.Plan) string {
	if p.TotalRows == 0 {
		return ""
	}
	return fmt.Sprintf("%d loops in all", len(p.RibColumns)*p.TotalRows)
}

// wantedDepth is the depth asked for, 0 where rows were.
func wantedDepth(p *engine.Plan) float64 {
	if p.In.Has(engine.DepthRows) {
		return 0
	}
	return p.In.Num(engine.Depth).Float()
}

// aside is the note beside a length: the other unit, and the wish it misses.
func aside(v answer.Voice, cm, wanted float64) string {
	var parts []string
	if v.Unit == "in" {
		parts = append(parts, answer.Voice{Book: v.Book}.Len(cm))
	}
	if wanted > 0 && v.Len(wanted) != v.Len(cm) {
		parts = append(parts, v.Len(wanted)+" wanted")
	}
	return strings.Join(parts, ", ")
}

func yarn(v answer.Voice, p *engine.Plan) (figure, label, note string) {
	figure, label = v.Value(p, engine.BandYarn), "of yarn in all"
	if g := v.Value(p, engine.BandYarnGrams); g != "" {
		note = "about " + g
	}
	low, high := v.Value(p, engine.BandYarnLow), v.Value(p, engine.BandYarnHigh)
	if low != "" && low != high {
		number, _, _ := strings.Cut(low, " ")
		figure, label = number+" to "+high, "of yarn in all (estimate)"
	}
	return figure, label, note
}
