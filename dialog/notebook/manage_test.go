package notebook

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

func TestCleanName(t *testing.T) {
	tests := []struct{ asked, want, reason string }{
		{"Blue cardigan", "Blue cardigan", ""},
		{"  Blue \t cardigan\n", "Blue cardigan", ""},
		{"Anna's - size 3/4", "Annas - size 3 4", ""},
		{"../../etc/passwd", "etc passwd", ""},
		{`C:\Users\x`, "C Users x", ""},
		{"~root", "root", ""},
		{"-rf", "rf", ""},
		{"blå genser", "blå genser", ""},
		{"bla\u030a genser", "blå genser", ""}, // decomposed
		{"голубой", "голубой", ""},
		{"हिन्दी", "हिन्दी", ""},
		{"青い", "青い", ""},
		{"a\x00b\x1b[31mc", "a b 31mc", ""},
		{"p.jsonl", "p jsonl", ""},
		{"", "", "is empty"},
		{"...", "", "is empty"},
		{" - - ", "", "is empty"},
		{"\u0301\u0301", "", "is empty"},
		{"😀", "", "is empty"},
		{"\xff\xfe", "", "is empty"},
		{"nul", "", "is kept by the system"},
		{"Com1", "", "is kept by the system"},
		{"lpt9", "", "is kept by the system"},
		{"com10", "com10", ""},
		{"console", "console", ""},
		{strings.Repeat("å", maxName), strings.Repeat("å", maxName), ""},
		{strings.Repeat("å", maxName+1), "", "is too long (50 letters at most)"},
	}
	for _, tt := range tests {
		got, err := CleanName(tt.asked)
		reason := ""
		if n := (*NameError)(nil); errors.As(err, &n) {
			reason = n.Reason
		}
		if got != tt.want || reason != tt.reason {
			t.Errorf("CleanName(%q) = %q, %q; want %q, %q", tt.asked, got, reason, tt.want, tt.reason)
		}
	}
}

func FuzzCleanName(f *testing.F) {
	f.Add("../x")
	f.Add("å-\u200e1")
	f.Fuzz(func(t *testing.T, asked string) {
		name, err := CleanName(asked)
		if err != nil {
			return
		}
		again, err := CleanName(name)
		if err != nil || again != name {
			t.Fatalf("%q cleans to %q, then to %q, %v", asked, name, again, err)
		}
		if filepath.Base(name) != name || !filepath.IsLocal(name) || strings.ContainsAny(name, `./\:`) || len(name) > 4*maxName {
			t.Fatalf("%q gives the path %q", asked, name)
		}
	})
}

func TestFolder(t *testing.T) {
	abs := t.TempDir()
	tests := []struct {
		goos, flag string
		env        map[string]string
		want       string
	}{
		{"linux", "/x", map[string]string{"FOLDROW_STATE": "/y", "HOME": "/h"}, "/x/notebooks"},
		{"linux", "", map[string]string{"FOLDROW_STATE": "/y", "HOME": "/h"}, "/y/notebooks"},
		{"linux", "", map[string]string{"XDG_STATE_HOME": abs, "HOME": "/h"}, abs + "/foldrow/notebooks"},
		{"linux", "", map[string]string{"XDG_STATE_HOME": "rel", "HOME": "/h"}, "/h/.local/state/foldrow/notebooks"},
		{"freebsd", "", map[string]string{"HOME": "/h"}, "/h/.local/state/foldrow/notebooks"},
		{"darwin", "", map[string]string{"HOME": "/h"}, "/h/Library/Application Support/foldrow/notebooks"},
		{"windows", "", map[string]string{"LOCALAPPDATA": "/l", "HOME": "/h"}, "/l/foldrow/notebooks"},
		{"windows", "", map[string]string{"USERPROFILE": "/u"}, "/u/AppData/Local/foldrow/notebooks"},
		{"windows", "", map[string]string{"HOME": "/h"}, ""},
		{"linux", "", nil, ""},
	}
	for _, tt := range tests {
		got, err := Folder(func(k string) string { return tt.env[k] }, tt.goos, tt.flag)
		if got != filepath.FromSlash(tt.want) || (tt.want == "") != errors.Is(err, ErrNoHome) {
			t.Errorf("%+v: %q, %v", tt, got, err)
		}
	}
}

func names(t *testing.T, dir string) string {
	t.Helper()
	list, err := List(dir)
	if err != nil {
		t.Fatal(err)
	}
	var s []string
	for _, p := range list {
		s = append(s, p.Name)
	}
	return strings.Join(s, ", ")
}

func TestListNewestFirst(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "notebooks")
	if names(t, dir) != "" {
		t.Error("a folder that is not there holds projects")
	}
	for i, name := range []string{"Old", "Newest", "Middle"} {
		path := fill(t, dir, name, 1)
		at := noon.AddDate(0, 0, []int{0, 2, 1}[i])
		os.Chtimes(path, at, at)
	}
	for _, other := range []string{"notes.txt", "a.b.jsonl", "-x.jsonl"} {
		os.WriteFile(filepath.Join(dir, other), nil, 0o600)
	}
	os.Mkdir(filepath.Join(dir, "folder.jsonl"), 0o700)
	if got := names(t, dir); got != "Newest, Middle, Old" {
		t.Errorf("list is %q", got)
	}
}

func TestRenameCopyDelete(t *testing.T) {
	dir := t.TempDir()
	path := fill(t, dir, "Blue", 3)
	os.WriteFile(strings.TrimSuffix(path, ending)+".damaged-1.txt", []byte("x"), 0o600)
	steps := []struct {
		what string
		do   func() error
		want error
		list string
	}{
		{"copy", func() error { return Copy(dir, "blue", "Red") }, nil, "Blue, Red"},
		{"copy onto another", func() error { return Copy(dir, "Blue", "RED") }, ErrExists, "Blue, Red"},
		{"copy onto itself", func() error { return Copy(dir, "Blue", "blue") }, ErrExists, "Blue, Red"},
		{"copy of none", func() error { return Copy(dir, "Grey", "x") }, ErrNone, "Blue, Red"},
		{"rename onto another", func() error { return Rename(dir, "Red", "bLue") }, ErrExists, "Blue, Red"},
		{"rename to itself", func() error { return Rename(dir, "Red", "Red") }, ErrExists, "Blue, Red"},
		{"rename of none", func() error { return Rename(dir, "Grey", "x") }, ErrNone, "Blue, Red"},
		{"rename the case", func() error { return Rename(dir, "Red", "RED") }, nil, "Blue, RED"},
		{"rename", func() error { return Rename(dir, "blue", "Sky") }, nil, "RED, Sky"},
		{"delete of none", func() error { return Delete(dir, "Blue") }, ErrNone, "RED, Sky"},
		{"delete", func() error { return Delete(dir, "red") }, nil, "Sky"},
	}
	for _, s := range steps {
		if err := s.do(); !errors.Is(err, s.want) {
			t.Fatalf("%s: %v, want %v", s.what, err, s.want)
		}
		list := strings.Split(names(t, dir), ", ")
		if strings.Join(slices.Sorted(slices.Values(list)), ", ") != s.list {
			t.Fatalf("after %s: %v, want %s", s.what, list, s.list)
		}
	}
	b, _ := mustOpen(t, dir, "sky")
	check(t, b, 3)
	b.Close()
	files, _ := os.ReadDir(dir)
	if len(files) != 2 || files[0].Name() != "Sky.damaged-1.txt" || files[1].Name() != "Sky.jsonl" {
		t.Errorf("files left: %v", files)
	}
	if err := Delete(dir, "Sky"); err != nil {
		t.Fatal(err)
	}
	if files, _ = os.ReadDir(dir); len(files) != 0 {
		t.Errorf("delete left %v", files)
	}
	for _, err := range []error{Copy(dir, "", "x"), Rename(dir, "con", "x"), Delete(dir, "..")} {
		if !errors.As(err, new(*NameError)) {
			t.Errorf("a name that will not do: %v", err)
		}
	}
}

func TestManageWhileOpen(t *testing.T) {
	dir := t.TempDir()
	fill(t, dir, "p", 2)
	b, _ := mustOpen(t, dir, "p")
	if err := Rename(dir, "p", "q"); !errors.Is(err, ErrBusy) {
		t.Errorf("rename: %v", err)
	}
	if err := Rename(dir, "p", "P"); !errors.Is(err, ErrBusy) {
		t.Errorf("rename the case: %v", err)
	}
	if err := Delete(dir, "p"); !errors.Is(err, ErrBusy) {
		t.Errorf("delete: %v", err)
	}
	if err := Copy(dir, "p", "q"); err != nil {
		t.Errorf("copy: %v", err)
	}
	if err := b.Append(said(3), state(3), noon.Add(3*60e9)); err != nil {
		t.Fatal(err)
	}
	check(t, b, 3)
	q, _ := mustOpen(t, dir, "q")
	check(t, q, 2)
}

// TestReadingHoldsNothing: a window that only reads keeps no file open, so that
// another can rename and delete the project where open files cannot be.
func TestReadingHoldsNothing(t *testing.T) {
	dir := t.TempDir()
	fill(t, dir, "p", 2)
	look, _, err := Read(dir, "p")
	if err != nil || look.file != nil {
		t.Fatalf("%v, %v", look, err)
	}
	if err := Rename(dir, "p", "q"); err != nil {
		t.Error(err)
	}
	if err := Delete(dir, "q"); err != nil {
		t.Error(err)
	}
	check(t, look, 2)
	if err := look.Close(); err != nil {
		t.Error(err)
	}
}

// TestDecomposedNames: a disk that hands names back with letters and accents apart
// keeps a project and its side copies together.
func TestDecomposedNames(t *testing.T) {
	dir := t.TempDir()
	path := fill(t, dir, "gr\u00e5", 1)
	side := filepath.Join(dir, "gra\u030a.damaged-1.txt")
	if err := os.WriteFile(side, []byte("x"), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := Rename(dir, "gra\u030a", "bl\u00e5"); err != nil {
		t.Fatal(err)
	}
	for _, gone := range []string{path, side} {
		if _, err := os.Lstat(gone); err == nil {
			t.Errorf("%q is still there", gone)
		}
	}
	if err := Delete(dir, "bl\u00e5"); err != nil {
		t.Fatal(err)
	}
	if left, _ := os.ReadDir(dir); len(left) != 0 {
		t.Errorf("left %v", left)
	}
}
