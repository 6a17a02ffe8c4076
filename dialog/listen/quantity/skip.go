package quantity

import (
	"strings"

	"foldrow/engine"
)

// notQuantity is the end of what stands at token i and only looks like a
// quantity, or i: needle names (L55), stitches of a written pattern (K1 P1),
// dates, clock times, prices.
func (s *scanner) notQuantity(i int) int {
	t := s.at(i)
	switch t.kind {
	case word:
		return s.lettered(i)
	case digits:
		return s.dated(i)
	case mark:
		if oneOf(t.text, "£", "$", "€", "√") && s.at(i+1).kind == digits {
			return i + 2
		}
	}
	return i
}

// lettered passes over a word with digits glued to it, unless the word says
// what the number is (T5, row11), and over "L 55", "K 2", "knit 2 purl 2".
func (s *scanner) lettered(i int) int {
	t, next := s.at(i), s.at(i+1)
	if next.kind != digits && next.kind != vulgar {
		return s.writtenRib(i)
	}
	if end := s.monthDay(i); end > i {
		return end
	}
	if before := s.at(i - 1); !t.gap && (before.kind == digits || before.kind == vulgar) {
		return i // what joins two numbers: "28x40"
	}
	if next.gap {
		if t.isWord("k", "p", "l", "r") {
			return i + 2
		}
		return s.writtenRib(i)
	}
	u, _, unit := unitName(t.text)
	if unit && isCount(u) || oneOf(t.text, "t", "mt", "tension", "dial", "tens") {
		return i + 1
	}
	return s.run(i)
}

// run is the end of the letters and digits glued together from i.
func (s *scanner) run(i int) int {
	for i++; i < len(s.toks) && !s.at(i).gap && s.at(i).kind != mark; i++ {
	}
	return i
}

// writtenRib passes over "knit 2 purl 2" and "knit one, purl one": the reader
// of the line knows these as ribs.
func (s *scanner) writtenRib(i int) int {
	if !s.at(i).isWord("knit", "purl") {
		return i
	}
	_, j, ok := s.number(i + 1)
	if !ok {
		return i
	}
	if s.at(j).is(",") || s.at(j).is("-") || s.at(j).isWord("and") {
		j++
	}
	if !s.at(j).isWord("knit", "purl") || s.at(j).text == s.at(i).text {
		return i
	}
	if _, k, ok := s.number(j + 1); ok {
		return k
	}
	return i
}

// dated passes over dates, clock times and "50/50".
func (s *scanner) dated(i int) int {
	bar, b, bar2, c := s.at(i+1), s.at(i+2), s.at(i+3), s.at(i+4)
	three := b.kind == digits && c.kind == digits && bar.text == bar2.text && bar.kind == mark
	glued := !bar.gap && !b.gap && !bar2.gap && !c.gap
	switch {
	case three && glued && bar.text == "/":
		return i + 5
	case three && glued && bar.text == "-" && (len(s.at(i).text) == 4 || len(c.text) == 4):
		return i + 5
	case bar.is(":") && b.kind == digits && !bar.gap && !b.gap && len(b.text) == 2 && s.at(i).val.Less(engine.Int(24)):
		return i + 3
	case s.at(i).text == "50" && bar.is("/") && b.text == "50":
		return i + 3
	case s.at(i).text == "0" && s.at(i+1).is("x"):
		return s.run(i)
	case bar.is("/") && s.at(i).whole && b.whole && yarnCount(int64(s.at(i).val.Floor()), int64(b.val.Floor())):
		if _, _, unit := s.unitAt(i+3, number{parted: true}); unit == i+3 {
			return i + 3
		}
	case month(s.text(i + 1)), s.at(i+1).isWord("may", "march") && year(s.at(i+2)):
		if i += 2; year(s.at(i)) {
			i++
		}
	}
	return i
}

// monthDay passes over "June 5", "May 5, 2024" and "March 2024".
func (s *scanner) monthDay(i int) int {
	if !month(s.text(i)) && !s.at(i).isWord("may", "march") {
		return i
	}
	j := i + 2
	if s.at(j).is(",") {
		j++
	}
	switch {
	case year(s.at(j)):
		return j + 1
	case month(s.text(i)) || year(s.at(i+1)):
		return i + 2
	}
	return i
}

// year knows a number that can only be a year here.
func year(t *token) bool {
	return t.kind == digits && len(t.text) == 4 && (t.text[:2] == "19" || t.text[:2] == "20")
}

// yarnCount knows the plies and count of a yarn, "2/30", which without a unit
// is no number that anyone writes so.
func yarnCount(plies, count int64) bool {
	switch count {
	case 16, 20, 25, 32, 50:
		return false
	}
	return plies >= 2 && plies <= 4 && count >= 14 && count <= 60
}

// month knows the names of months that mean nothing else.
func month(w string) bool {
	switch w {
	case "january", "february", "april", "june", "july", "august", "september", "october", "november", "december",
		"jan", "feb", "apr", "aug", "sep", "sept", "oct", "nov", "dec":
		return true
	}
	return false
}

// foreign is the end of what follows a number and makes it no quantity of
// ours: "6pm", "4 ply", "30°C", "2k2p". It is i where nothing does.
func (s *scanner) foreign(i int) int {
	t := s.at(i)
	j := s.hyphen(i)
	switch {
	case s.at(j).isWord("pm", "am", "o'clock", "o’clock", "ply"):
		return j + 1
	case t.isWord("a", "p") && s.at(i+1).is(".") && s.at(i+2).isWord("m"):
		return i + 3
	case !t.gap && t.kind == mark && (oneOf(t.text, "°", "£", "$", "€") || raised(t.text)):
		return i + 1
	case t.gap || t.kind != word || t.isWord("in", "r", "ish", "odd", "rib"):
		return i
	case t.isWord("s") && s.stitchesGlued(i), t.isWord("x") && s.amountAt(i+1), t.isWord("to", "by", "and", "or") && !s.at(i+1).gap:
		return i
	}
	if _, _, ok := s.unitWord(i); ok {
		return i
	}
	if before := s.at(i - 1); before.kind == digits || before.kind == vulgar {
		return s.run(i)
	}
	return i
}

// raised reports small figures above the line, "45²": a power, or the mark of
// a note.
func raised(text string) bool {
	return strings.Trim(text, "⁰¹²³⁴⁵⁶⁷⁸⁹") == "" && text != ""
}

// pronoun reports that "one" from token i to k stands for a thing, not for a
// number: "that one", "one of them".
func (s *scanner) pronoun(i, k int) bool {
	if !s.at(i).isWord("one") || k != i+1 {
		return false
	}
	if _, _, unit := s.unitWord(s.hyphen(k)); unit && !s.at(k).isWord("in") {
		return false
	}
	if s.at(k).isWord("of", "another", "day", "thing", "question", "moment", "that", "which", "who", "is", "was", "else") {
		return true
	}
	if s.at(i-2).isWord("the", "that", "this") && s.at(i-1).kind == word {
		return true // "the pretty one"
	}
	return s.at(i-1).isWord("the", "that", "this", "which", "each", "every", "any", "no", "another", "other", "same",
		"last", "next", "first", "second", "new", "old", "right", "wrong", "bigger", "smaller", "wider", "deeper",
		"larger", "better", "best", "good", "white")
}
