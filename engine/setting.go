package engine

import (
	"slices"
	"strings"
)

// How the finished band is set.
const (
	KeyFibre     Key = "fibre"      // one fibre, or a blend's parts with + between
	KeySetMethod Key = "set_method" // one of SetWet, SetSteam, SetDamp
	RestHours    Key = "rest_hours"
	KeyWearer    Key = "wearer" // see Whom
)

// The ways to set a band, the most careful last.
const (
	SetSteam = "steam"
	SetWet   = "wet"
	SetDamp  = "damp"
)

var setMethods = [...]string{SetSteam, SetWet, SetDamp}

var fibres = [...]string{"wool", "superwash", "alpaca", "mohair", "cashmere", "silk", "cotton", "linen",
	"viscose", "acrylic", "nylon"}

// FibreParts are the fibres of a yarn: one, or those of a blend.
func FibreParts(fibre string) []string {
	if fibre == "" {
		return nil
	}
	return strings.Split(fibre, "+")
}

// normalFibre is a fibre, or a blend with each part once in the order of the
// list.
func normalFibre(s string) (string, bool) {
	var parts []string
	said := FibreParts(s)
	for _, f := range said {
		if !slices.Contains(fibres[:], f) {
			return "", false
		}
	}
	for _, f := range fibres {
		if slices.Contains(said, f) {
			parts = append(parts, f)
		}
	}
	return strings.Join(parts, "+"), len(parts) > 0
}

// Careful is the more careful of two ways to set a band; "" gives way.
func Careful(a, b string) string {
	if slices.Index(setMethods[:], a) < slices.Index(setMethods[:], b) {
		return b
	}
	return a
}

// HeatHurts reports a yarn that heat spoils for good, in whole or in part.
func HeatHurts(fibre string) bool {
	parts := FibreParts(fibre)
	return slices.Contains(parts, "acrylic") || slices.Contains(parts, "nylon")
}
