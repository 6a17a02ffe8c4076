package rules

import (
	"errors"
	"maps"
	"reflect"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"foldrow/engine"
)

func TestReadCards(t *testing.T) {
	tests := []struct {
		name, src string
		want      []Card
	}{
		{"empty", "", nil},
		{"only a note", "A note.\n## not a section\nx: y\n", nil},
		{"fields alone", "# a\nx: 1\ny: 2", []Card{
			{ID: "a", Line: 1, Fields: map[string]string{"x": "1", "y": "2"}}}},
		{"a long value", "note\n\n# a\nx: one ;\n  two ;\n    three\ny:\n\ntext", []Card{
			{ID: "a", Line: 3, Fields: map[string]string{"x": "one ; two ; three", "y": ""}, Text: "text"}}},
		{"text and sections", "# a\n\nfirst: not a field\n\nsecond\n\n## why\nbecause\n\nso\n## usual\nthis\n\n# b\n## why\nno\n", []Card{
			{ID: "a", Line: 1, Fields: map[string]string{}, Text: "first: not a field\n\nsecond",
				Sections: map[string]string{"why": "because\n\nso", "usual": "this"}},
			{ID: "b", Line: 14, Fields: map[string]string{}, Sections: map[string]string{"why": "no"}}}},
		{"foreign line ends", "# a\r\nx: 1\r\n  2\r\n\r\ntext\r\n", []Card{
			{ID: "a", Line: 1, Fields: map[string]string{"x": "1 2"}, Text: "text"}}},
		{"value with a colon", "# a-b\nwhen: x: y\n", []Card{
			{ID: "a-b", Line: 1, Fields: map[string]string{"when": "x: y"}}}},
	}
	for _, tt := range tests {
		bad := &faults{}
		got := readCards("f", tt.src, bad)
		for i := range tt.want {
			tt.want[i].File = "f"
		}
		if !reflect.DeepEqual(got, tt.want) {
			t.Errorf("%s:\n got %#v\nwant %#v", tt.name, got, tt.want)
		}
		if err := bad.err(); err != nil {
			t.Errorf("%s: %v", tt.name, err)
		}
	}
}

func TestList(t *testing.T) {
	c := Card{Fields: map[string]string{"words": "one ; two  ;  three;four", "none": ""}}
	if got := c.List("words"); !reflect.DeepEqual(got, []string{"one", "two", "three;four"}) {
		t.Errorf("words are %q", got)
	}
	if c.List("none") != nil || c.List("absent") != nil {
		t.Error("an empty field is no list")
	}
}

func TestDecimal(t *testing.T) {
	for s, want := range map[string]string{
		"0": "0", "12": "12", "4.5": "9/2", "-0.25": "-1/4", "46.0637": "460637/10000", "0.70": "7/10",
	} {
		if n, ok := decimal(s); !ok || n.String() != want {
			t.Errorf("decimal(%q) = %s, %v; want %s", s, n, ok, want)
		}
	}
	for _, s := range []string{"", "-", ".", "1.", ".5", "1.2.3", "1e3", "1/2", " 1", "+1", "12345678901234567"} {
		if n, ok := decimal(s); ok {
			t.Errorf("decimal(%q) = %s", s, n)
		}
	}
}

// Whatever a file holds, reading it ends, and no card begins outside it.
func FuzzReadCards(f *testing.F) {
	f.Add("# a\nx: 1\n  2\n\ntext\n## s\nmore\n")
	f.Add("##\n# \n  x\n:\n# a\n  y")
	f.Fuzz(func(t *testing.T, src string) {
		cards := readCards("f", src, &faults{})
		last := 0
		for _, c := range cards {
			if c.Line <= last || c.Line > strings.Count(src, "\n")+1 {
				t.Fatalf("card %q at line %d after %d", c.ID, c.Line, last)
			}
			last = c.Line
		}
	})
}

// Whatever a table holds, reading it ends, every row has all its columns and
// stands where it says, and what is wrong is told with a line of the file.
func FuzzReadTable(f *testing.F) {
	f.Add("# note\na,b\n1,2\n\n3,x\n")
	f.Add("a,a\n1,2\n,\r\n1\n")
	f.Add(",\n-,1.5.2\n")
	f.Fuzz(func(t *testing.T, src string) {
		bad := &faults{}
		lines := strings.Count(src, "\n") + 1
		last := 0
		readTable(fstest.MapFS{"tables/f.csv": {Data: []byte(src)}}, "f.csv", bad, func(r row) {
			if r.line <= last || r.line > lines {
				t.Fatalf("row at line %d after %d of %d", r.line, last, lines)
			}
			last = r.line
			for name, i := range r.t.column {
				if i >= len(r.values) || r.text(name) != r.values[i] {
					t.Fatalf("column %q of line %d", name, r.line)
				}
				r.optional(name)
			}
		})
		var list Errors
		if errors.As(bad.err(), &list) {
			for _, e := range list {
				if e.Line < 0 || e.Line > lines || e.Problem == "" {
					t.Fatalf("fault %+v in %d lines", e, lines)
				}
			}
		}
	})
}

// Whatever stands in the files of the book, loading it ends with a book or
// with what is wrong, never with a fault of ours.
func FuzzLoad(f *testing.F) {
	fsys := little(f)
	var names []string
	for name := range fsys {
		names = append(names, name)
	}
	slices.Sort(names)
	for i := range names {
		f.Add(uint(i), uint(200), "# a\nx: 1\n")
		f.Add(uint(i), uint(900), ",,,\n")
	}
	f.Fuzz(func(t *testing.T, file, at uint, text string) {
		name := names[file%uint(len(names))]
		data := fsys[name].Data
		cut := at % uint(len(data)+1)
		broken := maps.Clone(fsys)
		broken[name] = &fstest.MapFile{Data: slices.Concat(data[:cut], []byte(text), data[cut:])}
		book, err := LoadFS(broken)
		var list Errors
		if book == nil || err != nil && !errors.As(err, &list) {
			t.Fatalf("%v", err)
		}
		for _, k := range engine.InputKeys() {
			if c, ok := book.Key(k); ok && c.HasSpan && c.Possible[1].Less(c.Possible[0]) && err == nil {
				t.Fatalf("the span of %s is upside down and nobody says so", k)
			}
		}
	})
}
