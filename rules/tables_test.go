package rules

import (
	"math"
	"testing"

	"foldrow/engine"
)

// Low, middle and high of groups, cm, against the figures published or
// computed for them, and which source gives them. Ages are in years.
func TestGirths(t *testing.T) {
	adult := func(s Sex) Wearer { return Wearer{Sex: s, Adult: true} }
	aged := func(s Sex, n, d int64) Wearer { return Wearer{Sex: s, Years: engine.Frac(n, d)} }
	b := book(t)
	tests := []struct {
		name           string
		wearer         Wearer
		neck           bool
		low, mid, high string
		source         string
	}{
		{"women's heads", adult(Female), false, "53.2", "56.0", "59.7", "ansur2"},
		{"men's heads", adult(Male), false, "54.8", "57.4", "60.1", "ansur2"},
		{"women's neck base", adult(Female), true, "34.0", "37.0", "40.5", "ansur2"},
		{"men's neck base", adult(Male), true, "39.5", "43.3", "47.9", "ansur2"},
		{"adults' heads", adult(""), false, "53.2", "56.7", "60.1", "ansur2"},
		{"newborn boys", aged(Male, 0, 1), false, "32.07", "34.46", "36.85", "who-2006"},
		{"girls of 6 months", aged(Female, 6, 12), false, "39.76", "42.21", "44.66", "who-2006"},
		{"boys of a year", aged(Male, 1, 1), false, "43.65", "46.06", "48.48", "who-2006"},
		{"girls of two", aged(Female, 2, 1), false, "44.56", "47.18", "49.81", "who-2006"},
		{"boys of five", aged(Male, 5, 1), false, "47.93", "50.74", "53.55", "who-2006"},
		{"children of three", aged("", 3, 1), false, "45.85", "48.985", "52.13", "who-2006"},
		{"boys of 26 months take 24", aged(Male, 26, 12), false, "45.69", "48.25", "50.81", "who-2006"},
		{"boys of 28 months take 30", aged(Male, 28, 12), false, "46.31", "48.93", "51.55", "who-2006"},
		{"children of 8", aged("", 8, 1), false, "49.535", "52.1", "54.865", "snyder-1977"},
		{"children of 12", aged("", 12, 1), false, "50.92", "53.4", "56.18", "snyder-1977"},
		{"necks at 3", aged("", 3, 1), true, "21.725", "23.95", "25.475", "snyder-1977"},
		{"necks at 8", aged("", 8, 1), true, "24.435", "26.8", "29.665", "snyder-1977"},
		{"necks at 15", aged("", 15, 1), true, "28.8", "31.8", "35.4", "snyder-1977"},
		{"19 is an adult", aged(Male, 19, 1), true, "39.5", "43.3", "47.9", "ansur2"},
	}
	for _, tt := range tests {
		g, ok := b.Tables.Heads(tt.wearer)
		if tt.neck {
			g, ok = b.Tables.Necks(tt.wearer)
		}
		if !ok || g.Source != tt.source || g.Sex != tt.wearer.Sex {
			t.Errorf("%s: %+v, %v", tt.name, g, ok)
			continue
		}
		if !g.Low.Equal(num(t, tt.low)) || !g.Mid.Equal(num(t, tt.mid)) || !g.High.Equal(num(t, tt.high)) {
			t.Errorf("%s: %v %v %v, want %s %s %s", tt.name, g.Low.Float(), g.Mid.Float(), g.High.Float(), tt.low, tt.mid, tt.high)
		}
	}
	if g, ok := b.Tables.Necks(aged("", 1, 1)); ok {
		t.Errorf("a neck under two years: %+v", g)
	}
}

// Every age has a head for either sex and both, and every group its ends in
// order.
func TestGirthsLeaveNoGap(t *testing.T) {
	tb := book(t).Tables
	for month := int64(0); month <= 240; month++ {
		for _, sex := range []Sex{Female, Male, ""} {
			w := Wearer{Sex: sex, Years: engine.Frac(month, 12)}
			if _, ok := tb.Heads(w); !ok {
				t.Errorf("no head at %d months, sex %q", month, sex)
			}
			if _, ok := tb.Necks(w); ok != (month >= 24) {
				t.Errorf("neck at %d months, sex %q: %v", month, sex, ok)
			}
		}
	}
	for _, g := range tb.Girths {
		if !g.Low.Less(g.Mid) || !g.Mid.Less(g.High) || g.LowName == "" || g.HighName == "" {
			t.Errorf("%+v", g)
		}
		if !g.Adult && !g.From.Less(g.To) {
			t.Errorf("ages out of order: %+v", g)
		}
	}
}

// The percentiles of the growth standard follow from its L, M and S:
// M (1 + L S z)^(1/L), with z = -1.88079 and 1.88079 for p3 and p97.
func TestGrowthStandardFormula(t *testing.T) {
	rows := 0
	readTable(files, "who-2006.csv", &faults{}, func(r row) {
		rows++
		l, m, s := r.num("L").Float(), r.num("M").Float(), r.num("S").Float()
		for column, z := range map[string]float64{"p3": -1.88079, "p50": 0, "p97": 1.88079} {
			want := m * math.Pow(1+l*s*z, 1/l)
			if got := r.num(column).Float(); math.Abs(got-want) > 0.006 {
				t.Errorf("%s month %s %s: %v, want %v", r.text("sex"), r.text("month"), column, got, want)
			}
		}
	})
	if rows != 46 {
		t.Errorf("%d rows", rows)
	}
}

// The standard's page prints its rows run together; that no girth falls from
// one size to the next is the check that they were split rightly.
func TestSizes(t *testing.T) {
	tb := book(t).Tables
	if len(tb.Sizes) != 12 {
		t.Fatalf("%d sizes", len(tb.Sizes))
	}
	for i, s := range tb.Sizes[1:] {
		p := tb.Sizes[i]
		if s.Head.Less(p.Head) || s.NeckBase.Less(p.NeckBase) || s.MidNeck.Less(p.MidNeck) || s.Bust.Less(p.Bust) {
			t.Errorf("size %s is less than %s", s.Name, p.Name)
		}
	}
	s, ok := tb.WomansSize("8")
	if !ok || !s.Head.Equal(num(t, "55.245")) || !s.NeckBase.Equal(num(t, "37.1475")) {
		t.Errorf("size 8 is %+v", s)
	}
	if _, ok := tb.WomansSize("7"); ok {
		t.Error("there is no size 7")
	}
}
