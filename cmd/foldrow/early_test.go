package main

import (
	"os"
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestEarlyIsEarly: Ctrl-\ is seen to before the packages that take most of the start.
func TestEarlyIsEarly(t *testing.T) {
	cmd := exec.Command(program(t), "-version")
	cmd.Env = append(os.Environ(), "GODEBUG=inittrace=1", "HOME="+t.TempDir())
	trace, _ := cmd.CombinedOutput()
	at := strings.Index(string(trace), "init foldrow/cmd/foldrow/early ")
	render := strings.Index(string(trace), "init github.com/alecthomas/")
	require.GreaterOrEqual(t, at, 0, "%s", trace)
	require.Greater(t, render, at, "%s", trace)
}
