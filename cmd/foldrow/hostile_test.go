package main

import (
	"bytes"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"foldrow/dialog"
	"foldrow/rules"
)

// hostileRow is one row of testdata/hostile.txt, whose head tells the format.
type hostileRow struct {
	line                           int
	place, typed                   string
	kind, changes, sentence, never string
}

func readHostile(t *testing.T) []hostileRow {
	t.Helper()
	text, err := os.ReadFile("../../testdata/hostile.txt")
	if err != nil {
		t.Fatal(err)
	}
	var rows []hostileRow
	place, n := "", 0
	for line := range strings.Lines(string(text)) {
		n++
		line = strings.TrimRight(line, "\n")
		switch {
		case line == "" || strings.HasPrefix(line, "#"):
			continue
		case strings.HasPrefix(line, "@ "):
			place = line[2:]
			continue
		}
		f := strings.Split(line, " | ")
		if len(f) != 5 {
			t.Fatalf("hostile.txt:%d: %d fields, not 5", n, len(f))
		}
		rows = append(rows, hostileRow{n, place, raw(t, n, f[0]), f[1], f[2], raw(t, n, f[3]), raw(t, n, f[4])})
	}
	return rows
}

// raw is what a field of the table stands for: \x1b and the like are bytes and
// characters, {9 * 400} is 400 nines.
func raw(t *testing.T, line int, field string) string {
	t.Helper()
	var b strings.Builder
	for rest := field; rest != ""; {
		before, group, found := strings.Cut(rest, "{")
		b.WriteString(unescaped(t, line, before))
		if !found {
			break
		}
		var inner string
		inner, rest, _ = strings.Cut(group, "}")
		part, times, ok := strings.Cut(inner, " * ")
		n, err := strconv.Atoi(times)
		if !ok || err != nil {
			t.Fatalf("hostile.txt:%d: {%s}", line, inner)
		}
		b.WriteString(strings.Repeat(unescaped(t, line, part), n))
	}
	return b.String()
}

func unescaped(t *testing.T, line int, s string) string {
	t.Helper()
	s = strings.ReplaceAll(s, `"`, `\"`)
	out, err := strconv.Unquote(`"` + s + `"`)
	if err != nil {
		t.Fatalf("hostile.txt:%d: %q: %v", line, s, err)
	}
	return out
}

// hostilePlaces are the lines that lead to where a row stands.
var hostilePlaces = map[string][]string{
	"start":   nil,
	"gauge":   {"cardigan"},
	"neck":    answers[:2],
	"rib":     answers[:3],
	"depth":   answers[:4],
	"plan":    answers,
	"whatif":  append(answers[:5:5], "what if I use 2x2"),
	"making":  append(answers[:5:5], "start knitting"),
	"project": answers,
}

// court is where the rows are tried: one talk and one renderer of each kind,
// and the state of each place.
type court struct {
	talk   *dialog.Talk
	pages  map[string]*renderer
	states map[string]dialog.State
}

func newCourt(t *testing.T) *court {
	t.Helper()
	book, err := rules.Load()
	if err != nil {
		t.Fatal(err)
	}
	talk, err := dialog.Start(book)
	if err != nil {
		t.Fatal(err)
	}
	c := &court{talk: talk, states: map[string]dialog.State{}, pages: map[string]*renderer{
		"plain": mustRenderer(t, true, false), "styled": mustRenderer(t, false, false), "read": mustRenderer(t, true, true),
	}}
	for place, lines := range hostilePlaces {
		s, _ := talk.Begin()
		for _, line := range lines {
			s, _ = talk.Turn(s, line)
		}
		c.states[place] = s
	}
	return c
}

// chat is a conversation that stands at a place, with what it prints. At
// "project" it has a notebook of its own.
func (c *court) chat(t *testing.T, page, place, typed string) (*chat, *bytes.Buffer) {
	t.Helper()
	out := &bytes.Buffer{}
	now := func() time.Time { return noon }
	ch := &chat{
		talk: c.talk, state: c.states[place], shelf: shelf{now: now}, page: c.pages[page], in: newPipe(strings.NewReader(typed + "\n")),
		env: Env{Out: out, Err: out, Width: func() int { return 80 }, Getenv: func(string) string { return "" }, GOOS: "linux", Now: now},
	}
	if place == "project" {
		ch.shelf.folder = filepath.Join(t.TempDir(), "notebooks")
		if _, _, err := ch.shelf.open("p"); err != nil {
			t.Fatal(err)
		}
		ch.shelf.keep("plan", ch.state)
	}
	return ch, out
}

// says answers the row on paper of one kind and gives what was printed.
func (c *court) says(t *testing.T, page string, r hostileRow) string {
	t.Helper()
	ch, out := c.chat(t, page, r.place, r.typed)
	line, err := ch.in.next()
	if err != nil {
		t.Fatal(err)
	}
	ch.answer(line)
	ch.shelf.close()
	return out.String()
}

// reply answers the row as a line of JSON, which it also gives as written.
func (c *court) reply(t *testing.T, r hostileRow) (dialog.Reply, string) {
	t.Helper()
	ch, out := c.chat(t, "plain", r.place, r.typed)
	line, err := ch.in.next()
	if err != nil {
		t.Fatal(err)
	}
	err = writeJSON(out, ch.turnJSON(line.text))
	ch.shelf.close()
	if err != nil {
		t.Fatal(err)
	}
	return parseReply(t, out.String()), out.String()
}

// TestHostile tries every row of the table on the way that a line of the
// program takes: read from a pipe, answered, written as plain text, in our
// style, for reading aloud, and as JSON.
func TestHostile(t *testing.T) {
	c := newCourt(t)
	rows := readHostile(t)
	if len(rows) < 120 {
		t.Errorf("only %d rows", len(rows))
	}
	before := map[string]map[string]any{}
	for place := range hostilePlaces {
		reply, _ := c.reply(t, hostileRow{place: place, typed: "plan"})
		before[place] = reply.Inputs
	}
	for _, r := range rows {
		got, line := c.reply(t, r)
		printed := map[string]string{"JSON": line}
		for page := range c.pages {
			printed[page] = c.says(t, page, r)
		}
		plain := strings.Join(strings.Fields(printed["plain"]), " ")
		if !strings.Contains("/"+r.kind+"/", "/"+got.Kind+"/") {
			t.Errorf("hostile.txt:%d: kind %s, want %s: %s", r.line, got.Kind, r.kind, plain)
		}
		if have := changesText(got.Changes); have != r.changes {
			t.Errorf("hostile.txt:%d: changes %s, want %s: %s", r.line, have, r.changes, plain)
		}
		another := r.kind == "undo" || r.kind == "notebook" && strings.HasPrefix(r.typed, "open ")
		if r.changes == "-" && !another && !reflect.DeepEqual(before[r.place], got.Inputs) {
			t.Errorf("hostile.txt:%d: the inputs are not as before", r.line)
		}
		if !strings.Contains(plain, r.sentence) {
			t.Errorf("hostile.txt:%d: no %q in %s", r.line, r.sentence, plain)
		}
		for page, text := range printed {
			if r.never != "-" && page != "JSON" && strings.Contains(text, r.never) {
				t.Errorf("hostile.txt:%d: %q stands in the %s: %q", r.line, r.never, page, text)
			}
			if page == "styled" {
				text = withoutStyle(text)
			}
			if !utf8.ValidString(text) || strings.ContainsFunc(strings.ReplaceAll(text, "\n", ""), obeyed) {
				t.Errorf("hostile.txt:%d: a terminal would obey the %s: %q", r.line, page, text)
			}
		}
	}
}

// changesText is what was set, as the tables write it.
func changesText(m map[string]any) string {
	var parts []string
	for _, k := range slices.Sorted(maps.Keys(m)) {
		parts = append(parts, fmt.Sprintf("%s=%v", k, m[k]))
	}
	if len(parts) == 0 {
		return "-"
	}
	return strings.Join(parts, " ")
}
