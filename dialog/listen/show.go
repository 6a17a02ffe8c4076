package listen

// show: the plan or a part of it is to be seen, in the units that the line names.
func (r *reading) show() (Meaning, bool) {
	c, ok := r.cues[Show]
	if !ok || len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	m := Meaning{Kind: Show, Topic: c.topic}
	switch {
	case r.l.has("inch", "imperial"):
		m.Name = "in"
	case r.l.has("cm", "centimetr", "metric"):
		m.Name = "cm"
	}
	return m, true
}

// help: what can be said at all.
func (r *reading) help() (Meaning, bool) {
	if r.cue(Help) && !(r.ctx.Making && r.cue(Step)) {
		return Meaning{Kind: Help}, true
	}
	return Meaning{}, false
}
