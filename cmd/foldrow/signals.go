package main

import (
	"os"
	"os/signal"
	"syscall"
	"time"

	"golang.org/x/term"
)

// patience is how long the program may take to end by itself after a signal. It ends
// when it next waits for a line; where nobody takes its output, that is never.
const patience = 2 * time.Second

// watchSignals gives the first signal that asks the program to end, and ends it if it
// is still there after its patience: every turn answered is on disk by then. giveBack
// puts the terminal in order. What whoever started us had ignored stays so.
func watchSignals(giveBack func()) <-chan os.Signal {
	caught, told := make(chan os.Signal, 1), make(chan os.Signal, 1)
	for _, sig := range []os.Signal{os.Interrupt, syscall.SIGTERM, syscall.SIGHUP, syscall.SIGQUIT} {
		if !signal.Ignored(sig) {
			signal.Notify(caught, sig)
		}
	}
	go func() {
		sig := <-caught
		told <- sig
		time.Sleep(patience)
		giveBack()
		os.Exit(signalStatus(sig))
	}()
	return told
}

// asFound gives a function that gives the terminal its mode of now back. It leaves one
// alone that has it: who sits in the background is stopped for changing it.
func asFound(fd int) func() {
	found, err := term.GetState(fd)
	if err != nil {
		return func() {} // no terminal
	}
	return func() {
		if now, err := term.GetState(fd); err == nil && *now != *found {
			_ = term.Restore(fd, found)
		}
	}
}

// ending reports that a signal came; the next wait for a line gives it.
func (c *chat) ending() bool {
	if c.signal == nil {
		select {
		case c.signal = <-c.env.Signals:
		default:
		}
	}
	return c.signal != nil
}
