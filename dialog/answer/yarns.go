package answer

import (
	"fmt"
	"strings"

	"foldrow/engine"
	"foldrow/rules"
)

// countName is what a yarn count is called.
func countName(c engine.YarnCount) string {
	switch c {
	case engine.MetricCount:
		return "Nm"
	case engine.CottonCount:
		return "cotton count"
	case engine.WorstedNeK:
		return "worsted count"
	case engine.WoollenSkein:
		return "Yorkshire woollen skeins"
	case engine.WoollenRun:
		return "woollen run"
	case engine.LinenLea:
		return "linen lea"
	case engine.MetresPer:
		return "m in 100 g"
	case engine.YardsPer100:
		return "yd in 100 g"
	case engine.YardsOunce:
		return "yd to the ounce"
	case engine.YardsPound:
		return "yd to the pound"
	}
	return string(c)
}

// YarnCount writes one yarn in the count asked for, in tex and in metres.
func YarnCount(from engine.YarnCount, value engine.Num, plies int, to engine.YarnCount, result, tex, metres engine.Num) string {
	said := trim(value.Float(), 1) + " " + countName(from)
	if plies > 1 {
		said = fmt.Sprintf("%d threads of %s", plies, said)
	}
	text := fmt.Sprintf("%s: **%s %s**", said, trim(result.Float(), 1), countName(to))
	if to != engine.TexCount {
		text += ", " + trim(tex.Float(), 1) + " tex"
	}
	if to != engine.MetresPer {
		text += ", " + trim(metres.Float(), 0) + " m in 100 g"
	}
	text += ". The pound and the yard are exact; what twisting takes up is not counted."
	return text + fmt.Sprintf(" To use it in the plan say *%s m per 100 g*.", trim(metres.Float(), 0))
}

// YarnTogether is what is left to knit, part by part, and whether the yarn
// lasts.
func (v Voice) YarnTogether(p *engine.Plan) string {
	off, _ := p.Float(engine.OffYarn)
	closing, _ := p.Float(engine.ClosingYarn)
	rows := []string{"| | takes about |", "| --- | --- |"}
	add := func(what string, metres float64) {
		cell := v.metres(metres)
		if p.YarnRate.Sign() > 0 {
			cell += ", " + trim(metres*100/p.YarnRate.Float(), 1) + " g"
		}
		rows = append(rows, "| "+what+" | "+cell+" |")
	}
	band, ok := p.Float(engine.BandYarn)
	if !ok {
		return ""
	}
	add("rows of the neckband", band-off/100-closing)
	if closing > 0 {
		add("its closing row", closing)
	}
	add("sewing it off, with tails", off/100)
	total := band
	if front, ok := p.Float(engine.FrontYarn); ok {
		add("both front bands", front)
		total += front
	}
	add("together", total)
	return strings.Join(rows, "\n")
}

// TightnessWords judges a tightness factor by the published bands.
func TightnessWords(k float64) string {
	text := fmt.Sprintf("The tightness factor is **%s**: ", trim(k, 2))
	switch {
	case k < 1.0:
		return text + "below 1.0 the fabric is open for a hand yarn (1.0 to 1.5 is usual)."
	case k < 1.4:
		return text + "usual for a hand yarn (1.0 to 1.5)."
	case k <= 1.5:
		return text + "firm; most machine-knit worsted lies at 1.4 to 1.5."
	}
	return text + "above 1.5 the fabric is very dense; a looser dial or a thinner yarn knits more easily."
}

// YarnClasses says which classes of the published table knit to a gauge.
func (v Voice) YarnClasses(gauge engine.Num, list []rules.YarnWeight) string {
	text := v.Figure(engine.StitchGauge, gauge.Float())
	switch len(list) {
	case 0:
		return text + " is beyond the published yarn table."
	case 1:
		text += fmt.Sprintf(" belongs to **%s** in the published yarn table (%s).", list[0].Name, classSpan(list[0]))
	default:
		text += fmt.Sprintf(" belongs to two classes of the published yarn table, **%s** (%s) and **%s** (%s): they overlap there.",
			list[0].Name, classSpan(list[0]), list[1].Name, classSpan(list[1]))
	}
	return text + " Source: " + v.Sources([]string{list[0].Source}) + "."
}

func classSpan(y rules.YarnWeight) string {
	if !y.HasLow {
		return fmt.Sprintf("%s stitches or fewer", trim(y.High.Float(), 0))
	}
	return fmt.Sprintf("%s to %s stitches in 10 cm", trim(y.Low.Float(), 0), trim(y.High.Float(), 0))
}

// YarnNamed says of a trade name at how many stitches it is knitted, whether the
// gauge goes with it, and how long it runs.
func (v Voice) YarnNamed(y rules.YarnName, class rules.YarnWeight, gauge engine.Num) string {
	text := fmt.Sprintf("**%s** is %s in the published yarn table: %s.", y.Name, class.Name, classSpan(class))
	if gauge.Sign() > 0 {
		n := engine.Int(int64(gauge.Round()))
		switch {
		case class.High.Less(n):
			text += fmt.Sprintf(" Your swatch has %s: tight for it.", v.Figure(engine.StitchGauge, gauge.Float()))
		case class.HasLow && n.Less(class.Low):
			text += fmt.Sprintf(" Your swatch has %s: loose for it.", v.Figure(engine.StitchGauge, gauge.Float()))
		default:
			text += fmt.Sprintf(" Your swatch has %s, which goes with it.", v.Figure(engine.StitchGauge, gauge.Float()))
		}
	}
	span := v.Figure(engine.YarnLength, y.High.Float())
	if y.HasLow {
		span = trim(y.Low.Float(), 0) + " to " + span
		if v.Unit == "in" {
			span = v.Figure(engine.YarnLength, y.Low.Float()) + " to " + v.Figure(engine.YarnLength, y.High.Float())
		}
	} else {
		span = "up to " + span
	}
	text += fmt.Sprintf(" One published list has it at %s, and names overlap: read the metres off your ball's band and say them, for example *%s*.", span, v.Figure(engine.YarnLength, y.High.Float()))
	return text + " Sources: " + v.Sources([]string{class.Source, y.Source}) + "."
}

// YarnNames says what a yarn of so many metres in 100 g is called, and whether
// that goes with the classes of the gauge.
func (v Voice) YarnNames(t rules.Tables, metres engine.Num, byGauge []rules.YarnWeight) string {
	names := t.YarnsForLength(metres)
	text := v.Figure(engine.YarnLength, metres.Float())
	if len(names) == 0 {
		return text + " has no trade name in the table I have; such yarns are usually several threads together."
	}
	var called []string
	agrees := false
	for _, n := range names {
		called = append(called, n.Name)
		for _, y := range byGauge {
			agrees = agrees || y.Category == n.Category
		}
	}
	text += " goes by **" + strings.Join(called, "** or **") + "**"
	if agrees {
		text += ", which is the class of this gauge: they go together."
	} else {
		text += ", which is another class than this gauge's: knit a swatch and feel it before you go on."
	}
	return text + " Source: " + v.Sources([]string{names[0].Source}) + "; the pairing of names and classes is common practice."
}
