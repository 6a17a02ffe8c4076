//go:build !windows

package main

import (
	"io"
	"os"

	"github.com/chzyer/readline"
)

// prepare has nothing to do: terminals here obey escape sequences, or TERM says
// that they do not.
func prepare(*os.File) (bare bool, restore func()) { return false, func() {} }

// keys is where keys come from.
func keys() io.Reader { return os.Stdin }

// fit leaves the editing library as it is.
func fit(*readline.Config) {}
