package dialog

import (
	"fmt"
	"slices"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// partAsked is which part of a list is asked about: "first", "last", "nth",
// "row", or "needle" for one named needle.
func (c *turn) partAsked() string {
	if c.m.Needle != "" {
		return "needle"
	}
	return c.m.Part
}

// withCompanions adds what is asked in the same breath: the ends of a range,
// the other end of the bed, the count of a list.
func withCompanions(keys []engine.Key, part string) []engine.Key {
	out := append([]engine.Key(nil), keys...)
	pair := map[engine.Key]engine.Key{
		engine.BandYarnLow: engine.BandYarnHigh, engine.BandYarnHigh: engine.BandYarnLow,
		engine.RibColumns: engine.ColumnCount, engine.HemNeedles: engine.HemCount, engine.FoldClicks: engine.Tension,
	}
	if part == "needle" {
		return out
	}
	if part == "" {
		pair[engine.LeftNeedle], pair[engine.RightNeedle] = engine.RightNeedle, engine.LeftNeedle
	}
	for _, k := range keys {
		if other, ok := pair[k]; ok && part == "" && !hasKey(out, other) {
			out = append(out, other)
		}
	}
	return out
}

// tensionPart is the dial on one row, or the whole grading.
func (c *turn) tensionPart(p *engine.Plan) (string, bool) {
	rows := p.Tension()
	if len(rows) == 0 {
		return "", false
	}
	pick := -1
	switch {
	case c.m.HasFig && (c.m.Part == "row" || c.m.Part == "nth"):
		pick = c.m.Figure.Floor() - 1
		if pick < 0 || pick >= len(rows) {
			return fmt.Sprintf("The band has rows 1 to %d.", len(rows)), true
		}
	case c.m.Part == "first":
		pick = 0
	case c.m.Part == "last":
		pick = len(rows) - 1
	case c.m.Part == "back":
		if i := easesAt(p, rows); i > 0 {
			c.answer(engine.Tension, rows)
			return fmt.Sprintf("From row **%d** on the dial goes back: %s there, after %s. In full: %s.", rows[i].Row, answer.DialAt(rows[i]), answer.DialAt(rows[i-1]), c.voice().Value(p, engine.Tension)), true
		}
	}
	if pick < 0 {
		c.answer(engine.Tension, rows)
		return "Tension: " + c.voice().Value(p, engine.Tension) + ".", true
	}
	c.answer(engine.Tension, rows[pick:pick+1])
	text := fmt.Sprintf("Row %d: **%s**.", rows[pick].Row, answer.DialAt(rows[pick]))
	if pick+1 < len(rows) && rows[pick+1].Clicks != rows[pick].Clicks {
		text += fmt.Sprintf(" After it: %s.", answer.DialAt(rows[pick+1]))
	}
	return text, true
}

// easesAt is the index of the first row looser than the one before it, the
// fold row left out; 0 where the dial never goes back.
func easesAt(p *engine.Plan, rows []engine.TensionRow) int {
	last := 0
	for i, row := range rows {
		if p.FoldRow > 0 && row.Row == p.LayerRows+1 {
			continue
		}
		if row.Clicks < rows[last].Clicks {
			return i
		}
		last = i
	}
	return 0
}

func (c *turn) needlePart(p *engine.Plan, k engine.Key, cols []int, what string) (string, bool) {
	if len(cols) == 0 {
		if p.BandStitches == 0 {
			return "", false
		}
		return fmt.Sprintf("There is no %s in this band.", what), true
	}
	pick := -1
	switch {
	case c.m.Part == "first":
		pick = 0
	case c.m.Part == "last":
		pick = len(cols) - 1
	case c.m.Part == "nth" && c.m.HasFig:
		pick = c.m.Figure.Floor() - 1
	}
	if p.Pieces > 1 && p.Piece == nil {
		c.answersOf(p, k)
		if c.s.Making.On && !c.s.OnTable && len(p.Parts) > 1 {
			return c.partAtHand(k, what)
		}
		if c.m.Needle != "" && len(p.Parts) > 1 {
			return c.needleInPieces(p, k, what)
		}
		return fmt.Sprintf("%s: %s. %d in all.", title(c.voice().Label(k)), c.voice().Value(p, k), allOf(p, k)), true
	}
	if pick >= len(cols) {
		return fmt.Sprintf("There are %d; the last is %s.", len(cols), engine.NeedleName(cols[len(cols)-1], p.BandStitches)), true
	}
	if pick >= 0 {
		name := engine.NeedleName(cols[pick], p.BandStitches)
		c.answer(k, []string{name})
		return fmt.Sprintf("%s **%s** (from the left; needle %d of the band).", title(what), name, cols[pick]+1), true
	}
	if c.m.Needle != "" {
		return c.needleIs(p, k, cols, what)
	}
	c.answersOf(p, k)
	return fmt.Sprintf("%s: **%s**, %d in all.", title(c.voice().Label(k)), answer.NeedleRuns(cols, p.BandStitches), len(cols)), true
}

// needleIs answers "is R12 a hem needle".
func (c *turn) needleIs(p *engine.Plan, k engine.Key, cols []int, what string) (string, bool) {
	c.answersOf(p, k)
	at, ok := engine.NeedleColumn(c.m.Needle, p.BandStitches)
	if !ok {
		return fmt.Sprintf("%s is not in work: the band runs from %s to %s.", c.m.Needle,
			engine.NeedleName(0, p.BandStitches), engine.NeedleName(p.BandStitches-1, p.BandStitches)), true
	}
	yes := "No, %s is not a %s."
	if slices.Contains(cols, at) {
		yes = "Yes, %s is a %s."
	}
	return fmt.Sprintf(yes, c.m.Needle, what) + " " + onNeedle(p, at), true
}

// onNeedle is what happens to the stitch in column at, in a sentence.
func onNeedle(p *engine.Plan, at int) string {
	text := "It stays a plain knit column"
	switch {
	case slices.Contains(p.EmptyColumns, at):
		text = "It is out of work"
	case slices.Contains(p.RibColumns, at):
		text = "It is dropped and latched"
	case p.Piece != nil && (at < p.Piece.Left || at >= p.BandStitches-p.Piece.Right):
		text = "It goes into the join and stays plain"
	case atEdge(p, at):
		text = "It is an edge stitch and stays plain"
	}
	if slices.Contains(p.HemColumns, at) {
		text += ", and a bump of the hem is hung on it"
	}
	return text + "."
}

// atEdge reports whether column at is an edge stitch of the band, of which a
// piece has those at the band's own ends.
func atEdge(p *engine.Plan, at int) bool {
	edge := p.In.Int(engine.EdgeStitches)
	left, right := p.Piece == nil || p.Piece.No == 1, p.Piece == nil || p.Piece.No == p.Piece.Of
	return left && at < edge || right && at >= p.BandStitches-edge
}

func (c *turn) rehangPart(p *engine.Plan) (string, bool) {
	if _, _, ok := p.Waiting(); !ok || p.BandStitches == 0 {
		return "Tell me how many stitches wait on the waste yarn (\"132 stitches on the yoke\") and I will spread the decreases.", true
	}
	if v, ok := p.Value(engine.Rehang); ok {
		c.answer(engine.Rehang, v)
	}
	if v, ok := p.Value(engine.BandHangings); ok {
		c.answer(engine.BandHangings, v)
	}
	if words := answer.RehangWords(p); words != "" {
		return title(words) + ".", true
	}
	return "", false
}
