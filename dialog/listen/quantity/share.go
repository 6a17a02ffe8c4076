package quantity

import "foldrow/engine"

// share gives both counts of a gauge the length that was said once: "28 sts
// and 40 rows to 10 cm", "28 sts to 10 cm, 40 rows", "10 cm = 28/40".
func (s *scanner) share() {
	for i := 0; i+1 < len(s.items); i++ {
		a, b := &s.items[i], &s.items[i+1]
		either := b.Or && b.from == a.to+1 && a.Unit == b.Unit && isCount(a.Unit) && isLength(b.OverUnit)
		if a.IsRate() == b.IsRate() || !either && !s.oneGauge(*a, *b) {
			continue
		}
		if b.IsRate() {
			a.over(b.Over, b.OverUnit)
		} else {
			b.over(a.Over, a.OverUnit)
		}
	}
}

// oneGauge reports whether a and b are the stitches and rows of one gauge.
func (s *scanner) oneGauge(a, b item) bool {
	if !a.sound() || !b.sound() || isWeight(a.OverUnit) || isWeight(b.OverUnit) || a.Sign != 0 || b.Sign != 0 {
		return false
	}
	units := a.Unit == Stitch && b.Unit == Row || a.Unit == Row && b.Unit == Stitch ||
		a.Unit == None && (b.Unit == None || b.Unit == Row) || a.Unit == Stitch && b.Unit == None
	if !units {
		return false
	}
	if l := s.linkOf(a.to, b.lead); !(a.Pair && b.Pair) && l != and && l != beside {
		return false
	}
	sts, rows := a, b
	if a.Unit == Row {
		sts, rows = b, a
	}
	return likelyGauge(sts.Value, rows.Value)
}

// likelyGauge keeps a number that merely stands beside a gauge out of it:
// rows are half to two and a half times the stitches in any fabric knitted
// (common practice; plain knit is near 1.3).
func likelyGauge(sts, rows engine.Num) bool {
	return !rows.Mul(engine.Int(2)).Less(sts) && !sts.Mul(engine.Int(5)).Less(rows.Mul(engine.Int(2)))
}

// refuse marks what can be read in two ways.
func (s *scanner) refuse() {
	out := make([]item, 0, len(s.items))
	for i := 0; i < len(s.items); i++ {
		it := s.items[i]
		short := it.Unit == None || it.Unit == Centimetre || it.Unit == Millimetre || it.Unit == Inch || it.Unit == Foot
		if it.doubt && short || it.gauge && it.Unit == None {
			it.Problem = Grouping
		}
		if i+1 < len(s.items) && s.inchAndPart(it, s.items[i+1]) {
			b := s.items[i+1]
			it.Value, it.High, it.to = it.Value.Add(b.Value), it.High.Add(b.Value), b.to
			i++
		} else if i+1 < len(s.items) && (s.dangling(it, s.items[i+1]) || s.glued(it, s.items[i+1])) {
			b := s.items[i+1]
			it.High, it.to, it.Problem = b.Value, b.to, TwoNumbers
			i++
		}
		out = append(out, it)
	}
	s.items = out
}

// inchAndPart reports a part of an inch behind whole inches: "1 inch 1/4".
func (s *scanner) inchAndPart(a, b item) bool {
	return s.dangling(a, b) && a.Unit == Inch && a.Value.IsInt() && !b.Value.IsInt() && b.Value.Less(engine.Int(1)) && b.to-b.from > 1
}

// glued reports a bare number with another right behind it and no blank
// between them, only marks that join nothing here: "45..5 cm", "40+5 cm".
func (s *scanner) glued(a, b item) bool {
	if !a.bare() || a.Words || b.Words || b.Problem != "" || s.at(b.from).gap {
		return false
	}
	for i := a.to; i < b.from; i++ {
		switch t := s.at(i); {
		case t.kind != mark || t.gap || joins(t.text):
			return false
		case t.text == "+" && !isLength(b.Unit):
			return false // a repeat with its edge: "12+1"
		}
	}
	return b.from > a.to
}

// joins reports a mark that stands between two numbers of one line.
func joins(mark string) bool {
	return oneOf(mark, ",", ";", "/", "x", "-", ":", "(", ")", "[", "]", "=", "&", "~", "'", `"`, "quote", "|", ">", "<", "→")
}

// noPart is a number that no part of a measurement has, so that it counts
// something: "3cm 144".
const noPart = 60

// dangling reports a bare number right behind a length: "1 inch 5" could be
// one inch and five eighths, or two answers; "41 cm 2.6 deep" and
// "52 cm 8 buttons" are two.
func (s *scanner) dangling(a, b item) bool {
	if oneOf(s.at(b.to).text, "deep", "depth", "high", "tall", "wide", "neck", "round",
		"button", "buttons", "buttonholes", "holes", "layers", "stages", "balls", "pieces") {
		return false
	}
	return a.Problem == "" && isLength(a.Unit) && !a.IsRate() && b.Problem == "" && b.bare() && b.from == a.to &&
		!b.Words && !b.Rib && !b.Pair && !b.Range && b.Sign == 0 && !b.Hedged && (a.Unit == Metre || b.Value.Less(engine.Int(noPart)))
}
