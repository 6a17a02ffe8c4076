package main

import (
	_ "embed"
	"fmt"
	"strings"
)

//go:embed example.txt
var exampleText string

// showExample answers the lines of the worked example as if they were typed,
// and shows them, since nobody types.
func (c *chat) showExample() int {
	c.say(c.standing(nil))
	for line := range strings.Lines(exampleText) {
		if c.outErr != nil {
			break
		}
		line = strings.TrimSpace(line)
		_, c.outErr = fmt.Fprintf(c.env.Out, "\n> %s\n", clean(line))
		c.answer(typed{text: line})
	}
	return c.status()
}
