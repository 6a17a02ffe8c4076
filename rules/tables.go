package rules

import (
	"io/fs"
	"strings"

	"foldrow/engine"
)

// Tables is what is published about bodies, yarns and yokes. Lengths are cm.
type Tables struct {
	Girths        []Spread
	Sizes         []Size
	Yarns         []YarnWeight
	YarnNames     []YarnName
	YokeDepths    []YokeDepth
	FinishedNecks []engine.Num // one sweater, 11 women's sizes, as printed
}

// Size is one women's size: girths of the body, cm.
type Size struct {
	Name                          string // "00" to "20"
	Head, NeckBase, MidNeck, Bust engine.Num
	Source                        string
}

// YarnWeight is one class of the standard yarn table: stitches in 10 cm of
// plain knitting. The thickest class has no low end.
type YarnWeight struct {
	Category  int
	Name      string
	Low, High engine.Num
	HasLow    bool
	Source    string
}

// YarnName is a trade name and the metres in 100 g that go by it.
type YarnName struct {
	Name      string
	Also      []string // other names that people say for it
	Low, High engine.Num
	HasLow    bool
	Category  int // of YarnWeight
	Source    string
}

// YokeDepth is the depth of a round yoke at one bust in one pattern.
type YokeDepth struct {
	Bust, Depth engine.Num
	Source      string
}

func readTables(fsys fs.FS, bad *faults) Tables {
	t := Tables{Girths: readGirths(fsys, bad)}
	inch := engine.Frac(254, 100)
	readTable(fsys, "astm-d5585.csv", bad, func(r row) {
		t.Sizes = append(t.Sizes, Size{
			Name: r.text("size"), Source: "astm-d5585",
			Head: r.num("head_girth_in").Mul(inch), NeckBase: r.num("neck_base_girth_in").Mul(inch),
			MidNeck: r.num("mid_neck_girth_in").Mul(inch), Bust: r.num("chest_bust_girth_in").Mul(inch),
		})
	})
	readTable(fsys, "yarn-weights.csv", bad, func(r row) {
		y := YarnWeight{Category: r.num("category").Floor(), Name: r.text("name"), High: r.num("sts_per_4in_max"), Source: "cyc"}
		y.Low, y.HasLow = r.optional("sts_per_4in_min")
		t.Yarns = append(t.Yarns, y)
	})
	readTable(fsys, "yarn-names.csv", bad, func(r row) {
		y := YarnName{Name: r.text("name"), High: r.num("m_max"), Category: r.num("category").Floor(), Source: "uk-names"}
		y.Low, y.HasLow = r.optional("m_min")
		y.Also = strings.Split(r.text("also"), "|")
		t.YarnNames = append(t.YarnNames, y)
	})
	readTable(fsys, "yoke-depths.csv", bad, func(r row) {
		t.YokeDepths = append(t.YokeDepths, YokeDepth{Bust: r.num("bust"), Depth: r.num("depth"), Source: r.text("source")})
	})
	readTable(fsys, "finished-necks.csv", bad, func(r row) {
		t.FinishedNecks = append(t.FinishedNecks, r.num("cm_printed"))
	})
	return t
}

// WomansSize finds a size by its name ("12").
func (t Tables) WomansSize(name string) (Size, bool) {
	for _, s := range t.Sizes {
		if s.Name == name {
			return s, true
		}
	}
	return Size{}, false
}

// YarnsForGauge is the classes whose stitches in 10 cm, read as whole numbers,
// take in g; two classes share 23 and 24. None beyond 40.
func (t Tables) YarnsForGauge(g engine.Num) []YarnWeight {
	var list []YarnWeight
	n := engine.Int(int64(g.Round()))
	for _, y := range t.Yarns {
		if !n.Less(y.Low) && !y.High.Less(n) {
			list = append(list, y)
		}
	}
	return list
}

// YarnsForLength is the trade names that a yarn of m metres in 100 g goes by.
func (t Tables) YarnsForLength(m engine.Num) []YarnName {
	var list []YarnName
	for _, y := range t.YarnNames {
		if !m.Less(y.Low) && !y.High.Less(m) {
			list = append(list, y)
		}
	}
	return list
}

// YarnNamed is the trade name that a text in small letters holds, by itself or by
// another name of it; the longest counts ("super chunky" is not chunky).
func (t Tables) YarnNamed(text string) (y YarnName, ok bool) {
	longest := 0
	padded := " " + strings.NewReplacer(",", " ", ".", " ", "?", " ", "!", " ").Replace(text) + " "
	for _, have := range t.YarnNames {
		for _, name := range append([]string{strings.ToLower(have.Name)}, have.Also...) {
			if len(name) > longest && strings.Contains(padded, " "+name+" ") {
				y, ok, longest = have, true, len(name)
			}
		}
	}
	return y, ok
}

// Class is the yarn class of a category.
func (t Tables) Class(category int) (YarnWeight, bool) {
	for _, y := range t.Yarns {
		if y.Category == category {
			return y, true
		}
	}
	return YarnWeight{}, false
}

// PublishedDepth is the smallest and the largest published yoke depth at a
// bust, each pattern interpolated between its two nearest sizes. It is false
// outside the sizes of either pattern.
func (t Tables) PublishedDepth(bust engine.Num) (low, high engine.Num, ok bool) {
	for i := 1; i < len(t.YokeDepths); i++ {
		a, b := t.YokeDepths[i-1], t.YokeDepths[i]
		if a.Source != b.Source || bust.Less(a.Bust) || b.Bust.Less(bust) {
			continue
		}
		part := bust.Sub(a.Bust).Div(b.Bust.Sub(a.Bust))
		d := a.Depth.Add(part.Mul(b.Depth.Sub(a.Depth)))
		if !ok || d.Less(low) {
			low = d
		}
		if !ok || high.Less(d) {
			high = d
		}
		ok = true
	}
	return low, high, ok
}
