package listen

import "strings"

// stem cuts a lower-case word to the part that its forms share: "needles" and
// "needle" become one, "dropped" and "dropping" too. It is applied alike to
// the line and to every phrase in rules/, so it need only be consistent, not
// a dictionary.
func stem(w string) string {
	if to, ok := irregular(w); ok {
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

// irregular gives the forms that no ending rule reaches.
func irregular(w string) (string, bool) {
	switch w {
	case "setting", "settings":
		return "setting", true
	case "quite":
		return "quite", true
	case "halves":
		return "half", true
	case "hung":
		return "hang", true
	case "sewn", "sewed", "sewing":
		return "sew", true
	case "used", "using", "uses":
		return "use", true
	case "made", "making", "makes":
		return "make", true
	case "went", "gone", "going", "goes":
		return "go", true
	case "did", "does", "doing":
		return "do", true
	case "has", "had", "having":
		return "have", true
	case "was", "were", "is", "are", "am", "be":
		return "be", true
	case "broke", "broken":
		return "break", true
	case "fell", "fallen":
		return "fall", true
	case "came", "coming", "comes":
		return "come", true
	case "took", "taken", "taking", "takes":
		return "take", true
	case "gave", "given", "giving":
		return "give", true
	case "forgot", "forgotten":
		return "forget", true
	case "kept":
		return "keep", true
	case "left":
		return "left", true
	case "lost":
		return "lose", true
	case "ran":
		return "run", true
	case "slipt":
		return "slip", true
	case "meant":
		return "mean", true
	case "said":
		return "say", true
	case "got", "gotten":
		return "get", true
	case "knew", "known":
		return "know", true
	case "chose", "chosen":
		return "choose", true
	case "wrote", "written":
		return "write", true
	case "stood":
		return "stand", true
	case "thought":
		return "think", true
	case "calibration":
		return "calibrat", true
	}
	return w, false
}
