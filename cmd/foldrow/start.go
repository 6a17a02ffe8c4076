package main

import (
	"errors"
	"fmt"
	"io"

	"foldrow/dialog"
	"foldrow/dialog/notebook"
)

// begin finds the project to work in and greets. The status counts only if
// done.
func (c *chat) begin() (status int, done bool) {
	folder, err := notebook.Folder(c.env.Getenv, c.env.GOOS, c.opt.state)
	switch {
	case c.opt.forget || c.opt.example || c.opt.tour:
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

// offer asks whether to go on with the last used project. On a terminal any
// other line goes on too and is answered there; in a pipe it begins a new
// project, so that the same answers give the same conversation each time.
func (c *chat) offer(name string, last notebook.Entry) (status int, done bool) {
	c.say(fmt.Sprintf("**Go on with %s?** The last thing said there was “%s”, on %s. Enter goes on; *no* begins a new project.",
		called(name), literal(last.Said, 60), when(last.At.In(c.env.Now().Location()))))
	line, err := c.ask()
	if err != nil {
		return c.stopped(err), true
	}
	switch {
	case line.text == "" || yes(line.text):
		return c.beginNamed(name, true)
	case no(line.text):
		c.beginFresh()
		return 0, false
	}
	c.pending = &line
	if !c.env.Terminal {
		c.beginFresh()
		return 0, false
	}
	return c.beginNamed(name, true)
}

// beginNamed opens a project. If another window has it, a new one or reading
// only is offered. told means that what was last said there stands above.
func (c *chat) beginNamed(name string, told bool) (status int, done bool) {
	states, note, err := c.shelf.open(name)
	switch {
	case err == nil:
		before := ""
		if !told {
			before = c.goingOn(states)
		}
		c.say(join(before, note, c.standing(states)))
		return 0, false
	case !errors.Is(err, notebook.ErrBusy):
		c.say(join(trouble(name, err)+" "+goesOn, c.standing(nil)))
		return 0, false
	case !c.env.Terminal:
		fmt.Fprintf(c.env.Err, "foldrow: the project %q is open in another window\n", clean(name))
		return statusTrouble, true
	}
	c.say(trouble(name, err) + " Enter begins a new project; *read* opens this one for reading only.")
	line, err := c.ask()
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

// goingOn says in one line where a project that was opened by name stopped.
func (c *chat) goingOn(states []dialog.State) string {
	last, ok := c.shelf.book.Last()
	if !ok || len(states) == 0 {
		return ""
	}
	return fmt.Sprintf("Going on with %s. The last thing said was “%s”, on %s.",
		called(c.shelf.name()), literal(last.Said, 60), when(last.At.In(c.env.Now().Location())))
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
