package main

import (
	"os"
	"os/signal"
	"runtime"
	"runtime/debug"
	"syscall"
	"time"

	"golang.org/x/term"

	_ "foldrow/cmd/foldrow/early" // before anything that takes time
)

func main() {
	// A run is short and small: collecting garbage less often saves a fifth of
	// its start and keeps it well under 40 MiB.
	debug.SetGCPercent(400)
	// What the net of net.go cannot catch is told in a line; GOTRACEBACK=all in the
	// environment still gives the page of addresses.
	debug.SetTraceback("none")
	// A reader that went away shows as an error of writing; so does the
	// limit on the size of files.
	signal.Ignore(append(quietSignals(), syscall.SIGPIPE)...)
	in := int(os.Stdin.Fd())
	out := int(os.Stdout.Fd())
	keysAsFound := asFound(in)
	screen, typed := term.IsTerminal(out), term.IsTerminal(in)
	bare, restore := prepare(os.Stdout)
	signals := watchSignals(func() { keysAsFound(); restore() })
	status := run(os.Args[1:], Env{
		In: os.Stdin, Out: os.Stdout, Err: os.Stderr,
		Screen:   screen,
		Bare:     bare,
		Terminal: screen && typed,
		Typed:    typed,
		Width:    func() int { w, _ := size(out); return w },
		Height:   func() int { _, h := size(out); return h },
		Getenv:   os.Getenv,
		GOOS:     runtime.GOOS,
		Now:      time.Now,
		Signals:  signals,
	})
	restore()
	os.Exit(status)
}

// size is the window's columns and lines, 0 where there is none.
func size(out int) (columns, lines int) {
	columns, lines, err := term.GetSize(out)
	if err != nil {
		return 0, 0
	}
	return columns, lines
}
