package main

import (
	"os"
	"os/signal"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain lets the test binary be the program: under the name foldrow it runs
// main, so that whole-program tests count in the coverage.
func TestMain(m *testing.M) {
	if filepath.Base(os.Args[0]) != "foldrow" {
		unignore()
	}
	testscript.Main(m, map[string]func(){"foldrow": main})
}

// unignore lets the programs that the tests start meet every signal as they
// would in a terminal: what whoever runs the tests has ignored (nohup, a job in the
// background of a script) would be ignored by them too.
func unignore() {
	for _, sig := range []os.Signal{syscall.SIGHUP, syscall.SIGINT, syscall.SIGQUIT, syscall.SIGTERM} {
		if signal.Ignored(sig) {
			signal.Notify(make(chan os.Signal, 1), sig)
		}
	}
}

// TestScripts runs the conversations in testdata/script as separate processes
// with nothing but pipes. Each has a home of its own.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "testdata/script",
		Setup: func(e *testscript.Env) error {
			e.Setenv("HOME", filepath.Join(e.WorkDir, "home"))
			e.Setenv("LOCALAPPDATA", filepath.Join(e.WorkDir, "home"))
			return nil
		},
	})
}

// program is a path under which the test binary is the program.
func program(t *testing.T) string {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "foldrow")
	if err := os.Symlink(self, path); err != nil {
		t.Skip("no links here: ", err)
	}
	return path
}
