package listen

import (
	"slices"

	"foldrow/engine"
)

// inputs lists the inputs that the line names.
func (r *reading) inputs() []engine.Key {
	var out []engine.Key
	for _, m := range r.l.mentions {
		if m.key != "" && !m.result && !m.beside && !(m.text != "" && r.onlyAsked(m.key)) && !slices.Contains(out, m.key) {
			out = append(out, m.key)
		}
	}
	return out
}

// results lists the results that the line names.
func (r *reading) results() []engine.Key {
	var out []engine.Key
	for _, m := range r.l.mentions {
		if m.result && !slices.Contains(out, m.key) {
			out = append(out, m.key)
		}
	}
	return out
}
