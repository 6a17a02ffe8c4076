package main

import (
	"io"
	"os"
	"sync"

	"github.com/chzyer/readline"
	"golang.org/x/sys/windows"
	"golang.org/x/term"
)

// prepare makes the console obey escape sequences; restore gives it back as it
// was found. A console that cannot (the legacy one) is bare: bare text, and lines
// edited by the console itself.
func prepare(out *os.File) (bare bool, restore func()) {
	console := windows.Handle(out.Fd())
	var found uint32
	if windows.GetConsoleMode(console, &found) != nil {
		return false, func() {} // a pipe or a file
	}
	if windows.SetConsoleMode(console, outputMode(found)) != nil {
		return true, func() {}
	}
	return false, func() { _ = windows.SetConsoleMode(console, found) }
}

// keys is where keys come from: the console, which in raw mode gives characters
// and escape sequences as other terminals do.
func keys() io.Reader { return consoleKeys{os.Stdin} }

// fit keeps the editing library from its own dealings with the console. Its reader
// knows no Home, End and Delete, takes every key after Alt-Tab or AltGr for a
// command, breaks characters beyond the basic plane, and gives one key a read, so
// that a paste could not be told from typing; its writer translates escape
// sequences into calls that the console no longer needs.
func fit(cfg *readline.Config) {
	raw := &rawMode{fd: int(os.Stdin.Fd())}
	cfg.FuncMakeRaw, cfg.FuncExitRaw = raw.enter, raw.exit
	cfg.Stdout, cfg.Stderr = os.Stdout, os.Stderr
	cfg.FuncGetWidth = rowWidth
	cfg.Painter = painter{edge: rowWidth}
}

// rowWidth is where the console breaks a row: the classic one can hold rows wider
// than its window.
func rowWidth() int {
	var info windows.ConsoleScreenBufferInfo
	if windows.GetConsoleScreenBufferInfo(windows.Handle(os.Stdout.Fd()), &info) != nil {
		return minWidth
	}
	return max(int(info.Size.X), minWidth)
}

// rawMode switches the console between lines and single keys. A signal may switch
// back while a line is read.
type rawMode struct {
	fd  int
	m   sync.Mutex
	was *term.State // nil where nothing is to be given back
}

func (r *rawMode) enter() error {
	r.m.Lock()
	defer r.m.Unlock()
	was, err := term.MakeRaw(r.fd)
	if err == nil {
		r.was = was
	}
	return err
}

func (r *rawMode) exit() error {
	r.m.Lock()
	defer r.m.Unlock()
	if r.was == nil {
		return nil
	}
	err := term.Restore(r.fd, r.was)
	r.was = nil
	return err
}
