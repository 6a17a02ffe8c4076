package main

import (
	_ "embed"
	"errors"
	"fmt"
	"io"
	"strings"
)

// exampleText is the worked example: lines as they are typed, and before some
// of them, after #, what they show.
//
//go:embed example.txt
var exampleText string

// showExample answers the lines of the worked example as if they were typed.
// On a tour each waits, typed, for Enter; where nobody sits it plays straight
// through. Nothing is kept.
func (c *chat) showExample() int {
	step := c.opt.tour && c.env.Terminal
	if step {
		c.say("A worked example, and nothing of it is kept. Each line is typed for you: *Enter* sends it, *q* and Enter leaves.")
	}
	c.say(c.standing(nil))
	for line := range strings.Lines(exampleText) {
		line = strings.TrimSpace(line)
		if remark, ok := strings.CutPrefix(line, "# "); ok {
			c.say("> " + remark)
			continue
		}
		if leave, err := c.send(line, step); err != nil {
			return c.stopped(err)
		} else if leave || c.outErr != nil {
			break
		}
		c.answer(typed{text: line})
	}
	if step {
		c.say("That was the example. Start foldrow without *-tour* for a neckband of your own.")
	}
	return c.status()
}

// send shows a line as it is typed, and on a tour waits until it is sent: the
// terminal's own Enter ends the line. leave means that she wants no more.
func (c *chat) send(line string, step bool) (leave bool, err error) {
	end := "\n"
	if step {
		end = ""
	}
	_, c.outErr = fmt.Fprintf(c.env.Out, "\n> %s%s", clean(line), end)
	if !step || c.outErr != nil {
		return false, nil
	}
	key, err := c.wait()
	if errors.Is(err, io.EOF) {
		_, c.outErr = io.WriteString(c.env.Out, "\n")
		return true, nil
	}
	return isOneOf(key.text, "q", "quit", "exit", "leave", "stop"), err
}
