package engine

import "strconv"

// NeedleName is the needle that column col (0 at the left edge) of a row of
// stitches hangs on when the row is centred on the bed: "L48" ... "L1", "R1"
// ... "R48". There is no zero needle; of an odd row the extra stitch hangs on
// the left. It is "" for a column that is not in the row.
func NeedleName(col, stitches int) string {
	left := (stitches + 1) / 2
	switch {
	case col < 0 || col >= stitches:
		return ""
	case col < left:
		return "L" + itoa(left-col)
	}
	return "R" + itoa(col-left+1)
}

// NeedleColumn is the column of a row of stitches that hangs on the named
// needle, and whether there is one. It reads the names NeedleName writes.
func NeedleColumn(name string, stitches int) (int, bool) {
	if len(name) < 2 || name[1] < '1' || name[1] > '9' {
		return 0, false
	}
	n, err := strconv.Atoi(name[1:])
	if err != nil {
		return 0, false
	}
	left := (stitches + 1) / 2
	switch {
	case name[0] == 'L' && n <= left:
		return left - n, true
	case name[0] == 'R' && n <= stitches-left:
		return left + n - 1, true
	}
	return 0, false
}

// needleNames is the needles of columns, in their order; never nil, so that
// "none" is written as an empty list.
func needleNames(columns []int, stitches int) []string {
	names := make([]string, len(columns))
	for i, c := range columns {
		names[i] = NeedleName(c, stitches)
	}
	return names
}
