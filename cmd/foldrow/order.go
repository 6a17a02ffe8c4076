package main

import (
	"errors"
	"fmt"
	"strings"

	"foldrow/dialog"
	"foldrow/dialog/notebook"
)

// order does what the conversation wished of the notebook and says how it went,
// in Markdown. alone means that the conversation's own reply, with its open
// question, is not to follow: another question stands, or another project.
func (c *chat) order(o dialog.Order) (text string, alone bool) {
	s := &c.shelf
	switch o.What {
	case "", "leave":
		return "", false
	case "write":
		return c.writeOut(), false
	case "page":
		return c.writePage(), false
	}
	if s.folder == "" && o.What == "open" && o.Name == "" {
		return "Nothing of this conversation is kept on disk, so beginning anew would lose it. Say the new values over the old ones, or leave with *quit* and start again.", false
	}
	if s.folder == "" {
		return "Nothing of this conversation is kept on disk, so there are no projects to work with here. *Write it out* puts it into a file; *foldrow -project NAME* keeps one from the start.", false
	}
	this := s.name()
	if o.What != "list" && o.What != "open" && this == "" {
		return "This conversation is not in the notebook.", false
	}
	switch o.What {
	case "save":
		if !s.safe() {
			return "What was said last could not be kept. " + goesOn, false
		}
		if name := second(o); name != "" && name != this {
			return s.rename(this, name), false // "save as bella cardigan"
		}
		return "Everything said so far is kept in " + called(this) + ".", false
	case "list":
		return s.list(), false
	case "open":
		return c.openProject(o.Name)
	case "rename":
		return s.rename(this, second(o)), false
	case "copy":
		return s.copy(this, second(o)), false
	case "delete":
		return c.askDelete(o.Name)
	}
	return "", false
}

// second is the new name in "rename this to b", "rename to b" and "rename b".
func second(o dialog.Order) string {
	if o.To != "" {
		return o.To
	}
	return o.Name
}

func (s *shelf) list() string {
	list, err := notebook.List(s.folder)
	if err != nil {
		return trouble("", err)
	}
	var b strings.Builder
	b.WriteString("Projects, the last used first:\n")
	for _, p := range list {
		here := ""
		if p.Name == s.name() {
			here = ", open here"
		}
		fmt.Fprintf(&b, "\n- %s, %s%s", called(p.Name), when(p.Used.In(s.now().Location())), here)
	}
	return b.String()
}

// openProject changes over to another project; without a name, to a new one.
func (c *chat) openProject(name string) (text string, alone bool) {
	states, note := []dialog.State(nil), ""
	var err error
	if name == "" {
		note, err = c.shelf.fresh()
	} else {
		found, _ := notebook.Find(c.shelf.folder, name) // or a new one
		if found != "" && found == c.shelf.name() {
			return called(found) + " is the one open here.", false
		}
		if text := c.shelf.twin(found); text != "" {
			return text, false
		}
		states, note, err = c.shelf.open(name)
	}
	if err != nil {
		return trouble(name, err), false
	}
	now := "Now in " + called(c.shelf.name()) + "."
	if len(states) == 0 {
		now = "A new project, " + called(c.shelf.name()) + "."
	}
	return join(now, note, c.standing(states)), true
}

// twin says that a project cannot be reached from the one that is open here: where
// two files differ only in case, put there by other programs, one lock is for both.
// "" where that is not so.
func (s *shelf) twin(name string) string {
	if here := s.name(); name != here && strings.EqualFold(name, here) {
		return called(name) + " and " + called(here) + ", which is open here, differ only in their capital letters. Open another project first, then this one."
	}
	return ""
}

// standing takes over the states of a project and says where it stands.
func (c *chat) standing(states []dialog.State) string {
	c.in.history(c.shelf.said)
	if s, ok := dialog.Resume(states); ok {
		c.state = s
		return c.talk.Welcome(s).Markdown
	}
	s, r := c.talk.Begin()
	c.state = s
	if greeting, question, ok := strings.Cut(r.Markdown, "\n\n"); ok && c.env.Terminal {
		return join(greeting+" *tour* shows an example.", question)
	}
	return r.Markdown
}

// rename closes the project for the moment that its file changes its name.
func (s *shelf) rename(from, to string) string {
	if to == "" {
		return "To what name? For example: rename to blue cardigan."
	}
	said := s.said
	s.close()
	err := notebook.Rename(s.folder, from, to)
	name := to
	if err != nil {
		name = from
	}
	_, note, openErr := s.open(name)
	s.said = said
	switch {
	case openErr != nil:
		return join(trouble(name, openErr), goesOn)
	case err != nil:
		return join(trouble(to, err), note)
	}
	return join("This project is called "+called(s.name())+" now.", note)
}

func (s *shelf) copy(from, to string) string {
	if to == "" {
		return "Under what name? For example: copy to blue cardigan size 2."
	}
	if err := notebook.Copy(s.folder, from, to); err != nil {
		return trouble(to, err)
	}
	name, err := notebook.CleanName(to)
	if err != nil {
		return trouble(to, err)
	}
	return fmt.Sprintf("%s is a copy of %s as it stands. This is still %s; say *open %s* to go on in the copy.",
		called(name), called(from), called(from), literal(name, 60))
}

// askDelete asks; the answer comes to deleteNow.
func (c *chat) askDelete(name string) (text string, alone bool) {
	if name == "" {
		name = c.shelf.name()
	}
	found, err := notebook.Find(c.shelf.folder, name)
	if err != nil {
		return trouble(name, err), false
	}
	if text := c.shelf.twin(found); text != "" {
		return text, false
	}
	c.doomed = found
	return "Delete " + called(found) + " and everything said in it? This cannot be undone. Only *yes* deletes it.", true
}

// deleteNow deletes the project that was asked about, and begins a new one if
// it was the one open here.
func (c *chat) deleteNow() string {
	name := c.doomed
	c.doomed = ""
	here := name == c.shelf.name()
	if here {
		c.shelf.close()
	}
	if err := notebook.Delete(c.shelf.folder, name); err != nil {
		return trouble(name, err)
	}
	done := called(name) + " is deleted."
	if !here {
		return join(done, c.talk.Welcome(c.state).Markdown)
	}
	note, err := c.shelf.fresh()
	if err != nil {
		note = trouble(freshName, err) + " " + goesOn
	}
	return join(done, note, c.standing(nil))
}

// writeOut writes the plan and the whole conversation as Markdown.
func (c *chat) writeOut() string {
	name := c.shelf.name()
	if name == "" {
		name = freshName
	}
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n\nWritten by foldrow on %s.\n\n", literal(name, 60), when(c.env.Now()))
	// a full plan names some lists only by their count
	for _, part := range [][2]string{{"## The plan", "plan"}, {"### Told and assumed", "what do you assume"}, {"### The needles", "show the needles"}} {
		_, r, _ := c.turn(c.state, part[1])
		fmt.Fprintf(&b, "%s\n\n%s\n\n", part[0], strings.TrimSpace(lower(r.Markdown)))
	}
	b.WriteString("## What was said\n")
	s, r := c.talk.Begin()
	fmt.Fprintf(&b, "\n%s\n", r.Markdown)
	for _, said := range c.shelf.said {
		if c.ending() { // each line takes as long as when it was said
			return "Nothing was written: the program was told to end."
		}
		s, r, _ = c.turn(s, said)
		fmt.Fprintf(&b, "\n> %s\n\n%s\n", literal(said, maxLine), lower(r.Markdown))
	}
	path, err := writeOut(name, ".md", b.String())
	if err != nil {
		return "The file cannot be written: " + literal(reason(err), 200) + "."
	}
	return "The plan and the conversation are in " + literal(path, 500) + "."
}

// lower puts the headings of a reply below those of the file that it goes
// into; in a picture a line may begin with the same sign.
func lower(markdown string) string {
	lines := strings.Split(markdown, "\n")
	picture := false
	for i, line := range lines {
		if strings.HasPrefix(line, "```") {
			picture = !picture
		}
		if !picture && strings.HasPrefix(line, "#") {
			lines[i] = "##" + line
		}
	}
	return strings.Join(lines, "\n")
}

// writePage writes the plan as one page to print, beside where she is.
func (c *chat) writePage() string {
	name := c.shelf.name()
	if name == "" {
		name = freshName
	}
	var html, markdown string
	ok, date := false, c.env.Now().Format("2 January 2006")
	err := errors.New("there is a fault in the program")
	guarded(func() { html, markdown, ok, err = c.talk.Pages(c.state, name, date) })
	if err == nil && !ok {
		return "There is no whole plan to print yet: answer the questions first."
	}
	var path, plain string
	if err == nil {
		path, err = writeOut(name, ".html", html)
	}
	if err == nil {
		plain, err = writeOut(name+"-page", ".md", markdown)
	}
	if err != nil {
		return "The page cannot be written: " + literal(reason(err), 200) + "."
	}
	what := "The page to print is"
	if c.state.OnTable {
		what = "The what-if as a page to print, marked as not kept, is"
	}
	return what + " in " + literal(path, 500) + ". Open it in a browser and print it. The same as Markdown is in " + literal(plain, 500) + "."
}

// join puts paragraphs together, leaving out empty ones.
func join(parts ...string) string {
	var some []string
	for _, p := range parts {
		if p != "" {
			some = append(some, p)
		}
	}
	return strings.Join(some, "\n\n")
}
