package main

import (
	"bytes"
	"errors"
	"io"
	"os"
	"strings"
	"testing"
	"time"

	"foldrow/dialog"
	"foldrow/dialog/notebook"
)

// stumbling is a chat whose conversation was never made, so that every turn
// stumbles, with a project open.
func stumbling(t *testing.T, in source) (*chat, *bytes.Buffer) {
	t.Helper()
	page, err := newRenderer(true, true)
	if err != nil {
		t.Fatal(err)
	}
	book, _, err := notebook.Open(t.TempDir(), "p")
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	c := &chat{env: Env{Out: &out, Err: io.Discard, Width: func() int { return 80 }, Now: time.Now}, talk: &dialog.Talk{}, page: page, in: in}
	c.shelf = shelf{book: book, now: time.Now}
	c.state = dialog.State{Turn: 7}
	t.Cleanup(c.shelf.close)
	return c, &out
}

// TestStumbledTurn: the line is told as not answered, and nothing of it is kept.
func TestStumbledTurn(t *testing.T) {
	c, out := stumbling(t, newPipe(strings.NewReader("")))
	if c.answer(typed{text: "neck 42 cm"}) {
		t.Error("it left")
	}
	contains(t, out.String(), "This line could not be answered", "Nothing was changed")
	r := c.turnJSON("neck 43 cm")
	var line bytes.Buffer
	if err := writeJSON(&line, r); err != nil || strings.Contains(line.String(), "goroutine") {
		t.Errorf("%v, %s", err, line.String())
	}
	got := parseReply(t, line.String())
	if got.Kind != "unclear" || got.Said != "neck 43 cm" || got.Turn != 7 || got.Changes == nil || got.Results == nil {
		t.Errorf("the object: %+v", got)
	}
	if c.state.Turn != 7 || len(c.shelf.said) > 0 || len(c.shelf.book.Entries()) > 0 {
		t.Errorf("it kept %+v, %q", c.state, c.shelf.said)
	}
	t.Chdir(t.TempDir())
	contains(t, c.writePage(), "The page cannot be written: there is a fault in the program.")
	if files, _ := os.ReadDir("."); len(files) > 0 {
		t.Errorf("left %v", files)
	}
}

// broken stumbles where a line is to be read.
type broken struct{ source }

func (broken) next() (typed, error) { panic("fault") }

// givesBack notes that the terminal was given back.
type givesBack struct {
	broken
	back *bool
}

func (g givesBack) restore() { *g.back = true }

// TestStumbledEditor: the terminal is given back, and the program ends with a status
// of its own.
func TestStumbledEditor(t *testing.T) {
	back := false
	c, _ := stumbling(t, givesBack{back: &back})
	var errs bytes.Buffer
	c.env.Err = &errs
	_, err := c.wait()
	if !errors.Is(err, errFault) || !back {
		t.Errorf("%v, given back: %v", err, back)
	}
	if status := c.stopped(err); status != statusTrouble || !strings.Contains(errs.String(), "there is a fault in the line editor") {
		t.Errorf("status %d, %s", status, errs.String())
	}
}
