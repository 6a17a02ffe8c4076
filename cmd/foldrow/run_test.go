package main

import (
	"bytes"
	"io"
	"os"
	"strings"
	"syscall"
	"testing"
	"time"
)

func TestPipedInterview(t *testing.T) {
	s := newStage(t)
	if status := s.run(s.lines(answers...)); status != 0 || s.err.Len() > 0 {
		t.Fatalf("status %d, %s", status, s.err.String())
	}
	for _, want := range []string{"pullover?", "42 cm", "1x1", "stitches, needles L"} {
		if !strings.Contains(s.out.String(), want) {
			t.Errorf("no %q in\n%s", want, s.out.String())
		}
	}
	if strings.Contains(s.out.String(), "> ") || strings.Contains(s.out.String(), "\x1b") {
		t.Errorf("a prompt or an escape in\n%s", s.out.String())
	}
}

// TestSameAnswersSamePages: a second run over the same piped lines says the same,
// and neither keeps anything.
func TestSameAnswersSamePages(t *testing.T) {
	s := newStage(t)
	s.run(s.lines(answers...))
	first := s.out.String()
	s.run(s.lines(answers...))
	if s.out.String() != first {
		t.Errorf("second run:\n%s\nfirst:\n%s", s.out.String(), first)
	}
	if got := s.files(t); len(got) != 0 {
		t.Errorf("left %v", got)
	}
}

func TestGoOnWhereItStopped(t *testing.T) {
	for _, first := range []string{"", "yes", "Go on."} {
		s := newStage(t)
		s.typed = true // and read on from a pipe, as with tee
		s.run(s.lines(answers[:4]...))
		s.run(s.lines(first, answers[4]))
		out := s.out.String()
		if !strings.Contains(out, "Cardigan, stitch gauge 28 stitches in 10 cm, row gauge\n40 rows in 10 cm, neck 42 cm, 1x1 rib. Last used on 1 March 2026") || !strings.Contains(out, "stitches, needles L") {
			t.Errorf("going on with %q:\n%s", first, out)
		}
		if got := strings.Join(s.kept(t, "neckband"), "|"); got != strings.Join(answers, "|") {
			t.Errorf("kept %q", got)
		}
	}
}

func TestNamedProjectGoesOnByItself(t *testing.T) {
	s := newStage(t)
	s.run(s.lines(answers[:4]...), "-project", "Blue")
	s.run(s.lines(answers[4]), "-project", "blue")
	if got := strings.Join(s.kept(t, "Blue"), "|"); got != strings.Join(answers, "|") {
		t.Errorf("kept %q", got)
	}
	if !strings.Contains(s.out.String(), "Going on with “Blue”") {
		t.Errorf("said\n%s", s.out.String())
	}
}

// TestNameThatIsChanged: what cannot stand in a name is said.
func TestNameThatIsChanged(t *testing.T) {
	for name, want := range map[string]string{
		"<b>& Winter": "The project is called “b Winter”: a name holds letters, digits, spaces and dashes.",
		" winter  2 ": "",
	} {
		s := newStage(t)
		s.run(s.lines("quit"), "-project", name)
		if got := strings.Contains(s.out.String(), "is called"); got != (want != "") {
			t.Errorf("%q:\n%s", name, s.out.String())
		}
		contains(t, s.out.String(), want)
		s.run(s.lines("quit"), "-json", "-project", name+"3")
		if got := strings.Contains(s.err.String(), "is called"); got != (want != "") {
			t.Errorf("%q in JSON: %s", name, s.err.String())
		}
	}
}

func TestNoTrace(t *testing.T) {
	for _, args := range [][]string{nil, {"-state", "elsewhere"}, {"-forget"}, {"-json"}, {"-example"}, {"-h"}, {"-version"}, {"-width", "x"}} {
		s := newStage(t)
		s.typed = len(args) > 0 && args[0] != "-state"
		s.run(s.lines(answers...), args...)
		if got := s.files(t); len(got) != 0 {
			t.Errorf("%v left %v", args, got)
		}
	}
}

func TestFlags(t *testing.T) {
	tests := []struct {
		args      string
		status    int
		out, errs string
	}{
		{"-h", 0, "-project NAME", ""},
		{"--help", 0, "-project NAME", ""},
		{"-version", 0, "foldrow ", ""},
		{"-bogus", 2, "", "there is no flag -bogus"},
		{"-width", 2, "", "-width wants something after it"},
		{"-width wide", 2, "", "-width wants a whole number of columns from 40 to 200, not \"wide\""},
		{"-width 3.5", 2, "", "not \"3.5\""},
		{"-width 39", 2, "", "from 40 to 200, not \"39\""},
		{"-width 201", 2, "", "from 40 to 200"},
		{"-width -5", 2, "", "from 40 to 200"},
		{"-width=", 2, "", "from 40 to 200"},
		{"-plain=perhaps", 2, "", "-plain takes nothing after it"},
		{"-project=", 2, "", "-project wants a name with a letter or a digit in it"},
		{"-project ../..", 2, "", "-project wants a name"},
		{"-project com1", 2, "", "the name after -project is kept by the system"},
		{"-project " + strings.Repeat("a", 51), 2, "", "the name after -project is too long (50 letters at most)"},
		{"-state=", 2, "", "-state wants the name of a folder"},
		{"-tour -example", 2, "", "give one of them"},
		{"cardigan", 2, "", "cardigan"},
		{"-forget -project x", 2, "", "one of them"},
		{"-json -example", 2, "", "one of them"},
		{"-\x1b[31m", 2, "", "[31m"},
	}
	for _, tt := range tests {
		s := newStage(t)
		status := s.run(s.lines(), strings.Fields(tt.args)...)
		out, errs := s.out.String(), s.err.String()
		if status != tt.status || !strings.Contains(out, tt.out) || !strings.Contains(errs, tt.errs) ||
			(out == "") != (tt.out == "") || (errs == "") != (tt.errs == "") || strings.Contains(out+errs, "\x1b") {
			t.Errorf("%s: status %d, out %q, err %q", tt.args, status, out, errs)
		}
	}
}

// TestHelpIsOneScreen: every flag is in it, and it fits 24 lines of 80 columns.
func TestHelpIsOneScreen(t *testing.T) {
	var b strings.Builder
	if err := usage(&b); err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(b.String(), "\n"); n > 24 {
		t.Errorf("%d lines", n)
	}
	for line := range strings.Lines(b.String()) {
		if len(line) > 81 {
			t.Errorf("too wide: %q", line)
		}
	}
	for _, f := range flagTable() {
		if !strings.Contains(b.String(), "\n  -"+f.name+" ") {
			t.Errorf("-%s is not in the help", f.name)
		}
	}
}

func TestWidthFlag(t *testing.T) {
	for width, most := range map[string]int{"40": 40, "60": 60, "200": 200} {
		s := newStage(t)
		if status := s.run(s.lines(answers...), "-forget", "-width", width); status != 0 {
			t.Fatalf("status %d", status)
		}
		widest := 0
		for line := range strings.Lines(s.out.String()) {
			widest = max(widest, columns(strings.TrimSuffix(line, "\n")))
		}
		if widest > most || widest < most*2/3 && most <= 60 {
			t.Errorf("-width %s: widest line has %d columns", width, widest)
		}
	}
}

func TestJSONLines(t *testing.T) {
	s := newStage(t)
	if status := s.run(s.lines(append(answers, "why 103?", "", "quit", "never read")...), "-json"); status != 0 || s.err.Len() > 0 {
		t.Fatalf("status %d, %s", status, s.err.String())
	}
	lines := strings.Split(strings.TrimSuffix(s.out.String(), "\n"), "\n")
	if len(lines) != len(answers)+3 {
		t.Fatalf("%d objects for %d lines", len(lines), len(answers)+3)
	}
	for i, line := range lines {
		r := parseReply(t, line)
		if r.Turn != i+1 || r.Markdown == "" || r.Kind == "" || i < len(answers) && r.Said != answers[i] {
			t.Errorf("object %d: %+v", i+1, r)
		}
	}
}

func TestJSONKeepsWithProject(t *testing.T) {
	s := newStage(t)
	s.run(s.lines(answers[:3]...), "-json", "-project", "p")
	s.run(s.lines(answers[3:]...), "-json", "-project", "p")
	if got := strings.Join(s.kept(t, "p"), "|"); got != strings.Join(answers, "|") {
		t.Errorf("kept %q", got)
	}
	if r := parseReply(t, strings.Split(s.out.String(), "\n")[1]); r.Turn != 5 {
		t.Errorf("turn %d", r.Turn)
	}
}

func TestBadInputIsHarmless(t *testing.T) {
	for _, mode := range []string{"-forget", "-json"} {
		s := newStage(t)
		in := "\x00\x1b[2J\x07\n\xff\xfe\xc3\n" + strings.Repeat("a", 100_000) + "\n" + "<b>&#27;[31m *x* `y`\n\u009b31m\u202e\n" + strings.Repeat("9", 10_000) + "\n"
		if status := s.run(strings.NewReader(in), mode); status != 0 {
			t.Fatalf("%s: status %d, %s", mode, status, s.err.String())
		}
		if out := s.out.String() + s.err.String(); strings.ContainsFunc(strings.ReplaceAll(out, "\n", ""), obeyed) {
			t.Errorf("%s: control characters in\n%q", mode, out)
		}
	}
}

func TestSignalEndsTheWait(t *testing.T) {
	for _, tt := range []struct {
		sig    os.Signal
		status int
	}{{os.Interrupt, 130}, {syscall.SIGTERM, 143}, {syscall.SIGHUP, 129}} {
		s := newStage(t)
		r, w := io.Pipe()
		go func() {
			io.WriteString(w, "cardigan\n")
			time.Sleep(20 * time.Millisecond)
			s.signals <- tt.sig
		}()
		s.typed = true
		if status := s.run(r); status != tt.status {
			t.Errorf("%v: status %d", tt.sig, status)
		}
		w.Close()
		if got := s.kept(t, "neckband"); len(got) != 1 {
			t.Errorf("%v: kept %q", tt.sig, got)
		}
	}
}

// badWriter takes some bytes and then fails.
type badWriter struct {
	room int
	err  error
}

func (w *badWriter) Write(p []byte) (int, error) {
	if len(p) > w.room {
		return 0, w.err
	}
	w.room -= len(p)
	return len(p), nil
}

func TestOutputFails(t *testing.T) {
	for _, tt := range []struct {
		err    error
		status int
		says   bool
	}{{syscall.EPIPE, 141, false}, {syscall.ENOSPC, 1, true}} {
		for _, args := range [][]string{nil, {"-state", "elsewhere"}, {"-forget"}, {"-json"}, {"-example"}, {"-h"}, {"-version"}} {
			var errs bytes.Buffer
			status := run(args, Env{
				In: strings.NewReader(strings.Join(answers, "\n")), Out: &badWriter{1, tt.err}, Err: &errs,
				Width: func() int { return 0 }, Getenv: func(string) string { return "" }, GOOS: "linux",
				Now: func() time.Time { return noon },
			})
			if status != tt.status || (errs.Len() > 0) != tt.says {
				t.Errorf("%v, %v: status %d, %q", args, tt.err, status, errs.String())
			}
		}
	}
}

func TestExampleSpeaks(t *testing.T) {
	s := newStage(t)
	if status := s.run(strings.NewReader("not read"), "-example"); status != 0 || s.err.Len() > 0 {
		t.Fatalf("status %d, %s", status, s.err.String())
	}
	out := s.out.String()
	for line := range strings.Lines(exampleText) {
		if !strings.HasPrefix(line, "# ") && !strings.Contains(out, "\n> "+line) {
			t.Errorf("%q is not shown", line)
		}
	}
	if !strings.Contains(out, "needles L") {
		t.Errorf("no plan in\n%s", out)
	}
}
