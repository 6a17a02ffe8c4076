package engine

import (
	"slices"
	"strings"
	"testing"
)

// doubled lists the columns that carry two.
func doubled(m []int) []int {
	var cols []int
	for i, s := range m {
		if s == 2 {
			cols = append(cols, i)
		}
	}
	return cols
}

// stepsAround are the steps from doubled needle to doubled needle, the last
// one from the last around to the first, as in the round; sorted.
func stepsAround(cols []int, n int) []int {
	steps := make([]int, len(cols))
	for i := range cols {
		next := n + cols[0]
		if i+1 < len(cols) {
			next = cols[i+1]
		}
		steps[i] = next - cols[i]
	}
	slices.Sort(steps)
	return steps
}

// lineSteps are the sorted steps of d marks on n by the integer line
// algorithm: an error term that is carried from place to place.
func lineSteps(d, n int) []int {
	var cols []int
	err := 0
	for i := range n {
		if err += d; err >= n {
			err -= n
			cols = append(cols, i)
		}
	}
	return stepsAround(cols, n)
}

// rhythmSteps are the sorted steps of d marks on n by the grouping algorithm
// for even rhythms: groups are paired with remainders until one kind is left.
func rhythmSteps(d, n int) []int {
	front, back := make([][]bool, d), make([][]bool, n-d)
	for i := range front {
		front[i] = []bool{true}
	}
	for i := range back {
		back[i] = []bool{false}
	}
	for len(back) > 1 {
		k := min(len(front), len(back))
		for i := range k {
			front[i] = append(slices.Clone(front[i]), back[i]...)
		}
		if len(front) > k {
			front, back = front[:k], front[k:]
		} else {
			back = back[k:]
		}
	}
	var cols []int
	at := 0
	for _, group := range append(front, back...) {
		for _, mark := range group {
			if mark {
				cols = append(cols, at)
			}
			at++
		}
	}
	return stepsAround(cols, n)
}

func TestSpreadProperties(t *testing.T) {
	for n := 1; n <= 200; n++ {
		for d := 0; d <= n; d++ {
			m := Spread(n+d, n)
			cols := doubled(m)
			if len(m) != n || len(cols) != d {
				t.Fatalf("n=%d d=%d: %d needles, %d doubled", n, d, len(m), len(cols))
			}
			if !slices.Equal(FromRuns(Runs(m), n), m) {
				t.Fatalf("n=%d d=%d: runs %v do not give the map", n, d, Runs(m))
			}
			if d == 0 {
				continue
			}
			if n >= 2*d+2 && (m[0] == 2 || m[n-1] == 2) {
				t.Errorf("n=%d d=%d: an edge carries two", n, d)
			}
			slack := d % 2 * (1 - n%2) // odd on even: out by one at most
			for i := range cols {
				if out := cols[i] + cols[d-1-i] - (n - 1); out > slack || out < -slack {
					t.Fatalf("n=%d d=%d: mirror out by %d: %v", n, d, out, cols)
				}
			}
			checkSteps(t, n, d, cols)
		}
	}
}

// checkSteps compares with the two independent methods. They know no centre:
// where every step would be the same even number and the marks are even in
// number, mirroring moves one needle from the middle step to the ends.
func checkSteps(t *testing.T, n, d int, cols []int) {
	t.Helper()
	got := stepsAround(cols, n)
	line, rhythm := lineSteps(d, n), rhythmSteps(d, n)
	if !slices.Equal(line, rhythm) {
		t.Fatalf("n=%d d=%d: the references differ: %v %v", n, d, line, rhythm)
	}
	if d%2 == 0 && n%(2*d) == 0 {
		line[0]--
		line[d-1]++
	}
	if !slices.Equal(got, line) {
		t.Errorf("n=%d d=%d: steps %v, want %v", n, d, got, line)
	}
	for i := 1; i+1 < d; i++ {
		a, b := cols[i]-cols[i-1], cols[i+1]-cols[i]
		if a-b > 1 || b-a > 1 {
			t.Errorf("n=%d d=%d: steps %d and %d", n, d, a, b)
		}
	}
}

func TestSpreadExamples(t *testing.T) {
	tests := []struct {
		stitches, needles int
		want              []int
	}{
		{3, 3, []int{1, 1, 1}},
		{6, 3, []int{2, 2, 2}},
		{6, 5, []int{1, 1, 2, 1, 1}},
		{5, 4, []int{1, 1, 2, 1}},
		{12, 8, []int{1, 2, 1, 2, 2, 1, 2, 1}},
		{14, 12, []int{1, 1, 1, 2, 1, 1, 1, 1, 2, 1, 1, 1}},
		{11, 8, []int{1, 2, 1, 2, 1, 1, 2, 1}},
		{9, 6, []int{1, 2, 1, 2, 1, 2}},
		{7, 3, nil},
		{2, 3, nil},
		{0, 0, nil},
		{1, -1, nil},
	}
	for _, tt := range tests {
		if got := Spread(tt.stitches, tt.needles); !slices.Equal(got, tt.want) {
			t.Errorf("Spread(%d, %d) = %v, want %v", tt.stitches, tt.needles, got, tt.want)
		}
	}
}

func TestSpreadStages(t *testing.T) {
	for needles := 1; needles <= 60; needles++ {
		for stitches := 0; stitches <= 9*needles; stitches++ {
			left, hangings := stitches, 0
			for _, m := range SpreadStages(stitches, needles) {
				sum := 0
				for _, s := range m {
					sum += s
				}
				if sum != left || len(m) >= left {
					t.Fatalf("%d on %d: a hanging of %d takes %d to %d", stitches, needles, left, sum, len(m))
				}
				left = len(m)
				hangings++
			}
			need := 0
			for c := needles; c < stitches; c *= 2 {
				need++
			}
			if stitches > needles && left != needles || hangings != need {
				t.Fatalf("%d on %d: %d hangings leave %d, want %d hangings", stitches, needles, hangings, left, need)
			}
		}
	}
	if got := SpreadStages(268, 80); len(got) != 2 || len(got[0]) != 146 {
		t.Errorf("268 on 80: %d hangings, first leaves %d; want 2 and 146 (the middle in proportion)", len(got), len(got[0]))
	}
}

func TestSpreadPublished(t *testing.T) {
	for _, row := range published(t, "decreases.csv") {
		edge := whole(t, row["edge"])
		stitches, d := whole(t, row["stitches"])-edge, whole(t, row["decreases"])
		m := Spread(stitches, stitches-d)
		if len(m)+edge != whole(t, row["left"]) {
			t.Errorf("%s: %d left, want %s", row["id"], len(m)+edge, row["left"])
		}
		// A step of s needles holds s+1 stitches, since its last carries two.
		got := stepsAround(doubled(m), len(m))
		for i := range got {
			got[i]++
		}
		var want []int
		for group := range strings.SplitSeq(row["groups"], "+") {
			count, size, _ := strings.Cut(group, "of")
			for range whole(t, count) {
				want = append(want, whole(t, size))
			}
		}
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%s: groups %v, want %v", row["id"], got, want)
		}
	}
}
