package quantity

import (
	"strings"
	"testing"
)

// say writes what was found in a line in one string, for tables: value, unit,
// rate, flags, problem and the text it stands for.
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
		{q.Range, "range"}, {q.From, "from"}, {q.Or, "or"}, {q.Hedged, "hedged"}, {q.Ordinal, "ordinal"},
		{q.Words, "words"}, {q.After, "after"}, {q.Pair, "pair"}, {q.Rib, "rib"}, {q.Sign < 0, "minus"}, {q.Sign > 0, "plus"},
	} {
		if f.set {
			s += " " + f.name
		}
	}
	return s
}

func TestScan(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"15 1/2 in", "31/2 in [15 1/2 in]"},
		{"about 40 cm", "40 cm hedged [about 40 cm]"},
		{"28 sts and 40 rows to 10 cm", "28 st per 10 cm [28 sts]; 40 row per 10 cm [40 rows to 10 cm]"},
		{"28x40", "28 pair [28]; 40 pair [40]"},
		{"2x2 rib", "2..2 rib [2x2]"},
		{"between 42 and 43 cm", "42..43 cm range [between 42 and 43 cm]"},
	} {
		if got := say(c.line); got != c.want {
			t.Errorf("%q: got %s, want %s", c.line, got, c.want)
		}
	}
}
