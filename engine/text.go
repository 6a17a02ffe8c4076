package engine

import (
	"strconv"
	"strings"
)

func itoa(i int) string { return strconv.Itoa(i) }

// cutInts reads "2x1" as 2 and 1.
func cutInts(s string) (a, b int, ok bool) {
	l, r, found := strings.Cut(s, "x")
	a, err1 := strconv.Atoi(l)
	b, err2 := strconv.Atoi(r)
	return a, b, found && err1 == nil && err2 == nil
}
