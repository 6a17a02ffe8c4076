package engine

import (
	"testing"
	"time"
)

// sixStages is a full yoke of six stages with a chart of twelve rows on its
// longest stage that fits the bed in pieces.
func sixStages(t fataler) Inputs {
	return with(t, cardigan(t).Without(YokeStitches), "yoke_first", "360", "stages", "6", "stage_repeats", "12 12 10 8 6 4", "bust", "104",
		"chart", "x...../.x.x../..x.../x....x/xx..xx/x.x.x./x...../.x.x../..x.../x....x/xx..xx/x.x.x.", "chart_stage", "1", "chart_times", "2")
}

// within fails where the quickest of some runs takes longer than limit: one
// quick run shows that the work can be done in that time, however busy the
// machine is.
func within(t *testing.T, limit time.Duration, what string, work func()) {
	t.Helper()
	best := time.Hour
	for range 40 {
		start := time.Now()
		work()
		best = min(best, time.Since(start))
	}
	t.Logf("%s: %v of %v", what, best, limit)
	if best > limit {
		t.Errorf("%s takes %v, more than %v", what, best, limit)
	}
}

// TestYokeIsQuick: a full yoke of six stages with its row cards, and the
// search for counts at its worst, within the times that are wanted.
func TestYokeIsQuick(t *testing.T) {
	if testing.Short() {
		t.Skip("short runs are those that the race detector slows")
	}
	in := sixStages(t)
	if p := Solve(in); p.Yoke.Stages == nil || len(p.Chart.Cards) != 24 {
		t.Fatalf("not a full yoke: %v %v", p.Yoke.Fault, p.Chart.Fault)
	}
	within(t, 2*time.Millisecond, "six stages with row cards", func() { Solve(in) })
	worst := YokeSpec{Start: maxStitches, Neck: 2, Method: EqualCuts, Had: map[int]int{0: maxStitches}}
	for i := range MostStages {
		worst.Stages = append(worst.Stages, StageSpec{Repeat: 1 + i%2, Height: Int(1)})
	}
	exact, err := worst.exact()
	if err != nil {
		t.Fatal(err)
	}
	within(t, 20*time.Millisecond, "the search over all counts", func() {
		if _, err := worst.bestFit(exact, worst.Start); err != nil {
			t.Fatal(err)
		}
	})
}

// TestBestFit holds the search against trying every set of counts.
func TestBestFit(t *testing.T) {
	for _, y := range []YokeSpec{
		{Start: 60, Neck: 20, Method: EqualCuts, Stages: []StageSpec{{}, {Repeat: 7}, {Repeat: 9, Edge: 1}, {Repeat: 11}}},
		{Start: 80, Neck: 30, Method: EqualCuts, Stages: []StageSpec{{}, {Repeat: 25}, {Repeat: 17}, {Repeat: 33}}},
		{Start: 64, Neck: 31, Method: EqualCuts, Stages: []StageSpec{{}, {Repeat: 10, Edge: 2}, {Repeat: 32}, {}}},
		{Start: 64, Neck: 31, Method: EqualCuts, Had: map[int]int{1: 40}, Stages: []StageSpec{{}, {}, {Repeat: 6}, {Repeat: 4}}},
	} {
		exact, err := y.exact()
		if err != nil {
			t.Fatal(err)
		}
		best := -1.0
		for a := y.Neck; a <= y.Start; a++ {
			for b := y.Neck; b <= y.hung(1, a); b++ {
				for c := y.Neck; c <= y.hung(2, b); c++ {
					set := []int{y.Start, a, b, c}
					cost, fits := 0.0, true
					for i := 1; i < 4; i++ {
						counts := y.Stages[i].counts()
						fits = fits && counts.atMost(set[i]) == set[i]
						d := float64(set[i]) - exact[i].Float()
						cost += d * d
					}
					if fits && (best < 0 || cost < best) {
						best = cost
					}
				}
			}
		}
		got, err := y.bestFit(exact, y.Start)
		if (err != nil) != (best < 0) {
			t.Errorf("%+v: %v, by trying %v", y, err, best)
			continue
		}
		cost := 0.0
		for i := 1; err == nil && i < 4; i++ {
			d := float64(got[i]) - exact[i].Float()
			cost += d * d
		}
		if err == nil && (cost > best+1e-6 || cost < best-1e-6) {
			t.Errorf("%+v: %v costs %v, by trying %v", y, got, cost, best)
		}
	}
}
