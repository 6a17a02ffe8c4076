package listen

import (
	"slices"
	"sort"
	"strings"

	"foldrow/engine"
	"foldrow/rules"
)

// phrasings binds by rules/phrases.md, the wordiest phrasing first.
func (b *binder) phrasings() {
	type match struct {
		s *setting
		h hit
	}
	var all []match
	for n, h := range b.x.set.held(b.l) {
		all = append(all, match{&b.x.sets[n], h})
	}
	sort.SliceStable(all, func(i, j int) bool { return all[i].h.weight > all[j].h.weight })
	taken := make([]bool, len(b.l.tokens))
	for _, m := range all {
		if b.overlaps(taken, m.h) || b.told(m.s, m.h) || b.nextOfList(m.h) {
			continue
		}
		if m.s.isFix {
			b.addFixed(m.s, m.h.from)
		} else if i, ok := b.slotValue(m.h, m.s.key); ok && !(m.s.key == engine.DepthRows && b.l.tokens[i].q.Over.Sign() > 0) {
			b.add(m.s.key, i, 1)
			b.useWords(m.h)
			b.useSame(m.h, i)
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

// nextOfList: in "seam 0, edge 1" a comma parts the 0 from the edge, which has
// a number of its own.
func (b *binder) nextOfList(h hit) bool {
	t := b.l.tokens
	return t[h.from].q != nil && h.from+1 < h.to && t[h.from+1].stop && h.to < len(t) && t[h.to].q != nil && !t[h.to].stop
}

// told: "I have hung them all" reports work done or gone wrong; it sets nothing.
func (b *binder) told(s *setting, h hit) bool {
	if s.key == engine.BedNeedles && b.countsWork() {
		return true
	}
	if s.key == engine.ClicksPerNumber && !b.l.has("dial", "click", "number", "mark", "tension", "third", "scale") && b.l.has("fold", "half") && !strings.HasSuffix(b.l.text, "thirds") {
		return true // "fold it in half" tells of no dial
	}
	if s.key == engine.RowsPerClick && s.isFix && !b.l.has("ungrad", "ungraded", "dial", "tension", "number", "grad", "tight", "click", "tighten") {
		return true // "2x2 throughout" tells of no dial
	}
	for i := h.from; i < h.to && s.isFix && !b.l.has("if"); i++ {
		switch b.l.tokens[i].text {
		case "dropped", "skipped", "omitted", "missed", "forgot", "forgotten":
			return true // "I dropped the edge stitch" tells of a mishap
		}
	}
	return b.ctx.Making && s.key == engine.HemEvery && slices.ContainsFunc(b.l.tokens, func(t token) bool { return t.text == "hung" })
}

// slotValue is the quantity that a phrasing holds for its key.
func (b *binder) slotValue(h hit, k engine.Key) (int, bool) {
	for _, i := range h.slots {
		q := b.l.tokens[i].q
		if q != nil && q.Words && q.Unit == "" && q.Value.Equal(engine.Int(1)) && measureOf(b.x.spans[k].Dimension) {
			return 0, false
		}
		if q != nil {
			if b.countsThings(i, k) || q.Pair && q.Unit == "" && measureOf(b.x.spans[k].Dimension) && b.x.spans[k].Dimension != rules.Gauge {
				return 0, false // "front bands 30/42" are no width
			}
			if plus := strings.HasPrefix(b.l.tokens[i].text, "plus"); plus && i > h.from && k != engine.Ease {
				return 0, false
			}
			if k == engine.YokeStitches && b.ctx.Open == "gauge" && !b.l.has("yoke", "yok", "wast", "waste", "wait", "live", "hold") {
				return 0, false
			}
			if q.Unit == "" && k == engine.RowYarn && !b.l.has("yarn", "wool", "thread", "loop") {
				return 0, false // "the stitches are 28" tells of no yarn
			}
			if k == engine.DepthRows && b.ctx.Open == "gauge" {
				return 0, false // "38 rows high" is of the swatch
			}
			if q.Unit == "" && (k == engine.YarnLeft && !b.l.has("yarn", "wool", "gram", "left") || k == engine.NeedlePitch && !b.l.has("pitch", "spac", "apart")) {
				return 0, false
			}
			if b.used[i] || b.dropped[i] {
				return i, false
			}
			if q.After && q.Unit != "" && !accepts(b.x.spans[k].Dimension, q) {
				alone := *q // "rows per click 3": the word before it belongs to the phrasing
				alone.Unit, alone.After = "", false
				if accepts(b.x.spans[k].Dimension, &alone) {
					b.l.tokens[i].q = &alone
					return i, true
				}
			}
			return i, accepts(b.x.spans[k].Dimension, q) || k == engine.HoleMargin && isLength(q.Unit)
		}
	}
	return 0, false
}

// useWords marks quantities that served the phrasing as mere words ("one
// click changes the stitch by 2 percent").
func (b *binder) useWords(h hit) {
	for i := h.from; i < h.to; i++ {
		if q := b.l.tokens[i].q; q != nil && q.Value.Equal(engine.Int(1)) && (q.Words || !slices.Contains(h.slots, i)) {
			b.used[i] = true
		}
	}
}

// useSame marks the phrasing's further slots where they repeat the value
// taken ("10 rows outside and 10 inside").
func (b *binder) useSame(h hit, i int) {
	for _, j := range h.slots {
		if q := b.l.tokens[j].q; q != nil && q.Value.Equal(b.l.tokens[i].q.Value) {
			b.used[j] = true
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

// countsWork: at the machine "104 needles instead of 105" counts what hangs
// there, not the bed.
func (b *binder) countsWork() bool {
	return b.ctx.Making && b.ctx.Open == "" && b.l.has("instead")
}
