package listen

import "strings"

// walkAsked takes what is said while the rows of the colour chart are walked:
// whether a needle is contrast, how many rows are left, that a row is done.
func (r *reading) walkAsked() (Meaning, bool) {
	if !r.ctx.Walk || r.ctx.Open != "" || r.l.words() > 9 || len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	here := Meaning{Kind: Step, Move: Move{What: "repeat"}}
	colour := r.l.has("contrast", "main", "colour", "color", "forward", "selected")
	switch needle := r.slip().Needle; {
	case needle != "" && colour && !r.l.has("miss", "dropped", "wrong", "forgot"):
		return Meaning{Kind: Parts, Topic: "chart-needle", Needle: needle}, true
	case r.l.has("wrong") && r.l.has("row"):
		return Meaning{Kind: Trouble, Card: "undo-row", Topic: "sure"}, true
	case r.l.has("float") && r.l.has("long"):
		return Meaning{Kind: HowTo, Card: "catch-floats"}, true
	case len(r.l.quantities()) > 0:
		return Meaning{}, false
	case r.l.has("last") && r.l.has("row") && r.asks(), r.l.has("many") && r.l.has("row") && r.l.has("left", "go", "more", "still"):
		here.Move.What = "where"
		return here, true
	case colour && (r.asks() || strings.HasPrefix(r.l.text, "what") || strings.HasPrefix(r.l.text, "which")):
		return here, true
	case r.l.text == "row done" || r.l.text == "row knitted" || r.l.text == "row finished":
		here.Move.What = "next"
		return here, true
	}
	return Meaning{}, false
}
