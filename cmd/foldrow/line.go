package main

import (
	"errors"
	"io"
	"os"
	"sync/atomic"
	"time"

	"github.com/chzyer/readline"

	"foldrow/dialog"
)

// minWidth is the narrowest window anything is laid out for. The editor loops
// for ever in a window of no columns.
const minWidth = 20

const promptSign = "> "

// maxTyped is the longest line that can be typed, in characters: the editor
// draws the whole line again at each key.
const maxTyped = 1000

// maxHistory is how many lines back the up arrow goes.
const maxHistory = 500

// editor reads lines on a terminal. It is all that the program knows of the
// line editing library; nothing may be printed while next waits.
type editor struct {
	rl      *readline.Instance
	tap     *tap
	mode    *screenMode
	out     *steady
	resized func()     // tells the library the width
	row     func() int // columns that a row has now
	paste   bool       // the line before came with more
	cut     int        // characters refused in this line
	erase   bool       // the key was Delete
	first   bool       // the cursor is in the first word

	width atomic.Int64 // columns that the library was last told
}

// newEditor makes one on the program's own terminal. width is asked at each
// prompt; words gives what can be completed now.
func newEditor(width func() int, words func() dialog.Offers) (*editor, error) {
	raw := &readline.RawMode{}
	e := &editor{tap: &tap{in: readline.Stdin}, mode: &screenMode{enter: raw.Enter, exit: raw.Exit}, out: &steady{out: readline.Stdout}}
	e.mode.anew = func() { _, _ = readline.MakeRaw(int(os.Stdin.Fd())) }
	atLeast := func() int { return max(width(), minWidth) }
	row := atLeast
	cfg := &readline.Config{
		Prompt:                 promptSign,
		DisableAutoSaveHistory: true, // it is saved late and elsewhere
		HistoryLimit:           maxHistory,
		AutoComplete:           completer{words, func() int { return min(atLeast(), int(e.width.Load())) }},
		Painter:                painter{},
		InterruptPrompt:        "^C",
		EOFPrompt:              "\n",
		FuncGetWidth:           func() int { e.width.Store(int64(row())); return int(e.width.Load()) },
		FuncIsTerminal:         func() bool { return true },
		// The library would redraw from a signal; we tell it between lines and keys.
		FuncOnWidthChanged: func(f func()) { e.resized = f },
		Stdin:              readline.NewCancelableStdin(e.tap),
		Stdout:             e.out,
		FuncMakeRaw:        e.mode.begin,
		FuncExitRaw:        e.mode.end,

		FuncFilterInputRune: e.filter,
	}
	cfg.SetListener(e.change)
	if c := ownConsole(); c != nil {
		e.tap.in = c.keys
		row, cfg.Stdout, cfg.Painter = c.row, c.out, painter{edge: c.row}
		e.mode.enter, e.mode.exit = c.enter, c.exit
	}
	e.row = row
	var err error
	if e.rl, err = readline.NewEx(cfg); err == nil {
		watchGoingOn(e.goOn)
	}
	return e, err
}

// next shows the prompt and reads a line. After io.EOF it must not be called
// again.
func (e *editor) next() (typed, error) {
	e.resized()
	e.cut = 0
	e.tap.prompted(time.Now())
	line, err := e.rl.Readline()
	e.out.flush()
	switch {
	case errors.Is(err, readline.ErrInterrupt):
		e.paste = false
		return typed{text: tidy(line)}, errInterrupt
	case err != nil:
		return typed{}, io.EOF
	}
	more, ahead := e.tap.line()
	t := typed{text: tidy(line), cut: e.cut, pasted: more || e.paste, more: more, ahead: ahead}
	e.paste = more
	if t.text != "" {
		e.remember(t.text)
	}
	return t, nil
}

// history starts the up arrow's list again with the latest of those lines.
func (e *editor) history(lines []string) {
	e.rl.ResetHistory()
	for _, line := range lines[max(0, len(lines)-maxHistory):] {
		if line != "" {
			e.remember(line)
		}
	}
}

// remember puts a line where the up arrow finds it. Nothing is written.
func (e *editor) remember(line string) {
	// The error could only come from a history file, and there is none.
	_ = e.rl.SaveHistory(line)
}

// restore leaves raw mode. The library's own Close would wait for a key.
func (e *editor) restore() {
	_ = e.mode.end()
}

// painter shows characters that the terminal would obey as a question mark; the
// line itself loses them when it is read.
//
// Where the library leaves it out (on Windows, whose console used to go to the next
// row by itself) the painter also takes the cursor off the end of a full row, by a
// space and back; the library counts rows as if it were in the next already. edge
// is then how many columns a row has, otherwise nil.
type painter struct{ edge func() int }

// Paint gives the line as it is shown.
func (p painter) Paint(line []rune, _ int) []rune {
	shown := make([]rune, len(line))
	for i, r := range line {
		if r != '\n' && obeyed(r) {
			r = '?'
		}
		shown[i] = r
	}
	if p.edge != nil {
		rows := readline.SplitByLine(len(promptSign), p.edge(), line)
		if len(rows) > 1 && rows[len(rows)-1] == "" {
			shown = append(shown, ' ', '\b')
		}
	}
	return shown
}
