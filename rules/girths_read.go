package rules

import (
	"io/fs"

	"foldrow/engine"
)

// ten turns mm into cm.
var ten = engine.Int(10)

// readGirths puts babies before children and children before adults, because
// the first row that fits is taken.
func readGirths(fsys fs.FS, bad *faults) []Spread {
	list := withBoth(readBabies(fsys, bad))
	list = append(list, readChildren(fsys, bad)...)
	return append(list, withBoth(readAdults(fsys, bad))...)
}

func readChildren(fsys fs.FS, bad *faults) []Spread {
	var list []Spread
	readTable(fsys, "snyder-1977.csv", bad, func(r row) {
		g := Spread{
			Measure: Measure(r.text("measure")), Sex: Sex(r.text("sex")), LowName: "p5", HighName: "p95",
			From: r.num("age_from"), To: r.num("age_to"), N: r.num("n").Floor(), Source: "snyder-1977",
			Low: r.num("p5").Div(ten), Mid: r.num("p50").Div(ten), High: r.num("p95").Div(ten),
		}
		if g.Sex == "both" {
			g.Sex = ""
		}
		list = append(list, g)
	})
	return list
}

func readAdults(fsys fs.FS, bad *faults) []Spread {
	measures := map[string]Measure{
		"neckcircumference": MidNeck, "neckcircumferencebase": NeckBase, "headcircumference": Head,
	}
	var list []Spread
	readTable(fsys, "ansur2.csv", bad, func(r row) {
		m, wanted := measures[r.text("measure")]
		if !wanted {
			return
		}
		list = append(list, Spread{
			Measure: m, Sex: Sex(r.text("sex")), Adult: true, LowName: "p5", HighName: "p95",
			N: r.num("n").Floor(), Source: "ansur2",
			Low: r.num("p5").Div(ten), Mid: r.num("p50").Div(ten), High: r.num("p95").Div(ten),
		})
	})
	return list
}

// readBabies reads the growth standard, whose rows stand for single days. A
// row holds from halfway to the one before until halfway to the one after, the
// last until 61 months, so that five years old still finds it.
func readBabies(fsys fs.FS, bad *faults) []Spread {
	var list []Spread
	var at []engine.Num // age of each row, years
	readTable(fsys, "who-2006.csv", bad, func(r row) {
		sex := Female
		if r.text("sex") == "boys" {
			sex = Male
		}
		at = append(at, r.num("month").Div(engine.Int(12)))
		list = append(list, Spread{
			Measure: Head, Sex: sex, LowName: "p3", HighName: "p97", Source: "who-2006",
			To: engine.Frac(61, 12), Low: r.num("p3"), Mid: r.num("p50"), High: r.num("p97"),
		})
	})
	for i := 1; i < len(list); i++ {
		if list[i].Sex != list[i-1].Sex {
			continue
		}
		halfway := at[i-1].Add(at[i]).Div(engine.Int(2))
		list[i-1].To, list[i].From = halfway, halfway
	}
	return list
}

// withBoth adds to groups of one sex the group of both: the lower low, the
// higher high, and the mean of the two middles (our own arithmetic).
func withBoth(list []Spread) []Spread {
	for i, n := 0, len(list); i < n; i++ {
		a := list[i]
		for _, b := range list[i+1 : n] {
			if a.Measure != b.Measure || !a.From.Equal(b.From) {
				continue
			}
			both := a
			both.Sex, both.N = "", a.N+b.N
			both.Low, both.High = least(a.Low, b.Low), least(a.High.Neg(), b.High.Neg()).Neg()
			both.Mid = a.Mid.Add(b.Mid).Div(engine.Int(2))
			list = append(list, both)
		}
	}
	return list
}

func least(a, b engine.Num) engine.Num {
	if b.Less(a) {
		return b
	}
	return a
}
