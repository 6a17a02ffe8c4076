package quantity

import (
	"strconv"
	"testing"

	"foldrow/engine"
)

// measured is what a line says in the one canonical unit it has: cm, g, per
// 10 cm or m per 100 g.
func measured(t *testing.T, line string) engine.Num {
	t.Helper()
	qs := Scan(line)
	if len(qs) != 1 {
		t.Fatalf("%q: %d quantities", line, len(qs))
	}
	for _, f := range []func(Quantity) (engine.Num, bool){Quantity.Length, Quantity.Grams, Quantity.Per10cm, Quantity.MetresPer100g} {
		if v, ok := f(qs[0]); ok {
			return v
		}
	}
	t.Fatalf("%q: no measure", line)
	return engine.Num{}
}

// TestAgainstUnits compares with GNU Units 2.22 (Debian package units
// 2.22-2), output of: units -t -o "%.10g" FROM TO.
func TestAgainstUnits(t *testing.T) {
	for _, c := range []struct{ from, to, want string }{
		{"1 inch", "1 cm", "2.54"},
		{"4 inch", "1 cm", "10.16"},
		{"10 cm", "1 inch", "3.937007874"},
		{"an eighth of an inch", "1 mm", "3.175"},
		{"1 yard", "1 m", "0.9144"},
		{"1 m", "1 yard", "1.093613298"},
		{"100 m", "1 yard", "109.3613298"},
		{"1 ounce", "1 gram", "28.34952313"},
		{"50 g", "1 ounce", "1.763698097"},
		{"1 pound", "1 gram", "453.59237"},
		{"28 per 10 cm", "1 per inch", "7.112"},
		{"28 per 4 inch", "1 per 10 cm", "27.55905512"},
		{"30 rows per 10 cm", "1 row per inch", "7.62"},
		{"400 m per 100 g", "1 yd per lb", "1984.218591"},
		{"400 m per 100 g", "1 yd per oz", "124.013662"},
		{"560 yd/lb", "1 m per 100 g", "112.8907878"},
		{"437 yd per 100 g", "1 m per 100 g", "399.5928"},
		{"4.5 mm", "1 inch", "0.1771653543"},
		{"9 mm", "1 inch", "0.3543307087"},
	} {
		got := strconv.FormatFloat(measured(t, c.from).Div(measured(t, c.to)).Float(), 'g', 10, 64)
		if got != c.want {
			t.Errorf("%s in %s: %s, want %s", c.from, c.to, got, c.want)
		}
	}
}

// TestMeasuresApart checks that a quantity answers only for its own kind.
func TestMeasuresApart(t *testing.T) {
	for _, c := range []struct {
		line                         string
		length, grams, per10, per100 bool
	}{
		{"40 cm", true, false, false, false},
		{"40", false, false, false, false},
		{"40 st", false, false, false, false},
		{"50 g", false, true, false, false},
		{"28 st per 10 cm", false, false, true, false},
		{"28 per 10 cm", false, false, true, false},
		{"400 m per 100 g", false, false, false, true},
		{"4,500 cm", false, false, false, false},
		{"10 %", false, false, false, false},
	} {
		q := Scan(c.line)[0]
		_, length := q.Length()
		_, grams := q.Grams()
		_, per10 := q.Per10cm()
		_, per100 := q.MetresPer100g()
		if length != c.length || grams != c.grams || per10 != c.per10 || per100 != c.per100 {
			t.Errorf("%q: length %v, grams %v, gauge %v, yarn %v", c.line, length, grams, per10, per100)
		}
	}
}
