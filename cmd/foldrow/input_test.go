package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"testing"
	"testing/iotest"
	"time"
	"unicode/utf8"

	"foldrow/dialog"
)

func TestPipe(t *testing.T) {
	long := strings.Repeat("x", maxLine)
	tests := []struct {
		name, in string
		want     []typed
	}{
		{"nothing", "", nil},
		{"lines", "a\n\nb\n", []typed{{text: "a"}, {}, {text: "b"}}},
		{"no newline at the end", "a\nb", []typed{{text: "a"}, {text: "b"}}},
		{"other line ends", "a\r\nb\r\r\n", []typed{{text: "a"}, {text: "b"}}},
		{"keys are text", "\x1b[Aa\x15b\x04c\n", []typed{{text: " [Aa b c"}}},
		{"zeros", "2\x008\n", []typed{{text: "2 8"}}},
		{"not text", "2\xff8 \xc3(\n", []typed{{text: "2\ufffd8 \ufffd("}}},
		{"invisible", "\ufeffneck\u200b 4\u00ad2\u202e\n", []typed{{text: "neck 42"}}},
		{"two bytes a character", "\xff\xfe2\x00x\x002\x00\r\x00\n\x00\xbd\x00", []typed{{text: "2x2"}, {text: "½"}}},
		{"the other byte first", "\xfe\xff\x002\x00\n\x00\xbd", []typed{{text: "2"}, {text: "½"}}},
		{"half of that mark", "\xff2\n", []typed{{text: "\ufffd2"}}},
		{"nothing but that mark", "\xff\xfe", nil},
		{"Ctrl-Z at the end", "a\r\n\x1a", []typed{{text: "a"}}},
		{"Ctrl-Z on a line", "\x1a\n4\x1a2", []typed{{text: " "}, {text: "4 2"}}},
		{"just short enough", long[1:] + "\nb\n", []typed{{text: long[1:]}, {text: "b"}}},
		{"too long", long + "yyyy\nb\n", []typed{{text: long, cut: 5}, {text: "b"}}},
		{"too long at the end", long + long + "zz", []typed{{text: long, cut: maxLine + 2}}},
		{"cut in a letter", long[2:] + "xéy\nb", []typed{{text: long[2:] + "x", cut: 3}, {text: "b"}}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			for _, in := range []io.Reader{strings.NewReader(tt.in), iotest.HalfReader(strings.NewReader(tt.in))} {
				got, err := readLines(newPipe(in))
				if !errors.Is(err, io.EOF) || !slices.Equal(got, tt.want) {
					t.Errorf("got %.300s, %v", fmt.Sprint(got), err)
				}
			}
		})
	}
}

func TestPipeOtherError(t *testing.T) {
	bad := errors.New("no such luck")
	got, err := readLines(newPipe(io.MultiReader(strings.NewReader("a\n"), iotest.ErrReader(bad))))
	if !errors.Is(err, bad) || len(got) != 1 {
		t.Errorf("%v, %v", got, err)
	}
}

func readLines(p *pipe) ([]typed, error) {
	var got []typed
	for {
		line, err := p.next()
		if err != nil {
			return got, err
		}
		got = append(got, line)
	}
}

// FuzzTidy: a line is text, safe to show, and stays as it is the second time.
func FuzzTidy(f *testing.F) {
	f.Add("a\x00\x1b[31m\u009b\xff\u202e")
	f.Fuzz(func(t *testing.T, s string) {
		got := tidy(s)
		if !utf8.ValidString(got) || strings.ContainsFunc(got, obeyed) || tidy(got) != got {
			t.Fatalf("%q gives %q", s, got)
		}
	})
}

// FuzzJSONSafe: a JSON line keeps its meaning and shows nothing that a terminal
// obeys.
func FuzzJSONSafe(f *testing.F) {
	f.Add("a\x7f\u009b\U000e0001\u2028")
	f.Fuzz(func(t *testing.T, s string) {
		var b bytes.Buffer
		r := sampleReply(s)
		if err := writeJSON(&b, r); err != nil {
			t.Fatal(err)
		}
		line := strings.TrimSuffix(b.String(), "\n")
		if strings.ContainsFunc(line, obeyed) || strings.Contains(line, "\n") {
			t.Fatalf("%q gives %q", s, line)
		}
		if got := parseReply(t, line).Said; got != strings.ToValidUTF8(s, "\ufffd") && utf8.ValidString(s) {
			t.Fatalf("%q comes back as %q", s, got)
		}
	})
}

func TestTap(t *testing.T) {
	tests := []struct {
		name, in, want string
		more           []bool // for each line end: are others to come?
	}{
		{"text", "ab½c\r", "ab½c\r", []bool{false}},
		{"zero, Ctrl-R, Ctrl-S", "a\x00bc\x12d\x13e", "abcde", nil},
		{"other control bytes", "a\x1c\x1d\x1e\x1f\x0f\x11\x16\x18\x19b", "a\x19b", nil},
		{"editing keys stay", "\x01\x05\x7f\x08\t\x1a\x1b[D", "\x01\x05\x7f\x08\t\x1a\x1b[D", nil},
		{"Ctrl-D typed ahead", "a\r\x00", "a\r\x04", []bool{false}},
		{"pasted pairs", "a\r\nb\r\nc\r\n", "a\rb\rc\r", []bool{true, true, false}},
		{"pasted newlines", "a\nb\n", "a\nb\n", []bool{true, false}},
		{"the last line unfinished", "a\nb\nc", "a\nb\nc", []bool{true, true}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			tp := &tap{in: strings.NewReader(tt.in)}
			p := make([]byte, 4096)
			n, err := tp.Read(p)
			if err != nil || string(p[:n]) != tt.want {
				t.Fatalf("%q, %v", p[:n], err)
			}
			for i, more := range tt.more {
				if got, ahead := tp.line(); got != more || ahead {
					t.Errorf("line %d: more is %v, ahead %v", i, got, ahead)
				}
			}
		})
	}
}

func TestTapEarly(t *testing.T) {
	for _, tt := range []struct {
		since time.Duration
		want  string
	}{{0, "\x04"}, {time.Hour, ""}} {
		tp := &tap{in: strings.NewReader("\x00")}
		tp.prompted(time.Now().Add(-tt.since))
		if _, ahead := tp.line(); ahead {
			t.Error("ahead before anything was read")
		}
		if got, err := io.ReadAll(tp); err != nil || string(got) != tt.want {
			t.Errorf("NUL %v after the prompt: %q, %v", tt.since, got, err)
		}
	}
}

func TestTapAcrossReads(t *testing.T) {
	tp := &tap{in: iotest.OneByteReader(strings.NewReader("a\x00\r\nb"))}
	got, err := io.ReadAll(tp)
	if err != nil || string(got) != "a\rb" {
		t.Errorf("%q, %v", got, err)
	}
}

func TestCompleter(t *testing.T) {
	o := dialog.Offers{
		Now:   []string{"pullover", "cardigan", "why"},
		Fit:   []string{"pullover", "cardigan", "why"},
		Lines: []string{"what if ", "what is usual", "a word far too long for the window", "2 seam stitches"},
		Parts: []string{"needle pitch", "gråt", "2x2", "2x1", "cardigan"},
	}
	tests := []struct {
		typed string
		want  string
		shown int
	}{
		{"ca", "rdigan", 2},
		{"CA", "rdigan", 2},
		{"a ca", "rdigan", 2},
		{"cardigan", "", 0},
		{"wh", "y", 2},
		{"wha", "t if |t is usual", 3},
		{"what i", "f |s usual", 6},
		{"so what i", "", 0}, // a line begins where it begins
		{"a word", "", 0},
		{"gr", "", 0},
		{"½ ca", "", 0},
		{"zzz", "", 0},
		{"what if the needle p", "itch", 8},
		{"what if 2", "x1|x2", 1},
		{"2", " seam stitches", 1},
		{"", "cardigan|pullover|why", 0},
		{"a ", "", 0},
	}
	c := completer{func() dialog.Offers { return o }, func() int { return minWidth }}
	for _, tt := range tests {
		got, shown := c.Do([]rune(tt.typed), len([]rune(tt.typed)))
		var parts []string
		for _, r := range got {
			parts = append(parts, string(r))
		}
		if strings.Join(parts, "|") != tt.want || shown != tt.shown {
			t.Errorf("%q: %q, %d", tt.typed, parts, shown)
		}
	}
	for i := range 3 * mostOffers {
		o.Fit = append(o.Fit, fmt.Sprint("row ", i))
	}
	if got, _ := c.Do([]rune("row"), 3); len(got) != mostOffers {
		t.Errorf("%d offers", len(got))
	}
}

// TestCompletionAtThePlan: what is offered there begins like lines that are of use,
// and is no more than the window holds beside what was said.
func TestCompletionAtThePlan(t *testing.T) {
	c := newCourt(t)
	do := completer{func() dialog.Offers { return c.talk.Completions(c.states["plan"]) }, func() int { return 80 }}
	for typed, want := range map[string]string{
		"what if 2":  "x1|x2",
		"when":       "",
		"show the":   " band from the side| needles| tension",
		"show the y": "oke",
		"show the c": "hart",
		"":           "compare |help|how do I |what if |why ",
	} {
		got, _ := do.Do([]rune(typed), len(typed))
		var parts []string
		for _, r := range got {
			parts = append(parts, string(r))
		}
		if strings.Join(parts, "|") != want {
			t.Errorf("%q: %q", typed, parts)
		}
	}
}

func TestCompleterFault(t *testing.T) {
	c := completer{func() dialog.Offers { panic("fault") }, func() int { return 80 }}
	if got, n := c.Do([]rune("ca"), 2); got != nil || n != 0 {
		t.Errorf("%v, %d", got, n)
	}
}

func TestPainter(t *testing.T) {
	ten := func() int { return 10 }
	tests := []struct {
		line, want string
		edge       func() int
	}{
		{"a½\u009b\u202eb\n", "a½??b\n", nil},
		{"12345678", "12345678", nil}, // with the prompt a row of ten
		{"1234567", "1234567", ten},
		{"12345678", "12345678 \b", ten},
		{"123456789", "123456789", ten},
		{"12345678\n", "12345678\n", ten},
		{"123456字", "123456字 \b", ten},
		{"12345678abcdefghij", "12345678abcdefghij \b", ten},
		{"", "", ten},
	}
	for _, tt := range tests {
		if got := string(painter{edge: tt.edge}.Paint([]rune(tt.line), 0)); got != tt.want {
			t.Errorf("%q: %q, want %q", tt.line, got, tt.want)
		}
	}
}

// TestTapBusy: whatever the machine does meanwhile, keys that wait when the
// reading begins came before the prompt, and keys it had to wait for did not.
func TestTapBusy(t *testing.T) {
	shown := time.Unix(1000, 0)
	tp := &tap{}
	tp.prompted(shown)
	for _, c := range []struct {
		began, ended time.Duration // after the prompt
		early        bool
	}{
		{0, 10 * time.Millisecond, true},
		{300 * time.Millisecond, 301 * time.Millisecond, true},
		{0, 300 * time.Millisecond, false},
		{100 * time.Millisecond, 200 * time.Millisecond, false},
		{time.Hour, time.Hour, false},
	} {
		if got := tp.early(shown.Add(c.began), shown.Add(c.ended)); got != c.early {
			t.Errorf("read from %v to %v: early is %v", c.began, c.ended, got)
		}
	}
}
