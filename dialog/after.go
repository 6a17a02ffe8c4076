package dialog

import (
	"strings"

	"foldrow/dialog/listen"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// measured is what a line says of the finished band, cm; nil where it says
// nothing of that.
type measured struct {
	neck  *engine.Num // round the join
	depth *engine.Num // folded
	edge  *engine.Num // round the free edge, relaxed
	full  *engine.Num // round the free edge, fully stretched
}

// heardAfter takes a line about the finished band ("the band measures 38 cm",
// "it came out 2.5 cm deep"). ok is false for any other line.
func (c *turn) heardAfter() (s State, r Reply, ok bool) {
	if !c.cameOut() {
		return c.s, Reply{}, false
	}
	m := measuredIn(c.said, c.s.Unit)
	if m == (measured{}) {
		return c.s, Reply{}, false
	}
	s, r = c.onAfter(m.neck, m.depth, m.edge, m.full)
	return s, r, true
}

// cameOut reports whether the line tells a measure of the band just made:
// with "came out" once its rows are knitted, with "measures" once it is sewn
// off, since before that the word gives an input.
func (c *turn) cameOut() bool {
	p := c.kept()
	if !c.s.Making.On || p.BandStitches == 0 || p.LayerRows == 0 || c.open(c.s) != "" || c.m.Kind == listen.WhatIf || strings.HasSuffix(c.said, "?") {
		return false
	}
	w := c.standing(p)
	if _, last := w.rowSteps(); w.at <= last {
		return false
	}
	low := " " + strings.Join(strings.Fields(strings.ToLower(c.said)), " ") + " "
	has := func(list ...string) bool {
		for _, s := range list {
			if strings.Contains(low, s) {
				return true
			}
		}
		return false
	}
	sewn := w.m.Over || w.at > w.index("sew-off")
	return has(" came out ", " comes out ", " turned out ", " ended up ", " has come out ") ||
		sewn && has(" measures ", " measured ", " stretches to ", " is now ", " relaxed ", " stretched ")
}

// measuredIn reads the lengths of a line and what each is of: by the words
// next to it, else a long one is the neck and a short one the depth.
func measuredIn(said, unit string) measured {
	var m measured
	low := strings.ToLower(said)
	from := 0
	for _, q := range quantity.Scan(low) {
		cm, ok := q.Length()
		if q.Unit == quantity.None && q.Problem == "" && !q.Ordinal {
			cm, ok = q.Value, true
			if unit == "in" {
				cm = q.Value.Mul(engine.Frac(254, 100))
			}
		}
		if !ok || q.Range || cm.Sign() <= 0 {
			continue
		}
		to := len(low)
		if i := strings.IndexAny(low[q.End:], ",;0123456789"); i >= 0 {
			to = q.End + i
		}
		m.put(low[from:to], cm)
		from = to
	}
	return m
}

func (m *measured) put(near string, cm engine.Num) {
	has := func(words ...string) bool {
		for _, w := range words {
			if strings.Contains(near, w) {
				return true
			}
		}
		return false
	}
	switch {
	case has("stretch") && !has("unstretch"):
		m.full = &cm
	case has("deep", "depth", "high", "tall", "shallow"):
		m.depth = &cm
	case has("edge", "fold", "relaxed", "top"):
		m.edge = &cm
	case has("neck", "round", "join", "seam", "opening"), !cm.Less(engine.Int(15)):
		m.neck = &cm
	default:
		m.depth = &cm
	}
}
