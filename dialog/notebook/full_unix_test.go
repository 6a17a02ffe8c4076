//go:build unix

package notebook

import (
	"errors"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"
	"time"
)

// untilFull appends until the disk refuses, frees room with more, and goes on
// appending. Every accepted turn must be there at the end, and no other.
func untilFull(t *testing.T, dir string, more func()) {
	t.Helper()
	b, _, err := Open(dir, "p")
	if err != nil {
		t.Fatal(err)
	}
	at := func(i int) time.Time { return noon.Add(time.Duration(i) * time.Minute) }
	n := 0
	for ; n < 2000; n++ {
		if err = b.Append(said(n+1), state(n+1), at(n+1)); err != nil {
			break
		}
	}
	w := (*WriteError)(nil)
	if !errors.As(err, &w) {
		t.Fatalf("after %d turns: %v", n, err)
	}
	for range 3 { // asking again does no harm
		if err := b.Append(said(n+1), state(n+1), at(n+1)); !errors.As(err, &w) {
			t.Fatalf("a full disk took a turn: %v", err)
		}
	}
	check(t, b, n)
	more()
	if err := b.Append(said(n+1), state(n+1), at(n+1)); err != nil {
		t.Fatalf("with room again: %v", err)
	}
	b.Close()
	b, r, err := Open(dir, "p")
	if err != nil || r != (Report{Entries: n + 1}) {
		t.Fatalf("report %+v, %v", r, err)
	}
	check(t, b, n+1)
	b.Close()
}

func TestFullDisk(t *testing.T) {
	dir := t.TempDir()
	if out, err := exec.Command("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", dir).CombinedOutput(); err != nil {
		t.Skipf("no small file system can be mounted here: %s", out)
	}
	t.Cleanup(func() { exec.Command("umount", dir).Run() })
	filler := filepath.Join(dir, "filler")
	os.WriteFile(filler, make([]byte, 20<<10), 0o600)
	untilFull(t, filepath.Join(dir, "notebooks"), func() { os.Remove(filler) })
}

// TestFileLimit does the same with the process's own limit, which cuts a line
// in the middle. The limit is for the whole process, so it is set in a child.
func TestFileLimit(t *testing.T) {
	dir := os.Getenv("FOLDROW_TEST_LIMIT")
	if dir == "" {
		c := exec.Command(os.Args[0], "-test.run=^TestFileLimit$", "-test.v")
		c.Env = append(os.Environ(), "FOLDROW_TEST_LIMIT="+t.TempDir())
		out, err := c.CombinedOutput()
		if err != nil || !strings.Contains(string(out), "--- PASS: TestFileLimit") {
			t.Fatalf("%v\n%s", err, out)
		}
		return
	}
	signal.Ignore(syscall.SIGXFSZ)
	var old syscall.Rlimit
	if err := syscall.Getrlimit(syscall.RLIMIT_FSIZE, &old); err != nil {
		t.Fatal(err)
	}
	set := func(cur uint64) {
		l := old
		l.Cur = cur
		if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &l); err != nil {
			t.Fatal(err)
		}
	}
	set(10_001)
	untilFull(t, dir, func() { set(old.Cur) })
}

// TestReadOnlyFolder runs as someone whom permissions bind.
func TestReadOnlyFolder(t *testing.T) {
	dir := os.Getenv("FOLDROW_TEST_READONLY")
	if dir == "" {
		parent, err := os.MkdirTemp("", "foldrow")
		if err != nil {
			t.Fatal(err)
		}
		t.Cleanup(func() {
			os.Chmod(filepath.Join(parent, "notebooks"), 0o700)
			os.RemoveAll(parent)
		})
		readOnlyChild(t, parent)
		return
	}
	if _, _, err := Open(dir, "new"); !errors.As(err, new(*WriteError)) {
		t.Errorf("a new project in a read-only folder: %v", err)
	}
	b, r, err := Open(dir, "p")
	if err != nil || r.ReadOnly == nil || r.Entries != 2 {
		t.Fatalf("an old one: %+v %v", r, err)
	}
	check(t, b, 2)
	if err := b.Append("x", state(1), noon); !errors.As(err, new(*WriteError)) {
		t.Errorf("append: %v", err)
	}
	if err := Rename(dir, "p", "q"); !errors.As(err, new(*WriteError)) {
		t.Errorf("rename: %v", err)
	}
	if err := Copy(dir, "p", "q"); !errors.As(err, new(*WriteError)) {
		t.Errorf("copy: %v", err)
	}
	if err := Delete(dir, "p"); !errors.As(err, new(*WriteError)) {
		t.Errorf("delete: %v", err)
	}
}

func readOnlyChild(t *testing.T, parent string) {
	const nobody = 65534
	dir := filepath.Join(parent, "notebooks")
	path := fill(t, dir, "p", 2)
	prog := filepath.Join(parent, "prog")
	data, err := os.ReadFile(os.Args[0])
	if err == nil {
		err = os.WriteFile(prog, data, 0o755)
	}
	if err != nil {
		t.Fatal(err)
	}
	os.Chmod(parent, 0o755)
	os.Chmod(path, 0o400)
	os.Chmod(dir, 0o500)
	c := exec.Command(prog, "-test.run=^TestReadOnlyFolder$", "-test.v")
	c.Env = append(os.Environ(), "FOLDROW_TEST_READONLY="+dir)
	c.Dir = parent
	if os.Getuid() == 0 {
		for _, p := range []string{dir, path} {
			os.Chown(p, nobody, nobody)
		}
		c.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: nobody, Gid: nobody}}
	}
	out, err := c.CombinedOutput()
	if err != nil || !strings.Contains(string(out), "--- PASS: TestReadOnlyFolder") {
		t.Fatalf("on %s: %v\n%s", runtime.GOOS, err, out)
	}
}
