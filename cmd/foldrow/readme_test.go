package main

import (
	"bytes"
	"flag"
	"os"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the conversation in the README anew from what is said now")

const readmePath = "../../README.md"

// cutMark stands in the README where the rest of a reply is left out.
const cutMark = "[...]"

func readReadme(t *testing.T) string {
	t.Helper()
	b, err := os.ReadFile(readmePath)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// TestReadmeFlags: the README shows the flags as the help does.
func TestReadmeFlags(t *testing.T) {
	var help bytes.Buffer
	if err := usage(&help); err != nil {
		t.Fatal(err)
	}
	from := strings.Index(help.String(), "  -project")
	flags := strings.TrimSuffix(help.String()[from:], "\n")
	if !strings.Contains(readReadme(t), "\n"+flags+"\n") {
		t.Errorf("the README does not show the flags as foldrow -h does:\n%s", flags)
	}
}

// TestReadmeConversation says the lines of the README's conversation again.
// Each reply must be what stands there, whole or down to the cut. With -update
// the replies are written anew, cut after as many lines as before.
func TestReadmeConversation(t *testing.T) {
	const open, end = "<!-- conversation -->\n```text\n", "```\n<!-- end of conversation -->"
	readme := readReadme(t)
	before, rest, ok := strings.Cut(readme, open)
	old, after, okEnd := strings.Cut(rest, end)
	if !ok || !okEnd {
		t.Fatal("no conversation in the README")
	}
	s := newStage(t)
	c, err := newChat(options{width: 72}, Env{In: strings.NewReader(""), Out: &s.out, Err: &s.err,
		Width: func() int { return 0 }, Getenv: func(string) string { return "" }, GOOS: "linux"})
	if err != nil {
		t.Fatal(err)
	}
	c.say(c.standing(nil))
	var now strings.Builder
	turns := strings.Split(old, "\n> ")
	now.WriteString(shortened(s.out.String(), turns[0]))
	for _, turn := range turns[1:] {
		said, shown, _ := strings.Cut(turn, "\n")
		s.out.Reset()
		c.answer(typed{text: said})
		now.WriteString("\n> " + said + "\n\n" + shortened(strings.TrimPrefix(s.out.String(), "\n"), strings.TrimPrefix(shown, "\n")))
	}
	if *update {
		if err := os.WriteFile(readmePath, []byte(before+open+now.String()+end+after), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if now.String() != old {
		t.Errorf("the README's conversation is now\n%s\nif this is meant: go test ./cmd/foldrow -run TestReadme -update", now.String())
	}
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
