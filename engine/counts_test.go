package engine

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

// tex and per are shorter forms for tables; a count that does not convert
// gives 0, which no row expects.
func tex(c YarnCount, value Num, plies int) Num {
	v, ok := Tex(c, value, plies)
	if !ok {
		return Num{}
	}
	return v
}

func per(t Num, c YarnCount) float64 {
	v, ok := FromTex(t, c)
	if !ok {
		return 0
	}
	return v.Float()
}

func decimal(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(strings.TrimSpace(s), 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func TestYarnCountsPublished(t *testing.T) {
	twenty := Int(20)
	got := map[string]float64{
		"K27": TightnessFactor(Frac(19685, 1000), 0.277),
		"K28": TightnessFactor(tex(MetresPer, Int(225), 1), math.Sqrt(21.6/(2.2*3.0))),
		"K37": per(twenty, CottonCount),
		"K38": per(twenty, Denier),
		"K39": per(twenty, MetricCount),
		"K40": tex(MetricCount, Int(30), 2).Float(),
		"K41": tex(WorstedNeK, Int(24), 2).Float(),
		"K42": per(Int(64), MetresKilo),
		"K43": tex(CottonCount, Int(30), 1).Float(),
		"K44": tex(CottonCount, Int(1), 1).Float(),
		"K45": tex(WorstedNeK, Int(1), 1).Float(),
		"K46": tex(WoollenSkein, Int(1), 1).Float(),
		"K47": tex(WoollenRun, Int(1), 1).Float(),
		"K48": tex(LinenLea, Int(1), 1).Float(),
		"K49": tex(MetresPer, Int(225), 1).Float(),
	}
	for _, row := range published(t, "yarn-counts.csv") {
		want, tolerance := decimal(t, row["expected"]), decimal(t, row["tolerance"])
		v, ok := got[row["id"]]
		if !ok || math.Abs(v-want) > tolerance+1e-9 {
			t.Errorf("%s: %g, want %g within %g", row["id"], v, want, tolerance)
		}
		delete(got, row["id"])
	}
	for id := range got {
		t.Errorf("%s is not in the table", id)
	}
}

func TestUnitsPublished(t *testing.T) {
	m400 := tex(MetresPer, Int(400), 1)
	got := map[string]float64{
		"tex to g/km":                     tex(TexCount, Int(1), 1).Float(),
		"20 tex to denier":                per(Int(20), Denier),
		"100 denier to tex":               tex(Denier, Int(100), 1).Float(),
		"tex to dtex":                     per(Int(1), Decitex),
		"English cotton count 20 to m/g":  per(tex(CottonCount, Int(20), 1), MetricCount),
		"English cotton count 20 to tex":  tex(CottonCount, Int(20), 1).Float(),
		"metric count 28 to tex":          tex(MetricCount, Int(28), 1).Float(),
		"metric count 28 two-ply to tex":  tex(MetricCount, Int(28), 2).Float(),
		"worsted count 16 to tex":         tex(WorstedNeK, Int(16), 1).Float(),
		"worsted count 16 two-ply to tex": tex(WorstedNeK, Int(16), 2).Float(),
		"linen lea 10 to tex":             tex(LinenLea, Int(10), 1).Float(),
		"wool run 1 to m/kg":              per(tex(WoollenRun, Int(1), 1), MetresKilo),
		"typp 1 to tex":                   tex(Typp, Int(1), 1).Float(),
		"400 m per 100 g to yd/lb":        per(m400, YardsPound),
		"400 m per 100 g to yd/oz":        per(m400, YardsOunce),
		"400 m per 100 g to tex":          m400.Float(),
		"560 yd/lb to m per 100 g":        per(tex(YardsPound, Int(560), 1), MetresPer),
		"437 yd per 100 g to m per 100 g": per(tex(YardsPer100, Int(437), 1), MetresPer),
		"button line (40 to the inch) 24": 10 * LineSize(Int(24)).Float(),
	}
	for _, row := range published(t, "units-checks.csv") {
		v, ok := got[row["check"]]
		if !ok {
			continue // a length or a mass: not the business of this file
		}
		if want := decimal(t, row["result"]); math.Abs(v-want) > 1e-9*want {
			t.Errorf("%s: %.10g, want %.10g", row["check"], v, want)
		}
		delete(got, row["check"])
	}
	for check := range got {
		t.Errorf("%q is not in the table", check)
	}
}

func TestTexRoundTrip(t *testing.T) {
	all := []YarnCount{TexCount, Decitex, Denier, MetricCount, CottonCount, WorstedNeK, WoollenSkein, WoollenRun,
		LinenLea, Typp, MetresPer, MetresKilo, YardsOunce, YardsPound, YardsPer100}
	for _, c := range all {
		for _, v := range []Num{Int(1), Frac(7, 3), Int(450)} {
			if back, ok := FromTex(tex(c, v, 1), c); !ok || !back.Equal(v) {
				t.Errorf("%s %s came back as %s", v, c, back)
			}
		}
		if _, ok := Tex(c, Int(0), 1); ok {
			t.Errorf("0 %s has a thickness", c)
		}
		if _, ok := FromTex(Int(-1), c); ok {
			t.Errorf("less than nothing in %s", c)
		}
	}
	if _, ok := Tex("wraps", Int(11), 1); ok {
		t.Error("a count nobody listed")
	}
	if TightnessFactor(Int(0), 1) != 0 || TightnessFactor(Int(20), 0) != 0 {
		t.Error("a tightness of nothing")
	}
}
