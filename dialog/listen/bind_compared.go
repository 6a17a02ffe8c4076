package listen

import (
	"strings"

	"foldrow/engine"
)

// relativeTopic: "2 cm deeper" is the depth, "2 cm bigger" the neck, "2 cm
// more" what was spoken of last.
func (b *binder) relativeTopic(i int) {
	var near []int // the words after it first, then those before, none beyond another number
	for j := i + 1; j < min(len(b.l.tokens), i+4) && b.l.tokens[j].q == nil; j++ {
		near = append(near, j)
	}
	for j := i - 1; j >= max(0, i-3) && b.l.tokens[j].q == nil; j-- {
		near = append(near, j)
	}
	for _, j := range near {
		if k := comparedKey(b.l.tokens[j].text); k != "" {
			b.add(k, i, 1)
			return
		}
	}
	if k := b.ctx.Topic; k == engine.Neck || k == engine.Depth {
		b.add(k, i, 0)
	}
}

// comparative reports whether the words around the quantity at i make it a
// difference (+1 more, -1 less).
func (b *binder) comparative(i int, k engine.Key) (sign int, times bool) {
	toks := b.l.tokens
	if i > 0 && (toks[i-1].text == "to" || toks[i-1].text == "at" || toks[i-1].text == "than") {
		return 0, false
	}
	switch k {
	case engine.StartClicks, engine.FoldRow, engine.HemEvery, engine.EdgeStretch, engine.RibStretch, engine.RibDraw, engine.NumberEffect, engine.ClickEffect, engine.MainTension, engine.Ease:
		return 0, false
	}
	if k == engine.StitchGauge || k == engine.RowGauge {
		return 0, false // nobody wishes for so many stitches more in 10 cm: it is an error
	}
	if lead := strings.TrimRight(b.l.text[:toks[i].start], " "); len(lead) > 1 && strings.HasSuffix(lead, "+") && !b.plusJoins(i) {
		return 1, false
	}
	if s := changeVerb(b.l); s != 0 {
		return s, false
	}
	for j := i + 1; j < len(toks) && j <= i+3; j++ {
		if toks[j].q != nil || toks[j].stop {
			break
		}
		if s := comparativeWord(toks[j].text); s != 0 {
			if j+1 < len(toks) && toks[j+1].text == "than" && j+2 < len(toks) && toks[j+2].q != nil {
				return 0, false
			}
			return s, false
		}
	}
	if i > 1 && toks[i-1].text == "by" {
		switch toks[i-2].text {
		case "up", "out":
			return 1, false
		case "down", "in":
			return -1, false
		}
	}
	if i+1 < len(toks) && (toks[i+1].text == "off" || toks[i+1].text == "from" || toks[i+1].text == "away") && b.l.has("take", "cut", "knock", "shave", "subtract", "remov") {
		return -1, false
	}
	if s := b.offOf(i, k); s != 0 {
		return s, false
	}
	if s := b.ledBy(i, k); s != 0 {
		return s, false
	}
	return b.amountOf(i, k), false
}

// ledBy: "add 2 cm", "wider by 2 cm", "go up an inch": the way stands before
// the amount.
func (b *binder) ledBy(i int, k engine.Key) int {
	toks := b.l.tokens
	for j := i - 1; j >= 0 && j >= i-6; j-- {
		if toks[j].q != nil {
			break
		}
		if s := comparativeVerb(toks[j].stem); s != 0 {
			if (toks[j].text == "up" || toks[j].text == "down") && j == i-1 && b.moves(j) && k != engine.StitchGauge && k != engine.RowGauge {
				return s // "go up an inch"
			}
			if i > 0 && toks[i-1].text == "by" || toks[j].stem == "add" || toks[j].stem == "subtract" || toks[j].text == "off" || toks[j].text == "extra" || toks[j].text == "another" {
				return s
			}
		}
		if s := comparativeWord(toks[j].text); s != 0 && i > 0 && (toks[i-1].text == "by" || toks[i-1].text == "with" && j == i-2 || toks[i-1].text == "of" && j == i-2) {
			return s
		}
	}
	return 0
}

// offOf: "half a cm off the depth", "1 cm up on the neck": the way stands
// between the amount and the name of what it is of.
func (b *binder) offOf(i int, k engine.Key) int {
	toks := b.l.tokens
	if i+2 >= len(toks) {
		return 0
	}
	sign := map[string]int{"off": -1, "down": -1, "up": 1, "onto": 1}[toks[i+1].text]
	for _, m := range b.l.mentions {
		if m.key != k || m.from < i+2 || m.from > i+4 {
			continue
		}
		for j := i + 2; j < m.from; j++ {
			if !oneOf(toks[j].text, []string{"on", "in", "from", "of", "the", "my", "her", "his"}) {
				return 0
			}
		}
		return sign
	}
	return 0
}

// amountOf: "wider neck 2 cm" tells by how much, where so small a measure
// cannot be the thing itself.
func (b *binder) amountOf(i int, k engine.Key) int {
	q := b.l.tokens[i].q
	cm, ok := q.Length()
	if !ok || q.Unit == "" || b.l.question || !cm.Less(b.x.spans[k].Possible[0]) || b.l.begin >= i || b.l.tokens[b.l.begin].q != nil {
		return 0
	}
	return comparativeWord(b.l.tokens[b.l.begin].text)
}

// changeVerb: "shrink the neck 2 cm" changes by, not to.
func changeVerb(l *Line) int {
	switch {
	case l.has("widen", "deepen", "lengthen", "enlarg", "extend", "grow"):
		return 1
	case l.has("shrink", "narrow", "shorten"):
		return -1
	}
	return 0
}

func comparativeWord(w string) int {
	switch w {
	case "more", "bigger", "wider", "deeper", "larger", "longer", "taller", "higher", "looser", "extra", "roomier", "greater":
		return 1
	case "less", "fewer", "smaller", "narrower", "shallower", "shorter", "tighter", "lower":
		return -1
	}
	return 0
}

func comparativeVerb(stem string) int {
	switch stem {
	case "up", "bump", "nudge", "boost", "add", "increas", "extra", "another", "widen", "deepen", "enlarg", "lengthen", "rais", "grow":
		return 1
	case "down", "shav", "shave", "knock", "trim", "subtract", "reduc", "decreas", "tak", "take", "cut", "off", "shorten", "lower", "shrink", "narrow", "less", "lessen", "minus":
		return -1
	}
	return 0
}
