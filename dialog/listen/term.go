package listen

import (
	"strings"

	"foldrow/engine"
)

// terms finds the card of rules/terms.md by a term's stems, joined.
type terms map[string]termCard

type termCard struct {
	id   string
	the  bool // "what is the hem" asks for the meaning as well
	mean bool // "what is neck" asks for a number, and only "what does it mean" for the meaning
}

func (x *Lexicon) learnTerms() {
	x.terms = terms{}
	for _, c := range x.book.Cards("terms") {
		for _, w := range c.List("words") {
			x.terms[joinedStems(strings.Fields(w))] = termCard{c.ID, c.Fields["the"] == "yes", c.Fields["mean"] == "yes"}
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

// words that may stand before and behind a term that is asked for.
var (
	termLead = []string{"is", "are", "a", "an", "does", "do", "you", "by", "with", "of", "word", "term", "exactly", "actually", "it", "i", "we", "not", "never", "know", "understand", "get", "called", "to", "me",
		"be", "please", "and", "tell", "these", "those", "still", "sorry", "quite"}
	termTail = []string{"is", "are", "does", "please", "exactly", "in", "here", "be", "that", "they", "it", "those", "these", "again", "actually"}
	termAsks = []string{"what", "mean", "means", "meant", "meaning", "explain", "define", "definition"}
)

// mostTermWords is how long a line may be that asks for the meaning of a word.
const mostTermWords = 10

// term: "what is a bump", "what does latching mean", "I don't understand the
// clicks", "what is 2x2" ask for the meaning of a word of the trade and hold
// nothing else.
func (r *reading) term() (Meaning, bool) {
	if r.l.words() > mostTermWords || !r.l.has("what", "mean", "explain", "define", "definition", "understand", "get", "know") {
		return Meaning{}, false
	}
	for i := r.l.begin; i < r.l.end; i++ {
		if t := &r.l.tokens[i]; t.q != nil && !t.q.Rib || t.needle != "" || t.text == "if" {
			return Meaning{}, false
		}
	}
	var rest []string
	asked, the, puzzled, ribs := false, false, false, 0
	var rib engine.Rib
	for i := r.l.begin; i < r.l.end; i++ {
		t := &r.l.tokens[i]
		puzzled = puzzled || (t.text == "understand" || t.text == "get" || t.text == "know" && r.l.has("what")) && i > r.l.begin && oneOf(r.l.tokens[i-1].text, []string{"not", "never"})
		switch {
		case t.q != nil && t.q.Rib:
			ribs++
			rib = engine.Rib{Knit: t.q.Value.Floor(), Purl: t.q.High.Floor()}
		case oneOf(t.text, termAsks):
			asked = true
		case oneOf(t.text, []string{"the", "my", "your", "our"}):
			the = true
		case len(rest) == 0 && oneOf(t.text, termLead), oneOf(t.text, termTail) && !r.wholeTerm(i):
		default:
			rest = append(rest, t.text)
		}
	}
	asked = asked || puzzled
	if ribs == 1 && asked && !the && plausibleRib(rib) && (len(rest) == 0 || len(rest) == 1 && oneOf(rest[0], []string{"rib", "ribs", "ribbing"})) {
		return Meaning{Kind: HowTo, Topic: "rib", Choices: [][]Set{{{Key: engine.KeyRib, Rib: rib}}}}, true
	}
	if ribs > 0 || len(rest) == 0 || len(rest) > 5 {
		return Meaning{}, false
	}
	card, ok := r.x.terms[joinedStems(rest)]
	meaning := puzzled || r.l.has("mean", "explain", "define", "definition") || r.l.has("a", "an") && r.l.words() <= 4 // "what is an assumption"
	if !ok || !asked || !meaning && (card.mean || the && !card.the || !r.l.has("be", "do")) {
		return Meaning{}, false
	}
	return Meaning{Kind: HowTo, Topic: "term", Card: card.id}, true
}

// wholeTerm: the small word at i is part of a term ("at rest").
func (r *reading) wholeTerm(i int) bool {
	for _, to := range []int{i + 2, i + 3} {
		var words []string
		for j := i; j < min(to, r.l.end); j++ {
			words = append(words, r.l.tokens[j].text)
		}
		if _, ok := r.x.terms[joinedStems(words)]; ok && len(words) > 1 {
			return true
		}
	}
	return false
}

// plausibleRib: columns wider than nine stitches are no rib.
func plausibleRib(rib engine.Rib) bool {
	return rib.Knit >= 1 && rib.Purl >= 1 && rib.Knit <= 9 && rib.Purl <= 9
}
