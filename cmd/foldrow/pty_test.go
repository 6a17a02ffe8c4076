//go:build unix

package main

import (
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/creack/pty"
)

func TestTerminalInterview(t *testing.T) {
	for _, cols := range []int{40, 60, 80, 120} {
		d := sit(t, cols, t.TempDir(), nil)
		d.see("or a pullover?")
		d.say("cardigan", "stitches and rows")
		d.say("28 stitches and 40 rows", "How far round")
		d.say("42 cm", "Which rib")
		d.say("", "How deep")
		d.say("", "start knitting")
		d.keys("quit\r")
		d.leave(0)
		text := d.screen.text()
		if !strings.Contains(text, "Goodbye") || !d.screen.styled {
			t.Errorf("at %d columns:\n%s", cols, text)
		}
		widest, most := 0, min(cols, 80)
		for line := range strings.Lines(text) {
			widest = max(widest, columns(strings.TrimSuffix(line, "\n")))
		}
		if widest > most || widest < most-10 {
			t.Errorf("the widest line of a window of %d columns has %d:\n%s", cols, widest, text)
		}
		if strings.Contains(text, "\n\n\n") {
			t.Errorf("two empty lines together at %d columns:\n%s", cols, text)
		}
		if strings.Contains(text, "\n\n>") {
			t.Errorf("an empty line above the prompt at %d columns:\n%s", cols, text)
		}
	}
}

func TestOfferOnTheTerminal(t *testing.T) {
	home := t.TempDir()
	d := sit(t, 80, home, nil)
	d.see("pullover?")
	d.say("cardigan", "stitches and rows")
	d.keys("\x04")
	d.leave(0)

	d = sit(t, 80, home, nil)
	d.see("Go on with")
	d.say("28 stitches and 40 rows", "How far round") // goes on and is answered
	busy := sit(t, 80, home, nil, "-project", "neckband")
	busy.see("“neckband” is open in another window. Enter begins a new project; read opens this one")
	busy.say("read", "open for reading only: nothing said now is kept")
	busy.say("50 cm", "Which rib")
	busy.keys("quit\r")
	busy.leave(0)
	d.say("42 cm", "Which rib")
	d.keys("quit\r")
	d.leave(0)

	d = sit(t, 80, home, nil)
	d.see("Go on with “neckband”? Cardigan, stitch gauge 28 stitches in 10 cm, row gauge 40 rows in 10 cm, neck 42 cm. Last used on")
	d.say("no", "pullover?")
	d.say("list", "“neckband 2”")
	d.keys("quit\r")
	d.leave(0)
}

func TestNarrowAndUnknownWindow(t *testing.T) {
	for _, cols := range []int{0, 1, 2, 5} {
		d := sit(t, cols, t.TempDir(), nil)
		d.screen.cols = 0
		shows := func(text string) func(string) bool {
			return func(s string) bool { return strings.Contains(strings.Join(strings.Fields(s), " "), text) }
		}
		d.until("the question", shows("pullover?"))
		d.keys("cardigan\x1b[D\x1b[D\x1b[C\x01\x05\r")
		d.until("the next question", shows("stitches and rows"))
		d.keys("\x04")
		d.leave(0)
	}
}

func TestResizedWindow(t *testing.T) {
	d := sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	d.say("cardigan", "stitches and rows")
	if err := pty.Setsize(d.tty, &pty.Winsize{Rows: 24, Cols: 40}); err != nil {
		t.Fatal(err)
	}
	from := len(d.screen.text())
	d.say("28 stitches and 40 rows", "How far round")
	for line := range strings.Lines(d.screen.text()[from:]) {
		if columns(strings.TrimSuffix(line, "\n")) > 40 {
			t.Errorf("too wide now: %q", line)
		}
	}
	d.keys("quit\r")
	d.leave(0)
}

func TestSignalsAtThePrompt(t *testing.T) {
	for _, sig := range []syscall.Signal{syscall.SIGTERM, syscall.SIGHUP, syscall.SIGINT, syscall.SIGQUIT} {
		d := sit(t, 80, t.TempDir(), nil)
		d.see("pullover?")
		d.say("cardigan", "stitches and rows")
		d.keys("half a li")
		d.until("half a li", func(s string) bool { return strings.HasSuffix(s, "half a li\n") })
		if err := d.cmd.Process.Signal(sig); err != nil {
			t.Fatal(err)
		}
		d.leave(128 + int(sig))
	}
}

func TestBareTerminals(t *testing.T) {
	for _, tt := range []struct {
		env  string
		args []string
		raw  bool // no escape at all may be written
	}{{"NO_COLOR=1", nil, false}, {"TERM=dumb", nil, true}, {"X=", []string{"-plain"}, false}} {
		d := sit(t, 60, t.TempDir(), []string{tt.env}, tt.args...)
		d.see("pullover?")
		d.say("cardigan", "stitches and rows")
		d.keys("quit\r")
		d.leave(0)
		if d.screen.styled || tt.raw && slices.Contains(d.screen.raw, 0x1b) {
			t.Errorf("%s %v: styled: %q", tt.env, tt.args, d.screen.raw)
		}
	}
}

// TestHangUp: when the terminal goes away the program does too, and the
// notebook has everything.
func TestHangUp(t *testing.T) {
	home := t.TempDir()
	d := sit(t, 80, home, nil)
	d.see("pullover?")
	d.say("cardigan", "stitches and rows")
	d.tty.Close()
	ended := make(chan struct{})
	go func() { d.cmd.Wait(); close(ended) }()
	select {
	case <-ended:
	case <-time.After(20 * time.Second):
		t.Fatal("it goes on without a terminal")
	}
	s := &stage{home: home}
	if got := s.kept(t, "neckband"); len(got) != 1 {
		t.Errorf("kept %q", got)
	}
}
