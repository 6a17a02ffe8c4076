package engine

import (
	"slices"
	"strings"
)

// textKeys lists the inputs that are words or lists, in the order in which
// they are shown after the numbers. Garment and rib have fields of their own.
var textKeys = [...]Key{
	KeyYokeMethod, KeyWearer, KeyFibre, KeySetMethod, KeyBandKind, KeyMachine, KeyFrontRib,
	StageRepeats, StageHeights, StageHad, KeyChart, ChartPlace,
}

const numberOfTextKeys = len(textKeys)

func textIndex(k Key) int {
	for i, t := range textKeys {
		if t == k {
			return i
		}
	}
	return -1
}

// IsText reports whether k is an input that is a word or a list.
func IsText(k Key) bool { return textIndex(k) >= 0 }

// Text is the text under k, "" where it is not set.
func (in Inputs) Text(k Key) string {
	if i := textIndex(k); i >= 0 {
		return in.texts[i]
	}
	return ""
}

// WithText is in with text k set to s in its normal form; ok is false, and in
// as it was, where s is no value of k.
func (in Inputs) WithText(k Key, s string) (out Inputs, ok bool) {
	i := textIndex(k)
	if i < 0 {
		return in, false
	}
	t, ok := normalText(k, s)
	if !ok {
		return in, false
	}
	in.texts[i] = t
	return in, true
}

// TextChoices are the words k may be, nil where it is a list or a drawing.
func TextChoices(k Key) []string {
	switch k {
	case KeyYokeMethod:
		return []string{string(EqualCuts), string(SequenceA), string(SequenceB), string(SequenceC), string(StraightCone)}
	case KeyFibre:
		return fibres[:]
	case KeySetMethod:
		return setMethods[:]
	case KeyBandKind:
		return []string{BandLatched, BandMock, BandRolled}
	case KeyMachine:
		return []string{MachineFine, MachineStandard, MachineMid, MachineChunky}
	case ChartPlace:
		return []string{string(PlaceBalanced), string(PlaceMiddle), string(PlaceBetween), string(PlaceLeft), string(PlaceRight)}
	}
	return nil
}

// normalText is s as it is kept under k, "" and false where it is no value of
// k. What it gives it takes again unchanged.
func normalText(k Key, s string) (string, bool) {
	s = strings.TrimSpace(s)
	switch k {
	case KeyWearer:
		w, ok := ParseWhom(s)
		return w.String(), ok
	case KeyFrontRib:
		r, ok := ParseRib(s)
		return r.String(), ok
	case KeyFibre:
		return normalFibre(s)
	}
	if slices.Contains(TextChoices(k), s) {
		return s, true
	}
	switch k {
	case StageRepeats:
		return normalList(s, Int(1), Int(400), true)
	case StageHeights:
		return normalList(s, Frac(1, 10), Int(100), false)
	case StageHad:
		return normalPairs(s)
	case KeyChart:
		return normalChart(s)
	}
	return "", false
}
