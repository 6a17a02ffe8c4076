package rules

import "foldrow/engine"

// ResultCard is one result: how it is named and made, and what it means.
type ResultCard struct {
	Key         engine.Key
	Label, Unit string
	Words       []string
	Rule        string // one sentence: how it is made
	Rounding    string // one sentence: which way it is rounded, and why
	Meaning     string // what it means at the machine
	Estimate    string // how far it may be out, "" where it is exact
	Source      []string
}

func (b *Book) readResults(bad *faults) {
	b.byValue = map[engine.Key]int{}
	for _, c := range b.cards["results"] {
		for _, name := range []string{"label", "words", "rule", "meaning", "source"} {
			if c.Fields[name] == "" {
				bad.card(c, MissingField, name)
			}
		}
		r := ResultCard{
			Key: engine.Key(c.ID), Label: c.Fields["label"], Unit: c.Fields["unit"],
			Words: c.List("words"), Rule: c.Fields["rule"], Rounding: c.Fields["rounding"],
			Meaning: c.Fields["meaning"], Estimate: c.Fields["estimate"], Source: c.List("source"),
		}
		b.byValue[r.Key] = len(b.Results)
		b.Results = append(b.Results, r)
	}
}
