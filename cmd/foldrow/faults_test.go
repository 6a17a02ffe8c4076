package main

import (
	"io"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"foldrow/dialog/notebook"
)

// TestSignalAtEveryStage ends the program with a signal wherever it may wait:
// the status is the signal's, and all that was answered is kept.
func TestSignalAtEveryStage(t *testing.T) {
	stages := []struct {
		name  string
		lines []string
		args  []string
		kept  int // lines kept in p, -1 where nothing is to be kept
	}{
		{"before the first line", nil, []string{"-project", "p"}, -1},
		{"in the interview", answers[:2], []string{"-project", "p"}, 2},
		{"with a plan", answers, []string{"-project", "p"}, 5},
		{"with a what-if on the table", append(slices.Clone(answers), "what if 2x2"), []string{"-project", "p"}, 6},
		{"at the machine", append(slices.Clone(answers), "start knitting", "next"), []string{"-project", "p"}, 7},
		{"where a project is to be deleted", append(slices.Clone(answers), "delete p"), []string{"-project", "p"}, 6},
		{"after a line not understood", []string{"cardigan", "mumble"}, []string{"-project", "p"}, 2},
		{"in JSON", answers[:3], []string{"-json", "-project", "p"}, 3},
		{"keeping nothing", answers, []string{"-forget"}, -1},
	}
	for _, st := range stages {
		for sig, status := range map[os.Signal]int{os.Interrupt: 130, syscall.SIGTERM: 143, syscall.SIGHUP: 129} {
			s := newStage(t)
			in := &patient{lines: st.lines, idle: func() { s.signals <- sig }, end: t.Context().Done()}
			if got := s.run(in, st.args...); got != status {
				t.Errorf("%s, %v: status %d, want %d", st.name, sig, got, status)
			}
			if st.kept < 0 {
				if files := s.files(t); len(files) > 0 {
					t.Errorf("%s, %v: left %v", st.name, sig, files)
				}
				continue
			}
			if got := s.kept(t, "p"); len(got) != st.kept {
				t.Errorf("%s, %v: kept %q", st.name, sig, got)
			}
		}
	}
}

// patient is someone who types lines, one when each is asked for, and then
// sits there: idle is called once when nothing is left to type.
type patient struct {
	lines []string
	idle  func()
	end   <-chan struct{}
}

func (p *patient) Read(b []byte) (int, error) {
	if len(p.lines) == 0 {
		if p.idle != nil {
			p.idle()
			p.idle = nil
		}
		<-p.end
		return 0, io.EOF
	}
	n := copy(b, p.lines[0]+"\n")
	p.lines = p.lines[1:]
	return n, nil
}

// TestClockSetBack: a clock that goes back between two days, even to a time
// before there were notebooks, loses no turn and keeps their order.
func TestClockSetBack(t *testing.T) {
	s := newStage(t)
	for i, now := range []time.Time{noon, noon.AddDate(0, 0, -3), time.Unix(0, 0), {}, noon.AddDate(60, 0, 0)} {
		s.now = now
		if status := s.run(s.lines(answers[i]), "-project", "p"); status != 0 || s.err.Len() > 0 {
			t.Fatalf("%v: status %d, %s", now, status, s.err.String())
		}
	}
	if got := strings.Join(s.kept(t, "p"), "|"); got != strings.Join(answers, "|") {
		t.Errorf("kept %q", got)
	}
	contains(t, s.out.String(), "needles L", "on 1 January 0001")
}

// TestStrangersInTheNotebooksPlace puts something else where the notebook, its
// lock or its folder belongs: it is not followed, not waited for and not
// touched, and the conversation goes on.
func TestStrangersInTheNotebooksPlace(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("links want a privilege here")
	}
	for name, place := range map[string]func(folder, other string) error{
		"a link for the notebook": func(folder, other string) error { return os.Symlink(other, filepath.Join(folder, "p.jsonl")) },
		"a link to nowhere":       func(folder, other string) error { return os.Symlink(other+"x", filepath.Join(folder, "p.jsonl")) },
		"a link for the lock":     func(folder, other string) error { return os.Symlink(other, filepath.Join(folder, "p.lock")) },
		"a folder for the notebook": func(folder, other string) error {
			return os.Mkdir(filepath.Join(folder, "p.jsonl"), 0o700)
		},
		"a pipe for the notebook": func(folder, other string) error { return makePipe(filepath.Join(folder, "p.jsonl")) },
		"a link for the folder": func(folder, other string) error {
			if err := os.Remove(folder); err != nil {
				return err
			}
			return os.Symlink(filepath.Dir(other), folder)
		},
	} {
		t.Run(name, func(t *testing.T) {
			s := newStage(t)
			if err := os.MkdirAll(s.folder(), 0o700); err != nil {
				t.Fatal(err)
			}
			other := filepath.Join(t.TempDir(), "other")
			if err := os.WriteFile(other, []byte("somebody else's\n"), 0o600); err != nil {
				t.Fatal(err)
			}
			if err := place(s.folder(), other); err != nil {
				t.Skip("it cannot be put there: ", err)
			}
			if status := s.run(s.lines(answers...), "-project", "p"); status != 0 {
				t.Fatalf("status %d, %s", status, s.err.String())
			}
			contains(t, s.out.String(), "cannot be written", "The conversation goes on", "needles L")
			if text, err := os.ReadFile(other); err != nil || string(text) != "somebody else's\n" {
				t.Errorf("the other file holds %q, %v", text, err)
			}
			if left, _ := os.ReadDir(filepath.Dir(other)); len(left) != 1 {
				t.Errorf("left beside it: %v", left)
			}
		})
	}
}

// TestTwoProjectsAtOnce: two windows that begin together each get a project of
// their own, and neither waits for the other.
func TestTwoProjectsAtOnce(t *testing.T) {
	s := newStage(t)
	s.typed = true
	second := &stage{home: s.home, env: s.env, now: noon, signals: make(chan os.Signal, 1), typed: true}
	inner := 0
	in := &patient{lines: answers, end: t.Context().Done()}
	in.idle = func() { // while the first waits, the second does all of its own
		inner = second.run(second.lines(append([]string{"no"}, answers...)...))
		s.signals <- os.Interrupt
	}
	if status := s.run(in); status != statusInterrupt || inner != 0 {
		t.Errorf("status %d and %d: %s%s", status, inner, s.err.String(), second.err.String())
	}
	list, err := notebook.List(s.folder())
	if err != nil || len(list) != 2 {
		t.Fatalf("%v, %v", list, err)
	}
	for _, p := range list {
		if got := strings.Join(s.kept(t, p.Name), "|"); got != strings.Join(answers, "|") {
			t.Errorf("%s kept %q", p.Name, got)
		}
	}
}
