//go:build unix

package main

import (
	"bufio"
	"errors"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"foldrow/dialog"
	"foldrow/rules"
)

// TestSignalWhileOutputIsBlocked: nobody takes what the program writes, so it never
// comes to wait for a line. It ends all the same, and what was said is kept.
func TestSignalWhileOutputIsBlocked(t *testing.T) {
	prog := program(t)
	for _, sig := range []syscall.Signal{syscall.SIGTERM, syscall.SIGINT, syscall.SIGHUP, syscall.SIGQUIT} {
		s := newStage(t)
		cmd := exec.Command(prog, "-project", "p")
		cmd.Env = []string{"HOME=" + s.home}
		cmd.Stdin = strings.NewReader(strings.Join(answers, "\n") + strings.Repeat("\nplan", 300))
		out, err := cmd.StdoutPipe() // and nothing is read from it
		if err != nil {
			t.Fatal(err)
		}
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		size := func() int64 {
			info, err := os.Stat(filepath.Join(s.folder(), "p.jsonl"))
			if err != nil {
				return 0
			}
			return info.Size()
		}
		for before := int64(-1); before <= 0 || before != size(); time.Sleep(500 * time.Millisecond) {
			before = size()
		}
		kept := len(s.kept(t, "p"))
		began := time.Now()
		cmd.Process.Signal(sig)
		ended(t, cmd, 128+int(sig))
		if took := time.Since(began); took < patience {
			t.Errorf("%v: it ended after %v and was not blocked", sig, took)
		}
		if got := s.kept(t, "p"); len(got) != kept || kept <= len(answers) {
			t.Errorf("%v: %d lines kept, before it %d", sig, len(got), kept)
		}
		out.Close()
	}
}

// ended waits for the program's end and looks at its status.
func ended(t *testing.T, cmd *exec.Cmd, status int) {
	t.Helper()
	late := time.AfterFunc(20*time.Second, func() { cmd.Process.Kill() })
	defer late.Stop()
	var exit *exec.ExitError
	if err := cmd.Wait(); err != nil && !errors.As(err, &exit) && !errors.Is(err, io.ErrClosedPipe) {
		t.Log(err)
	}
	if got := cmd.ProcessState.ExitCode(); got != status {
		t.Errorf("status %d, want %d", got, status)
	}
}

// TestHangUpIgnored: who starts the program so that it outlives the terminal has it
// so.
func TestHangUpIgnored(t *testing.T) {
	home := t.TempDir()
	cmd := exec.Command("sh", "-c", `trap "" HUP; exec "$0" -project p`, program(t))
	cmd.Env = []string{"HOME=" + home}
	in, err := cmd.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	out, err := cmd.StdoutPipe()
	if err == nil {
		err = cmd.Start()
	}
	if err != nil {
		t.Skip("no shell here: ", err)
	}
	said := bufio.NewReader(out)
	until := func(text string) {
		for line := ""; !strings.Contains(line, text); {
			if line, err = said.ReadString('\n'); err != nil {
				t.Fatalf("never saw %q: %v", text, err)
			}
		}
	}
	until("cardigan")
	cmd.Process.Signal(syscall.SIGHUP)
	time.Sleep(patience + 500*time.Millisecond)
	io.WriteString(in, "cardigan\n")
	until("stitches")
	in.Close()
	io.Copy(io.Discard, said)
	ended(t, cmd, 0)
}

// TestWritingOutStops: a long conversation takes long to write out; a signal stops
// it, leaves no file and ends the program at the next line.
func TestWritingOutStops(t *testing.T) {
	book, err := rules.Load()
	if err != nil {
		t.Fatal(err)
	}
	talk, err := dialog.Start(book)
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir(t.TempDir())
	signals := make(chan os.Signal, 1)
	c := &chat{env: Env{Signals: signals, Now: time.Now}, talk: talk, shelf: shelf{said: answers}}
	signals <- syscall.SIGTERM
	contains(t, c.writeOut(), "Nothing was written: the program was told to end.")
	if files, _ := os.ReadDir("."); len(files) > 0 {
		t.Errorf("left %v", files)
	}
	if _, err := c.wait(); !errors.Is(err, signalled{syscall.SIGTERM}) {
		t.Errorf("the next line: %v", err)
	}
}
