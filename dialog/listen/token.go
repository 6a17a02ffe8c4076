package listen

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// token is one word, one quantity or one needle of the line.
type token struct {
	text       string // lower case
	stem       string
	start, end int
	q          *quantity.Quantity
	needle     string // "L55"
	stop       bool   // a comma, full stop, question mark or dash stood before it
}

// tokens cuts a clean line, already in lower case, into words around the
// quantities found in it.
func tokens(line string, qs []quantity.Quantity) []token {
	out := make([]token, 0, len(line)/4+1)
	stop := false
	qi := 0
	for i := 0; i < len(line); {
		if qi < len(qs) && qs[qi].Start == i {
			q := &qs[qi]
			qi++
			if q.Ordinal && q.Words && q.Value.Equal(engine.Int(1)) {
				continue // "first needle" names a place, it counts nothing
			}
			if q.End > i {
				out = append(out, token{text: line[q.Start:q.End], start: q.Start, end: q.End, q: q, stop: stop})
				stop, i = false, q.End
				continue
			}
		}
		r, size := utf8.DecodeRuneInString(line[i:])
		if !isWordRune(r) {
			stop = stop || strings.ContainsRune(",.;:?!–—-", r)
			i += size
			continue
		}
		end := wordEnd(line, i, qi, qs)
		out = appendWord(out, line[i:end], i, end, stop)
		stop, i = false, end
	}
	return spokenNeedles(out)
}

// spokenNeedles reads "as far as left twenty" as a needle: a side and a
// number, where the words before them lead to a place.
func spokenNeedles(in []token) []token {
	out := in[:0]
	for i := 0; i < len(in); i++ {
		t := in[i]
		if side := strings.ToUpper(t.text[:1]); (t.text == "left" || t.text == "right") && i > 0 && i+1 < len(in) && leads(in[i-1].text) {
			if q := in[i+1].q; q != nil && q.Unit == "" && q.Value.IsInt() && !q.Range && q.Value.Sign() > 0 {
				n := t
				n.needle, n.end = side+q.Value.String(), in[i+1].end
				out = append(out, n)
				i++
				continue
			}
		}
		out = append(out, t)
	}
	return out
}

func leads(w string) bool {
	switch w {
	case "as", "to", "until", "till", "at", "on", "needle", "from", "the", "is":
		return true
	}
	return false
}

func wordEnd(line string, i, qi int, qs []quantity.Quantity) int {
	end := i
	for end < len(line) && (qi >= len(qs) || end < qs[qi].Start) {
		r, size := utf8.DecodeRuneInString(line[end:])
		if !isWordRune(r) && !(r == '\'' || r == '’') {
			break
		}
		end += size
	}
	return end
}

func isWordRune(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) || r == '%' }

// appendWord adds the word or words that w stands for: contractions are
// opened, needle names kept as needles.
func appendWord(out []token, w string, start, end int, stop bool) []token {
	w = strings.TrimRight(strings.ReplaceAll(w, "’", "'"), "'")
	if n, ok := needleName(w); ok {
		return append(out, token{text: w, stem: w, start: start, end: end, needle: n, stop: stop})
	}
	for _, part := range strings.Fields(openContraction(w)) {
		out = append(out, token{text: part, stem: stem(part), start: start, end: end, stop: stop})
		stop = false
	}
	return out
}

// needleName reads "l55" or "r12" as a needle.
func needleName(w string) (string, bool) {
	if len(w) < 2 || len(w) > 4 || (w[0] != 'l' && w[0] != 'r') || w[1] == '0' {
		return "", false
	}
	for _, c := range w[1:] {
		if c < '0' || c > '9' {
			return "", false
		}
	}
	return strings.ToUpper(w), true
}

// contractions are those that no apostrophe shows, or that keep no word whole.
var contractions = map[string]string{
	"can't":  "can not",
	"cant":   "can not",
	"cannot": "can not",
	"won't":  "will not",
	"wont":   "will not",
	"let's":  "let us",
	"lets":   "let us",
	"dunno":  "do not know",
	"idk":    "i do not know",
	"whats":  "what is",
	"hows":   "how is",
	"wheres": "where is",
	"whered": "where did",
	"howd":   "how did",
	"im":     "i am",
	"ive":    "i have",
	"dont":   "do not",
	"didnt":  "did not",
	"doesnt": "does not",
	"isnt":   "is not",
	"wasnt":  "was not",
	"thats":  "that is",
	"its":    "it is",
	"ill":    "i will",
	"id":     "i would",
	"gonna":  "going to",
	"wanna":  "want to",
}

// openContraction writes a contraction in full: "can't" as "can not".
func openContraction(w string) string {
	if full, ok := contractions[w]; ok {
		return full
	}
	i := strings.IndexByte(w, '\'')
	if i < 0 {
		return w
	}
	head, tail := w[:i], w[i+1:]
	switch tail {
	case "s":
		if head == "what" || head == "how" || head == "where" || head == "that" || head == "it" || head == "there" || head == "who" || head == "here" || oneOf(head, []string{"wide", "deep", "long", "much", "many", "high", "tall", "big"}) {
			return head + " is"
		}
		return head
	case "m":
		return head + " am"
	case "re":
		return head + " are"
	case "ve":
		return head + " have"
	case "ll":
		return head + " will"
	case "d":
		if oneOf(head, []string{"where", "what", "how", "why", "when", "who"}) {
			return head + " did"
		}
		return head + " would"
	case "t":
		return strings.TrimSuffix(head, "n") + " not"
	}
	return strings.ReplaceAll(w, "'", "")
}
