package listen

// mostThanks is how many words of thanks are taken for no more than that.
const mostThanks = 14

// chat: a greeting, thanks or a nod, and nothing else.
func (r *reading) chat() (Meaning, bool) {
	if r.cue(Notebook) && r.cues[Notebook].topic == "leave" {
		return Meaning{}, false // "thanks, good evening, I stop for today"
	}
	if r.thanks() && len(r.l.quantities()) == 0 && !r.asks() && len(r.l.tokens) <= mostThanks && len(r.inputs()) == 0 {
		return Meaning{Kind: Chat, Topic: "thanks"}, true
	}
	c, ok := r.cues[Chat]
	if !ok || len(r.l.quantities()) > 0 || r.ctx.Confirm || r.ctx.Open == "keep" && c.topic == "fine" {
		return Meaning{}, false
	}
	return Meaning{Kind: Chat, Topic: c.topic}, true
}

// thanks: the line begins with thanks.
func (r *reading) thanks() bool {
	switch r.l.tokens[0].text {
	case "thank", "thanks", "thx", "cheers", "ta", "ty":
		return true
	}
	return false
}

// greeting: a line that greets and says nothing else that can be read.
func (r *reading) greeting() (Meaning, bool) {
	if len(r.b.sets) > 0 || len(r.l.quantities()) > 0 {
		return Meaning{}, false
	}
	switch r.l.tokens[0].text {
	case "hi", "hello", "hey", "hiya", "hallo", "howdy":
		return Meaning{Kind: Chat, Topic: "hello"}, true
	}
	return Meaning{}, false
}
