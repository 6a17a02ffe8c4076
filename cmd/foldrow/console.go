package main

import (
	"errors"
	"io"
)

// What a Windows console does with what is written to it, as that system numbers it.
const (
	obeysControls = 1 << iota // newline, backspace and the like
	wrapsAtEdge               // a full row goes on in the next
	obeysEscapes              // colours, cursor movements
	noReturn                  // a newline goes down but not back to the margin
)

// outputMode is how a console that was found in one mode is to behave while we
// write: as the terminals of the other systems do. Escape sequences are not obeyed
// there unless asked for, and whoever ran before may have left noReturn on.
func outputMode(found uint32) uint32 {
	return (found | obeysControls | wrapsAtEdge | obeysEscapes) &^ noReturn
}

// console is how the editor reaches a terminal that its library does not know well
// enough.
type console struct {
	keys        io.Reader
	out         io.Writer
	enter, exit func() error // raw mode
	row         func() int   // columns before a row breaks
}

// ctrlL is the key that the editing library answers by going to the top.
const ctrlL = 12

// consoleKeys gives the editor the keys of a Windows console. Ctrl-Z, by which
// input is ended there, comes from the standard library as the end of all input,
// also with half a line typed; the editor gets the key for it that it knows.
// Ctrl-L is dropped: the library would go to the first line of all that can be
// scrolled back to, far above the window.
type consoleKeys struct{ in io.Reader }

func (c consoleKeys) Read(p []byte) (int, error) {
	n, err := c.in.Read(p)
	if n == 0 && errors.Is(err, io.EOF) && len(p) > 0 {
		p[0] = ctrlD
		return 1, nil
	}
	kept := p[:0]
	for _, b := range p[:n] {
		if b != ctrlL {
			kept = append(kept, b)
		}
	}
	return len(kept), err
}
