package dialog

import (
	"slices"

	"foldrow/dialog/listen"
	"foldrow/engine"
)

// applied is the outcome of setting values: the new inputs, the keys set in
// the order said, remarks on unusual values, or the problem that stops it all.
type applied struct {
	in      engine.Inputs
	keys    []engine.Key
	unusual []engine.Key
	offMark bool // the dial number said lies between two marks of the dial
	problem listen.Problem
}

// apply sets the values on top of in. One value that cannot be stops them
// all: a half-taken line would be a silent guess.
func (c *turn) apply(in engine.Inputs, sets []listen.Set) applied {
	a := applied{in: in}
	for _, s := range sets {
		if a.problem = c.applyOne(&a, s); a.problem.Code != "" {
			return a
		}
	}
	c.onMark(&a)
	if slices.Contains(a.keys, engine.Depth) && slices.Contains(a.keys, engine.DepthRows) {
		a.problem = listen.Problem{Code: "two-values", Key: engine.Depth} // the one excludes the other
	}
	if slices.Contains(a.keys, engine.KeyBandKind) && slices.Contains(a.keys, engine.KeyRib) &&
		(!a.in.Has(engine.KeyBandKind) || !a.in.Has(engine.KeyRib)) {
		a.problem = listen.Problem{Code: "two-values", Key: engine.KeyBandKind} // a rolled neck has no rib
	}
	return a
}

// onMark sets the garment's dial number to the mark that it names.
func (c *turn) onMark(a *applied) {
	if !slices.Contains(a.keys, engine.MainTension) && !slices.Contains(a.keys, engine.ClicksPerNumber) || !a.in.Has(engine.MainTension) {
		return
	}
	mark, ok := engine.DialMark(a.in.Num(engine.MainTension), c.filled(a.in).Int(engine.ClicksPerNumber))
	if ok && !mark.Equal(a.in.Num(engine.MainTension)) {
		a.in = a.in.With(engine.MainTension, mark)
		a.keys = append(engine.WithoutKey(a.keys, engine.MainTension), engine.MainTension)
	}
	a.offMark = !ok
}

// beginsAt turns the dial of the band's first row into clicks where the garment's
// dial is known, which stays as it is.
func (c *turn) beginsAt() {
	in := c.base()
	for i, s := range c.m.Sets {
		switch {
		case !s.Begin:
			continue
		case !in.Has(engine.MainTension) && s.Bare:
			c.m = listen.Meaning{Kind: listen.Unclear, Problem: listen.Problem{Code: "dial-or-row", Low: s.Value}}
			return
		case !in.Has(engine.MainTension):
			continue
		}
		clicks := in.Num(engine.MainTension).Sub(s.Value).Mul(c.filled(in).Num(engine.ClicksPerNumber))
		if !clicks.IsInt() {
			c.m = listen.Meaning{Kind: listen.Unclear, Problem: listen.Problem{Code: "between-marks", Low: in.Num(engine.MainTension)}}
			return
		}
		c.m.Sets[i] = listen.Set{Key: engine.StartClicks, Value: clicks, Near: s.Near}
	}
}

func (c *turn) applyOne(a *applied, s listen.Set) listen.Problem {
	switch {
	case s.Key == engine.KeyGarment:
		a.in = a.in.WithGarment(s.Garment)
	case s.Key == engine.KeyRib:
		if !plausibleRib(s.Rib) {
			return listen.Problem{Code: "rib", Key: s.Key}
		}
		a.in = a.in.WithRib(s.Rib)
		if a.in.Text(engine.KeyBandKind) == engine.BandRolled && !s.Rib.IsPlain() {
			a.in = a.in.Without(engine.KeyBandKind) // a rolled neck is plain
		}
	case engine.IsText(s.Key):
		if p := c.otherStages(a, s); p.Code != "" {
			return p
		}
		text, p := merged(a.in, s)
		if p.Code != "" {
			return p
		}
		in, ok := a.otherCuts(s).WithText(s.Key, text)
		if !ok {
			return listen.Problem{Code: "no-such-choice", Key: s.Key, Read: s.Text}
		}
		a.in = in
		if s.Text == engine.BandRolled && s.Key == engine.KeyBandKind {
			a.in = a.in.Without(engine.Layers) // the rib that was said waits for another kind
		}
	default:
		v, p := c.absolute(a.in, s)
		if p.Code != "" {
			return p
		}
		switch c.judge(s.Key, v) {
		case impossible:
			return listen.Problem{Code: "span", Key: s.Key, Low: v, Unit: s.Unit}
		case unusual:
			a.unusual = append(a.unusual, s.Key)
		}
		a.in = exclusive(a.replaced(s.Key), s.Key).With(s.Key, storable(v))
	}
	a.keys = append(engine.WithoutKey(a.keys, s.Key), s.Key)
	return listen.Problem{}
}

// longestKept is how many characters of a number the notebook reads back.
const longestKept = 48

// storable is v, to a millionth where part on part ("1.2345678 % bigger", again
// and again) has made its exact fraction too long to keep.
func storable(v engine.Num) engine.Num {
	if len(v.String()) <= longestKept {
		return v
	}
	const part = 1_000_000
	return engine.Frac(int64(v.Mul(engine.Int(part)).Round()), part)
}

// plausibleRib: columns wider than nine stitches are no rib anyone latches, though
// such a one can be read.
func plausibleRib(r engine.Rib) bool {
	return r.IsPlain() || r.Knit >= 1 && r.Purl >= 1 && r.Knit <= 9 && r.Purl <= 9
}

// absolute is the value that a set comes to: a relative one is laid on what
// stands.
func (c *turn) absolute(in engine.Inputs, s listen.Set) (engine.Num, listen.Problem) {
	if s.InAll && !s.Relative {
		layers := c.filled(in).Num(engine.Layers)
		if v := s.Value.Div(layers); v.IsInt() {
			return v, listen.Problem{}
		}
		return engine.Num{}, listen.Problem{Code: "uneven-rows", Key: s.Key, Low: s.Value}
	}
	if s.Over > 0 {
		plain, ok := engine.WidthOf(s.Over, c.filled(in))
		if !ok {
			return engine.Num{}, listen.Problem{Code: "gauge-first", Key: s.Key}
		}
		return s.Value.Div(plain), listen.Problem{}
	}
	if s.Wide {
		gauge := c.filled(in).Num(engine.FrontGauge)
		if gauge.Sign() <= 0 {
			gauge = c.filled(in).Num(engine.StitchGauge)
		}
		if gauge.Sign() <= 0 {
			return engine.Num{}, listen.Problem{Code: "gauge-first", Key: s.Key}
		}
		return engine.Int(int64(s.Value.Mul(gauge).Div(engine.Int(10)).Round())), listen.Problem{}
	}
	if !s.Relative {
		return s.Value, listen.Problem{}
	}
	p := c.solve(in)
	base, ok := standing(p, s.Key)
	if !ok {
		return engine.Num{}, listen.Problem{Code: "nothing-to-change", Key: s.Key}
	}
	if s.Times {
		return base.Mul(s.Value), listen.Problem{}
	}
	return base.Add(s.Value), listen.Problem{}
}

// standing is the value of k that a difference is laid on: the input itself,
// or what follows from another one (rows from the depth).
func standing(p *engine.Plan, k engine.Key) (engine.Num, bool) {
	if p.In.Has(k) {
		return p.In.Num(k), true
	}
	switch {
	case k == engine.DepthRows && p.LayerRows > 0:
		return engine.Int(int64(p.LayerRows)), true
	case k == engine.Depth && p.LayerRows > 0:
		return p.DepthResult, true
	case k == engine.Neck && p.NeckWanted.Sign() > 0:
		return p.NeckWanted, true
	case k == engine.FoldRow || k == engine.StartClicks:
		return engine.Num{}, true
	case k == engine.ClickEffect && p.Click.Sign() > 0:
		return p.Click.Mul(engine.Int(100)), true
	}
	return engine.Num{}, false
}

type verdict int

const (
	usual verdict = iota
	unusual
	impossible
)

// judge holds a value against its plausible spans in rules/keys.md.
func (c *turn) judge(k engine.Key, v engine.Num) verdict {
	card, ok := c.book.Key(k)
	if !ok || !card.HasSpan {
		if v.Sign() < 0 {
			return impossible
		}
		return usual
	}
	switch {
	case v.Less(card.Possible[0]) || card.Possible[1].Less(v):
		return impossible
	case v.Less(card.Usual[0]) || card.Usual[1].Less(v):
		return unusual
	}
	return usual
}

// exclusive clears what k replaces: of two ways to say the same thing the
// later holds.
func exclusive(in engine.Inputs, k engine.Key) engine.Inputs {
	switch k {
	case engine.Depth:
		return in.Without(engine.DepthRows)
	case engine.DepthRows:
		return in.Without(engine.Depth)
	case engine.Neck:
		return in.Without(engine.NeckBody)
	case engine.NeckBody:
		return in.Without(engine.Neck)
	case engine.NumberEffect:
		return in.Without(engine.ClickEffect)
	case engine.ClickEffect:
		return in.Without(engine.NumberEffect)
	case engine.Holes:
		return in.Without(engine.HoleSpacing)
	case engine.HoleSpacing:
		return in.Without(engine.Holes)
	case engine.FrontEdge:
		return in.Without(engine.FrontCount)
	}
	return in
}

// odd reports a gauge whose rows and stitches do not go together in plain
// knitting: asked about, since the two are easily swapped.
func odd(in engine.Inputs, keys []engine.Key) bool {
	touched := false
	for _, k := range keys {
		touched = touched || k == engine.StitchGauge || k == engine.RowGauge
	}
	st, row := in.Num(engine.StitchGauge), in.Num(engine.RowGauge)
	if !touched || st.Sign() <= 0 || row.Sign() <= 0 {
		return false
	}
	r := row.Div(st)
	return r.Less(engine.Frac(11, 10)) || engine.Frac(16, 10).Less(r)
}
