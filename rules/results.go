package rules

import (
	"strings"

	"foldrow/engine"
)

// ResultCard is one result: how it is named and made, and what it means.
type ResultCard struct {
	Key         engine.Key
	Label, Unit string
	Words       []string
	Rule        string // one sentence: how it is made
	Rounding    string // one sentence: which way it is rounded, and why
	Meaning     string // what it means at the machine
	Estimate    string // how far it may be out, "" where it is exact
	Without     string // what to say where the plan has none: what is missing, with an example
	Source      []string
	RibSource   map[string][]string // by rib, in place of Source: "source-2x2"
}

func (b *Book) readResults(bad *faults) {
	cards := map[engine.Key]Card{}
	for _, c := range b.cards["results"] {
		cards[engine.Key(c.ID)] = c
	}
	b.byResult = map[engine.Key]int{}
	for _, k := range engine.ResultKeys() {
		c, ok := cards[k]
		if !ok {
			bad.add(Error{File: "results.md", Problem: MissingCard, Card: string(k)})
			continue
		}
		b.byResult[k] = len(b.Results)
		b.Results = append(b.Results, readResult(c, bad))
	}
	for _, c := range b.cards["results"] {
		if _, ok := b.byResult[engine.Key(c.ID)]; !ok {
			bad.card(c, UnknownKey, "")
		}
	}
}

func readResult(c Card, bad *faults) ResultCard {
	for _, name := range []string{"label", "words", "rule", "rounding", "meaning", "source"} {
		if c.Fields[name] == "" {
			bad.card(c, MissingField, name)
		}
	}
	byRib := map[string][]string{}
	for name := range c.Fields {
		if rib, ok := strings.CutPrefix(name, "source-"); ok {
			byRib[rib] = c.List(name)
		}
	}
	return ResultCard{
		RibSource: byRib,
		Key:       engine.Key(c.ID), Label: c.Fields["label"], Unit: c.Fields["unit"],
		Words: c.List("words"), Rule: c.Fields["rule"], Rounding: c.Fields["rounding"],
		Meaning: c.Fields["meaning"], Estimate: c.Fields["estimate"], Without: c.Fields["without"], Source: c.List("source"),
	}
}
