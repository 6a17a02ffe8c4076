//go:build unix

package main

import (
	"errors"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// TestOutputThatIsNone starts the true program with an output that is full,
// closed or has no reader, and with no input: it ends at once, says why where
// anyone can hear it, and keeps what was said before it noticed.
func TestOutputThatIsNone(t *testing.T) {
	prog, home := program(t), t.TempDir()
	for _, tt := range []struct {
		shell  string
		status int
		says   string
	}{
		{`exec "$0" -forget >/dev/full`, 1, "the output cannot be written: no space left on device"},
		{`exec "$0" -json >/dev/full`, 1, "the output cannot be written: no space left on device"},
		{`exec "$0" -h >/dev/full`, 1, "the output cannot be written: no space left on device"},
		// what is closed is opened on nothing before we begin, so that no file
		// of ours can come to stand in its place
		{`exec "$0" -forget >&-`, 0, ""},
		{`exec "$0" -project p >&- 2>&-`, 0, ""},
		{`exec "$0" -forget <&-`, 0, ""},
		{`exec "$0" -forget </`, 1, "the input cannot be read: read /dev/stdin: is a directory"},
		{`exec "$0" -project p </dev/null`, 0, ""},
	} {
		cmd := exec.Command("sh", "-c", tt.shell, prog)
		cmd.Env = []string{"HOME=" + home}
		cmd.Stdin = strings.NewReader(strings.Join(answers, "\n"))
		var errs strings.Builder
		cmd.Stdout, cmd.Stderr = io.Discard, &errs
		err := cmd.Run()
		var exit *exec.ExitError
		if err != nil && !errors.As(err, &exit) {
			t.Skip("no shell here: ", err)
		}
		if strings.Contains(errs.String(), "/dev/full") {
			continue // this system has none
		}
		if got := cmd.ProcessState.ExitCode(); got != tt.status || !strings.Contains(errs.String(), tt.says) || (tt.says == "") != (errs.Len() == 0) {
			t.Errorf("%s: status %d, %q", tt.shell, got, errs.String())
		}
	}
	s := &stage{home: home}
	if got := strings.Join(s.kept(t, "p"), "|"); got != strings.Join(answers, "|") {
		t.Errorf("with nowhere to write to it kept %q", got)
	}
}

// TestAnotherUsersFiles: where the home, the notebooks or one notebook belong
// to somebody else or cannot be written, that is said and the conversation
// goes on.
func TestAnotherUsersFiles(t *testing.T) {
	root := os.Getuid() == 0
	for name, spoil := range map[string]func(home, folder string) error{
		"a home that cannot be written":      func(home, folder string) error { return os.Chmod(home, 0o555) },
		"notebooks that cannot be written":   func(home, folder string) error { return os.Chmod(folder, 0o555) },
		"notebooks that cannot be looked at": func(home, folder string) error { return os.Chmod(folder, 0o000) },
		"a notebook of somebody else's": func(home, folder string) error {
			if !root {
				return os.WriteFile(filepath.Join(folder, "p.jsonl"), nil, 0o000)
			}
			return os.WriteFile(filepath.Join(folder, "p.jsonl"), nil, 0o600)
		},
	} {
		t.Run(name, func(t *testing.T) {
			home, cmd := t.TempDir(), asSomeone(t, root, "-project", "p")
			folder := filepath.Join(home, ".local", "state", "foldrow", "notebooks")
			if name != "a home that cannot be written" {
				if err := os.MkdirAll(folder, 0o700); err != nil {
					t.Fatal(err)
				}
			}
			if root { // what is hers she may write, unless it is spoilt below
				for _, dir := range []string{filepath.Dir(home), home, filepath.Join(home, ".local"), filepath.Join(home, ".local", "state"), filepath.Dir(folder), folder} {
					os.Chmod(dir, 0o755)
				}
				if name == "a notebook of somebody else's" {
					os.Chown(folder, nobody, nobody)
				}
			}
			if err := spoil(home, folder); err != nil {
				t.Fatal(err)
			}
			t.Cleanup(func() { os.Chmod(home, 0o700); os.Chmod(folder, 0o700) })
			cmd.Env = []string{"HOME=" + home}
			out, err := cmd.CombinedOutput()
			if err != nil {
				t.Fatalf("%v: %s", err, out)
			}
			contains(t, string(out), "cannot be", "permission denied", "The conversation goes on", "needles L")
		})
	}
}

const nobody = 65534

// asSomeone is the program run by a user who may not do everything: by nobody
// where the tests run as root.
func asSomeone(t *testing.T, root bool, args ...string) *exec.Cmd {
	t.Helper()
	if !root {
		cmd := exec.Command(program(t), args...)
		cmd.Stdin = strings.NewReader(strings.Join(answers, "\n"))
		return cmd
	}
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	for _, d := range []string{filepath.Dir(dir), dir} { // where nobody may go
		if err := os.Chmod(d, 0o755); err != nil {
			t.Fatal(err)
		}
	}
	path := filepath.Join(dir, "foldrow")
	data, err := os.ReadFile(self)
	if err == nil {
		err = os.WriteFile(path, data, 0o755)
	}
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(path, args...)
	cmd.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: nobody, Gid: nobody}}
	cmd.Stdin = strings.NewReader(strings.Join(answers, "\n"))
	cmd.Dir = "/"
	return cmd
}
