package main

import (
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"

	"foldrow/dialog/notebook"
)

// lastPage runs the program over lines in the project "p" and gives all that it
// printed.
func (s *stage) project(t *testing.T, lines ...string) string {
	t.Helper()
	if status := s.run(s.lines(lines...), "-project", "p"); status != 0 {
		t.Fatalf("status %d, %s", status, s.err.String())
	}
	return s.out.String()
}

func contains(t *testing.T, text string, wants ...string) {
	t.Helper()
	flat := strings.Join(strings.Fields(text), " ")
	for _, want := range wants {
		if !strings.Contains(flat, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
}

func TestProjects(t *testing.T) {
	s := newStage(t)
	s.project(t, answers...)
	contains(t, s.project(t, "copy to next size", "list"), "“next size” is a copy of “p”", "• “next size”", "• “p”", "open here")
	contains(t, s.project(t, "rename to next size"), "There is a project called “next size” already")
	contains(t, s.project(t, "open next size", "neck 45 cm"), "Now in “next size”", "(neck 45 cm)")
	if got := s.kept(t, "next size"); got[len(got)-1] != "neck 45 cm" || len(got) != len(answers)+2 {
		t.Errorf("kept %q", got)
	}
	contains(t, s.project(t, "open third one"), "A new project, “third one”", "pullover?")
	contains(t, s.project(t, "rename to q"), "This project is called “q” now")
	if got := s.kept(t, "q"); got[0] != answers[0] || got[len(got)-1] != "rename to q" {
		t.Errorf("kept %q", got)
	}
}

func TestDeleteOnlyAfterYes(t *testing.T) {
	s := newStage(t)
	s.project(t, answers...)
	contains(t, s.project(t, "delete p", "no"), "Only \"yes\" deletes it", "“p” stays as it is")
	contains(t, s.project(t, "delete p", "neck 45 cm"), "“p” stays as it is", "45 cm")
	if got := s.kept(t, "p"); got[len(got)-1] != "neck 45 cm" {
		t.Errorf("the line in place of an answer was lost: %q", got)
	}
	contains(t, s.project(t, "delete nobody"), "There is no project called “nobody”")
	contains(t, s.project(t, "delete p", "yes", "cardigan"), "“p” is deleted", "How many stitches")
	if _, _, err := notebook.Read(s.folder(), "p"); err == nil {
		t.Error("it is still there")
	}
	if got := strings.Join(s.kept(t, "neckband"), "|"); got != "cardigan" {
		t.Errorf("the conversation after it: %q", got)
	}
}

func TestDeleteInJSON(t *testing.T) {
	s := newStage(t)
	s.run(s.lines("cardigan", "delete p", "yes", "list"), "-json", "-project", "p")
	lines := strings.Split(strings.TrimSpace(s.out.String()), "\n")
	if len(lines) != 4 {
		t.Fatalf("%d objects: %s", len(lines), s.out.String())
	}
	for i, want := range []string{"", "Only *yes*", "“p” is deleted", "neckband"} {
		if r := parseReply(t, lines[i]); !strings.Contains(r.Markdown, want) || i > 0 && r.Kind != "notebook" {
			t.Errorf("object %d: %+v", i+1, r)
		}
	}
}

// TestUndoAfterRestart: also the very first answer can be taken back later.
func TestUndoAfterRestart(t *testing.T) {
	s := newStage(t)
	s.project(t, answers...)
	s.project(t, "neck 45 cm")
	contains(t, s.project(t, "undo", "plan"), "42 cm")
	contains(t, s.project(t, "undo 99"), "garment cardigan, now open again")
}

func TestWriteOut(t *testing.T) {
	s := newStage(t)
	t.Chdir(t.TempDir())
	for n, want := range []string{"p.md", "p-2.md"} {
		out := s.project(t, append(answers, "write it out")[n*5:]...)
		contains(t, out, strings.ReplaceAll(want, ".md", ""))
		b, err := os.ReadFile(want)
		if err != nil {
			t.Fatal(err)
		}
		contains(t, string(b), "# p", "## The plan", "needles L", "### Told and assumed", "needle pitch 6.5 mm", "### The needles", "hang the bump", "## What was said", "> 28 stitches and 40 rows", "> write it out", "### The neckband")
		if strings.Count("\n"+string(b), "\n# ") != 1 {
			t.Errorf("more than one heading of the first level in %s", want)
		}
		if info, _ := os.Stat(want); runtime.GOOS != "windows" && info.Mode().Perm()&0o077 != 0 {
			t.Errorf("others can read %s", want)
		}
	}
}

func TestNotebookTroubles(t *testing.T) {
	tests := []struct {
		name  string
		spoil func(s *stage, file string)
		want  string
	}{
		{"half a line", func(s *stage, file string) {
			b, _ := os.ReadFile(file)
			os.WriteFile(file, b[:len(b)-5], 0o600)
		}, "was only half written and was cut"},
		{"damage", func(s *stage, file string) {
			b, _ := os.ReadFile(file)
			b[len(b)-50] ^= 1
			os.WriteFile(file, b, 0o600)
		}, "“p” was damaged after line 4"},
		{"newer", func(s *stage, file string) {
			f, _ := os.OpenFile(file, os.O_APPEND|os.O_WRONLY, 0)
			f.WriteString(`{"v":2}` + "\n")
			f.Close()
		}, "from a newer foldrow. It is left untouched"},
		{"a link", func(s *stage, file string) {
			os.Rename(file, file+".txt")
			os.Symlink(file+".txt", file)
		}, "The notebook cannot be written: a link"},
		{"no home", func(s *stage, _ string) { delete(s.env, "HOME") }, "No home folder is known, so nothing is kept"},
		{"a file for a folder", func(s *stage, _ string) {
			os.RemoveAll(s.folder())
			os.WriteFile(s.folder(), nil, 0o600)
		}, "The notebook cannot be written"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := newStage(t)
			s.project(t, answers...)
			if tt.name == "a link" && runtime.GOOS == "windows" {
				t.Skip("links want a privilege here")
			}
			tt.spoil(s, filepath.Join(s.folder(), "p.jsonl"))
			contains(t, s.project(t, "quit"), tt.want, "Goodbye")
		})
	}
}

func TestBusyProject(t *testing.T) {
	s := newStage(t)
	s.project(t, answers[0])
	b, _, err := notebook.Open(s.folder(), "p")
	if err != nil {
		t.Fatal(err)
	}
	defer b.Close()
	if status := s.run(s.lines("plan"), "-project", "p"); status != 1 || !strings.Contains(s.err.String(), "open in another window") {
		t.Errorf("status %d, %s", status, s.err.String())
	}
	// Without a name the second window simply gets its own project.
	s.typed = true
	if status := s.run(s.lines(append([]string{"no"}, answers...)...)); status != 0 {
		t.Errorf("status %d, %s", status, s.err.String())
	}
	if got := len(s.kept(t, "neckband")); got != len(answers) {
		t.Errorf("%d lines kept", got)
	}
}

// TestUndoInALongProject: after more turns than are read back, undo still leads
// where it would have led without the restart.
func TestUndoInALongProject(t *testing.T) {
	s := newStage(t)
	lines := slices.Clone(answers)
	for i := range maxUndo + 50 {
		lines = append(lines, fmt.Sprintf("neck %d.%02d cm", 40+i/100%10, i%100))
		if i%7 == 6 {
			lines = append(lines, "undo")
		}
	}
	last := []string{"undo", "undo", "undo", "undo"}
	s.run(s.lines(append(lines, last...)...), "-json", "-project", "whole")
	whole := strings.Split(strings.TrimSpace(s.out.String()), "\n")
	s.run(s.lines(lines...), "-json", "-project", "p")
	s.run(s.lines(last...), "-json", "-project", "p")
	parts := strings.Split(strings.TrimSpace(s.out.String()), "\n")
	for i := range last {
		want, got := parseReply(t, whole[len(whole)-len(last)+i]), parseReply(t, parts[i])
		if got.Inputs["neck"] != want.Inputs["neck"] || got.Turn != want.Turn || got.Markdown != want.Markdown {
			t.Errorf("undo %d: %q, without a restart %q", i+1, got.Markdown, want.Markdown)
		}
	}
}

// TestFullDiskInConversation: one sentence when the disk is full, none while it
// stays so, one when it takes turns again, and the conversation goes on.
func TestFullDiskInConversation(t *testing.T) {
	s := newStage(t)
	if out, err := exec.Command("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", s.home).CombinedOutput(); err != nil {
		t.Skipf("no small file system can be mounted here: %s", out)
	}
	t.Cleanup(func() { exec.Command("umount", s.home).Run() })
	filler := filepath.Join(s.home, "filler")
	long := strings.Repeat("x", 8000) // no room for it in the file's last block
	r, w := io.Pipe()
	say := func(lines ...string) {
		for _, line := range lines {
			io.WriteString(w, line+"\n")
			w.Write(nil) // taken when more is asked for: the line is answered then
		}
	}
	go func() {
		defer w.Close()
		say(answers[0])
		_ = os.WriteFile(filler, make([]byte, 1<<20), 0o600) // as much as fits
		say(long, long)
		os.Remove(filler)
		say(answers[1:]...)
	}()
	if status := s.run(r, "-project", "p"); status != 0 {
		t.Fatalf("status %d, %s", status, s.err.String())
	}
	out := s.out.String()
	contains(t, out, "The notebook cannot be written: no space left on device. The conversation goes on, but what is said now is not kept.",
		"The notebook can be written again; what stands now is kept.", "needles L")
	if n := strings.Count(out, "cannot be written"); n != 1 {
		t.Errorf("said %d times", n)
	}
	if got := strings.Join(s.kept(t, "p"), "|"); got != strings.Join(answers, "|") {
		t.Errorf("kept %q", got)
	}
}

// TestComingBackToAWhatIf: who comes back while something lies on the table reads
// what it is, and the project is known by its plan.
func TestComingBackToAWhatIf(t *testing.T) {
	s := newStage(t)
	s.typed = true
	s.run(s.lines(append(answers, "what if 2x2 and 4 cm deep", "quit")...))
	s.run(s.lines("", "keep"))
	contains(t, s.out.String(), "Go on with “neckband”? Cardigan, 1x1 rib, 111 stitches (L56 to R55), 13 rows a layer, neck 41.9 cm, 3 cm deep. Last used on 1 March 2026",
		"Back to work. You were trying a what-if: rib 2x2, depth of the band 4 cm.", "before after", "Keep this?", "Kept: rib 2x2")
	if strings.Contains(s.out.String(), "quit") {
		t.Errorf("the offer:\n%s", s.out.String())
	}
}

// TestBusyAfterTheOffer: what was typed in place of an answer is not taken for the
// answer to the next question, and is not lost.
func TestBusyAfterTheOffer(t *testing.T) {
	s := newStage(t)
	s.typed = true
	s.run(s.lines(answers...))
	b, _, err := notebook.Open(s.folder(), "neckband")
	if err != nil {
		t.Fatal(err)
	}
	defer b.Close()
	s.run(s.lines("neck 45 cm", "read", "plan"))
	contains(t, s.out.String(), "is open in another window", "open for reading only", "(neck 45 cm)")
}
