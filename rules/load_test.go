package rules

import (
	"errors"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"foldrow/engine"
)

// book is the little book: keys, results, ribs, sources and tables.
func book(t *testing.T) *Book {
	t.Helper()
	b, err := LoadFS(little(t))
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// little is a copy of the files the book cannot do without.
func little(t testing.TB) fstest.MapFS {
	t.Helper()
	m := fstest.MapFS{}
	copyFile := func(name string) {
		data, err := fs.ReadFile(files, name)
		if err != nil {
			t.Fatal(err)
		}
		m[name] = &fstest.MapFile{Data: data}
	}
	for _, name := range needed {
		copyFile(name + ".md")
	}
	tables, err := fs.Glob(files, "tables/*.csv")
	if err != nil || len(tables) == 0 {
		t.Fatal("no tables", err)
	}
	for _, name := range tables {
		copyFile(name)
	}
	return m
}

func TestLoadOrder(t *testing.T) {
	b := book(t)
	for i, k := range engine.InputKeys() {
		if b.Keys[i].Key != k {
			t.Errorf("key %d is %s, want %s", i, b.Keys[i].Key, k)
		}
		if card, ok := b.Key(k); !ok || card.Key != k {
			t.Errorf("Key(%s) = %s, %v", k, card.Key, ok)
		}
	}
	for i, k := range engine.ResultKeys() {
		if b.Results[i].Key != k {
			t.Errorf("result %d is %s, want %s", i, b.Results[i].Key, k)
		}
		if card, ok := b.Result(k); !ok || card.Key != k {
			t.Errorf("Result(%s) = %s, %v", k, card.Key, ok)
		}
	}
	if _, ok := b.Key("no_such"); ok {
		t.Error("Key finds what is not there")
	}
	if _, ok := b.Result("no_such"); ok {
		t.Error("Result finds what is not there")
	}
	if c, ok := b.Card("keys", "neck"); !ok || c.ID != "neck" || c.Line == 0 {
		t.Errorf("Card(keys, neck) = %+v, %v", c, ok)
	}
	if _, ok := b.Card("keys", "elbow"); ok || b.Cards("no-such-file") != nil {
		t.Error("Card or Cards finds what is not there")
	}
	if s, ok := b.Source("common practice"); !ok || s.Kind != CommonPractice {
		t.Errorf("common practice is %+v, %v", s, ok)
	}
}

// Each row breaks a sound little book in one place: old becomes new in file,
// and this is told of it, at the line of mark (0 where mark is empty).
func TestBrokenBooks(t *testing.T) {
	tests := []struct {
		name, file, old, new string
		problem              Problem
		card, mark           string
	}{
		{"card gone", "keys.md", "# ease\n", "# easiness\n", MissingCard, "ease", ""},
		{"card unknown", "keys.md", "# ease\n", "# easiness\n", UnknownKey, "easiness", "# easiness"},
		{"result gone", "results.md", "# loop_length\n", "# loop-size\n", MissingCard, "loop_length", ""},
		{"id twice", "sources.md", "# ansur2\n", "# cyc\n", DuplicateID, "cyc", "# cyc\nwhere: 2012"},
		{"bad id", "sources.md", "# ansur2\n", "# ANSUR 2\n", BadCard, "ANSUR 2", "# ANSUR 2"},
		{"bad field", "keys.md", "label: neck ease\n", "neck ease\n", BadCard, "ease", "neck ease\necho"},
		{"field twice", "keys.md", "label: neck ease\n", "label: neck ease\nlabel: ease\n", BadCard, "ease", "label: ease\n"},
		{"section twice", "keys.md", "## usual\n2 cm makes", "## measure\n2 cm makes", BadCard, "ease", "## measure\n2 cm makes"},
		{"section gone", "keys.md", "## usual\n2 cm makes", "## custom\n2 cm makes", MissingField, "ease", "# ease"},
		{"no words", "keys.md", "words: head ; heads", "terms: head ; heads", MissingField, "head", "# head\n"},
		{"no question", "keys.md", "question: How deep", "asks: How deep", MissingField, "depth", "# depth\n"},
		{"no dimension", "keys.md", "dimension: dial\ndefault", "dimension: dail\ndefault", MissingField, "dial_min", "# dial_min"},
		{"source unknown", "keys.md", "source: trade-5\n", "source: trade-555\n", UnknownSource, "dial_min", "# dial_min"},
		{"no number", "keys.md", "usual: 34 to 60", "usual: 34 to sixty", BadNumber, "neck", "# neck\n"},
		{"no span", "keys.md", "usual: 34 to 60", "usual: 34-60", BadNumber, "neck", "# neck\n"},
		{"span upside down", "keys.md", "usual: 34 to 60", "usual: 60 to 34", BadSpan, "neck", "# neck\n"},
		{"usual not possible", "keys.md", "usual: 34 to 60", "usual: 34 to 91", BadSpan, "neck", "# neck\n"},
		{"default not possible", "keys.md", "default: 150", "default: 500", BadSpan, "bed_needles", "# bed_needles"},
		{"word twice", "keys.md", "words: head ; heads", "words: head ; neck", DuplicateWord, "head", "# head\n"},
		{"word not plain", "keys.md", "words: head ; heads", "words: head ; Heads", BadWord, "head", "# head\n"},
		{"draw out of span", "ribs.md", "draw: 0.70\ndraw-span: 0.50 to 0.75\nstretch: 1.96", "draw: 0.80\ndraw-span: 0.50 to 0.75\nstretch: 1.96", BadSpan, "1x1", "# 1x1"},
		{"no rib", "ribs.md", "# 3x3\n", "# wide\n", UnknownKey, "wide", "# wide"},
		{"placeholder unknown", "results.md", "# loop_length\n", "# loop_length\nx: y\n\nIt is {loop}.\n\n# loops\n", UnknownKey, "loop_length", "# loop_length"},
		{"placeholder open", "keys.md", "This band needs {band_yarn_grams}.", "This band needs {band.", BadCard, "yarn_left", "# yarn_left"},
		{"kind unknown", "sources.md", "kind: dataset\nnote: 1,986", "kind: rumour\nnote: 1,986", MissingField, "ansur2", "# ansur2"},
		{"table short", "tables/ansur2.csv", "female,headcircumference,1986,", "female,headcircumference,", BadTable, "", "female,headcirc"},
		{"table no number", "tables/yoke-depths.csv", "trade-81,94,19", "trade-81,94,x", BadTable, "", "trade-81,94,x"},
		{"table column twice", "tables/yoke-depths.csv", "source,bust,depth", "source,bust,bust", BadTable, "", "source,bust,bust"},
		{"table column", "tables/yoke-depths.csv", "source,bust,depth", "source,bust,deep", BadTable, "", "trade-81,83"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			fsys := little(t)
			text := string(fsys[tt.file].Data)
			if strings.Count(text, tt.old) != 1 {
				t.Fatalf("%q stands %d times in %s", tt.old, strings.Count(text, tt.old), tt.file)
			}
			text = strings.Replace(text, tt.old, tt.new, 1)
			fsys[tt.file] = &fstest.MapFile{Data: []byte(text)}
			line := 0
			if tt.mark != "" {
				line = 1 + strings.Count(text[:strings.Index(text, tt.mark)], "\n")
			}
			_, err := LoadFS(fsys)
			var list Errors
			if !errors.As(err, &list) {
				t.Fatalf("error is %v", err)
			}
			for _, e := range list {
				if e.File == tt.file && e.Line == line && e.Problem == tt.problem && e.Card == tt.card {
					return
				}
			}
			t.Errorf("want %s at line %d, card %s; got\n%v", tt.problem, line, tt.card, err)
		})
	}
}

// The book built into the program is whole and without a fault.
func TestLoad(t *testing.T) {
	b, err := Load()
	if err != nil {
		t.Fatal(err)
	}
	if len(b.Keys) != len(engine.InputKeys()) || len(b.Results) != len(engine.ResultKeys()) {
		t.Errorf("%d keys, %d results", len(b.Keys), len(b.Results))
	}
}

func TestEmptyBook(t *testing.T) {
	_, err := LoadFS(fstest.MapFS{})
	var one *Error
	if !errors.As(err, &one) || one.Problem == "" || one.File == "" {
		t.Fatalf("error is %v", err)
	}
	if !strings.Contains(err.Error(), "ribs.md: file cannot be read") {
		t.Errorf("nothing is said of ribs.md:\n%v", err)
	}
}

func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		if _, err := Load(); err != nil {
			b.Fatal(err)
		}
	}
}

// A sentence that asks for a how-to names one that there is.
func TestSentenceNamesItsCard(t *testing.T) {
	fsys := little(t)
	fsys["sentences.md"] = &fstest.MapFile{Data: []byte("Sentences.\n\n# wish\nkind: howto\ncard: gone\nwords: make it stand up\n")}
	_, err := LoadFS(fsys)
	var list Errors
	if !errors.As(err, &list) || len(list) != 1 || list[0].File != "sentences.md" || list[0].Problem != MissingCard || list[0].Card != "wish" || list[0].Detail != "gone" {
		t.Errorf("%v", err)
	}
}
