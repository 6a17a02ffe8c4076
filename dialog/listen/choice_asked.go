package listen

import (
	"strings"

	"foldrow/engine"
)

// choicesNamed is the choices of one input that the line names, sure names or
// not, each once: of the input of which it names most.
func (r *reading) choicesNamed() (k engine.Key, values []string) {
	var by map[engine.Key][]string
	for _, m := range r.l.mentions {
		if m.text == "" || !ours(m.key) || oneOf(m.text, by[m.key]) {
			continue
		}
		if by == nil {
			by = map[engine.Key][]string{}
		}
		by[m.key] = append(by[m.key], m.text)
		if len(by[m.key]) > len(values) {
			k = m.key
		}
		values = by[k]
	}
	return k, values
}

// onlyChoices: nothing else of the plan is named or counted, and no mishap.
func (r *reading) onlyChoices(k engine.Key) bool {
	for _, m := range r.l.mentions {
		if m.key != k && !(k == engine.KeyBandKind && m.key == engine.KeyRib) && !(m.text != "" && ours(m.key)) && !m.beside {
			return false
		}
	}
	return len(r.l.quantities()) == 0 && !r.b.complains()
}

// whyChoice: "why cotton", "why mock rib", "why not steam": what the choice is
// good for, and where what is said of it comes from.
func (r *reading) whyChoice() (Meaning, bool) {
	c, ok := r.cues[Why]
	k, values := r.choicesNamed()
	if !ok || len(values) != 1 || r.contentLeft() > 1 || !r.onlyChoices(k) {
		return Meaning{}, false
	}
	m := Meaning{Kind: Why, Topic: "choice", Keys: []engine.Key{k}, Name: values[0]}
	if c.topic == "not" {
		m.Topic, m.Keys, m.Sets = c.topic, nil, []Set{{Key: k, Text: values[0], Near: 1}}
	}
	return m, true
}

// compareChoices: "compare wool and acrylic", "steam or wet", "is cotton
// better than wool".
func (r *reading) compareChoices() (Meaning, bool) {
	k, values := r.choicesNamed()
	if len(values) < 2 || !r.onlyChoices(k) || r.l.has("blend", "mix", "mixtur", "mixture", "percent") {
		return Meaning{}, false
	}
	weighs := r.l.has("compar", "compare", "versus", "vs", "v", "against", "differenc", "difference", "better", "rather", "than", "differ")
	if !weighs && !(r.l.has("or") && r.contentLeft() <= 2) {
		return Meaning{}, false
	}
	m := Meaning{Kind: Compare}
	for _, v := range values {
		m.Choices = append(m.Choices, []Set{{Key: k, Text: v, Near: 1}})
	}
	return m, true
}

// askedChoice: a plain question about a class of machine ("what does a dial
// number mean on a standard machine") or about setting a fibre ("can I steam
// acrylic yarn").
func (r *reading) askedChoice() (Meaning, bool) {
	if r.b == nil || !r.b.questionOnly() || r.cue(Why) {
		return Meaning{}, false
	}
	for _, m := range r.l.mentions {
		if m.key == engine.RestHours && strings.HasPrefix(r.l.text, "how long") && r.ctx.Open != "gauge" {
			return Meaning{Kind: Number, Keys: []engine.Key{engine.RestHours}}, true
		}
		ask := m.key == engine.KeyMachine && (!m.beside && r.l.has("dial", "number", "mark", "needl", "pitch", "mean", "wide", "bed", "machin")) ||
			m.key == engine.KeyFibre && r.l.has("set", "block", "steam", "press", "iron", "wash", "dry", "rest", "heat", "finish", "pin")
		if m.text != "" && ask {
			kind := Measure
			if m.key == engine.KeyFibre && oneOf(r.l.tokens[r.l.begin].text, []string{"how", "can", "may", "should", "could"}) {
				kind = HowTo
			}
			return Meaning{Kind: kind, Topic: "choice", Name: m.text, Keys: []engine.Key{m.key}}, true
		}
	}
	return Meaning{}, false
}

// onlyAsked: a choice's word in a plain question is what the question is
// about, and names no input: "what is mock rib".
func (r *reading) onlyAsked(k engine.Key) bool {
	return r.b != nil && ours(k) && r.b.questionOnly() && !r.cue(Why)
}
