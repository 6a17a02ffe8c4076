package rules

import (
	"strconv"
	"strings"
)

// Problem is the kind of thing that is wrong with a rules file.
type Problem string

// What can be wrong.
const (
	BadCard       Problem = "card cannot be read"
	DuplicateID   Problem = "id is used twice in this file"
	DuplicateWord Problem = "word names two cards of this file"
	BadWord       Problem = "word is not plain lower case"
	MissingCard   Problem = "card is missing"
	MissingField  Problem = "field or section is missing"
	UnknownKey    Problem = "no such key"
	UnknownSource Problem = "no such source"
	BadNumber     Problem = "not a number"
	BadSpan       Problem = "span is out of order"
	BadTable      Problem = "table cannot be read"
	BadFile       Problem = "file cannot be read"
)

// Error is one thing wrong with a rules file. Line is 0 where the whole file
// is meant.
type Error struct {
	File    string // with its ending
	Line    int
	Card    string // id of the card, "" where there is none
	Problem Problem
	Detail  string
}

func (e *Error) Error() string {
	var b strings.Builder
	b.WriteString(e.File)
	if e.Line > 0 {
		b.WriteString(":" + strconv.Itoa(e.Line))
	}
	b.WriteString(": " + string(e.Problem))
	if e.Card != "" {
		b.WriteString(" (card " + e.Card + ")")
	}
	if e.Detail != "" {
		b.WriteString(": " + e.Detail)
	}
	return b.String()
}

// Errors is everything wrong with a set of rules files, in the order of
// reading. errors.As finds the first.
type Errors []*Error

func (e Errors) Error() string {
	lines := make([]string, len(e))
	for i, x := range e {
		lines[i] = x.Error()
	}
	return strings.Join(lines, "\n")
}

// Unwrap lets errors.Is and errors.As look at each of them.
func (e Errors) Unwrap() []error {
	list := make([]error, len(e))
	for i, x := range e {
		list[i] = x
	}
	return list
}

// faults collects errors while a book is read.
type faults struct{ list Errors }

func (f *faults) add(e Error) { f.list = append(f.list, &e) }

// card adds a problem with a card.
func (f *faults) card(c Card, p Problem, detail string) {
	f.add(Error{File: c.File + ".md", Line: c.Line, Card: c.ID, Problem: p, Detail: detail})
}

// err is nil where nothing was wrong.
func (f *faults) err() error {
	if len(f.list) == 0 {
		return nil
	}
	return f.list
}
