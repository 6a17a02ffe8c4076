package rules

import (
	"reflect"
	"testing"

	"foldrow/engine"
)

// 23 and 24 stitches belong to two classes; every other whole number from 1
// to 40 to exactly one.
func TestYarnsForGauge(t *testing.T) {
	tb := book(t).Tables
	for n := int64(1); n <= 40; n++ {
		want := 1
		if n == 23 || n == 24 {
			want = 2
		}
		if got := tb.YarnsForGauge(engine.Int(n)); len(got) != want {
			t.Errorf("%d stitches: %v", n, got)
		}
	}
	if got := tb.YarnsForGauge(engine.Int(41)); got != nil {
		t.Errorf("41 stitches: %v", got)
	}
	for g, want := range map[string]string{"28": "Super Fine", "26.5": "Super Fine", "20.4": "Medium", "20.5": "Light", "3": "Jumbo"} {
		if got := tb.YarnsForGauge(num(t, g)); len(got) != 1 || got[0].Name != want {
			t.Errorf("%s stitches: %v, want %s", g, got, want)
		}
	}
}

func TestYarnsForLength(t *testing.T) {
	tb := book(t).Tables
	for m, want := range map[string][]string{
		"400": {"4 ply"}, "350": {"4 ply", "sport"}, "225": {"DK"}, "125": {"aran", "chunky"}, "80": {"super chunky"},
		"460": nil,
	} {
		var got []string
		for _, y := range tb.YarnsForLength(num(t, m)) {
			got = append(got, y.Name)
			if c, ok := tb.Class(y.Category); !ok || c.Category != y.Category {
				t.Errorf("%s has no class", y.Name)
			}
		}
		if !reflect.DeepEqual(got, want) {
			t.Errorf("%s m: %v, want %v", m, got, want)
		}
	}
	if c, ok := tb.Class(3); !ok || c.Name != "Light" {
		t.Errorf("class 3 is %+v, %v", c, ok)
	}
	if _, ok := tb.Class(9); ok {
		t.Error("there is no class 9")
	}
}

// At 94 cm one pattern has 19 cm and the other 20; at 125 cm one has 23 and
// the other lies between 25 (124) and 26 (134).
func TestPublishedDepth(t *testing.T) {
	tb := book(t).Tables
	for _, tt := range []struct{ bust, low, high string }{
		{"94", "19", "20"}, {"110", "22", "23"}, {"125", "23", "25.1"}, {"83", "19", "19"}, {"151", "25", "25"},
		{"98", "20.6", "21"}, // 19 + 2*4/5 and 20 + 2*4/8
	} {
		low, high, ok := tb.PublishedDepth(num(t, tt.bust))
		if !ok || !low.Equal(num(t, tt.low)) || !high.Equal(num(t, tt.high)) {
			t.Errorf("bust %s: %v to %v, %v; want %s to %s", tt.bust, low.Float(), high.Float(), ok, tt.low, tt.high)
		}
	}
	for _, bust := range []int64{82, 152} {
		if _, _, ok := tb.PublishedDepth(engine.Int(bust)); ok {
			t.Errorf("bust %d is beyond both patterns", bust)
		}
	}
}

// The schematic prints each neck in inches and, beside it, in cm rounded to
// the nearest half.
func TestFinishedNecks(t *testing.T) {
	rows := 0
	readTable(files, "finished-necks.csv", &faults{}, func(r row) {
		rows++
		cm := r.num("inches").Mul(engine.Frac(254, 100))
		half := engine.Frac(int64(cm.Mul(engine.Int(2)).Round()), 2)
		if !half.Equal(r.num("cm_printed")) {
			t.Errorf("size %s: %v cm, printed %v", r.text("size"), cm.Float(), r.num("cm_printed").Float())
		}
	})
	if necks := book(t).Tables.FinishedNecks; rows != 11 || len(necks) != 11 {
		t.Errorf("%d rows, %d necks", rows, len(necks))
	}
}
