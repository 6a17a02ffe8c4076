package notebook

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"unicode"
)

// TestUnreadableStays: a file that cannot be read is neither mended nor removed.
func TestUnreadableStays(t *testing.T) {
	for name, spoil := range map[string]func(b *Book) error{
		"a fault of the disk": func(b *Book) (err error) { // a read that fails, as a bad sector's does
			b.file, err = os.OpenFile(b.path(ending), os.O_WRONLY|os.O_APPEND, 0)
			return err
		},
		"too large": func(b *Book) (err error) {
			if err := os.Truncate(b.path(ending), maxSize+1); err != nil {
				return err
			}
			b.file, err = os.Open(b.path(ending))
			return err
		},
	} {
		dir := t.TempDir()
		fill(t, dir, "p", 2)
		b := &Book{name: "p", folder: dir}
		if err := spoil(b); err != nil {
			t.Fatal(err)
		}
		before, err := os.Stat(b.path(ending))
		if err != nil {
			t.Fatal(err)
		}
		if _, err := b.load(); !errors.As(err, new(*ReadError)) {
			t.Errorf("%s: %v", name, err)
		}
		b.file.Close()
		if after, err := os.Stat(b.path(ending)); err != nil || after.Size() != before.Size() {
			t.Errorf("%s: the file is %v, %v", name, after, err)
		}
	}
}

// TestTooLarge: a file that no memory holds is refused, left, and not in the way of
// the others.
func TestTooLarge(t *testing.T) {
	dir := t.TempDir()
	fill(t, dir, "p", 2)
	huge := filepath.Join(dir, "huge"+ending)
	if err := os.WriteFile(huge, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Truncate(huge, 64<<30); err != nil {
		t.Skip("no file with holes can be made here: ", err)
	}
	_, _, openErr := Open(dir, "huge")
	_, _, readErr := Read(dir, "huge")
	for _, err := range []error{openErr, readErr, Copy(dir, "huge", "second")} {
		if !errors.Is(err, ErrLarge) || !errors.As(err, new(*ReadError)) {
			t.Errorf("opened, read or copied: %v", err)
		}
	}
	if info, err := os.Stat(huge); err != nil || info.Size() != 64<<30 {
		t.Errorf("the file is %v, %v", info, err)
	}
	if files, _ := filepath.Glob(filepath.Join(dir, "*.lock")); len(files) > 0 {
		t.Errorf("left %v", files)
	}
	if e, ok := Last(dir, "huge"); ok {
		t.Errorf("last %+v", e)
	}
	if err := Delete(dir, "huge"); err != nil {
		t.Errorf("deleting it: %v", err)
	}
}

func TestLast(t *testing.T) {
	dir := t.TempDir()
	path := fill(t, dir, "p", 3)
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.SplitAfter(string(data), "\n")
	long := `{"v":1,"seq":4,"at":"2026-03-01T12:04:00Z","said":"` + strings.Repeat("x", tailSize) + `","state":1`
	for _, tt := range []struct {
		name, text string
		seq        int
	}{
		{"whole", string(data), 3},
		{"without the last newline", strings.TrimSuffix(string(data), "\n"), 3},
		{"half a line", string(data)[:len(data)-5], 2},
		{"one line", lines[0], 1},
		{"nothing", "", 0},
		{"an empty line after it", string(data) + "\n", 3},
		{"zero bytes after it", string(data) + "\x00\x00", 3},
		{"a newer line after it", string(data) + `{"v":2}` + "\n", 3},
		{"a line longer than what is read", string(data) + long + "\n", 3},
	} {
		if err := os.WriteFile(path, []byte(tt.text), 0o600); err != nil {
			t.Fatal(err)
		}
		e, ok := Last(dir, "p")
		if ok != (tt.seq > 0) || e.Seq != tt.seq || ok && e.Said != said(tt.seq) {
			t.Errorf("%s: %+v, %v", tt.name, e, ok)
		}
	}
	if e, ok := Last(dir, "nobody"); ok {
		t.Errorf("of no project: %+v", e)
	}
}

// TestEmptyButReplaced: leaving a project in which nothing was said removes its own
// empty file, not what somebody has put there meanwhile.
func TestEmptyButReplaced(t *testing.T) {
	for name, put := range map[string]func(t *testing.T, path, backup string) error{
		"another file": func(t *testing.T, path, backup string) error {
			if runtime.GOOS == "windows" {
				t.Skip("an open file cannot be replaced here")
			}
			return os.Rename(backup, path)
		},
		"another's bytes": func(_ *testing.T, path, backup string) error {
			data, err := os.ReadFile(backup)
			if err != nil {
				return err
			}
			return os.WriteFile(path, data, 0o600)
		},
	} {
		dir := t.TempDir()
		backup := fill(t, filepath.Join(dir, "backup"), "p", 3)
		b, _ := mustOpen(t, dir, "p")
		if err := put(t, b.path(ending), backup); err != nil {
			t.Fatal(err)
		}
		if err := b.Close(); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		b, _ = mustOpen(t, dir, "p")
		check(t, b, 3)
	}
}

// twins makes two projects whose names differ only in case, by copying files past
// the program, or skips where the disk does not tell case apart.
func twins(t *testing.T) (dir string) {
	dir = t.TempDir()
	small := fill(t, filepath.Join(dir, "else"), "bella", 2)
	fill(t, dir, "Bella", 1)
	if err := os.Rename(small, filepath.Join(dir, "bella"+ending)); err != nil {
		t.Fatal(err)
	}
	if names(t, dir) != "Bella bella" && names(t, dir) != "bella Bella" {
		t.Skip("this disk does not tell case apart")
	}
	return dir
}

func TestTwins(t *testing.T) {
	dir := twins(t)
	for name, turns := range map[string]int{"Bella": 1, "bella": 2} {
		b, _, err := Read(dir, name)
		if err != nil {
			t.Fatal(err)
		}
		check(t, b, turns)
	}
	for _, names := range [][2]string{{"Bella", "bella"}, {"bella", "Bella"}, {"Bella", "BELLA"}} {
		want := ErrExists
		if names[1] == "BELLA" {
			want = nil
		}
		if err := Rename(dir, names[0], names[1]); !errors.Is(err, want) {
			t.Errorf("renamed %v: %v", names, err)
		}
	}
	if err := Copy(dir, "bella", "bELLA"); !errors.Is(err, ErrExists) {
		t.Errorf("copied: %v", err)
	}
	if err := Delete(dir, "bella"); err != nil {
		t.Fatal(err)
	}
	b, _ := mustOpen(t, dir, "bella")
	if b.Name() != "BELLA" {
		t.Errorf("left is %q", b.Name())
	}
	check(t, b, 1)
}

// TestOneLockForAllCases: while one writes a project, nobody can begin it in other
// letters.
func TestOneLockForAllCases(t *testing.T) {
	dir := t.TempDir()
	mustOpen(t, dir, "Bella")
	if err := os.Remove(filepath.Join(dir, "Bella"+ending)); err != nil {
		t.Skip("an open file cannot be removed here")
	}
	if _, _, err := Open(dir, "bella"); !errors.Is(err, ErrBusy) {
		t.Errorf("begun twice: %v", err)
	}
	for r := rune(0); r <= unicode.MaxRune; r++ {
		one, other := foldRune(r), foldRune(unicode.SimpleFold(r))
		if one != other || !strings.EqualFold(string(one), string(r)) {
			t.Fatalf("%q folds to %q, %q to %q", r, one, unicode.SimpleFold(r), other)
		}
	}
	for in, want := range map[string]string{"Bella": "bella", "ÅSA": "åsa", "İ ı I i": "İ ı i i", "\u212a": "k"} {
		if got := strings.Map(foldRune, in); got != want {
			t.Errorf("%q folds to %q", in, got)
		}
	}
}

// TestSideCopyKept: renaming a project never writes over a side copy that another
// of the new name has left.
func TestSideCopyKept(t *testing.T) {
	dir := t.TempDir()
	fill(t, dir, "p", 1)
	for name, text := range map[string]string{"p": "of p", "q": "of q"} {
		if err := os.WriteFile(filepath.Join(dir, name+sideMark+"1.txt"), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := Rename(dir, "p", "q"); err != nil {
		t.Fatal(err)
	}
	for file, want := range map[string]string{"1": "of q", "2": "of p"} {
		if got, err := os.ReadFile(filepath.Join(dir, "q"+sideMark+file+".txt")); err != nil || string(got) != want {
			t.Errorf("side copy %s: %q, %v", file, got, err)
		}
	}
}
