package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// shares binds parts of what stands: "10 % deeper", "a third wider", "one and
// a half times as deep". The set multiplies the present value.
func (b *binder) shares() {
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		if q.Range || q.Problem != "" || q.Ordinal {
			continue
		}
		if f, ok := b.timesAfter(i); ok {
			b.addShare(i, f)
			continue
		}
		part := q.Value.Abs()
		switch {
		case q.Unit == "%":
			part = part.Div(engine.Int(100))
		case q.Unit == "" && q.Words && part.Less(engine.Int(1)) && !part.Equal(engine.Frac(1, 2)):
		default:
			continue
		}
		sign, _ := b.comparative(i, "")
		if q.Sign != 0 {
			sign = q.Sign
		}
		if sign == 0 {
			sign = b.byVerb(i)
		}
		if sign < 0 {
			part = part.Neg()
		}
		switch {
		case sign == 0:
		case q.Unit == "" && b.ctx.Unit == quantity.Inch && onRuler(part):
			b.addInches(i, part)
		default:
			b.addShare(i, engine.Int(1).Add(part))
		}
	}
}

// onRuler: to a knitter who measures in inches, "an eighth deeper" is an eighth of
// an inch; a third is on no ruler and stays a share.
func onRuler(part engine.Num) bool {
	for _, n := range []int64{4, 8, 16} {
		if part.Abs().Mul(engine.Int(n)).IsInt() {
			return true
		}
	}
	return false
}

// addInches binds the part of an inch to the length that is compared.
func (b *binder) addInches(i int, part engine.Num) {
	if k := b.sharedKey(i); k != "" {
		b.used[i] = true
		b.sets = append(b.sets, Set{Key: k, Value: part.Mul(engine.Frac(254, 100)), Relative: true, Unit: quantity.Inch, Near: 1})
		b.at = append(b.at, i)
	}
}

// timesAfter reads "1.5 times as deep" and "twice the depth" in numbers.
func (b *binder) timesAfter(i int) (engine.Num, bool) {
	toks := b.l.tokens
	if q := toks[i].q; q.Unit != "" || i+2 >= len(toks) || toks[i+1].text != "times" && toks[i+1].text != "time" {
		return engine.Num{}, false
	}
	switch toks[i+2].text {
	case "as", "the", "that", "this":
		return toks[i].q.Value, true
	case "deeper", "wider", "bigger", "larger", "higher", "taller":
		return toks[i].q.Value, true
	}
	return engine.Num{}, false
}

// byVerb is the direction that a verb before the part gives: "reduce the depth
// by 20 percent", "increase it 10 %".
func (b *binder) byVerb(i int) int {
	for j := i - 1; j >= b.l.begin; j-- {
		if b.l.tokens[j].q != nil {
			return 0
		}
		if s := comparativeVerb(b.l.tokens[j].stem); s != 0 {
			return s
		}
	}
	return 0
}

// addShare binds the factor to what the line compares: by the word of
// comparison, else by the one length that it names, else what was spoken of
// last.
func (b *binder) addShare(i int, factor engine.Num) {
	k := b.sharedKey(i)
	if k == "" {
		return
	}
	b.used[i] = true
	b.sets = append(b.sets, Set{Key: k, Value: factor, Relative: true, Times: true, Unit: quantity.None, Near: 1})
	b.at = append(b.at, i)
}

func (b *binder) sharedKey(i int) engine.Key {
	near := 99
	key := engine.Key("")
	for _, m := range b.l.mentions {
		at := max(m.from-i, i-m.from)
		switch m.key {
		case engine.Neck, engine.Depth, engine.FrontBand, engine.Ease, engine.Head:
		case engine.DepthResult, engine.NeckResult:
		default:
			continue
		}
		if at < near && b.together(i, m.from) {
			near, key = at, topicInput(m.key)
		}
	}
	for j := i + 1; j < min(len(b.l.tokens), i+5) && b.together(i, j); j++ {
		if k := comparedKey(b.l.tokens[j].text); k != "" && (key == "" || k == engine.Depth) {
			return k
		}
	}
	if key == "" && (b.ctx.Topic == engine.Neck || b.ctx.Topic == engine.Depth) {
		return b.ctx.Topic
	}
	return key
}

// together: no stop and no other number stands between the tokens i and j.
func (b *binder) together(i, j int) bool {
	lo, hi := min(i, j), max(i, j)
	for k := lo + 1; k <= hi; k++ {
		if b.l.tokens[k].stop || b.l.tokens[k].q != nil && k != i {
			return false
		}
	}
	return true
}

// comparedKey is what a word of comparison measures: "deeper" the depth,
// "wider" the neck.
func comparedKey(w string) engine.Key {
	switch w {
	case "deeper", "shallower", "taller", "higher", "deep", "longer", "shorter", "high", "tall":
		return engine.Depth
	case "bigger", "wider", "larger", "narrower", "looser", "tighter", "smaller", "roomier", "wide", "big", "round", "around":
		return engine.Neck
	}
	return ""
}
