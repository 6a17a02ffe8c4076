package listen

import (
	"sort"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// named binds each remaining quantity to the nearest name that can take it.
func (b *binder) named() {
	type pairing struct{ q, m, cost int }
	free := b.free()
	var all []pairing
	for _, i := range free {
		for mi := range b.l.mentions {
			m := b.inSwatch(b.l.mentions[mi])
			if !b.mayName(i, m) {
				continue
			}
			cost := b.cost(i, m)
			if OpenOf(m.key) == b.ctx.Open && !b.beside(m, i) {
				cost -= 14 // "the opening on my yoke measures 41" answers what is asked
			}
			all = append(all, pairing{i, mi, max(0, cost)})
		}
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].cost < all[j].cost })
	taken := map[int]bool{}
	for _, p := range all {
		if b.used[p.q] || taken[p.m] || p.cost > 60 {
			continue
		}
		m := b.inSwatch(b.l.mentions[p.m])
		if b.has(m.key) && !b.choosing() {
			if p.cost == 0 && b.problem.Code == "" { // "neck 45 neck 50"
				b.problem = Problem{Code: "two-values", Key: m.key, Low: b.l.tokens[p.q].q.Value}
			}
			continue
		}
		taken[p.m] = true
		b.add(m.key, p.q, p.cost/4+1)
	}
}

// mayName: the name m can be the thing that quantity i is about.
func (b *binder) mayName(i int, m mention) bool {
	if q := b.l.tokens[i].q; q.Words && q.Unit == "" && !q.Ordinal && q.Value.Equal(engine.Int(1)) && (measureOf(b.x.spans[m.key].Dimension) || m.from > i+2 || m.to < i) {
		return false // "the head of one baby"
	}
	if u := b.l.tokens[i].q.Unit; m.key == engine.StitchGauge && u == "row" || m.key == engine.RowGauge && u == "st" {
		return false // "28 sts, rows not counted yet"
	}
	if m.from > i+1 && b.ofThings(i) {
		return false // "2 kids and the yarn"
	}
	if q := b.l.tokens[i].q; m.key == engine.FrontBand && (q.Pair && q.Unit == "" || m.to < i && b.l.tokens[m.to].q != nil && b.l.tokens[m.to].q.Pair) {
		return false // "front bands 30/42, 42"
	}
	if n := m.from - 1; n >= 0 && n != i && b.l.tokens[n].q != nil && b.used[n] && b.countedAt(n) {
		return false // "3, 7 buttons"
	}
	if b.servedByWords(m) {
		return false // "30 stitches, and hang every bump"
	}
	if m.key == engine.DepthRows && b.l.tokens[i].q.Over.Sign() > 0 {
		return false // "rows 42 in 10 cm"
	}
	if m.key == "" || m.result || m.text != "" || engine.IsText(m.key) || m.key == engine.KeyRib || m.key == engine.KeyGarment ||
		!accepts(b.x.spans[m.key].Dimension, b.l.tokens[i].q) {
		return false
	}
	if b.lacking(m) || b.countOf(i, m) {
		return false
	}
	if j := m.to + 1; j < len(b.l.tokens) && j != i && b.l.tokens[m.to].stem == "be" && b.l.tokens[j].q != nil && b.l.tokens[j].q.Pair {
		return false // "42, and the gauge is 27/39"
	}
	return true
}

// countedAt: the number at token i was taken for the count of something.
func (b *binder) countedAt(i int) bool {
	for n, at := range b.at {
		if at == i && b.x.spans[b.sets[n].Key].Dimension == rules.Stitches && b.l.tokens[i].q.Unit == "" {
			return true
		}
	}
	return false
}

// lacking: "rows later": the number of what is named is not there yet.
func (b *binder) lacking(m mention) bool {
	return m.to < len(b.l.tokens) && b.l.tokens[m.to].q == nil && !b.l.tokens[m.to].stop && b.x.typed["lacking"][b.l.tokens[m.to].text]
}

// countOf: "2 fronts" counts things, it measures none.
func (b *binder) countOf(i int, m mention) bool {
	return i == m.from-1 && b.countsThings(i, m.key)
}

// countsThings: a small bare number right before several of what k measures.
func (b *binder) countsThings(i int, k engine.Key) bool {
	q, d := b.l.tokens[i].q, b.x.spans[k].Dimension
	if i+1 == len(b.l.tokens) || b.l.tokens[i+1].stop || q.Rib || q.Unit != "" || !q.Value.IsInt() || !q.Value.Less(engine.Int(5)) || d != rules.Girth && d != rules.Length {
		return false
	}
	switch b.l.tokens[i+1].text {
	case "fronts", "necks", "edges", "sides", "openings", "heads":
		return true
	}
	return false
}

// beside: another number than the one at i stands right behind the name m.
func (b *binder) beside(m mention, i int) bool {
	j := m.to
	if j < len(b.l.tokens) && b.l.tokens[j].stem == "be" {
		j++
	}
	return j < len(b.l.tokens) && j != i && b.l.tokens[j].q != nil && accepts(b.x.spans[m.key].Dimension, b.l.tokens[j].q) && !b.dropped[j]
}

// inSwatch is the mention as it is meant while the gauge is asked for: "the
// stitches are 28, the rows I have not counted".
func (b *binder) inSwatch(m mention) mention {
	if b.ctx.Open != "gauge" || m.text != "" {
		return m
	}
	switch m.key {
	case engine.DepthRows:
		m.key = engine.RowGauge
	case engine.BandStitches:
		for _, t := range b.l.tokens[m.from:m.to] {
			if t.stem == "stitch" || t.stem == "sts" {
				m.key, m.result = engine.StitchGauge, false
			}
		}
	}
	return m
}

// others binds the further choices of a list to the key of the first: "neck
// 41 or 42", "compare 3, 3.5 and 4 cm".
func (b *binder) others() {
	qs := b.l.quantities()
	for n := 1; n < len(qs); n++ {
		i, j := qs[n-1], qs[n]
		if b.used[j] && !b.used[i] && !b.dropped[i] && b.l.tokens[i].q.Unit == "" && b.choiceBetween(i, j) {
			i, j = j, i // "100 and 140 needles": the unit stands at the last
		}
		if b.used[j] || b.dropped[j] || !b.used[i] || i < j && !b.choiceBetween(i, j) {
			continue
		}
		for s, at := range b.at {
			if at == i && accepts(b.x.spans[b.sets[s].Key].Dimension, b.l.tokens[j].q) {
				b.add(b.sets[s].Key, j, b.sets[s].Near)
				break
			}
		}
	}
}

// choiceBetween: only "or" and its kin stand between two numbers, or a comma
// where choices are compared.
func (b *binder) choiceBetween(i, j int) bool {
	if j == i+1 {
		return b.asked && b.l.tokens[j].stop
	}
	if j > i+3 {
		return false
	}
	switch b.l.tokens[i+1].text {
	case "or", "vs", "versus", "against", "v", "beside", "next":
		return true
	case "and":
		return b.l.has("compar", "between", "differenc")
	}
	return false
}

// measureOf: a lone "one" is no measure.
func measureOf(d rules.Dimension) bool {
	return d == rules.Girth || d == rules.Length || d == rules.Dial || d == rules.Gauge || d == rules.Rows
}

// servedByWords: the name m has its value already, from a phrasing without a
// number.
func (b *binder) servedByWords(m mention) bool {
	for n, s := range b.sets {
		if s.Key == m.key && b.at[n] >= m.from && b.at[n] < m.to && b.l.tokens[b.at[n]].q == nil {
			return true
		}
	}
	return false
}

// choosing: the line sets choices beside each other, so one key may take two
// values.
func (b *binder) choosing() bool {
	return b.l.has("or", "vs", "versus", "against", "and") || b.l.has("than") && !b.l.has("rather", "prefer", "sooner")
}

// cost is how far the name m stands from the quantity at i; a stop or another
// quantity between them counts as distance.
func (b *binder) cost(i int, m mention) int {
	lo, hi, cost := m.to, i, 0
	if m.from > i {
		lo, hi, cost = i+1, m.from, 1
	} else if strings.HasPrefix(b.l.tokens[i].text, "plus") {
		cost = 12 // "body neck plus 1 inch ease"
	}
	for k := lo; k < hi; k++ {
		cost += 4
		if t := b.l.tokens[k]; t.q != nil {
			cost += 20
		} else if t.stem == "and" || t.stem == "but" {
			cost += 8
		} else if t.text == "because" || t.text == "since" {
			cost += 40 // a reason names much that the value is not for
		}
	}
	for k := lo; k <= hi && k < len(b.l.tokens); k++ {
		if b.l.tokens[k].stop {
			cost += 12
		}
	}
	return cost
}

// accepts reports whether a key of dimension d can take the quantity.
func accepts(d rules.Dimension, q *quantity.Quantity) bool {
	if q == nil || q.Rib {
		return false
	}
	if _, ok := q.MetresPer100g(); ok {
		return d == rules.YarnCount
	}
	if q.Over.Sign() > 0 {
		return d == rules.Gauge
	}
	switch d {
	case rules.Girth, rules.Length, rules.Millimetres, rules.PerStitch:
		return !q.Ordinal && !q.After && (q.Unit == "" || isLength(q.Unit))
	case rules.Gauge:
		return !q.Ordinal && (q.Unit == "" || q.Unit == "st" || q.Unit == "row")
	case rules.Rows:
		return !q.After && (q.Unit == "" && q.Value.IsInt() || q.Unit == "row")
	case rules.Stitches:
		return q.Unit == "" || q.Unit == "st"
	case rules.Needles:
		return !q.Ordinal && (q.Unit == "" || q.Unit == "needle" || q.Unit == "st") && !(q.Words && q.Value.Cmp(ten) < 0) // "one needle carries nothing" is no bed
	case rules.Count:
		return q.Unit == "" && !q.Ordinal && q.Value.IsInt()
	case rules.Bumps:
		return q.Unit == "" || q.Unit == "st" || q.Unit == "needle" && q.Ordinal
	case rules.LayersDim:
		return q.Unit == ""
	case rules.Clicks:
		return q.Unit == "" || q.Unit == "click" || q.Unit == "row" && q.After // "fold row 2"
	case rules.Dial:
		return !q.Ordinal && (q.Unit == "" || q.Unit == "number" && q.After)
	case rules.Percent:
		return q.Unit == "" || q.Unit == "%"
	case rules.Ratio:
		return !q.Ordinal && (q.Unit == "" || q.Unit == "%")
	case rules.Hours:
		return !q.Ordinal && q.Unit == ""
	case rules.Grams:
		return q.Unit == "g" || q.Unit == "oz" || q.Unit == ""
	case rules.YarnCount:
		return q.Unit == "" || q.Unit == "m" || q.Unit == "yd"
	}
	return false
}
