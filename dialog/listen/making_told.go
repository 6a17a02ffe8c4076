package listen

import (
	"slices"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// toldWhole takes the whole lines that tell of something done, by the step that
// their card names: `step` is done, or back at it; of those in `at` the one she
// stands at, the whole of it where the card says `whole`. Anything else counts
// nothing. false where the topic tells of nothing done.
func (r *reading) toldWhole(c cueHit, m Meaning) (Meaning, bool) {
	card, _ := r.x.book.Card("machine", c.card)
	move := func(what, step string) (Meaning, bool) {
		if r.l.question {
			return Meaning{Kind: Step, Move: Move{What: "where"}}, true
		}
		m.Move.What, m.Move.Step = what, step
		return m, true
	}
	switch c.topic {
	case "told-step":
		return move("finished", card.Fields["step"])
	case "undone":
		m.Move.What, m.Move.Step = "undone", ""
		return m, true
	case "whether-step":
		m.Move.What, m.Move.Step = "whether", card.Fields["step"]
		return m, true
	case "told-back":
		return move("goto", card.Fields["step"])
	case "told-at":
		return move(r.toldAt(card))
	case "told-next":
		return move("next", "")
	case "waste-told":
		if !r.ctx.Off && !r.l.question {
			return Meaning{Kind: Trouble, Card: "waste-pulled-early", Topic: "told"}, true
		}
		return move("finished", card.Fields["step"])
	case "waste-rows":
		if r.ctx.Step == "take-off" && r.l.has("off") {
			return move("finished", card.Fields["step"])
		}
		return move("waste-rows", "")
	case "one-row":
		m.Move.Count, m.FigUnit = 1, quantity.Row
		return move("done", "")
	case "rows-done":
		if many := r.spokenAs("rows"); !many && len(r.l.quantities()) == 0 {
			return Meaning{}, false // "row done" is one
		} else if len(r.l.quantities()) == 1 {
			m.Move.Done = true
			return move("row", "")
		}
		return move("rows-done", "")
	case "last-done", "rest-done", "mended":
		return move(c.topic, "")
	case "layer-row":
		m.Part = "outer"
		if r.l.has("inner") {
			m.Part = "inner"
		}
		m.Move.Done = !r.onRow()
		return move(c.topic, "")
	case "back-at-row":
		m.Move.Done = false
		return move("row", "")
	case "needles-told":
		return move("latched", "")
	case "row-of":
		m.Move.Count, m.Move.Row, m.Move.Done = r.whole(r.l.quantities()[1]), r.whole(r.l.quantities()[0]), true
		return move(c.topic, "")
	case "go-fronts":
		return move("goto", "front-hang")
	case "pairs":
		return Meaning{Kind: Number, Keys: []engine.Key{engine.Rehang}}, true
	case "tail":
		return Meaning{Kind: Number, Keys: []engine.Key{engine.OffYarn}}, r.ctx.Knitted && !r.ctx.Off
	case "fold-short":
		m.Move.What = "fold-here"
		return m, r.l.question
	}
	return Meaning{}, false
}

// spokenAs reports whether the line holds that very form of a word.
func (r *reading) spokenAs(form string) bool {
	for i := r.l.begin; i < r.l.end; i++ {
		if r.l.tokens[i].text == form {
			return true
		}
	}
	return false
}

// toldAt is the move of a card that tells something of the step she is at.
func (r *reading) toldAt(card rules.Card) (what, step string) {
	for _, doing := range []string{"drying", "setting", "blocking", "steaming", "checking", "picking", "latching", "hanging", "closing"} {
		if r.spokenAs(doing) {
			return "wait", "" // begun, and not done
		}
	}
	if r.spokenAs("close") {
		return "where", "" // an order, and nothing is told as done
	}
	switch at := slices.Contains(card.List("at"), r.ctx.Step); {
	case at && card.Fields["whole"] != "":
		return "finished", r.ctx.Step
	case at:
		return "next", ""
	}
	return "not-here", ""
}

// onRow: the row is being knitted, not done: "I'm on row 12", "inner row 12".
func (r *reading) onRow() bool {
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; q.After && !r.l.has("done", "finish", "knit") {
			return true
		}
	}
	return false
}
