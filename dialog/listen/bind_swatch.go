package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// swatchTold binds a swatch told in a sentence, each count with its length:
// "my swatch is 12 cm wide and has 34 stitches, 50 rows are 12.5 cm", "40 sts
// and 60 rows measured 14.2 wide and 15 tall".
func (b *binder) swatchTold() {
	if b.ctx.Open != "gauge" && !b.names(engine.StitchGauge) && !b.names(engine.RowGauge) {
		return
	}
	counts := map[engine.Key]int{}
	var lengths []int
	unit, rated := quantity.None, 0
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		switch k := countKey(q.Unit); {
		case q.Words && q.Unit == quantity.None && q.Value.Equal(engine.Int(1)):
			continue // "as one should"
		case q.Problem != "" || q.Range || q.Rib || q.Ordinal || q.After:
			return // told in another way
		case k != "":
			if q.Over.Sign() > 0 {
				rated++
			}
			if _, twice := counts[k]; twice {
				return
			}
			counts[k] = i
		case isLength(q.Unit) && b.neckBefore(i):
			continue
		case isLength(q.Unit):
			unit = q.Unit
			lengths = append(lengths, i)
		case q.Unit == quantity.None:
			lengths = append(lengths, i)
		default:
			return
		}
	}
	if rated > 0 {
		b.ownLength(counts, lengths, rated)
		return
	}
	if len(counts) == 2 && len(lengths) == 1 && unit != quantity.None && b.ctx.Open == "gauge" {
		for k, i := range counts { // "5 cm have 14 stitches and 20 rows"
			b.countedOver(k, i, lengths[0], unit)
		}
		return
	}
	if len(counts) == 0 || len(lengths) != len(counts) || unit == quantity.None && !b.sided(lengths) {
		return
	}
	for k, i := range counts {
		b.countedOver(k, i, b.lengthFor(k, i, lengths), unit)
	}
}

// neckBefore: the length at token i has its name before it ("and the neck should
// be 41 cm"), and is none of the swatch.
func (b *binder) neckBefore(i int) bool {
	for _, m := range b.l.mentions {
		if m.to > i || m.to < i-4 || m.key != engine.Neck && m.key != engine.NeckBody {
			continue
		}
		for j := m.to; j < i; j++ {
			if b.l.tokens[j].q != nil {
				return false
			}
		}
		return true
	}
	return false
}

// ownLength: in "12 cm wide and has 34 stitches, 50 rows are 12.5 cm" the
// last length seems to serve both counts, but the first has one of its own.
func (b *binder) ownLength(counts map[engine.Key]int, lengths []int, rated int) {
	if rated != 2 || len(lengths) != 1 {
		return
	}
	first, k := counts[engine.StitchGauge], engine.StitchGauge
	other := counts[engine.RowGauge]
	if other < first {
		first, other, k = other, first, engine.RowGauge
	}
	p, q := b.l.tokens[first].q, b.l.tokens[other].q
	at := lengths[0]
	if shared := p.Over.Equal(q.Over) && p.OverUnit == q.OverUnit; shared && at > other {
		// "30 stitches across 11 cm and 44 rows up 12 cm"
		b.countedOver(countKey(q.Unit), other, at, b.l.tokens[at].q.Unit)
		return
	}
	if at < first && p.Over.Equal(q.Over) && p.OverUnit == q.OverUnit && b.side(at) != countKey(q.Unit) {
		b.countedOver(k, first, at, b.l.tokens[at].q.Unit)
	}
}

func countKey(u quantity.Unit) engine.Key {
	switch u {
	case quantity.Stitch:
		return engine.StitchGauge
	case quantity.Row:
		return engine.RowGauge
	}
	return ""
}

// sided: every bare length says which way it runs.
func (b *binder) sided(lengths []int) bool {
	for _, i := range lengths {
		if b.side(i) == "" {
			return false
		}
	}
	return true
}

// side is the gauge that a length belongs to by the word beside it: wide or
// tall; "" where it says neither.
func (b *binder) side(i int) engine.Key {
	for _, j := range []int{i + 1, i - 1, i + 2, i - 2} {
		if j < 0 || j >= len(b.l.tokens) {
			continue
		}
		switch b.l.tokens[j].text {
		case "wide", "width", "across", "broad", "sideways":
			return engine.StitchGauge
		case "tall", "high", "height", "long", "length", "deep", "down", "up", "lengthwise":
			return engine.RowGauge
		}
	}
	return ""
}

// lengthFor is the length of the count at token i: the one that says its
// side, else the nearest where that is nobody else's, else the one that
// stands in its place.
func (b *binder) lengthFor(k engine.Key, i int, lengths []int) int {
	if len(lengths) == 1 {
		return lengths[0]
	}
	for n, at := range lengths {
		switch b.side(at) {
		case k:
			return at
		case "":
		default:
			return lengths[1-n]
		}
	}
	if b.between(i, lengths) {
		for _, at := range lengths { // "34 stitches 12 cm, 50 rows 12.5 cm"
			if at > i {
				return at
			}
		}
	}
	if k == engine.StitchGauge {
		return lengths[0]
	}
	return lengths[1]
}

// between: the counts and the lengths stand in turn.
func (b *binder) between(i int, lengths []int) bool {
	return i < lengths[0] && b.firstCount(lengths[0], lengths[1]) || i > lengths[0] && i < lengths[1]
}

func (b *binder) firstCount(from, to int) bool {
	for j := from + 1; j < to; j++ {
		if q := b.l.tokens[j].q; q != nil && countKey(q.Unit) != "" {
			return true
		}
	}
	return false
}

// countedOver binds the count at token i, over the length at token at.
func (b *binder) countedOver(k engine.Key, i, at int, unit quantity.Unit) {
	joined, over := *b.l.tokens[i].q, b.l.tokens[at].q
	joined.Over, joined.OverUnit = over.Value, over.Unit
	if joined.OverUnit == quantity.None {
		joined.OverUnit = unit
	}
	if joined.OverUnit == quantity.None {
		joined.OverUnit = quantity.Centimetre
		if b.ctx.Unit == quantity.Inch {
			joined.OverUnit = quantity.Inch
		}
	}
	b.l.tokens[i].q = &joined
	b.used[at] = true
	b.add(k, i, 1)
}

// swatchWeight: the weight of a swatch is not that of the yarn left; without
// its stitches and rows it tells nothing.
func (b *binder) swatchWeight() {
	if b.has(engine.YarnLeft) && b.l.has("swatch", "square", "sample") && b.l.has("weigh", "weight", "heavy") {
		b.unset(engine.YarnLeft)
		b.problem = Problem{Code: "swatch-weight", Key: engine.StitchWeight}
	}
}
