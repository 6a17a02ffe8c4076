package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// planWidth and planHeight are the window a plan should fit: with what can be
// said next, the line under its title where there is no colour, and the line
// to type on it then has no more than 24 lines.
const (
	planWidth  = 80
	planHeight = 19
)

// planLine is one line of the plan: in full, and in brief for a plan that has
// so much to tell that it would not fit one screen. What brief leaves out is
// shown on request.
type planLine struct {
	full, brief string
	rank        int // the lowest give way first
}

// fit puts the plan together, as much of it in full as one screen holds.
func fit(title string, lines, cautions []planLine, last planLine) string {
	write := func(rank int) string {
		pick := func(l planLine) string {
			if l.brief != "" && l.rank <= rank && height(l.brief) < height(l.full) {
				return l.brief
			}
			return l.full
		}
		var items []string
		for _, l := range lines {
			if s := pick(l); s != "" {
				items = append(items, "- "+s)
			}
		}
		parts := []string{title, strings.Join(items, "\n")}
		for _, c := range append(cautions, last) {
			if s := pick(c); s != "" {
				parts = append(parts, s)
			}
		}
		return strings.Join(parts, "\n\n")
	}
	text := write(0)
	for rank := 1; rank <= lastRank && height(text) > planHeight; rank++ {
		text = write(rank)
	}
	return text
}

// height is about how many lines a text takes in a window of planWidth; the
// empty line under a title is not set.
func height(markdown string) int {
	n := 0
	if strings.HasPrefix(markdown, "# ") {
		n = -1
	}
	for _, line := range strings.Split(markdown, "\n") {
		n++
		at := 0
		for _, word := range strings.Fields(strings.NewReplacer("**", "", "*", "").Replace(line)) {
			if at+len([]rune(word)) > planWidth {
				n, at = n+1, 2
			}
			at += len([]rune(word)) + 1
		}
	}
	return n
}

// In which order lines give way: first where two are hung, whose list is the
// longest and has its own picture, then what was assumed, the parts around the
// band, the needles of the hem and the rib, and the spread of the sizes.
const (
	rehangRank = iota + 1
	assumedRank
	partsRank
	hemRank
	ribRank
	sizesRank
	lastRank = sizesRank
)

// briefRehang is how many needles carry two, without their names.
func (v Voice) briefRehang(p *engine.Plan) string {
	if len(RehangWords(p)) < planWidth {
		return ""
	}
	s := fmt.Sprintf("**%s** in hanging again", Count(p.YokeDecreases, "decrease", "decreases"))
	if n, planned, _ := p.Waiting(); planned {
		s += fmt.Sprintf(" from the yoke's %d", n)
	}
	if two := Doubled(p); len(two) > 0 && len(p.OnBed()) == 1 {
		s += fmt.Sprintf(": two on %d needles, evenly from %s to %s", len(two),
			engine.NeedleName(two[0], p.BandStitches), engine.NeedleName(two[len(two)-1], p.BandStitches))
	}
	return s + "; *show the needles* names each."
}

// briefRib is the columns without their needles.
func (v Voice) briefRib(p *engine.Plan) string {
	if len(p.RibColumns) == 0 {
		return ""
	}
	s := fmt.Sprintf("**%s to drop and latch** (%s rib)", Count(columns(p), "column", "columns"), p.In.Rib)
	if p.TotalRows > 0 {
		s += fmt.Sprintf("; %d loops", columns(p)*p.TotalRows)
	}
	return s + "."
}

// briefMock is the needles out of work without their names.
func (v Voice) briefMock(p *engine.Plan) string {
	if len(p.EmptyColumns) == 0 {
		return ""
	}
	return fmt.Sprintf("**%s out of work** (%s mock rib), %d knit; nothing is latched.",
		Count(empties(p), "needle", "needles"), p.In.Rib, p.WorkStitches)
}

// briefHem is the bumps without their needles.
func (v Voice) briefHem(p *engine.Plan) string {
	if len(p.HemColumns) == 0 {
		return ""
	}
	return fmt.Sprintf("**%s to hang** for the hem.", Count(bumps(p), "bump", "bumps"))
}

// briefFront is the front bands by their counts.
func (v Voice) briefFront(p *engine.Plan) string {
	f := p.Front
	if _, ok := p.Float(engine.FrontStitches); !ok {
		return ""
	}
	text := fmt.Sprintf("**%d stitches** along each front", f.Stitches)
	if f.LayerRows > 0 {
		text += fmt.Sprintf("; %s a layer", Count(f.LayerRows, "row", "rows"))
	}
	if v.Value(p, engine.HolePositions) != "" {
		text += "; " + Count(f.Spec.Holes, "buttonhole", "buttonholes")
	}
	return text + "."
}

// briefYarn is the length to cut and what the band takes.
func (v Voice) briefYarn(p *engine.Plan) string {
	full := v.yarnPart(p)
	if p.Pieces < 2 || full == "" {
		return ""
	}
	if _, rest, found := strings.Cut(full, "; the whole band takes "); found {
		return "**Yarn:** " + v.cut(p.OffYarn.Float()) + " in all for the backstitch; the whole band takes " + rest
	}
	return ""
}

// briefSize is the sizes without their spread.
func (v Voice) briefSize(p *engine.Plan) string {
	if p.LayerRows == 0 || p.BandStitches == 0 {
		return ""
	}
	end := "fold"
	if !p.Doubled {
		end = "edge"
	}
	s := "**" + v.Value(p, engine.FoldCircumference) + " round** at the " + end
	if !p.In.Rib.IsPlain() {
		s += ", in the rib " + v.Value(p, engine.RelaxedCircumference) + " at rest and " +
			v.Value(p, engine.StretchedCircumference) + " stretched"
	}
	if lean := v.Value(p, engine.LeanDegrees); lean != "" {
		s += "; leans in " + lean
	}
	if head := v.Value(p, engine.HeadOpening); head != "" {
		s += "; opens to " + head + " for the head"
	}
	return s + ". Estimates."
}

// briefYoke is the yoke by its counts.
func (v Voice) briefYoke(p *engine.Plan) string {
	if p.Yoke == nil || p.Yoke.Stages == nil {
		return ""
	}
	return "**Yoke:** " + StageCounts(p.Yoke.Stages) + "."
}
