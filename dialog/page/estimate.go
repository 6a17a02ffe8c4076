package page

import (
	"foldrow/dialog/answer"
	"foldrow/engine"
)

// size is one width or angle of the finished band, and how sure it is.
type size struct {
	Label, Value, Spread, Note string
	Source                     []string // ids
	Refs                       string   // the same as numbers in the list of sources
}

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
		s := size{Label: sizeLabel(v, p, k), Value: v.Value(p, k)}
		if s.Value == "" {
			continue
		}
		if low, high, ok := p.Spread(k, v.Spans(p)); ok && v.Figure(k, low) != v.Figure(k, high) {
			s.Spread = v.Figure(k, low) + " to " + v.Figure(k, high)
		}
		if c, ok := v.Book.Result(k); ok {
			s.Note, s.Source = sizeNote(p, k, c.Meaning), c.Source
			if own := v.OwnEstimate(p, k); own != "" {
				c.Estimate, s.Source = own, []string{"own"}
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
type assumption struct {
	Label, Value string
	Source       []string // ids
	Refs         string   // the same as numbers in the list of sources
}

// sizeLabel is what a size is called; a single layer has no fold.
func sizeLabel(v answer.Voice, p *engine.Plan, k engine.Key) string {
	if k == engine.FoldCircumference && !p.Doubled {
		return "circumference at the edge"
	}
	return v.Label(k)
}

// sizeNote is what a size means, without what this plan has not: overlapping
// fronts, a grading, a rib.
func sizeNote(p *engine.Plan, k engine.Key, meaning string) string {
	plain := p.In.Rib.IsPlain()
	switch {
	case k == engine.SeamWidth && p.In.Garment != engine.Cardigan:
		return "what shows of the knitted band along the seam"
	case k == engine.FoldCircumference && plain:
		return "the length of the top edge"
	case k == engine.LeanDegrees && plain:
		return "how far the band leans in toward the neck"
	}
	return meaning
}

// assumed lists what the knitter has not said and the plan rests on.
func assumed(v answer.Voice, p *engine.Plan, said engine.Inputs) []assumption {
	var out []assumption
	for _, k := range engine.InputKeys() {
		if said.Has(k) || !p.In.Has(k) || !answer.Matters(k, p) || answer.AddsNothing(k, p) {
			continue
		}
		var ids []string
		if c, ok := v.Book.Key(k); ok {
			ids = c.Source
		}
		if k == engine.RibDraw || k == engine.RibStretch {
			ids = v.Book.Factors(p.In).Source
		}
		if by := v.Book.GivenBy(p.In, k); by == engine.KeyBandKind && k != engine.RibDraw && k != engine.RibStretch {
			c, _ := v.Book.Key(by)
			ids = c.Source
		}
		label, value := v.Taken(p, k)
		out = append(out, assumption{Label: label, Value: value, Source: ids})
	}
	return out
}
