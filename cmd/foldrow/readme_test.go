package main

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the flags and the conversation of the README, and the screens, anew; read the difference before you keep it")

const readmePath = "../../README.md"

// cutMark stands in the README where the rest of a reply is left out.
const cutMark = "[...]"

// TestReadmeFlags: the README lists the flags in the words of the help. With
// -update the list is written anew.
func TestReadmeFlags(t *testing.T) {
	var list strings.Builder
	for _, f := range flagTable() {
		fmt.Fprintf(&list, "- `%s` %s\n", strings.TrimSpace("-"+f.name+" "+f.value), f.does)
	}
	holds(t, "<!-- flags -->\n", "<!-- end of flags -->", func(string) string { return list.String() })
}

// holds wants between open and end of the README what now makes of the text
// that stands there, or writes it.
func holds(t *testing.T, open, end string, now func(old string) string) {
	t.Helper()
	readme, err := os.ReadFile(readmePath)
	if err != nil {
		t.Fatal(err)
	}
	before, rest, ok := strings.Cut(string(readme), open)
	old, after, okEnd := strings.Cut(rest, end)
	if !ok || !okEnd {
		t.Fatalf("no %s in the README", open)
	}
	text := now(old)
	switch {
	case text == old:
	case !*update:
		t.Errorf("the README should say\n%s\nif this is meant: go test ./cmd/foldrow -run TestReadme -update", text)
	default:
		if err := os.WriteFile(readmePath, []byte(before+open+text+end+after), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// TestReadmeConversation says the lines of the README's conversation again.
// Each reply must be what stands there, whole or down to the cut. With -update
// the replies are written anew, cut after as many lines as before.
func TestReadmeConversation(t *testing.T) {
	holds(t, "<!-- conversation -->\n```text\n", "```\n<!-- end of conversation -->", func(old string) string {
		s := newStage(t)
		c, err := newChat(options{width: 72}, Env{In: strings.NewReader(""), Out: &s.out, Err: &s.err,
			Width: func() int { return 0 }, Getenv: func(string) string { return "" }, GOOS: "linux"})
		if err != nil {
			t.Fatal(err)
		}
		var now strings.Builder
		turns := strings.Split(old, "\n> ")
		c.say(c.standing(nil))
		now.WriteString(shortened(s.out.String(), turns[0]))
		for _, turn := range turns[1:] {
			said, shown, _ := strings.Cut(turn, "\n")
			s.out.Reset()
			c.answer(typed{text: said})
			now.WriteString("\n> " + said + "\n\n" + shortened(strings.TrimPrefix(s.out.String(), "\n"), strings.TrimPrefix(shown, "\n")))
		}
		return now.String()
	})
}

// shortened is a reply cut where shown is cut.
func shortened(reply, shown string) string {
	head, _, cut := strings.Cut(shown, cutMark)
	lines := strings.SplitAfter(reply, "\n")
	if keep := strings.Count(head, "\n"); cut && keep < len(lines) {
		return strings.Join(lines[:keep], "") + cutMark + "\n"
	}
	return reply
}

// TestReadmeExample: the worked example needs no typing and no notebook, and
// understands every line of its own.
func TestReadmeExample(t *testing.T) {
	s := newStage(t)
	if status := s.run(strings.NewReader(""), "-example"); status != statusOK {
		t.Fatalf("status %d: %s", status, s.err.String())
	}
	for line := range strings.Lines(exampleText) {
		if strings.HasPrefix(line, "# ") {
			continue
		}
		if !strings.Contains(s.out.String(), "\n> "+line) {
			t.Errorf("not shown: %s", line)
		}
	}
	for _, sorry := range []string{"did not understand", "No number of the plan"} {
		if strings.Contains(s.out.String(), sorry) {
			t.Errorf("the example says %q", sorry)
		}
	}
	if len(s.files(t)) > 0 {
		t.Errorf("the example leaves %v", s.files(t))
	}
}
