package listen

import (
	"slices"
	"strconv"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// chartSets reads a colour chart, drawn in signs or told row by row, with the
// stitches or the stage it runs over. drawn is false where the line holds
// neither rows nor words that lead to a chart.
func (r *reading) chartSets() (sets []Set, drawn bool) {
	rows, signs := r.drawnRows()
	if at := r.rowTakenOut(); at > 0 && !signs {
		return []Set{{Key: engine.KeyChart, Text: strconv.Itoa(at) + "=", Near: 1}}, true
	}
	if !signs {
		if r.cues[Parts].topic != "chart" {
			return nil, false
		}
		rows = r.toldRows()
	}
	if len(rows) > 0 {
		text, ok := engine.ChartText(rows)
		if !ok {
			text = "?" // refused where it is set, with an example that works
		} else if n := r.rowNamed(); n > 0 && signs && len(rows) == 1 && r.ctx.Chart {
			text = strconv.Itoa(n) + "=" + text // one row of the chart there is
		} else if signs && len(rows) == 1 && r.ctx.Chart && r.says("add", "another", "next") {
			text = "+=" + text // one more on top
		}
		sets = append(sets, Set{Key: engine.KeyChart, Text: text, Near: 1})
	}
	sets = append(sets, r.chartNumbers(signs)...)
	for _, s := range r.b.sets {
		if s.Key == engine.ChartPlace && !r.asks() {
			sets = append(sets, s)
		}
	}
	return sets, true
}

// chartNumbers are the numbers beside the rows: stitches, stage, times, the
// limit of a float.
func (r *reading) chartNumbers(signs bool) []Set {
	var out []Set
	add := func(k engine.Key, v engine.Num, u quantity.Unit) {
		out = append(out, Set{Key: k, Value: v, Unit: u, Near: 1})
	}
	for _, i := range r.l.quantities() {
		q := r.l.tokens[i].q
		n := r.whole(i)
		cm, length := q.Length()
		switch {
		case length && q.Unit != "" && (r.says("float", "limit")):
			add(engine.FloatLimit, cm, unitSystem(q.Unit))
		case n == 0 || q.Ordinal:
		case oneOf(r.near(i, -1), []string{"stage"}):
			add(engine.ChartStage, q.Value, "")
		case r.wordAfter(i, "time") || r.wordBefore(i, "time"):
			add(engine.ChartTimes, q.Value, "")
		case r.wordBefore(i, "limit", "float") || r.says("catch") && r.says("float") && q.Unit != quantity.Row || q.Unit == quantity.Stitch && n <= 20 && r.says("float") && r.says("limit"):
			add(engine.FloatStitches, q.Value, "")
		case oneOf(r.near(i, -1), []string{"over", "on", "across", "fit"}) || q.Unit == quantity.Stitch && n > 20 || signs && n > 20:
			add(engine.ChartStitches, q.Value, "")
		}
	}
	return out
}

// drawnRows reads rows drawn in signs, apart by slashes or spaces ("x..x.. /
// .xx.", "xooxoo"): x, # or * is contrast, the rest main. The line must hold
// more than one row, or also say that it is a row or of so many stitches, so
// that kisses at the end of a message are no pattern.
func (r *reading) drawnRows() ([][]bool, bool) {
	var out [][]bool
	for _, w := range strings.FieldsFunc(r.l.text, func(c rune) bool { return strings.ContainsRune(" ,;/|", c) }) {
		w = strings.Trim(w, ":?!\"'")
		w = lettersOfColours(w)
		if len(w) < 2 || len(w) > 200 || strings.Trim(w, "x#*.-_o") != "" || !strings.ContainsAny(w, "x#*") || !strings.ContainsAny(w, ".-_o") && len(out) == 0 {
			continue
		}
		row := make([]bool, len(w))
		for i := range w {
			row[i] = strings.IndexByte("x#*", w[i]) >= 0
		}
		out = append(out, row)
	}
	if len(out) == 1 && len(r.l.quantities()) == 0 && !r.lettersAlone() && !r.says("row", "pattern", "contrast", "card", "repeat", "chart") {
		return nil, false
	}
	return out, len(out) > 0
}

// lettersOfColours reads "mmccmmmc", main and contrast by their first letters, as
// signs; any other word stays as it is.
func lettersOfColours(w string) string {
	if len(w) < 3 || strings.Trim(w, "mc") != "" || !strings.Contains(w, "m") || !strings.Contains(w, "c") {
		return w
	}
	return strings.NewReplacer("m", ".", "c", "x").Replace(w)
}

// lettersAlone: the line is one row in letters, which is no word of any other
// kind: "mmccmm".
func (r *reading) lettersAlone() bool {
	return r.l.words() == 1 && len(r.l.text) > 4 && lettersOfColours(r.l.text) != r.l.text
}

// toldRows reads rows told in words: "row 1 contrast every fourth, row 2 every
// other, the ones beside last row's".
func (r *reading) toldRows() [][]bool {
	var rows [][]bool
	for _, part := range r.rowParts() {
		row, shift := toldChartRow(part)
		if len(row) == 0 {
			if shift && len(rows) > 0 {
				row = rows[len(rows)-1]
			} else {
				continue
			}
		}
		if shift && len(rows) > 0 {
			row = beside(row)
		}
		rows = append(rows, row)
	}
	return rows
}

// rowParts cuts the tokens where a new row is told.
func (r *reading) rowParts() [][]token {
	var parts [][]token
	from := 0
	for i, t := range r.l.tokens {
		next := t.q != nil && t.q.Unit == quantity.Row || t.stem == "then" || t.stem == "row" && i > 0 && oneOf(r.near(i, -1), []string{"next", "first", "second", "third", "last"}) && r.l.tokens[i-1].text != "last"
		if next && i > from {
			parts = append(parts, r.l.tokens[from:i])
			from = i
		}
	}
	return append(parts, r.l.tokens[from:])
}

// toldChartRow is one row's repeat of its words, and whether it is set between the
// contrast stitches of the row before.
func toldChartRow(ts []token) (row []bool, shift bool) {
	contrast, every, colours := 0, 0, 0
	for i, t := range ts {
		word := func(at int) string {
			if at < 0 || at >= len(ts) || ts[at].q != nil {
				return ""
			}
			return ts[at].stem
		}
		if t.text == "beside" || t.text == "between" || t.text == "offset" || t.text == "staggered" || t.text == "shifted" {
			shift = true
		}
		if t.text == "other" && word(i-1) == "every" {
			every = 2
		}
		if t.q == nil || !t.q.Value.IsInt() || t.q.Unit == quantity.Row {
			continue
		}
		n := t.q.Value.Floor()
		colour := word(i + 1)
		switch {
		case word(i-1) == "every" || word(i-1) == "each":
			every = n
		case n < 1 || len(row)+n > 200:
		case colour == "contrast":
			row, contrast, colours = append(row, slices.Repeat([]bool{true}, n)...), n, colours|1
		case colour == "main" || colour == "plain" || colour == "background":
			row, colours = append(row, make([]bool, n)...), colours|2
		}
	}
	if every > 1 && every <= 100 {
		row, colours = make([]bool, every), 3
		for i := range min(max(contrast, 1), every-1) {
			row[i] = true
		}
	}
	if colours != 3 { // one colour alone is no pattern
		row = nil
	}
	return row, shift
}

// beside is the row with its contrast stitches moved by half a repeat, at
// least by one: those beside the last row's.
func beside(row []bool) []bool {
	by := max(1, len(row)/2)
	out := make([]bool, len(row))
	for i := range row {
		out[(i+by)%len(row)] = row[i]
	}
	return out
}

// rowNamed is the row that "row 3" names, 0 for none or several.
func (r *reading) rowNamed() int {
	row, found := 0, 0
	for _, i := range r.l.quantities() {
		if q := r.l.tokens[i].q; q.Unit == quantity.Row && (q.After || q.Ordinal) {
			row, found = q.Value.Floor(), found+1
		}
	}
	if found != 1 {
		return 0
	}
	return row
}

// ofChartRow: a row is named together with what only rows of the chart have.
func (r *reading) ofChartRow() bool {
	return r.ctx.Chart && !r.ctx.Making && r.rowNamed() > 0 && r.asks() && r.says("needle", "contrast", "main", "colour", "float")
}

// rowTakenOut is the row of the chart that an order takes out, 0 for none.
func (r *reading) rowTakenOut() int {
	if !r.ctx.Chart || r.ctx.Making {
		return 0
	}
	switch first := r.l.tokens[r.l.begin].text; {
	case first == "remove", first == "delete", (first == "take" || first == "leave") && r.l.has("out"):
		return r.rowNamed()
	}
	return 0
}

// floatJudged is the stitches of a float that is to be judged, 0 where the line
// asks for the limit or sets one.
func (r *reading) floatJudged() int {
	qs := r.l.quantities()
	if len(qs) != 1 || r.says("limit", "catch", "allow") {
		return 0
	}
	return r.stitches(qs[0])
}

// howBeatsFloat: "how do I shorten a float" asks for the way.
func (r *reading) howBeatsFloat() bool {
	return r.says("how") && !r.says("long", "length", "many", "far", "allow", "limit")
}
