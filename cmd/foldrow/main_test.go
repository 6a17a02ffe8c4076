package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// TestMain lets the test binary be the program: under the name foldrow it runs
// main, so that whole-program tests count in the coverage.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"foldrow": main})
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
