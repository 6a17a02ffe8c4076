package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"
)

// bareProgram only imports the two libraries of a chat in the terminal and
// sets them up: what any program like ours costs before its own first line.
const bareProgram = `package main

import (
	"fmt"
	"io"

	"github.com/charmbracelet/glamour"
	"github.com/chzyer/readline"
)

func main() {
	page, err := glamour.NewTermRenderer(glamour.WithStandardStyle("notty"), glamour.WithWordWrap(0))
	if err != nil {
		panic(err)
	}
	text, _ := page.Render("**Is it a cardigan, which opens in front, or a pullover?** For example: cardigan.")
	fmt.Print(text)
	if _, err := readline.New("> "); err != nil && err != io.EOF {
		panic(err)
	}
}
`

// BenchmarkStart is the program from its start to the first question, beside a
// program that only imports glamour and readline and renders that question.
// The ratio is ours over the bare one's, of medians taken in turn.
func BenchmarkStart(b *testing.B) {
	ours, bare := built(b, "."), built(b, "bare")
	var own, other []time.Duration
	for b.Loop() {
		own, other = append(own, once(b, ours, "-forget")), append(other, once(b, bare))
	}
	slices.Sort(own)
	slices.Sort(other)
	a, c := own[len(own)/2], other[len(other)/2]
	b.ReportMetric(float64(a.Microseconds()), "µs-ours")
	b.ReportMetric(float64(c.Microseconds()), "µs-bare")
	b.ReportMetric(float64(a)/float64(c), "ratio")
}

// built is a program built as for people: this one, or the bare one.
func built(b *testing.B, what string) string {
	b.Helper()
	out := filepath.Join(b.TempDir(), "program")
	if what == "bare" {
		what = filepath.Join(b.TempDir(), "main.go")
		if err := os.WriteFile(what, []byte(bareProgram), 0o600); err != nil {
			b.Fatal(err)
		}
	}
	if text, err := exec.Command("go", "build", "-o", out, what).CombinedOutput(); err != nil {
		b.Skipf("it cannot be built here: %v %s", err, text)
	}
	return out
}

// once runs a program that finds its input at an end, and gives the time it
// took to say its first question and leave.
func once(b *testing.B, program string, args ...string) time.Duration {
	b.Helper()
	cmd := exec.Command(program, args...)
	cmd.Stdin = strings.NewReader("")
	start := time.Now()
	out, err := cmd.Output()
	took := time.Since(start)
	if err != nil || !strings.Contains(string(out), "pullover?") {
		b.Fatalf("%v: %s", err, out)
	}
	return took
}
