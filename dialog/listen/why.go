package listen

import (
	"fmt"
	"strings"

	"foldrow/engine"
)

// why: a number's reason, another number's refusal, an assumption's source.
func (r *reading) why() (Meaning, bool) {
	c, ok := r.cues[Why]
	if !ok || r.ctx.Making && r.cues[Step].weight > c.weight || r.cues["fits"].weight >= c.weight && len(r.b.sets) > 0 {
		return Meaning{}, false
	}
	if open := r.ctx.Open; open != "" && open != "keep" && c.weight <= 2 && len(r.l.quantities()) == 0 && c.topic != "not" {
		return Meaning{Kind: Measure, Topic: "why-asked", Keys: r.inputs()}, true
	}
	if r.l.has("dial", "tension") && r.l.has("down", "smaller", "lower", "tighter", "change", "changes") && c.topic != "not" && !r.l.has("colour", "color", "yoke") {
		return Meaning{Kind: Why, Keys: []engine.Key{engine.Tension}}, true // "why does the dial go all the way down to 2 at the fold"
	}
	if h, _ := r.x.howto.best(r.l); len(r.l.quantities()) == 0 && c.topic != "not" && h.cover >= 0.95 && r.longerThanNames(h) {
		return Meaning{Kind: HowTo, Card: h.card}, true // "why waste yarn" asks for no yarn of the band
	}
	if h, _ := r.x.howto.best(r.l); r.l.has("explain", "describ") && r.l.has("how") && h.cover >= 0.9 {
		return Meaning{}, false // "explain to me how the hem is hung"
	}
	m := Meaning{Kind: Why, Topic: c.topic, Keys: r.frontWhy(append(r.results(), r.inputs()...))}
	if of, every, ok := r.ratioSaid(); ok && c.topic != "not" {
		m.Topic, m.Name, m.Keys = "ratio", fmt.Sprintf("%d of %d", of, every), nil
		return m, true
	}
	if r.l.has("tighter", "graded", "grading", "grade", "loosened", "loosen", "looser", "tighten", "tightened") && r.figures() == 0 {
		m.Keys = append([]engine.Key{engine.Tension}, m.Keys...)
	}
	for _, t := range r.l.tokens {
		if t.needle != "" {
			m.Needle = t.needle
		}
	}
	m.Count = r.stageNamed()
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if m.Count > 0 && (r.spokenBefore(i, "stage") || q.Ordinal) || q.Ordinal && !q.After && len(m.Keys) > 0 {
			continue // "why the second buttonhole row"
		}
		m.Figure, m.HasFig, m.FigUnit = q.Value, true, q.Unit
		if q.Rib {
			m.HasFig = false
			m.Choices = append(m.Choices, []Set{{Key: engine.KeyRib, Rib: engine.Rib{Knit: q.Value.Floor(), Purl: q.High.Floor()}}})
			continue
		}
	}
	if len(r.b.sets) > 0 {
		m.Sets = dedupe(r.b.sets)
	}
	if t := r.l.text; len(m.Keys) == 0 && !m.HasFig && (strings.HasPrefix(t, "why is there ") || strings.HasPrefix(t, "why are there ")) {
		return Meaning{}, false // "why is there a hole at the join" wants a mend, and no number
	}
	return m, true
}

// longerThanNames: the card's words take in the only name of the line and say
// more: "waste yarn" is not the yarn.
func (r *reading) longerThanNames(card found) bool {
	if len(r.l.mentions) != 1 || card.mass < 3 {
		return false
	}
	m := r.l.mentions[0]
	if m.to-m.from > 1 || m.from == 0 {
		return false
	}
	before := r.l.tokens[m.from-1]
	c, _ := r.x.book.Card("howto", card.card)
	for _, w := range c.List("words") {
		if strings.Contains(w, before.text+" "+r.l.tokens[m.from].text) {
			return true
		}
	}
	return false
}
