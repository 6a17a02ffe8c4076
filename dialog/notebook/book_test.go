package notebook

import (
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"testing"
	"time"
)

var noon = time.Date(2026, 3, 1, 12, 0, 0, 0, time.UTC)

func mustOpen(t *testing.T, folder, name string) (*Book, Report) {
	t.Helper()
	b, r, err := Open(folder, name)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { b.Close() })
	return b, r
}

// fill makes a project of n turns and gives its path.
func fill(t testing.TB, folder, name string, n int) string {
	t.Helper()
	b, _, err := Open(folder, name)
	if err != nil {
		t.Fatal(err)
	}
	for i := 1; i <= n; i++ {
		if err := b.Append(said(i), state(i), noon.Add(time.Duration(i)*time.Minute)); err != nil {
			t.Fatal(err)
		}
	}
	if err := b.Close(); err != nil {
		t.Fatal(err)
	}
	return filepath.Join(folder, name+ending)
}

func said(i int) string { return fmt.Sprintf("line %d, 15½\" <ø> \\ \n end", i) }

func state(i int) json.RawMessage {
	return json.RawMessage(fmt.Sprintf(`{"neck": %d, "said":"a\nb"}`, i))
}

// check compares the book's turns with the first want of fill's.
func check(t *testing.T, b *Book, want int) {
	t.Helper()
	if len(b.Entries()) != want {
		t.Fatalf("%d entries, want %d", len(b.Entries()), want)
	}
	for i, e := range b.Entries() {
		wantState := fmt.Sprintf(`{"neck":%d,"said":"a\nb"}`, i+1)
		if e.Seq != i+1 || e.Said != said(i+1) || string(e.State) != wantState ||
			!e.At.Equal(noon.Add(time.Duration(i+1)*time.Minute)) {
			t.Fatalf("entry %d is %+v", i+1, e)
		}
	}
	last, ok := b.Last()
	if ok != (want > 0) || last.Seq != want {
		t.Fatalf("last is %+v, %v", last, ok)
	}
}

func TestAppendAndReopen(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "a", "b")
	fill(t, dir, "Blue", 3)
	b, r := mustOpen(t, dir, "Blue")
	check(t, b, 3)
	if r != (Report{Entries: 3}) {
		t.Errorf("report %+v", r)
	}
	if err := b.Append(said(4), state(4), noon.Add(4*time.Minute)); err != nil {
		t.Fatal(err)
	}
	b.Close()
	b, _ = mustOpen(t, dir, "blue")
	check(t, b, 4)
}

func TestAppendRefusesBadState(t *testing.T) {
	b, _ := mustOpen(t, t.TempDir(), "p")
	for _, bad := range []string{"", "{", `{"a":1} {"b":2}`, "{\"a\":\"x\ny\"}"} {
		err := b.Append("x", json.RawMessage(bad), noon)
		if w := (*WriteError)(nil); err == nil || errors.As(err, &w) {
			t.Errorf("state %q: %v", bad, err)
		}
	}
	if err := b.Append(said(1), state(1), noon.Add(time.Minute)); err != nil {
		t.Fatal(err)
	}
	check(t, b, 1)
}

func TestPermissions(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("permissions are the profile folder's there")
	}
	dir := filepath.Join(t.TempDir(), "notebooks")
	if err := os.Mkdir(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	path := fill(t, dir, "p", 1)
	if err := os.Chmod(path, 0o644); err != nil {
		t.Fatal(err)
	}
	mustOpen(t, dir, "p")
	for p, want := range map[string]fs.FileMode{dir: 0o700, path: 0o600, filepath.Join(dir, "p.lock"): 0o600} {
		info, err := os.Stat(p)
		if err != nil || info.Mode().Perm() != want {
			t.Errorf("%s: %v %v, want %v", p, info.Mode(), err, want)
		}
	}
}

func TestNothingSaidLeavesNothing(t *testing.T) {
	dir := t.TempDir()
	b, _ := mustOpen(t, dir, "p")
	b.Close()
	files, _ := os.ReadDir(dir)
	if len(files) != 0 {
		t.Errorf("left %v", files)
	}
}

func TestTwoOpens(t *testing.T) {
	dir := t.TempDir()
	fill(t, dir, "p", 2)
	first, _ := mustOpen(t, dir, "p")
	if _, _, err := Open(dir, "P"); !errors.Is(err, ErrBusy) {
		t.Fatalf("second open: %v", err)
	}
	look, r, err := Read(dir, "p")
	if err != nil {
		t.Fatal(err)
	}
	check(t, look, 2)
	if !errors.Is(r.ReadOnly, ErrReadOnly) || !errors.Is(look.Append("x", state(1), noon), ErrReadOnly) {
		t.Errorf("the second window could write: %+v", r)
	}
	look.Close()
	mustOpen(t, dir, "other")
	first.Close()
	mustOpen(t, dir, "p")
}

func TestLinksRefused(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("links need a privilege there")
	}
	away := t.TempDir()
	target := fill(t, away, "target", 1)
	before, _ := os.ReadFile(target)
	for _, link := range []string{"p" + ending, "p.lock"} {
		dir := t.TempDir()
		if err := os.Symlink(target, filepath.Join(dir, link)); err != nil {
			t.Fatal(err)
		}
		if _, _, err := Open(dir, "p"); !errors.Is(err, ErrLink) {
			t.Errorf("%s as a link: %v", link, err)
		}
	}
	dir := filepath.Join(t.TempDir(), "notebooks")
	if err := os.Symlink(away, dir); err != nil {
		t.Fatal(err)
	}
	if _, _, err := Open(dir, "target"); !errors.Is(err, ErrLink) {
		t.Errorf("folder as a link: %v", err)
	}
	if after, _ := os.ReadFile(target); string(after) != string(before) {
		t.Error("the link's target was changed")
	}
}

func TestRemovedUnderneath(t *testing.T) {
	dir := t.TempDir()
	b, _ := mustOpen(t, dir, "p")
	if err := os.Remove(filepath.Join(dir, "p"+ending)); err != nil {
		t.Skip("an open file cannot be removed here")
	}
	err := b.Append(said(1), state(1), noon)
	if w := (*WriteError)(nil); !errors.As(err, &w) || !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("append to a removed notebook: %v", err)
	}
}
