package rules

import (
	"reflect"
	"strings"
	"testing"
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
