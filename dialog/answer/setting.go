package answer

import (
	"strings"

	"foldrow/engine"
)

// Echo says a value back as a person would: "the band begins 2 clicks tighter
// than the garment". value is n with its unit.
func (v Voice) Echo(k engine.Key, n engine.Num, value string) string {
	if words := Setting(k, n.Floor()); words != "" {
		return words
	}
	card, _ := v.Book.Key(k)
	switch {
	case n.Sign() == 0 && card.EchoNone != "":
		return card.EchoNone
	case card.Echo != "":
		return strings.ReplaceAll(card.Echo, "{value}", value)
	}
	label := v.Label(k)
	return label + " " + Under(label, value)
}

// Setting says in the trade's words what a small number stands for.
func Setting(k engine.Key, n int) string {
	switch {
	case k == engine.Layers && n == 1:
		return "a single layer"
	case k == engine.Layers:
		return "doubled"
	case k == engine.HemEvery && n == 1:
		return "hang every bump"
	case k == engine.HemEvery:
		return "hang every " + Ordinal(n) + " bump"
	case k == engine.RowsPerClick && n == 0:
		return "no grading"
	case k == engine.RowsPerClick && n == 1:
		return "a click every row"
	case k == engine.RowsPerClick:
		return "a click every " + Count(n, "row", "rows")
	case k == engine.FoldRow && n == 0:
		return "no fold row"
	case k == engine.FoldRow:
		return "a fold row " + Count(n, "click", "clicks") + " looser"
	case k == engine.ChartTimes && n == 1:
		return "the chart once"
	case k == engine.NeckbandEnd && n == 0:
		return "the neckband's end not added"
	case k == engine.NeckbandEnd:
		return "the neckband's end added"
	case k == engine.FrontLayers && n == 1:
		return "single front bands"
	case k == engine.FrontLayers:
		return "doubled front bands"
	}
	return ""
}
