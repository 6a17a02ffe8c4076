package engine

import (
	"os"
	"runtime"
	"testing"
)

// TestManyPlans works out many plans in one process, a million where
// FOLDROW_TEST_LONG is set as in .ci/run: none may leave anything behind.
func TestManyPlans(t *testing.T) {
	if testing.Short() {
		t.Skip("it takes a while")
	}
	plans := 50_000
	if os.Getenv("FOLDROW_TEST_LONG") != "" {
		plans = 1_000_000
	}
	in := cardigan(t)
	var first uint64
	most := uint64(0)
	for i := range plans {
		n := int64(i)
		p := Solve(in.With(Neck, Frac(3000+n%3000, 100)).With(StitchGauge, Frac(120+n%280, 10)).With(YokeStitches, Int(100+n%200)))
		if p.BandStitches < 1 {
			t.Fatalf("plan %d has %d stitches", i, p.BandStitches)
		}
		if i%(plans/10) == plans/10-1 {
			used := inUse()
			if first == 0 {
				first = used
			}
			most = max(most, used)
		}
	}
	t.Logf("%d bytes in use after a tenth of them, at most %d later", first, most)
	if most > first+1<<20 {
		t.Errorf("memory grows with the plans: %d bytes, then %d", first, most)
	}
}

// inUse is the memory in use once what nobody needs is gone.
func inUse() uint64 {
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return m.HeapAlloc
}
