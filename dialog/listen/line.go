package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// Line is one line on its way to a meaning: its tokens and what they name.
type Line struct {
	text     string // clean, lower case
	raw      string // the same as it was typed
	tokens   []token
	seen     glance // of the tokens
	first    uint64 // their initials
	begin    int    // tokens before begin are greetings and fillers
	end      int    // tokens from end on are politeness
	question bool
	mentions []mention
	fixes    []Fix
	fits     []fit // what the shelves said of it: the readers ask them again and again
}

// fit is the two cards of a shelf that fit a line best.
type fit struct {
	shelf         *shelf
	first, second found
}

// mention is a place where the words name something.
type mention struct {
	from, to int
	key      engine.Key // an input or a result
	result   bool
	rib      engine.Rib
	garment  engine.Garment
	text     string // a choice of key
	beside   bool   // the choice counts only where the line names key as well
}

// line is a clean text as tokens, in plainer words where rules/ has them.
func (x *Lexicon) line(text string) *Line {
	l := newLine(x.spellOut(text))
	x.rewrite(l)
	return l
}

// spellOut writes the abbreviations of rules/ in full ("nk", "ndl"), which is
// no correction and need not be told.
func (x *Lexicon) spellOut(text string) string {
	var b strings.Builder
	done := 0
	for i := 0; i < len(text); {
		if !isWordByte(text[i]) {
			i++
			continue
		}
		end := i
		for end < len(text) && isWordByte(text[end]) {
			end++
		}
		if end < len(text) && text[end] == '\'' && (end+1 == len(text) || text[end+1] == ' ') {
			end++ // "an'", "t'"
		}
		if end+1 < len(text) && end-i == 1 && text[end] == '/' && (end+2 == len(text) || !isWordByte(text[end+2])) {
			if _, slashed := x.shorts[lower(text[i:end+2])]; slashed {
				end += 2 // "r/h", "c/w"
			}
		}
		to, ok := x.shorts[lower(text[i:end])]
		if text[i:end] == "n" && i > 0 && end < len(text) {
			to, ok = "and", true // "28 sts n 40 rows", but not "n" alone
		}
		if ok && end-i <= longestShort {
			b.WriteString(text[done:i] + to)
			done = end
			if end+1 < len(text) && text[end] == '.' && text[end+1] == ' ' && end-i < 4 {
				done++ // "hem ea. 3rd"
			}
		}
		i = end
	}
	if done == 0 {
		return text
	}
	return b.String() + text[done:]
}

// longestShort is the length of the longest abbreviation.
const longestShort = 12

func isWordByte(c byte) bool {
	return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '@' || c == '&' || c >= 0x80
}

func newLine(text string) *Line {
	l := &Line{text: lower(text), raw: text}
	l.question = strings.Contains(text, "?")
	l.tokens = tokens(l.text, quantity.Scan(l.text))
	l.look()
	l.trim()
	return l
}

// trim steps over words that greet, hesitate or are polite, at both ends.
func (l *Line) trim() {
	l.begin, l.end = 0, len(l.tokens)
	for l.begin < l.end && l.tokens[l.begin].q == nil && filler(l.tokens[l.begin].text) {
		l.begin++
	}
	for l.end > l.begin && l.tokens[l.end-1].q == nil && tailFiller(l.tokens[l.end-1].text) {
		l.end--
	}
	if l.begin == l.end { // nothing but fillers: they may be the message ("ok")
		l.begin, l.end = 0, len(l.tokens)
	}
}

func filler(w string) bool {
	switch w {
	case "ok", "okay", "hi", "hello", "hey", "ooh", "um", "umm", "uh", "er", "erm", "well", "so", "oh", "ah", "hmm", "hm", "please", "pls", "now", "then", "right", "alright", "huh", "eh", "ew", "argh", "ugh", "phew", "wait", "oof", "aw":
		return true
	}
	return false
}

func tailFiller(w string) bool {
	switch w {
	case "please", "pls", "plz", "thanks", "thank", "thx", "ta", "then", "though", "maybe", "x":
		return true
	}
	return false
}

// stemsAt reports whether the words at i are these stems.
func (l *Line) stemsAt(stems []string, i int) bool {
	if i+len(stems) > len(l.tokens) {
		return false
	}
	for j, s := range stems {
		if t := &l.tokens[i+j]; t.q != nil && t.text != s || t.q == nil && t.stem != s {
			return false
		}
	}
	return true
}

// slotAt reports how many tokens fill the slot at i.
func (l *Line) slotAt(slot string, i int) (int, bool) {
	t := &l.tokens[i]
	switch slot {
	case "n":
		return 1, t.q != nil && !t.q.Rib
	case "len":
		return 1, t.q != nil && !t.q.Rib && !t.q.Ordinal && (t.q.Unit == "" || isLength(t.q.Unit))
	case "ord":
		return 1, t.q != nil && (t.q.Ordinal || t.q.Unit == "" || t.q.Unit == "st")
	case "needle":
		return 1, t.needle != ""
	case "any":
		return 1, true
	}
	for _, m := range l.mentions {
		if m.from != i {
			continue
		}
		switch slot {
		case "rib":
			if m.rib.IsSet() {
				return m.to - m.from, true
			}
		case "key", "result", "input":
			if m.key != "" && (slot == "key" || m.result == (slot == "result")) {
				return m.to - m.from, true
			}
		}
	}
	return 0, false
}

func isLength(u quantity.Unit) bool {
	switch u {
	case "cm", "mm", "in", "ft", "m", "yd":
		return true
	}
	return false
}

// has reports whether any of the stems stands in the line.
func (l *Line) has(stems ...string) bool {
	for _, s := range stems {
		if l.first&initial(s) == 0 {
			continue
		}
		for i := range l.tokens {
			if t := &l.tokens[i]; t.q == nil && (t.stem == s || t.text == s) {
				return true
			}
		}
	}
	return false
}

// words counts the tokens between begin and end.
func (l *Line) words() int { return l.end - l.begin }

// quantities lists the tokens that are quantities.
func (l *Line) quantities() []int {
	var out []int
	for i, t := range l.tokens {
		if t.q != nil {
			out = append(out, i)
		}
	}
	return out
}
