//go:build unix

package main

import (
	"os"
	"syscall"
)

// quietSignals are those of this platform whose cause also shows as an error.
func quietSignals() []os.Signal { return []os.Signal{syscall.SIGXFSZ} }
