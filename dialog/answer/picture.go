package answer

import (
	"fmt"
	"strings"
)

// picture is lines of characters as a fenced block. Its info string tells
// whoever shows it how many columns at the left are labels, to be said again
// where a line is cut, and which signs stand out.
func picture(label int, signs string, lines []string) string {
	info := fmt.Sprintf("picture %d", label)
	for _, r := range signs {
		info += " " + string(r)
	}
	var b strings.Builder
	b.WriteString("```" + info + "\n")
	for _, line := range lines {
		b.WriteString(strings.TrimRight(line, " ") + "\n")
	}
	b.WriteString("```\n")
	return b.String()
}

// legend explains the picture above it. It is left out where the picture is.
func legend(words string) string { return "```legend\n" + words + "\n```\n" }

// canvas is a picture being drawn; what lies outside is not drawn.
type canvas [][]byte

func newCanvas(wide, high int) canvas {
	c := make(canvas, high)
	for y := range c {
		c[y] = []byte(strings.Repeat(" ", wide))
	}
	return c
}

// put writes text from column x of line y.
func (c canvas) put(x, y int, text string) {
	for i := range len(text) {
		if y >= 0 && y < len(c) && x+i >= 0 && x+i < len(c[y]) {
			c[y][x+i] = text[i]
		}
	}
}

func (c canvas) lines() []string {
	out := make([]string, len(c))
	for y := range c {
		out[y] = string(c[y])
	}
	return out
}
