package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"

	"foldrow/dialog"
	"foldrow/dialog/notebook"
)

// begin finds the project to work in and greets. Lines that nobody types are kept
// only where a project is named, so that the same lines give the same conversation
// each time. The status counts only if done.
func (c *chat) begin() (status int, done bool) {
	folder, err := notebook.Folder(c.env.Getenv, c.env.GOOS, c.opt.state)
	switch {
	case c.opt.forget || c.opt.project == "" && !c.env.Typed:
		c.say(c.standing(nil))
		return 0, false
	case err != nil:
		c.say(join(trouble("", err), c.standing(nil)))
		return 0, false
	}
	c.shelf.folder = folder
	if c.opt.project != "" {
		return c.beginNamed(c.opt.project, false)
	}
	list, err := notebook.List(folder)
	if err != nil {
		c.say(join(trouble("", err)+" "+goesOn, c.standing(nil)))
		return 0, false
	}
	for _, p := range list {
		if last, ok := notebook.Last(folder, p.Name); ok {
			return c.offer(p.Name, last)
		}
	}
	c.beginFresh()
	return 0, false
}

// offer asks whether to go on with the last used project. Any other line goes on
// too and is answered there.
func (c *chat) offer(name string, last notebook.Entry) (status int, done bool) {
	c.say(fmt.Sprintf("**Go on with %s?** %s Enter goes on; *no* begins a new project.", called(name), c.lastTime(last)))
	line, err := c.ask()
	switch {
	case err != nil:
		return c.stopped(err), true
	case no(line.text):
		c.beginFresh()
		return 0, false
	case line.text != "" && !yes(line.text):
		c.pending = &line
	}
	return c.beginNamed(name, true)
}

// lastTime says by what a project is known again, and when it was last used.
func (c *chat) lastTime(last notebook.Entry) string {
	used := when(last.At.In(c.env.Now().Location()))
	var s dialog.State
	if err := json.Unmarshal(last.State, &s); err != nil {
		return "Last used on " + used + "." // a state of another shape
	}
	gist := c.talk.Gist(s)
	if gist == "" {
		return "No question was answered yet. Last used on " + used + "."
	}
	return strings.ToUpper(gist[:1]) + gist[1:] + ". Last used on " + used + "."
}

// beginNamed opens a project. If another window has it, a new one or reading
// only is offered. told means that what is in it stands above.
func (c *chat) beginNamed(name string, told bool) (status int, done bool) {
	states, note, err := c.shelf.open(name)
	switch {
	case err == nil && told:
		c.standing(states)
		c.say(join(note, c.talk.WelcomeBack(c.state).Markdown))
		return 0, false
	case err == nil:
		c.say(join(c.goingOn(states), note, c.standing(states)))
		return 0, false
	case !errors.Is(err, notebook.ErrBusy):
		c.say(join(trouble(name, err)+" "+goesOn, c.standing(nil)))
		return 0, false
	case !c.env.Typed:
		fmt.Fprintf(c.env.Err, "foldrow: the project %q is open in another window\n", clean(name))
		return statusTrouble, true
	}
	c.say(trouble(name, err) + " Enter begins a new project; *read* opens this one for reading only.")
	said := c.pending // is no answer to this
	c.pending = nil
	line, err := c.ask()
	c.pending = said
	if err != nil {
		return c.stopped(err), true
	}
	if isOneOf(line.text, "read", "read only", "reading", "look") {
		if states, note, err = c.shelf.look(name); err == nil {
			c.say(join(note, c.standing(states)))
			return 0, false
		}
		c.say(trouble(name, err))
	}
	c.beginFresh()
	return 0, false
}

// goingOn names the project that was opened, and when it was last used; where it
// stands is said after it. A new one is named if it cannot be called as was asked.
func (c *chat) goingOn(states []dialog.State) string {
	last, ok := c.shelf.book.Last()
	if ok && len(states) > 0 {
		return fmt.Sprintf("Going on with %s, last used on %s.", called(c.shelf.name()), when(last.At.In(c.env.Now().Location())))
	}
	return c.renamed()
}

// renamed says so where the project is not called as it was asked for.
func (c *chat) renamed() string {
	if strings.EqualFold(c.shelf.name(), strings.Join(strings.Fields(c.opt.project), " ")) {
		return ""
	}
	return "The project is called " + called(c.shelf.name()) + ": a name holds letters, digits, spaces and dashes."
}

// beginFresh begins a new project under a name of ours.
func (c *chat) beginFresh() {
	note, err := c.shelf.fresh()
	if err != nil {
		note = trouble(freshName, err) + " " + goesOn
	}
	c.say(join(note, c.standing(nil)))
}

// stopped is the status for an error in place of a line.
func (c *chat) stopped(err error) int {
	var sig signalled
	switch {
	case errors.As(err, &sig):
		return signalStatus(sig.sig)
	case errors.Is(err, errInterrupt):
		return statusInterrupt
	case errors.Is(err, io.EOF):
		return c.status()
	}
	fmt.Fprintf(c.env.Err, "foldrow: the input cannot be read: %s\n", clean(err.Error()))
	return statusTrouble
}
