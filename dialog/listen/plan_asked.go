package listen

import "foldrow/engine"

// tightnessMeans: "what does a tightness of 1.4 mean".
func (r *reading) tightnessMeans() (Meaning, bool) {
	qs := r.l.quantities()
	if !r.l.has("tightness", "tight") || !r.l.has("factor", "mean", "tightness") || len(qs) > 1 || !r.asks() {
		return Meaning{}, false
	}
	for _, m := range r.l.mentions {
		if m.key != engine.Tightness {
			continue
		}
		out := Meaning{Kind: Number, Topic: "tightness", Keys: []engine.Key{engine.Tightness}}
		if len(qs) == 1 && r.l.tokens[qs[0]].q.Unit == "" && r.l.tokens[qs[0]].q.Value.Sign() > 0 {
			out.Figure, out.HasFig = r.l.tokens[qs[0]].q.Value, true
		}
		return out, out.HasFig || r.l.has("mean", "for", "what")
	}
	return Meaning{}, false
}

// estimates: "which numbers are estimates", "are these figures sure".
func (r *reading) estimates() (Meaning, bool) {
	if len(r.b.sets) > 0 || len(r.l.quantities()) > 0 || !r.asks() || r.cue(Why) || r.cue(WhatIf) && r.l.has("if") || len(r.results()) > 0 {
		return Meaning{}, false
	}
	about := r.l.has("figure", "figures", "number", "numbers", "plan", "value", "values") || r.beginsWith([]string{"what", "is"}) || r.beginsWith([]string{"which", "are"})
	if r.l.has("estimate", "estimates", "estimated", "guess", "guesses", "guessed", "uncertain", "unsure") && about ||
		r.l.has("sure", "certain", "exact", "reliable", "trust") && r.l.has("figures", "numbers", "values") && !r.l.has("how", "you") {
		return Meaning{Kind: Show, Topic: "estimates"}, true
	}
	return Meaning{}, false
}

// howSure: "how sure is the rib draw" asks for the spread of the estimates, and
// supposes no slip in the swatch.
func (r *reading) howSure() (Meaning, bool) {
	if !r.asks() || !r.l.has("how") || !r.l.has("sure", "certain", "reliable") || len(r.b.sets) > 0 || len(r.l.quantities()) > 0 {
		return Meaning{}, false
	}
	if r.l.has("rib") && r.l.has("draw", "stretch", "pull") {
		return Meaning{Kind: Show, Topic: "estimates"}, true
	}
	for _, k := range append(r.results(), r.inputs()...) {
		switch k {
		case engine.RibDraw, engine.RibStretch, engine.EdgeStretch, engine.FoldCircumference, engine.RelaxedCircumference,
			engine.StretchedCircumference, engine.LeanDegrees, engine.HeadOpening, engine.SlitLength, engine.NumberEffect, engine.ClickEffect:
			return Meaning{Kind: Show, Topic: "estimates"}, true
		}
	}
	return Meaning{}, false
}

// stepsChange: "what changes in the steps" with this kind of band.
func (r *reading) stepsChange() (Meaning, bool) {
	if !r.asks() || !r.l.has("steps", "step") || !r.l.has("change", "changes", "chang", "different", "differ", "differenc") || len(r.b.sets) > 0 || len(r.l.quantities()) > 0 || r.cue(Why) || r.ctx.Open != "" && r.ctx.Open != "keep" {
		return Meaning{}, false
	}
	return Meaning{Kind: Show, Topic: "steps"}, true
}
