package rules

import (
	"cmp"
	"strings"
)

// Kind is what a source is.
type Kind string

// The kinds of sources.
const (
	Published      Kind = "published"
	Dataset        Kind = "dataset"
	Standard       Kind = "standard"
	CommonPractice Kind = "common practice"
	OwnArithmetic  Kind = "own arithmetic"
)

// Source is where a figure or a practice comes from.
type Source struct {
	ID    string
	Where string // title and site, for people
	Short string // a few words for within a sentence, Where if there are none
	Kind  Kind
	Note  string // how far it carries, "" where nothing needs saying
}

// SourceID is the id a card means: "common practice" is written as words.
func SourceID(s string) string { return strings.ReplaceAll(s, " ", "-") }

// Source finds a source by the text a card gives.
func (b *Book) Source(id string) (Source, bool) {
	s, ok := b.Sources[SourceID(id)]
	return s, ok
}

func (b *Book) readSources(bad *faults) {
	b.Sources = make(map[string]Source, len(b.cards["sources"]))
	for _, c := range b.cards["sources"] {
		s := Source{ID: c.ID, Where: c.Fields["where"], Short: cmp.Or(c.Fields["short"], c.Fields["where"]), Kind: Kind(c.Fields["kind"]), Note: c.Fields["note"]}
		switch s.Kind {
		case Published, Dataset, Standard, CommonPractice, OwnArithmetic:
		default:
			bad.card(c, MissingField, "kind "+string(s.Kind))
		}
		if s.Where == "" {
			bad.card(c, MissingField, "where")
		}
		b.Sources[c.ID] = s
	}
}
