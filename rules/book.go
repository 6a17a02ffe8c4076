package rules

import (
	"embed"
	"io/fs"
	"strings"

	"foldrow/engine"
)

//go:embed *.md tables/*.csv
var files embed.FS

// Book is everything in the rules files, read and checked. It is not changed
// after Load, so it may be shared.
type Book struct {
	Keys    []KeyCard    // in the order of engine.InputKeys
	Results []ResultCard // in the order of engine.ResultKeys
	Ribs    []RibCard    // in the order of ribs.md
	Sources map[string]Source
	Tables  Tables

	cards    map[string][]Card
	byKey    map[engine.Key]int
	byResult map[engine.Key]int

	band   engine.Inputs // its defaults
	partOf map[engine.Key]*part
}

// Load reads the book built into the program. Its errors are Errors; the book
// then holds what could be read.
func Load() (*Book, error) { return LoadFS(files) }

// LoadFS reads a book from the *.md files at the root of fsys and its
// tables/*.csv.
func LoadFS(fsys fs.FS) (*Book, error) {
	bad := &faults{}
	b := &Book{cards: map[string][]Card{}}
	names, err := fs.Glob(fsys, "*.md")
	if err != nil {
		bad.add(Error{File: ".", Problem: BadFile, Detail: err.Error()})
	}
	for _, name := range names {
		text, err := fs.ReadFile(fsys, name)
		if err != nil {
			bad.add(Error{File: name, Problem: BadFile, Detail: err.Error()})
			continue
		}
		file := strings.TrimSuffix(name, ".md")
		b.cards[file] = readCards(file, string(text), bad)
	}
	b.readSources(bad)
	b.readKeys(bad)
	b.foldDefaults()
	b.readResults(bad)
	b.readRibs(bad)
	b.Tables = readTables(fsys, bad)
	b.check(names, bad)
	return b, bad.err()
}

// Cards is every card of a file ("howto"), in its order; nil where there is no
// such file.
func (b *Book) Cards(file string) []Card { return b.cards[file] }

// Card is one card of a file.
func (b *Book) Card(file, id string) (Card, bool) {
	for _, c := range b.cards[file] {
		if c.ID == id {
			return c, true
		}
	}
	return Card{}, false
}

// Key is what is known about an input.
func (b *Book) Key(k engine.Key) (KeyCard, bool) {
	i, ok := b.byKey[k]
	if !ok {
		return KeyCard{}, false
	}
	return b.Keys[i], true
}

// Result is what is known about a result.
func (b *Book) Result(k engine.Key) (ResultCard, bool) {
	i, ok := b.byResult[k]
	if !ok {
		return ResultCard{}, false
	}
	return b.Results[i], true
}
