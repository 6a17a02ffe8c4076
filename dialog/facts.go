package dialog

import (
	"math"

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
	return inputJSON(p, k)
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
	switch k {
	case engine.KeyGarment:
		c.changes[string(k)] = string(in.Garment)
	case engine.KeyRib:
		c.changes[string(k)] = in.Rib.String()
	case textKey(k):
		c.changes[string(k)] = in.Text(k)
	default:
		c.changes[string(k)] = round4(in.Num(k).Float())
	}
}
