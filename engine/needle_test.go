package engine

import (
	"testing"

	"pgregory.net/rapid"
)

func TestNeedleName(t *testing.T) {
	for _, c := range []struct {
		col, stitches int
		want          string
	}{
		{0, 150, "L75"}, {74, 150, "L1"}, {75, 150, "R1"}, {149, 150, "R75"}, // 75-0-75, W44
		{0, 130, "L65"}, {129, 130, "R65"}, // 65-0-65, W43
		{0, 97, "L49"}, {48, 97, "L1"}, {49, 97, "R1"}, {96, 97, "R48"},
		{0, 1, "L1"}, {-1, 10, ""}, {10, 10, ""},
	} {
		if got := NeedleName(c.col, c.stitches); got != c.want {
			t.Errorf("NeedleName(%d, %d) = %q, want %q", c.col, c.stitches, got, c.want)
		}
	}
}

func TestNeedleColumnRefuses(t *testing.T) {
	for _, name := range []string{"", "L", "L0", "R0", "l3", "X3", "L04", "R-1", "L50", "R49", "L3x", "3L"} {
		if col, ok := NeedleColumn(name, 97); ok {
			t.Errorf("NeedleColumn(%q, 97) = %d, want none", name, col)
		}
	}
}

func TestNeedleNamesReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 300).Draw(t, "stitches")
		seen := map[string]bool{}
		for col := range n {
			name := NeedleName(col, n)
			back, ok := NeedleColumn(name, n)
			if !ok || back != col || seen[name] {
				t.Fatalf("column %d of %d is %q, read back as %d (%v)", col, n, name, back, ok)
			}
			seen[name] = true
		}
	})
}
