package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
	"syscall"
	"testing"
	"testing/iotest"
	"time"
)

func TestOutputMode(t *testing.T) {
	for _, tt := range []struct{ found, want uint32 }{
		{0, 7},
		{3, 7},  // as the shell leaves it
		{7, 7},  // asked for already
		{15, 7}, // with newlines that do not return
		{0x10 | 3, 0x10 | 7},
	} {
		if got := outputMode(tt.found); got != tt.want {
			t.Errorf("%#x: %#x, want %#x", tt.found, got, tt.want)
		}
	}
}

// pieces gives one of its strings at each read; an empty one is what the standard
// library makes of Ctrl-Z on a console.
type pieces []string

func (s *pieces) Read(p []byte) (int, error) {
	if len(*s) == 0 {
		return 0, errors.New("gone")
	}
	piece := (*s)[0]
	*s = (*s)[1:]
	if piece == "" {
		return 0, io.EOF
	}
	return copy(p, piece), nil
}

func TestConsoleKeys(t *testing.T) {
	tests := []struct {
		name string
		in   pieces
		want string
	}{
		{"text and arrows", pieces{"½ \U0001f9f6", "\x1b[D\x1b[3~\r"}, "½ \U0001f9f6\x1b[D\x1b[3~\r"},
		{"Ctrl-Z", pieces{"a\r", ""}, "a\r\x04"},
		{"Ctrl-Z twice", pieces{"", "", "b"}, "\x04\x04b"},
		{"Ctrl-L", pieces{"\x0c", "a\x0cb"}, "ab"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got, err := io.ReadAll(consoleKeys{&tt.in})
			if string(got) != tt.want || err == nil || err.Error() != "gone" {
				t.Errorf("%q, %v", got, err)
			}
		})
	}
	if n, err := (consoleKeys{iotest.ErrReader(io.EOF)}).Read(nil); n != 0 || !errors.Is(err, io.EOF) {
		t.Errorf("nowhere to read to: %d, %v", n, err)
	}
}

// TestConsolePaste: the keys of a console pass both readers as those of any
// terminal, so that lines that came together are told.
func TestConsolePaste(t *testing.T) {
	tp := &tap{in: consoleKeys{&pieces{"a\x0c\rb\rc", ""}}}
	p := make([]byte, 64)
	if n, err := tp.Read(p); string(p[:n]) != "a\rb\rc" || err != nil {
		t.Fatalf("%q, %v", p[:n], err)
	}
	for i, want := range []bool{true, true} {
		if more, _ := tp.line(); more != want {
			t.Errorf("line %d: %v", i, more)
		}
	}
	if n, err := tp.Read(p); string(p[:n]) != "\x04" || err != nil {
		t.Errorf("%q, %v", p[:n], err)
	}
}

func TestReaderGone(t *testing.T) {
	path := func(n syscall.Errno) error { return &fs.PathError{Op: "write", Path: "|1", Err: n} }
	tests := []struct {
		err  error
		goos string
		want bool
	}{
		{path(syscall.EPIPE), "linux", true},
		{path(syscall.EPIPE), "darwin", true},
		{path(109), "windows", true},
		{fmt.Errorf("page: %w", path(232)), "windows", true},
		{path(233), "windows", true},
		{path(5), "windows", false},
		{path(112), "windows", false}, // the disk is full
		{path(109), "linux", false},
		{path(232), "darwin", false},
		{errors.New("other"), "windows", false},
	}
	for _, tt := range tests {
		if got := readerGone(tt.err, tt.goos); got != tt.want {
			t.Errorf("%v on %s: %v", tt.err, tt.goos, got)
		}
	}
}

// TestClosedPipe: what this very system says of a pipe without a reader is
// understood.
func TestClosedPipe(t *testing.T) {
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	defer w.Close()
	r.Close()
	_, err = w.WriteString("x")
	var said bytes.Buffer
	if got := outputStatus(&said, err); got != statusPipe || said.Len() > 0 {
		t.Errorf("%v gives %d, %q", err, got, said.String())
	}
}

// TestBareScreen: a console that obeys no escape sequences gets none, and its own
// editing of lines.
func TestBareScreen(t *testing.T) {
	s := newStage(t)
	var out bytes.Buffer
	env := Env{
		In: strings.NewReader("cardigan\nquit\n"), Out: &out, Err: &out, Terminal: true, Screen: true, Bare: true,
		Width: func() int { return 80 }, Getenv: func(string) string { return "" }, GOOS: "windows", Now: func() time.Time { return s.now },
	}
	if status := run([]string{"-forget"}, env); status != 0 {
		t.Fatalf("status %d, %s", status, out.String())
	}
	contains(t, out.String(), "> (a cardigan)", `"how?"`, "Goodbye")
	if strings.Contains(out.String(), "\x1b") {
		t.Errorf("an escape: %q", out.String())
	}
}
