package dialog

import (
	"fmt"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
	"foldrow/rules"
)

// stepReply shows what is to be done now: the step she is at, or the part of
// it that is next. A note goes before it. An empty line while making comes
// here too and only repeats, so that a stray key counts no row.
func (c *turn) stepReply(note string) (State, Reply) {
	c.about = &c.s.Said
	w := c.standing(c.kept())
	if w.m.Over {
		return c.s, c.reply("step", c.overText(w))
	}
	w.reset = c.reset
	return c.s, c.reply("step", c.stepText(w, note))
}

// stepText is at most eight lines of 60 columns: a title, what to do with
// needles or rows, how to know that it is right, a caution at the beginning.
func (c *turn) stepText(w where, note string) string {
	v, card := c.voice(), w.card()
	_, i := w.part()
	first, last := i == 0 && w.done() == 0, i == len(w.parts())-1
	text, right, care := "", "", ""
	if first && w.m.Column == "" {
		text, care = v.Line(card.Text, w.plan()), card.Section("care")
	}
	switch needles := card.Fields["needles"]; {
	case needles == "sew":
		text = v.Line(card.Text, w.p)
		fallthrough
	case last, needles == "latch", needles == "hem":
		right = "Right: " + lower(v.Line(card.Section("right"), w.plan()))
	}
	if note != "" && w.m.Piece > 0 && card.Fields["needles"] == "rehang" {
		right = "" // no room beside the note, the yoke's stitches and the join
	}
	if care != "" {
		care = "Caution: " + lower(care)
	}
	end := ""
	if w.at == len(w.order)-1 {
		end = "The last step; then say what the band measures."
	}
	items := []string{note, w.doNow(note == "")}
	if _, _, told := w.p.Waiting(); !told && card.Fields["needles"] == "rehang" && first {
		items[1] = w.hangUntold()
	}
	if w.onFront() {
		s, _ := w.part()
		items = append(items[:1], w.frontNow(s)...)
	}
	screen := answer.Screen(w.title(), append(items, text, right, care, end)...)
	if note != "" && !c.came && answer.Glance(screen) > answer.GlanceLines {
		return answer.Screen(w.title(), append(items, text, right, end)...) // it was told when she came here
	}
	return screen
}

func lower(s string) string {
	if s == "" {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}

// title is the step with its number, and the row where rows are counted.
func (w where) title() string {
	t := fmt.Sprintf("%d of %d. %s", w.at+1, len(w.order), w.card().Fields["title"])
	if first, last := w.pieceSteps(); len(w.pieces) > 1 && w.at >= first && w.at <= last {
		t += fmt.Sprintf(", piece %d of %d", w.m.Piece+1, len(w.pieces))
	} else if len(w.pieces) > 1 && w.card().Fields["kin"] == "check" {
		t += fmt.Sprintf(", all %d pieces", len(w.pieces)) // its measure is of them together
	}
	if w.card().Fields["rows"] != "" {
		t += fmt.Sprintf(": row %d of %d", w.m.Row+1, w.p.TotalRows)
	}
	if w.onFront() && w.m.Done < w.p.Front.TotalRows {
		t += fmt.Sprintf(": row %d of %d", w.m.Done+1, w.p.Front.TotalRows)
	}
	return t
}

// doNow is the line with the rows or the needles of this part; "" for a step
// that has none. The way along the needles is said where there is room.
func (w where) doNow(room bool) string {
	s, i := w.part()
	n := w.p.BandStitches
	if w.card().Fields["rows"] != "" {
		return answer.KnitRows(w.p.Tension(), w.m.Row, w.rowsOf(w.at).from+s.to, w.reset)
	}
	from := max(s.from, w.done())
	if w.joins() {
		return w.joinNow(from)
	}
	switch w.card().Fields["needles"] {
	case "rehang":
		return w.hangNow(from, s.to)
	case "latch":
		text := columnSpan("Column", from+1, s.to, len(w.along())) + answer.Needles(w.along()[from:s.to], n) + "."
		if w.m.Done == 0 && room {
			text += " " + wayText(w.m.Way)
		}
		return text
	case "hem":
		cols := w.along()
		switch {
		case len(cols) == 0:
			return ""
		case i == 0 && w.m.Done == 0 && len(cols) > 3:
			return "The ends, then the middle: " + answer.Needles(cols[:3], n) + "."
		}
		return columnSpan("Bump", from+1, s.to, len(cols)) + answer.Needles(cols[from:s.to], n) + "."
	case "sew":
		if w.m.Column != "" {
			return "Sewn up to " + w.m.Column + "; go on from there."
		}
	}
	return ""
}

func columnSpan(what string, from, to, all int) string {
	switch to {
	case from:
		return fmt.Sprintf("%s %d of %d: ", what, from, all)
	case from + 1:
		return fmt.Sprintf("%ss %d and %d of %d: ", what, from, to, all)
	}
	return fmt.Sprintf("%ss %d to %d of %d: ", what, from, to, all)
}

func wayText(way string) string {
	switch way {
	case fromRight:
		return "From the right."
	case fromCentre:
		return "From the centre, right half first."
	}
	return "From the left (or say *from the centre*)."
}

// whereReply tells where she is, what is done and what is left, then the part
// that is next.
func (c *turn) whereReply(w where) (State, Reply) {
	if w.m.Over {
		return c.s, c.reply("step", c.overText(w))
	}
	c.about = &c.s.Said
	switch {
	case w.card().Fields["rows"] != "":
		note := fmt.Sprintf("%s knitted, %d to go.", title(rowsWord(w.m.Row)), w.p.TotalRows-w.m.Row)
		return c.s, c.reply("step", answer.Screen(w.title(), note, w.doNow(false)))
	case w.onFront():
		s, _ := w.part()
		note := fmt.Sprintf("%s knitted, %d to go.", title(rowsWord(w.m.Done)), w.p.Front.TotalRows-w.m.Done)
		return c.s, c.reply("step", answer.Screen(w.title(), append([]string{note}, w.frontNow(s)...)...))
	case w.m.Done > 0 && !w.joins():
		note := fmt.Sprintf("%s: %d of %d.", title(w.doneWords()), w.m.Done, len(w.along()))
		return c.s, c.reply("step", answer.Screen(w.title(), note, w.doNow(false)))
	}
	return c.stepReply("")
}

// spoilsReply tells what goes wrong at this step, with its cautions in full
// and where to read on.
func (c *turn) spoilsReply(w where) (State, Reply) {
	card := w.card()
	return c.s, c.reply("step", "**"+w.title()+"**\n\nWhat spoils it: "+card.Section("spoils")+c.cautionText(card)+askAbout(c.explains(card)))
}

// aboutReply explains the step: the first of the cards that do, whole, what
// spoils it, and the names of the others.
func (c *turn) aboutReply(w where) (State, Reply) {
	card, cards := w.card(), c.explains(w.card())
	text := "**" + w.title() + "**"
	if len(cards) > 0 {
		text += "\n\n" + c.cardText(cards[0])
		cards = cards[1:]
	}
	return c.s, c.reply("step", text+"\n\nWhat spoils it: "+card.Section("spoils")+askAbout(cards))
}

// rightReply tells how to know that the step is right.
func (c *turn) rightReply(w where) (State, Reply) {
	card := w.card()
	return c.s, c.reply("step", "**"+w.title()+"**\n\nIt is right so: "+c.voice().Fill(card.Section("right"), w.plan())+
		"\n\nWhat spoils it: "+card.Section("spoils")+"\n\nSomething looks otherwise? Say what you see.")
}

// explains is the cards of howto.md that explain a step.
func (c *turn) explains(step rules.Card) []rules.Card {
	var cards []rules.Card
	for _, id := range step.List("howto") {
		if h, ok := c.book.Card("howto", id); ok {
			cards = append(cards, h)
		}
	}
	return cards
}

// askAbout names cards to ask for, in a paragraph of its own.
func askAbout(cards []rules.Card) string {
	var names []string
	for _, h := range cards {
		names = append(names, "*"+lower(h.Fields["title"])+"*")
	}
	if len(names) == 0 {
		return ""
	}
	return "\n\nAsk about: " + strings.Join(names, ", ") + "."
}

// overText is said when the last step is done: what comes next.
func (c *turn) overText(w where) string {
	next := "the two ends are closed, so the pullover is ready to wear"
	if w.p.In.Garment == engine.Cardigan {
		next = "the front bands come next, if they are not on yet: say how long the front edge is (*the front edge is 52 cm*) and *start the front band*"
		if w.index("front-hang") >= 0 {
			next = "both front bands are on"
		}
	}
	return "**The neckband is done.** " + title(next) + ". Rest it a day, measure it, and say what came out, for the next one: *the band measures 40 cm*, *it came out 3 cm deep*."
}

// whereText is where she stands, in one sentence; "" away from the machine.
func (c *turn) whereText() string {
	p := c.kept()
	if at := c.chartWhere(); at != "" {
		return at
	}
	if !c.s.Making.On || p.BandStitches == 0 || p.LayerRows == 0 {
		return ""
	}
	w := c.standing(p)
	switch {
	case w.m.Over:
		return "all steps are done."
	case w.card().Fields["rows"] != "":
		row := p.Tension()[w.m.Row]
		return fmt.Sprintf("%s, row %d of %d at %s.", lower(w.card().Fields["title"]), row.Row, p.TotalRows, answer.DialNow(row))
	case w.onFront():
		return fmt.Sprintf("%s, row %d of %d.", lower(w.card().Fields["title"]), w.m.Done+1, w.p.Front.TotalRows)
	case w.m.Column != "":
		return fmt.Sprintf("%s, %s.", lower(w.card().Fields["title"]), w.doneWords())
	}
	return lower(w.card().Fields["title"]) + "."
}

// doneWords is how far she is along the needles: up to which, or that the ends
// and the middle of the hem hang, which come first.
func (w where) doneWords() string {
	if w.card().Fields["needles"] == "hem" && w.m.Done > 0 && w.m.Done <= 3 && len(w.along()) > 3 {
		return []string{"one end hung", "both ends hung", "the ends and the middle hung"}[w.m.Done-1]
	}
	if w.joins() {
		return answer.Count(w.m.Done, "join sewn", "joins sewn")
	}
	return "done up to " + w.m.Column
}

// doneSoFar is what is already made of the band, for a what-if that has just
// been found possible.
func (c *turn) doneSoFar() string {
	w := c.standing(c.kept())
	if first, _ := w.rowSteps(); w.at < first {
		return "Nothing of the band is knitted yet, so all of this is still open."
	}
	text := fmt.Sprintf("So far %s of %d %s knitted", answer.Count(w.m.Row, "row", "rows"), w.p.TotalRows, isAre(w.m.Row))
	if w.m.Done > 0 {
		text += fmt.Sprintf(", and %s in this step", w.doneWords())
	}
	return text + "; this touches only what is still to come."
}

func isAre(n int) string {
	if n == 1 {
		return "is"
	}
	return "are"
}
