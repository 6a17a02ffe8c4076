package main

import (
	"os"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/charmbracelet/x/ansi"
)

func mustRender(t testing.TB, r *renderer, md string, width int) string {
	t.Helper()
	s, err := r.render(md, width, width)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func mustRenderer(t testing.TB, plain, read bool) *renderer {
	t.Helper()
	r, err := newRenderer(plain, read)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// samplePage holds every kind of block and of number that a reply has.
func samplePage(t testing.TB) string {
	t.Helper()
	b, err := os.ReadFile("testdata/page.md")
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// figures are the numbers of the sample with their units: each must stand on
// one line, whole, at any width.
var figures = []string{
	"40.25 cm", "15 1/2 in", "2-1/2 in", "3 x 5", "3,5 cm", "−3.75 cm", "97 stitches", "12+1", "1 1/2 in",
	"60–66 cm", "16½ in", "0.70", "L46", "28 stitches", "10 cm", "2 × 3", "100 %", "1,250 m", "15½ in",
}

func TestFiguresStayWhole(t *testing.T) {
	md := samplePage(t)
	for _, mode := range []struct{ plain, read bool }{{false, false}, {true, false}, {true, true}} {
		r := mustRenderer(t, mode.plain, mode.read)
		unbroken := ansi.Strip(mustRender(t, r, md, 10_000))
		for width := minWidth; width <= 200; width++ {
			text := ansi.Strip(mustRender(t, r, md, width))
			for _, f := range figures {
				want := strings.Count(unbroken, f)
				if got := strings.Count(text, f); got != want || want == 0 {
					t.Fatalf("width %d, %+v: %q stands whole %d times of %d\n%s", width, mode, f, got, want, text)
				}
			}
		}
	}
}

func TestLinesFitTheWindow(t *testing.T) {
	md := samplePage(t)
	for _, mode := range []struct{ plain, read bool }{{false, false}, {true, false}, {true, true}} {
		r := mustRenderer(t, mode.plain, mode.read)
		for width := minWidth; width <= 200; width++ {
			text := mustRender(t, r, md, width)
			for _, line := range strings.Split(text, "\n") {
				if columns(line) > width {
					t.Fatalf("width %d, %+v: %d columns: %q", width, mode, columns(line), line)
				}
				if bare := ansi.Strip(line); bare != strings.TrimRight(bare, " \t") {
					t.Fatalf("width %d, %+v: space at the end of %q", width, mode, line)
				}
			}
			if strings.Contains(text, "\n\n\n") || strings.HasPrefix(text, "\n") || !strings.HasSuffix(text, "\n") || strings.HasSuffix(text, "\n\n") {
				t.Fatalf("width %d, %+v: empty lines in %q", width, mode, text)
			}
		}
	}
}

// TestNoWordLost: wrapping changes nothing but spaces and line ends.
func TestNoWordLost(t *testing.T) {
	md := "Some **bold words that go on and on** and *say this or that* and (taking 16 as 16 in), then `a b c` at last.\n\n" +
		"- an item of many words, with a **bold run of words** in it\n  - one below it of many words as well\n"
	r := mustRenderer(t, false, false)
	words := func(width int) string {
		return strings.Join(strings.Fields(ansi.Strip(mustRender(t, r, md, width))), " ")
	}
	want := words(10_000)
	for width := minWidth; width <= 120; width++ {
		if got := words(width); got != want {
			t.Fatalf("width %d:\n%s\nwant\n%s", width, got, want)
		}
	}
}

func TestRender(t *testing.T) {
	tests := []struct {
		name, md    string
		width       int
		plain, read bool
		want        string
	}{
		{"hanging indent", "- one two three four five six\n- seven", 20, true, false,
			"• one two three four\n  five six\n• seven\n"},
		{"numbered steps", "9. one two three four\n10. five six seven eight", 20, true, false,
			"9. one two three\n   four\n10. five six seven\n    eight\n"},
		{"quote", "> Caution: steam burns, keep off", 20, true, false,
			"│ Caution: steam\n│ burns, keep off\n"},
		{"quote read aloud", "> Caution: steam burns, keep off", 20, true, true,
			"  Caution: steam\n  burns, keep off\n"},
		{"words to type", "say *next* or `2 * 3`, not 3 * 4 * 5 or \\*this\\*", 80, true, false,
			"say \"next\" or 2 * 3, not 3 * 4 * 5 or *this*\n"},
		{"styles", "# A\n\n**b** *c* d", 80, false, false,
			"\x1b[4;1mA\x1b[0m\n\x1b[1mb\x1b[0m \x1b[35;4mc\x1b[0m d\n"},
		{"style over a break", "**one two three four five**", 20, false, false,
			"\x1b[1mone two three four\x1b[0m\n\x1b[1mfive\x1b[0m\n"},
		{"table", "| row | dial |\n|---:|:---|\n| 1 | 5 |\n| 12 | 3.5 |", 80, true, false,
			"row  dial\n---  ----\n  1  5\n 12  3.5\n"},
		{"table too wide", "| row | what to do |\n|---|---|\n| 1 | knit it and wait for it |", 24, true, false,
			"• row 1: what to do knit\n  it and wait for it\n"},
		{"table read aloud", "| row | dial |\n|---|---|\n| 1 | 5 |\n| 2 | |", 80, true, true,
			"- row 1: dial 5\n- row 2\n"},
		{"cell marks", "| a | b |\n|---|---|\n| *x* | 1 \\| 2 |", 80, true, false,
			"a    b\n---  -----\n\"x\"  1 | 2\n"},
		{"picture", "```\na   b\n  c\n```", 80, false, false, "a   b\n  c\n"},
		{"picture folded", "```picture\nxx xx xx xx xx xx xx xx\n1  2  3  4  5  6  7  8\n```", 20, true, false,
			"xx xx xx xx xx xx xx\n1  2  3  4  5  6  7\n\n xx\n 8\n"},
		{"lists in a table read aloud", "| dial | outer rows | inner rows |\n|---|---|---|\n| 5 | 1, 2 | 3, 4 |", 80, true, true,
			"- dial 5: outer rows 1, 2; inner rows 3, 4\n"},
		{"words in a table read aloud", "| stage | stitches |\n|---|---|\n| 4 | 144 |\n| neck | 110 |", 80, true, true,
			"- stage 4: stitches 144\n- neck: stitches 110\n"},
		{"picture read aloud", "before\n\n```picture\nxx\n```\n\nafter", 80, true, true, "before\n\nafter\n"},
		{"picture cut, its labels said again", "```picture 4\n    123 456 789 12345\nup  x.x .x. x.x .x.x.\n```", 20, true, false,
			"    123 456 789\nup  x.x .x. x.x\n\n    12345\nup  .x.x.\n"},
		{"signs that stand out", "```picture 3 v\nv  v.vv\n```", 80, false, false, "v  \x1b[35;1mv\x1b[0m.\x1b[35;1mvv\x1b[0m\n"},
		{"signs without colour", "```picture 3 v\nv  v.vv\n```", 80, true, false, "v  v.vv\n"},
		{"legend", "```picture\nx\n```\n\n```legend\nx is a stitch that was dropped\n```\n\nafter", 20, true, false,
			"x\n\nx is a stitch that\nwas dropped\n\nafter\n"},
		{"legend read aloud", "before\n\n```picture\nx\n```\n\n```legend\nx is it\n```\n\nafter", 80, true, true, "before\n\nafter\n"},
		{"picture left open", "```\nxx", 80, true, false, "xx\n"},
		{"two pictures and a table", "```\np\n```\n\n| a |\n|---|\n| 1 |\n\n```\nq\n```", 80, true, false,
			"p\n\na\n-\n1\n\nq\n"},
		{"entities", "5 &amp; 6 &lt; 7 &#27;[31m &#x9b;", 80, true, false, "5 & 6 < 7 &#27;[31m &#x9b;\n"},
		{"title without colour", "# The neckband\n\ntext", 80, true, false, "The neckband\n============\ntext\n"},
		{"title read aloud", "# The neckband\n\ntext", 80, true, true, "The neckband\n\ntext\n"},
		{"caution", "**Caution:** hot\n\n- Caution: sharp", 80, false, false,
			"\x1b[31;1mCaution:\x1b[0m hot\n\n• \x1b[31;1mCaution:\x1b[0m sharp\n"},
		{"caution without colour", "**Caution:** hot", 80, true, false, "Caution: hot\n"},
		{"escapes", "a\x1b[31mb\x07c\u009bd\u202ee\ue000f\ue002", 80, false, false, "a[31mbcdef\n"},
		{"long word", strings.Repeat("o", 45), 20, true, false,
			strings.Repeat("o", 20) + "\n" + strings.Repeat("o", 20) + "\nooooo\n"},
		{"nothing", "", 80, true, false, "\n"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := mustRenderer(t, tt.plain, tt.read)
			if got := mustRender(t, r, tt.md, tt.width); got != tt.want {
				t.Errorf("got\n%q\nwant\n%q", got, tt.want)
			}
		})
	}
}

// FuzzRender: nothing but our own style reaches the terminal, whatever stands
// in the Markdown.
func FuzzRender(f *testing.F) {
	for _, s := range []string{"\x1b]52;c;eA==\x07", "&#27;[31m", "\u009b31m", "a\x1bc", "| \x1b |\n|-|\n| &#x1b; |", "```\n\x1b[2J\n```", "&NewLine;&Tab;\x7f", "```picture 99999999 v \x1b u\nv\x1b[31mu\n```", "```picture -3 vv\nvé\n```\n```legend\n\x1b\n```", "\ue000\ue001|", "***a**b*"} {
		f.Add(s, 40)
	}
	plain, styled := mustRenderer(f, true, false), mustRenderer(f, false, false)
	f.Fuzz(func(t *testing.T, md string, width int) {
		width = minWidth + abs(width)%180
		for _, r := range []*renderer{plain, styled} {
			s := mustRender(t, r, md, width)
			if !utf8.ValidString(s) {
				t.Fatalf("%q gives bytes that are no text: %q", md, s)
			}
			left := s
			if r == styled {
				left = withoutStyle(s)
			}
			if left != clean(left) || strings.ContainsAny(left, "\x1b\t\r") {
				t.Fatalf("%q gives %q", md, s)
			}
		}
	})
}

func abs(i int) int {
	if i < 0 {
		return -(i + 1)
	}
	return i
}

func withoutStyle(s string) string {
	for _, on := range []string{"0", "1", "4", "4;1", "35;4", "35;4;1", "35;1", "31;1"} {
		s = strings.ReplaceAll(s, "\x1b["+on+"m", "")
	}
	return s
}

func BenchmarkRender(b *testing.B) {
	md := samplePage(b)
	r := mustRenderer(b, false, false)
	b.Run("page", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			mustRender(b, r, md, 80)
		}
	})
	b.Run("library alone", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if _, err := r.term.Render(md); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("new", func(b *testing.B) {
		for b.Loop() {
			mustRenderer(b, false, false)
		}
	})
}
