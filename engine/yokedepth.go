package engine

import "fmt"

// depthAt is one size of a published yoke: bust and yoke depth in cm, the
// depth from the back neck edge with no band.
type depthAt struct{ bust, depth int64 }

// Two published patterns of nine sizes each, both read at
// morrisandsons.com.au.
func publishedDepths() [2][]depthAt {
	return [2][]depthAt{
		{{83, 19}, {94, 19}, {99, 21}, {110, 22}, {115, 23}, {125, 23}, {136, 23}, {146, 25}, {151, 25}},
		{{86, 19}, {94, 20}, {102, 22}, {110, 23}, {118, 24}, {124, 25}, {134, 26}, {142, 28}, {150, 30}},
	}
}

// YokeDepth is what is published about the depth of a round yoke, in cm.
type YokeDepth struct {
	Low, High Num  // of the published patterns at this bust
	Rule      Num  // a quarter of the girth
	Over      Num  // how much deeper the rule is than High, 0 where it is not
	Beyond    bool // the bust lies outside both patterns: Low and High are those of the nearest size

	lowOf, highOf int // the pattern each comes from
}

// YokeDepthFor is the published depth for a bust in cm, each pattern
// interpolated between its sizes and held at its smallest and largest, beside
// the rule of a quarter of the girth from the percentage system.
func YokeDepthFor(bust Num) YokeDepth {
	d := YokeDepth{Rule: bust.Div(Int(4)), Beyond: true}
	for i, sizes := range publishedDepths() {
		v, inside := interpolate(sizes, bust)
		if inside {
			d.Beyond = false
		}
		if i == 0 || v.Less(d.Low) {
			d.Low, d.lowOf = v, i
		}
		if i == 0 || d.High.Less(v) {
			d.High, d.highOf = v, i
		}
	}
	if d.High.Less(d.Rule) {
		d.Over = d.Rule.Sub(d.High)
	}
	return d
}

// interpolate is the straight line between the two sizes around bust, and
// whether bust lies between the first and the last.
func interpolate(sizes []depthAt, bust Num) (Num, bool) {
	first, last := sizes[0], sizes[len(sizes)-1]
	switch {
	case bust.Less(Int(first.bust)):
		return Int(first.depth), false
	case Int(last.bust).Less(bust):
		return Int(last.depth), false
	}
	at := Int(first.depth)
	for i, b := range sizes[1:] {
		a := sizes[i]
		if !bust.Less(Int(a.bust)) {
			along := bust.Sub(Int(a.bust)).Div(Int(b.bust - a.bust))
			at = Int(a.depth).Add(along.Mul(Int(b.depth - a.depth)))
		}
	}
	return at, true
}

// expr is the sum for the published depth under k at a bust: the straight line
// between two sizes of the pattern it comes from.
func (d YokeDepth) expr(k Key, bust Num) string {
	of := d.lowOf
	if k == YokeDepthHigh {
		of = d.highOf
	}
	sizes := publishedDepths()[of]
	if _, inside := interpolate(sizes, bust); !inside {
		at := sizes[0]
		if Int(at.bust).Less(bust) {
			at = sizes[len(sizes)-1]
		}
		return itoa(int(at.depth))
	}
	a, b := sizes[0], sizes[1]
	for i := range sizes[1:] {
		if !bust.Less(Int(sizes[i].bust)) {
			a, b = sizes[i], sizes[i+1]
		}
	}
	return fmt.Sprintf("%d + (%s - %d) / (%d - %d) * (%d - %d)", a.depth, fig(bust), a.bust, b.bust, a.bust, b.depth, a.depth)
}
