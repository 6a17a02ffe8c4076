//go:build unix

package main

import (
	"io"
	"os"
	"os/exec"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/creack/pty"
	"golang.org/x/term"
)

// desk is the program at work in a real terminal.
type desk struct {
	t      *testing.T
	cmd    *exec.Cmd
	tty    *os.File
	screen *screen
	before *term.State // of the terminal, when the program started
	done   chan struct{}
}

// sit starts the program in a window of cols columns, with home as its home.
func sit(t *testing.T, cols int, home string, env []string, args ...string) *desk {
	t.Helper()
	d := &desk{t: t, cmd: exec.Command(program(t), args...), screen: newScreen(cols), done: make(chan struct{})}
	d.cmd.Env = append([]string{"HOME=" + home, "TERM=xterm", "PATH=" + os.Getenv("PATH"), "TZ=UTC"}, env...)
	tty, slave, err := pty.Open()
	if err != nil {
		t.Skip("no pseudo-terminal here: ", err)
	}
	if err := pty.Setsize(tty, &pty.Winsize{Rows: 24, Cols: uint16(cols)}); err != nil {
		t.Fatal(err)
	}
	d.tty = polled(t, tty)
	d.before = d.state()
	d.cmd.Stdin, d.cmd.Stdout, d.cmd.Stderr = slave, slave, slave
	d.cmd.SysProcAttr = &syscall.SysProcAttr{Setsid: true, Setctty: true}
	if err := d.cmd.Start(); err != nil {
		t.Fatal(err)
	}
	slave.Close()
	go func() {
		io.Copy(d.screen, d.tty) // ends with an error when the program does
		close(d.done)
	}()
	t.Cleanup(func() {
		d.cmd.Process.Kill()
		d.cmd.Wait()
		d.tty.Close()
	})
	return d
}

// polled is the terminal as a file whose Close ends a read that waits; opening
// it has made it a blocking one.
func polled(t *testing.T, tty *os.File) *os.File {
	t.Helper()
	fd, err := syscall.Dup(int(tty.Fd()))
	if err == nil {
		err = syscall.SetNonblock(fd, true)
	}
	if err != nil {
		t.Fatal(err)
	}
	syscall.CloseOnExec(fd)
	tty.Close()
	return os.NewFile(uintptr(fd), "terminal")
}

// state is the terminal's, nil if it cannot be had. It does not go by Fd, which
// would make the file blocking, so that closing it waits for a read.
func (d *desk) state() (s *term.State) {
	if c, err := d.tty.SyscallConn(); err == nil {
		_ = c.Control(func(fd uintptr) { s, _ = term.GetState(int(fd)) })
	}
	return s
}

// prompt is what the screen ends with while the program waits for a line.
const prompt = "\n>\n"

// see waits until the program waits for a line and the text stands somewhere
// below what was there at the last typing.
func (d *desk) see(text string) {
	d.t.Helper()
	d.until(text, func(s string) bool {
		return strings.Contains(strings.Join(strings.Fields(s), " "), text) && strings.HasSuffix(s, prompt)
	})
}

func (d *desk) until(what string, ok func(string) bool) {
	d.t.Helper()
	for start := time.Now(); time.Since(start) < 20*time.Second; time.Sleep(2 * time.Millisecond) {
		if ok(d.screen.text()) {
			return
		}
	}
	d.t.Fatalf("never saw %q; the screen:\n%s\nraw end: %q", what, d.screen.text(), tail(d.screen))
}

func tail(s *screen) []byte {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.raw[max(0, len(s.raw)-300):]
}

// keys sends keys as they are.
func (d *desk) keys(s string) {
	d.t.Helper()
	if _, err := io.WriteString(d.tty, s); err != nil {
		d.t.Fatal(err)
	}
}

// say types a line and waits until the text stands in what came after it.
func (d *desk) say(line, text string) {
	d.t.Helper()
	from := len(d.screen.text())
	d.keys(line + "\r")
	d.until(text, func(s string) bool {
		after := s[min(from, len(s)):]
		return strings.Contains(strings.Join(strings.Fields(after), " "), text) && strings.HasSuffix(s, prompt)
	})
}

// leave waits for the end, and checks the status and that the terminal is as it
// was.
func (d *desk) leave(status int) {
	d.t.Helper()
	after := d.state()
	ended := make(chan error, 1)
	go func() { ended <- d.cmd.Wait() }()
	select {
	case <-ended:
	case <-time.After(20 * time.Second):
		d.t.Fatalf("it does not end; the screen:\n%s", d.screen.text())
	}
	if got := d.state(); got != nil {
		after = got
	}
	select {
	case <-d.done: // everything it wrote is on the screen
	case <-time.After(20 * time.Second):
		d.t.Error("its terminal stays open after its end")
	}
	if d.before == nil || after == nil || *after != *d.before {
		d.t.Errorf("the terminal is not as it was")
	}
	if got := d.cmd.ProcessState.ExitCode(); got != status {
		d.t.Errorf("status %d, want %d; the screen:\n%s", got, status, d.screen.text())
	}
	if len(d.screen.unknown) > 0 {
		d.t.Errorf("the terminal was told %v", d.screen.unknown)
	}
}

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

func TestInterruptKey(t *testing.T) {
	d := sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	d.keys("pull\x03")
	d.until("cleared line", func(s string) bool { return strings.HasSuffix(s, "> pull^C\n>\n") })
	d.say("cardigan", "(a cardigan)")
	d.keys("\x03")
	d.see("Say quit to leave, or press Ctrl-C once more. Everything said is kept in “neckband”.")
	d.say("28 stitches and 40 rows", "How far round") // the first is forgotten
	d.keys("\x03")
	d.until("second warning", func(s string) bool { return strings.Count(s, "Say quit") == 2 && strings.HasSuffix(s, prompt) })
	d.keys("\x03")
	d.leave(130)
}

func TestEndOfInputKey(t *testing.T) {
	home := t.TempDir()
	d := sit(t, 80, home, nil)
	d.see("pullover?")
	d.say("cardigan", "(a cardigan)")
	d.keys("ab\x01\x04") // with text on the line it deletes forward
	d.until("b", func(s string) bool { return strings.HasSuffix(s, "\n> b\n") })
	d.keys("\x15\x0b\x04")
	d.leave(0)
	if !strings.Contains(d.screen.text(), "Everything said is kept in “neckband”. Start foldrow again to go on.") {
		t.Errorf("the screen:\n%s", d.screen.text())
	}

	d = sit(t, 80, home, nil)
	d.see("Go on with “neckband”? The last thing said there was “cardigan”")
	d.keys("\x1b[A") // the arrow up finds it only once the project is open
	d.say("", "stitches and rows")
	d.keys("\x1b[A")
	d.until("the line of the other day", func(s string) bool { return strings.HasSuffix(s, "\n> cardigan\n") })
	d.keys("\x15quit\r")
	d.leave(0)
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
	d.see("The last thing said there was “quit”")
	d.say("no", "pullover?")
	d.say("list", "“neckband 2”")
	d.keys("quit\r")
	d.leave(0)
}

func TestKeysThatDoNothing(t *testing.T) {
	d := sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	time.Sleep(2 * ahead)
	d.keys("\x1a\x00\x12\x13car\x1a\x00\x1c") // Ctrl-Z, Ctrl-Space, Ctrl-R, Ctrl-S, Ctrl-backslash
	d.until("car", func(s string) bool { return strings.HasSuffix(s, "\n> car\n") })
	d.keys("\t")
	d.until("cardigan", func(s string) bool { return strings.HasSuffix(s, "\n> cardigan\n") })
	d.say("", "(a cardigan)")
	d.keys("quit\r")
	d.leave(0)
}

// TestTypedAhead: keys pressed before the program listens are not lost, the one
// that ends the input among them.
func TestTypedAhead(t *testing.T) {
	for range 5 {
		home := t.TempDir()
		d := sit(t, 80, home, nil)
		d.keys("cardigan\r28 stitches and 40 rows\r\x04")
		d.leave(0)
		s := &stage{home: home}
		if got := strings.Join(s.kept(t, "neckband"), "|"); got != "cardigan|28 stitches and 40 rows" {
			t.Errorf("kept %q", got)
		}
	}
}

func TestPastedLines(t *testing.T) {
	d := sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	d.keys("cardigan\r\n28 stitches and 40 rows\r\n\r\n42 cm\r\n")
	d.see("Which rib")
	if n := strings.Count(d.screen.text(), "(several lines came at once"); n != 1 {
		t.Errorf("said %d times:\n%s", n, d.screen.text())
	}
	d.say("2x1", "How deep")
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
	for _, sig := range []syscall.Signal{syscall.SIGTERM, syscall.SIGHUP, syscall.SIGINT} {
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

func TestLongLineTyped(t *testing.T) {
	d := sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	for range 15 { // in pieces, because a terminal takes only so much at once
		d.keys(strings.Repeat("x", 100))
		time.Sleep(5 * time.Millisecond)
	}
	d.keys("\r")
	d.until("the remark", func(s string) bool {
		return strings.Contains(s, "(that line was too long: its first 1000 bytes were read, the other")
	})
	d.see("pullover?")
	d.keys("quit\r")
	d.leave(0)
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
