//go:build unix

package main

import (
	"bufio"
	"fmt"
	"io"
	"math/rand/v2"
	"os/exec"
	"strings"
	"testing"
	"time"
)

// TestKilled kills the program without warning at random moments, 300 times
// over one project, and looks at the notebook each time: every turn whose reply
// was shown is there, in order, and nothing else but turns that were sent.
func TestKilled(t *testing.T) {
	if testing.Short() {
		t.Skip("takes about half a minute")
	}
	const kills = 300
	rnd := rand.New(rand.NewPCG(3, 4))
	home, prog := t.TempDir(), program(t)
	s := &stage{home: home}
	var kept []string // as the notebook held it after the last kill
	lost, shownInAll, unshown := 0, 0, 0
	for n := range kills {
		sent := sendAndKill(t, prog, home, n, rnd)
		got := s.kept(t, "p")
		if len(got) < len(kept) {
			t.Fatalf("kill %d: %d turns of before are gone", n, len(kept)-len(got))
		}
		for i, line := range got {
			switch {
			case i < len(kept) && line != kept[i]:
				t.Fatalf("kill %d: turn %d was %q, is %q", n, i+1, kept[i], line)
			case i >= len(kept) && (i-len(kept) >= len(sent.lines) || line != sent.lines[i-len(kept)]):
				t.Fatalf("kill %d: %q was kept and not sent", n, line)
			}
		}
		added := len(got) - len(kept)
		lost += max(0, sent.shown-added)
		unshown += max(0, added-sent.shown)
		shownInAll += sent.shown
		kept = got
	}
	t.Logf("%d kills: %d turns shown, %d lost; %d kept whose reply was not seen", kills, shownInAll, lost, unshown)
	if lost > 0 {
		t.Errorf("%d accepted turns lost", lost)
	}
	if shownInAll < kills || unshown == 0 {
		t.Error("the kills did not fall where it matters")
	}
}

type sending struct {
	lines []string
	shown int // replies that came back whole
}

// sendAndKill starts the program, sends lines as fast as it takes them, and
// kills it a little after a random number of replies.
func sendAndKill(t *testing.T, prog, home string, n int, rnd *rand.Rand) sending {
	t.Helper()
	cmd := exec.Command(prog, "-json", "-project", "p")
	cmd.Env = []string{"HOME=" + home}
	in, err := cmd.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	var s sending
	for i := range 40 {
		s.lines = append(s.lines, fmt.Sprintf("neck %d.%02d cm", 40+n%10, i))
	}
	go io.WriteString(in, strings.Join(s.lines, "\n")+"\n") // ends with an error at the kill
	after, wait := rnd.IntN(5), time.Duration(rnd.IntN(1500))*time.Microsecond
	if after == 0 {
		wait = time.Duration(rnd.IntN(60_000)) * time.Microsecond // while it starts
		time.AfterFunc(wait, func() { cmd.Process.Kill() })
	}
	replies := bufio.NewReaderSize(out, 1<<20)
	for {
		if _, err := replies.ReadString('\n'); err != nil {
			break
		}
		if s.shown++; s.shown == after {
			time.AfterFunc(wait, func() { cmd.Process.Kill() })
		}
	}
	cmd.Wait() // says that it was killed
	return s
}
