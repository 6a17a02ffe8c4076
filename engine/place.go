package engine

// Place is where a chart's repeat is put on the row, the same for all its
// rows.
type Place string

// The places. Balanced is the middle of a repeat at the centre, half a stitch
// to its left where one is odd and the other even, or, where that does not
// leave mirrored edges, the nearest place that does.
const (
	PlaceBalanced Place = "balanced"
	PlaceMiddle   Place = "middle"  // the middle of a repeat at the centre
	PlaceBetween  Place = "between" // the join of two repeats at the centre
	PlaceLeft     Place = "left"    // a whole repeat begins at the left edge
	PlaceRight    Place = "right"   // a whole repeat ends at the right edge
)

// lay puts the rows of a chart, all equally wide, over n stitches, and counts
// the rows that are then their own mirror image.
func lay(chart [][]bool, n int, at Place) (rows [][]bool, mirror int) {
	if len(chart) == 0 || len(chart[0]) == 0 {
		return nil, 0
	}
	wide := len(chart[0])
	middle := (n - wide) / 2
	switch at {
	case PlaceMiddle:
		return layFrom(chart, n, middle)
	case PlaceBetween:
		return layFrom(chart, n, (n+1)/2)
	case PlaceLeft:
		return layFrom(chart, n, 0)
	case PlaceRight:
		return layFrom(chart, n, n)
	}
	rows, mirror = layFrom(chart, n, middle)
	for shift := 1; shift < wide && mirror < len(chart); shift++ {
		by := (shift + 1) / 2 // left and right in turn: 1, -1, 2, -2 ...
		if shift%2 == 0 {
			by = -by
		}
		if other, m := layFrom(chart, n, middle+by); m > mirror {
			rows, mirror = other, m
		}
	}
	return rows, mirror
}

// layFrom lays the chart so that a repeat begins at column start.
func layFrom(chart [][]bool, n, start int) (rows [][]bool, mirror int) {
	for _, repeat := range chart {
		row := tileFrom(repeat, n, start)
		if mirrored(row) {
			mirror++
		}
		rows = append(rows, row)
	}
	return rows, mirror
}

// tileFrom lays the repeat so that one begins at column start.
func tileFrom(repeat []bool, n, start int) []bool {
	length := len(repeat)
	row := make([]bool, n)
	for col := range row {
		row[col] = repeat[((col-start)%length+length)%length]
	}
	return row
}

func mirrored(row []bool) bool {
	for i, j := 0, len(row)-1; i < j; i, j = i+1, j-1 {
		if row[i] != row[j] {
			return false
		}
	}
	return true
}
