package listen

import (
	"strconv"
	"strings"

	"foldrow/engine"
)

// stages reads what the line says about the stages of a yoke.
func (r *reading) stages(p *Part) bool {
	p.Method = r.method()
	repeats := r.says("repeat")
	if repeats {
		p.Repeats = r.repeats()
	}
	taken := len(p.Repeats)
	p.Heights = r.heights()
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		n := r.whole(i)
		cm, length := q.Length()
		switch {
		case q.Range && q.Unit != "cm" && q.Unit != "in" && q.High.IsInt() && q.Value.IsInt():
			p.Start, p.Neck = q.High.Floor(), q.Value.Floor()
		case length && r.wordBefore(i, "bust", "chest", "girth") || length && r.wordAfter(i, "bust", "chest"):
			p.Bust = cm
		case n == 0 || q.Ordinal || len(p.Heights) > 0 && r.behind(i, "height"):
		case oneOf(r.near(i, 1), []string{"stage", "cut"}) || oneOf(r.near(i, -1), []string{"stage", "cut"}) && p.Stages == 0 && n <= mostStages:
			p.Stages = n
		case r.wordBefore(i, "edge"):
			p.Edge = n
		case r.wordBefore(i, "body") || r.wordAfter(i, "body"):
			p.Body = n
		case taken > 0 && r.behind(i, "repeat") || r.wordAfter(i, "repeat"):
			taken--
		case r.wordBefore(i, "neck", "to", "end"):
			p.Neck = n
		case r.wordBefore(i, "from", "start", "begin", "first", "yoke", "with", "of") || p.Start == 0:
			if p.Start == 0 {
				p.Start = n
			} else {
				p.Neck = n
			}
		}
	}
	if p.Neck > p.Start && p.Start > 0 {
		p.Start, p.Neck = p.Neck, p.Start
	}
	return true
}

// mostStages is the largest number after "stage" that is a number of stages.
const mostStages = 12

// behind: token i stands behind the word, at any distance.
func (r *reading) behind(i int, word string) bool {
	for j := range i {
		if r.l.tokens[j].stem == stem(word) {
			return true
		}
	}
	return false
}

// repeats are the whole numbers that follow "repeat", in any separation; or
// the one before it ("a 12 stitch repeat").
func (r *reading) repeats() []int {
	_, after, _ := strings.Cut(r.l.text, "repeat")
	var out []int
	for _, w := range strings.FieldsFunc(after, func(c rune) bool { return strings.ContainsRune(" ,/;&+-", c) }) {
		n, err := strconv.Atoi(strings.TrimRight(w, "."))
		switch {
		case err == nil && n > 0:
			out = append(out, n)
			continue
		case len(out) == 0 && (w == "s" || w == "of" || w == "is" || w == "are" || w == "every"), w == "and", w == "then", w == "sts", w == "stitches", w == "st":
			continue
		}
		break
	}
	if len(out) > 0 {
		return out
	}
	for _, i := range r.l.quantities() {
		if n := r.whole(i); n > 0 && (r.wordAfter(i, "repeat") || r.behind(i, "repeat")) {
			out = append(out, n)
		}
	}
	return out
}

// heights are the numbers that follow "heights", in cm.
func (r *reading) heights() []engine.Num {
	_, after, found := strings.Cut(r.l.text, "height")
	if !found {
		return nil
	}
	unit := engine.Int(1)
	if !strings.Contains(after, "cm") && (strings.Contains(after, " in") || strings.Contains(after, "\"")) {
		unit = engine.Frac(254, 100)
	}
	var out []engine.Num
	for _, w := range strings.FieldsFunc(after, func(c rune) bool { return !(c >= '0' && c <= '9' || c == '.') }) {
		if n, ok := engine.ParseNum(strings.TrimRight(w, ".")); ok && n.Sign() > 0 && len(out) < mostStages {
			out = append(out, n.Mul(unit))
		}
	}
	return out
}

// method is the way of cutting that the words tell, "" where none.
func (r *reading) method() engine.YokeMethod {
	t := " " + r.l.text + " "
	hasAny := func(ws ...string) bool {
		for _, w := range ws {
			if strings.Contains(t, w) {
				return true
			}
		}
		return false
	}
	switch {
	case hasAny(" cone"):
		return engine.StraightCone
	case hasAny("equal cut", "equal step", "equal decrease", "evenly", " same cut", "same number"):
		return engine.EqualCuts
	case hasAny("sequence b ", "method b ", "percentages b ", "percentage b ", "2/5", "two fifth", "two-fifth"):
		return engine.SequenceB
	case hasAny("sequence c ", "method c ", "percentages c ", "percentage c ", "1/5", "fifth", "four decrease", "four-decrease"):
		return engine.SequenceC
	case hasAny("sequence a ", "method a ", "percentages a ", "percentage a ", "1/3", "a third", "one third", "thirds"):
		return engine.SequenceA
	case hasAny("percent"):
		return "percent"
	}
	return ""
}

// yokeDepth reads the bust for which a yoke's depth is asked.
func (r *reading) yokeDepth(p *Part) bool {
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		cm, ok := q.Length()
		if !ok && q.Unit == "" && !q.Range && !q.Rib && !q.Ordinal { // a bare bust: inches below 60
			if cm = q.Value; cm.Less(engine.Int(60)) {
				cm = cm.Mul(engine.Frac(254, 100))
			}
			ok = true
		}
		if ok && q.Problem == "" && !q.Range {
			p.Bust = cm
		}
	}
	return r.says("yoke")
}
