package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// fronts gives what the line sets to the front bands where it is about them:
// their own gauge, rows along their edge, the stitches that holes are laid
// over. The neckband's end is theirs alone.
func (b *binder) fronts() {
	if !b.l.frontal() {
		b.unset(engine.NeckbandEnd)
		b.frontRib()
		if b.ctx.Open != "garment" && b.l.has("button") && b.l.has("sleev", "sleeve", "cuff", "pocket", "collar", "shoulder", "back") {
			b.unset(engine.KeyGarment) // "no buttons on the sleeves" tells nothing of the front
		}
		return
	}
	b.frontRib()
	if b.ctx.Open != "garment" && b.l.has("button", "buttonhol") {
		b.unset(engine.KeyGarment) // "buttons 8 cm apart" tells of buttons, not what opens
	}
	b.holeSizes()
	for n, s := range b.sets {
		if s.Key == engine.Holes && b.at[n] < len(b.l.tokens) && b.l.whichHole(b.at[n]) {
			b.unset(engine.Holes)
			break
		}
	}
	for i, s := range b.sets {
		if k := b.frontKey(s.Key); k != s.Key && !b.has(k) && !(gaugeOf(k) && b.mainGauge(b.at[i])) {
			if s.Key == engine.NeedlePitch { // from mm
				b.sets[i].Value = s.Value.Div(ten)
			}
			b.sets[i].Key = k
		}
	}
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		if q.Problem != "" || q.Range || q.Rib || q.Ordinal || q.After || q.Over.Sign() > 0 || !q.Value.IsInt() {
			continue
		}
		switch few := q.Value.Cmp(engine.Int(12)) <= 0; {
		case q.Unit == "" && i+1 < len(b.l.tokens) && oneOf(b.l.tokens[i+1].stem, []string{"button", "buttonhole", "hole"}):
			b.addOnce(engine.Holes, i)
		case q.Unit == quantity.Row && b.l.has("edge", "front", "along"):
			b.addOnce(engine.EdgeRows, i)
		case q.Unit != quantity.Stitch && q.Unit != "":
		case few && b.holesSaid() && (q.Unit == quantity.Stitch || b.rightAfter(i, "of")):
			b.addOnce(engine.HoleStitches, i)
		case !few && (q.Unit == quantity.Stitch || b.rightAfter(i, "over", "on", "across", "along", "in", "for")):
			b.addOnce(engine.FrontCount, i)
		}
	}
}

// whichHole: the number at token i names a hole and counts none: "the third
// buttonhole", "where does buttonhole 3 go".
func (l *Line) whichHole(i int) bool {
	q := l.tokens[i].q
	return q != nil && (q.Ordinal || q.Unit == "" && i-1 > l.begin && l.tokens[i-1].text == "buttonhole")
}

func gaugeOf(k engine.Key) bool { return k == engine.FrontGauge || k == engine.FrontRowGauge }

// mainGauge: while the garment's own gauge is still to be told, the one at token
// i is the front bands' only where its own part of the line says so: "28/40, 42,
// 1x1, 3, 7 buttons" tells of the garment.
func (b *binder) mainGauge(i int) bool {
	if b.ctx.Open != "garment" && b.ctx.Open != "gauge" {
		return false
	}
	t := b.l.tokens
	from, to := i, i+1
	for from > b.l.begin && !(t[from].stop && t[from-1].q != nil) {
		from--
	}
	for to < len(t) && !t[to].stop {
		to++
	}
	for _, w := range t[from:to] {
		if w.q == nil && oneOf(w.stem, []string{"front", "button", "buttonhol", "buttonhole", "placket"}) {
			return b.has(engine.KeyGarment) && !oneOf(w.stem, []string{"front"})
		}
	}
	return true
}

// holes: a number right before "buttons" or "buttonholes" counts them, whatever
// else the line names: "the front bands with 6 buttonholes".
func (b *binder) holes() {
	if !b.l.frontal() || b.ctx.Open != "" && b.ctx.Open != "keep" {
		return
	}
	for _, i := range b.free() {
		q := b.l.tokens[i].q
		if q.Unit == "" && !q.Range && !q.Ordinal && q.Problem == "" && q.Value.IsInt() && i+1 < len(b.l.tokens) && oneOf(b.l.tokens[i+1].stem, []string{"button", "buttonhol"}) {
			b.addOnce(engine.Holes, i)
		}
	}
}

// rightAfter reports whether token i stands right behind one of the words.
func (b *binder) rightAfter(i int, words ...string) bool {
	return i > 0 && b.l.tokens[i-1].q == nil && oneOf(b.l.tokens[i-1].stem, words)
}

func (b *binder) holesSaid() bool {
	return b.has(engine.Holes) || b.has(engine.HoleSpacing) || b.l.has("buttonhol", "hol")
}

// frontKey is what a key of the neckband stands for in a line about the front
// bands.
func (b *binder) frontKey(k engine.Key) engine.Key {
	own := b.l.has("swatch", "garment", "yoke", "neckband")
	switch {
	case k == engine.StitchGauge && !own:
		return engine.FrontGauge
	case k == engine.RowGauge && !own:
		return engine.FrontRowGauge
	case k == engine.NeedlePitch && b.l.has("button", "buttonhol", "hol"):
		return engine.HoleSpacing
	case k == engine.DepthRows && b.l.has("edge", "along"):
		return engine.EdgeRows
	case k == engine.EdgeStitches && b.holesSaid():
		return engine.HoleMargin
	case k == engine.Layers && b.l.has("front") && !own:
		return engine.FrontLayers
	}
	return k
}

// frontRib: "front bands in 2x2" is the front bands' rib, not the neckband's.
func (b *binder) frontRib() {
	if b.ctx.Open == "rib" || b.l.has("neck", "neckband") || b.has(engine.KeyGarment) {
		return
	}
	names := false
	for _, m := range b.l.mentions {
		names = names || m.key == engine.FrontBand && b.l.tokens[m.from].text != "overlap" || m.key == engine.KeyFrontRib
	}
	for _, w := range []string{"on the front", "for the front", "along the front", "of the front"} {
		names = names || strings.Contains(b.l.text, w)
	}
	for i, s := range b.sets {
		if names && s.Key == engine.KeyRib {
			b.sets[i].Key, b.sets[i].Text, b.sets[i].Rib = engine.KeyFrontRib, s.Rib.String(), engine.Rib{}
		}
	}
}

// holeSizes: "compare 2 and 3 stitch buttonholes" compares what one hole takes,
// and counts none.
func (b *binder) holeSizes() {
	qs := b.l.quantities()
	for n := 1; n < len(qs); n++ {
		i, j := qs[n-1], qs[n]
		if b.l.tokens[j].q.Unit != quantity.Stitch || !b.holesSaid() || !b.choiceBetween(i, j) {
			continue
		}
		b.unset(engine.Holes)
		b.unset(engine.HoleStitches)
		b.add(engine.HoleStitches, i, 1)
		b.add(engine.HoleStitches, j, 1)
	}
}
