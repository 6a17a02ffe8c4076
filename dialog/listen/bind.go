package listen

import (
	"sort"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// binder gives every quantity of a line to the thing it is about.
type binder struct {
	x       *Lexicon
	l       *Line
	ctx     Context
	asked   bool // the line asks or supposes: a lone number may be matched by plausibility
	used    []bool
	dropped []bool // quantities taken back in the line itself ("16, no, 17")
	sets    []Set
	at      []int // token of each set
	problem Problem
}

// bind lists what the line sets. A problem tells of a quantity that is there
// but cannot be taken.
func (x *Lexicon) bind(l *Line, ctx Context, asked bool) *binder {
	b := &binder{x: x, l: l, ctx: ctx, asked: asked,
		used: make([]bool, len(l.tokens)), dropped: make([]bool, len(l.tokens))}
	b.notOurs()
	b.takeBack()
	b.phrasings()
	b.choices()
	b.ribWords()
	b.rates()
	b.named()
	b.others()
	b.byUnit()
	b.others()
	b.order()
	b.twice()
	return b
}

// free lists quantity tokens still to be bound.
func (b *binder) free() []int {
	var out []int
	for i, t := range b.l.tokens {
		if t.q != nil && !b.used[i] && !b.dropped[i] {
			out = append(out, i)
		}
	}
	return out
}

// add binds the quantity at token i to key k; near is how far its name stood.
func (b *binder) add(k engine.Key, i int, near int) bool {
	t := b.l.tokens[i]
	s, p := b.x.value(k, t.q, b.ctx)
	if p.Code != "" {
		if b.problem.Code == "" {
			p.Key = k
			b.problem = p
		}
		b.used[i] = true
		return false
	}
	s.Key, s.Near = k, near
	if t.q.Sign > 0 && b.l.text[t.start] == '+' {
		s.Relative = true
	} else if sign, times := b.comparative(i, k); sign != 0 {
		s.Relative = true
		s.Times = times
		if sign < 0 {
			s.Value = s.Value.Neg()
		}
	}
	if k == engine.DepthRows && b.inAll(i) {
		s.InAll = true
	}
	b.used[i] = true
	b.sets, b.at = append(b.sets, s), append(b.at, i)
	return true
}

// inAll: "22 rows in all" counts both layers.
func (b *binder) inAll(i int) bool {
	for j := i + 1; j < len(b.l.tokens) && j <= i+3; j++ {
		switch t := b.l.tokens[j].text; {
		case t == "all" && b.l.tokens[j-1].text == "in", t == "altogether", t == "total", t == "together", t == "overall":
			return true
		}
	}
	return i > 0 && b.l.tokens[i-1].text == "total"
}

// notOurs drops numbers that are no measure of the plan: ages, sizes, times.
func (b *binder) notOurs() {
	for _, i := range b.l.quantities() {
		if i+1 < len(b.l.tokens) {
			switch b.l.tokens[i+1].stem {
			case "year", "month", "yr", "yo", "week", "day", "minut", "hour", "button", "buttonhol", "stag", "piec", "hol", "mont", "mile", "kg", "o'clock", "time", "point", "mil":
				b.dropped[i] = true
			}
		}
		if i > 0 && (b.l.tokens[i-1].text == "size" || b.l.tokens[i-1].text == "age" || b.l.tokens[i-1].text == "aged") && b.l.tokens[i].q.Unit == "" {
			b.dropped[i] = true
		}
	}
}

// addFixed sets k to a value that a phrasing holds ("every other bump").
func (b *binder) addFixed(s setting, i int) {
	set := Set{Key: s.key, Value: s.fixed, Near: 1, Relative: s.times, Times: s.times}
	b.sets, b.at = append(b.sets, set), append(b.at, i)
}

// takeBack marks quantities that the line itself takes back: "16, no, 17",
// "not 40", "40 sorry 41". As many are dropped before the word as stand after
// it.
func (b *binder) takeBack() {
	qs := b.l.quantities()
	for n, i := range qs {
		if i > 0 && b.l.tokens[i-1].text == "not" && (len(qs) > 1) {
			b.dropped[i] = true
			continue
		}
		if i > 1 && b.l.tokens[i-2].text == "rather" && b.l.tokens[i-1].text == "than" {
			b.dropped[i] = true
			continue
		}
		if n == 0 || !b.correctionBetween(qs[n-1], i) {
			continue
		}
		after := 1
		for m := n + 1; m < len(qs) && !b.correctionBetween(qs[m-1], qs[m]); m++ {
			after++
		}
		for m := n - 1; m >= 0 && m >= n-after; m-- {
			if sameSort(b.l.tokens[qs[m]].q, b.l.tokens[i].q) {
				b.dropped[qs[m]] = true
			}
		}
	}
}

func sameSort(a, c *quantity.Quantity) bool {
	if a.Rib || c.Rib {
		return a.Rib == c.Rib
	}
	return a.Unit == "" || c.Unit == "" || a.Unit == c.Unit || isLength(a.Unit) && isLength(c.Unit)
}

func (b *binder) correctionBetween(i, j int) bool {
	for k := i + 1; k < j; k++ {
		t := b.l.tokens[k]
		switch t.text {
		case "no", "sorry", "actually", "wait", "correction", "oops", "nope", "scratch":
			if t.text == "no" && k+1 < j && k > i+1 && !t.stop && !b.l.tokens[k+1].stop && k+1 < j-1 {
				continue // "and no grading with 42"
			}
			return true
		case "mean", "meant":
			return true
		case "rather":
			if k+1 < len(b.l.tokens) && b.l.tokens[k+1].text != "than" {
				return true
			}
		case "that":
			if k > 0 && b.l.tokens[k-1].text == "make" && t.stop == false && b.l.tokens[k-1].stop {
				return true
			}
		}
	}
	return false
}

// phrasings binds by rules/phrases.md, the wordiest phrasing first.
func (b *binder) phrasings() {
	type match struct {
		s setting
		h hit
	}
	var all []match
	for _, s := range b.x.sets {
		if h, ok := s.match(b.l); ok {
			all = append(all, match{s, h})
		}
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].h.weight > all[j].h.weight })
	taken := make([]bool, len(b.l.tokens))
	for _, m := range all {
		if b.overlaps(taken, m.h) {
			continue
		}
		if m.s.isFix {
			b.addFixed(m.s, m.h.from)
		} else if i, ok := b.slotValue(m.h, m.s.key); ok {
			b.add(m.s.key, i, 1)
			b.useWords(m.h)
		} else {
			continue
		}
		for i := m.h.from; i < m.h.to; i++ {
			taken[i] = true
		}
		if m.s.isFix {
			b.useQuantities(m.h)
		}
	}
}

// slotValue is the quantity that a phrasing holds for its key.
func (b *binder) slotValue(h hit, k engine.Key) (int, bool) {
	for _, i := range h.slots {
		q := b.l.tokens[i].q
		if q != nil && q.Words && q.Unit == "" && q.Value.Equal(engine.Int(1)) && measureOf(b.x.spans[k].Dimension) {
			return 0, false
		}
		if q != nil {
			if plus := strings.HasPrefix(b.l.tokens[i].text, "plus"); plus && i > h.from && k != engine.Ease {
				return 0, false
			}
			return i, !b.used[i] && !b.dropped[i] && accepts(b.x.spans[k].Dimension, b.l.tokens[i].q)
		}
	}
	return 0, false
}

// sure reports whether any value was named, rather than bound by its unit or
// by the open question alone.
func (b *binder) sure() bool {
	for _, s := range b.sets {
		if s.Near > 0 {
			return true
		}
	}
	return false
}

// useWords marks quantities that served the phrasing as mere words ("one
// click changes the stitch by 2 percent").
func (b *binder) useWords(h hit) {
	for i := h.from; i < h.to; i++ {
		if q := b.l.tokens[i].q; q != nil && q.Words && q.Value.Equal(engine.Int(1)) {
			b.used[i] = true
		}
	}
}

func (b *binder) useQuantities(h hit) {
	for i := h.from; i < h.to; i++ {
		b.used[i] = b.used[i] || b.l.tokens[i].q != nil
	}
}

func (b *binder) overlaps(taken []bool, h hit) bool {
	for i := h.from; i < h.to; i++ {
		if taken[i] {
			return true
		}
	}
	return false
}

// choices binds ribs and garments, which are words rather than numbers.
func (b *binder) choices() {
	gaugeLine := false
	for _, t := range b.l.tokens {
		gaugeLine = gaugeLine || t.q != nil && (t.q.Unit == "st" || t.q.Over.Sign() > 0)
	}
	for _, m := range b.l.mentions {
		spelt := b.l.tokens[m.from].q == nil
		switch {
		case m.rib.IsSet():
			if b.dropped[m.from] || spelt && m.rib.IsPlain() && (gaugeLine || b.ctx.Making) && b.ctx.Open != "rib" {
				continue
			}
			if m.from > 0 && spelt && m.rib.IsPlain() && (b.l.tokens[m.from-1].text == "my" || b.l.tokens[m.from-1].text == "the") {
				continue // "my stockinette is curling" tells of the fabric
			}
			if m.from > 0 && b.l.tokens[m.from-1].text == "not" && !b.l.has("why") {
				continue
			}
			b.used[m.from] = true
			b.sets, b.at = append(b.sets, Set{Key: engine.KeyRib, Rib: m.rib, Near: 1}), append(b.at, m.from)
		case m.garment != "":
			if m.from > 0 && (b.l.tokens[m.from-1].text == "no" || b.l.tokens[m.from-1].text == "sorry") {
				b.dropGarment()
			}
			if m.from > 0 && b.l.tokens[m.from-1].text == "not" || m.from > 1 && b.l.tokens[m.from-2].text == "not" {
				continue
			}
			if b.ctx.Open == "garment" || b.meansGarment(m) {
				b.sets, b.at = append(b.sets, Set{Key: engine.KeyGarment, Garment: m.garment, Near: 1}), append(b.at, m.from)
			}
		}
	}
}

// dropGarment takes back the garment said before ("pullover, no, cardigan").
func (b *binder) dropGarment() {
	for i, s := range b.sets {
		if s.Key == engine.KeyGarment {
			b.sets, b.at = append(b.sets[:i:i], b.sets[i+1:]...), append(b.at[:i:i], b.at[i+1:]...)
			return
		}
	}
}

// ribWords reads "two knit, one purl".
func (b *binder) ribWords() {
	var knit, purl int
	var at []int
	for i, t := range b.l.tokens {
		if t.q == nil || t.q.Unit != "" && t.q.Unit != "st" || !t.q.Value.IsInt() {
			continue
		}
		switch b.columnKind(i) {
		case "knit":
			knit, at = t.q.Value.Floor(), append(at, i)
		case "purl":
			purl, at = t.q.Value.Floor(), append(at, i)
		}
	}
	if knit < 1 || purl < 1 || b.has(engine.KeyRib) {
		return
	}
	for _, i := range at {
		b.used[i] = true
	}
	b.sets, b.at = append(b.sets, Set{Key: engine.KeyRib, Rib: engine.Rib{Knit: knit, Purl: purl}, Near: 1}), append(b.at, at[0])
}

// columnKind tells whether the number at token i counts knit or purl columns:
// "two knit, one purl" as well as "knit 2 purl 2".
func (b *binder) columnKind(i int) string {
	for _, j := range []int{i + 1, i - 1} {
		if j < 0 || j >= len(b.l.tokens) || j > i && b.l.tokens[j].stop {
			continue
		}
		if s := b.l.tokens[j].stem; s == "knit" || s == "purl" {
			if j == i+1 && i > 0 && (b.l.tokens[i-1].stem == "knit" || b.l.tokens[i-1].stem == "purl") {
				continue // "knit 2 purl 2": the word before belongs to the number
			}
			return s
		}
	}
	return ""
}

// meansGarment tells "it is a pullover" from "the neck of my cardigan".
func (b *binder) meansGarment(m mention) bool {
	for i := m.from - 1; i >= 0 && i >= m.from-3; i-- {
		switch b.l.tokens[i].stem {
		case "be", "make", "a", "for", "an", "if", "about", "as", "into", "to":
			return b.l.tokens[i].text != "to" || b.l.has("change", "switch", "turn")
		case "my", "the", "this":
			return false
		}
	}
	return m.from == b.l.begin
}

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
	b.pair()
	b.measuredOver()
	b.counted()
}

// measuredOver binds "60 rows 15 cm" and "40 stitches 14.2 cm" where the
// gauge is asked for: a count and the length it takes.
func (b *binder) measuredOver() {
	if b.ctx.Open != "gauge" {
		return
	}
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		if q.Unit != "st" && q.Unit != "row" || i+1 >= len(b.l.tokens) || b.l.tokens[i+1].stop {
			continue
		}
		over := b.l.tokens[i+1].q
		if over == nil || b.used[i+1] || !isLength(over.Unit) || over.Over.Sign() > 0 {
			continue
		}
		cm, ok := over.Length()
		if !ok || cm.Cmp(engine.Int(2)) < 0 {
			continue
		}
		joined := *q
		joined.Over, joined.OverUnit = over.Value, over.Unit
		b.l.tokens[i].q = &joined
		b.used[i+1] = true
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

// rowGaugeFor reports whether a bare rate is the row gauge: the words name
// rows, or stitches have been said already.
func (b *binder) rowGaugeFor(i int) bool {
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
		said := b.named1(engine.StitchGauge)
		bare := q.Unit == "" && b.l.tokens[j].q.Unit == "" && !q.Ordinal && !b.l.tokens[j].q.Ordinal && said && j <= i+2
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

func (b *binder) has(k engine.Key) bool {
	for _, s := range b.sets {
		if s.Key == k {
			return true
		}
	}
	return false
}

// named1 reports whether the line names k.
func (b *binder) named1(k engine.Key) bool {
	for _, m := range b.l.mentions {
		if m.key == k {
			return true
		}
	}
	return false
}

// named binds each remaining quantity to the nearest name that can take it.
func (b *binder) named() {
	type pairing struct{ q, m, cost int }
	free := b.free()
	var all []pairing
	for _, i := range free {
		for mi, m := range b.l.mentions {
			if q := b.l.tokens[i].q; q.Words && q.Unit == "" && !q.Ordinal && q.Value.Equal(engine.Int(1)) && measureOf(b.x.spans[m.key].Dimension) {
				continue // "the head of one baby"
			}
			if m.key == "" || m.result || m.key == engine.KeyRib || m.key == engine.KeyGarment ||
				!accepts(b.x.spans[m.key].Dimension, b.l.tokens[i].q) {
				continue
			}
			all = append(all, pairing{i, mi, b.cost(i, m)})
		}
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].cost < all[j].cost })
	taken := map[int]bool{}
	for _, p := range all {
		if b.used[p.q] || taken[p.m] || p.cost > 60 {
			continue
		}
		m := b.l.mentions[p.m]
		if b.has(m.key) && !b.twiceAllowed(m.key) {
			continue
		}
		taken[p.m] = true
		if m.key == engine.DepthRows && b.ctx.Open == "gauge" {
			m.key = engine.RowGauge
		}
		b.add(m.key, p.q, p.cost/4+1)
	}
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
	case "or", "vs", "versus", "against":
		return true
	case "and":
		return b.l.has("compar", "between", "differenc")
	}
	return false
}

// measureOf: a lone "one" is no measure.
func measureOf(d rules.Dimension) bool {
	return d == rules.Girth || d == rules.Length || d == rules.Dial || d == rules.Gauge
}

// twiceAllowed: a key may be given two values where they are choices to
// compare.
func (b *binder) twiceAllowed(engine.Key) bool {
	return b.l.has("or", "vs", "versus", "against", "and")
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
		}
	}
	for k := lo; k <= hi && k < len(b.l.tokens); k++ {
		if b.l.tokens[k].stop {
			cost += 12
		}
	}
	return cost
}

// order puts the sets in the order of the line.
func (b *binder) order() {
	idx := make([]int, len(b.sets))
	for i := range idx {
		idx[i] = i
	}
	sort.SliceStable(idx, func(i, j int) bool { return b.at[idx[i]] < b.at[idx[j]] })
	sets, at := make([]Set, len(idx)), make([]int, len(idx))
	for i, j := range idx {
		sets[i], at[i] = b.sets[j], b.at[j]
	}
	b.sets, b.at = sets, at
}

// twice looks for two different values of one key, which only choices to
// compare may have.
func (b *binder) twice() {
	for i, s := range b.sets {
		for _, t := range b.sets[:i] {
			if t.Key == s.Key && !same(s, t) && b.problem.Code == "" {
				b.problem = Problem{Code: "two-values", Key: s.Key, Low: t.Value, High: s.Value}
			}
		}
	}
}

func same(a, b Set) bool {
	return a.Rib == b.Rib && a.Garment == b.Garment && a.Value.Equal(b.Value) && a.Relative == b.Relative
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
		return !q.After && (q.Unit == "" || q.Unit == "row")
	case rules.Stitches:
		return q.Unit == "" || q.Unit == "st"
	case rules.Needles:
		return q.Unit == "" || q.Unit == "needle" || q.Unit == "st"
	case rules.Bumps:
		return q.Unit == "" || q.Unit == "st"
	case rules.LayersDim:
		return q.Unit == ""
	case rules.Clicks:
		return q.Unit == "" || q.Unit == "click"
	case rules.Dial:
		return !q.Ordinal && (q.Unit == "" || q.Unit == "number" && q.After)
	case rules.Percent:
		return q.Unit == "" || q.Unit == "%"
	case rules.Ratio:
		return !q.Ordinal && (q.Unit == "" || q.Unit == "%")
	case rules.Grams:
		return q.Unit == "g" || q.Unit == "oz" || q.Unit == ""
	case rules.YarnCount:
		return q.Unit == "" || q.Unit == "m" || q.Unit == "yd"
	}
	return false
}
