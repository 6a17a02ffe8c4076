package dialog_test

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"foldrow/dialog"
	"foldrow/dialog/answer"
	"foldrow/engine"
)

// TestMaking runs every making in testdata/making whole, from the first step
// to the last. Lines that begin with "@ " are said before it and their replies
// are not written down; "> " is what the knitter types at the machine.
func TestMaking(t *testing.T) {
	replay(t, "../testdata/making/*.txt", makingOf)
}

func makingOf(t *testing.T, text string) string {
	tk := talk(t)
	s, r := tk.Begin()
	var b strings.Builder
	for _, line := range strings.Split(text, "\n") {
		switch {
		case strings.HasPrefix(line, "# "):
			b.WriteString(line + "\n")
		case strings.HasPrefix(line, "@ "):
			s, r = tk.Turn(s, line[2:])
			require.NotEqual(t, "unclear", r.Kind, line)
			b.WriteString(line + "\n")
		case strings.HasPrefix(line, "> "):
			s, r = tk.Turn(s, line[2:])
			b.WriteString("\n" + line + "\n\n" + indent(r))
		}
	}
	return b.String()
}

// say says one line after another and gives the last reply.
func say(t require.TestingT, tk *dialog.Talk, s dialog.State, lines ...string) (dialog.State, dialog.Reply) {
	var r dialog.Reply
	for _, l := range lines {
		s, r = tk.Turn(s, l)
	}
	return s, r
}

// drawPlan says a whole plan, drawn from plausible spans.
func drawPlan(t *rapid.T, tk *dialog.Talk) dialog.State {
	n := func(what string, low, high int) int { return rapid.IntRange(low, high).Draw(t, what) }
	pick := func(what string, list ...string) string { return rapid.SampledFrom(list).Draw(t, what) }
	st := n("stitches", 16, 38)
	lines := []string{
		pick("garment", "cardigan", "pullover"),
		fmt.Sprintf("%d stitches and %d rows in 10 cm", st, st*13/10),
		fmt.Sprintf("%d cm", n("neck", 34, 58)),
		pick("rib", "1x1", "2x1", "2x2", "3x1", "1x2", "3x2", "3x3", "plain"),
		fmt.Sprintf("%d rows a layer", n("rows", 4, 24)),
		fmt.Sprintf("hang every %d bumps", n("hem", 1, 3)),
	}
	lines = append(lines, strings.Fields(pick("layers", "", "", "layers=1"))...)
	maybe := func(line string) {
		if rapid.Bool().Draw(t, line) {
			lines = append(lines, line)
		}
	}
	maybe(fmt.Sprintf("main tension %d", n("dial", 3, 9)))
	maybe(fmt.Sprintf("%d stitches on the yoke", n("yoke", 230, 300)))
	maybe(fmt.Sprintf("fold row %d clicks looser", n("fold", 1, 6)))
	maybe(fmt.Sprintf("%d clicks to a number", n("clicks", 2, 3)))
	maybe(fmt.Sprintf("%d rows a click", n("rows a click", 1, 4)))
	if lines[0] == "cardigan" {
		maybe(fmt.Sprintf("the front edge is %d cm", n("edge", 20, 80)))
		maybe(fmt.Sprintf("%d buttonholes", n("holes", 1, 12)))
	}
	s, _ := tk.Begin()
	for _, l := range lines {
		if l == "layers=1" {
			l = "single layer"
		}
		var r dialog.Reply
		s, r = tk.Turn(s, l)
		if r.Kind == "unclear" {
			t.Fatalf("%q: %s", l, r.Markdown)
		}
	}
	return s
}

// Every step of any plan can be read at a glance, with "next" from the first
// to the last, and "back" from the last to the first.
func TestGlanceOfEveryStep(t *testing.T) {
	tk := talk(t)
	rapid.Check(t, func(t *rapid.T) {
		s := drawPlan(t, tk)
		lines := []string{"start knitting"}
		if rapid.Bool().Draw(t, "centre") {
			lines = append(lines, "where am I")
		}
		s, r := say(t, tk, s, lines...)
		seen := 0
		for ; !strings.HasPrefix(r.Markdown, "**The neckband is done."); s, r = tk.Turn(s, "next") {
			if r.Kind != "step" || answer.Glance(r.Markdown) > 8 {
				t.Fatalf("%d lines, kind %s:\n%s", answer.Glance(r.Markdown), r.Kind, r.Markdown)
			}
			if seen++; seen > 2000 {
				t.Fatal("the making does not end")
			}
			line := rapid.SampledFrom([]string{"where am I", "skip", "what dial for this", "do i make the hole now", "done 1 row", "start from the hem", "start from the latching",
				"start from sewing off", "start from hang again", "all latched", "the hem is hung", "latched up to R3", "hung up to R3", "piece 1 done", "next piece"}).Draw(t, "also")
			if _, also := tk.Turn(s, line); also.Kind == "step" && answer.Glance(also.Markdown) > 8 {
				t.Fatalf("%s: %d lines\n%s", line, answer.Glance(also.Markdown), also.Markdown)
			}
		}
		for range seen + 1 {
			s, r = tk.Turn(s, "back")
		}
		if !strings.Contains(r.Markdown, "**1 of ") {
			t.Fatalf("back does not end at the first step:\n%s", r.Markdown)
		}
	})
}

var (
	atRow   = regexp.MustCompile(`: row (\d+) of (\d+)\*\*`)
	dialNow = regexp.MustCompile(`(?:Set the dial to|Turn to|Leave the dial at) ([0-9]+(?:\.[0-9]+| [12]/3)?)`)
	then    = regexp.MustCompile(`After row (\d+) turn to ([0-9]+(?:\.[0-9]+| [12]/3)?)`)
	knit    = regexp.MustCompile(`Knit rows? (\d+)(?:(?: and| to) (\d+))?`)
)

// The row counter knows the dial of each row and tells the change before it
// comes, whatever plan and however many rows are told at a time.
func TestCounterAndDial(t *testing.T) {
	tk := talk(t)
	rapid.Check(t, func(t *rapid.T) {
		s := drawPlan(t, tk)
		s, _ = say(t, tk, s, "main tension 8", "start knitting")
		done := rapid.IntRange(0, 3).Draw(t, "first")
		s, r := say(t, tk, s, fmt.Sprintf("I'm on row %d", done+1))
		rows := r.Facts().Results["tension"].([]engine.TensionRow)
		for done < len(rows) {
			checkRow(t, r.Markdown, rows, done)
			step := rapid.IntRange(1, 4).Draw(t, "rows")
			if done+step > len(rows) {
				_, over := tk.Turn(s, fmt.Sprintf("done %d rows", step))
				if over.Kind != "unclear" {
					t.Fatalf("row %d of %d is taken:\n%s", done+step, len(rows), over.Markdown)
				}
				step = len(rows) - done
			}
			done += step
			s, r = tk.Turn(s, fmt.Sprintf("done %d rows", step))
		}
		if strings.Contains(r.Markdown, " row ") && atRow.MatchString(r.Markdown) {
			t.Fatalf("all rows are knitted:\n%s", r.Markdown)
		}
	})
}

func checkRow(t *rapid.T, text string, rows []engine.TensionRow, done int) {
	m, d, k := atRow.FindStringSubmatch(text), dialNow.FindStringSubmatch(text), knit.FindStringSubmatch(text)
	if m == nil || d == nil || k == nil {
		t.Fatalf("no row or dial in\n%s", text)
	}
	num := func(s string) int { n, _ := strconv.Atoi(s); return n }
	last := max(num(k[1]), num(k[2]))
	if num(m[1]) != done+1 || num(m[2]) != len(rows) || num(k[1]) != done+1 {
		t.Fatalf("%d of %d are knitted:\n%s", done, len(rows), text)
	}
	for i := done; i < last; i++ {
		if show(*rows[i].Dial) != d[1] {
			t.Fatalf("row %d is for dial %v:\n%s", i+1, *rows[i].Dial, text)
		}
	}
	after := then.FindStringSubmatch(text)
	if last == len(rows) || *rows[last].Dial == *rows[last-1].Dial {
		if after != nil {
			t.Fatalf("no change after row %d:\n%s", last, text)
		}
		return
	}
	if after == nil || num(after[1]) != last || after[2] != show(*rows[last].Dial) {
		t.Fatalf("after row %d comes dial %v:\n%s", last, *rows[last].Dial, text)
	}
}

// show is a dial number as the dial is marked: thirds as fractions.
func show(dial float64) string {
	whole, part := math.Modf(dial)
	for n, text := range []string{1: " 1/3", 2: " 2/3"} {
		if n > 0 && math.Abs(part-float64(n)/3) < 1e-6 {
			return strconv.Itoa(int(whole)) + text
		}
	}
	return strings.TrimSuffix(strings.TrimRight(strconv.FormatFloat(dial, 'f', 3, 64), "0"), ".")
}

// After a restart the greeting names the step and the row, and the work goes on
// from there, with every move still to be taken back.
func TestMakingAfterRestart(t *testing.T) {
	tk := talk(t)
	s, _ := tk.Begin()
	var states []dialog.State
	for _, l := range append(append([]string(nil), bandPlan...), "start knitting", "I'm on row 8", "latched up to L20") {
		s, _ = tk.Turn(s, l)
		b, err := s.MarshalJSON()
		require.NoError(t, err)
		var kept dialog.State
		require.NoError(t, kept.UnmarshalJSON(b))
		states = append(states, kept)
	}
	again, ok := dialog.Resume(states)
	require.True(t, ok)
	require.Equal(t, s.Making, again.Making)
	require.Contains(t, tk.Welcome(again).Markdown, "You were at: drop and latch the rib columns, done up to L21.")
	_, here := tk.Turn(s, "repeat")
	_, there := tk.Turn(again, "repeat")
	require.Equal(t, here.Markdown, there.Markdown)
	_, r := tk.Turn(again, "undo")
	require.Contains(t, r.Markdown, "row 8 of 22 at dial 3.5")
}
