package rules

import "foldrow/engine"

// Defaults is what a plan starts from: every default of the band in keys.md,
// and the factors of the rib. click_effect stays unset, because the engine
// works it out from number_effect; for the zero rib its factors stay unset
// too.
func (b *Book) Defaults(rib engine.Rib) engine.Inputs {
	in := b.band
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
	for part, defaults := range b.parts {
		if b.Uses(said, part) {
			in = in.Over(defaults)
		}
	}
	return in
}

// foldDefaults lays the defaults of the keys together, those of the band and
// those of each part around it.
func (b *Book) foldDefaults() {
	b.parts = map[string]engine.Inputs{}
	for _, k := range b.Keys {
		if k.Part == "" {
			b.band = k.withDefault(b.band)
		} else {
			b.parts[k.Part] = k.withDefault(b.parts[k.Part])
		}
	}
}

// Uses reports whether something of a part was said.
func (b *Book) Uses(said engine.Inputs, part string) bool {
	for i := range b.Keys {
		if k := &b.Keys[i]; k.Part == part && said.Has(k.Key) {
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
