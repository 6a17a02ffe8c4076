package quantity

import (
	"testing"

	"pgregory.net/rapid"

	"foldrow/engine"
)

var allUnits = []Unit{None, Centimetre, Millimetre, Inch, Foot, Metre, Yard, Stitch, Row, Needle, Click, Number, Gram, Ounce, Percent}

func TestPrint(t *testing.T) {
	for _, c := range []struct {
		n, d int64
		unit Unit
		want string
	}{
		{40, 1, Centimetre, "40 cm"},
		{81, 2, Centimetre, "40.5 cm"},
		{1, 3, Centimetre, "1/3 cm"},
		{220, 7, Centimetre, "31 3/7 cm"},
		{125, 8, Inch, "15 5/8 in"},
		{5, 8, Inch, "5/8 in"},
		{16, 1, Inch, "16 in"},
		{-3, 2, Inch, "-1 1/2 in"},
		{1, 1, Row, "1 row"},
		{11, 1, Row, "11 rows"},
		{1, 2, Stitch, "0.5 stitch"},
		{97, 1, Stitch, "97 stitches"},
		{0, 1, Needle, "0 needles"},
		{9, 2, Percent, "4.5%"},
		{13, 27, None, "0 and 13/27"},
		{850, 27, None, "31 and 13/27"},
		{7, 10, None, "0.7"},
		{1, 3, None, "1/3"},
		{12345, 1, Metre, "12345 m"},
	} {
		if got := Print(engine.Frac(c.n, c.d), c.unit); got != c.want {
			t.Errorf("%d/%d %s: %s, want %s", c.n, c.d, c.unit, got, c.want)
		}
	}
}

func TestPrintRounded(t *testing.T) {
	for _, c := range []struct {
		cm       engine.Num
		cms, ins string
	}{
		{engine.Frac(3978, 100), "39.8 cm", "15 5/8 in"},
		{engine.Int(40), "40 cm", "15 3/4 in"},
		{engine.Frac(254, 100), "2.5 cm", "1 in"},
		{engine.Frac(254*21, 1600), "3.3 cm", "1 5/16 in"},
		{engine.Frac(1, 100), "0 cm", "0 in"},
		{engine.Frac(-254, 200), "-1.3 cm", "-1/2 in"},
		{engine.Frac(3995, 100), "40 cm", "15 3/4 in"},
	} {
		if got := PrintCm(c.cm); got != c.cms {
			t.Errorf("PrintCm(%v): %s, want %s", c.cm, got, c.cms)
		}
		if got := PrintInches(c.cm); got != c.ins {
			t.Errorf("PrintInches(%v): %s, want %s", c.cm, got, c.ins)
		}
	}
}

// TestPrintReadsBack: what Print writes, Scan reads as the same value and
// unit, for every value whose parts have no more digits than are read.
func TestPrintReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := engine.Frac(rapid.Int64Range(-999_999, 999_999).Draw(t, "n"), rapid.Int64Range(1, 99_999).Draw(t, "d"))
		u := rapid.SampledFrom(allUnits).Draw(t, "unit")
		readsBack(t, Print(v, u), v, u)
	})
	rapid.Check(t, func(t *rapid.T) { // what people measure: small numbers, small parts
		v := engine.Frac(rapid.Int64Range(-2000, 2000).Draw(t, "n"), rapid.Int64Range(1, 64).Draw(t, "d"))
		u := rapid.SampledFrom(allUnits).Draw(t, "unit")
		readsBack(t, Print(v, u), v, u)
	})
}

// TestRoundedReadsBack: the rounded forms read back to what they show, within
// half a millimetre and a sixteenth of an inch.
func TestRoundedReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := engine.Frac(rapid.Int64Range(-200_000, 200_000).Draw(t, "n"), rapid.Int64Range(1, 999).Draw(t, "d"))
		for _, c := range []struct {
			text string
			off  engine.Num
		}{{PrintCm(v), engine.Frac(5, 100)}, {PrintInches(v), engine.Frac(254, 1600)}} {
			qs := Scan(c.text)
			if len(qs) != 1 {
				t.Fatalf("%q reads as %s", c.text, say(c.text))
			}
			cm, ok := qs[0].Length()
			if !ok || c.off.Less(cm.Sub(v).Abs()) {
				t.Fatalf("%v printed as %q reads as %v cm", v, c.text, cm)
			}
		}
	})
}

func readsBack(t *rapid.T, text string, v engine.Num, u Unit) {
	qs := Scan(text)
	if len(qs) != 1 || qs[0].Problem != "" || !qs[0].Value.Equal(v) || qs[0].Unit != u || qs[0].IsRate() || qs[0].Range {
		t.Fatalf("%v %s printed as %q reads as %s", v, u, text, say(text))
	}
	if qs[0].Start != 0 || qs[0].End != len(text) {
		t.Fatalf("%q: only %q was read", text, text[qs[0].Start:qs[0].End])
	}
}
