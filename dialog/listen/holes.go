package listen

import (
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
		if q := r.l.tokens[i].q; q.Ordinal && q.Value.IsInt() {
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
// line tells of a gap in the work.
func buttonholes(text string) string {
	words := strings.Fields(lower(text))
	at := -1
	for i, w := range words {
		switch strings.Trim(w, ".,;:!?") {
		case "holes":
			at = i
		case "gap", "gaps", "yoke", "seam", "have", "got", "appeared", "why", "between", "ladder", "neckband", "join", "are", "dropped", "fabric", "knitting", "little", "small", "big", "along", "where":
			return text
		}
	}
	if at < 0 {
		return text
	}
	i := strings.Index(lower(text), "holes")
	for i > 0 && text[i-1] != ' ' {
		next := strings.Index(lower(text[i+1:]), "holes")
		if next < 0 {
			return text // "buttonholes" says it already
		}
		i += 1 + next
	}
	return text[:i] + "button" + text[i:]
}
