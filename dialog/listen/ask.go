package listen

import "foldrow/engine"

// inputs lists the inputs that the line names.
func (r *reading) inputs() []engine.Key {
	var out []engine.Key
	for _, m := range r.l.mentions {
		if m.key != "" && !m.result && !m.beside && !(m.text != "" && r.onlyAsked(m.key)) && !contains(out, m.key) {
			out = append(out, m.key)
		}
	}
	return out
}

// results lists the results that the line names.
func (r *reading) results() []engine.Key {
	var out []engine.Key
	for _, m := range r.l.mentions {
		if m.result && !contains(out, m.key) {
			out = append(out, m.key)
		}
	}
	return out
}

func contains(list []engine.Key, k engine.Key) bool {
	for _, x := range list {
		if x == k {
			return true
		}
	}
	return false
}

func without(list []engine.Key, k engine.Key) []engine.Key {
	var out []engine.Key
	for _, x := range list {
		if x != k {
			out = append(out, x)
		}
	}
	return out
}
