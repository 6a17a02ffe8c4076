package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// Answers to what is asked at the machine about the step she is at, each to
// be read at a glance. None of them moves her.

// needlesReply names the needles of the part that is to be done now.
func (c *turn) needlesReply(w where) (State, Reply) {
	p := w.p
	all := fmt.Sprintf("All %d needles, %s to %s.", p.BandStitches, engine.NeedleName(0, p.BandStitches), engine.NeedleName(p.BandStitches-1, p.BandStitches))
	if now := w.doNow(true); now != "" && w.card().Fields["needles"] != "" {
		all = now
	} else if w.amongFronts() {
		all = w.frontNeedles()
	}
	return c.s, c.reply("step", answer.Screen(w.title(), all))
}

// leftReply counts what is still to do: of the rows, or of the needles of the
// step that is named, or of the step she is at.
func (c *turn) leftReply(w where) (State, Reply) {
	at := w.at
	switch {
	case c.m.Move.Along != "":
		if i := c.stepAlong(w); i >= 0 {
			at = i
		}
	case w.onFront():
		return c.whereReply(w)
	case c.m.FigUnit == "row", w.card().Fields["needles"] == "":
		if first, last := w.rowSteps(); w.at >= first && w.at <= last {
			return c.whereReply(w)
		}
	}
	return c.s, c.reply("step", answer.Screen(w.title(), w.leftOf(at), w.stepsLeft()))
}

// leftOf is how much of step i is still to do.
func (w where) leftOf(i int) string {
	there := w
	there.at, there.m.Done = i, 0
	if i == w.at {
		there = w
	}
	all, done := len(there.along()), there.m.Done
	what := map[string]string{"latch": "columns", "hem": "bumps", "rehang": "needles"}[there.card().Fields["needles"]]
	switch {
	case what == "":
		return ""
	case i < w.at:
		return fmt.Sprintf("All %d %s are done.", all, what)
	case done == 0:
		return fmt.Sprintf("%d %s, none of them done yet.", all, what)
	}
	return fmt.Sprintf("%d of %d %s are left, %d done.", all-done, all, what, done)
}

// stepsLeft is how many steps come after this one.
func (w where) stepsLeft() string {
	switch n := len(w.order) - 1 - w.at; n {
	case 0:
		return "This is the last step."
	case 1:
		return "One step comes after this one."
	default:
		return fmt.Sprintf("%d steps come after this one.", n)
	}
}

// listReply lists the steps from here to the end, with their numbers and how
// much each of them is.
func (c *turn) listReply(w where) (State, Reply) {
	if w.m.Over {
		return c.s, c.reply("step", c.overText(w))
	}
	var to []string
	for i := w.at + 1; i < len(w.order); i++ {
		to = append(to, fmt.Sprintf("%d %s%s", i+1, lower(w.order[i].Fields["title"]), w.amount(i)))
	}
	text := "**You are at " + w.title() + ".**"
	if w.card().Fields["rows"] != "" {
		text += fmt.Sprintf(" %s knitted, %d to go.", title(rowsWord(w.m.Row)), w.p.TotalRows-w.m.Row)
	} else if left := w.leftOf(w.at); left != "" {
		text += " " + left
	}
	if len(to) == 0 {
		return c.s, c.reply("step", text+" It is the last step.")
	}
	return c.s, c.reply("step", text+"\n\nThen: "+strings.Join(to, "; ")+".")
}

// amount is what step i counts, in brackets.
func (w where) amount(i int) string {
	if w.order[i].Fields["rows"] != "" {
		s := w.rowsOf(i)
		return " (" + rowsWord(s.to-s.from) + ")"
	}
	w.at, w.m.Done = i, 0
	switch n := len(w.along()); w.card().Fields["needles"] {
	case "latch":
		return fmt.Sprintf(" (%s)", answer.Count(n, "column", "columns"))
	case "hem":
		return fmt.Sprintf(" (%s)", answer.Count(n, "bump", "bumps"))
	}
	return ""
}

// dialReply is the dial now and the next change, before it comes.
func (c *turn) dialReply(w where) (State, Reply) {
	rows := w.p.Tension()
	if w.amongFronts() {
		return c.frontDialReply(w)
	}
	first, last := w.rowSteps()
	garment := setting(w.p, 0)
	text := ""
	switch {
	case w.at < first:
		text = fmt.Sprintf("Now: %s. Row 1 of the band: %s.%s", garment, answer.DialNow(rows[0]), nextChange(rows, 0))
	case w.at <= last:
		text = fmt.Sprintf("Row %d: %s.%s", w.m.Row+1, answer.DialNow(rows[w.m.Row]), nextChange(rows, w.m.Row))
	case w.card().ID == "close":
		text = fmt.Sprintf("The closing row: %s.", garment)
	case w.at < w.index("close"):
		text = fmt.Sprintf("Nothing is knitted in this step. The closing row comes at %s.", garment)
	default:
		text = "Nothing more is knitted; the dial may stand as it likes."
	}
	return c.s, c.reply("step", answer.Screen(w.title(), text))
}

// nextChange is the next row, after row i+1, at another setting.
func nextChange(rows []engine.TensionRow, i int) string {
	for j := i + 1; j < len(rows); j++ {
		if rows[j].Clicks != rows[i].Clicks {
			return fmt.Sprintf(" Next change: before row %d, %s.", rows[j].Row, answer.TurnTo(rows[j-1], rows[j]))
		}
	}
	return " No change after that."
}

// goTo takes a step by its number; "what is step 9" only shows it.
func (c *turn) goTo(w where) (State, Reply) {
	n := c.m.Move.Count
	if n < 1 || n > len(w.order) {
		return c.unsure(fmt.Sprintf("The steps count from 1 to %d. You are at: %s", len(w.order), c.whereText()))
	}
	if c.m.Move.What == "look" {
		return c.s, c.reply("step", c.stepText(w.enter(n-1), "(Shown only; you stay where you are.)"))
	}
	if n-1 == w.at {
		return c.stepReply("")
	}
	return c.moved(w.enter(n-1), w.skipped(n-1))
}

// restart goes back to the first step. The numbers of the band stay.
func (c *turn) restart(w where) (State, Reply) {
	if w.at == 0 && !w.m.Over {
		return c.stepReply("(This is the first step.)")
	}
	return c.moved(c.standingAt(w.p, Making{On: true, Way: w.m.Way}), "(From the first step; *undo* takes you back.)")
}

// toFold is the place at the fold of a band that has no fold row: its outer
// layer is knitted.
func (c *turn) toFold(w where) (State, Reply) {
	if !w.p.Doubled {
		return c.unsure("A single layer has no fold. You are at: " + c.whereText())
	}
	if w.m.Row >= w.p.LayerRows {
		return c.stepReply("")
	}
	return c.moved(w.atRow(w.p.LayerRows), c.dialCheck(w, w.p.LayerRows))
}

// dialAt holds the dial she tells against the row that comes next. Where the
// garment's is not known, the one told is taken for it.
func (c *turn) dialAt(w where) (State, Reply) {
	if !w.p.In.Has(engine.MainTension) {
		return c.onValues()
	}
	row := w.p.Tension()[w.m.Row]
	told := c.voice().Figure(engine.MainTension, c.m.Sets[0].Value.Float())
	if row.Dial != nil && setting(w.p, row.Clicks) == "dial "+told {
		return c.stepReply(fmt.Sprintf("(Right: row %d is at dial %s.)", row.Row, told))
	}
	return c.unsure(fmt.Sprintf("Row %d is to be at %s, not %s; nothing is changed. Set it so before you knit. If the garment itself was knitted at %s, say *main tension %s*.",
		row.Row, answer.DialNow(row), told, told, told))
}
