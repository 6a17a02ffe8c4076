package dialog

// onStep moves through the making.
func (c *turn) onStep() (State, Reply) {
	if q := c.open(c.s); c.m.Move.What == "skip" && !c.s.Making.On && q != "" && q != "keep" {
		return c.skipQuestion()
	}
	return c.stepReply("")
}

func (c *turn) stepReply(text string) (State, Reply) { return c.s, c.reply("step", text) }

func (t *Talk) stepTitle(id string) string { return id }

func (c *turn) whereText() string { return "" }

func (c *turn) doneSoFar() string { return "" }

// blockedByMaking is the reason why what is knitted rules the change out, ""
// where it does not.
func (c *turn) blockedByMaking(a applied) string { return "" }
