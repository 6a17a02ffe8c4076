package quantity

import "foldrow/engine"

// unitName is the unit that w spells, and what one of it counts in that unit:
// a kilogram is 1000 g. "in", "r" and "s" are read in their places only
// (unitAt). Misspelt words are the business of the reader of the line; "cn",
// one key beside cm, is here because it may be glued to its number.
func unitName(w string) (u Unit, factor int64, ok bool) {
	switch w {
	case "cm", "cms", "cn", "centimetre", "centimetres", "centimeter", "centimeters":
		return Centimetre, 1, true
	case "mm", "mms", "millimetre", "millimetres", "millimeter", "millimeters":
		return Millimetre, 1, true
	case "in", "ins", "inch", "inches", "inchs":
		return Inch, 1, true
	case "ft", "foot", "feet":
		return Foot, 1, true
	case "m", "metre", "metres", "meter", "meters", "mtr", "mtrs":
		return Metre, 1, true
	case "km", "kms", "kilometre", "kilometres", "kilometer", "kilometers":
		return Metre, 1000, true
	case "yd", "yds", "yard", "yards":
		return Yard, 1, true
	case "st", "sts", "stitch", "stitches", "stich", "stiches", "stitchs":
		return Stitch, 1, true
	case "row", "rows", "rw", "rws":
		return Row, 1, true
	case "needle", "needles", "ndl", "ndls":
		return Needle, 1, true
	case "click", "clicks", "dot", "dots", "mark", "marks", "notch", "notches":
		return Click, 1, true
	case "number", "numbers":
		return Number, 1, true
	case "g", "gr", "gm", "gms", "grm", "grms", "gram", "grams", "gramme", "grammes":
		return Gram, 1, true
	case "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms":
		return Gram, 1000, true
	case "oz", "ozs", "ounce", "ounces":
		return Ounce, 1, true
	case "lb", "lbs", "pound", "pounds":
		return Ounce, 16, true
	case "percent", "pct":
		return Percent, 1, true
	}
	return None, 0, false
}

// cmPer is the exact length of one u in cm: the inch is 2.54 cm by
// international agreement, the foot 12 of it and the yard 36.
func cmPer(u Unit) (engine.Num, bool) {
	switch u {
	case Centimetre:
		return engine.Int(1), true
	case Millimetre:
		return engine.Frac(1, 10), true
	case Inch:
		return engine.Frac(254, 100), true
	case Foot:
		return engine.Frac(12*254, 100), true
	case Metre:
		return engine.Int(100), true
	case Yard:
		return engine.Frac(36*254, 100), true
	}
	return engine.Num{}, false
}

// gramsPer is the exact weight of one u in grams: the ounce is a sixteenth of
// the pound of 453.59237 g.
func gramsPer(u Unit) (engine.Num, bool) {
	switch u {
	case Gram:
		return engine.Int(1), true
	case Ounce:
		return engine.Frac(45359237, 1600000), true
	}
	return engine.Num{}, false
}

func isLength(u Unit) bool { _, ok := cmPer(u); return ok }
func isWeight(u Unit) bool { return u == Gram || u == Ounce }
func isCount(u Unit) bool {
	return u == Stitch || u == Row || u == Needle || u == Click || u == Number
}

// unitWord is the unit that token i spells.
func (s *scanner) unitWord(i int) (Unit, int64, bool) { return unitName(s.text(i)) }

// unitAt reads the unit of n from token i. Where it stands behind another
// word ("3 more rows") the unit is known, but next stays at i, so that the
// word is left to the reader of the line.
func (s *scanner) unitAt(i int, n number) (u Unit, factor int64, next int) {
	t := s.at(i)
	switch {
	case t.is(`"`) && !t.gap:
		return Inch, 1, i + 1
	case t.is("'") && !t.gap && !(s.at(i+1).kind == word && !s.at(i+1).gap):
		return Foot, 1, i + 1
	case t.is("%"):
		return Percent, 1, i + 1
	case t.isWord("per") && s.at(i+1).isWord("cent"):
		return Percent, 1, i + 2
	case t.isWord("r") && (!t.gap || s.at(i+1).isWord("per", "a", "each", "in", "total") || len(s.items) > 0 && s.items[len(s.items)-1].Unit == Stitch):
		return Row, 1, i + 1
	case t.isWord("s") && s.stitchesGlued(i):
		return Stitch, 1, i + 1
	case t.isWord("in") && t.gap && !s.inches(i, n):
		return None, 1, i
	}
	j := s.hyphen(i)
	if u, f, ok := s.unitWord(j); ok {
		return u, f, s.abbreviation(j)
	}
	if n.parted {
		if u, f, next, ok := s.unitOf(i); ok {
			return u, f, next
		}
	}
	if s.at(j).isWord("more", "extra", "whole", "full", "further", "fewer", "less", "purl", "knit", "plain",
		"edge", "other", "complete", "spare", "single", "doubled", "odd") {
		if u, f, ok := s.unitWord(j + 1); ok && !s.at(j+1).isWord("in", "m", "g") {
			return u, f, i
		}
	}
	return None, 1, i
}

// stitchesGlued tells "28s 40r" from "the 60s".
func (s *scanner) stitchesGlued(i int) bool {
	if s.at(i).gap {
		return false
	}
	if i++; s.at(i).is(",") || s.at(i).is("x") || s.at(i).is("/") || s.at(i).is("and") {
		i++
	}
	return s.at(i).kind == digits && s.at(i+1).isWord("r", "rw", "rws", "row", "rows")
}

// unitOf reads "an inch" after "half", "of a stitch" after "3/4".
func (s *scanner) unitOf(i int) (Unit, int64, int, bool) {
	if s.at(i).isWord("of") {
		i++
	}
	if s.at(i).isWord("a", "an", "one") {
		i++
	}
	u, f, ok := s.unitWord(i)
	return u, f, i + 1, ok && !s.at(i).isWord("in")
}

// abbreviation is the end of the unit word at i, with the point that
// shortens it where the line goes on: "16 in. deep".
func (s *scanner) abbreviation(i int) int {
	dot := s.at(i + 1)
	if s.at(i).isWord("in", "ins", "ft", "yd", "yds", "oz") && dot.is(".") && !dot.gap && i+2 < len(s.toks) {
		return i + 2
	}
	return i + 1
}

// lengthFollows reports whether a length or weight unit stands at i.
func (s *scanner) lengthFollows(i int) bool {
	u, _, next := s.unitAt(i, number{parted: true})
	return next > i && (isLength(u) || isWeight(u))
}
