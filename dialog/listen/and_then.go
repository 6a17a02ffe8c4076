package listen

// andThen: "3 cm and show the needles", "make it 44, then print it" say a value
// and ask for something to be shown with it.
func (r *reading) andThen() (Meaning, bool) {
	t := r.l.tokens
	for i := r.l.begin + 1; i < r.l.end; i++ {
		if !oneOf(t[i].text, []string{"show", "print", "draw", "list", "display", "start"}) || t[i].q != nil {
			continue
		}
		to := i
		for to > r.l.begin && oneOf(t[to-1].text, []string{"and", "then", "please", "also"}) {
			to--
		}
		if to == i && !t[i].stop || to == r.l.begin {
			continue
		}
		first := r.x.read(r.x.line(r.l.text[t[r.l.begin].start:t[to-1].end]), r.ctx)
		after := r.ctx
		after.Open, after.Confirm = "", false
		rest := r.l.text[t[i].start:]
		then := r.x.read(r.x.line(rest), after)
		if first.Kind == Unclear && first.HasFig {
			return first, true // what is shown does not name the number before it
		}
		if (first.Kind != Values && first.Kind != WhatIf) || first.Then != "" || then.Kind != Show && then.Kind != Step && then.Kind != Parts && (then.Kind != Notebook || then.Topic != "page" && then.Topic != "write") {
			return Meaning{}, false
		}
		first.Then = rest
		return first, true
	}
	return Meaning{}, false
}
