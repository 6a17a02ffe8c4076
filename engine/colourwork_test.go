package engine

import (
	"slices"
	"strings"
	"testing"
)

// drawn reads a row drawn with x for contrast.
func drawn(s string) []bool {
	var row []bool
	for _, r := range s {
		row = append(row, r == 'x')
	}
	return row
}

func draw(row []bool) string {
	var b strings.Builder
	for _, x := range row {
		if x {
			b.WriteByte('x')
		} else {
			b.WriteByte('.')
		}
	}
	return b.String()
}

func TestRow(t *testing.T) {
	tests := []struct {
		name, row         string
		spec              RowSpec
		left, right, ends []int
		main, contrast    int
		longMain, longCon int
		over              []Float
	}{
		{"one in three, from the centre out", "x..x..x.", RowSpec{}, []int{3, 0}, []int{6}, nil, 5, 3, 1, 2, nil},
		{"odd row: the middle is left", "x.x", RowSpec{}, []int{0}, []int{2}, nil, 1, 2, 1, 1, nil},
		{"three main at the left end", "...x..x", RowSpec{}, []int{3, 0}, []int{6}, []int{0}, 5, 2, 1, 2, nil},
		{"two main at both ends stay", "..x..", RowSpec{}, []int{2}, nil, nil, 4, 1, 1, 0, nil},
		{"contrast at the ends: main is carried there", "xxx.xx", RowSpec{}, []int{2, 1, 0}, []int{4, 5}, nil, 1, 5, 3, 1, nil},
		{"all main", "......", RowSpec{}, nil, nil, nil, 6, 0, 0, 0, nil},
		{"all contrast", "xx", RowSpec{}, []int{0}, []int{1}, nil, 0, 2, 0, 0, nil},
		{"nothing", "", RowSpec{}, nil, nil, nil, 0, 0, 0, 0, nil},
		{"five is let be without a gauge", "x.....x", RowSpec{}, []int{0}, []int{6}, nil, 5, 2, 1, 5, nil},
		{"six is caught once", "x......x", RowSpec{}, []int{0}, []int{7}, nil, 6, 2, 1, 6,
			[]Float{{Contrast: true, First: 1, Stitches: 6, Catches: []int{3}}}},
		{"2.5 cm at 20 is 5, 7 main between", "x.......x", RowSpec{Gauge: Int(20)}, []int{0}, []int{8}, nil, 7, 2, 1, 7,
			[]Float{{Contrast: true, First: 1, Stitches: 7, Length: Frac(7, 2), Catches: []int{4}}}},
		{"the same at 30 is let be", "x.......x", RowSpec{Gauge: Int(30)}, []int{0}, []int{8}, nil, 7, 2, 1, 7, nil},
		{"a limit in stitches, two catches", "x.......x", RowSpec{LimitStitches: 2}, []int{0}, []int{8}, nil, 7, 2, 1, 7,
			[]Float{{Contrast: true, First: 1, Stitches: 7, Catches: []int{3, 5}}}},
		{"a limit in cm; main floats too", "xxxx.x", RowSpec{Gauge: Int(20), LimitLength: Frac(3, 2)}, []int{2, 1, 0}, []int{3, 5}, nil, 1, 5, 4, 1,
			[]Float{{First: 0, Stitches: 4, Length: Int(2), Catches: []int{1}}}},
	}
	for _, tt := range tests {
		c := Row(drawn(tt.row), tt.spec)
		if !slices.Equal(c.Left, tt.left) || !slices.Equal(c.Right, tt.right) || !slices.Equal(c.Ends, tt.ends) {
			t.Errorf("%s: left %v right %v ends %v", tt.name, c.Left, c.Right, c.Ends)
		}
		if c.Main != tt.main || c.Contrast != tt.contrast {
			t.Errorf("%s: %d main and %d contrast", tt.name, c.Main, c.Contrast)
		}
		if c.LongestMain.Stitches != tt.longMain || c.LongestContrast.Stitches != tt.longCon {
			t.Errorf("%s: longest floats %d and %d", tt.name, c.LongestMain.Stitches, c.LongestContrast.Stitches)
		}
		if !slices.EqualFunc(c.Over, tt.over, sameFloat) {
			t.Errorf("%s: over %+v, want %+v", tt.name, c.Over, tt.over)
		}
	}
}

func sameFloat(a, b Float) bool {
	return a.Contrast == b.Contrast && a.First == b.First && a.Stitches == b.Stitches &&
		a.Length.Equal(b.Length) && slices.Equal(a.Catches, b.Catches)
}

func TestCatchesLeaveNoLongPart(t *testing.T) {
	for limit := 1; limit <= 8; limit++ {
		for n := limit + 1; n <= 60; n++ {
			at, longest := 10, 0
			cols := catches(Float{First: 10, Stitches: n}, limit)
			for _, col := range cols {
				longest, at = max(longest, col-at), col+1
			}
			longest = max(longest, 10+n-at)
			if longest > limit {
				t.Errorf("%d stitches, limit %d: catches %v", n, limit, cols)
			}
			// One catch fewer could not do it.
			if fewer := len(cols) - 1; n <= fewer+(fewer+1)*limit {
				t.Errorf("%d stitches, limit %d: %d catches where %d do", n, limit, len(cols), fewer)
			}
		}
	}
}

// Two colours together take four widths where a plain row takes three (W57),
// whatever their shares.
func TestRowYarn(t *testing.T) {
	for contrast := 1; contrast < 20; contrast++ {
		row := drawn(strings.Repeat("x", contrast) + strings.Repeat(".", 20-contrast))
		c := Row(row, RowSpec{Gauge: Int(20)})
		share := Frac(int64(contrast), 20)
		want := c.Width.Mul(Int(1).Add(share.Mul(Int(2))))
		if !c.Width.Equal(Int(10)) || !c.ContrastYarn.Equal(want) || !c.MainYarn.Add(c.ContrastYarn).Equal(Int(40)) {
			t.Errorf("%d of 20: width %s, contrast %s, main %s", contrast, c.Width, c.ContrastYarn, c.MainYarn)
		}
	}
	c := Row(drawn("x.x."), RowSpec{Gauge: Int(20), Loop: Frac(9, 5)})
	if c.ContrastYarn.String() != "23/5" { // 2 loops of 1.8 and 2 widths of 0.5
		t.Errorf("with a measured loop: %s cm", c.ContrastYarn)
	}
	if c := Row(drawn("...."), RowSpec{Gauge: Int(20)}); c.MainYarn.String() != "6" || c.ContrastYarn.Sign() != 0 {
		t.Errorf("plain row: %s and %s cm", c.MainYarn, c.ContrastYarn)
	}
}

func TestLay(t *testing.T) {
	tests := []struct {
		repeat   string
		n        int
		at       Place
		want     string
		balanced bool
	}{
		{"x..", 8, PlaceLeft, "x..x..x.", false},
		{"x..", 8, PlaceRight, "..x..x..", true},
		{"x..", 7, PlaceLeft, "x..x..x", true},
		{"x..", 7, PlaceBalanced, "x..x..x", true},
		{"x..", 9, PlaceBalanced, ".x..x..x.", true},
		{".x.", 9, PlaceBalanced, ".x..x..x.", true},
		{"xx..", 6, PlaceBalanced, "..xx..", true},
		{"xx..", 7, PlaceBalanced, ".xx..xx", false},
		{"x.xx..", 6, PlaceBalanced, "x.xx..", false},
		{"x", 3, PlaceBalanced, "xxx", true},
		{"x..", 2, PlaceBalanced, "..", true},
		{"x..", 0, PlaceLeft, "", true},
	}
	for _, tt := range tests {
		row, balanced := laid(drawn(tt.repeat), tt.n, tt.at)
		if draw(row) != tt.want || balanced != tt.balanced {
			t.Errorf("%q on %d %s: %q %v, want %q %v", tt.repeat, tt.n, tt.at, draw(row), balanced, tt.want, tt.balanced)
		}
	}
	if rows, mirror := lay([][]bool{nil}, 4, PlaceBalanced); rows != nil || mirror != 0 {
		t.Errorf("an empty repeat gave %v %v", rows, mirror)
	}
}

// laid is one row of a chart on its place, and whether it is then its own
// mirror image.
func laid(repeat []bool, n int, at Place) (row []bool, mirrored bool) {
	rows, mirror := lay([][]bool{repeat}, n, at)
	return rows[0], mirror == 1
}

// A repeat that is a mirror image balances every row it is centred on, odd or
// even, unless no position can.
func TestLayBalances(t *testing.T) {
	for _, repeat := range []string{"x..", "xx..", "x.x....", "x..xx..x...."} {
		for n := 1; n <= 60; n++ {
			row, balanced := laid(drawn(repeat), n, PlaceBalanced)
			any := false
			for start := range len(repeat) {
				any = any || mirrored(tileFrom(drawn(repeat), n, start))
			}
			if balanced != any || len(row) != n {
				t.Errorf("%q on %d: %q balanced %v, possible %v", repeat, n, draw(row), balanced, any)
			}
		}
	}
}
