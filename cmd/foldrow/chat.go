package main

import (
	"errors"
	"fmt"
	"io"
	"os"

	"foldrow/dialog"
)

// chat is one conversation on a screen or in a pipe.
type chat struct {
	env   Env
	opt   options
	talk  *dialog.Talk
	state dialog.State
	shelf shelf
	in    source
	page  *renderer

	shown   bool      // something was printed already
	warned  bool      // the last thing was a Ctrl-C on an empty line
	paste   bool      // inside lines that came together
	doomed  string    // project that a yes deletes
	outErr  error     // why the output cannot be written
	pending *typed    // line read already, still to be answered
	signal  os.Signal // that is to end the program, nil for none
	left    bool      // on a tour: no more is wanted
	readErr error     // on a tour: why no more can be read
}

// signalled says that a signal ended the wait for a line.
type signalled struct{ sig os.Signal }

func (s signalled) Error() string { return s.sig.String() }

// talkOn is the conversation: read a line, answer it, until someone leaves. It
// gives the exit status.
func (c *chat) talkOn() int {
	for c.outErr == nil {
		line, err := c.ask()
		if errors.Is(err, io.EOF) {
			c.farewell()
		}
		if err == nil {
			err = c.talk.Ready()
		}
		if err != nil {
			return c.stopped(err)
		}
		lines := []typed{line}
		if line.more && !line.ahead {
			if lines, err = c.pasted(line); err != nil {
				return c.stopped(err)
			}
		}
		for i, line := range lines {
			if i > 0 && c.ending() {
				break
			}
			if c.answer(line) {
				return c.ended()
			}
		}
	}
	return c.status()
}

// ended is the status after someone left, or a signal ended a tour.
func (c *chat) ended() int {
	if c.readErr != nil {
		return c.stopped(c.readErr)
	}
	return c.status()
}

// answer takes one line: meaning, notebook, reply, in this order. It reports
// true when the knitter left.
func (c *chat) answer(line typed) (left bool) {
	before := c.remarks(line)
	if c.doomed != "" {
		done, answered := c.settleDelete(line.text)
		if before = join(before, done); answered {
			c.say(before)
			return false
		}
	}
	if c.env.Terminal && !c.opt.tour && asksTour(line.text) {
		c.say(before)
		return c.tourHere()
	}
	next, reply, ok := c.turn(c.state, line.text)
	if !ok {
		c.say(join(before, reply.Markdown))
		return false
	}
	before = join(before, c.shelf.keep(line.text, next))
	c.state = next
	done, alone := c.order(reply.Order)
	if alone {
		reply.Markdown = ""
	}
	c.say(join(before, done, reply.Markdown))
	return reply.Order.What == "leave"
}

// settleDelete answers the question whether a project is to be deleted. Only a
// yes does it; a line that is neither yes nor no is still to be answered.
func (c *chat) settleDelete(line string) (text string, answered bool) {
	if yes(line) {
		return c.deleteNow(), true
	}
	text = called(c.doomed) + " stays as it is."
	c.doomed = ""
	if line == "" || no(line) {
		return join(text, c.talk.Welcome(c.state).Markdown), true
	}
	return text, false
}

// remarks is what there is to say about how a line came in.
func (c *chat) remarks(line typed) string {
	var parts []string
	if line.cut > 0 {
		parts = append(parts, fmt.Sprintf("(that line was too long: its first %d bytes were read, the other %d were not)", len(line.text), line.cut))
	}
	if line.pasted && !c.paste {
		parts = append(parts, "(several lines came at once; each is taken as an answer, and *undo* takes them back one by one)")
	}
	c.paste = line.pasted
	return join(parts...)
}

// ask waits for the next line that is to be answered. Ctrl-C with text, or once
// on an empty line, does not leave: that is said and the wait goes on.
func (c *chat) ask() (typed, error) {
	for {
		line, err := c.wait()
		switch {
		case errors.Is(err, errInterrupt) && line.text != "":
			c.warned = false
			continue
		case errors.Is(err, errInterrupt) && !c.warned:
			c.warned = true
			c.say("Say *quit* to leave, or press Ctrl-C once more. " + c.kept())
			continue
		}
		c.warned = false
		return line, err
	}
}

// wait gives the next line or the first signal.
func (c *chat) wait() (typed, error) {
	if c.pending != nil {
		line := *c.pending
		c.pending = nil
		return line, nil
	}
	if c.ending() {
		return typed{}, signalled{c.signal}
	}
	type result struct {
		line typed
		err  error
	}
	ready := make(chan result, 1)
	go func() {
		r := result{err: errFault}
		guarded(func() { r.line, r.err = c.in.next() })
		ready <- r
	}()
	select {
	case r := <-ready:
		if errors.Is(r.err, errFault) {
			c.in.restore()
		}
		return r.line, r.err
	case c.signal = <-c.env.Signals:
		c.in.restore()
		return typed{}, signalled{c.signal}
	}
}

// farewell says at the end of typed input how to go on.
func (c *chat) farewell() {
	if c.env.Terminal {
		c.say(c.kept() + " Start foldrow again to go on.")
	}
}

// kept says whether the work is safe.
func (c *chat) kept() string {
	switch {
	case c.shelf.safe():
		return "Everything said is kept in " + called(c.shelf.name()) + "."
	case len(c.shelf.said) == 0:
		return "Nothing was said yet."
	}
	return "What was said is not kept."
}

// say prints Markdown, with an empty line between it and what stands above.
func (c *chat) say(markdown string) {
	if markdown == "" || c.outErr != nil {
		return
	}
	text, err := c.page.render(markdown, c.width(), c.widest())
	if c.shown {
		text = "\n" + text
	}
	c.shown = true
	if err == nil {
		err = c.write(text)
	}
	c.outErr = err
}

// width is how wide the text may be now.
func (c *chat) width() int {
	if c.opt.width > 0 {
		return c.opt.width
	}
	if w := c.env.Width(); w > 0 {
		return max(min(w, 80), minWidth)
	}
	return 80
}

// widest is how wide a picture may be now: text is easier to read in lines that
// end, a picture whole.
func (c *chat) widest() int {
	if w := c.env.Width(); c.opt.width == 0 && w > 0 {
		return min(max(w, minWidth), 200)
	}
	return c.width()
}

// status is 0 unless the output could not be written. A reader that went away
// is no trouble of ours and is only told by the status.
func (c *chat) status() int { return outputStatus(c.env.Err, c.outErr) }
