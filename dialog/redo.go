package dialog

// onRedo brings back what the last undo took, as long as nothing else was
// changed since, and names it.
func (c *turn) onRedo() (State, Reply) {
	if c.s.undone == nil {
		return c.s, c.reply("undo", "There is no undo to take back.")
	}
	turn, was := c.s.Turn, c.s.Making
	back := c.voice().Changed(c.kept(), c.s.Said, c.s.undone.Said)
	c.s = *c.s.undone
	c.s.Turn, c.s.Redone = turn, true
	text := "Brought back"
	switch {
	case back != "":
		text += ": " + back
	case was != c.s.Making && c.whereText() != "":
		text += ": " + c.whereText()
	}
	text = period(text)
	if short := c.voice().Short(c.plan()); short != "" && c.open(c.s) == "" {
		text += " The plan is " + short + "."
	}
	return c.s, c.reply("undo", text)
}

// period ends a sentence that may have its full stop already.
func period(s string) string {
	if s[len(s)-1] == '.' {
		return s
	}
	return s + "."
}
