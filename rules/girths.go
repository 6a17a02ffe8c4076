package rules

import "foldrow/engine"

// Measure is what was measured on a body.
type Measure string

// The measures of the tables. Neck is halfway up, NeckBase where it meets the
// shoulders, 3 to 5 cm more.
const (
	Head     Measure = "head"
	MidNeck  Measure = "neck"
	NeckBase Measure = "neck base"
)

// Sex is that of the people measured; "" for both.
type Sex string

// The sexes of the tables.
const (
	Female Sex = "female"
	Male   Sex = "male"
)

// Wearer is whom a garment is for. Years counts only where Adult is false.
type Wearer struct {
	Sex   Sex
	Years engine.Num
	Adult bool
}

// Spread is a girth over a group of people, cm: the middle one, and the low and
// high ends, percentiles as named.
type Spread struct {
	Measure           Measure
	Sex               Sex
	Adult             bool
	From, To          engine.Num // age in years, From <= age < To; 0 for adults
	Low, Mid, High    engine.Num
	LowName, HighName string // "p5", "p95"
	N                 int    // people measured, 0 where it is a growth standard
	Source            string
}

// adultAge is where the table of children ends.
var adultAge = engine.Int(19)

// Heads is the published head girth for a wearer: growth standards to five
// years, then measured children, then adults.
func (t Tables) Heads(w Wearer) (Spread, bool) { return t.girth(Head, w) }

// Necks is the published neck girth: the base for adults, halfway up for
// children, and nothing under two years because nothing was found.
func (t Tables) Necks(w Wearer) (Spread, bool) {
	if w.adult() {
		return t.girth(NeckBase, w)
	}
	return t.girth(MidNeck, w)
}

func (w Wearer) adult() bool { return w.Adult || !w.Years.Less(adultAge) }

// girth is the first row that fits: the rows for babies stand before those
// for children, so they win where both reach.
func (t Tables) girth(m Measure, w Wearer) (Spread, bool) {
	for _, g := range t.Girths {
		inAge := w.adult() && g.Adult || !w.adult() && !g.Adult && !w.Years.Less(g.From) && w.Years.Less(g.To)
		if g.Measure == m && g.Sex == w.Sex && inAge {
			return g, true
		}
	}
	return Spread{}, false
}
