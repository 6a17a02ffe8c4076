//go:build unix

package main

import (
	"os"
	"os/signal"
	"syscall"
	"time"

	"golang.org/x/sys/unix"
)

// canStop reports that somebody may be there who can start us again: a shell with
// jobs gives each a group of its own, apart from the one that began the session.
func canStop() bool {
	session, err := unix.Getsid(0)
	return err == nil && session != unix.Getpgrp()
}

// standsStill is how long the system may take to stop us. Where nobody could start
// us again all the same it does not, and we go on after that time.
const standsStill = 300 * time.Millisecond

// standStill stops everybody who was started with us, and us with them, as the
// terminal itself does for Ctrl-Z while it reads lines. It comes back when a shell
// lets us go on.
func standStill() {
	goOn := make(chan os.Signal, 1)
	signal.Notify(goOn, syscall.SIGCONT)
	defer signal.Stop(goOn)
	if syscall.Kill(0, syscall.SIGTSTP) != nil {
		return
	}
	select {
	case <-goOn:
	case <-time.After(standsStill):
	}
}

// watchGoingOn calls back whenever the program goes on after it was stopped,
// whoever stopped it.
func watchGoingOn(on func()) {
	goOn := make(chan os.Signal, 1)
	signal.Notify(goOn, syscall.SIGCONT)
	go func() {
		for range goOn {
			on()
		}
	}()
}
