package rules

import "foldrow/engine"

// Defaults is what a plan starts from: every default of keys.md, and the
// factors of the rib. click_effect stays unset, because the engine works it
// out from number_effect; for the zero rib its factors stay unset too.
func (b *Book) Defaults(rib engine.Rib) engine.Inputs {
	var in engine.Inputs
	for _, k := range b.Keys {
		if k.HasDefault {
			in = in.With(k.Key, k.Default)
		}
	}
	if !rib.IsSet() {
		return in
	}
	r := b.RibFactors(rib)
	return in.With(engine.RibDraw, r.Draw).With(engine.RibStretch, r.Stretch)
}
