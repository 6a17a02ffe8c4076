package notebook

import (
	"bytes"
	"encoding/json"
	"errors"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"
)

const turns = 5

// whole counts the lines that survive when only the first n bytes of data do.
// A last line that lacks nothing but its newline survives.
func whole(data []byte, n int) int {
	lines := bytes.Count(data[:n], []byte("\n"))
	if n < len(data) && data[n] == '\n' {
		lines++
	}
	return lines
}

func TestTruncatedAtEveryByte(t *testing.T) {
	dir := t.TempDir()
	path := fill(t, dir, "p", turns)
	data, _ := os.ReadFile(path)
	for n := 0; n <= len(data); n++ {
		if err := os.WriteFile(path, data[:n], 0o600); err != nil {
			t.Fatal(err)
		}
		b, r, err := Open(dir, "p")
		if err != nil {
			t.Fatalf("cut at %d: %v", n, err)
		}
		want := whole(data, n)
		check(t, b, want)
		lastEnd := bytes.LastIndexByte(data[:n], '\n') + 1
		cut := n - lastEnd
		if n < len(data) && data[n] == '\n' {
			cut = 0
		}
		if r.Cut != cut || r.SideCopy != "" || r.Newer || r.ReadOnly != nil || r.Entries != want {
			t.Fatalf("cut at %d: report %+v, want %d cut", n, r, cut)
		}
		// The next turn follows on without a scar.
		if err := b.Append(said(want+1), state(want+1), noon.Add(time.Duration(want+1)*time.Minute)); err != nil {
			t.Fatalf("cut at %d: %v", n, err)
		}
		b.Close()
		again, r, err := Open(dir, "p")
		if err != nil || r != (Report{Entries: want + 1}) {
			t.Fatalf("cut at %d, after a turn: %+v %v", n, r, err)
		}
		check(t, again, want+1)
		again.Close()
	}
}

func TestDamagedInTheMiddle(t *testing.T) {
	rnd := rand.New(rand.NewPCG(1, 2))
	for range 400 {
		dir := t.TempDir()
		path := fill(t, dir, "p", turns)
		data, _ := os.ReadFile(path)
		at := rnd.IntN(len(data))
		value := byte(rnd.IntN(256))
		if value == data[at] {
			value ^= 0x20
		}
		want := bytes.Count(data[:at], []byte("\n"))
		start := bytes.LastIndexByte(data[:at], '\n') + 1
		data[at] = value
		os.WriteFile(path, data, 0o600)
		b, r := mustOpen(t, dir, "p")
		check(t, b, want)
		switch {
		case r.Newer:
			// The version digit itself turned into a higher one.
			if at-start != len(`{"v":`) {
				t.Fatalf("byte %d made %q a newer format", at, data[start:])
			}
		case at == len(data)-1:
			// The very last newline: taken for a half-written line.
			if r.Cut != len(data)-start || r.SideCopy != "" {
				t.Fatalf("last byte: %+v", r)
			}
		default:
			side, err := os.ReadFile(r.SideCopy)
			if err != nil || !bytes.Equal(side, data[start:]) || r.Cut != 0 {
				t.Fatalf("byte %d: side copy %q of %d bytes, %v", at, r.SideCopy, len(side), err)
			}
		}
		b.Close()
	}
}

func TestDamageShapes(t *testing.T) {
	tests := []struct {
		name   string
		change func(lines []string) []string
		keep   int
		side   bool
		cut    bool
	}{
		{"line missing", func(l []string) []string { return append(l[:2:2], l[3:]...) }, 2, true, false},
		{"line twice", func(l []string) []string { return append(l[:2:2], l[1:]...) }, 2, true, false},
		{"lines swapped", func(l []string) []string { l[3], l[4] = l[4], l[3]; return l }, 3, true, false},
		{"blank line", func(l []string) []string { return append(append(l[:1:1], "\n"), l[1:]...) }, 1, true, false},
		{"zeros at the end", func(l []string) []string { return append(l, strings.Repeat("\x00", 4096)) }, 5, false, true},
		{"other text at the end", func(l []string) []string { return append(l, "shopping: milk") }, 5, true, false},
		{"all of it other text", func([]string) []string { return []string{"hello\n", "there\n"} }, 0, true, false},
		{"key order changed", func(l []string) []string {
			l[1] = strings.Replace(l[1], `"v":1,"seq":2`, `"seq":2,"v":1`, 1)
			return l
		}, 1, true, false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			dir := t.TempDir()
			path := fill(t, dir, "p", turns)
			data, _ := os.ReadFile(path)
			changed := strings.Join(tt.change(slices.Collect(strings.Lines(string(data)))), "")
			os.WriteFile(path, []byte(changed), 0o600)
			b, r := mustOpen(t, dir, "p")
			check(t, b, tt.keep)
			if (r.SideCopy != "") != tt.side || (r.Cut > 0) != tt.cut {
				t.Errorf("report %+v", r)
			}
		})
	}
}

func TestSideCopiesPileUp(t *testing.T) {
	dir := t.TempDir()
	path := fill(t, dir, "p", 1)
	seen := map[string]bool{}
	for range 3 {
		f, _ := os.OpenFile(path, os.O_APPEND|os.O_WRONLY, 0)
		f.WriteString("scrawl\n")
		f.Close()
		b, r := mustOpen(t, dir, "p")
		check(t, b, 1)
		b.Close()
		seen[r.SideCopy] = true
	}
	if len(seen) != 3 || seen[""] {
		t.Errorf("side copies %v", seen)
	}
	if list, _ := List(dir); len(list) != 1 {
		t.Errorf("side copies are listed as projects: %v", list)
	}
}

func TestNewerFormatUntouched(t *testing.T) {
	for _, line := range []string{
		`{"v":2,"seq":3,"what":"else"}` + "\n",
		`{"v":10,"seq":3,"cut sh`,
		`{"when":"now","v":2}` + "\n" + `{"when":"now","v":2}` + "\n",
	} {
		dir := t.TempDir()
		path := fill(t, dir, "p", 2)
		f, _ := os.OpenFile(path, os.O_APPEND|os.O_WRONLY, 0)
		f.WriteString(line)
		f.Close()
		before, _ := os.ReadFile(path)
		b, r := mustOpen(t, dir, "p")
		check(t, b, 2)
		if !r.Newer || !errors.Is(r.ReadOnly, ErrReadOnly) || !errors.Is(b.Append("x", state(1), noon), ErrReadOnly) {
			t.Errorf("%s: report %+v", line, r)
		}
		b.Close()
		after, _ := os.ReadFile(path)
		files, _ := filepath.Glob(filepath.Join(dir, "*"))
		if !bytes.Equal(before, after) || len(files) != 1 {
			t.Errorf("%s: the file was touched, or others made: %v", line, files)
		}
		if err := Copy(dir, "p", "q"); !errors.Is(err, ErrNewer) {
			t.Errorf("copy of a newer format: %v", err)
		}
	}
}

func FuzzRead(f *testing.F) {
	path := fill(f, f.TempDir(), "p", 2)
	data, _ := os.ReadFile(path)
	f.Add(data)
	f.Add([]byte(`{"v":2}`))
	f.Add([]byte(`{"v":1,"seq":1,"sum":"00000000"}`))
	f.Add(append(bytes.Clone(data), "\x00\x00\n{\"v\":1"...))
	f.Add(bytes.Replace(data, []byte("\n"), []byte("\r\n"), -1))
	f.Add(append(bytes.Clone(data), data...))
	f.Fuzz(func(t *testing.T, data []byte) {
		r := read(data)
		if r.good+len(r.bad) != len(data) {
			t.Fatalf("%d good and %d bad of %d bytes", r.good, len(r.bad), len(data))
		}
		// What was believed is believed again, alone.
		again := read(data[:r.good])
		if again.bad != nil || len(again.entries) != len(r.entries) {
			t.Fatalf("the good part does not read back")
		}
		for i, e := range r.entries {
			if e.Seq != i+1 || !json.Valid(e.State) {
				t.Fatalf("entry %d is number %d, its state %q", i+1, e.Seq, e.State)
			}
		}
	})
}

// TestReplacedUnderneath: what is to be cut off is cut from our file or not at all.
func TestReplacedUnderneath(t *testing.T) {
	dir := t.TempDir()
	path := fill(t, dir, "p", 2)
	b, _ := mustOpen(t, dir, "p")
	b.settled = false
	if err := os.Rename(path, path+".away"); err != nil {
		t.Skip("an open file cannot be moved here")
	}
	other := strings.Repeat("somebody else's\n", 100)
	if err := os.WriteFile(path, []byte(other), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := b.Append(said(3), state(3), noon); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("append to a replaced notebook: %v", err)
	}
	if got, _ := os.ReadFile(path); string(got) != other {
		t.Error("the other file was changed")
	}
}
