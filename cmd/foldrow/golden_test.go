//go:build unix

package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const screensPath = "../../testdata/screens"

// shown is what is typed to see every kind of screen.
var shown = []string{
	"what is usual?", "cardigan", "28 stitches and 40 rows", "42 cm", "", "3 cm",
	"main tension 6, 132 stitches on the yoke", "why the stitches",
	"what if my bed has 100 needles", "and with 2x1", "drop",
	"show the needles", "show the tension", "show the band from the side", "compare 1x1 and 2x2",
	"help", "start knitting", "next", "I dropped a stitch", "flurble the gnosh",
}

// TestScreens sits at the program in windows of four widths, in colour, without
// it and as it is read aloud, and wants to see what stands in testdata/screens.
// After a change: go test ./cmd/foldrow -run TestScreens -update, and read them.
func TestScreens(t *testing.T) {
	for _, mode := range []struct {
		name string
		env  string
		args []string
	}{{"colour", "X=", nil}, {"bare", "NO_COLOR=1", nil}, {"plain", "X=", []string{"-plain"}}} {
		for _, cols := range []int{40, 60, 80, 120} {
			if testing.Short() && cols != 40 {
				continue
			}
			name := fmt.Sprintf("%s-%d.txt", mode.name, cols)
			t.Run(name, func(t *testing.T) {
				t.Parallel()
				d := sit(t, cols, t.TempDir(), []string{mode.env}, append(mode.args, "-forget")...)
				d.see("pullover?")
				for _, line := range shown {
					from := len(d.screen.text())
					d.keys(line + "\r")
					d.until("an answer to "+line, func(s string) bool {
						return strings.Contains(s[min(from, len(s)):], "\n\n") && strings.HasSuffix(s, prompt)
					})
				}
				d.keys("quit\r")
				d.leave(0)
				got := d.screen.styledText()
				for i, line := range strings.Split(got, "\n") {
					if line != strings.TrimRight(line, " ") && line != "> " {
						t.Errorf("line %d ends in spaces: %q", i+1, line)
					}
				}
				sameScreen(t, filepath.Join(screensPath, name), got)
			})
		}
	}
}

func sameScreen(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Error(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	was, is := strings.Split(string(want), "\n"), strings.Split(got, "\n")
	for i := range max(len(was), len(is)) {
		a, b := "(end)", "(end)"
		if i < len(was) {
			a = was[i]
		}
		if i < len(is) {
			b = is[i]
		}
		if a != b {
			t.Fatalf("%s line %d\nwas %s\nis  %s\nlook at it, then: go test ./cmd/foldrow -run TestScreens -update", path, i+1, a, b)
		}
	}
}

// TestTour: each line waits for Enter, q leaves, and nothing is kept.
func TestTour(t *testing.T) {
	home := t.TempDir()
	d := sit(t, 60, home, nil, "-tour")
	waits := func(line string) {
		t.Helper()
		d.onTour(line)
	}
	waits("a cardigan, 30 stitches measure 10.7 cm and 44 rows 11 cm")
	d.keys("\r")
	waits("15 3/4 inches")
	if text := d.screen.text(); !strings.Contains(text, "Enter sends it, q and Enter leaves") || !strings.Contains(text, "│ Answers come one by one") {
		t.Errorf("the screen:\n%s", text)
	}
	d.keys("q\r")
	d.leave(0)
	if text := d.screen.text(); !strings.Contains(text, "That was the example.") || strings.Contains(text, "(neck 15 3/4 in)") {
		t.Errorf("the screen:\n%s", text)
	}

	for key, status := range map[string]int{"\x04": 0, "\x03": statusInterrupt} {
		d = sit(t, 60, home, nil, "-tour")
		waits("a cardigan, 30 stitches measure 10.7 cm and 44 rows 11 cm")
		d.keys(key)
		d.leave(status)
	}

	d = sit(t, 60, home, nil, "-tour")
	for line := range strings.Lines(exampleText) {
		if line = strings.TrimSpace(line); !strings.HasPrefix(line, "# ") {
			waits(line)
			d.keys("\r")
		}
	}
	d.leave(0)
	if left, err := os.ReadDir(home); err != nil || len(left) > 0 {
		t.Errorf("it leaves %v, %v", left, err)
	}
}

// onTour waits for that line of the tour, and has the rest of a long answer shown.
// It reports how often.
func (d *desk) onTour(line string) (rests int) {
	d.t.Helper()
	ends := func(s, with string) bool { return strings.HasSuffix(s, "\n"+with+"\n") }
	for more := true; more; {
		d.until("the line "+line, func(s string) bool {
			more = ends(s, moreSign)
			return more || ends(s, "> "+line)
		})
		if more {
			d.keys("\r")
			d.until("the rest", func(s string) bool { return !ends(s, moreSign) })
			rests++
		}
	}
	return rests
}

// TestTourHere: the tour can be had at any question; its plan stops with its
// beginning on the screen, and afterwards the question stands again.
func TestTourHere(t *testing.T) {
	home := t.TempDir()
	d := sit(t, 80, home, nil)
	d.see("tour shows an example. Is it a cardigan")
	d.say("cardigan", "stitches and rows")
	d.keys("tour\r")
	for _, line := range []string{"a cardigan, 30 stitches measure 10.7 cm and 44 rows 11 cm", "15 3/4 inches", "2x1, 2.5 cm deep"} {
		d.onTour(line)
		d.keys("\r")
	}
	d.until("the sign", func(s string) bool { return strings.HasSuffix(s, "\n"+moreSign+"\n") })
	lines := strings.Split(strings.TrimSuffix(d.screen.text(), "\n"), "\n")
	if top := strings.Join(lines[len(lines)-24:], "\n"); !strings.Contains(top, "\nThe neckband\n") || !strings.Contains(top, "107 stitches") {
		t.Errorf("on the screen stands\n%s", top)
	}
	d.keys("q\r")
	d.see("That was the example. Back to work. So far: cardigan. How many stitches and rows")
	d.say("28 stitches and 40 rows", "How far round")
	d.keys("example\r")
	d.onTour("a cardigan, 30 stitches measure 10.7 cm and 44 rows 11 cm")
	d.keys("\x04")
	d.see("row gauge 40 rows in 10 cm. How far round")
	d.keys("tour\r")
	d.onTour("a cardigan, 30 stitches measure 10.7 cm and 44 rows 11 cm")
	d.keys("\x03")
	d.leave(statusInterrupt)
	s := &stage{home: home}
	if got := strings.Join(s.kept(t, "neckband"), "|"); got != "cardigan|28 stitches and 40 rows" {
		t.Errorf("kept %q", got)
	}
}

// TestTourOnAPipe plays straight through and shows what the example shows.
func TestTourOnAPipe(t *testing.T) {
	tour, example := newStage(t), newStage(t)
	if status := tour.run(strings.NewReader(""), "-tour"); status != statusOK {
		t.Fatal(status, tour.err.String())
	}
	example.run(strings.NewReader(""), "-example")
	if tour.out.String() != example.out.String() || !strings.Contains(tour.out.String(), "\nGoodbye.") {
		t.Errorf("the tour:\n%s", tour.out.String())
	}
}
