package engine

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// TestRibAndHem: small bands drawn on squared paper. k hangs free, p was
// latched, H is hung.
func TestRibAndHem(t *testing.T) {
	for _, c := range []struct {
		name       string
		rib        Rib
		edge, hem  int
		band, hung string // same length; H marks a hung bump
	}{
		// Common practice: with two edge stitches the third is latched first, and
		// every other bump begins at the second needle.
		{"1x1", Rib{1, 1}, 2, 2, "kkpkpkpkk", "kHpHpHpHk"},
		{"2x2", Rib{2, 2}, 2, 2, "kkppkkppkk", "kHppHHppHk"}, // 3 gives way to 4; 7 finds 8 taken
		{"plain, even", Plain(), 2, 2, "kkkkkkkk", "kHkHkHHk"},
		{"plain, odd", Plain(), 2, 2, "kkkkkkkkk", "kHkHkHkHk"},
		{"plain, every third", Plain(), 2, 3, "kkkkkkkkkk", "kHkkHkkHHk"},
		{"every one, latched or not", Rib{1, 1}, 2, 1, "kkpkpkk", "kHHHHHk"},
		{"1x1, one edge stitch: outward", Rib{1, 1}, 1, 2, "kpkpkpk", "HpHpkpH"},
		{"too narrow for a hem", Plain(), 0, 2, "kk", "kk"},
		{"one bump", Plain(), 0, 2, "kkk", "kHk"},
	} {
		n := len(c.band)
		columns := ribColumns(c.rib, c.edge, n)
		if want := marked(c.band, 'p'); !slices.Equal(columns, want) {
			t.Errorf("%s: latched %v, want %v", c.name, columns, want)
		}
		if hung, _ := hemColumns(columns, c.hem, n); !slices.Equal(hung, marked(c.hung, 'H')) {
			t.Errorf("%s: hung %v, want %v", c.name, hung, marked(c.hung, 'H'))
		}
	}
}

// marked is the places of mark in s.
func marked(s string, mark rune) (places []int) {
	for i, r := range s {
		if r == mark {
			places = append(places, i)
		}
	}
	return places
}

// TestRibAndHemProperties: the rib mirrors and leaves its edges; a hem of every
// second bump or sparser hangs nothing latched, nothing twice, and no gap in
// plain knitting wider than was asked; both ends are closed.
func TestRibAndHemProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawInputs(t).Without(KeyBandKind) // a mock rib latches nothing, see TestAround
		p := Solve(in.With(Layers, Int(2)))
		n, edge, every := p.BandStitches, in.Int(EdgeStitches), in.Int(HemEvery)
		latched := make([]bool, n)
		for _, c := range p.RibColumns {
			latched[c] = true
			if c < edge || c >= n-edge {
				t.Fatalf("column %d of %d is latched, edge %d", c, n, edge)
			}
		}
		for c := range n {
			if latched[c] != latched[n-1-c] {
				t.Fatalf("column %d of %d is not mirrored", c, n)
			}
		}
		if got, want := len(p.RibColumns), (n-2*edge+in.Rib.Knit)/(in.Rib.Knit+in.Rib.Purl)*in.Rib.Purl; !in.Rib.IsPlain() && got != want {
			t.Fatalf("%d columns, want %d", got, want)
		}
		if n < 3 {
			return
		}
		if every == 1 && len(p.HemColumns) != n-2 {
			t.Fatalf("every bump: %d of %d", len(p.HemColumns), n)
		}
		for i, c := range p.HemColumns {
			if every > 1 && latched[c] {
				t.Fatalf("latched column %d is hung", c)
			}
			if i > 0 && c <= p.HemColumns[i-1] {
				t.Fatalf("hung %v", p.HemColumns)
			}
			if in.Rib.IsPlain() && i > 0 && c-p.HemColumns[i-1] > every {
				t.Fatalf("gap before %d wider than %d: %v", c, every, p.HemColumns)
			}
		}
		if hung := p.HemColumns; edge >= 2 && (!slices.Contains(hung, 1) || !slices.Contains(hung, n-2)) {
			t.Fatalf("ends open: %v of %d", hung, n)
		}
		if len(p.HemColumns) > p.HemWished {
			t.Fatalf("%d hung of %d wished", len(p.HemColumns), p.HemWished)
		}
	})
}
