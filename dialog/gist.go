package dialog

import (
	"strings"

	"foldrow/engine"
)

// Gist says in one line by what a project is known again: its garment and rib,
// and the numbers of its plan, or what was answered so far. It is "" where
// nothing was.
func (t *Talk) Gist(s State) string { return t.at(s, "").gist() }

func (c *turn) gist() string {
	p, v := c.kept(), c.voice()
	var parts []string
	if p.In.Garment != "" {
		parts = append(parts, string(p.In.Garment))
	}
	short := v.Short(p)
	if c.open(c.s) != "" && c.open(c.s) != "keep" {
		short = "" // counts that the next answer changes
	}
	if short == "" {
		for _, k := range []engine.Key{engine.StitchGauge, engine.RowGauge, engine.Neck} {
			if c.s.Said.Has(k) {
				parts = append(parts, v.Label(k)+" "+v.Value(p, k))
			}
		}
	}
	if c.s.Said.Has(engine.KeyRib) {
		parts = append(parts, v.Value(p, engine.KeyRib)+" rib")
	}
	if short != "" {
		parts = append(parts, short)
	}
	return strings.Join(parts, ", ")
}

// supposed says what lies on the table and how it differs from the plan, so that
// somebody who comes back knows what she is asked to keep.
func (c *turn) supposed() string {
	var parts []string
	for _, k := range c.s.Chain {
		parts = append(parts, c.voice().Label(k)+" "+c.voice().Value(c.plan(), k))
	}
	return "You were trying a what-if: " + strings.Join(parts, ", ") + ".\n\n" + c.differences()
}
