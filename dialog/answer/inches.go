package answer

import (
	"regexp"
	"strconv"
	"strings"
)

// centimetres finds lengths in a text of the rules: "3 cm", "1.5 to 2 cm".
var centimetres = regexp.MustCompile(`(\d+(?:\.\d+)?)(?: (to|and) (\d+(?:\.\d+)?))? cm\b`)

// markedText finds arithmetic, what stands out, and what is proposed to be typed.
var markedText = regexp.MustCompile("`[^`]*`" + `|\*\*[^*]+\*\*|\*[^*\n]+\*`)

// Inches is text with its centimetres as inches, for a knitter who reads
// those. Ten centimetres are the four inches over which a gauge is counted. A
// length that says itself in both units stays.
func Inches(text string) string {
	var b strings.Builder
	from := 0
	for _, m := range centimetres.FindAllStringSubmatchIndex(text, -1) {
		if strings.HasPrefix(text[m[1]:], " (") && strings.Contains(text[m[1]:min(len(text), m[1]+14)], " in") || strings.HasSuffix(text[:m[0]], "(") && strings.HasSuffix(text[:max(0, m[0]-1)], "in ") {
			continue
		}
		b.WriteString(text[from:m[0]])
		if m[4] >= 0 {
			b.WriteString(asInches(text[m[2]:m[3]]) + " " + text[m[4]:m[5]] + " " + asInches(text[m[6]:m[7]]) + " in")
		} else {
			b.WriteString(asInches(text[m[2]:m[3]]) + " in")
		}
		from = m[1]
	}
	return b.String() + text[from:]
}

func asInches(cm string) string {
	if cm == "10" {
		return "4"
	}
	f, _ := strconv.ParseFloat(cm, 64)
	return eighths(f / 2.54)
}

// InchExamples is text with the centimetres in its examples as inches.
func InchExamples(text string) string {
	if !strings.Contains(text, " cm") {
		return text
	}
	return markedText.ReplaceAllStringFunc(text, func(s string) string {
		if s[0] == '`' || strings.HasPrefix(s, "**") {
			return s
		}
		return Inches(s)
	})
}
