package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// blockedByMaking is the reason why what is already made rules the change
// out, with what is still possible; "" where nothing made is touched. It looks
// at what the change does to the plan, not at what was said: a neck that keeps
// the count is no trouble to stitches on their needles.
func (c *turn) blockedByMaking(a applied) string {
	if !c.s.Making.On {
		return ""
	}
	was := c.kept()
	if was.BandStitches == 0 || was.LayerRows == 0 {
		return ""
	}
	b := block{c: c, w: c.standing(was), was: was, now: c.solve(a.in), in: a.in}
	for _, rule := range []func() string{b.stitches, b.layers, b.rowCount, b.foldRow, b.grading, b.columns, b.hem} {
		if why := rule(); why != "" && b.sewnOff() {
			return "The neckband is sewn off as it was planned: its stitches and rows can no longer change. Nothing has changed."
		} else if why != "" {
			return why + " Nothing has changed."
		}
	}
	return ""
}

// block holds a change against what is made.
type block struct {
	c        *turn
	w        where
	was, now *engine.Plan
	in       engine.Inputs
}

// begun reports whether the step of that kind is done, or begun.
func (b block) begun(needles string) bool {
	for i, card := range b.w.order {
		if card.Fields["needles"] == needles {
			return b.w.at > i || b.w.at == i && b.w.m.Done > 0
		}
	}
	return false
}

// sewnOff: the whole neckband is made.
func (b block) sewnOff() bool { return b.w.m.Over || b.w.at > b.w.index("sew-off") }

// hung: the band's stitches are on their needles.
func (b block) hung() bool {
	first, _ := b.w.rowSteps()
	return b.w.at >= first
}

// rowsOver: no row can be added or left out any more. A doubled band is
// settled by its fold, a single one when its columns are latched or it is
// sewn off.
func (b block) rowsOver() bool {
	_, last := b.w.rowSteps()
	if b.was.Doubled {
		return b.w.m.Row > b.was.LayerRows
	}
	return b.begun("latch") || b.w.at > last+1 || b.w.at > last && b.w.card().Fields["needles"] == "sew" && b.w.m.Column != ""
}

// stitches: the count stands until the band is hung again.
func (b block) stitches() string {
	n := b.was.BandStitches
	if !b.hung() || b.now.BandStitches == n {
		return ""
	}
	why := fmt.Sprintf("%d stitches hang on the needles, and that takes %d.", n, b.now.BandStitches)
	if b.in.Rib != b.was.In.Rib || !b.in.Same(b.c.s.Said, engine.EdgeStitches) {
		why += " " + b.ribsThatFit()
	} else {
		why += fmt.Sprintf(" With %d the neck comes to %s.", n, b.c.voice().Len(b.was.NeckResult.Float()))
	}
	return why + b.stillOpen() + " To change it all the same, take the band back to the plain row and say *start from hang again*."
}

// ribsThatFit names what the stitches on the needles still close in; the neck
// that they give is said along where the plan would else move off them.
func (b block) ribsThatFit() string {
	if b.begun("latch") {
		return "The columns are being latched, too."
	}
	n := b.was.BandStitches
	neck, neckWord := b.neckToSay()
	var fits []string
	for _, r := range b.c.book.Ribs {
		if r.Rib == b.was.In.Rib {
			continue
		}
		in := b.c.s.Said.WithRib(r.Rib)
		switch {
		case engine.Solve(b.c.filled(in)).BandStitches == n:
			fits = append(fits, "*"+r.Rib.String()+"*")
		case engine.Solve(b.c.filled(in.Without(engine.NeckBody).With(engine.Neck, neck))).BandStitches == n:
			fits = append(fits, "*neck "+neckWord+" and "+r.Rib.String()+"*")
		}
	}
	if len(fits) == 0 {
		return fmt.Sprintf("No other rib closes on %d.", n)
	}
	return fmt.Sprintf("On %d these still close: %s.", n, strings.Join(fits, ", "))
}

// neckToSay is the neck that the stitches on the needles give, as one would
// type it, and just what that means in cm.
func (b block) neckToSay() (engine.Num, string) {
	per, unit := engine.Int(1), " cm"
	if b.c.s.Unit == "in" {
		per, unit = engine.Frac(254, 100), " in"
	}
	tenths := engine.Frac(int64(b.was.NeckResult.Div(per).Mul(engine.Int(10)).Round()), 10)
	return tenths.Mul(per), answer.Trim(tenths.Float(), 1) + unit
}

// layers: one layer or two is settled at the fold, or where latching begins.
func (b block) layers() string {
	if b.was.Doubled == b.now.Doubled || !b.rowsOver() {
		return ""
	}
	if b.was.Doubled {
		return fmt.Sprintf("The fold is behind you, with %s knitted: the band stays doubled.%s", rowsWord(b.w.m.Row), b.stillOpen())
	}
	return "The single layer is being finished: a second one would have to be knitted before that." + b.stillOpen()
}

// rowCount: rows may come and go until the fold, but not below those knitted.
func (b block) rowCount() string {
	old, now := b.was.LayerRows, b.now.LayerRows
	if !b.hung() || old == now && b.was.Doubled == b.now.Doubled {
		return ""
	}
	if b.rowsOver() {
		why := fmt.Sprintf("The outer layer is knitted with %s, and that takes %d.", rowsWord(old), now)
		if !b.was.Doubled {
			why = fmt.Sprintf("The layer is knitted with %s, and that takes %d.", rowsWord(old), now)
		}
		if !b.asksRows() {
			why += fmt.Sprintf(" Say *%d rows a layer* first, which holds the rows as they are, then say this again.", old)
		}
		return why + b.stillOpen()
	}
	if now < b.w.m.Row {
		return fmt.Sprintf("%s knitted already, and that would have only %d in the layer. From %d rows on, any number is still possible; fewer means taking rows out, then *I'm on row %d*.",
			title(rowsWord(b.w.m.Row))+" "+isAre(b.w.m.Row), now, b.w.m.Row, now+1)
	}
	return ""
}

// asksRows: the depth itself is what was changed, not a measure that moves
// it.
func (b block) asksRows() bool {
	return !b.in.Same(b.c.s.Said, engine.Depth) || !b.in.Same(b.c.s.Said, engine.DepthRows)
}

// foldRow: until the fold is knitted.
func (b block) foldRow() string {
	if b.was.FoldRow == b.now.FoldRow || !b.was.Doubled || b.w.m.Row <= b.was.LayerRows {
		return ""
	}
	return "The fold is behind you: its row is knitted as it is." + b.stillOpen()
}

// grading: only rows that are still to come can be graded otherwise.
func (b block) grading() string {
	row := b.differs(b.now)
	if row == 0 {
		return ""
	}
	var fits []string
	for n := range 7 {
		in := b.c.s.Said.With(engine.RowsPerClick, engine.Int(int64(n)))
		if n != b.was.In.Int(engine.RowsPerClick) && b.differs(engine.Solve(b.c.filled(in))) == 0 {
			fits = append(fits, fmt.Sprint(n))
		}
	}
	why := fmt.Sprintf("Row %d is knitted at %s, and that would have it at %s.", row,
		answer.DialNow(b.was.Tension()[row-1]), answer.DialNow(b.now.Tension()[row-1]))
	if len(fits) > 0 {
		why += " Still possible with what is knitted: " + strings.Join(fits, ", ") + " rows before each click (0 is no grading)."
	}
	return why + b.stillOpen()
}

// differs is the first knitted row whose clicks another plan would have
// otherwise; 0 where there is none.
func (b block) differs(now *engine.Plan) int {
	old, other := b.was.Tension(), now.Tension()
	for i := 0; i < b.w.m.Row && i < len(old) && i < len(other); i++ {
		if old[i].Clicks != other[i].Clicks {
			return i + 1
		}
	}
	return 0
}

// columns: which needles are latched can change until the first one is.
func (b block) columns() string {
	if b.was.In.Rib.IsPlain() {
		_, last := b.w.rowSteps() // latching would come right after it
		if b.now.In.Rib.IsPlain() || b.w.at <= last || b.w.at == last+1 && b.w.m.Done == 0 {
			return ""
		}
		return "The work has gone on past the latching, so the band stays plain." + b.stillOpen()
	}
	if sameInts(b.was.RibColumns, b.now.RibColumns) || !b.begun("latch") {
		return ""
	}
	return "The columns of the rib are being latched or done: which ones can no longer change." + b.stillOpen() +
		" A column latched by mistake is a trouble of its own: say *latched the wrong column*."
}

// hem: every n-th bump can change until bumps hang.
func (b block) hem() string {
	if sameInts(b.was.HemColumns, b.now.HemColumns) || !b.begun("hem") {
		return ""
	}
	if b.w.card().Fields["needles"] == "hem" {
		return "Bumps hang already. Lift them off and say *start from the hem*; then the spacing is free again."
	}
	return "The hem is hung." + b.stillOpen()
}

// stillOpen lists what can be changed from here on.
func (b block) stillOpen() string {
	var list []string
	if !b.rowsOver() {
		list = append(list, "the rows")
	}
	if b.w.m.Row < b.was.LayerRows {
		list = append(list, "the grading of rows to come")
	}
	if b.was.Doubled && b.w.m.Row <= b.was.LayerRows {
		list = append(list, "a fold row")
	}
	if !b.begun("latch") && !b.begun("hem") && len(b.was.RibColumns) > 0 {
		list = append(list, "a rib that closes on these stitches")
	}
	if b.was.Doubled && !b.begun("hem") {
		list = append(list, "the spacing of the hem")
	}
	if len(list) == 0 {
		return ""
	}
	return " Still open: " + strings.Join(list, ", ") + "."
}

func rowsWord(n int) string { return answer.Count(n, "row", "rows") }

func sameInts(a, b []int) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}
