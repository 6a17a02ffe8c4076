//go:build unix

package main

import (
	"bytes"
	"strings"
	"testing"

	"github.com/creack/pty"
)

// TestWiderWhileTyping: a terminal sets a long line in one row when the window
// gets wide enough; the next key must not go to the row above, which is not the
// line's any more.
func TestWiderWhileTyping(t *testing.T) {
	d := sit(t, 40, t.TempDir(), nil)
	d.see("pullover?")
	d.say("cardigan", "28 stitches")
	const line = "28 stitches and 40 rows, washed and rested"
	d.keys(line)
	d.until("the line in two rows", func(s string) bool { return strings.HasSuffix(strings.ReplaceAll(s, "\n", ""), line) })
	if err := pty.Setsize(d.tty, &pty.Winsize{Rows: 24, Cols: 100}); err != nil {
		t.Fatal(err)
	}
	d.screen.mu.Lock()
	d.screen.cols = 100
	from := len(d.screen.raw)
	d.screen.mu.Unlock()
	d.keys("!")
	d.until("the key", func(s string) bool { return strings.HasSuffix(s, line+"!\n") })
	d.screen.mu.Lock()
	written := bytes.Clone(d.screen.raw[from:])
	d.screen.mu.Unlock()
	if bytes.Contains(written, []byte("\x1b[A")) {
		t.Errorf("the row above the line is taken away: %q", written)
	}
	d.keys("\x05\x15quit\r")
	d.leave(0)
}
