package main

import (
	"bytes"
	"encoding/json"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"foldrow/dialog"
	"foldrow/dialog/notebook"
)

var noon = time.Date(2026, 3, 1, 12, 0, 0, 0, time.UTC)

// stage is the world around one run of the program, in memory but for the
// notebook's folder.
type stage struct {
	home     string
	env      map[string]string
	out, err bytes.Buffer
	now      time.Time
	signals  chan os.Signal
	typed    bool // the lines come from a terminal
}

func newStage(t *testing.T) *stage {
	t.Helper()
	home := t.TempDir()
	return &stage{home: home, env: map[string]string{"HOME": home}, now: noon, signals: make(chan os.Signal, 1)}
}

// run runs the program over input and gives its status.
func (s *stage) run(input io.Reader, args ...string) int {
	s.out.Reset()
	s.err.Reset()
	return run(args, Env{
		In: input, Out: &s.out, Err: &s.err,
		Typed:  s.typed,
		Width:  func() int { return 0 },
		Getenv: func(k string) string { return s.env[k] },
		GOOS:   "linux", Now: func() time.Time { return s.now }, Signals: s.signals,
	})
}

func (s *stage) lines(lines ...string) io.Reader {
	return strings.NewReader(strings.Join(lines, "\n") + "\n")
}

// files are the names under home, folders left out.
func (s *stage) files(t *testing.T) []string {
	t.Helper()
	var names []string
	err := filepath.WalkDir(s.home, func(path string, d os.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			names = append(names, filepath.Base(path))
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return names
}

func (s *stage) folder() string {
	return filepath.Join(s.home, ".local", "state", "foldrow", "notebooks")
}

// kept is what the project's notebook holds.
func (s *stage) kept(t *testing.T, project string) []string {
	t.Helper()
	b, _, err := notebook.Read(s.folder(), project)
	if err != nil {
		t.Fatal(err)
	}
	defer b.Close()
	var said []string
	for _, e := range b.Entries() {
		said = append(said, e.Said)
	}
	return said
}

func sampleReply(said string) dialog.Reply { return dialog.Reply{Said: said, Markdown: said} }

func parseReply(t testing.TB, line string) dialog.Reply {
	t.Helper()
	var r dialog.Reply
	if err := json.Unmarshal([]byte(line), &r); err != nil {
		t.Fatalf("%v in %q", err, line)
	}
	return r
}

// answers are the five answers of the interview.
var answers = []string{"cardigan", "28 stitches and 40 rows", "42 cm", "1x1", "3 cm"}
