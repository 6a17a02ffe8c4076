package engine

import "iter"

// Garment is what the neck belongs to. The zero value is "not said".
type Garment string

// The two garments: a cardigan opens, its fronts overlap by one front band.
const (
	Cardigan Garment = "cardigan"
	Pullover Garment = "pullover"
)

// Rib is knit x purl as seen on the public side, repeated. The zero value is
// "not said"; Plain stands for no rib at all.
type Rib struct{ Knit, Purl int }

// plain is the rib of no columns.
var plain = Rib{Knit: 1}

// Plain is the band without rib columns.
func Plain() Rib { return plain }

// IsPlain reports a band without rib columns.
func (r Rib) IsPlain() bool { return r.Knit > 0 && r.Purl == 0 }

// IsSet reports whether any rib was chosen.
func (r Rib) IsSet() bool { return r.Knit > 0 }

// String is "2x1" or "plain", and "" where nothing was said.
func (r Rib) String() string {
	switch {
	case !r.IsSet():
		return ""
	case r.IsPlain():
		return "plain"
	}
	return itoa(r.Knit) + "x" + itoa(r.Purl)
}

// ParseRib reads what String writes. Columns are 1 to 20 stitches wide: a
// wider one is no rib on any bed.
func ParseRib(s string) (Rib, bool) {
	if s == "plain" {
		return plain, true
	}
	k, p, ok := cutInts(s)
	if !ok || k < 1 || p < 1 || k > 20 || p > 20 {
		return Rib{}, false
	}
	return Rib{Knit: k, Purl: p}, true
}

// Inputs is everything a plan is made from. It is a value: With and Without
// return changed copies. A number that is not set reads as 0.
type Inputs struct {
	Garment Garment
	Rib     Rib
	nums    [numberOfNumberKeys]Num
	set     [numberOfNumberKeys]bool
	texts   [numberOfTextKeys]string
}

// numberKeys lists the inputs that are numbers, in the order of the design's
// table, which is also the order in which they are shown.
var numberKeys = [...]Key{
	StitchGauge, RowGauge, Neck, Depth, DepthRows, Layers, EdgeStitches,
	FrontBand, SeamStitches, HemEvery, MainTension, DialMin, ClicksPerNumber,
	RowsPerClick, StartClicks, NumberEffect, ClickEffect, FoldRow, BedNeedles,
	NeedlePitch, YokeStitches, RibDraw, RibStretch, EdgeStretch, Head,
	NeckBody, Ease, YarnLength, YarnLeft, RowYarn, StitchWeight,
	NeckMid, NeckFactor, Slit, FrontHeld, FrontRows, BackHeld, BackRows, SleeveHeld, PickRatio,
	RestHours,
	FrontEdge, EdgeRows, NeckbandEnd, FrontGauge, FrontRowGauge, FrontLayers,
	FrontCount, Holes, HoleSpacing, HoleStitches, HoleMargin, Button,
	YokeFirst, BodyStitches, Bust, YokeNeck, YokeStages, StageEdge,
	YokeDepthWanted, YokeRows, ChartStage, ChartStitches, ChartTimes,
	FloatLimit, FloatStitches,
}

const numberOfNumberKeys = len(numberKeys)

var numberIndex = func() map[Key]int {
	m := make(map[Key]int, len(numberKeys))
	for i, k := range numberKeys {
		m[k] = i
	}
	return m
}()

// InputKeys lists every input in the order in which inputs are shown.
func InputKeys() []Key {
	keys := []Key{KeyGarment, StitchGauge, RowGauge, Neck, KeyRib}
	keys = append(keys, numberKeys[3:]...)
	return append(keys, textKeys[:]...)
}

// IsNumber reports whether k is an input that is a number.
func IsNumber(k Key) bool { _, ok := numberIndex[k]; return ok }

// Num is the number under k, 0 where it is not set.
func (in Inputs) Num(k Key) Num {
	i, ok := numberIndex[k]
	if !ok {
		return Num{}
	}
	return in.nums[i]
}

// Int is the number under k, rounded down: for counts.
func (in Inputs) Int(k Key) int { return in.Num(k).Floor() }

// Has reports whether k is set.
func (in Inputs) Has(k Key) bool {
	switch k {
	case KeyGarment:
		return in.Garment != ""
	case KeyRib:
		return in.Rib.IsSet()
	}
	if i, ok := numberIndex[k]; ok {
		return in.set[i]
	}
	return in.Text(k) != ""
}

// Keys is every key that is set.
func (in *Inputs) Keys() iter.Seq[Key] {
	return func(yield func(Key) bool) {
		if in.Garment != "" && !yield(KeyGarment) || in.Rib.IsSet() && !yield(KeyRib) {
			return
		}
		for i, set := range in.set {
			if set && !yield(numberKeys[i]) {
				return
			}
		}
		for i, text := range in.texts {
			if text != "" && !yield(textKeys[i]) {
				return
			}
		}
	}
}

// With is in with number k set to v. A key that is no number changes nothing.
func (in Inputs) With(k Key, v Num) Inputs {
	if i, ok := numberIndex[k]; ok {
		in.nums[i], in.set[i] = v, true
	}
	return in
}

// WithRib is in with another rib.
func (in Inputs) WithRib(r Rib) Inputs { in.Rib = r; return in }

// WithGarment is in with another garment.
func (in Inputs) WithGarment(g Garment) Inputs { in.Garment = g; return in }

// Without is in with k no longer set.
func (in Inputs) Without(k Key) Inputs {
	switch k {
	case KeyGarment:
		in.Garment = ""
	case KeyRib:
		in.Rib = Rib{}
	default:
		if i, ok := numberIndex[k]; ok {
			in.nums[i], in.set[i] = Num{}, false
		} else if i := textIndex(k); i >= 0 {
			in.texts[i] = ""
		}
	}
	return in
}

// Same reports whether k stands equally in both, set or not.
func (in Inputs) Same(other Inputs, k Key) bool {
	switch k {
	case KeyGarment:
		return in.Garment == other.Garment
	case KeyRib:
		return in.Rib == other.Rib
	}
	return in.Has(k) == other.Has(k) && in.Num(k).Equal(other.Num(k)) && in.Text(k) == other.Text(k)
}

// Over is in laid over defaults: what in has not set comes from defaults.
func (in Inputs) Over(defaults Inputs) Inputs {
	for i := range numberKeys {
		if !in.set[i] && defaults.set[i] {
			in.nums[i], in.set[i] = defaults.nums[i], true
		}
	}
	for i, t := range defaults.texts {
		if in.texts[i] == "" {
			in.texts[i] = t
		}
	}
	if in.Garment == "" {
		in.Garment = defaults.Garment
	}
	if !in.Rib.IsSet() {
		in.Rib = defaults.Rib
	}
	return in
}

// Value is the text form of k, "" where it is not set: exact, and read back
// by Parse.
func (in Inputs) Value(k Key) string {
	switch {
	case !in.Has(k):
		return ""
	case k == KeyGarment:
		return string(in.Garment)
	case k == KeyRib:
		return in.Rib.String()
	case IsText(k):
		return in.Text(k)
	}
	return in.Num(k).String()
}

// Parse is in with k read from the text that Value writes.
func (in Inputs) Parse(k Key, s string) (Inputs, bool) {
	switch k {
	case KeyGarment:
		if g := Garment(s); g == Cardigan || g == Pullover {
			return in.WithGarment(g), true
		}
		return in, false
	case KeyRib:
		r, ok := ParseRib(s)
		return in.WithRib(r), ok
	}
	if IsText(k) {
		return in.WithText(k, s)
	}
	v, ok := ParseNum(s)
	if !ok || !IsNumber(k) {
		return in, false
	}
	return in.With(k, v), true
}
