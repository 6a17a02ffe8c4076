package page

import (
	"fmt"
	"html"
	"strings"
)

// drawing builds one SVG picture. All lengths are millimetres of paper, and
// text is never scaled: a picture that does not fit is cut into several.
type drawing struct {
	body          strings.Builder
	width, height float64
	label         string // what a screen reader says
}

// Letter heights in mm: 12 pt, the smallest that is read from a metre, and
// 10 pt for what is only a help.
const (
	large = 4.24
	small = 3.53
)

func draw(width, height float64, label string) *drawing {
	return &drawing{width: width, height: height, label: label}
}

// String is the picture. It needs no namespace inside HTML and so names no
// address.
func (d *drawing) String() string {
	return fmt.Sprintf("<svg role=\"img\" aria-label=\"%s\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\">\n%s</svg>",
		html.EscapeString(d.label), mm(d.width), mm(d.height), mm(d.width), mm(d.height), d.body.String())
}

// mm is a length to hundredths, without idle zeros.
func mm(x float64) string {
	s := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.2f", x), "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}

// path draws a line through commands such as "M0 0 L1 1".
func (d *drawing) path(class, commands string) {
	fmt.Fprintf(&d.body, "<path class=\"%s\" d=\"%s\"/>\n", class, commands)
}

func (d *drawing) line(class string, x1, y1, x2, y2 float64) {
	d.path(class, fmt.Sprintf("M%s %s L%s %s", mm(x1), mm(y1), mm(x2), mm(y2)))
}

func (d *drawing) dot(x, y, r float64) {
	fmt.Fprintf(&d.body, "<circle class=\"solid\" cx=\"%s\" cy=\"%s\" r=\"%s\"/>\n", mm(x), mm(y), mm(r))
}

// text sets a word; anchor is start, middle or end.
func (d *drawing) text(x, y, size float64, anchor, class, s string) {
	fmt.Fprintf(&d.body, "<text class=\"%s\" x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\">%s</text>\n",
		class, mm(x), mm(y), mm(size), anchor, html.EscapeString(s))
}

// wide is about how wide a word is set, in mm: a digit is 0.56 of its height
// in the usual sans-serif faces.
func wide(s string, size float64) float64 { return 0.56 * size * float64(len([]rune(s))) }
