package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// Part is what a line says about the work above the neckband: the yoke, a
// colour row. What was not said stays 0. It sets nothing in the plan.
type Part struct {
	Yoke // the yoke's stages

	Pattern  []bool        // the repeat of a colour row, true for contrast
	Anchor   engine.Anchor // where the repeat is lined up
	Stitches int           // of the row
	Length   engine.Num    // of a float, cm
	Gauge    engine.Num    // stitches in 10 cm of the row itself
}

// Yoke is what was said about the stages of a yoke.
type Yoke struct {
	Start   int               `json:"start,omitempty"` // stitches of the first stage
	Body    int               `json:"body,omitempty"`  // stitches of the body below it
	Neck    int               `json:"neck,omitempty"`
	Stages  int               `json:"stages,omitempty"`
	Repeats []int             `json:"repeats,omitempty"`
	Edge    int               `json:"edge,omitempty"`
	Method  engine.YokeMethod `json:"method,omitempty"`
	Bust    engine.Num        `json:"-"` // cm
	Heights []engine.Num      `json:"-"` // cm, of the stages
}

// around reads a line about the work around the neckband. It needs a phrasing
// of rules/parts.md, or a row drawn in signs, and the numbers that go with it.
func (r *reading) around() (Meaning, bool) {
	c, ok := r.cues[Parts]
	topic := c.topic
	p := Part{}
	if pattern, drawn := r.drawnRow(); drawn {
		p.Pattern, topic, ok = pattern, "colour-row", true
	}
	if !ok || r.cue(Why) || r.ctx.Making && r.cue(Step) && !r.asks() {
		return Meaning{}, false
	}
	readers := map[string]func(*Part) bool{
		"stages": r.stages, "yoke-depth": r.yokeDepth, "colour-row": r.colourRow, "float-limit": r.floatLimit,
	}
	// A line may hold the words of two parts; the surer is tried first.
	for _, t := range []string{topic, "stages", "colour-row"} {
		if t != topic && !r.x.partCue(r.l, t) {
			continue
		}
		try := p
		if read := readers[t]; read != nil && read(&try) {
			return Meaning{Kind: Parts, Topic: t, Parts: try}, true
		}
	}
	return Meaning{}, false
}

// partCue reports whether the line holds a phrasing of that part.
func (x *Lexicon) partCue(l *Line, topic string) bool {
	for _, c := range x.cues {
		if c.kind == Parts && c.topic == topic {
			if _, ok := c.match(l); ok {
				return true
			}
		}
	}
	return false
}

// whole is the count that token i says, 0 where it is none.
func (r *reading) whole(i int) int {
	if i < 0 || i >= len(r.l.tokens) {
		return 0
	}
	q := r.l.tokens[i].q
	if q == nil || q.Problem != "" || q.Rib || q.Range || q.Over.Sign() != 0 || isLength(q.Unit) || !q.Value.IsInt() || q.Value.Sign() <= 0 {
		return 0
	}
	return q.Value.Floor()
}

// near is the word n tokens from i, "" beyond the line.
func (r *reading) near(i, n int) string {
	if i += n; i < 0 || i >= len(r.l.tokens) || r.l.tokens[i].q != nil {
		return ""
	}
	return r.l.tokens[i].stem
}

// wordBefore reports whether one of the words stands before token i, with at
// most one word between.
func (r *reading) wordBefore(i int, words ...string) bool {
	return oneOf(r.near(i, -1), words) || r.near(i, -1) != "" && oneOf(r.near(i, -2), words)
}

// wordAfter is the same after token i.
func (r *reading) wordAfter(i int, words ...string) bool {
	return oneOf(r.near(i, 1), words) || r.near(i, 1) != "" && oneOf(r.near(i, 2), words)
}

// says reports whether one of the words stands in the line, in any form.
func (r *reading) says(words ...string) bool {
	for _, t := range r.l.tokens {
		if t.q == nil && oneOf(t.stem, words) {
			return true
		}
	}
	return false
}

func oneOf(w string, words []string) bool {
	if w == "" {
		return false
	}
	for _, x := range words {
		if w == x || w == stem(x) {
			return true
		}
	}
	return false
}

// length takes the lengths and the gauge that the line says for a row.
func (r *reading) length(p *Part) {
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		switch per, rate := q.Per10cm(); {
		case q.Problem != "" || q.Range || q.Rib:
		case rate && q.Unit == quantity.Stitch:
			p.Gauge = per
		case rate || q.Unit == quantity.Row:
		default:
			if cm, ok := q.Length(); ok {
				p.Length = cm
			}
		}
	}
}
