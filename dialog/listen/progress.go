package listen

import "foldrow/dialog/listen/quantity"

// stated is one clause of a line about how far the work is.
type stated struct {
	rows    []int
	byName  bool // "row 9", not "9 rows"
	needles []string
	work    bool // a word of the work, or of its being done
	held    bool // not done: denied, meant to be done, or done in part
	begun   bool // it is begun, and so not done
	ended   bool // she stopped there
	spare   bool // all but this
}

// named reports whether the clause names a row or a needle.
func (c stated) named() bool { return len(c.rows)+len(c.needles) > 0 }

// progress takes a line of which every word tells how far the work is. Only
// what is done moves the place: "I have not latched L46", "I need to latch L46"
// and "is row 9 done" move none, "latched all but L46" leaves that one out.
func (r *reading) progress() (Meaning, bool) {
	if !r.ctx.Making || r.ctx.Open != "" || r.l.begin >= r.l.end || !r.onlyProgress() {
		return Meaning{}, false
	}
	if r.asksNeedles() || r.asksKind() {
		return Meaning{}, false
	}
	if m, ok := r.missed(); ok {
		return m, true
	}
	said := r.stated()
	if len(said) == 1 && len(said[0].needles) > 0 && r.droppedByMistake() {
		return Meaning{Kind: Trouble, Card: "dropped-stitch"}, true
	}
	if n := r.firstSoMany(said); n > 0 {
		m := r.stepMeaning(cueHit{topic: "latched"})
		m.Move.Count = n
		return m, true
	}
	if r.asksState() {
		return r.whether(said)
	}
	var sure, spare, held *stated
	for i := range said {
		switch c := &said[i]; {
		case c.spare:
			spare = c
		case c.held:
			held = c
		case c.named() || c.work:
			sure = c
		}
	}
	switch {
	case spare != nil && len(spare.needles) > 0:
		return r.allBut(sure, held, spare)
	case held == nil && sure == nil:
		return Meaning{}, false
	case held == nil && (sure.ended || sure.begun) && sure.named():
		return r.reached(*sure, sure.ended && r.l.has("after")), true
	case held == nil && sure.work && len(sure.rows) == 1 && sure.byName && len(said) == 1:
		return r.reached(*sure, true), true // "done row 1"
	case held != nil && sure != nil && sure.named() && len(said) > 1:
		m := r.reached(*sure, sure.work) // "row 8 done, row 9 not yet"
		m.Move.Except = held.needles
		return m, true
	case held != nil && (held.work || held.named() || r.l.has("yet", "almost", "nearly")):
		m := r.stepMeaning(cueHit{topic: "undone"})
		m.Move.Step = r.namedStep()
		return m, true
	}
	return Meaning{}, false
}

// onlyProgress reports whether every word of the line may tell how far the work is.
func (r *reading) onlyProgress() bool {
	for i := r.l.begin; i < r.l.end; i++ {
		switch t := &r.l.tokens[i]; {
		case t.needle != "", r.sense("held", t):
		case t.q != nil: // "half" is a quantity and held
			if r.l.has("drop") || t.q.Unit != quantity.None && t.q.Unit != quantity.Row || t.q.Range || t.q.Sign < 0 || !t.q.Value.IsInt() {
				return false
			}
		case r.sense("work", t), r.sense("begun", t), r.sense("spare", t), r.sense("telling", t):
		default:
			return false
		}
	}
	return true
}

// sense reports whether a word has that sense, as rules/words.md lists them.
func (r *reading) sense(sense string, t *token) bool {
	return r.x.typed[sense][t.text] || r.x.senses[sense][t.stem] && sense == "work"
}

// stated cuts the line into its clauses and reads of each what it says of the
// work.
func (r *reading) stated() []stated {
	var out []stated
	c := stated{}
	for i := r.l.begin; i < r.l.end; i++ {
		t := &r.l.tokens[i]
		spare := r.sense("spare", t) && i > r.l.begin && i+1 < r.l.end && (r.l.tokens[i+1].needle != "" || r.sense("spare", &r.l.tokens[i+1]) || oneOf(r.l.tokens[i+1].text, []string{"for", "needle", "column", "bump", "the"}))
		if t.stop && i > r.l.begin || t.text == "but" || spare {
			out, c = append(out, c), stated{spare: spare}
		}
		switch {
		case r.sense("held", t), t.text == "to" && r.meantAt(i):
			c.held = true
		case t.needle != "":
			c.needles = append(c.needles, t.needle)
		case t.q != nil:
			c.rows, c.byName = append(c.rows, t.q.Value.Floor()), t.q.After
		case r.sense("begun", t):
			c.begun = true
		case oneOf(t.text, []string{"stopped", "stopping", "stop", "paused"}):
			c.ended = true
		case r.sense("work", t):
			c.work = true
		}
	}
	return append(out, c)
}

// meantAt: the "to" at token i leads to work that is to be done ("need to
// latch"), and not to a place ("up to L20", "got to row 9").
func (r *reading) meantAt(i int) bool {
	if i == r.l.begin || i+1 >= r.l.end {
		return false
	}
	next := &r.l.tokens[i+1]
	return (r.sense("work", next) || oneOf(next.text, []string{"do", "be", "stop"})) && !oneOf(r.l.tokens[i-1].text, []string{"up", "down", "on", "got", "back", "had"})
}

// asksState: "is it finished" and "have I done row 9" ask where she is.
func (r *reading) asksState() bool {
	switch r.l.tokens[r.l.begin].text {
	case "is", "am", "are", "was", "were":
		return true
	case "have", "has", "did", "do", "must", "should", "shall", "can", "could", "may":
		return r.l.begin+1 < r.l.end && oneOf(r.l.tokens[r.l.begin+1].text, []string{"i", "we", "it", "they", "the", "all", "everything"})
	}
	return r.l.question && !r.l.has("next")
}

// whether asks if a row, a needle or a step is done.
func (r *reading) whether(said []stated) (Meaning, bool) {
	m := r.stepMeaning(cueHit{topic: "whether"})
	m.Move.Step = r.namedStep()
	if r.l.has("column", "bump", "needle") && !r.l.has("row") {
		m.Move.Row = 0 // "first 5 columns latched?"
	}
	for _, c := range said {
		if c.work || c.held || c.begun {
			return m, true
		}
	}
	return m, false
}

// allBut: "latched all but L46", "up to R10 except L21". Without a needle up to
// which it is done nothing is counted.
func (r *reading) allBut(sure, held, spare *stated) (Meaning, bool) {
	m := r.stepMeaning(cueHit{topic: "all-but"})
	m.Move.Except, m.Move.Needle = spare.needles, ""
	if sure != nil && len(sure.needles) == 1 && held == nil {
		m.Move.What, m.Move.Needle = "latched", sure.needles[0]
	}
	return m, true
}

// reached is the place that a clause names; done tells whether the row named
// is knitted.
func (r *reading) reached(c stated, done bool) Meaning {
	m := r.stepMeaning(cueHit{topic: "latched"})
	if len(c.needles) > 0 {
		m.Move.Needle, m.Move.Begun = c.needles[len(c.needles)-1], c.begun
		return m
	}
	m.Move.What, m.Move.Done, m.Move.Row = "row", done, c.rows[len(c.rows)-1]
	return m
}

// checked holds back a move of a line that other readers took as done while it
// says the contrary, or asks.
func (r *reading) checked(m Meaning) Meaning {
	if m.Kind != Step || !r.ctx.Making || r.l.begin >= r.l.end {
		return m
	}
	switch m.Move.What {
	case "latched":
		if r.droppedByMistake() {
			return Meaning{Kind: Trouble, Card: "dropped-stitch"}
		}
		if r.l.has("oops", "whoops", "mistake", "wrong") && r.l.has("latch", "drop") {
			return Meaning{Kind: Trouble, Card: "wrong-needle-dropped"}
		}
	case "done":
		if r.l.has("left", "remain", "need") {
			m.Move.What = "where" // "I have 5 rows left"
			return m
		}
	case "finished":
	case "row":
		if r.l.has("go", "jump", "skip", "tak", "take", "mov", "move", "set", "put") {
			return m // an order
		}
	case "next":
		if r.l.has("next", "go", "on", "now", "continue", "what") {
			return m
		}
		if r.l.has("hang") && r.nothingHangs() {
			m.Move.What = "undone"
			return m
		}
	default:
		return m
	}
	if r.asksState() && !r.l.has("next") {
		m.Move.What = "whether"
		return m
	}
	for _, c := range r.stated() {
		if !c.held && (c.work || c.named()) {
			return m
		}
	}
	if r.held() {
		m.Move.What, m.Move.Step = "undone", ""
	}
	return m
}

func (r *reading) held() bool {
	for _, c := range r.stated() {
		if c.held {
			return true
		}
	}
	return false
}
