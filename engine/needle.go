package engine

import "strconv"

// NeedleName is the needle that column col (0 at the left edge) of a row of
// stitches hangs on when the row is centred on the bed: "L48" ... "L1", "R1"
// ... "R48". There is no zero needle; of an odd row the extra stitch hangs on
// the left. It is "" for a column that is not in the row.
func NeedleName(col, stitches int) string { return string(appendNeedle(nil, col, stitches)) }

func appendNeedle(text []byte, col, stitches int) []byte {
	left := (stitches + 1) / 2
	switch {
	case col < 0 || col >= stitches:
		return text
	case col < left:
		return strconv.AppendInt(append(text, 'L'), int64(left-col), 10)
	}
	return strconv.AppendInt(append(text, 'R'), int64(col-left+1), 10)
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
// "none" is written as an empty list. The names share one text, which saves an
// allocation for each.
func needleNames(columns []int, stitches int) []string {
	text := make([]byte, 0, 4*len(columns))
	ends := make([]int, len(columns))
	for i, c := range columns {
		text = appendNeedle(text, c, stitches)
		ends[i] = len(text)
	}
	names, all, from := make([]string, len(columns)), string(text), 0
	for i, end := range ends {
		names[i], from = all[from:end], end
	}
	return names
}
