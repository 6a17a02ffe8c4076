package quantity

import (
	"strings"
	"testing"
	"time"
)

func FuzzScan(f *testing.F) {
	for _, table := range [][]reading{digitForms, wordForms, markForms, compoundForms, rangeForms, gaugeForms, yarnForms} {
		for _, c := range table {
			f.Add(c.line)
		}
	}
	for _, line := range nothing {
		f.Add(line)
	}
	f.Fuzz(func(t *testing.T, line string) {
		checkSpans(t, line)
		for _, q := range Scan(line) {
			q.Length()
			q.Per10cm()
			q.MetresPer100g()
			q.Grams()
			printsBack(t, q)
		}
	})
}

// printsBack: what was read, printed with its unit, reads as the same again.
// Print promises that for values of no more digits than are read.
func printsBack(t *testing.T, q Quantity) {
	t.Helper()
	whole := q.Problem == "" && !q.Range && !q.Rib && !q.IsRate()
	if !whole || len(q.Value.String()) > maxDigits {
		return
	}
	text := Print(q.Value, q.Unit)
	back := Scan(text)
	if len(back) != 1 || back[0].Problem != "" || !back[0].Value.Equal(q.Value) || back[0].Unit != q.Unit || back[0].Start != 0 || back[0].End != len(text) {
		t.Fatalf("%v %s printed as %q reads as %s", q.Value, q.Unit, text, say(text))
	}
}

// TestLinear holds the time of long lines of the same thing to what grows
// with their length: ten times the line may take no more than forty times as
// long (ten, and room for a busy machine). A square would be a hundred.
func TestLinear(t *testing.T) {
	for _, part := range []string{"1 in ", "1/2 ", "1,", "1.1.", "one hundred and ", "2x", "28 sts to 10 cm and ", "a half ", "-1",
		"5' ", "\"", "'", "to the ", "between 1 and ", "L5", "a1", "knit 2 ", "about ", "half to ", "10 cm of my swatch "} {
		short, long := strings.Repeat(part, 2000), strings.Repeat(part, 20000)
		// a line that grows with the square fails every time; a busy machine does not
		var a, b time.Duration
		for range 4 {
			if a, b = quickest(short), quickest(long); b <= 40*a || b <= 20*time.Millisecond {
				break
			}
		}
		if b > 40*a && b > 20*time.Millisecond {
			t.Errorf("%q: %v for %d bytes, %v for %d", part, a, len(short), b, len(long))
		}
	}
}

func quickest(line string) time.Duration {
	best := time.Hour
	for range 3 {
		start := time.Now()
		Scan(line)
		best = min(best, time.Since(start))
	}
	return best
}

// TestCap checks the bound on what one line may hold.
func TestCap(t *testing.T) {
	if n := len(Scan(strings.Repeat("5 cm, ", 1000))); n != MaxQuantities {
		t.Errorf("%d quantities, want %d", n, MaxQuantities)
	}
}

const benchLine = "cardigan: 28 sts and 40 rows to 10 cm, the neck is about 15 3/4 inches (40 cm) round, rib 2x2, " +
	"an inch and a quarter deep or between 3 and 3,5 cm, 420 m per 100 g and I have 35 g left; tension 6"

// BenchmarkScan reads a full line of some 200 characters.
func BenchmarkScan(b *testing.B) {
	b.ReportAllocs()
	b.SetBytes(int64(len(benchLine)))
	for b.Loop() {
		Scan(benchLine)
	}
}
