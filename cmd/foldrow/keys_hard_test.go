//go:build unix

package main

import (
	"io"
	"math/rand/v2"
	"strings"
	"testing"
	"testing/iotest"
	"time"

	"github.com/creack/pty"
)

// TestHardKeys: keys that the library answers badly leave a line that can be
// edited, and a program that goes on.
func TestHardKeys(t *testing.T) {
	for _, tt := range []struct {
		name, keys, line string
	}{
		{"Ctrl-T after one character", "a\x14b", "> ab"},
		{"Ctrl-K while choosing", "\t\t\x0bcardigan", "> cardigan"},
		{"Ctrl-K in a choice that grows", "c\t\t\t\x0b\x15ab\x02\x0b", "> a"},
		{"Ctrl-K in a line", "abc\x02\x02\x0b", "> a"},
		{"Delete on an empty line", "\x1b[3~ab", "> ab"},
		{"Delete in a line", "abc\x01\x1b[3~\x1b[3~", "> c"},
		{"Delete at the end of a line", "ab\x1b[3~", "> ab"},
		{"Delete while choosing", "\t\t\x1b[3~\x1b[3~\x15ab\x01\x1b[3~", "> b"},
		{"Ctrl-W in the first word", "abc def\x1bb\x1b[D\x17\x05g", ">  defg"},
		{"Ctrl-W after a word", "abc,def ghi\x1bb\x17\x05j", "> abc,ghij"},
		{"Alt-Backspace in the first word", "abc def\x1bb\x1b[D\x1b\x7f\x05g", ">  defg"},
		{"Ctrl-E and Ctrl-A while choosing", "\t\t\x05\x01\x05\x03ab", "> ab"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			d := sit(t, 20, t.TempDir(), nil)
			d.until("the question", func(s string) bool { return strings.HasSuffix(s, prompt) })
			// what is measured for a choice is the window as it was at the prompt
			if err := pty.Setsize(d.tty, &pty.Winsize{Rows: 24, Cols: 200}); err != nil {
				t.Fatal(err)
			}
			d.screen.mu.Lock()
			d.screen.cols = 200
			d.screen.mu.Unlock()
			for key := range strings.SplitSeq(strings.ReplaceAll(tt.keys, "\x1b", "|\x1b"), "|") {
				d.keys(key)
				time.Sleep(20 * time.Millisecond)
			}
			d.until(tt.line, func(s string) bool { return strings.HasSuffix(s, "\n"+tt.line+"\n") })
			d.keys("\x05\x15\x04")
			d.leave(0)
		})
	}
}

// TestAnyKeys: whatever keys are pressed in whatever order, the program goes on and
// is left in order. Ctrl-Space is not among them: typed ahead it is a Ctrl-D.
func TestAnyKeys(t *testing.T) {
	pressed := []string{"\x1b[A", "\x1b[B", "\x1b[C", "\x1b[D", "\x1b[H", "\x1b[F", "\x1b[3~", "\x1b[5~", "\x1b[1;5C", "\x1bb", "\x1bf", "\x1bd",
		"\x1b\x7f", "\x7f", "\t", "\t\t", "\r", "\x1b", "\x1bOP", "\x1b[Z", "\x1b[200~neck 40\r2x2\x1b[201~", "a", "neck ", "what if ", "40", "é", "漢", "🧶",
		"\xff", "\xc3", "why", "\x1b[", "\x1b[999;999H"}
	for c := byte(1); c < 27; c++ {
		if !strings.ContainsRune("\x03\x04\x13\x1a", rune(c)) { // interrupt, end, and stops of the output and of the program
			pressed = append(pressed, string(rune(c)))
		}
	}
	for seed := range uint64(4) {
		order := rand.New(rand.NewPCG(seed, 0))
		d := sit(t, []int{20, 80}[seed%2], t.TempDir(), nil)
		d.see("pullover?")
		for range 150 {
			d.keys(pressed[order.IntN(len(pressed))])
			if order.IntN(3) == 0 {
				time.Sleep(5 * time.Millisecond)
			}
		}
		for open := 100; open > 0; {
			_, _ = io.WriteString(d.tty, "\x05\x15\x04") // fails once it is gone
			select {
			case <-d.done:
				open = 0
			case <-time.After(100 * time.Millisecond):
				open--
			}
		}
		d.screen.unknown = nil // Ctrl-L clears the window, and what is typed ahead is echoed as it is
		d.leave(0)
		if text := d.screen.text(); strings.Contains(text, "goroutine ") {
			t.Errorf("keys of seed %d: %s", seed, text)
		}
	}
}

// TestDeleteAcrossReads: the key's sequence is known also where it comes in pieces,
// and what only begins like it is let through.
func TestDeleteAcrossReads(t *testing.T) {
	const in, want = "a\x1b[3~\x1b\x1b[3~\x1b[3;5~\x1b[D\x1b[\x1b[3~b\x1bf", "a\x1d\x1b\x1d\x1b[3;5~\x1b[D\x1b[\x1db\x1bf"
	for _, r := range []io.Reader{strings.NewReader(in), iotest.OneByteReader(strings.NewReader(in))} {
		if got, err := io.ReadAll(&tap{in: r}); err != nil || string(got) != want {
			t.Errorf("%q, %v", got, err)
		}
	}
}
