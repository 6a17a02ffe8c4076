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
	if c.steps() {
		c.say("A worked example, and nothing of it is kept. Each line is typed for you: *Enter* sends it, *q* and Enter leaves.")
	}
	if err := c.playExample(); err != nil {
		return c.stopped(err)
	}
	if c.steps() {
		c.say("That was the example. Start foldrow without *-tour* for a neckband of your own.")
	}
	return c.status()
}

// steps reports that somebody sits there to whom the example is shown step by step.
func (c *chat) steps() bool { return c.opt.tour && c.env.Terminal }

// playExample goes through the example, up to where she leaves. An error is one of
// reading.
func (c *chat) playExample() error {
	_, r := c.talk.Begin()
	c.say(r.Markdown)
	for line := range strings.Lines(exampleText) {
		line = strings.TrimSpace(line)
		if remark, ok := strings.CutPrefix(line, "# "); ok {
			c.say("> " + remark)
			continue
		}
		if err := c.send(line); err != nil {
			return err
		}
		if c.left || c.outErr != nil {
			break
		}
		c.answer(typed{text: line})
		if c.left || c.outErr != nil {
			break
		}
	}
	return c.readErr
}

// asksTour knows the words by which the tour is asked for in the conversation.
func asksTour(s string) bool {
	return isOneOf(s, "tour", "the tour", "a tour", "take the tour", "show the tour", "show me the tour", "start the tour",
		"example", "an example", "the example", "a worked example", "worked example", "show me an example", "demo")
}

// tourHere is the tour in the midst of a conversation, which stands as it was when
// it is over. It reads whole lines from the terminal, which the editor leaves alone
// meanwhile. It reports true when a signal ended it, and with it the program.
func (c *chat) tourHere() (left bool) {
	tour := &chat{env: c.env, opt: c.opt, talk: c.talk, page: c.page, shelf: shelf{now: c.env.Now}, in: newPipe(c.env.In), shown: true}
	tour.opt.tour = true
	tour.say("A worked example; nothing of it is kept, and your own work waits. Each line is typed for you: *Enter* sends it, *q* and Enter leaves.")
	err := tour.playExample()
	c.outErr = tour.outErr
	if err != nil {
		c.readErr = err
		return true
	}
	c.say(join("That was the example.", c.talk.Welcome(c.state).Markdown))
	return false
}

// send shows a line as it is typed, and on a tour waits until it is sent: the
// terminal's own Enter ends the line.
func (c *chat) send(line string) error {
	end := "\n"
	if c.steps() {
		end = ""
	}
	_, c.outErr = fmt.Fprintf(c.env.Out, "\n> %s%s", clean(line), end)
	if !c.steps() || c.outErr != nil {
		return nil
	}
	return c.sent()
}

// sent waits on a tour for Enter, and notes where she leaves.
func (c *chat) sent() error {
	key, err := c.wait()
	if errors.Is(err, io.EOF) {
		c.left = true
		_, c.outErr = io.WriteString(c.env.Out, "\n")
		return nil
	}
	c.left = isOneOf(key.text, "q", "quit", "exit", "leave", "stop")
	return err
}

// moreSign stands on a tour below as much of a long answer as the window holds.
const moreSign = "(Enter shows the rest)"

// roomBelow is how many lines of the window stay free for what comes after an
// answer: the remark, the next line, and space between them.
const roomBelow = 5

// write prints text. On a tour an answer that is longer than the window stops when
// it is full, so that its beginning can be read.
func (c *chat) write(text string) error {
	if c.steps() {
		lines := strings.SplitAfter(text, "\n")
		for h := c.env.Height(); h > 2*roomBelow && len(lines) > h-roomBelow && !c.left; {
			n := min(h-3, len(lines))
			if _, err := io.WriteString(c.env.Out, strings.Join(lines[:n], "")+moreSign); err != nil {
				return err
			}
			lines = lines[n:]
			if c.readErr = c.sent(); c.readErr != nil || c.left {
				c.left = true
				return c.outErr
			}
		}
		text = strings.Join(lines, "")
	}
	_, err := io.WriteString(c.env.Out, text)
	return err
}
