//go:build unix

package main

import (
	"strings"
	"testing"
	"time"
)

func TestInterruptKey(t *testing.T) {
	d := sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	d.keys("pull\x03")
	d.until("cleared line", func(s string) bool { return strings.HasSuffix(s, "> pull^C\n>\n") })
	d.say("cardigan", "(a cardigan)")
	d.keys("\x03")
	d.see("Say quit to leave, or press Ctrl-C once more. Everything said is kept in “neckband”.")
	d.say("28 stitches and 40 rows", "How far round") // the first is forgotten
	d.keys("\x03")
	d.until("second warning", func(s string) bool { return strings.Count(s, "Say quit") == 2 && strings.HasSuffix(s, prompt) })
	d.keys("\x03")
	d.leave(130)
}

func TestEndOfInputKey(t *testing.T) {
	home := t.TempDir()
	d := sit(t, 80, home, nil)
	d.see("pullover?")
	d.say("cardigan", "(a cardigan)")
	d.keys("ab\x01\x04") // with text on the line it deletes forward
	d.until("b", func(s string) bool { return strings.HasSuffix(s, "\n> b\n") })
	d.keys("\x15\x0b\x04")
	d.leave(0)
	if !strings.Contains(d.screen.text(), "Everything said is kept in “neckband”. Start foldrow again to go on.") {
		t.Errorf("the screen:\n%s", d.screen.text())
	}

	d = sit(t, 80, home, nil)
	d.see("Go on with “neckband”? Cardigan. Last used on")
	d.keys("\x1b[A") // the arrow up finds it only once the project is open
	d.say("", "stitches and rows")
	d.keys("\x1b[A")
	d.until("the line of the other day", func(s string) bool { return strings.HasSuffix(s, "\n> cardigan\n") })
	d.keys("\x15quit\r")
	d.leave(0)
}

func TestKeysThatDoNothing(t *testing.T) {
	d := sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	time.Sleep(2 * ahead)
	d.keys("\x1a\x00\x12\x13car\x1a\x00\x1c") // Ctrl-Z, Ctrl-Space, Ctrl-R, Ctrl-S, Ctrl-backslash
	d.until("car", func(s string) bool { return strings.HasSuffix(s, "\n> car\n") })
	d.keys("\t")
	d.until("cardigan", func(s string) bool { return strings.HasSuffix(s, "\n> cardigan\n") })
	d.say("", "(a cardigan)")
	d.keys("quit\r")
	d.leave(0)
}

// TestTypedAhead: keys pressed before the program listens are not lost, the one
// that ends the input among them.
func TestTypedAhead(t *testing.T) {
	for range 5 {
		home := t.TempDir()
		d := sit(t, 80, home, nil)
		d.keys("cardigan\r28 stitches and 40 rows\r\x04")
		d.leave(0)
		s := &stage{home: home}
		if got := strings.Join(s.kept(t, "neckband"), "|"); got != "cardigan|28 stitches and 40 rows" {
			t.Errorf("kept %q", got)
		}
	}
}

func TestPastedLines(t *testing.T) {
	d := sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	time.Sleep(2 * ahead)
	d.keys("cardigan\r\n28 stitches and 40 rows\r\n\r\n42 cm\r\n")
	d.see("4 lines came at once: 1. cardigan 2. 28 stitches and 40 rows 3. (an empty line) 4. 42 cm Take each")
	time.Sleep(2 * ahead)
	d.say("no", "None of them is taken.")
	d.see("or a pullover?")

	time.Sleep(2 * ahead)
	d.keys("cardigan\r\n28 stitches and 40 rows\r\n4")
	d.until("the half line", func(s string) bool { return strings.HasSuffix(s, "\n> 4\n") })
	d.keys("2 cm\r")
	d.see("3 lines came at once: 1. cardigan 2. 28 stitches and 40 rows 3. 42 cm Take each")
	time.Sleep(2 * ahead)
	d.say("", "Which rib")

	time.Sleep(2 * ahead)
	d.keys("2x2\r3 cm\r")
	d.see("2 lines came at once: 1. 2x2 2. 3 cm Take each")
	time.Sleep(2 * ahead)
	d.say("2x1", "(2x1 rib)") // another line stands for them
	d.see("How deep")

	time.Sleep(2 * ahead)
	d.keys("5 cm\rwhy\r")
	d.see("2 lines came at once: 1. 5 cm 2. why Take each")
	time.Sleep(2 * ahead)
	d.keys("\x03")
	d.see("None of them is taken. Back to work. So far: cardigan, stitch gauge 28 stitches in 10 cm, row gauge 40 rows in 10 cm, neck 42 cm, 2x1 rib. How deep")
	d.keys("quit\r")
	d.leave(0)
}

func TestLongLineTyped(t *testing.T) {
	d := sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	for range 15 { // in pieces, because a terminal takes only so much at once
		d.keys(strings.Repeat("x", 100))
		time.Sleep(5 * time.Millisecond)
	}
	d.keys("\r")
	d.until("the remark", func(s string) bool {
		return strings.Contains(s, "(that line was too long: its first 1000 bytes were read, the other")
	})
	d.see("pullover?")
	d.keys("quit\r")
	d.leave(0)
}
