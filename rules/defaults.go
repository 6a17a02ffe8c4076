package rules

import "foldrow/engine"

// Defaults is what a plan starts from: every default of the band in keys.md,
// and the factors of the rib. click_effect stays unset, because the engine
// works it out from number_effect; for the zero rib its factors stay unset
// too.
func (b *Book) Defaults(rib engine.Rib) engine.Inputs {
	var in engine.Inputs
	for _, k := range b.Keys {
		if k.Part == "" {
			in = k.withDefault(in)
		}
	}
	if !rib.IsSet() {
		return in
	}
	r := b.RibFactors(rib)
	return in.With(engine.RibDraw, r.Draw).With(engine.RibStretch, r.Stretch)
}

// Filled is said with the defaults under it. Those of a part around the band
// hold only where something of that part was said.
func (b *Book) Filled(said engine.Inputs) engine.Inputs {
	in := said.Over(b.given(said))
	in = in.Over(b.Defaults(in.Rib))
	used := map[string]bool{}
	for _, k := range b.Keys {
		if k.Part != "" && said.Has(k.Key) {
			used[k.Part] = true
		}
	}
	if len(used) == 0 {
		return in
	}
	for _, k := range b.Keys {
		if used[k.Part] && !in.Has(k.Key) {
			in = k.withDefault(in)
		}
	}
	return in
}

// Uses reports whether something of a part was said.
func (b *Book) Uses(said engine.Inputs, part string) bool {
	for _, k := range b.Keys {
		if k.Part == part && said.Has(k.Key) {
			return true
		}
	}
	return false
}

func (k KeyCard) withDefault(in engine.Inputs) engine.Inputs {
	switch {
	case k.HasDefault:
		return in.With(k.Key, k.Default)
	case k.DefaultText != "":
		in, _ = in.WithText(k.Key, k.DefaultText)
	}
	return in
}
