//go:build !unix

package main

import "errors"

// makePipe makes a named pipe, where there are such things.
func makePipe(string) error { return errors.New("no named pipes here") }
