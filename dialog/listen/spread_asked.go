package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// spreadAsked: "rehang 140 onto 101", "37 decreases over 107" and "lose 37"
// ask for a map of those very counts, whatever the plan has. Figure is the
// stitches, Count the needles; of topic "spread-lost" Figure is what is lost,
// and Count is 0 where the band's own needles are meant; of "spread-band" they
// always are ("decrease evenly from 152").
func (r *reading) spreadAsked() (Meaning, bool) {
	if r.l.has("yoke", "stage", "repeat", "row", "hem", "bump", "neck", "every") || r.cue(WhatIf) && r.l.has("if") || r.cue(Why) {
		return Meaning{}, false
	}
	at, lost := r.spreadVerb()
	qs := r.l.quantities()
	if at < 0 || len(qs) == 0 || len(qs) > 2 || qs[0] < at-1 {
		return Meaning{}, false
	}
	m := Meaning{Kind: Number, Topic: "spread"}
	q := r.l.tokens[qs[0]].q
	first := r.stitches(qs[0])
	switch {
	case len(qs) == 1 && q.Range && q.Unit != quantity.Row && !isLength(q.Unit) && q.Value.IsInt() && q.High.IsInt():
		m.Figure, m.Count = q.High, q.Value.Floor()
		if m.Figure.Less(q.Value) {
			m.Figure, m.Count = q.Value, q.High.Floor()
		}
	case len(qs) == 1 && lost && first > 0 && qs[0] > at && r.spokenBefore(qs[0], "from") && qs[0]+2 >= r.l.end:
		m.Topic, m.Figure = "spread-band", q.Value
	case len(qs) == 1 && lost && first > 0 && qs[0]+2 >= r.l.end && r.l.begin >= at-1:
		m.Topic, m.Figure = "spread-lost", q.Value
	case len(qs) == 1 || first == 0 || r.stitches(qs[1]) == 0:
		return Meaning{}, false
	default:
		to := r.l.tokens[qs[1]].q.Value
		between := r.betweenWord(qs[0], qs[1])
		switch between {
		case "to", "onto", "into", "down":
			m.Figure, m.Count = q.Value, to.Floor()
		case "on", "over", "across", "in", "along":
			m.Figure, m.Count = q.Value, to.Floor()
			if lost {
				m.Topic = "spread-lost"
			}
		case "from":
			if !lost {
				return Meaning{}, false
			}
			m.Figure, m.Count = to, to.Sub(q.Value).Floor()
		default:
			return Meaning{}, false
		}
	}
	m.HasFig = true
	return m, true
}

// spreadVerb is the place of the word that leads to the counts, -1 where there
// is none ("get from 264 to 226" is no more than a hanging); lost where the first count is of stitches that go.
func (r *reading) spreadVerb() (at int, lost bool) {
	at = -1
	for i := r.l.begin; i < r.l.end; i++ {
		t := r.l.tokens[i]
		if t.q != nil {
			continue
		}
		switch t.text {
		case "hang", "rehang", "rehanging", "spread", "distribute":
			at, lost = i, false
			for _, w := range r.l.tokens[i:r.l.end] {
				lost = lost || w.q == nil && (w.stem == stem("decrease") || w.stem == stem("pair"))
			}
			return at, lost
		case "get", "go", "come":
			if r.downFrom() {
				at = i
			}
		case "lose", "decrease", "decreases", "decreasing", "reduce":
			// "decrease from 144 to 100" tells both counts
			return i, true
		}
	}
	return at, at >= 0
}

// downFrom: "from 264 to 226" leads to fewer, as a hanging does.
func (r *reading) downFrom() bool {
	qs := r.l.quantities()
	if len(qs) == 0 || isLength(r.l.tokens[qs[0]].q.Unit) {
		return false
	}
	q := r.l.tokens[qs[0]].q
	said := r.l.text[q.Start:q.End]
	if q.Range {
		return strings.HasPrefix(strings.TrimPrefix(said, "from "), q.High.String())
	}
	return len(qs) == 2 && r.spokenBefore(qs[0], "from") && r.l.tokens[qs[1]].q.Value.Less(q.Value)
}

// doubledAsked: "is every third needle doubled" asks where the doubled needles
// are; a spacing in it is hers and no bump's.
func (r *reading) doubledAsked() (Meaning, bool) {
	text := r.l.text
	if !r.asks() && !askStart(r.l.tokens[r.l.begin].text) || !strings.Contains(text, "every") || !strings.Contains(text, "needle") || !strings.Contains(text, "doubled") && !strings.Contains(text, " two") ||
		r.l.has("if", "hem", "bump", "yoke") {
		return Meaning{}, false
	}
	return Meaning{Kind: Number, Keys: []engine.Key{engine.Rehang}}, true
}

// stitches is the count of stitches or needles that token i says, 0 where it
// counts something else.
func (r *reading) stitches(i int) int {
	if q := r.l.tokens[i].q; q.Unit != quantity.None && q.Unit != quantity.Stitch && q.Unit != quantity.Needle || q.Ordinal || q.After {
		return 0
	}
	return r.whole(i)
}

// betweenWord is the last word between tokens i and j that leads from one count
// to the other.
func (r *reading) betweenWord(i, j int) string {
	for k := j - 1; k > i; k-- {
		switch w := r.l.tokens[k].text; w {
		case "to", "onto", "into", "on", "over", "across", "in", "from", "along", "down":
			return w
		}
	}
	return ""
}
