package answer

import "strings"

// The screen at the machine: so many lines of so many columns are read at a
// glance, with both hands busy.
const (
	GlanceLines = 8
	glanceWide  = 60
)

// Glance counts the lines of a reply in a window as wide as that, its marks
// left out and blank lines counted.
func Glance(markdown string) int {
	n := 0
	for _, line := range strings.Split(strings.NewReplacer("*", "", "`", "").Replace(markdown), "\n") {
		hang, used := 0, 0
		if strings.HasPrefix(line, "- ") {
			hang = 2
		}
		n++
		for i, w := range strings.Fields(line) {
			switch {
			case i == 0:
				used = len(w)
			case used+1+len(w) > glanceWide:
				n++
				used = hang + len(w)
			default:
				used += 1 + len(w)
			}
		}
	}
	return n
}
