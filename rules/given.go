package rules

import (
	"strings"

	"foldrow/engine"
)

// A choice may presuppose other inputs: a class of machine its bed, a fibre
// the way it is set. Its card writes them as
//
//	gives-VALUE: key=value ; key=value
//
// and they hold as defaults do, under whatever was said.

// readGives reads what each choice presupposes. A value is not checked here:
// checkGives does that once all keys are there.
func readGives(c Card, choices []ChoiceCard) map[string][]string {
	gives := map[string][]string{}
	for _, ch := range choices {
		if list := c.List("gives-" + ch.Value); len(list) > 0 {
			gives[ch.Value] = list
		}
	}
	return gives
}

func checkGives(c Card, k KeyCard, bad *faults) {
	for _, list := range k.gives {
		for _, pair := range list {
			if _, ok := with(engine.Inputs{}, pair); !ok {
				bad.card(c, BadSpan, "gives "+pair)
			}
		}
	}
}

// with is in with "key=value" set, the value as cards write numbers.
func with(in engine.Inputs, pair string) (engine.Inputs, bool) {
	key, value, _ := strings.Cut(pair, "=")
	if k := engine.Key(key); engine.IsNumber(k) {
		n, ok := decimal(value)
		return in.With(k, n), ok
	}
	return in.Parse(engine.Key(key), value)
}

// given is what the choices that stand in said presuppose. Of a blend's parts
// the most careful way of setting and the longest rest hold.
func (b *Book) given(said engine.Inputs) engine.Inputs {
	var in engine.Inputs
	for i := range b.Keys {
		k := &b.Keys[i]
		if len(k.gives) == 0 {
			continue
		}
		for _, v := range engine.FibreParts(said.Text(k.Key)) {
			var one engine.Inputs
			for _, pair := range k.gives[v] {
				one, _ = with(one, pair)
			}
			if k.Key == engine.KeyFibre {
				one = careful(one, in)
			}
			in = one.Over(in)
		}
	}
	in = b.kind(said.Over(in)).Over(in)
	return b.worn(said).Over(in)
}

func careful(a, b engine.Inputs) engine.Inputs {
	if m := engine.Careful(a.Text(engine.KeySetMethod), b.Text(engine.KeySetMethod)); m != "" {
		a, _ = a.WithText(engine.KeySetMethod, m)
	}
	if a.Num(engine.RestHours).Less(b.Num(engine.RestHours)) {
		a = a.With(engine.RestHours, b.Num(engine.RestHours))
	}
	return a
}

// numbersTighter is how many dial numbers tighter than the garment a mock rib
// and a rolled neck are knitted, flat: 2 against 6 and 4 against 8 in two
// published bands (trade-22, trade-29).
const numbersTighter = 4

// What a mock rib does is not published: our own estimates, laid between plain
// and latched rib.
var (
	mockDraw    = [3]engine.Num{engine.Frac(85, 100), engine.Frac(7, 10), engine.Int(1)}
	mockStretch = [3]engine.Num{engine.Frac(13, 10), engine.Frac(12, 10), engine.Frac(15, 10)}
)

// kind is what the kind of band presupposes: tension, layers and rib.
func (b *Book) kind(said engine.Inputs) (in engine.Inputs) {
	k := said.Text(engine.KeyBandKind)
	if k != engine.BandMock && k != engine.BandRolled {
		return in
	}
	clicks := said.Num(engine.ClicksPerNumber)
	if clicks.Sign() <= 0 {
		card, _ := b.Key(engine.ClicksPerNumber)
		clicks = card.Default
	}
	in = in.With(engine.RowsPerClick, engine.Int(0)).With(engine.StartClicks, clicks.Mul(engine.Int(numbersTighter)))
	if k == engine.BandRolled {
		return in.WithRib(engine.Plain()).With(engine.Layers, engine.Int(1))
	}
	return in.With(engine.RibDraw, mockDraw[0]).With(engine.RibStretch, mockStretch[0])
}

// Factors is RibFactors for the band that in plans: a mock rib has factors of
// its own.
func (b *Book) Factors(in engine.Inputs) RibCard {
	r := b.RibFactors(in.Rib)
	if in.Text(engine.KeyBandKind) != engine.BandMock || in.Rib.IsPlain() {
		return r
	}
	r.Draw, r.DrawLow, r.DrawHigh = mockDraw[0], mockDraw[1], mockDraw[2]
	r.Stretch, r.StretchLow, r.StretchHigh = mockStretch[0], mockStretch[1], mockStretch[2]
	r.Measured, r.Source = false, []string{"own"}
	r.Text = "" // the reason is the band kind's, which brings the factors
	return r
}

// GivenBy is the choice in in that presupposes k, "" where none does.
func (b *Book) GivenBy(in engine.Inputs, k engine.Key) engine.Key {
	for _, by := range []engine.Key{engine.KeyWearer, engine.KeySetMethod, engine.KeyFibre, engine.KeyBandKind, engine.KeyMachine} {
		one, ok := engine.Inputs{}.WithText(by, in.Text(by))
		if !ok {
			continue
		}
		if gives := b.given(one); gives.Has(k) && gives.Same(in, k) {
			return by
		}
	}
	return ""
}
