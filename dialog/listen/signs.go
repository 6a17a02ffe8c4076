package listen

import (
	"regexp"
	"strings"

	"foldrow/dialog/listen/quantity"
)

var (
	// changed is a value with an arrow to another: "40 -> 42 cm", "1x1 → 2x2".
	changed = regexp.MustCompile(`(^|[ =:(])[0-9][0-9./]*(?:x[0-9]+)? *(?:cm|mm|inches|inch|in|"|rows?|stitches|sts?|%)? *(?:-+>|=+>|→) *([0-9])`)
	arrow   = regexp.MustCompile(` *(?:-+>|=+>|→) *([0-9])`)
	// shortRow is a row by its number: "dial r 7"; "at R7" is a needle.
	shortRow = regexp.MustCompile(`(?i)\b(dial|tension|tens|mt|clicks) (?:for )?(?:rows? )?r ?([0-9]+)(?: ?(?:-|to) ?r? ?([0-9]+))?\b`)
	// shortRows counts rows: "10 r".
	shortRows = regexp.MustCompile(`(?i)([0-9]) rs?([ ,;?.!]|$)`)
	// rowsBefore is a count with its sign before it: "st 29, r 42.5".
	rowsBefore = regexp.MustCompile(`(?i)((?:^|[,;/+] ?|[0-9] ))r ([0-9])`)
	// per is a rate of two things counted: "rows/click".
	per = regexp.MustCompile(`(?i)\b(rows?|clicks?|r) ?/ ?(click|number|no)\b`)
	// besides joins two names: "rows + loops".
	besides = regexp.MustCompile(`([a-z)]) \+ ([a-z])`)
	tail    = regexp.MustCompile(`(?i),? +in +(inches|cm|centimetres|centimeters)[ ?.!]*$`)
)

// signs says in words what is written in signs: of a value with an arrow to
// another only the other counts, "+= 1.5" adds.
func signs(text string) string {
	if strings.Contains(text, ">") || strings.Contains(text, "→") {
		text = arrow.ReplaceAllString(changed.ReplaceAllString(text, "${1}${2}"), " ${1}")
	}
	if loneR(text) {
		text = rowsInFull(text)
	}
	if !strings.ContainsAny(text, "/+=") {
		return text
	}
	text = per.ReplaceAllString(text, "$1 per $2")
	text = besides.ReplaceAllString(text, "$1 and $2")
	return strings.NewReplacer("+-", "±", "+=", " plus ", "-=", " minus ").Replace(text)
}

// rowsInFull writes out an r that stands for rows.
func rowsInFull(text string) string {
	if at := shortRow.FindStringSubmatchIndex(text); at != nil && at[6] >= 0 {
		text = text[:at[0]] + text[at[2]:at[3]] + " rows " + text[at[4]:at[5]] + "-" + text[at[6]:at[7]] + text[at[1]:]
	}
	text = shortRow.ReplaceAllString(text, "$1 row $2")
	text = shortRows.ReplaceAllString(text, "$1 rows$2")
	return rowsBefore.ReplaceAllString(text, "${1}rows $2")
}

// loneR reports whether an r stands in the text that begins no word, which
// most lines are without.
func loneR(text string) bool {
	for i := range len(text) {
		if text[i]|0x20 != 'r' || i > 0 && isLetter(text[i-1]) {
			continue
		}
		if i+1 == len(text) || !isLetter(text[i+1]) || text[i+1]|0x20 == 's' {
			return true
		}
	}
	return false
}

func isLetter(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' }

// inUnit takes "in inches" off the end of a question.
func inUnit(text string) (rest string, unit quantity.Unit, ok bool) {
	if bare := strings.TrimRight(text, " ?.!"); bare == "" || bare[len(bare)-1]|0x20 != 's' && bare[len(bare)-1]|0x20 != 'm' {
		return text, "", false
	}
	at := tail.FindStringSubmatchIndex(text)
	if at == nil {
		return text, "", false
	}
	if strings.EqualFold(text[at[2]:at[3]], "inches") {
		return text[:at[0]] + "?", quantity.Inch, true
	}
	return text[:at[0]] + "?", quantity.Centimetre, true
}
