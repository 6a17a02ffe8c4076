package engine

import (
	"fmt"
	"strings"
)

func (p *Plan) recordStitches(k Key) (Record, bool) {
	switch k {
	case Neck:
		return Record{Rule: RuleBody, From: []Key{NeckBody, Ease}, Value: p.NeckWanted.Float(),
			Expr: p.num(NeckBody) + " + " + p.num(Ease)}, p.has.neck
	case WantedStitches:
		return p.recordWanted(), p.has.wanted
	}
	if !p.has.band {
		return Record{}, false
	}
	n := p.BandStitches
	switch k {
	case BandStitches:
		return p.recordBand(), true
	case NeckResult:
		r := Record{Rule: RuleNeck, From: []Key{BandStitches, SeamStitches, StitchGauge},
			Expr: p.seamExpr(), Value: p.NeckResult.Float()}
		r.Expr, r.From = p.overlapped(r.Expr, r.From)
		return r, true
	case SeamWidth:
		return Record{Rule: RuleSeam, From: []Key{BandStitches, SeamStitches, StitchGauge},
			Expr: p.seamExpr(), Value: p.SeamWidth.Float()}, true
	case YokeDecreases:
		return Record{Rule: RuleYoke, From: []Key{YokeStitches, BandStitches},
			Expr:  fmt.Sprintf("%d - %s", p.YokeDecreases+p.Knitted(), p.knittedExpr()),
			Value: float64(p.YokeDecreases)}, p.has.yoke
	case LeftNeedle:
		return Record{Rule: RuleCentred, From: []Key{BandStitches},
			Expr: fmt.Sprintf("(%d + 1) / 2", n), Rounding: RoundDown,
			Value: float64((n + 1) / 2), Unrounded: float64(n+1) / 2}, p.Pieces < 2
	case RightNeedle:
		return Record{Rule: RuleCentred, From: []Key{BandStitches},
			Expr: fmt.Sprintf("%d / 2", n), Rounding: RoundDown,
			Value: float64(n / 2), Unrounded: float64(n) / 2}, p.Pieces < 2
	}
	return p.recordColumns(k)
}

// num is input k as it is written in an expression.
func (p *Plan) num(k Key) string { return fig(p.In.Num(k)) }

func (p *Plan) recordWanted() Record {
	perInch := Frac(254, 100)
	width, inch := fig(p.NeckWanted), fig(p.NeckWanted.Div(perInch))
	from := []Key{KeyGarment, Neck}
	if p.In.Garment == Cardigan {
		width = "(" + width + " - " + p.num(FrontBand) + ")"
		inch = "(" + inch + " - " + fig(p.In.Num(FrontBand).Div(perInch)) + ")"
		from = append(from, FrontBand)
	}
	if gauge := p.In.Num(StitchGauge).Mul(perInch).Div(Int(10)); gauge.Mul(Int(100)).IsInt() {
		inch += " * " + fig(gauge)
	} else { // told in 10 cm
		inch += " * 2.54 * " + p.num(StitchGauge) + " / 10"
	}
	return Record{Rule: RuleWanted, From: append(from, StitchGauge, SeamStitches),
		Expr:  width + " * " + p.num(StitchGauge) + " / 10 + 2 * " + p.num(SeamStitches),
		Inch:  inch + " + 2 * " + p.num(SeamStitches),
		Value: p.WantedStitches.Float()}
}

// recordBand has two sums: the stitches the neck needs, and the count that
// closes, 2e + k*b + (k-1)*a.
func (p *Plan) recordBand() Record {
	r := p.recordWanted()
	r.Unrounded, r.Value = r.Value, float64(p.BandStitches)
	r.Rule, r.Rounding = RuleCloses, RoundClosing
	r.From = []Key{WantedStitches, KeyRib, EdgeStitches}
	r.Check = itoa(p.BandStitches)
	if rib := p.In.Rib; !rib.IsPlain() {
		groups := (len(p.RibColumns) + len(p.EmptyColumns)) / rib.Purl
		r.Check = fmt.Sprintf("2 * %d + %d * %d + %d * %d", edge(p.In),
			groups, rib.Purl, groups-1, rib.Knit)
	}
	return r
}

// seamExpr is the sum for what shows of the band at the seam.
func (p *Plan) seamExpr() string {
	return fmt.Sprintf("(%d - 2 * %s) * 10 / %s", p.BandStitches, p.num(SeamStitches), p.num(StitchGauge))
}

// overlapped adds the overlap of a cardigan's fronts to a sum.
func (p *Plan) overlapped(expr string, from []Key) (string, []Key) {
	if p.In.Garment != Cardigan {
		return expr, from
	}
	return expr + " + " + p.num(FrontBand), append(from, FrontBand)
}

func (p *Plan) recordColumns(k Key) (Record, bool) {
	switch k {
	case ColumnCount:
		r := Record{Rule: RuleColumns, From: []Key{BandStitches, KeyRib, EdgeStitches},
			Expr: "0", Value: float64(len(p.RibColumns))}
		if !p.In.Rib.IsPlain() && !p.has.mock {
			r.Expr = p.columnsExpr()
		}
		return r, true
	case LoopsToLatch:
		return Record{Rule: RuleLoops, From: []Key{ColumnCount, TotalRows},
			Expr:  fmt.Sprintf("%d * %d", len(p.RibColumns), p.TotalRows),
			Value: float64(len(p.RibColumns) * p.TotalRows)}, p.has.rows
	case HemCount:
		return Record{Rule: RuleHem, From: []Key{BandStitches, HemEvery, KeyRib, EdgeStitches},
			Expr: p.hemExprs(), Value: float64(p.hemCount())}, p.has.hem
	}
	return Record{}, false
}

// hemExprs is the sum for the bumps, of every piece.
func (p *Plan) hemExprs() string {
	if p.has.mock {
		return p.hemExpr()
	}
	var parts []string
	for _, q := range p.OnBed() {
		parts = append(parts, q.hemExpr())
	}
	return strings.Join(parts, " + ")
}

// columnsExpr counts the purl columns.
func (p *Plan) columnsExpr() string {
	rib := p.In.Rib
	return fmt.Sprintf("(%d - 2 * %d + %d) / (%d + %d) * %d", p.BandStitches,
		edge(p.In), rib.Knit, rib.Knit, rib.Purl, rib.Purl)
}

// hemExpr counts the list, the end that the list does not reach by itself, and
// what gave way without finding a place.
func (p *Plan) hemExpr() string {
	n, every := p.BandStitches, max(p.In.Int(HemEvery), 1)
	switch {
	case p.has.mock:
		return p.columnsExpr()
	case n < 3:
		return "0"
	}
	expr := fmt.Sprintf("floor((%d - 3) / %d) + 1", n, every)
	if (n-3)%every != 0 {
		expr += " + 1"
	}
	if left := p.HemWished - len(p.HemColumns); left > 0 {
		expr += " - " + itoa(left)
	}
	return expr
}
