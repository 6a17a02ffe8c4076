package page

import (
	"foldrow/dialog/answer"
	"foldrow/engine"
)

// size is one width or angle of the finished band, and how sure it is.
type size struct{ Label, Value, Spread, Note, Source string }

var sized = [...]engine.Key{
	engine.SeamWidth, engine.FoldCircumference, engine.RelaxedCircumference,
	engine.StretchedCircumference, engine.LeanDegrees, engine.HeadOpening,
}

// sizes is how the band will sit, with the spread of what is estimated.
func sizes(v answer.Voice, p *engine.Plan) []size {
	if p.BandStitches == 0 || p.LayerRows == 0 {
		return nil
	}
	var out []size
	for _, k := range sized {
		s := size{Label: v.Label(k), Value: v.Value(p, k)}
		if s.Value == "" {
			continue
		}
		if low, high, ok := p.Spread(k, v.Spans(p)); ok && v.Figure(k, low) != v.Figure(k, high) {
			s.Spread = v.Figure(k, low) + " to " + v.Figure(k, high)
		}
		if c, ok := v.Book.Result(k); ok {
			s.Note, s.Source = c.Meaning, v.Sources(c.Source)
			if own := v.OwnEstimate(p, k); own != "" {
				c.Estimate, s.Source = own, v.Sources([]string{"own"})
			}
			if c.Estimate != "" {
				s.Note += ". " + v.Estimate(p, c)
			}
		}
		out = append(out, s)
	}
	return out
}

// assumption is one thing the plan takes for granted, and where its figure
// comes from.
type assumption struct{ Label, Value, Source string }

// assumed lists what the knitter has not said and the plan rests on.
func assumed(v answer.Voice, p *engine.Plan, said engine.Inputs) []assumption {
	var out []assumption
	for _, k := range engine.InputKeys() {
		if said.Has(k) || !p.In.Has(k) || !answer.Matters(k, p) {
			continue
		}
		var ids []string
		if c, ok := v.Book.Key(k); ok {
			ids = c.Source
		}
		if k == engine.RibDraw || k == engine.RibStretch {
			ids = v.Book.RibFactors(p.In.Rib).Source
		}
		if by := v.Book.GivenBy(p.In, k); by == engine.KeyBandKind {
			c, _ := v.Book.Key(by)
			ids = c.Source
			if k == engine.RibDraw || k == engine.RibStretch {
				ids = []string{"own"}
			}
		}
		out = append(out, assumption{v.Label(k), v.Value(p, k), v.Sources(ids)})
	}
	return out
}
