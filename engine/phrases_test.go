package engine

import (
	"slices"
	"testing"
)

func TestRuns(t *testing.T) {
	tests := []struct {
		stitches, needles int
		runs              []Run
		phrases           []Phrase
	}{
		{97, 97, nil, nil},
		{98, 97, []Run{{48, 0, 1}}, nil},
		{201, 134, []Run{{1, 2, 67}}, []Phrase{{[]int{2}, 66}}},
		{150, 101, []Run{{1, 2, 13}, {28, 2, 23}, {75, 2, 13}},
			[]Phrase{{[]int{2}, 12}, {[]int{3}, 1}, {[]int{2}, 22}, {[]int{3}, 1}, {[]int{2}, 12}}},
		{11, 8, []Run{{1, 2, 2}, {6, 0, 1}}, []Phrase{{[]int{2, 3}, 1}}},
	}
	for _, tt := range tests {
		m := Spread(tt.stitches, tt.needles)
		if got := Runs(m); !slices.Equal(got, tt.runs) {
			t.Errorf("%d on %d: runs %v, want %v", tt.stitches, tt.needles, got, tt.runs)
		}
		_, got := Phrases(m)
		same := func(a, b Phrase) bool { return slices.Equal(a.Steps, b.Steps) && a.Times == b.Times }
		if !slices.EqualFunc(got, tt.phrases, same) {
			t.Errorf("%d on %d: phrases %v, want %v", tt.stitches, tt.needles, got, tt.phrases)
		}
	}
	if m := FromRuns([]Run{{3, 2, 3}}, 7); m != nil {
		t.Errorf("a run past the last needle gave %v", m)
	}
	if m := FromRuns([]Run{{3, 0, 1}, {1, 2, 2}}, 7); m != nil {
		t.Errorf("two runs on one needle gave %v", m)
	}
	if m := FromPhrases(1, []Phrase{{[]int{0}, 1}}, 7); m != nil {
		t.Errorf("a step of nothing gave %v", m)
	}
}

func TestPhrasesSayTheMap(t *testing.T) {
	for n := 1; n <= 120; n++ {
		for d := 0; d <= n; d++ {
			m := Spread(n+d, n)
			first, phrases := Phrases(m)
			if got := FromPhrases(first, phrases, n); !slices.Equal(got, m) {
				t.Fatalf("n=%d d=%d: phrases %d %v do not give the map", n, d, first, phrases)
			}
			first, phrases = Phrases(Singles(m))
			if got := FromPhrases(first, phrases, n); !slices.Equal(Singles(got), m) {
				t.Fatalf("n=%d d=%d: phrases of the singles %d %v do not give the map", n, d, first, phrases)
			}
		}
	}
}
