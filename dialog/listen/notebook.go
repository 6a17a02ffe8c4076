package listen

import "strings"

func (r *reading) notebook() (Meaning, bool) {
	c, ok := r.cues[Notebook]
	if c.topic == "open" && r.spoken("opening") {
		return Meaning{}, false
	}
	named := c.topic == "open" || c.topic == "save" || c.topic == "rename" || c.topic == "copy" || c.topic == "delete"
	if !ok || len(r.b.sets) > 0 && !named || c.topic == "list" && r.namesResult() {
		return Meaning{}, false
	}
	if c.topic == "open" && len(r.b.sets) > 0 && (r.ctx.Open == "garment" || r.b.sure() && !r.l.has("project", "notebook", "call", "name", "new")) {
		return Meaning{}, false
	}
	if r.ctx.Open == "keep" && c.topic == "leave" && r.l.has("mine", "it", "that", "old", "first") {
		return Meaning{}, false // "leave mine": the what-if is dropped, nobody goes
	}
	if c.topic == "leave" && r.ctx.Making && len(r.l.quantities()) == 1 && !r.badRow() && r.l.has("row") {
		return Meaning{}, false // "I must go to row 10"
	}
	if s, ok := r.cues[Show]; ok && s.weight >= c.weight {
		return Meaning{}, false
	}
	m := Meaning{Kind: Notebook, Topic: c.topic}
	m.Name, m.Name2 = r.projectNames(c)
	if c.topic == "save" && !r.l.has("as", "under", "call", "called", "name", "named") {
		m.Name, m.Name2 = "", "" // "save it for later" gives no name
	}
	return m, true
}

// projectNames takes the words after the order as a name; "a to b" as two.
func (r *reading) projectNames(c cueHit) (string, string) {
	switch c.topic {
	case "open", "rename", "copy", "delete", "save":
	default:
		return "", ""
	}
	var words []string
	second := -1
	for i := c.from + 1; i < r.l.end; i++ {
		t := r.l.tokens[i]
		if t.start == r.l.tokens[i-1].start {
			continue // the rest of a contraction: "I'd" is one word of a name
		}
		if i < c.to || len(words) == 0 {
			switch t.text {
			case "the", "my", "a", "new", "project", "notebook", "called", "named", "name", "it", "this", "that", "to", "as", "with", "on", "plan", "start", "begin", "for", "under", "one":
				continue
			}
		}
		if (t.text == "to" || t.text == "as") && len(words) > 0 && second < 0 {
			second = len(words)
			continue
		}
		words = append(words, r.l.raw[t.start:t.end])
	}
	if second >= 0 {
		return strings.Join(words[:second], " "), strings.Join(words[second:], " ")
	}
	return strings.Join(words, " "), ""
}
