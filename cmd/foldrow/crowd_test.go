package main

import (
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"foldrow/dialog"
	"foldrow/dialog/notebook"
)

// TestWindowsStartedTogether: windows that begin a project at the same moment never
// write into one, also where the first has left it again already.
func TestWindowsStartedTogether(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "notebooks")
	var windows sync.WaitGroup
	for range 6 {
		windows.Go(func() {
			for range 20 {
				s := shelf{folder: folder, now: time.Now}
				if _, err := s.fresh(); err != nil {
					t.Error(err)
				}
				if len(s.said) > 0 {
					t.Errorf("a new project, %s, in which %q was said", s.name(), s.said)
				}
				s.keep("cardigan", dialog.State{})
				s.close()
			}
		})
	}
	windows.Wait()
	if list, err := notebook.List(folder); err != nil || len(list) != 120 {
		t.Errorf("%d projects, %v", len(list), err)
	}
}

// TestTwinsInConversation: where two files differ only in case, the one that was
// named is meant, and nothing is done to the other.
func TestTwinsInConversation(t *testing.T) {
	s := newStage(t)
	s.run(s.lines("cardigan"), "-project", "bella")
	small := filepath.Join(s.folder(), "bella.jsonl")
	if err := os.Rename(small, small+".aside"); err != nil {
		t.Fatal(err)
	}
	s.run(s.lines("pullover"), "-project", "Bella")
	if err := os.Rename(small+".aside", small); err != nil {
		t.Fatal(err)
	}
	if len(s.files(t)) != 2 {
		t.Skip("this disk does not tell case apart")
	}
	s.run(s.lines("rename to bella", "open bella", "delete bella", "open bELLA"), "-project", "Bella")
	contains(t, s.out.String(), "There is a project called “bella” already",
		"“bella” and “Bella”, which is open here, differ only in their capital letters.")
	if strings.Contains(s.out.String(), "Only") || strings.Contains(s.out.String(), "Now in") {
		t.Errorf("it went on to\n%s", s.out.String())
	}
	contains(t, s.project(t, "delete bella", "yes", "open BELLA"), "Delete “bella” and everything", "“bella” is deleted", "Now in “Bella”")
	if got := s.kept(t, "Bella"); got[0] != "pullover" {
		t.Errorf("kept %q", got)
	}
}

// TestTooLargeANotebook: a file that no memory holds stands in nobody's way.
func TestTooLargeANotebook(t *testing.T) {
	s := newStage(t)
	s.typed = true
	s.project(t, answers...)
	huge := filepath.Join(s.folder(), "huge.jsonl")
	if err := os.WriteFile(huge, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Truncate(huge, 64<<30); err != nil {
		t.Skip("no file with holes can be made here: ", err)
	}
	if status := s.run(s.lines("", "open huge", "neck 45 cm")); status != 0 {
		t.Errorf("status %d, %s", status, s.err.String())
	}
	contains(t, s.out.String(), "Go on with “p”?", "“huge” cannot be read: the file is too large for a notebook. It is left as it is.", "(neck 45 cm)")
	if info, err := os.Stat(huge); err != nil || info.Size() != 64<<30 {
		t.Errorf("it is %v, %v", info, err)
	}
}
