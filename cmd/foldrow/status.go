package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"runtime"
	"syscall"
)

// The exit statuses. A signal's is 128 and its number, as shells report it.
const (
	statusOK        = 0
	statusTrouble   = 1
	statusFlags     = 2
	statusInterrupt = 128 + int(syscall.SIGINT)
	statusPipe      = 128 + int(syscall.SIGPIPE)
)

func signalStatus(sig os.Signal) int {
	if s, ok := sig.(syscall.Signal); ok {
		return 128 + int(s)
	}
	return statusTrouble
}

// outputStatus is the status after writing, and says on the error output what
// went wrong, if anything did.
func outputStatus(stderr io.Writer, err error) int {
	switch {
	case err == nil:
		return statusOK
	case readerGone(err, runtime.GOOS):
		return statusPipe
	}
	fmt.Fprintf(stderr, "foldrow: the output cannot be written: %s\n", clean(reason(err)))
	return statusTrouble
}

// readerGone reports an error of writing into a pipe that nobody reads any more.
// Windows has three numbers of its own for it: "broken pipe", "being closed" and "no
// process on the other end".
func readerGone(err error, goos string) bool {
	if errors.Is(err, syscall.EPIPE) {
		return true
	}
	n, ok := errors.AsType[syscall.Errno](err)
	return ok && goos == "windows" && (n == 109 || n == 232 || n == 233)
}
