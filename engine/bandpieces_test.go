package engine

import "testing"

// A mock rib's doubled needles stay in work, and as many carry two as there
// are decreases: 132 on 111 are 21.
func TestMockRibDoublesStayInWork(t *testing.T) {
	for _, waiting := range []int64{111, 132, 160, 168} {
		in := cardigan(t).With(YokeStitches, Int(waiting)).With(Neck, Int(42))
		in, _ = in.WithText(KeyBandKind, BandMock)
		p := Solve(in)
		if p.WorkStitches == 0 || p.Rehang == nil {
			t.Fatalf("%d: %d in work, map %v", waiting, p.WorkStitches, p.Rehang)
		}
		two := 0
		for _, s := range p.Rehang {
			two += s - 1
		}
		if two != p.YokeDecreases || int64(two+p.BandStitches) != waiting {
			t.Errorf("%d: %d doubled for %d decreases", waiting, two, p.YokeDecreases)
		}
		if p.YokeDecreases > p.WorkStitches {
			continue
		}
		for _, c := range p.EmptyColumns {
			if p.Rehang[c] != 1 {
				t.Errorf("%d: column %d is emptied and doubled", waiting, c)
			}
		}
	}
}

// The pieces of a band wider than the bed add up to it, each fits with a
// stitch more at its joins, and no join lies within a purl group of 2 or 3.
func TestBandPieces(t *testing.T) {
	for _, rib := range []Rib{{Knit: 1, Purl: 1}, {Knit: 2, Purl: 2}, {Knit: 2, Purl: 1}, {Knit: 3, Purl: 3}} {
		for neck := int64(40); neck < 90; neck += 3 {
			p := Solve(cardigan(t).WithRib(rib).With(Neck, Int(neck)).With(StitchGauge, Int(50)).With(YokeStitches, Int(520)))
			pieces := p.OnBed()
			if p.BandStitches <= 150 != (len(pieces) == 1) {
				t.Fatalf("%v, %d cm: %d stitches in %d pieces", rib, neck, p.BandStitches, len(pieces))
			}
			if len(pieces) == 1 {
				continue
			}
			sum, columns, lost := 0, 0, 0
			for i, q := range pieces {
				joins := min(len(pieces)-1, 2)
				if i == 0 || i == len(pieces)-1 {
					joins = 1
				}
				if q.BandStitches+joins > 150 {
					t.Errorf("%v, %d cm: piece of %d", rib, neck, q.BandStitches)
				}
				sum, columns, lost = sum+q.BandStitches, columns+len(q.RibColumns), lost+q.YokeDecreases
				if i > 0 && rib.Knit > 1 && q.RibColumns[0] == 0 {
					left := pieces[i-1]
					if n := len(left.RibColumns); left.RibColumns[n-1] == left.BandStitches-1 {
						t.Errorf("%v, %d cm: a join within a purl group", rib, neck)
					}
				}
			}
			if sum != p.BandStitches || columns != len(p.RibColumns) || lost != p.YokeDecreases {
				t.Errorf("%v, %d cm: %d of %d stitches, %d of %d columns, %d of %d lost", rib, neck, sum, p.BandStitches, columns, len(p.RibColumns), lost, p.YokeDecreases)
			}
		}
	}
}

// However many wait, every hanging fits the bed, takes what the one before
// left, and the last leaves the band.
func TestHangingsFitTheBed(t *testing.T) {
	for waiting := int64(223); waiting <= 800; waiting += 7 {
		p := Solve(cardigan(t).With(Neck, Int(42)).With(YokeStitches, Int(waiting)))
		if p.Stages < 2 {
			continue
		}
		left := int(waiting)
		for round := 1; round <= p.Stages; round++ {
			takes, needles := 0, 0
			for _, h := range p.Hangings {
				if h.Round == round {
					takes, needles = takes+h.Stitches(), needles+len(h.Map)
					if len(h.Map) > 150 {
						t.Errorf("%d: a hanging on %d needles", waiting, len(h.Map))
					}
				}
			}
			if takes != left {
				t.Errorf("%d: hanging %d takes %d of %d", waiting, round, takes, left)
			}
			left = needles
		}
		if left != p.BandStitches {
			t.Errorf("%d: %d left for a band of %d", waiting, left, p.BandStitches)
		}
	}
}
