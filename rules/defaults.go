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
	if said.Text(engine.KeyBandKind) == engine.BandRolled { // plain, one layer, whatever the rib was before
		in = in.WithRib(engine.Plain()).With(engine.Layers, engine.Int(1))
	}
	in = in.Over(b.Defaults(in.Rib))
	for k := range said.Keys() {
		if p := b.partOf[k]; p != nil {
			in = in.Over(p.defaults)
		}
	}
	return in
}

// Uses reports whether something of a part was said.
func (b *Book) Uses(said engine.Inputs, name string) bool {
	for k := range said.Keys() {
		if p := b.partOf[k]; p != nil && p.name == name {
			return true
		}
	}
	return false
}

// part is a part around the band with the defaults of its keys.
type part struct {
	name     string
	defaults engine.Inputs
}

// foldDefaults lays the defaults of the keys together, those of the band and
// those of each part around it.
func (b *Book) foldDefaults() {
	parts := map[string]*part{}
	b.partOf = map[engine.Key]*part{}
	for _, k := range b.Keys {
		if k.Part == "" {
			b.band = k.withDefault(b.band)
			continue
		}
		p := parts[k.Part]
		if p == nil {
			p = &part{name: k.Part}
			parts[k.Part] = p
		}
		b.partOf[k.Key], p.defaults = p, k.withDefault(p.defaults)
	}
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
