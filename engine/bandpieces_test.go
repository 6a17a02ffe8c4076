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

// Sewn together, the pieces are the band: what hangs on the needles less what
// the seams take is the width that is said, column by column the rib runs on,
// and no bed of pieces fewer would have held them.
func TestBandPieces(t *testing.T) {
	for _, rib := range []Rib{{Knit: 1, Purl: 1}, {Knit: 2, Purl: 2}, {Knit: 2, Purl: 1}, {Knit: 3, Purl: 3}, {Knit: 1, Purl: 3}} {
		for _, seam := range []Num{Int(0), Frac(1, 2), Int(1), Int(2)} {
			for neck := int64(40); neck < 90; neck += 3 {
				in := cardigan(t)
				if neck%2 == 0 {
					in = pullover(t)
				}
				if neck%4 == 0 {
					in, _ = in.WithText(KeyBandKind, BandMock)
				}
				p := Solve(in.WithRib(rib).With(Neck, Int(neck)).With(StitchGauge, Int(50)).With(YokeStitches, Int(520)).With(SeamStitches, seam))
				if pieces := p.OnBed(); p.BandStitches <= 150 != (len(pieces) == 1) {
					t.Fatalf("%v, %d cm: %d stitches in %d pieces", rib, neck, p.BandStitches, len(pieces))
				} else if len(pieces) > 1 {
					checkSewn(t, p, pieces)
					checkWaiting(t, p, pieces, 520)
				}
			}
		}
	}
}

// checkSewn takes the seams out of what hangs on the bed and holds the rest
// against the band.
func checkSewn(t *testing.T, p *Plan, pieces []*Plan) {
	t.Helper()
	seam, columns, needles := p.In.Num(SeamStitches), []byte{}, 0
	for i, q := range pieces {
		if q.BandStitches > 150 || q.BandStitches != p.Shares[i] {
			t.Errorf("%v: a piece of %d, %d said", p.In.Rib, q.BandStitches, p.Shares[i])
		}
		needles += q.BandStitches
		line := make([]byte, q.BandStitches)
		for _, c := range append(append([]int{}, q.RibColumns...), q.EmptyColumns...) {
			line[c] = 1
		}
		take := seam.Mul(Int(2)).Floor() // of one join, the half of it that is odd on its left
		if i > 0 {
			for range take / 2 {
				if line[0] != 0 {
					t.Errorf("%v: a purl column in the seam", p.In.Rib)
				}
				line = line[1:]
			}
		}
		if i+1 < len(pieces) {
			line = line[:len(line)-(take-take/2)]
		}
		columns = append(columns, line...)
		if i > 0 && columns[len(columns)-len(line)] == 1 && columns[len(columns)-len(line)-1] == 1 {
			t.Errorf("%v, %d in %v: a join within a purl group", p.In.Rib, p.BandStitches, p.Shares)
		}
	}
	whole := make([]byte, p.BandStitches)
	for _, c := range append(append([]int{}, p.RibColumns...), p.EmptyColumns...) {
		whole[c] = 1
	}
	if string(whole) != string(columns) {
		t.Errorf("%v, %v: sewn together the rib is another", p.In.Rib, p.Shares)
	}
	// Each join takes a seam at both its edges, and so do the band's two ends.
	seams, joins := len(pieces), p.Joins()
	if closed := p.In.Garment == Pullover; closed && joins != seams || !closed && joins != seams-1 {
		t.Errorf("%s: %d joins of %d pieces", p.In.Garment, joins, seams)
	}
	shown := wholeNum(needles).Sub(seam.Mul(wholeNum(2 * seams)))
	if width := shown.Mul(Int(10)).Div(p.In.Num(StitchGauge)); !width.Equal(p.SeamWidth) || !width.Add(p.Overlap()).Equal(p.NeckResult) {
		t.Errorf("%v, %v: %v cm knitted, %v said", p.In.Rib, p.Shares, width, p.SeamWidth)
	}
	if least := len(pieces) - 1; p.Pieces == bedPieces(p.BandStitches, 150, joinTakes(p.In)) &&
		wholeNum(p.BandStitches).Add(seam.Mul(wholeNum(2*(least-1)))).Cmp(wholeNum(150*least)) <= 0 {
		t.Errorf("%v: %d would fit in %d pieces", p.In.Rib, p.BandStitches, least)
	}
	if p.Knitted() != needles {
		t.Errorf("%d stitches knitted, %d hang", p.Knitted(), needles)
	}
}

// checkWaiting: the pieces hang the yoke from one end to the other, none of it
// twice.
func checkWaiting(t *testing.T, p *Plan, pieces []*Plan, yoke int) {
	t.Helper()
	if !p.FitsYoke {
		return
	}
	at, lost := 0, 0
	for _, q := range pieces {
		if q.Piece.From != at+1 {
			t.Errorf("%v: piece %d from stitch %d, %d hang", p.Shares, q.Piece.No, q.Piece.From, at)
		}
		takes := 0
		for _, s := range q.Rehang {
			takes += s
		}
		for _, h := range q.Hangings {
			if h.Round == 1 {
				takes += h.Stitches()
			}
		}
		at, lost = at+takes, lost+q.YokeDecreases
		if q.Piece.To != at {
			t.Errorf("%v: piece %d to stitch %d, %d hang", p.Shares, q.Piece.No, q.Piece.To, at)
		}
	}
	if at != yoke || lost != p.YokeDecreases {
		t.Errorf("%v: %d of %d hang, %d of %d lost", p.Shares, at, yoke, lost, p.YokeDecreases)
	}
	for at, parts := 0, p.WaitingParts(); len(parts) > 0; parts = parts[1:] {
		if parts[0].From != at+1 || parts[0].Stitches() > 150 || len(parts) == 1 && parts[0].To != yoke {
			t.Errorf("%v: the yoke's part %v after %d", p.Shares, parts[0], at)
		}
		at = parts[0].To
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
					if h.From != takes+1 || h.To() != takes+h.Stitches() {
						t.Errorf("%d: hanging %d from %d to %d after %d", waiting, round, h.From, h.To(), takes)
					}
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
