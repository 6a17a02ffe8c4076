//go:build unix

package main

import (
	"os/exec"
	"regexp"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"
)

// underShell starts the program as a job of a shell, and once it is stopped shows
// the terminal's modes, reads a line, and lets it go on.
const underShell = `set -m
sh -c 'echo pid $$; exec "$0"' "$0"
stty -a; stty sane; echo stopped; read line; echo "read $line"
fg >/dev/null
echo over $?; stty -a`

// TestStoppedAndGoneOn: Ctrl-Z stops the program, the terminal reads lines
// meanwhile, and afterwards what was typed stands there. So it does where a signal
// from outside left the terminal as it was.
func TestStoppedAndGoneOn(t *testing.T) {
	for _, outside := range []bool{false, true} {
		d := sitAt(t, 80, t.TempDir(), nil, exec.Command("sh", "-c", underShell, program(t)))
		d.see("pullover?")
		time.Sleep(2 * ahead)
		d.keys("card")
		d.until("card", func(s string) bool { return strings.HasSuffix(s, "\n> card\n") })
		if outside {
			m := regexp.MustCompile(`pid (\d+)`).FindStringSubmatch(d.screen.text())
			pid, err := strconv.Atoi(m[1])
			if err == nil {
				err = syscall.Kill(pid, syscall.SIGSTOP)
			}
			if err != nil {
				t.Fatal(err)
			}
		} else {
			d.keys("\x1a")
		}
		d.until("the shell", func(s string) bool { return strings.Contains(s, "stopped\n") })
		if text := d.screen.text(); !outside && (!strings.Contains(text, " icanon") || strings.Contains(text, "> card")) {
			t.Errorf("while it stands still:\n%s", text)
		}
		d.keys("to the shell\r")
		d.until("the prompt again", func(s string) bool {
			_, below, ok := strings.Cut(s, "read to the shell\n")
			return ok && strings.HasSuffix(below, "> card\n")
		})
		d.keys("igan\r")
		d.see("(a cardigan)")
		d.keys("quit\r")
		d.until("the end", func(s string) bool {
			_, below, ok := strings.Cut(s, "over 0\n")
			return ok && strings.Contains(below, " icanon")
		})
	}
}
