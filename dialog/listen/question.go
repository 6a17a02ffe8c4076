package listen

import "strings"

// requests: "could you make the neck 2 cm bigger" has the form of a question
// and is an order.
func (r *reading) requests(i int) bool {
	if i+2 >= len(r.l.tokens) || r.l.tokens[i+1].text != "you" {
		return false
	}
	switch r.l.tokens[i].text {
	case "can", "could", "would", "will":
	default:
		return false
	}
	j := i + 2
	if r.l.tokens[j].text == "please" && j+1 < len(r.l.tokens) {
		j++
	}
	switch r.l.tokens[j].text {
	case "make", "set", "change", "use", "put", "add", "take", "increase", "reduce", "switch":
		return len(r.l.quantities()) > 0
	}
	return false
}

// asks reports whether the line has the form of a question.
func (r *reading) asks() bool {
	if r.l.question && !(r.l.begin < len(r.l.tokens) && r.requests(r.l.begin)) {
		return true
	}
	return r.askForm()
}

// askForm reports whether the line begins as a question does.
func (r *reading) askForm() bool {
	if r.l.begin >= len(r.l.tokens) {
		return false
	}
	i := r.l.begin
	for i < len(r.l.tokens) && (r.l.tokens[i].text == "and" || r.l.tokens[i].text == "ok" || r.l.tokens[i].text == "but") {
		i++
	}
	if i+1 < len(r.l.tokens) && preposition(r.l.tokens[i].text) && askWhat(r.l.tokens[i+1].text) {
		return true // "on which needle", "with how many stitches"
	}
	if i >= len(r.l.tokens) {
		return false
	}
	if t := r.l.tokens[i].text; (t == "do" || t == "does" || t == "have" || t == "did") && i+1 < len(r.l.tokens) {
		switch r.l.tokens[i+1].text {
		case "it", "this":
			return r.l.question || t != "do" || len(r.l.quantities()) == 0 && i+2 < r.l.end // "do it", "do it 1 1/2 inch deep"
		case "i", "you", "we", "they", "people", "most":
			return true
		}
		return t == "does" || r.mustDo(i)
	}
	if r.requests(i) {
		return false
	}
	if i+1 < len(r.l.tokens) && r.l.tokens[i+1].text == "where" {
		return true // "buttonholes where on 130 sts"
	}
	if r.l.tokens[i].text == "if" && len(r.l.quantities()) == 1 && r.numberWanted() {
		return true
	}
	switch r.l.tokens[i].text {
	case "what", "which", "how", "where", "when", "why", "who", "am", "whose", "goes":
		return true
	case "is", "are", "can", "could", "would", "should", "will", "must", "may":
		return !r.subjectless(i)
	}
	return r.asksWithin() || r.asksLast() || strings.HasPrefix(r.l.text, "tell me") || strings.HasPrefix(r.l.text, "give me") && len(r.l.quantities()) == 0 || strings.HasPrefix(r.l.text, "show me")
}

// mustDo: "do the needles have to be right out", but not "do the hem".
func (r *reading) mustDo(i int) bool {
	t := r.l.tokens
	return t[i].text == "do" && oneOf(t[i+1].text, []string{"the", "my", "these", "those", "all"}) && (r.l.question || r.l.has("have", "need"))
}

func preposition(w string) bool {
	switch w {
	case "on", "at", "from", "to", "by", "with", "in", "for", "over", "until", "after", "before":
		return true
	}
	return false
}

func askWhat(w string) bool { return w == "which" || w == "what" || w == "how" || w == "where" }

// asksWithin: the word of a question stands further on ("15 rows is how many
// cm", "5 buttons where do they go").
func (r *reading) asksWithin() bool {
	switch r.l.tokens[r.l.begin].text {
	case "i", "we", "that", "not", "do", "it":
		return false
	}
	for i := r.l.begin + 1; i+1 < r.l.end; i++ {
		switch t := r.l.tokens[i]; t.text {
		case "which", "what":
			if t.stop || r.frontedAsk(i) || preposition(r.l.tokens[i-1].text) && t.text == "which" && len(r.l.quantities()) == 0 {
				return true // "row at which the dial first changes"
			}
		case "will", "is", "does", "can", "do", "are", "would":
			if t.stop && subject(r.l.tokens[i+1].text) && i+2 < r.l.end {
				return true // "he is 6, will it go over his head"
			}
		case "where":
			switch r.l.tokens[i+1].text {
			case "do", "does", "is", "are", "should", "on", "to", "must":
				return true
			}
		case "how":
			if r.countsAt(i) || t.stop && oneOf(r.l.tokens[i+1].text, []string{"big", "deep", "wide", "tight", "high", "large", "long"}) {
				return true
			}
		}
	}
	return false
}

// frontedAsk: what the question is about stands before it: "from 95 stitches what
// neck", "in row 3 which number".
func (r *reading) frontedAsk(at int) bool {
	if !oneOf(r.l.tokens[r.l.begin].text, []string{"from", "in", "on", "at", "for", "with"}) {
		return false
	}
	for i := r.l.begin + 1; i < min(at, r.l.begin+4); i++ {
		if r.l.tokens[i].q != nil {
			return true
		}
	}
	return false
}

// asksLast: "last needle on the right side is which".
func (r *reading) asksLast() bool {
	n := r.l.end
	return n-r.l.begin > 2 && oneOf(r.l.tokens[n-1].text, []string{"which", "what", "where"}) && oneOf(r.l.tokens[n-2].text, []string{"is", "are"})
}

// subjectless: "should be 43 cm", "is about 42" answer in short; they have the
// words of a question and ask nothing.
func (r *reading) subjectless(i int) bool {
	if i+1 >= len(r.l.tokens) {
		return false
	}
	next := r.l.tokens[i+1]
	switch r.l.tokens[i].text {
	case "is", "are":
		judged := r.l.has("too", "enough", "ok", "okay", "right", "normal", "good", "usual", "fine", "big", "small", "much", "better", "correct",
			"hard", "easy", "difficult", "tricky", "quick", "quicker", "slow", "slower", "nice", "nicer", "pretty", "stretchy", "stretchier", "wide", "tight", "loose",
			"possibl", "possible", "allow", "common", "popular", "harder", "easier", "neater", "faster")
		if next.q == nil && !r.l.question {
			return next.needle == "" && !subject(next.text) && !(judged && r.l.words() <= 5) // "is jacket with buttons", but "is plain quicker"
		}
		return next.q != nil && !judged
	}
	return next.text == "be"
}

// subject: the word can begin what a question is about.
func subject(w string) bool {
	switch w {
	case "it", "that", "this", "there", "the", "my", "a", "an", "your", "her", "his", "their", "our", "these", "those", "one", "she", "he", "they", "we", "i", "you", "any", "all", "both", "not", "anything", "something":
		return true
	}
	return false
}
