package listen

import "strings"

// terms finds the card of rules/terms.md by a term's stems, joined.
type terms map[string]termCard

type termCard struct {
	id  string
	the bool // "what is the hem" asks for the meaning as well
}

func (x *Lexicon) learnTerms() {
	x.terms = terms{}
	for _, c := range x.book.Cards("terms") {
		for _, w := range c.List("words") {
			x.terms[joinedStems(strings.Fields(w))] = termCard{c.ID, c.Fields["the"] == "yes"}
		}
	}
}

func joinedStems(words []string) string {
	stems := make([]string, len(words))
	for i, w := range words {
		stems[i] = stem(w)
	}
	return strings.Join(stems, " ")
}

// term: "what is a bump", "what does latching mean", "explain the fold" ask for
// the meaning of a word of the trade and hold nothing else.
func (r *reading) term() (Meaning, bool) {
	if r.l.end-r.l.begin > 10 || !r.l.has("what", "mean", "explain", "define", "definition") || len(r.l.quantities()) > 0 {
		return Meaning{}, false
	}
	var rest []string
	asked, the := false, false
	for _, t := range r.l.tokens[r.l.begin:r.l.end] {
		switch {
		case t.q != nil || t.needle != "":
			return Meaning{}, false
		case oneOf(t.text, []string{"what", "mean", "means", "meant", "meaning", "explain", "define", "definition"}):
			asked = true
		case oneOf(t.text, []string{"the", "my", "your"}):
			the = true
		case len(rest) == 0 && oneOf(t.text, []string{"is", "are", "a", "an", "does", "do", "you", "by", "with", "of", "word", "term", "exactly", "actually", "it", "i", "not", "know", "understand", "by", "called", "to", "me", "be", "please", "and"}),
			oneOf(t.text, []string{"is", "are", "does", "please", "exactly", "in", "here", "be"}):
		default:
			rest = append(rest, t.text)
		}
	}
	if !asked || len(rest) == 0 || len(rest) > 4 {
		return Meaning{}, false
	}
	card, ok := r.x.terms[joinedStems(rest)]
	if !ok || the && !card.the && !r.l.has("mean", "explain", "define") {
		return Meaning{}, false
	}
	return Meaning{Kind: HowTo, Topic: "term", Card: card.id}, true
}
