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
	shortRow = regexp.MustCompile(`(?i)\b(dial|tension|tens|mt|clicks|t) (?:for |on |at )?(?:rows? )?r ?([0-9]+)(?: ?(?:-|to) ?r? ?([0-9]+))?\b`)
	// shortRows counts rows: "10 r".
	shortRows = regexp.MustCompile(`(?i)([0-9]) rs?([ ,;?.!/]|$)`)
	// rowsBefore is a count with its sign before it: "st 29, r 42.5".
	rowsBefore = regexp.MustCompile(`(?i)((?:^|[,;/+] ?|[0-9] ))r ([0-9])`)
	// per is a rate of two things counted: "rows/click".
	per = regexp.MustCompile(`(?i)\b(rows?|clicks?|r) ?/ ?(click|number|no)\b`)
	// besides joins two names: "rows + loops".
	besides    = regexp.MustCompile(`([a-z)]) \+ ([a-z])`)
	ribApart   = regexp.MustCompile(`\b([1-9])(?: ?[xX×] | [xX×] ?)([1-9])\b`)
	gaugeTimes = regexp.MustCompile(`\b([1-9][0-9](?:\.[0-9]+)?) ?[xX×] ?([1-9][0-9](?:\.[0-9]+)?)\b (?:to|in|over|on) (?:the )?(?:10|ten)\b(?: ?cm)?`)
	anHalf     = regexp.MustCompile(`(?i)\b([0-9]+|one|two|three|four|five) an a? ?half\b`)
	perTen     = regexp.MustCompile(`(?i)([0-9] ?(?:sts?|stitches|rows?|rws|r)/10)(,| |;|$)`)
	twoNames   = regexp.MustCompile(`^([a-z]{3,})/([a-z]{3,})[ ?]*$`)
	edgeSign   = regexp.MustCompile(`(?i)\be ?= ?([0-9])`)
	countOf    = regexp.MustCompile(`(?i)^n ?\((.+)\) ?= ?\?$`)
	countSign  = regexp.MustCompile(`^(?:[nN] ?= ?|N ?)\?$`)
	tail       = regexp.MustCompile(`(?i),? +in +(inches|cm|centimetres|centimeters)[ ?.!]*$`)
)

// signs says in words what is written in signs: of a value with an arrow to
// another only the other counts, "+= 1.5" adds.
func signs(text string) string {
	if strings.Contains(text, ">") || strings.Contains(text, "→") {
		text = arrow.ReplaceAllString(changed.ReplaceAllString(text, "${1}${2}"), " ${1}")
	}
	if strings.Contains(text, "half") {
		text = anHalf.ReplaceAllString(text, "$1 and a half")
	}
	if text = symbols(text); strings.Contains(text, "/10") {
		text = perTen.ReplaceAllString(text, "$1 cm$2")
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

// symbols writes out what is told in letters of a formula: a gauge as "30 x 42",
// "e=1" and "N(neck = 45 cm) = ?".
func symbols(text string) string {
	if strings.ContainsAny(text, "xX×*") {
		if strings.ContainsAny(text, "X×") || strings.Contains(text, " x") || strings.Contains(text, "x ") {
			text = ribApart.ReplaceAllString(text, "${1}x$2")
		}
		if strings.Contains(text, "10") || strings.Contains(text, "ten") {
			text = gaugeTimes.ReplaceAllString(text, "$1 stitches $2 rows")
		}
	}
	if !strings.ContainsAny(text, "/=?") {
		return text
	}
	if at := twoNames.FindStringSubmatchIndex(text); at != nil {
		text = text[at[2]:at[3]] + " and " + text[at[4]:]
	}
	if strings.Contains(text, "L/R") {
		text = strings.ReplaceAll(text, "L/R", "left and right")
	}
	if !strings.Contains(text, "=") && text != "N?" {
		return text
	}
	text = edgeSign.ReplaceAllString(text, "edge stitches $1")
	text = countOf.ReplaceAllString(text, "how many stitches for $1?")
	return countSign.ReplaceAllString(text, "how many stitches?")
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
