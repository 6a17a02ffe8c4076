package listen

import (
	"strconv"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// yokeWords is what a line says of a yoke; what was not said stays 0.
type yokeWords struct {
	start, body, neck, edge, rows int
	waiting                       int   // on the waste yarn
	stages                        []int // more than one where choices are set side by side
	bust, depth                   engine.Num
	bustUnit                      quantity.Unit
	method, repeats, heights      string
}

// yokeSaid gives every number of the line to the thing of the yoke that it is
// about.
func (r *reading) yokeSaid() yokeWords {
	var y yokeWords
	repeats, before := r.repeats()
	y.repeats, y.heights = strings.Join(repeats, " "), r.heights()
	left := len(repeats)
	if one := r.repeatsByStage(); one != "" {
		y.repeats, left, before = one, strings.Count(one, "="), false
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		n := r.whole(i)
		cm, length := q.Length()
		length = length && q.Unit != ""
		switch {
		case r.namesStage(i):
		case q.Range && !length && q.High.IsInt() && q.Value.IsInt():
			y.start, y.neck = q.High.Floor(), q.Value.Floor()
		case r.nearBust(i) && q.Problem == "" && !q.Range:
			y.bust, y.bustUnit = bustOf(q)
		case y.heights != "" && r.behind(i, "height"):
		case length && (r.says("depth", "deep", "height", "high") || r.wordBefore(i, "yoke")):
			y.depth = cm
		case n == 0 || q.Ordinal:
		case r.stageNumber(i):
			y.stages = append(y.stages, n)
		case q.Unit == quantity.Row:
			y.rows = n
		case r.wordBefore(i, "wait", "waste") || r.wordAfter(i, "wait", "waste"):
			y.waiting = n
		case r.wordBefore(i, "edge"):
			y.edge = n
		case r.wordBefore(i, "body") || r.wordAfter(i, "body"):
			y.body = n
		case left > 0 && r.behind(i, "repeat") && !before || before && r.wordAfter(i, "repeat"):
			left--
		case r.wordBefore(i, "neck", "to", "end"):
			y.neck = n
		case y.start == 0:
			y.start = n
		default:
			y.neck = n
		}
	}
	if y.neck > y.start && y.start > 0 {
		y.start, y.neck = y.neck, y.start
	}
	stages := 0
	if len(y.stages) > 0 {
		stages = y.stages[0]
	}
	y.method = r.method(stages)
	return y
}

// stageNumber reports whether the number at token i counts stages, also the
// first of "3 or 4 stages".
func (r *reading) stageNumber(i int) bool {
	stage := []string{"stage", "cut"}
	if j := i + 1; j+1 < len(r.l.tokens) && r.l.tokens[j].text == "stage" && r.l.tokens[j+1].q != nil {
		return false // "repeat 12, stage 2 ...": which stage comes next
	}
	if oneOf(r.near(i, 1), stage) {
		return true
	}
	if j := i + 2; j < len(r.l.tokens) && r.l.tokens[j].q != nil && oneOf(r.near(j, 1), stage) {
		switch r.l.tokens[i+1].text {
		case "or", "and", "vs", "versus", "against", "to":
			return r.l.tokens[i+1].text != "to" || r.whole(i) <= engine.MostStages
		}
	}
	return r.spokenBefore(i, "stages", "cuts") && r.whole(i) <= engine.MostStages
}

// spokenBefore reports whether one of the words, in that form, stands right
// before token i.
func (r *reading) spokenBefore(i int, words ...string) bool {
	for _, w := range words {
		if i > 0 && r.l.tokens[i-1].text == w {
			return true
		}
	}
	return false
}

// stageNamed is the stage that "stage 3" or "the 3rd stage" names, 0 for none.
// Of two, as in "between stage 1 and 2", it is the later: a hanging belongs to
// the stage it leads to. "The decreases after stage 2" lead to the next one.
func (r *reading) stageNamed() int {
	named := 0
	for _, i := range r.l.quantities() {
		if !r.namesStage(i) {
			continue
		}
		if n := r.whole(i); n > 0 {
			named = n
		} else if q := r.l.tokens[i].q; q.Range && q.High.IsInt() {
			named = q.High.Floor()
		}
		if !r.says("between", "from") {
			break
		}
	}
	if named > 0 && r.says("after") && r.says("decrease", "lose", "hang") {
		named++
	}
	return named
}

// namesStage reports whether the number at token i says which stage, and not
// how many there are.
func (r *reading) namesStage(i int) bool {
	switch {
	case r.spokenBefore(i, "stage"), r.l.tokens[i].q.Ordinal && oneOf(r.near(i, 1), []string{"stage"}):
		return true
	case r.spokenBefore(i, "stages"):
		return r.says("between")
	}
	return i > 1 && r.spokenBefore(i, "and", "to") && r.l.tokens[i-2].q != nil && r.namesStage(i-2)
}

// lookedAt is the view that a line asks for: the drawing, the pieces.
func (r *reading) lookedAt() string {
	switch {
	case r.says("draw", "profile", "picture", "shape"):
		return "draw"
	case r.says("piece", "needle", "bed", "machine") && !r.says("hang", "carry"):
		return "pieces"
	}
	return ""
}

// nearBust reports whether the number at token i is a bust's.
func (r *reading) nearBust(i int) bool {
	return r.wordBefore(i, "bust", "chest", "girth") || r.wordAfter(i, "bust", "chest")
}

// bustOf is a bust in cm; a bare one below 60 is in inches.
func bustOf(q *quantity.Quantity) (engine.Num, quantity.Unit) {
	if cm, ok := q.Length(); ok && q.Unit != "" {
		return cm, unitSystem(q.Unit)
	}
	if q.Value.Less(engine.Int(60)) {
		return q.Value.Mul(inch), "in"
	}
	return q.Value, "cm"
}

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
func (r *reading) repeats() (out []string, before bool) {
	if !r.says("repeat") {
		return nil, false
	}
	_, after, _ := strings.Cut(r.l.text, "repeat")
	for _, w := range strings.FieldsFunc(after, func(c rune) bool { return strings.ContainsRune(" ,/;&+-", c) }) {
		n, err := strconv.Atoi(strings.TrimRight(w, ".?"))
		switch {
		case err == nil && n > 0:
			out = append(out, strconv.Itoa(n))
			continue
		case len(out) == 0 && (w == "s" || w == "of" || w == "is" || w == "are" || w == "every"), w == "and", w == "then", w == "sts", w == "stitches", w == "st":
			continue
		}
		break
	}
	if len(out) > 0 {
		return out, false
	}
	for _, i := range r.l.quantities() {
		if n := r.whole(i); n > 0 && r.wordAfter(i, "repeat") {
			out = append(out, strconv.Itoa(n))
		}
	}
	return out, true
}

// repeatsByStage is "2=8" of "the second stage repeats 8", for every stage that
// the line names with a repeat of its own; "" where a repeat has no stage.
func (r *reading) repeatsByStage() string {
	if !r.says("repeat") {
		return ""
	}
	var stages, repeats []string
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		n := strconv.Itoa(r.whole(i))
		switch {
		case n == "0" || r.stageNumber(i) && !q.Ordinal:
			return ""
		case r.namesStage(i):
			stages = append(stages, n)
		default:
			repeats = append(repeats, n)
		}
	}
	if len(stages) == 0 || len(stages) != len(repeats) {
		return ""
	}
	for i := range stages {
		stages[i] += "=" + repeats[i]
	}
	return strings.Join(stages, " ")
}

// heights are the numbers that follow "heights", in cm, as they are kept.
func (r *reading) heights() string {
	_, after, found := strings.Cut(r.l.text, "height")
	if !found || !r.says("heights") && !strings.HasPrefix(after, "s") {
		return ""
	}
	unit := engine.Int(1)
	if !strings.Contains(after, "cm") && (strings.Contains(after, " in") || strings.Contains(after, "\"")) {
		unit = inch
	}
	var out []string
	for _, w := range strings.FieldsFunc(after, func(c rune) bool { return !(c >= '0' && c <= '9' || c == '.') }) {
		if n, ok := engine.ParseNum(strings.TrimRight(w, ".")); ok && n.Sign() > 0 && len(out) < engine.MostStages {
			out = append(out, n.Mul(unit).String())
		}
	}
	return strings.Join(out, " ")
}
