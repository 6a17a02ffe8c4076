package listen

// mostFixes is how many words of a line may be misspelt; a line with more is
// not about the craft.
const mostFixes = 4

// respell is the line with its unknown words corrected, nil where there is
// nothing to correct.
func (x *Lexicon) respell(l *Line) *Line { return x.respellFirst(l, len(l.tokens)) }

// respellFirst corrects among the first words only.
func (x *Lexicon) respellFirst(l *Line, words int) *Line {
	text := l.text
	var fixes []Fix
	for i := min(words, len(l.tokens)) - 1; i >= 0 && len(fixes) <= mostFixes; i-- {
		t := l.tokens[i]
		if t.q != nil || t.needle != "" || i+1 < len(l.tokens) && l.tokens[i+1].start == t.start {
			continue
		}
		if to, ok := x.slips[t.text]; ok {
			text = text[:t.start] + to + text[t.end:]
			fixes = append(fixes, Fix{t.text, to})
			continue
		}
		if x.knows(t) {
			continue
		}
		to, ok := "", false
		if len(t.text) > 3 { // of three letters nearly anything can be made
			to, ok = x.spell().correct(t.text)
		}
		if !ok {
			to, ok = x.parted(t.text)
		}
		if !ok {
			to, ok = x.spell().correct(t.text)
		}
		if !ok {
			to, ok = x.spell().correctShort(t.text)
		}
		if !ok && len(t.text) > 4 {
			to, ok = x.rare().correct(t.text)
		}
		if ok && !(len(t.text) <= 4 && len(l.tokens) > 3 && x.typed["actions"][to]) { // a short word among others is no order to act
			text = text[:t.start] + to + text[t.end:]
			fixes = append(fixes, Fix{t.text, to})
		}
	}
	if len(fixes) == 0 || len(fixes) > mostFixes {
		return nil
	}
	n := x.line(text)
	n.question = l.question
	for i, j := 0, len(fixes)-1; i < j; i, j = i+1, j-1 {
		fixes[i], fixes[j] = fixes[j], fixes[i]
	}
	n.fixes = fixes
	return n
}
