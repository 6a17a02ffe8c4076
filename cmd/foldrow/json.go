package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"

	"foldrow/dialog"
	"foldrow/dialog/notebook"
)

// talkJSON reads a line and writes a JSON object for each turn. With -project
// the conversation is kept and goes on where it stopped; remarks about the
// notebook go to the error output.
func (c *chat) talkJSON() int {
	if c.opt.project != "" {
		if err := c.openQuietly(c.opt.project); err != nil {
			fmt.Fprintf(c.env.Err, "foldrow: %s\n", c.inText(trouble(c.opt.project, err)))
			return statusTrouble
		}
	}
	for c.outErr == nil {
		line, err := c.wait()
		if err == nil {
			err = c.talk.Ready()
		}
		if err != nil {
			return c.stopped(err)
		}
		if line.cut > 0 {
			fmt.Fprintf(c.env.Err, "foldrow: a line was too long; %d bytes of it were not read\n", line.cut)
		}
		reply := c.turnJSON(line.text)
		c.outErr = writeJSON(c.env.Out, reply)
		if reply.Order.What == "leave" {
			break
		}
	}
	return c.status()
}

func (c *chat) openQuietly(name string) error {
	folder, err := notebook.Folder(c.env.Getenv, c.env.GOOS, c.opt.state)
	if err != nil {
		return err
	}
	c.shelf.folder = folder
	states, note, err := c.shelf.open(name)
	if err != nil {
		return err
	}
	c.standing(states)
	if note = join(c.renamed(), note); note != "" {
		fmt.Fprintf(c.env.Err, "foldrow: %s\n", c.inText(note))
	}
	return nil
}

// turnJSON is one turn with what became of it in the notebook.
func (c *chat) turnJSON(said string) dialog.Reply {
	before := ""
	if c.doomed != "" {
		text, answered := c.settleDelete(said)
		if answered {
			return c.aside(said, text)
		}
		before = text
	}
	next, r, ok := c.turn(c.state, said)
	if !ok {
		r.Markdown = join(before, r.Markdown)
		return r
	}
	if note := c.shelf.keep(said, next); note != "" {
		fmt.Fprintf(c.env.Err, "foldrow: %s\n", c.inText(note))
	}
	c.state = next
	done, alone := c.order(r.Order)
	if alone {
		return c.aside(said, done)
	}
	r.Markdown = join(before, done, r.Markdown)
	return r
}

// aside is a reply of the program's own, about the projects.
func (c *chat) aside(said, markdown string) dialog.Reply {
	r := c.talk.Welcome(c.state)
	r.Said, r.Kind, r.Markdown = said, "notebook", markdown
	return r
}

// inText is Markdown as one line of bare text for the error output.
func (c *chat) inText(markdown string) string {
	text, err := c.page.render(markdown, 10_000, 10_000)
	if err != nil {
		text = clean(markdown)
	}
	return string(bytes.Join(bytes.Fields([]byte(text)), []byte(" ")))
}

// writeJSON writes one line that is harmless on a terminal.
func writeJSON(w io.Writer, r dialog.Reply) error {
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(r.Facts()); err != nil {
		return errors.Join(errors.New("reply"), err)
	}
	_, err := w.Write(jsonSafe(b.Bytes()))
	return err
}
