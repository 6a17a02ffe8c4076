package listen

// decidedAnd: "keep it, but the neck 39", "forget that, how many stitches did I
// have": what lies on the table is settled first, the rest is then said of the
// plan as it stands after that.
func (r *reading) decidedAnd() (Meaning, bool) {
	if r.ctx.Open != "keep" {
		return Meaning{}, false
	}
	head, rest := r.splitAtBreak()
	if head == "" || rest == "" {
		return Meaning{}, false
	}
	l := r.x.line(head)
	if len(l.quantities()) > 0 {
		return Meaning{}, false
	}
	first := r.x.read(l, r.ctx).Kind
	if first != Keep && first != Drop {
		return Meaning{}, false
	}
	after := r.ctx
	after.Open, after.Confirm = "", false
	m := r.x.read(r.x.line(rest), after)
	switch m.Kind {
	case Vague:
		m.Vague.Supposed = true // how much is asked while all lies on the table
		return m, true
	case Values, Number, Show, Why, Backwards, WhatIf, Compare, Step, Notebook:
	default:
		return Meaning{}, false
	}
	if m.Kind == Notebook && m.Topic == "leave" || m.First != "" {
		return Meaning{}, false
	}
	m.First = first
	return m, true
}

// mostDecided is how many words a decision takes.
const mostDecided = 5

// splitAtBreak cuts the line at the first comma, full stop, "and" or "but"
// behind a word that decides. "Ok, but 2x1" has none: it goes on with the
// what-if.
func (r *reading) splitAtBreak() (head, rest string) {
	t, decided := r.l.tokens, false
	for i := r.l.begin + 1; i < min(len(t), r.l.begin+mostDecided+1); i++ {
		decided = decided || oneOf(t[i-1].text, []string{"keep", "kept", "drop", "discard", "scrap", "forget", "leave"})
		joins := oneOf(t[i].text, []string{"and", "but", "then"})
		if !decided || !t[i].stop && !joins {
			continue
		}
		head = r.l.text[t[r.l.begin].start:t[i-1].end]
		for i < len(t) && oneOf(t[i].text, []string{"and", "but", "then"}) {
			i++
		}
		if i == len(t) {
			return "", ""
		}
		return head, r.l.text[t[i].start:]
	}
	return "", ""
}
