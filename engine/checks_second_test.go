package engine_test

import (
	"math/big"
	"slices"

	"foldrow/engine"
)

// otherWays work the same numbers out by going through every possibility, or
// by an algorithm that shares nothing with the engine's.
func otherWays() map[string]way {
	return map[string]way{
		"smallest neck": smallestNeckByTrying,
		"closing counts": func(g *given) string {
			in := g.inputs()
			var list []int
			for n := g.int("from"); n <= g.int("to"); n++ {
				if laidOut(n, in.Int(engine.EdgeStitches), in.Rib) {
					list = append(list, n)
				}
			}
			return ints(list...)
		},
		string(engine.BandStitches): func(g *given) string {
			in := g.inputs()
			wanted := new(big.Rat).Mul(in.Num(engine.Neck).Rat(), in.Num(engine.StitchGauge).Rat())
			wanted.Quo(wanted, big.NewRat(10, 1))
			wanted.Add(wanted, new(big.Rat).Mul(big.NewRat(2, 1), in.Num(engine.SeamStitches).Rat()))
			return ints(nearest(1, 700, wanted, func(n int) (*big.Rat, bool) {
				return big.NewRat(int64(n), 1), laidOut(n, in.Int(engine.EdgeStitches), in.Rib)
			}))
		},
		string(engine.LayerRows): layerRows,
		"steps between doubled needles": func(g *given) string {
			needles := g.int("needles")
			d := g.int("stitches") - needles
			m := make([]int, needles)
			for i, err := 0, 0; i < needles; i++ { // a line's error carried along
				m[i] = 1
				if err += d; err >= needles {
					err -= needles
					m[i] = 2
				}
			}
			return ints(around(m, 2)...)
		},
		"best fraction": func(g *given) string {
			x := big.NewRat(int64(g.int("stitches")), int64(g.int("rows")))
			of, every := 0, 1
			for q := int64(1); q <= 10; q++ {
				for p := range int64(31) {
					if away(big.NewRat(p, q), x).Cmp(away(big.NewRat(int64(of), int64(every)), x)) < 0 {
						of, every = int(p), int(q)
					}
				}
			}
			return ints(of, every)
		},
	}
}

// laidOut reports whether n stitches close: the rib laid from the left edge is
// its own mirror image, and no group of purl stitches is cut.
func laidOut(n, edge int, rib engine.Rib) bool {
	row := make([]bool, n) // purl
	for i := edge; i < n-edge; i++ {
		row[i] = (i-edge)%(rib.Knit+rib.Purl) < rib.Purl
	}
	back := slices.Clone(row)
	slices.Reverse(back)
	groups, whole := 0, true
	for i := 0; i < n; {
		end := i
		for end < n && row[end] == row[i] {
			end++
		}
		if row[i] {
			groups++
			whole = whole && end-i == rib.Purl
		}
		i = end
	}
	return groups > 0 && whole && slices.Equal(row, back)
}

func away(a, b *big.Rat) *big.Rat {
	d := new(big.Rat).Sub(a, b)
	return d.Abs(d)
}

// nearest is the number from first to last whose value lies nearest to the
// wish, the larger on a tie.
func nearest(first, last int, wish *big.Rat, value func(int) (*big.Rat, bool)) int {
	best, off := 0, new(big.Rat)
	for n := first; n <= last; n++ {
		v, ok := value(n)
		if d := away(v, wish); ok && (best == 0 || d.Cmp(off) <= 0) {
			best, off = n, d
		}
	}
	return best
}

// layerRows sums the height of one row after another in exact fractions.
func layerRows(g *given) string {
	in := g.inputs()
	click := in.Num(engine.NumberEffect).Div(in.Num(engine.ClicksPerNumber)).Div(engine.Int(100)).Rat()
	height := new(big.Rat)
	per, fifth := in.Int(engine.RowsPerClick), big.NewRat(1, 5)
	return ints(nearest(1, engine.MaxRows, in.Num(engine.Depth).Rat(), func(n int) (*big.Rat, bool) {
		clicks := int64(0)
		if per > 0 {
			clicks = int64((n - 1) / per)
		}
		tighter := new(big.Rat).Mul(click, big.NewRat(clicks, 1))
		for tighter.Cmp(fifth) > 0 {
			tighter.Sub(tighter, click)
		}
		row := new(big.Rat).Sub(big.NewRat(10, 1), tighter.Mul(tighter, big.NewRat(10, 1)))
		height.Add(height, row.Quo(row, in.Num(engine.RowGauge).Rat()))
		return new(big.Rat).Set(height), n >= engine.MinRows
	}))
}
