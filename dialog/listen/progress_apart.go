package listen

import (
	"strings"

	"foldrow/dialog/listen/quantity"
)

// Lines made of the words of progress that tell none: what needles there are,
// and what the machine did.

// asksNeedles: a question that is a kind of needle and no more ("hem needles?",
// "3rd latch needle?", "columns to latch?") wants their names. A word of the
// work tells the kind right before the needles, or after them behind "for" or
// "to"; anywhere else it is being done ("latched the last column?").
func (r *reading) asksNeedles() bool {
	noun, kind := -1, false
	for i := r.l.begin; i < r.l.end; i++ {
		if r.isNeedles(i) {
			noun = i
		}
	}
	if noun < 0 || oneOf(r.l.tokens[r.l.begin].text, []string{"is", "am", "are", "was", "were", "have", "has", "did"}) {
		return false
	}
	for i := r.l.begin; i < r.l.end; i++ {
		t := &r.l.tokens[i]
		switch {
		case t.needle != "", oneOf(t.text, []string{"done", "did", "finished", "finish", "complete", "completed", "ready", "made", "yet", "already"}):
			return false
		case r.sense("held", t), r.sense("begun", t):
			return false
		case !r.sense("work", t):
		case i+1 < r.l.end && r.isNeedles(i+1), i > noun && r.after(i, "for", "to"):
			kind = true
		default:
			return false
		}
	}
	return kind
}

// asksKind: "is L27 a hem needle" and "do I latch L20" ask what happens on a
// needle, and not how far the work is.
func (r *reading) asksKind() bool {
	t := r.l.tokens[r.l.begin:r.l.end]
	if len(t) < 3 || r.l.has("now", "next", "yet", "already", "still", "again") {
		return false
	}
	kind := t[1].needle != "" && oneOf(t[0].text, []string{"is"}) && oneOf(t[2].text, []string{"a", "an", "among", "in", "part"})
	duty := oneOf(t[0].text, []string{"do", "must", "should", "shall"}) && t[1].text == "i" && len(t) <= 7 && t[len(t)-1].needle != "" && r.l.has("latch", "drop", "hang")
	return kind || duty
}

func (r *reading) isNeedles(i int) bool {
	return oneOf(r.l.tokens[i].stem, []string{stem("needle"), stem("column"), stem("bump")})
}

// after reports whether one of words stands one or two words before token i.
func (r *reading) after(i int, words ...string) bool {
	return i-1 >= r.l.begin && oneOf(r.l.tokens[i-1].text, words) || i-2 >= r.l.begin && oneOf(r.l.tokens[i-2].text, words)
}

// firstSoMany is n of "the first n columns are done"; 0 where the line tells
// something else.
func (r *reading) firstSoMany(said []stated) int {
	if len(said) != 1 || !said[0].work || said[0].held || said[0].begun || len(said[0].rows) != 1 || len(said[0].needles) > 0 || r.asksState() {
		return 0
	}
	for i := r.l.begin + 1; i < r.l.end; i++ {
		if q := r.l.tokens[i].q; q != nil && !q.After && !q.Ordinal && q.Unit != quantity.Row && r.l.tokens[i-1].text == "first" && !r.l.has("row") {
			return said[0].rows[0]
		}
	}
	return 0
}

// missed: a needle, a stitch or the row that did not knit is a mishap; "I have
// not knitted row 9" and "row 9 is not knitted" are not. Which it is, the line
// tells: the topic keeps the words of cards from settling it again.
func (r *reading) missed() (Meaning, bool) {
	one, many, edge := false, false, false
	for i := r.l.begin; i < r.l.end; i++ {
		t := &r.l.tokens[i]
		switch {
		case t.q != nil && t.q.After, oneOf(t.text, []string{"i", "we"}):
			return Meaning{}, false
		case t.needle != "", oneOf(t.text, []string{"needle", "stitch", "loop"}):
			one = true
			edge = edge || r.after(i, "end", "edge", "first", "last")
		case oneOf(t.text, []string{"row", "needles", "stitches", "loops"}):
			one, many = true, many || !r.l.has("one")
		case oneOf(t.text, []string{"not", "never"}) && i+1 < r.l.end && r.l.tokens[i+1].stem == stem("knit"):
			if !one || t.text == "not" && !r.after(i, "did", "do", "does", "has", "have", "had") {
				return Meaning{}, false
			}
			switch {
			case many:
				return Meaning{Kind: Trouble, Card: "carriage-skipped", Topic: "told"}, true
			case edge:
				return Meaning{Kind: Trouble, Card: "end-needle-not-knitting", Topic: "told"}, true
			}
			return Meaning{Kind: Trouble, Card: "closed-latch", Topic: "told"}, true
		}
	}
	return Meaning{}, false
}

// droppedByMistake: columns are dropped only where they are latched.
func (r *reading) droppedByMistake() bool {
	return r.l.has("drop") && !r.l.has("latch", "hang") && !r.held() && r.x.alongOf(r.ctx.Step) != "latch"
}

// nothingHangs: neither stitches nor bumps are hung at the step she is at.
func (r *reading) nothingHangs() bool {
	along := r.x.alongOf(r.ctx.Step)
	return along != "hem" && along != "rehang" && !strings.HasPrefix(r.ctx.Step, "front-") && !strings.HasPrefix(r.ctx.Step, "second-")
}
