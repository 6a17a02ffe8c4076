package listen

import (
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// places are where a line may be heard: every open question, at the machine
// and not, with a doubtful value on the table and not.
func places() []Context {
	var all []Context
	for _, open := range []string{"", "garment", "gauge", "neck", "rib", "depth", "keep"} {
		for _, making := range []bool{false, true} {
			for _, confirm := range []bool{false, true} {
				all = append(all, Context{Open: open, Unit: "cm", Making: making, Topic: engine.Neck, Confirm: confirm})
			}
		}
	}
	return append(all, Context{Unit: "in"}, Context{})
}

// FuzzRead: whatever the line and wherever it is heard, reading ends soon,
// says the same twice, and what it gives holds nothing that a terminal obeys
// and no key or number that there cannot be.
func FuzzRead(f *testing.F) {
	book, err := rules.Load()
	if err != nil {
		f.Fatal(err)
	}
	x, err := NewLexicon(book)
	if err != nil {
		f.Fatal(err)
	}
	for i, line := range seeds(f) {
		f.Add(uint(i), line)
	}
	where := places()
	f.Fuzz(func(t *testing.T, place uint, line string) {
		ctx := where[place%uint(len(where))]
		m := x.Read(line, ctx)
		// a busy machine is slow now and then, a loop each time
		best := time.Hour
		for try := 0; try < 3 && best > time.Second; try++ {
			start := time.Now()
			x.Read(line, ctx)
			best = min(best, time.Since(start))
		}
		if best > time.Second {
			t.Fatalf("%v for %d bytes", best, len(line))
		}
		if !reflect.DeepEqual(m, x.Read(line, ctx)) {
			t.Fatalf("%q means one thing and then another", line)
		}
		harmless(t, line, m)
	})
}

// TestLettersThatChangeLength: letters whose small form is longer or shorter in
// bytes than the capital shift nothing that is found behind them.
func TestLettersThatChangeLength(t *testing.T) {
	book, err := rules.Load()
	if err != nil {
		t.Fatal(err)
	}
	x, err := NewLexicon(book)
	if err != nil {
		t.Fatal(err)
	}
	where := places()
	for i, said := range append(seeds(t), "rib two and two", "one-and-one or two-and-two ribs", "8 holes and 4 holes") {
		letter := []string{"Ⱥ", "İ", "\u212a", "ẞ"}[i%4]
		line := strings.Repeat(letter, 30) + " " + strings.ReplaceAll(said, " a", " "+letter+"a")
		harmless(t, line, x.Read(line, where[i%len(where)]))
		harmless(t, line, x.Read(line, Context{Open: "rib", Unit: "in", Holes: true}))
	}
}

func harmless(t *testing.T, line string, m Meaning) {
	t.Helper()
	texts := []string{m.Name, m.Name2, m.Needle, m.Card, m.Other, m.Problem.Read}
	for _, fix := range m.Fixes {
		texts = append(texts, fix.From, fix.To)
	}
	if strings.ContainsFunc(strings.Join(texts, ""), func(r rune) bool { return unicode.IsControl(r) || unicode.Is(unicode.Cf, r) }) {
		t.Fatalf("%q leaves what a terminal obeys in %+q", line, texts)
	}
	for _, s := range m.Sets {
		switch {
		case s.Key == engine.KeyRib && !s.Rib.IsSet(), s.Key == engine.KeyGarment && s.Garment == "":
			t.Fatalf("%q sets %s to nothing", line, s.Key)
		case !slices.Contains(engine.InputKeys(), s.Key) && (m.Kind == Values || m.Kind == WhatIf):
			t.Fatalf("%q sets %q, which is no input", line, s.Key)
		case s.Unit == quantity.Percent && !s.Times && !s.Relative && s.Key == engine.Neck:
			t.Fatalf("%q sets the neck to a percentage", line)
		}
	}
	if (m.Kind == Values || m.Kind == WhatIf) && m.Topic == "" && len(m.Sets) == 0 {
		t.Fatalf("%q has kind %s and sets nothing", line, m.Kind)
	}
}

// seeds are the lines of the tables in testdata.
func seeds(t testing.TB) []string {
	var lines []string
	for _, name := range []string{"lines.txt", "lines-second.txt", "lines-third.txt"} {
		text, err := os.ReadFile("../../testdata/" + name)
		if err != nil {
			t.Fatal(err)
		}
		for row := range strings.Lines(string(text)) {
			if said, _, ok := strings.Cut(row, " | "); ok && !strings.HasPrefix(row, "#") {
				lines = append(lines, said)
			}
		}
	}
	return lines
}
