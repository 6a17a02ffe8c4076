package listen

import (
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// notOurs drops numbers that are no measure of the plan: ages, sizes, times.
func (b *binder) notOurs() {
	for _, i := range b.l.quantities() {
		if q := b.l.tokens[i].q; q.Range && b.l.has("dial") && b.l.has("go", "run", "number") && i > 0 && oneOf(b.l.tokens[i-1].stem, []string{"go", "goe", "run", "from", "number", "be"}) {
			b.dropped[i] = true // "my dial goes 1 to 10"
			continue
		} else if q.Range && q.Value.Equal(q.High) && b.ctx.Open == "gauge" {
			b.dropped[i] = true // "on a square of ten to ten"
			continue
		} else if b.yearAt(i, q) {
			b.dropped[i] = true
			continue
		}
		if i > 1 && b.l.tokens[i].text == "one" && b.l.tokens[i-1].q == nil && oneOf(b.l.tokens[i-2].text, []string{"a", "an", "the", "this", "that"}) {
			b.dropped[i] = true // "a doubled one"
			continue
		}
		if i+1 < len(b.l.tokens) && b.l.tokens[i+1].text == "times" && (i+2 == len(b.l.tokens) || !oneOf(b.l.tokens[i+2].text, []string{"as", "the", "its", "deeper", "wider"})) {
			b.dropped[i] = b.l.tokens[i].q.Unit == "" && b.l.has("measur", "count", "check", "try", "tri", "did", "wash", "tell", "told") // "I measured it three times"
		}
		if b.countsThings(i, engine.FrontEdge) {
			b.dropped[i] = true // "2 fronts" are no measure
			continue
		}
		if i+1 < len(b.l.tokens) {
			switch b.l.tokens[i+1].stem {
			case "swatch", "sampl":
				b.dropped[i] = b.l.tokens[i].q.Unit == "" && b.l.tokens[i].q.Value.Less(engine.Int(5))
			case "size":
				b.dropped[i] = b.l.tokens[i].q.Unit == "" && b.l.tokens[i].q.Value.Less(engine.Int(10)) // "two sizes bigger" is no length
			case "ball", "skein", "hank", "cone":
				b.dropped[i] = b.l.tokens[i].q.Unit == ""
			case "of":
				b.dropped[i] = b.l.tokens[i].q.Unit == "" && b.l.has("finger", "hand", "thumb", "span", "palm")
			case "point":
				b.dropped[i] = b.ctx.Open != "gauge" // of French, a stitch
			case "finger", "hand", "thumb":
				b.dropped[i] = true
				if len(b.l.quantities()) > 1 && b.l.has("deep", "wide", "high", "tall", "depth", "long") {
					b.problem = Problem{Code: "fingers", Key: engine.Depth} // else the other value would be taken and this one left in silence
				}
			case "year", "month", "yr", "yo", "week", "day", "minut", "hour", "second", "degre", "euro", "dollar", "light", "stag", "piec", "mont", "mile", "kg", "o'clock", "mil":
				b.dropped[i] = true
			}
		}
		if i > 0 && (b.l.tokens[i-1].text == "size" || b.l.tokens[i-1].text == "age" || b.l.tokens[i-1].text == "aged") && b.l.tokens[i].q.Unit == "" {
			b.dropped[i] = true
		}
	}
}

// takeBack marks quantities that the line itself takes back: "16, no, 17",
// "not 40", "40 sorry 41". As many are dropped before the word as stand after
// it.
func (b *binder) takeBack() {
	qs := b.l.quantities()
	if but := b.patternSays(); but > 0 {
		for _, i := range qs {
			b.dropped[i] = b.dropped[i] || i < but
		}
		return
	}
	for n, i := range qs {
		if b.refusedAlone(qs, n) {
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
				if m == n-1 {
					b.sameUnit(qs, m)
				}
			}
		}
	}
}

// refusedAlone: the words around quantity n of qs refuse it, whatever is said
// in its place.
func (b *binder) refusedAlone(qs []int, n int) bool {
	i, t := qs[n], b.l.tokens
	before := func(k int) string { return t[max(0, i-k)].text }
	switch {
	case i > 0 && before(1) == "no" && t[i].q.Rib && n+1 < len(qs) && t[qs[n+1]].q.Rib:
		return true // "no 2x2, keep 1x1"
	case i > 0 && before(1) == "not" && len(qs) > 1:
		if t[i].q.Pair && n+1 < len(qs) && qs[n+1] == i+1 {
			b.dropped[i+1] = true // "not 28/40"
		}
		b.sameUnit(qs, n)
		return true
	case len(qs) == 1 && b.asked && b.wantedBefore(i),
		i > 2 && oneOf(before(1), []string{"every", "each", "the", "only"}) && before(3) == "instead" && before(2) == "of", // "instead of every 2nd"
		i > 1 && before(2) == "instead" && before(1) == "of",
		i > 1 && before(2) == "rather" && before(1) == "than":
		return true
	case n > 0 || len(qs) < 2:
		return false
	case b.saidBefore(i) && sameSort(t[i].q, t[qs[1]].q):
		return true
	case len(qs) == 2 && b.butBetween(i, qs[1]) && b.l.has("first", "earlier", "wrote", "thought", "again") && sameSort(t[i].q, t[qs[1]].q):
		return true // "I first wrote down 38, but it is 42"
	}
	return i > 0 && b.l.has("swap", "exchang", "replac") && b.l.has("for", "with")
}

// sameUnit: of "not 13 rows, 12" the 12 are rows as well.
func (b *binder) sameUnit(qs []int, n int) {
	if n+1 >= len(qs) {
		return
	}
	gone, next := b.l.tokens[qs[n]].q, b.l.tokens[qs[n+1]].q
	if gone.Unit == "" || next.Unit != "" || next.Rib || next.Ordinal || gone.Over.Sign() > 0 || gone.Rib || qs[n+1]-qs[n] > 3 {
		return
	}
	same := *next
	same.Unit = gone.Unit
	b.l.tokens[qs[n+1]].q = &same
}

// wantedBefore: "how far is it from the 40 I wanted" asks about what was said.
func (b *binder) wantedBefore(i int) bool {
	t := b.l.tokens
	if i+2 >= len(t) || t[i+1].text != "i" {
		return false
	}
	switch t[i+2].text {
	case "wanted", "asked", "said", "gave", "told", "planned":
		return true
	}
	return false
}

// patternSays is the "but" of "the pattern says 28/40 but I got 27/39": what is
// printed gives way to what was measured. 0 where nothing is said so.
func (b *binder) patternSays() int {
	printed, before, after, but := false, false, false, 0
	for i, t := range b.l.tokens {
		switch {
		case t.q != nil && but == 0:
			before = true
		case t.q != nil:
			after = true
		case but == 0 && oneOf(t.text, []string{"pattern", "book", "leaflet", "magazine", "booklet", "label", "designer"}):
			printed = true
		case but == 0 && before && (t.text == "but" || t.text == "though" || t.text == "however"):
			but = i
		}
	}
	if !printed || !after {
		return 0
	}
	return but
}

func (b *binder) butBetween(i, j int) bool {
	for k := i + 1; k < j; k++ {
		if b.l.tokens[k].text == "but" {
			return true
		}
	}
	return false
}

// saidBefore: "I said 16 but it is 17".
func (b *binder) saidBefore(i int) bool {
	told := false
	for j := max(0, i-3); j < i; j++ {
		switch b.l.tokens[j].text {
		case "said", "told", "wrote", "typed", "gave", "put", "entered":
			told = true
		}
	}
	return told && b.l.has("but", "should", "meant", "mean", "correct", "actually", "right")
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
		case "actually":
			if k+1 < j && b.l.tokens[k+1].stop && b.l.tokens[k+1].q == nil {
				continue // "27/38 actually. Neck 40": it ends what was said before
			}
			return true
		case "no", "sorry", "wait", "correction", "oops", "nope", "scratch":
			if t.text == "no" && k+1 < j && k > i+1 && !t.stop && !b.l.tokens[k+1].stop && k+1 < j-1 {
				continue // "and no grading with 42"
			}
			return true
		case "mean", "meant", "wanted", "excuse", "pardon":
			return true
		case "rather":
			if k > 0 && b.l.tokens[k-1].text == "or" {
				continue // "3 cm or rather 4" chooses between the two
			}
			if k+1 < len(b.l.tokens) && b.l.tokens[k+1].text != "than" {
				return true
			}
		case "so":
			if t.stop && b.l.has("too") {
				return true // "38 would be too tight, so 40"
			}
		case "that":
			if k > 0 && b.l.tokens[k-1].text == "make" && !t.stop && b.l.tokens[k-1].stop {
				return true
			}
		}
	}
	return false
}

// dropGarment takes back the garment said before ("pullover, no, cardigan").
func (b *binder) dropGarment() {
	for i, s := range b.sets {
		if s.Key == engine.KeyGarment {
			b.cut(i)
			return
		}
	}
}
