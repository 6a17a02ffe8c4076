package listen

import "strings"

// stem cuts a lower-case word to the part that its forms share: "needles" and
// "needle" become one, "dropped" and "dropping" too. It is applied alike to
// the line and to every phrase in rules/, so it need only be consistent, not
// a dictionary.
func stem(w string) string {
	if to, ok := irregular[w]; ok {
		return to
	}
	if len(w) < 4 || w[0] < 'a' || w[0] > 'z' {
		return w
	}
	w = cutPlural(w)
	if b, ok := strings.CutSuffix(w, "ing"); ok && len(b) >= 3 && hasVowel(b) {
		w = undouble(b)
	} else if b, ok := strings.CutSuffix(w, "ed"); ok && len(b) >= 3 && hasVowel(b) {
		w = undouble(b)
	}
	if len(w) >= 5 {
		w = strings.TrimSuffix(w, "e")
	}
	return w
}

func cutPlural(w string) string {
	switch {
	case strings.HasSuffix(w, "ies") && len(w) > 4:
		return w[:len(w)-3] + "y"
	case strings.HasSuffix(w, "ches"), strings.HasSuffix(w, "shes"), strings.HasSuffix(w, "sses"), strings.HasSuffix(w, "xes"):
		return w[:len(w)-2]
	case strings.HasSuffix(w, "ss"), strings.HasSuffix(w, "us"), strings.HasSuffix(w, "is"):
		return w
	}
	return strings.TrimSuffix(w, "s")
}

func undouble(b string) string {
	n := len(b)
	if n >= 2 && b[n-1] == b[n-2] && !strings.ContainsRune("lsz", rune(b[n-1])) {
		return b[:n-1]
	}
	return b
}

func hasVowel(s string) bool { return strings.ContainsAny(s, "aeiouy") }

// irregular gives the stem of the forms that no ending rule reaches.
var irregular = formsOf(
	"setting: setting settings",
	"quite: quite",
	"half: halves",
	"hang: hung",
	"sew: sewn sewed sewing",
	"use: used using uses",
	"make: made making makes",
	"go: went gone going goes",
	"do: did does doing",
	"have: has had having",
	"be: was were is are am be",
	"break: broke broken",
	"fall: fell fallen",
	"come: came coming comes",
	"take: took taken taking takes",
	"give: gave given giving",
	"forget: forgot forgotten",
	"keep: kept",
	"left: left",
	"lose: lost",
	"run: ran",
	"slip: slipt",
	"mean: meant",
	"say: said",
	"get: got gotten",
	"know: knew known",
	"choose: chose chosen",
	"write: wrote written",
	"stand: stood",
	"think: thought",
	"calibrat: calibration",
)

// formsOf reads rows of "stem: form form".
func formsOf(rows ...string) map[string]string {
	stems := map[string]string{}
	for _, row := range rows {
		st, forms, _ := strings.Cut(row, ": ")
		for form := range strings.FieldsSeq(forms) {
			stems[form] = st
		}
	}
	return stems
}
