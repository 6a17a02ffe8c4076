package listen

import (
	"slices"
	"strings"

	"foldrow/engine"
	"foldrow/rules"
)

// settled is m with what only the cards of the troubles can tell: which of
// two that sound alike is meant, and whether the line answers the question
// that tells two apart.
func (r *reading) settled(m Meaning) Meaning {
	if r.ctx.Apart[0] != "" {
		if a, ok := r.answersApart(m); ok {
			m = a
		}
	}
	m = r.checked(m)
	if m.Kind == Trouble && m.Card == "lost-place" && r.ctx.Making {
		return Meaning{Kind: Step, Move: Move{What: "where"}} // her place is kept
	}
	if m.Kind == Trouble {
		m = r.whichTrouble(m)
		m.Slip = r.slip()
	}
	if m.Kind == HowTo && m.Card == "measure-gauge" && r.ctx.Open == "gauge" {
		return r.measureMeaning("how", nil)
	}
	if m.Kind == Values && r.comparesOnly() {
		return Meaning{Kind: Unclear, Problem: Problem{Code: "compare"}}
	}
	return m
}

// comparesOnly: a line that begins with "compare" sets nothing, whatever its
// numbers could be.
func (r *reading) comparesOnly() bool {
	return r.l.begin < r.l.end && r.l.tokens[r.l.begin].stem == stem("compare")
}

// whichTrouble leaves in Card the trouble that the line means, and in Other
// the one it might mean as well: "" where there is none, or where the line or
// the step she is at has told them apart.
func (r *reading) whichTrouble(m Meaning) Meaning {
	if m.Topic != "" {
		return m // settled already, or for the plan to settle
	}
	book := r.x.book
	card, _ := book.Card("troubles", m.Card)
	if stands, ok := book.Card("troubles", card.Fields["elsewhere"]); ok && r.ctx.Making && !r.atHome(card) && !r.l.has(stemsEach(card.List("own"))...) {
		m.Card, m.Other = stands.ID, ""
		return m
	}
	alike := m.Other
	if alike == "" {
		alike = card.Fields["apart"]
	}
	m.Other = ""
	other, ok := book.Card("troubles", alike)
	if !ok || other.ID == card.ID {
		return m
	}
	if both := len(card.List("at")) > 0 && len(other.List("at")) > 0; both && alike == card.Fields["apart"] {
		switch here, there := r.atHome(card), r.atHome(other); {
		case here && !there:
			return m
		case there && !here:
			m.Card = other.ID
			return m
		}
	}
	switch r.tells(card, other) {
	case card.ID:
		return m
	case other.ID:
		if card.Fields["apart"] == other.ID {
			m.Card = other.ID
			return m
		}
	}
	m.Other = other.ID
	return m
}

// atHome reports whether a trouble belongs to the step she is at.
func (r *reading) atHome(card rules.Card) bool {
	return r.ctx.Step != "" && slices.Contains(card.List("at"), r.ctx.Step)
}

// answersApart takes the line as the answer to the question that tells two
// troubles apart: topic "first" or "second", or "which" where the line means
// nothing else either. ok is false where it means something else.
func (r *reading) answersApart(m Meaning) (Meaning, bool) {
	pair := r.ctx.Apart
	first, ok1 := r.x.book.Card("troubles", pair[0])
	second, ok2 := r.x.book.Card("troubles", pair[1])
	if !ok1 || !ok2 || !r.mayAnswer(m) {
		return m, false
	}
	if m.Kind == Unclear && r.slip().Needle != "" && r.l.words() <= 5 {
		return m, false // "redid L12" tells how far she is
	}
	answer := Meaning{Kind: Trouble, Card: pair[0], Other: pair[1]}
	switch r.tells(first, second) {
	case first.ID:
		answer.Topic = "first"
		return answer, true
	case second.ID:
		answer.Topic = "second"
		return answer, true
	}
	answer.Topic = "which"
	return answer, m.Kind == Unclear || m.Kind == Outside
}

// mayAnswer reports whether the line can be an answer at all: an order, or
// another trouble, is not.
func (r *reading) mayAnswer(m Meaning) bool {
	switch m.Kind {
	case Unclear, Outside, Keep, Drop, Values, WhatIf:
		return true
	case Trouble:
		return slices.Contains(r.ctx.Apart[:], m.Card) || r.l.words() <= 3
	case Step:
		return m.Move.What == "done" || m.Move.What == "row"
	}
	return false
}

// tells decides which of two troubles a line means: by "the first", yes or
// no; by a number where the cards say how many; else by the words that only
// one of them has. "" where it does not tell.
func (r *reading) tells(first, second rules.Card) string {
	if c, ok := r.cues[apart]; ok && r.l.words() <= 4 {
		if c.topic == "first" {
			return first.ID
		}
		return second.ID
	}
	if id := r.byNumber(first, second); id != "" {
		return id
	}
	if id := r.byNumber(second, first); id != "" {
		return id
	}
	own1, own2 := r.x.apartWords(first, second)
	n1, n2 := 0, 0
	seen := map[string]bool{}
	for _, t := range r.l.tokens {
		stems := []string{t.stem}
		if t.q != nil { // "two layers" is one quantity, and its words tell
			stems = stemsOf(t.text)
		}
		for _, st := range stems {
			if seen[st] {
				continue
			}
			seen[st] = true
			if own1[st] {
				n1++
			}
			if own2[st] {
				n2++
			}
		}
	}
	switch {
	case n1 > n2:
		return first.ID
	case n2 > n1:
		return second.ID
	}
	return ""
}

// byNumber holds a count in the line against the card's own limit: up to
// `apart-most` it is this trouble, above it the other.
func (r *reading) byNumber(card, other rules.Card) string {
	limit, ok := engine.ParseNum(card.Fields["apart-most"])
	if !ok {
		return ""
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		if q.Problem != "" || q.After || q.Ordinal {
			continue
		}
		c, over := r.cues[toldOver] // "longer than three rows"
		if over = over && c.from < i && !q.High.Less(limit); over || limit.Less(q.High) {
			return other.ID
		}
		return card.ID
	}
	return ""
}

// apartWords are the words of the question that belong to one half only, and
// the words of each card that the other does not have.
func (x *Lexicon) apartWords(first, second rules.Card) (own1, own2 map[string]bool) {
	half1, half2, _ := strings.Cut(first.Section("apart"), ", or ")
	if first.Fields["apart"] != second.ID {
		half1, half2 = "", ""
	}
	all := func(c rules.Card, half string) map[string]bool {
		m := map[string]bool{}
		for _, st := range stemsOf(half + " " + c.Fields["title"] + " " + c.Fields["words"]) {
			m[st] = !x.senses["idle"][st]
		}
		return m
	}
	m1, m2 := all(first, half1), all(second, half2)
	own1, own2 = map[string]bool{}, map[string]bool{}
	for w, tells := range m1 {
		_, shared := m2[w]
		own1[w] = tells && !shared
	}
	for w, tells := range m2 {
		_, shared := m1[w]
		own2[w] = tells && !shared
	}
	return own1, own2
}

func stemsEach(words []string) []string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = stem(w)
	}
	return out
}
