package engine

import "fmt"

// KeyBandKind is how the columns of the band are made: dropped and latched,
// left out of work, or none with an edge that rolls.
const KeyBandKind Key = "band_kind"

// The kinds of neckband. A latched band in plain has no columns at all.
const (
	BandLatched = "latched"
	BandMock    = "mock"
	BandRolled  = "rolled"
)

// What a mock rib has instead of columns to latch.
const (
	EmptyNeedles Key = "empty_needles" // out of work between the band's ends
	WorkStitches Key = "work_stitches" // knitted in every row
)

// mock reports a band whose purl columns are needles out of work.
func (p *Plan) mock() bool { return p.In.Text(KeyBandKind) == BandMock && !p.In.Rib.IsPlain() }

// solveMock turns the purl columns into empty needles: nothing is latched, and
// the bumps of the first row go onto the empty needles, so that the closing
// row has a stitch on every one (mock rib hems, myknittingmachinesandme 2009).
func (p *Plan) solveMock() {
	if !p.has.band || !p.mock() {
		return
	}
	p.has.mock = true
	p.EmptyColumns, p.RibColumns = p.RibColumns, nil
	p.WorkStitches = p.Knitted() - len(p.EmptyColumns)
}

// barYarn is the yarn, cm, that one row takes across its empty needles: a bar
// as long as the needle pitch over each (our own estimate).
func (p *Plan) barYarn() float64 {
	return float64(len(p.EmptyColumns)) * p.In.Num(NeedlePitch).Float() / 10
}

// mockYarn is metres for a mock rib: its rows on the needles in work and the
// bars between, the closing row on all of them, and sewing off.
func (p *Plan) mockYarn(loop float64) float64 {
	rows := p.YarnRows.Float()
	closing := 0.0
	if p.Doubled {
		closing = 1
	}
	return (float64(p.WorkStitches)*loop*(rows-closing) + float64(p.Knitted())*loop*closing +
		p.barYarn()*float64(p.TotalRows) + p.OffYarn.Float()) / 100
}

func (p *Plan) recordMockYarn(loop, rows string, from []Key, v float64) Record {
	closing := ""
	if p.Doubled {
		closing = fmt.Sprintf(" + %d * %s", p.Knitted(), loop)
	}
	return Record{Rule: RuleMockYarn, From: append(from, WorkStitches, NeedlePitch, TotalRows, OffYarn), Value: v,
		Expr: fmt.Sprintf("(%d * %s * (%s)%s + %d * %s / 10 * %d + %s) / 100", p.WorkStitches, loop, rows, closing,
			len(p.EmptyColumns), p.num(NeedlePitch), p.TotalRows, fig(p.OffYarn))}
}

func (p *Plan) recordMock(k Key) (Record, bool) {
	if k != WorkStitches || !p.has.mock {
		return Record{}, false
	}
	return Record{Rule: RuleMock, From: []Key{BandStitches, KeyRib, EdgeStitches}, Value: float64(p.WorkStitches),
		Expr: itoa(p.Knitted()) + " - " + itoa(len(p.EmptyColumns))}, true
}

// keepOffEmpty spreads the doubled needles of a mock rib over those that stay
// in work: one that is emptied would send both its stitches to a neighbour.
// Where they are too few the map stays as it is.
func (p *Plan) keepOffEmpty() {
	over := Spread(p.WorkStitches+p.YokeDecreases, p.WorkStitches)
	if !p.has.mock || p.Rehang == nil || over == nil {
		return
	}
	empty := make([]bool, p.BandStitches)
	for _, c := range p.EmptyColumns {
		empty[c] = true
	}
	at := 0
	for c := range p.Rehang {
		p.Rehang[c] = 1
		if !empty[c] {
			p.Rehang[c] = over[at]
			at++
		}
	}
}
