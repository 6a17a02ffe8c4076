package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"strings"
	"time"

	"foldrow/dialog/notebook"
)

// literal makes text that is not ours (names, what was said, paths) safe to
// stand in Markdown, and short.
func literal(s string, most int) string {
	var b strings.Builder
	n := 0
	for _, r := range clean(s) {
		if n++; n > most {
			b.WriteString("...")
			break
		}
		switch {
		case r == '&':
			b.WriteString("&amp;")
		case r == '\n':
			b.WriteByte(' ')
		case strings.ContainsRune("\\`*_{}[]<>()#+-.!|", r):
			b.WriteByte('\\')
			b.WriteRune(r)
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// called is a project's name as it stands in a sentence.
func called(name string) string { return "“" + literal(name, 60) + "”" }

// when is a moment as people write it.
func when(t time.Time) string { return t.Format("2 January 2006 at 15:04") }

// opened says what the knitter should know about how the opening went; "" if
// there is nothing to say.
func opened(name string, r notebook.Report) string {
	var parts []string
	if r.Cut > 0 {
		parts = append(parts, fmt.Sprintf("The last line in %s was only half written and was cut. Everything before it is there.", called(name)))
	}
	if r.SideCopy != "" {
		parts = append(parts, fmt.Sprintf("%s was damaged after line %d. Everything before the damage is there; the rest was put aside in %s.",
			called(name), r.Entries, literal(r.SideCopy, 300)))
	}
	switch {
	case r.Newer:
		parts = append(parts, fmt.Sprintf("%s holds lines from a newer foldrow. It is left untouched and open for reading only: nothing said now is kept.", called(name)))
	case r.ReadOnly != nil:
		parts = append(parts, fmt.Sprintf("%s is open for reading only: nothing said now is kept.", called(name)))
	}
	return strings.Join(parts, "\n\n")
}

// trouble is one sentence about why the notebook did not do what was asked of
// it. name is the project that was meant.
func trouble(name string, err error) string {
	if n, ok := errors.AsType[*notebook.NameError](err); ok {
		if n.Reason == "is empty" {
			return "A project's name needs at least one letter or digit."
		}
		return fmt.Sprintf("The name %s %s; take another.", called(n.Name), n.Reason)
	}
	switch {
	case errors.Is(err, notebook.ErrBusy):
		return called(name) + " is open in another window."
	case errors.Is(err, notebook.ErrNone):
		return "There is no project called " + called(name) + "."
	case errors.Is(err, notebook.ErrExists):
		return "There is a project called " + called(name) + " already."
	case errors.Is(err, notebook.ErrNewer):
		return called(name) + " holds lines from a newer foldrow, so it cannot be copied."
	case errors.Is(err, notebook.ErrNoHome):
		return "No home folder is known, so nothing is kept. Set FOLDROW_STATE or give -state to keep it."
	}
	if r, ok := errors.AsType[*notebook.ReadError](err); ok {
		return called(name) + " cannot be read: " + literal(reason(r.Err), 200) + ". It is left as it is."
	}
	return "The notebook cannot be written: " + literal(reason(err), 200) + "."
}

// reason is the innermost error, which says what the disk said.
func reason(err error) string {
	if w, ok := errors.AsType[*notebook.WriteError](err); ok {
		err = w.Err
	}
	if p, ok := errors.AsType[*fs.PathError](err); ok {
		err = p.Err
	}
	if l, ok := errors.AsType[*os.LinkError](err); ok {
		err = l.Err // a rename's
	}
	return err.Error()
}

const goesOn = "The conversation goes on, but what is said now is not kept."

// yes and no know the answers to the program's own questions about projects.
func yes(s string) bool {
	return isOneOf(s, "y", "yes", "yes please", "ok", "okay", "sure", "go on", "continue", "resume", "carry on")
}

func no(s string) bool {
	return isOneOf(s, "n", "no", "no thanks", "new", "a new one", "new project", "start over", "begin a new one")
}

func isOneOf(s string, list ...string) bool {
	s = strings.Trim(strings.ToLower(strings.Join(strings.Fields(s), " ")), ".!")
	for _, w := range list {
		if s == w {
			return true
		}
	}
	return false
}
