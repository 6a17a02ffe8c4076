package main

import (
	"os"
	"sync"

	"golang.org/x/sys/windows"
	"golang.org/x/term"
)

// prepare makes the console obey escape sequences; restore gives it back as it
// was found. A console that cannot (the legacy one) is bare: bare text, and lines
// edited by the console itself.
func prepare(out *os.File) (bare bool, restore func()) {
	screen := windows.Handle(out.Fd())
	var found uint32
	if windows.GetConsoleMode(screen, &found) != nil {
		return false, func() {} // a pipe or a file
	}
	if windows.SetConsoleMode(screen, outputMode(found)) != nil {
		return true, func() {}
	}
	return false, func() { _ = windows.SetConsoleMode(screen, found) }
}

// ownConsole keeps the editing library from its own dealings with the console. Its
// reader knows no Home, End and Delete, takes every key after Alt-Tab or AltGr for
// a command, breaks characters beyond the basic plane, and gives one key a read, so
// that a paste could not be told from typing; its writer translates escape
// sequences into calls that the console no longer needs. In raw mode the console
// gives characters and escape sequences as other terminals do.
func ownConsole() *console {
	mode := &rawMode{fd: int(os.Stdin.Fd())}
	return &console{keys: consoleKeys{os.Stdin}, out: os.Stdout, enter: mode.enter, exit: mode.exit, row: rowWidth}
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
