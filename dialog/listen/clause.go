package listen

// mostClauses is how many parts of a line are looked at by themselves.
const mostClauses = 6

// clauses cuts the line where a comma, a full stop or the like stands, nil
// where there is only one part.
func (r *reading) clauses() []string {
	var out []string
	from := 0
	for i := 1; i <= len(r.l.tokens); i++ {
		if i < len(r.l.tokens) && !r.l.tokens[i].stop {
			continue
		}
		if i > from {
			out = append(out, r.l.text[r.l.tokens[from].start:r.l.tokens[i-1].end])
		}
		from = i
	}
	if len(out) < 2 || len(out) > mostClauses {
		return nil
	}
	return out
}

// heard is what a clause says by itself.
func (r *reading) heard(clause string) Meaning {
	l := r.x.line(clause)
	if len(l.tokens) == 0 {
		return Meaning{Kind: Nothing}
	}
	return r.x.read(l, r.ctx)
}

// order: the last clause asks for something plain ("I think I skipped
// something, take me back one step"), which the words before it only explain.
func (r *reading) order() (Meaning, bool) {
	parts := r.clauses()
	if parts == nil || len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	m := r.heard(parts[len(parts)-1])
	if r.ctx.Open == "keep" && (m.Kind == Drop || m.Kind == Keep) && r.idle(parts[:len(parts)-1]) {
		return m, true
	}
	if m.Kind == Step && m.Move.What == "back" && !r.ctx.Making && r.ctx.Open == "" {
		return Meaning{Kind: Undo, Count: 1}, true // "wrong number, back"
	}
	switch m.Kind {
	case Undo, Show:
		return m, true
	case Notebook:
		return m, m.Topic != "open" && r.ctx.Open != "keep"
	case Step:
		return m, m.Move.What == "back" || m.Move.What == "repeat" && (r.ctx.Making || r.idle(parts[:len(parts)-1])) || m.Move.What == "skip" || r.ctx.Making && m.Move.What == "next" && !r.wentWrong() && !r.cue(Trouble)
	case Help:
		return m, !r.ctx.Making && !r.wentWrong() && r.idle(parts[:len(parts)-1])
	case Number:
		return m, len(m.Sets) == 0 && !r.wentWrong() && r.idle(parts[:len(parts)-1])
	}
	return Meaning{}, false
}

// idle reports whether the clauses name nothing and count nothing.
func (r *reading) idle(parts []string) bool {
	for _, part := range parts {
		l := r.x.line(part)
		r.x.mark(l)
		if len(l.mentions) > 0 || len(l.quantities()) > 0 {
			return false
		}
		for _, t := range l.tokens {
			if r.x.craft[t.stem] && !slight(t.stem) && !common(t.stem) {
				return false
			}
		}
	}
	return true
}

// parted: nothing knew the line as a whole, and just one of its clauses says
// something, or all that do ask for numbers. A clause with a number that was
// not understood spoils it: what is left out must be idle talk.
func (r *reading) parted() (Meaning, bool) {
	var only Meaning
	known := 0
	for _, part := range r.clauses() {
		m := r.heard(part)
		if m.Kind == Step && m.Move.What == "back" && !r.ctx.Making && r.wentWrong() {
			m = Meaning{Kind: Undo, Count: 1} // "wrong number, back"
		}
		switch m.Kind {
		case Nothing, Chat:
			continue
		case Unclear, Outside:
			if m.HasFig || len(m.Keys) > 0 || m.Problem.Code != "" && m.Problem.Code != "not-understood" {
				return Meaning{}, false
			}
			continue
		case Keep, Drop:
			if known == 1 && only.Kind == m.Kind {
				continue
			}
		case Measure:
			if known > 0 && only.Kind == Measure || m.Topic == "dont-know" && known > 0 {
				continue
			}
		case Number:
			if known == 1 && only.Kind == Number && len(m.Sets)+len(only.Sets) == 0 {
				only.Keys, only.Part = append(only.Keys, m.Keys...), ""
				continue
			}
		}
		if known == 1 && only.Kind == Measure && only.Topic == "dont-know" {
			known = 0
		}
		only = m
		known++
	}
	return only, known == 1
}
