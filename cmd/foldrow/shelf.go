package main

import (
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"foldrow/dialog"
	"foldrow/dialog/notebook"
)

// shelf keeps the conversation in the notebook. With no book open it remembers
// what was said, for writing it out, and nothing more.
type shelf struct {
	folder string // "" where nothing is to be kept
	book   *notebook.Book
	now    func() time.Time
	said   []string // every line of this project
	failed bool     // the last turn was not kept, and that was said
}

// freshName is what a project is called that was not given a name.
const freshName = "neckband"

// open opens or begins a project in place of the one that is open, and gives
// its states, oldest first, and what there is to say about it. On an error the
// open one stays.
func (s *shelf) open(name string) ([]dialog.State, string, error) {
	b, r, err := notebook.Open(s.folder, name)
	if err != nil {
		return nil, "", err
	}
	return s.take(b, r)
}

// look opens a project for reading only, although another window has it.
func (s *shelf) look(name string) ([]dialog.State, string, error) {
	b, r, err := notebook.Read(s.folder, name)
	if err != nil {
		return nil, "", err
	}
	return s.take(b, r)
}

func (s *shelf) take(b *notebook.Book, r notebook.Report) ([]dialog.State, string, error) {
	s.close()
	s.book, s.said, s.failed = b, nil, false
	for _, e := range b.Entries() {
		s.said = append(s.said, e.Said)
	}
	return recent(b.Entries()), opened(b.Name(), r), nil
}

// maxUndo is how many turns of a project undo reaches back over after a restart.
// A state in memory is about 2 kB.
const maxUndo = 2000

// recent are the states of the last turns, oldest first. They begin at the
// earliest of them that none later went back behind, so that each finds the one
// that undo leads to.
func recent(entries []notebook.Entry) []dialog.State {
	whole := len(entries) <= maxUndo
	entries = entries[max(0, len(entries)-maxUndo):]
	states := make([]dialog.State, 0, len(entries))
	low := 0
	for _, e := range entries {
		var st dialog.State
		if err := json.Unmarshal(e.State, &st); err != nil {
			continue // a state of another shape; the next turn's stands for it
		}
		states = append(states, st)
		if st.Depth < states[low].Depth {
			low = len(states) - 1
		}
	}
	if whole || len(states) == 0 {
		return states
	}
	states = states[low:]
	base := states[0].Depth
	for i := range states {
		states[i].Depth -= base
	}
	return states
}

// fresh begins a project under the first name that is free.
func (s *shelf) fresh() (string, error) {
	list, err := notebook.List(s.folder)
	if err != nil {
		return "", err
	}
	taken := map[string]bool{}
	for _, p := range list {
		taken[strings.ToLower(p.Name)] = true
	}
	for n := 1; ; n++ {
		name := freshName
		if n > 1 {
			name += " " + strconv.Itoa(n)
		}
		if taken[name] {
			continue
		}
		b, r, err := notebook.Open(s.folder, name)
		if errors.Is(err, notebook.ErrBusy) {
			continue // another window was faster
		}
		if err != nil {
			return "", err
		}
		if len(b.Entries()) > 0 || r.ReadOnly != nil {
			_ = b.Close() // another window began it since, and has left it
			continue
		}
		_, note, err := s.take(b, r)
		return note, err
	}
}

// keep puts a turn on disk before its reply is shown. What it returns is for
// the knitter: "" where all is well.
func (s *shelf) keep(said string, state dialog.State) string {
	s.said = append(s.said, said)
	if s.book == nil {
		return ""
	}
	raw, err := json.Marshal(state)
	if err == nil {
		err = s.book.Append(said, raw, s.now())
	}
	switch {
	case err == nil && s.failed:
		s.failed = false
		return "The notebook can be written again; what stands now is kept."
	case err == nil || s.failed || errors.Is(err, notebook.ErrReadOnly):
		return ""
	}
	s.failed = true
	return trouble(s.book.Name(), err) + " " + goesOn
}

// name is the open project's, "" if there is none.
func (s *shelf) name() string {
	if s.book == nil {
		return ""
	}
	return s.book.Name()
}

// completions are what a line can be completed with now, the projects by name as
// well.
func (c *chat) completions() dialog.Offers {
	o := c.talk.Completions(c.state)
	if c.env.Terminal {
		o.Lines = append(o.Lines, "tour")
	}
	if c.shelf.folder == "" {
		return o
	}
	list, _ := notebook.List(c.shelf.folder) // without it nothing is offered
	for _, p := range list {
		o.Lines = append(o.Lines, "open "+p.Name, "delete "+p.Name)
	}
	return o
}

// safe reports that everything said so far is on disk.
func (s *shelf) safe() bool {
	return s.book != nil && !s.failed && len(s.book.Entries()) >= len(s.said) && len(s.said) > 0
}

func (s *shelf) close() {
	if s.book != nil {
		_ = s.book.Close() // everything was synced turn by turn
		s.book = nil
	}
}

// writeOut writes text to a new file in the folder the program was started in
// and gives its path.
func writeOut(name, ending, text string) (string, error) {
	for n := 1; ; n++ {
		path := name + ending
		if n > 1 {
			path = name + "-" + strconv.Itoa(n) + ending
		}
		f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
		if errors.Is(err, os.ErrExist) {
			continue
		}
		if err != nil {
			return "", err
		}
		_, err = f.WriteString(text)
		if err = errors.Join(err, f.Close()); err != nil {
			_ = os.Remove(path)
			return "", err
		}
		full, err := filepath.Abs(path)
		if err != nil {
			full = path
		}
		return full, nil
	}
}
