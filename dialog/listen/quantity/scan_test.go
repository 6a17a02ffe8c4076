package quantity

import (
	"strings"
	"testing"
)

// reading is a line and what must be found in it, as say writes it.
type reading struct{ line, want string }

func readAll(t *testing.T, table []reading) {
	t.Helper()
	for _, c := range table {
		if got := say(c.line); got != c.want {
			t.Errorf("%q\n got %s\nwant %s", c.line, got, c.want)
		}
	}
}

// say writes what was found in a line in one string: value, unit, rate,
// flags, problem and the text it stands for.
func say(line string) string {
	var parts []string
	for _, q := range Scan(line) {
		parts = append(parts, sayOne(q)+" ["+line[q.Start:q.End]+"]")
	}
	return strings.Join(parts, "; ")
}

func sayOne(q Quantity) string {
	if q.Problem != "" {
		return q.Problem
	}
	s := q.Value.String()
	if q.Range || q.Rib {
		s += ".." + q.High.String()
	}
	if q.Unit != None {
		s += " " + string(q.Unit)
	}
	if q.IsRate() {
		s += " per " + q.Over.String() + " " + string(q.OverUnit)
	}
	for _, f := range []struct {
		set  bool
		name string
	}{
		{q.Range, "range"}, {q.From, "from"}, {q.Down, "down"}, {q.Or, "or"}, {q.Hedged, "hedged"}, {q.Ordinal, "ordinal"},
		{q.Words, "words"}, {q.After, "after"}, {q.Pair, "pair"}, {q.Rib, "rib"}, {q.Sign < 0, "minus"}, {q.Sign > 0, "plus"},
	} {
		if f.set {
			s += " " + f.name
		}
	}
	return s
}

// TestSpans checks what every reader of the result relies on, over all lines
// of the tables.
func TestSpans(t *testing.T) {
	for _, table := range [][]reading{digitForms, wordForms, markForms, unitForms, compoundForms, rangeForms, hedgeForms, ordinalForms,
		ribForms, gaugeForms, turnedForms, yarnForms, lineForms} {
		for _, c := range table {
			checkSpans(t, c.line)
		}
	}
}

// checkSpans fails where spans leave the line, overlap or come out of order.
func checkSpans(t *testing.T, line string) {
	t.Helper()
	end := 0
	qs := Scan(line)
	if len(qs) > MaxQuantities {
		t.Errorf("%q: %d quantities", line, len(qs))
	}
	for _, q := range qs {
		if q.Start < end || q.End <= q.Start || q.End > len(line) {
			t.Errorf("%q: span %d:%d after %d in %d bytes", line, q.Start, q.End, end, len(line))
		}
		if q.Problem == "" && !q.Rib && q.High.Less(q.Value) {
			t.Errorf("%q: range %v to %v", line, q.Value, q.High)
		}
		if q.IsRate() && q.OverUnit == None {
			t.Errorf("%q: over %v of nothing", line, q.Over)
		}
		end = q.End
	}
}
