package answer

import (
	"fmt"
	"math"
	"strings"

	"foldrow/engine"
	"foldrow/rules"
)

// StepFits reports whether a step belongs to the plan: all conditions of its
// `when` hold. One that cannot be read holds: a step too many is seen, a step
// too few is not.
func StepFits(c rules.Card, p *engine.Plan) bool {
	for _, cond := range c.List("when") {
		if holds, ok := condition(cond, p); ok && !holds {
			return false
		}
	}
	return true
}

// condition reads "layers=2", "rib!=plain" or "fold_row>0", of an input or a
// result, with or without "not" before it; ok is false where it is none of
// these. A number that is not there is 0.
func condition(cond string, p *engine.Plan) (holds, ok bool) {
	if rest, not := strings.CutPrefix(cond, "not "); not {
		holds, ok = condition(rest, p)
		return !holds && ok, ok
	}
	if key, want, found := strings.Cut(cond, "!="); found {
		return stands(p, engine.Key(key)) != want, true
	}
	if key, want, found := strings.Cut(cond, "="); found {
		return stands(p, engine.Key(key)) == want, true
	}
	key, want, found := strings.Cut(cond, ">")
	n, ok := engine.ParseNum(want)
	if !found || !ok {
		return false, false
	}
	f, _ := p.Float(engine.Key(key))
	return f > n.Float(), true
}

// stands is k as a condition writes it: as it was said, or what follows.
func stands(p *engine.Plan, k engine.Key) string {
	if k == engine.KeyFrontRib {
		return p.FrontRib().String()
	}
	if s := p.In.Value(k); s != "" {
		return s
	}
	if f, ok := p.Float(k); ok {
		return trim(f, 4)
	}
	return ""
}

// Screen is a step as it is shown: the title, then one short item for each
// thing to know. Empty items are left out.
func Screen(title string, items ...string) string {
	text := "**" + title + "**"
	sep := "\n\n"
	for _, s := range items {
		if s == "" {
			continue
		}
		text += sep + "- " + s
		sep = "\n"
	}
	return text
}

// Line is a card's text on one line, this plan's numbers filled in.
func (v Voice) Line(text string, p *engine.Plan) string {
	return strings.ReplaceAll(v.Fill(text, p), "\n\n", " ")
}

// RowSpan is "row 4", "rows 4 and 5" or "rows 4 to 9".
func RowSpan(from, to int) string {
	switch {
	case from == to:
		return fmt.Sprintf("row %d", from)
	case to == from+1:
		return fmt.Sprintf("rows %d and %d", from, to)
	}
	return fmt.Sprintf("rows %d to %d", from, to)
}

// KnitRows says what to knit when done rows are knitted and the rows up to
// and including to stand at one setting: the dial now, the rows, and the next
// change before it comes. Clicks are ordered once, when they are due, and with
// where the dial stands after them: an order read twice must not be done twice.
// After rows were taken back (reset) the dial is set by its number, wherever it stands.
func KnitRows(rows []engine.TensionRow, done, to int, reset bool) string {
	now := rows[done]
	var b strings.Builder
	switch {
	case done == 0 || reset:
		b.WriteString("Set " + setTo(now) + ". ")
	case rows[done-1].Clicks != now.Clicks:
		b.WriteString(upper(TurnTo(rows[done-1], now)) + " now" + standsThen(now) + ". ")
	default:
		b.WriteString("Leave the dial " + standsAt(now) + ". ")
	}
	b.WriteString("Knit " + RowSpan(done+1, to) + ".")
	switch {
	case to == len(rows):
		fmt.Fprintf(&b, " Row %d is the last.", to)
	case rows[to].Clicks != now.Clicks && now.Dial == nil:
		fmt.Fprintf(&b, " The dial changes before row %d.", to+1)
	case rows[to].Clicks != now.Clicks:
		fmt.Fprintf(&b, " After row %d %s.", to, TurnTo(now, rows[to]))
	}
	return b.String()
}

func setTo(r engine.TensionRow) string {
	if r.Dial != nil {
		return "the dial to " + dialNumber(*r.Dial)
	}
	if r.Clicks == 0 {
		return dialText(r)
	}
	return "the dial " + DialNow(r)
}

func standsAt(r engine.TensionRow) string {
	if r.Dial != nil {
		return "at " + dialNumber(*r.Dial)
	}
	if r.Clicks == 0 {
		return "at the garment's number"
	}
	return "as it is, at " + DialNow(r)
}

// standsThen is where the dial stands once clicks are turned.
func standsThen(r engine.TensionRow) string {
	if r.Dial != nil {
		return ""
	}
	return ", to " + DialNow(r)
}

// TurnTo is the change from one row to the next, as it is done.
func TurnTo(from, to engine.TensionRow) string {
	if to.Dial != nil {
		return "turn to " + dialNumber(*to.Dial)
	}
	if d := to.Clicks - from.Clicks; d < 0 {
		return "turn " + Count(-d, "click", "clicks") + " looser"
	} else {
		return "turn " + Count(d, "click", "clicks") + " tighter"
	}
}

// DialNow is the setting of one row in a clause: "dial 4.5", "1 click
// tighter than the garment".
func DialNow(r engine.TensionRow) string {
	if r.Dial != nil || r.Clicks == 0 {
		return dialText(r)
	}
	return dialText(r) + " than the garment"
}

// Needles names columns one by one; columns side by side stand together.
func Needles(cols []int, stitches int) string {
	var b strings.Builder
	for i, c := range cols {
		switch {
		case i == 0:
		case c == cols[i-1]+1 || c == cols[i-1]-1:
			b.WriteString(" ")
		default:
			b.WriteString(", ")
		}
		b.WriteString(engine.NeedleName(c, stitches))
	}
	return b.String()
}

// Metres is a length of yarn in the knitter's unit.
func (v Voice) Metres(m float64) string { return v.metres(m) }

// Trim is a figure with at most so many decimals and no idle zeros.
func Trim(x float64, decimals int) string { return trim(x, decimals) }

// Between is what lies between two lengths as they are shown, so that the three
// add up on the tape: rounded each by itself they need not.
func (v Voice) Between(low, high float64) string {
	step := 0.1
	if v.Unit == "in" {
		step = 2.54 / 8
	}
	return v.Len((math.Round(high/step) - math.Round(low/step)) * step)
}

// Small is a difference too small for Len: millimetres, or hundredths of an
// inch, with its direction.
func (v Voice) Small(cm float64) string {
	word := "more"
	if cm < 0 {
		cm, word = -cm, "less"
	}
	if v.Unit == "in" {
		return trim(cm/2.54, 2) + " in " + word
	}
	return trim(cm*10, 1) + " mm " + word
}

// Fine is a length where a tenth of a centimetre hides the difference.
func (v Voice) Fine(cm float64) string {
	if v.Unit == "in" {
		return trim(cm/2.54, 2) + " in"
	}
	return trim(cm, 2) + " cm"
}
