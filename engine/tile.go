package engine

// Anchor is where a pattern repeat is lined up with the row.
type Anchor string

// The anchors of Tile.
const (
	Centred   Anchor = "centred"
	FromLeft  Anchor = "from_left"
	FromRight Anchor = "from_right"
)

// Tile is a repeat carried over a row of n stitches, cut off where the row
// ends, and whether the row came out balanced: its own mirror image. It is
// nil for an empty repeat.
//
// From an edge a whole repeat begins or ends there. Centred puts the middle
// of a repeat on the middle of the row, or half a stitch to the left of it
// where one is odd and the other even; where that does not balance the row and
// another position does, the nearest such position is taken.
func Tile(repeat []bool, n int, at Anchor) (row []bool, balanced bool) {
	length := len(repeat)
	if length == 0 || n < 0 {
		return nil, false
	}
	switch at {
	case FromLeft:
		row = tileFrom(repeat, n, 0)
	case FromRight:
		row = tileFrom(repeat, n, n)
	default:
		middle := (n - length) / 2
		row = tileFrom(repeat, n, middle)
		for shift := 1; shift < length && !mirrored(row); shift++ {
			// Left and right in turn: 1, -1, 2, -2 ...
			by := (shift + 1) / 2
			if shift%2 == 0 {
				by = -by
			}
			if other := tileFrom(repeat, n, middle+by); mirrored(other) {
				row = other
			}
		}
	}
	return row, mirrored(row)
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
