package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// rates binds stitches or rows over a length, and metres in a weight.
func (b *binder) rates() {
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		if _, ok := q.MetresPer100g(); ok {
			b.add(engine.YarnLength, i, 0)
			continue
		}
		if q.Over.Sign() == 0 {
			continue
		}
		switch q.Unit {
		case "row":
			b.add(engine.RowGauge, i, 0)
		case "st":
			b.add(engine.StitchGauge, i, 0)
		case "":
			if b.rowGaugeFor(i) {
				b.add(engine.RowGauge, i, 0)
			} else {
				b.add(engine.StitchGauge, i, 0)
			}
		}
	}
	b.lengthInWeight()
	b.pair()
	b.measuredOver()
	b.counted()
}

// lengthInWeight binds "in one 50 gram ball there is 125 meter": a length of yarn
// and the weight that holds it, with nothing but small words between.
func (b *binder) lengthInWeight() {
	free := b.free()
	for n := 0; n+1 < len(free); n++ {
		i, j := free[n], free[n+1]
		weight, length := b.l.tokens[i].q, b.l.tokens[j].q
		if isYarnLength(weight) {
			weight, length = length, weight
		}
		if weight.Unit != "g" || !isYarnLength(length) || weight.Over.Sign() > 0 || length.Over.Sign() > 0 || !b.contains(i, j) {
			continue
		}
		joined := *length
		joined.Over, joined.OverUnit = weight.Value, weight.Unit
		at := i
		if b.l.tokens[j].q == length {
			at = j
		}
		b.l.tokens[at].q = &joined
		b.used[i], b.used[j] = true, true
		b.add(engine.YarnLength, at, 1)
		return
	}
}

func isYarnLength(q *quantity.Quantity) bool { return q.Unit == "m" || q.Unit == "yd" }

// contains: between the tokens i and j stands a word that tells how much of one
// is in the other.
func (b *binder) contains(i, j int) bool {
	says := false
	for k := i + 1; k < j; k++ {
		switch t := b.l.tokens[k]; {
		case oneOf(t.text, []string{"is", "are", "be", "has", "have", "holds", "gives", "runs", "contains", "measures", "makes"}):
			says = true
		case oneOf(t.text, []string{"left", "need", "use", "take", "only", "still", "rest"}) || t.stop:
			return false
		}
	}
	return says
}

// measuredOver binds "60 rows 15 cm" and "40 stitches 14.2 cm" where the
// gauge is asked for: a count and the length it takes.
func (b *binder) measuredOver() {
	if b.ctx.Open != "gauge" {
		return
	}
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		if q.Unit != "st" && q.Unit != "row" || i+1 >= len(b.l.tokens) {
			continue
		}
		at := i + 1 // "40 stitches, they measure 14.2 cm"
		for at < len(b.l.tokens)-1 && at < i+4 && b.l.tokens[at].q == nil && b.l.tokens[at].text != "and" {
			at++
		}
		over := b.l.tokens[at].q
		if over == nil || b.used[at] || b.neckBefore(at) || at == i+1 && b.l.tokens[at].stop || !isLength(over.Unit) || over.Over.Sign() > 0 {
			continue
		}
		cm, ok := over.Length()
		if !ok || cm.Cmp(engine.Int(2)) < 0 {
			continue
		}
		joined := *q
		joined.Over, joined.OverUnit = over.Value, over.Unit
		b.l.tokens[i].q = &joined
		b.used[at] = true
		k := engine.StitchGauge
		if q.Unit == "row" {
			k = engine.RowGauge
		}
		b.add(k, i, 0)
	}
}

// counted binds "30 st 42 r": stitches and rows side by side are a gauge,
// where both are plausible as one.
func (b *binder) counted() {
	free := b.free()
	for n := 0; n+1 < len(free); n++ {
		i, j := free[n], free[n+1]
		p, q := b.l.tokens[i].q, b.l.tokens[j].q
		if p.Unit == "row" && q.Unit == "st" {
			i, j, p, q = j, i, q, p
		}
		if p.Unit != "st" || q.Unit != "row" || q.After || b.has(engine.StitchGauge) || b.has(engine.RowGauge) {
			continue
		}
		s, _ := b.x.value(engine.StitchGauge, p, b.ctx)
		r, _ := b.x.value(engine.RowGauge, q, b.ctx)
		if within(s.Value, b.x.spans[engine.StitchGauge].Possible) && within(r.Value, b.x.spans[engine.RowGauge].Possible) {
			b.add(engine.StitchGauge, i, 0)
			b.add(engine.RowGauge, j, 0)
		}
	}
}

// plainPair: two numbers that go together as stitches and rows of plain
// knitting.
func (b *binder) plainPair(i, j int) bool {
	p, q := b.l.tokens[i].q, b.l.tokens[j].q
	if p.Ordinal || q.Ordinal || p.Value.Cmp(engine.Int(12)) < 0 {
		return false
	}
	r := q.Value.Div(p.Value)
	return within(r, [2]engine.Num{engine.Frac(11, 10), engine.Frac(16, 10)})
}

// rowGaugeFor reports whether a bare rate is the row gauge: the words name
// rows, or stitches have been said already.
func (b *binder) rowGaugeFor(i int) bool {
	for _, m := range b.l.mentions {
		if m.key == engine.RowGauge && m.to <= i && m.to > i-6 {
			return true
		}
	}
	for j := i - 1; j >= 0 && j >= i-3; j-- {
		if b.l.tokens[j].q != nil {
			break
		}
		switch b.l.tokens[j].stem {
		case "row":
			return true
		case "stitch", "st":
			return false
		}
	}
	return b.has(engine.StitchGauge) && !b.has(engine.RowGauge)
}

// pair binds "28/40" and "28 by 40": stitches, then rows.
func (b *binder) pair() {
	free := b.free()
	for n := 0; n+1 < len(free); n++ {
		i, j := free[n], free[n+1]
		q := b.l.tokens[i].q
		said := b.names(engine.StitchGauge)
		bare := q.Unit == "" && b.l.tokens[j].q.Unit == "" && !q.Ordinal && !b.l.tokens[j].q.Ordinal && said && j <= i+2
		if b.ctx.Open == "garment" && !q.Pair && q.Unit == "" && b.l.tokens[j].q.Unit == "" && j == i+1 && b.plainPair(i, j) {
			bare = true // "cardi 29 41"
		}
		if !q.Pair && !bare || b.has(engine.StitchGauge) || b.has(engine.RowGauge) {
			continue
		}
		if (b.ctx.Open == "neck" || b.ctx.Open == "depth" || b.ctx.Open == "rib") && !said {
			b.problem = Problem{Code: "two-numbers"}
			continue
		}
		b.add(engine.StitchGauge, i, 0)
		b.add(engine.RowGauge, j, 0)
	}
}
