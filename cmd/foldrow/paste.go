package main

import (
	"errors"
	"fmt"
	"io"
	"strings"
)

// mostPasted is how many pasted lines are shown one by one.
const mostPasted = 20

// pasted gathers the lines that came together with first, shows them, and gives
// those that are to be answered: all of them on Enter, none on no. Another line
// stands alone: it was written after seeing them.
func (c *chat) pasted(first typed) ([]typed, error) {
	lines := []typed{first}
	for {
		for lines[len(lines)-1].more {
			line, err := c.wait()
			if errors.Is(err, errInterrupt) {
				return nil, c.leftOut()
			}
			if err != nil && !errors.Is(err, io.EOF) {
				return nil, err
			}
			lines = append(lines, line) // at the end of input an empty one, which ends the paste
		}
		c.say(shownLines(lines))
		line, err := c.wait()
		switch {
		case errors.Is(err, errInterrupt):
			return nil, c.leftOut()
		case errors.Is(err, io.EOF):
			c.farewell()
			return nil, err
		case err != nil:
			return nil, err
		case line.more || line.ahead && line.text != "":
			lines = append(lines, line) // a long paste comes in pieces
			continue
		case line.text == "" || yes(line.text):
			for i := range lines {
				lines[i].pasted = false // that was said
			}
			return lines, nil
		case no(line.text):
			return nil, c.leftOut()
		}
		return []typed{line}, nil
	}
}

// leftOut says that none of the lines is taken, and where things stand.
func (c *chat) leftOut() error {
	c.say(join("None of them is taken.", c.talk.Welcome(c.state).Markdown))
	return nil
}

// shownLines is what came, numbered, and the question.
func shownLines(lines []typed) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%d lines came at once:\n\n", len(lines))
	for i, line := range lines[:min(len(lines), mostPasted)] {
		text := literal(line.text, 60)
		if text == "" {
			text = "(an empty line)"
		}
		fmt.Fprintf(&b, "%d. %s\n", i+1, text)
	}
	if left := len(lines) - mostPasted; left > 0 {
		fmt.Fprintf(&b, "\nand %d more.\n", left)
	}
	return b.String() + "\n**Take each as an answer, one after the other?** Enter takes them, *no* leaves them out, and *undo* takes each back."
}
