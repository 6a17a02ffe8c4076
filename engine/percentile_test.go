package engine

import (
	"math"
	"testing"
)

// surveys reads the ANSUR II histograms by sex and measure.
func surveys(t *testing.T) map[string]Histogram {
	t.Helper()
	all := map[string]Histogram{}
	for _, row := range published(t, "ansur2-neck-head-histogram.csv") {
		key := row["sex"] + " " + row["measure"]
		all[key] = append(all[key], Bin{Value: decimal(t, row["mm"]), Count: whole(t, row["count"])})
	}
	return all
}

func TestHistogramPublished(t *testing.T) {
	all := surveys(t)
	columns := map[string]float64{"min": 0, "p1": .01, "p2.5": .025, "p5": .05, "p10": .1, "p25": .25, "p50": .5,
		"p75": .75, "p90": .9, "p95": .95, "p97.5": .975, "p99": .99, "max": 1}
	for _, row := range published(t, "ansur2-summary.csv") {
		name := row["sex"] + " " + row["measure"]
		h := all[name]
		delete(all, name)
		if h.Total() != whole(t, row["n"]) {
			t.Errorf("%s: n %d, want %s", name, h.Total(), row["n"])
			continue
		}
		mean, sd := h.Moments()
		if math.Abs(mean-decimal(t, row["mean"])) > 0.0005+1e-9 || math.Abs(sd-decimal(t, row["sd"])) > 0.0005+1e-9 {
			t.Errorf("%s: mean %.4f sd %.4f, want %s %s", name, mean, sd, row["mean"], row["sd"])
		}
		for column, p := range columns {
			if got := h.Percentile(p); math.Abs(got-decimal(t, row[column])) > 0.0005+1e-9 {
				t.Errorf("%s %s: %.4f, want %s", name, column, got, row[column])
			}
		}
	}
	for name := range all {
		t.Errorf("%s has no summary to compare with", name)
	}
}

func TestHistogramEdges(t *testing.T) {
	if p := (Histogram{}).Percentile(.5); !math.IsNaN(p) {
		t.Errorf("the middle of nobody is %g", p)
	}
	if mean, sd := (Histogram{}).Moments(); !math.IsNaN(mean) || !math.IsNaN(sd) {
		t.Errorf("nobody has mean %g and deviation %g", mean, sd)
	}
	if p := (Histogram{{Value: 4, Count: -1}}).Percentile(.5); !math.IsNaN(p) {
		t.Errorf("the middle of less than nobody is %g", p)
	}
	h := Histogram{{Value: 4, Count: 1}, {Value: 1, Count: 2}, {Value: 9, Count: 0}}
	for _, tt := range []struct{ p, want float64 }{{0, 1}, {.5, 1}, {.75, 2.5}, {1, 4}, {-3, 1}, {7, 4}} {
		if got := h.Percentile(tt.p); got != tt.want {
			t.Errorf("percentile %g: %g, want %g", tt.p, got, tt.want)
		}
	}
}

func TestLMSPublished(t *testing.T) {
	columns := map[string]float64{"p3": .03, "p15": .15, "p50": .5, "p85": .85, "p97": .97}
	for _, row := range published(t, "who2006-head-circumference.csv") {
		r := LMS{L: decimal(t, row["L"]), M: decimal(t, row["M"]), S: decimal(t, row["S"])}
		for column, p := range columns {
			got := r.Percentile(p)
			if math.Abs(got-decimal(t, row[column])) > 0.005+1e-9 {
				t.Errorf("%s %s months %s: %.4f, want %s", row["sex"], row["month"], column, got, row[column])
			}
			if back := r.Share(got); math.Abs(back-p) > 1e-9 {
				t.Errorf("%s %s months: %.2f cm is percentile %g, want %g", row["sex"], row["month"], got, back, p)
			}
		}
	}
}

// The power has no jump at 0, and other powers turn around too.
func TestLMSPowers(t *testing.T) {
	at0 := LMS{L: 0, M: 50, S: .03}.At(1.5)
	if near := (LMS{L: 1e-7, M: 50, S: .03}).At(1.5); math.Abs(near-at0) > 1e-5 {
		t.Errorf("L near 0: %g, at 0: %g", near, at0)
	}
	for _, l := range []float64{-2, -.5, 0, .4, 1, 3} {
		r := LMS{L: l, M: 50, S: .03}
		if got := r.Share(r.Percentile(.9)); math.Abs(got-.9) > 1e-9 {
			t.Errorf("L %g: percentile 0.9 came back as %g", l, got)
		}
	}
	// Standard normal table: 0.975 ends at 1.959964.
	if z := Deviations(.975); math.Abs(z-1.959964) > 5e-7 {
		t.Errorf("0.975 ends at %g", z)
	}
}
