package dialog

import (
	"math"

	"foldrow/dialog/answer"
	"foldrow/engine"
)

// round4 keeps four decimals, as the contract has it.
func round4(f float64) float64 { return math.Round(f*1e4) / 1e4 }

// Facts is r with every input and result of its plan: only scripts ask for
// them, so an answer on the screen goes without.
func (r Reply) Facts() Reply {
	if r.plan != nil {
		r.Inputs, r.Results = inputsJSON(r.plan), resultsJSON(r.plan)
	}
	return r
}

// inputsJSON is every input of the plan, said or assumed.
func inputsJSON(p *engine.Plan) map[string]any {
	m := make(map[string]any, 40)
	for _, k := range engine.InputKeys() {
		if v, ok := inputJSON(p, k); ok {
			m[string(k)] = v
		}
	}
	return m
}

func inputJSON(p *engine.Plan, k engine.Key) (any, bool) {
	switch k {
	case engine.KeyGarment:
		return string(p.In.Garment), p.In.Garment != ""
	case engine.KeyRib:
		return p.In.Rib.String(), p.In.Rib.IsSet()
	}
	if engine.IsText(k) {
		return p.In.Text(k), p.In.Has(k)
	}
	f, ok := p.Float(k)
	return round4(f), ok
}

// resultsJSON is every result that the plan holds.
func resultsJSON(p *engine.Plan) map[string]any {
	m := make(map[string]any, 40)
	for _, k := range engine.ResultKeys() {
		if v, ok := p.Value(k); ok {
			if f, isFloat := v.(float64); isFloat {
				v = round4(f)
			}
			m[string(k)] = v
		} else if v, ok := piecesJSON(p, k); ok {
			m[string(k)] = v
		}
	}
	return m
}

// valueJSON is one thing a question asked for, input or result.
func valueJSON(p *engine.Plan, k engine.Key) (any, bool) {
	if v, ok := p.Value(k); ok {
		if f, isFloat := v.(float64); isFloat {
			return round4(f), true
		}
		return v, true
	}
	if v, ok := piecesJSON(p, k); ok {
		return v, true
	}
	return inputJSON(p, k)
}

// What a question can ask for that no plan holds: one stage and its stitches, and
// the swatch that would be large enough, in stitches and in cm.
const (
	oneStage       engine.Key = "stage"
	oneStageCount  engine.Key = "stage_count"
	swatchStitches engine.Key = "swatch_stitches"
	swatchWidth    engine.Key = "swatch_width"
)

// answerSides notes what a comparison sets side by side: a list for each result,
// and for what was chosen, in the order of the choices.
func (c *turn) answerSides(sides []answer.Side) {
	keys := []engine.Key{engine.KeyRib, engine.BandStitches, engine.NeckResult, engine.LayerRows, engine.DepthResult,
		engine.ColumnCount, engine.LoopsToLatch, engine.RelaxedCircumference, engine.StretchedCircumference, engine.BandYarn}
	for _, sets := range c.m.Choices {
		for _, set := range sets {
			keys = append(engine.WithoutKey(keys, set.Key), set.Key)
		}
	}
	for _, k := range keys {
		var list []any
		for _, s := range sides {
			if v, ok := valueJSON(s.Plan, k); ok {
				list = append(list, v)
			}
		}
		if len(list) == len(sides) {
			c.answer(k, list)
		}
	}
}

// answer notes a value that the line asked for.
func (c *turn) answer(k engine.Key, v any) {
	if c.answers == nil {
		c.answers = map[string]any{}
	}
	c.answers[string(k)] = v
}

// change notes a value that the line set.
func (c *turn) change(k engine.Key, in engine.Inputs) {
	if c.changes == nil {
		c.changes = map[string]any{}
	}
	switch {
	case k == engine.KeyGarment:
		c.changes[string(k)] = string(in.Garment)
	case k == engine.KeyRib:
		c.changes[string(k)] = in.Rib.String()
	case engine.IsText(k):
		c.changes[string(k)] = in.Text(k)
	default:
		c.changes[string(k)] = round4(in.Num(k).Float())
	}
}
