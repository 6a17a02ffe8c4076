package listen

import (
	"slices"
	"strings"

	"foldrow/engine"
)

// oneHole notes which of the holes a question is about: "the third buttonhole",
// "the top button".
func (r *reading) oneHole(m *Meaning) {
	if len(m.Sets) > 0 || !r.l.has("buttonhol", "hol", "hole", "button") || r.l.has("row") {
		return
	}
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; r.l.whichHole(i) && q.Value.IsInt() {
			m.Part, m.Figure, m.HasFig = "nth", q.Value, true
		}
	}
	switch {
	case m.Part != "":
	case r.l.has("top", "last", "uppermost", "highest"):
		m.Part = "last"
	case r.l.has("bottom", "first", "lowest"):
		m.Part = "first"
	}
	if m.Part != "" {
		m.Keys = []engine.Key{engine.HolePositions}
	}
}

// buttonholes reads "holes" as the buttonholes that are planned, unless the
// line tells of a gap in the work; of a single hole only one that is named by
// its place ("the third hole", "hole 3", "the top hole").
func buttonholes(text string) string {
	words := strings.Fields(lower(text))
	if len(words) > 1 && len(words) < 5 && oneOf(words[0], []string{"no", "without"}) && strings.HasPrefix(words[1], "button") && !slices.Contains(words, "on") {
		return "no buttonholes" // the garment still opens in front
	}
	at, sized := -1, sizesAsked(words)
	for i, w := range words {
		words[i] = strings.Trim(w, ".,;:!?")
		switch words[i] {
		case "holes":
			at = i
		case "hole":
			if !placedHole(words, i) {
				return text
			}
			at = i
		case "gap", "gaps", "yoke", "seam", "appeared", "ladder", "join", "dropped", "fabric", "knitting", "little":
			return text
		}
	}
	if at < 0 || words[at] == "holes" && !sized && gapTold(words) {
		return text
	}
	i := strings.Index(lower(text), "hole")
	for i > 0 && text[i-1] != ' ' {
		next := strings.Index(lower(text[i+1:]), "hole")
		if next < 0 {
			return text // "buttonholes" says it already
		}
		i += 1 + next
	}
	return text[:i] + "button" + text[i:]
}

// gapTold: the words could be those of somebody who found holes in the work.
func gapTold(words []string) bool {
	for _, w := range words {
		if oneOf(w, []string{"have", "got", "why", "between", "neckband", "are", "small", "big", "along", "where"}) {
			return true
		}
	}
	return false
}

// sizesAsked: "how far apart are the holes", "how big are the holes".
func sizesAsked(words []string) bool {
	return len(words) > 3 && words[0] == "how" && oneOf(words[1], []string{"far", "big", "wide", "long", "large"})
}

// placedHole: the hole at words[i] is one of a row of them.
func placedHole(words []string, i int) bool {
	if i+1 < len(words) && len(words[i+1]) < 3 && strings.Trim(words[i+1], "0123456789") == "" {
		return true
	}
	if i == 0 {
		return false
	}
	before := words[i-1]
	return oneOf(before, []string{"first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth",
		"top", "bottom", "last", "lowest", "highest", "uppermost", "middle", "each", "every", "next"}) ||
		len(before) > 2 && before[0] >= '0' && before[0] <= '9' && oneOf(before[len(before)-2:], []string{"st", "nd", "rd", "th"})
}
