package page

import (
	"strings"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// gauges is the gauge as it was told, per 10 cm or to the inch, with the other
// beside it: told figures are round in their own measure. Where both are, the
// knitter's own unit comes first.
func gauges(v answer.Voice, p *engine.Plan) string {
	var parts []string
	for _, k := range []engine.Key{engine.StitchGauge, engine.RowGauge} {
		g := p.In.Num(k)
		if g.Sign() <= 0 {
			continue
		}
		metric, inches := answer.Voice{Book: v.Book, Unit: "cm"}.Value(p, k), answer.Voice{Book: v.Book, Unit: "in"}.Value(p, k)
		perInch := g.Mul(engine.Frac(254, 1000))
		switch {
		case isRound(perInch) && (!isRound(g) || v.Unit == "in"):
			parts = append(parts, inches+" ("+metric+")")
		case v.Unit == "in":
			parts = append(parts, metric+" ("+inches+")")
		default:
			parts = append(parts, metric)
		}
	}
	return strings.Join(parts, ", ")
}

// isRound reports quarters and tenths.
func isRound(g engine.Num) bool { return g.Mul(engine.Int(20)).IsInt() }
