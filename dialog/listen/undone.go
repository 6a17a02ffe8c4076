package listen

// undone: "I have not latched L46", "nearly done with row 10" tell that
// something is not done yet; only what is done moves the place.
func (r *reading) undone() (Meaning, bool) {
	if !r.ctx.Making || r.ctx.Open != "" || r.asks() || r.b.sure() || !r.l.has("not", "never", "nearly", "almost", "yet", "forgot", "forget", "forgotten", "still") {
		return Meaning{}, false
	}
	work := false
	for i := r.l.begin; i < r.l.end; i++ {
		switch t := &r.l.tokens[i]; {
		case t.needle != "":
			work = true
		case t.q != nil && (t.q.Unit == "" || t.q.Unit == "row"):
		case oneOf(t.text, []string{"yet", "nearly", "almost", "done", "finished", "finish", "finishing", "completed", "ready", "did", "made", "latched", "latch", "latching", "hung", "hang", "hanging", "sewn", "sewed", "sew", "knitted", "knit", "knitting"}):
			work = true
		case oneOf(t.text, []string{"i", "we", "am", "is", "are", "be", "been", "was", "have", "has", "had", "not", "never", "yet", "nearly", "almost", "quite", "just", "still", "forgot", "forget", "forgotten", "to", "with", "it", "that", "this", "them", "the", "a", "one", "all", "of", "so", "sorry", "no", "oh", "step", "row", "rows", "needle", "column", "bump", "loop", "here"}):
		default:
			return Meaning{}, false
		}
	}
	if !work {
		return Meaning{}, false
	}
	return r.stepMeaning(cueHit{topic: "undone"}), true
}

// asksWhetherDone: "is it finished?" and "have I done 9 rows" ask where she is, which
// moves no place; "done, what next?" tells that something is done.
func (r *reading) asksWhetherDone(m Meaning) bool {
	switch m.Move.What {
	case "next", "done", "finished", "latched", "row":
	default:
		return false
	}
	if m.Kind != Step || !r.ctx.Making || r.l.begin >= r.l.end || r.l.has("next") {
		return false
	}
	switch first := r.l.tokens[r.l.begin]; first.text {
	case "is", "am", "are", "have", "has", "did", "was", "were":
		return true
	default:
		return r.l.question && r.l.words() <= 2 && oneOf(first.text, []string{"done", "finished", "ready", "all"})
	}
}
