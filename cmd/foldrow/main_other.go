//go:build !unix

package main

import "os"

func quietSignals() []os.Signal { return nil }
