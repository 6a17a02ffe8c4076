//go:build unix

package main

import (
	"strings"
	"testing"
	"time"
)

// How fast somebody reads and types who does neither for a living: common
// practice says 200 to 250 words a minute for reading and 40 for typing, which
// is some three keys a second.
const (
	wordsAMinute = 200
	keysASecond  = 2.5
)

// takes is how long a person needs for what stands on the screen and for the
// keys pressed, which the program's own time is added to.
func takes(text string, keys int, program time.Duration) time.Duration {
	words := len(strings.Fields(text))
	return time.Duration(words)*time.Minute/wordsAMinute + time.Duration(float64(keys)/keysASecond*float64(time.Second)) + program
}

// TestNewcomerReachesAPlan: the first minutes of somebody who knows nothing, in
// a real terminal: the tour as far as its plan, and then her own numbers, asking
// how to measure at each question and reading every word.
func TestNewcomerReachesAPlan(t *testing.T) {
	start := time.Now()
	d := sit(t, 80, t.TempDir(), nil, "-tour")
	presses := 0
	for line := range strings.Lines(exampleText) {
		if line = strings.TrimSpace(line); strings.HasPrefix(line, "# ") {
			continue
		}
		presses += d.onTour(line)
		if strings.Contains(d.screen.text(), "• 107 stitches") {
			break
		}
		d.keys("\r")
		presses++
	}
	text, _, ok := strings.Cut(d.screen.text(), "• 107 stitches")
	if !ok {
		t.Fatalf("no plan:\n%s", d.screen.text())
	}
	took := takes(text, presses, time.Since(start))
	t.Logf("the worked example: %d presses of Enter, %d words, %v", presses, len(strings.Fields(text)), took.Round(time.Second))
	if took > time.Minute {
		t.Errorf("the worked example takes %v to its plan", took)
	}
	d.keys("q\r")
	d.leave(0)

	start = time.Now()
	d = sit(t, 80, t.TempDir(), nil)
	d.see("pullover?")
	keys, turns := 0, 0
	for _, line := range []string{
		"how?", "cardigan", "how?", "31 stitches measure 11 cm", "44 rows 11 cm", "how?", "41 and a half cm", "what is usual?", "", "how?", "3 cm",
	} {
		from := len(d.screen.text())
		d.keys(line + "\r")
		d.until("an answer to "+line, func(s string) bool {
			return strings.Contains(s[min(from, len(s)):], "\n\n") && strings.HasSuffix(s, prompt)
		})
		keys, turns = keys+len(line)+1, turns+1
	}
	text, _, ok = strings.Cut(d.screen.text(), "The neckband\n")
	if !ok {
		t.Fatalf("no plan:\n%s", text)
	}
	took = takes(text, keys, time.Since(start))
	t.Logf("her own numbers: %d turns, %d keys, %d words, %v", turns, keys, len(strings.Fields(text)), took.Round(time.Second))
	if took > 5*time.Minute {
		t.Errorf("her own numbers take %v", took)
	}
	d.keys("quit\r")
	d.leave(0)
}
