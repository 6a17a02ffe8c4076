//go:build unix

package main

import (
	"io"
	"os"
	"os/exec"
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
	typed  int         // how long the screen's text was at the last typing
	done   chan struct{}
}

// sit starts the program in a window of cols columns, with home as its home.
func sit(t *testing.T, cols int, home string, env []string, args ...string) *desk {
	t.Helper()
	return sitAt(t, cols, home, env, exec.Command(program(t), args...))
}

// sitAt does so with whatever is to be started.
func sitAt(t *testing.T, cols int, home string, env []string, cmd *exec.Cmd) *desk {
	t.Helper()
	d := &desk{t: t, cmd: cmd, screen: newScreen(cols), done: make(chan struct{})}
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
		below := s[min(d.typed, len(s)):]
		return strings.Contains(strings.Join(strings.Fields(below), " "), text) && strings.HasSuffix(s, prompt)
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
	d.typed = len(d.screen.text())
	if _, err := io.WriteString(d.tty, s); err != nil {
		d.t.Fatal(err)
	}
}

// say types a line and waits until the text stands in what came after it.
func (d *desk) say(line, text string) {
	d.t.Helper()
	d.keys(line + "\r")
	d.see(text)
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
