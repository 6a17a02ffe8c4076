//go:build !windows

package main

import "os"

// prepare has nothing to do: terminals here obey escape sequences, or TERM says
// that they do not.
func prepare(*os.File) (bare bool, restore func()) { return false, func() {} }

// ownConsole is nil: the editing library knows the terminals here.
func ownConsole() *console { return nil }
