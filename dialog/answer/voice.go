package answer

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
	"foldrow/rules"
)

// Voice is what every answer is written with: the trade's knowledge and the
// unit in which the knitter reads.
type Voice struct {
	Book  *rules.Book
	Unit  quantity.Unit // "cm" or "in"
	Paper bool          // it is to be printed: nothing in it asks for an answer
}

// hint is what can be said next; paper has no answer to it.
func (v Voice) hint(s string) string {
	if v.Paper {
		return ""
	}
	return s
}

// Len is a length in the knitter's unit: "39.8 cm", "15 5/8 in".
func (v Voice) Len(cm float64) string {
	if v.Unit == "in" {
		return eighths(cm/2.54) + " in"
	}
	return trim(cm, 1) + " cm"
}

// Both is a length in the knitter's unit with the other one beside it.
func (v Voice) Both(cm float64) string {
	if v.Unit == "in" {
		return eighths(cm/2.54) + " in (" + trim(cm, 1) + " cm)"
	}
	return trim(cm, 1) + " cm"
}

// Exact is a length said by the knitter, without loss.
func (v Voice) Exact(cm engine.Num, u quantity.Unit) string {
	if u == "in" {
		return quantity.PrintInches(cm)
	}
	if cm.Mul(engine.Int(100)).IsInt() {
		return quantity.Print(cm, "cm")
	}
	return quantity.PrintCm(cm)
}

// eighths is inches to the nearest eighth, as a tape shows them.
func eighths(in float64) string {
	sign := ""
	n := int(math.Round(in * 8))
	if n < 0 {
		sign, n = "-", -n
	}
	whole, rest := n/8, n%8
	if rest == 0 {
		return sign + strconv.Itoa(whole)
	}
	d := 8
	for rest%2 == 0 {
		rest, d = rest/2, d/2
	}
	part := strconv.Itoa(rest) + "/" + strconv.Itoa(d)
	if whole == 0 {
		return sign + part
	}
	return sign + strconv.Itoa(whole) + " " + part
}

// trim is x with at most so many decimals and no idle zeros.
func trim(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// Count is "1 stitch", "3 stitches".
func Count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}

// Label is what people call k.
func (v Voice) Label(k engine.Key) string {
	if c, ok := v.Book.Key(k); ok {
		return c.Label
	}
	if c, ok := v.Book.Result(k); ok {
		return c.Label
	}
	return strings.ReplaceAll(string(k), "_", " ")
}

// Value is k of the plan with its unit, in words: "97 stitches", "40 cm".
// It is "" where the plan does not know it.
func (v Voice) Value(p *engine.Plan, k engine.Key) string {
	switch k {
	case engine.KeyGarment:
		return string(p.In.Garment)
	case engine.KeyRib:
		return p.In.Rib.String()
	}
	if engine.IsText(k) {
		return v.Text(k, p.In.Text(k))
	}
	if engine.IsNumber(k) {
		f, ok := p.Float(k)
		switch {
		case !ok:
			return ""
		case k == engine.NeckbandEnd && f > 0:
			return "added"
		case k == engine.NeckbandEnd:
			return "not added"
		}
		return v.Figure(k, f)
	}
	return v.result(p, k)
}

// result is result k of the plan in words.
func (v Voice) result(p *engine.Plan, k engine.Key) string {
	switch k {
	case engine.Tension:
		return strings.Join(tensionRuns(p), "; ")
	case engine.ChartNeedles, engine.ChartCatches, engine.StageRehang:
		return "" // too long for a line: they have answers of their own
	}
	if list, ok := needleList(p, k); ok {
		return list
	}
	val, ok := p.Value(k)
	if !ok {
		return ""
	}
	switch x := val.(type) {
	case string:
		return x
	case int:
		if k == engine.YokeDecreases && x < 0 {
			return fmt.Sprintf("none, the yoke has %d too few", -x)
		}
		return v.Figure(k, float64(x))
	case float64:
		switch {
		case k == engine.OffYarn:
			return v.cut(x)
		case k == engine.SlitLength:
			return v.Slit(p.SlitExact.Float())
		case k == engine.TopRoom && x < 0:
			return v.Len(-x) + " short, so stretched"
		}
		return v.Figure(k, x)
	}
	if engine.AboutFronts(k) {
		return frontList(p, k, val)
	}
	return v.listed(k, val)
}

// Text is the word or list s of key k as people say it.
func (v Voice) Text(k engine.Key, s string) string {
	if w, ok := engine.ParseWhom(s); ok && k == engine.KeyWearer {
		return whomWords(w)
	}
	card, _ := v.Book.Key(k)
	switch k {
	case engine.StageRepeats:
		return strings.Join(strings.Fields(s), ", ")
	case engine.StageHeights:
		return v.heights(s)
	case engine.StageHad:
		return hadWords(s)
	case engine.KeyChart:
		return strings.ReplaceAll(s, "/", " / ")
	}
	return card.ChoiceLabel(s)
}

// cut is a length of yarn to cut, rounded up: a need is not rounded away.
func (v Voice) cut(cm float64) string {
	if v.Unit == "in" {
		return trim(math.Ceil(cm/2.54-1e-9), 0) + " in"
	}
	return trim(math.Ceil(cm-1e-9), 0) + " cm"
}

// bareValue is Value under its label.
func (v Voice) bareValue(p *engine.Plan, k engine.Key) string {
	return Under(v.Label(k), v.Value(p, k))
}

// Under is a value without a noun that its label says already: "111" under
// "stitches in the band".
func Under(label, value string) string {
	figure, noun, ok := strings.Cut(value, " ")
	if !ok || !strings.Contains(label, strings.TrimSuffix(noun, "s")) || strings.Trim(figure, "0123456789.") != "" {
		return value
	}
	for w := range strings.FieldsSeq(label) {
		if w == noun || strings.TrimSuffix(w, "s") == noun || w == strings.TrimSuffix(noun, "s") {
			return figure
		}
	}
	return value
}

// Figure is the number f of kind k with its unit.
func (v Voice) Figure(k engine.Key, f float64) string {
	unit := v.unit(k)
	switch k {
	case engine.PickRatio:
		return pickWords(f)
	case engine.MainTension, engine.DialMin, engine.ColourDial:
		return dialNumber(f)
	}
	switch unit {
	case "cm":
		return v.Len(f)
	case "mm":
		return trim(f, 2) + " mm"
	case "cm per stitch":
		return trim(f, 3) + " cm a stitch"
	case "stitches per 10 cm", "rows per 10 cm":
		return v.gauge(f, unit)
	case "%":
		return trim(f, 2) + " %"
	case "m":
		return v.metres(f)
	case "g":
		return trim(f, 0) + " g"
	case "degrees":
		return trim(f, 0) + " degrees"
	case "m per 100 g":
		return trim(f, 0) + " m in 100 g"
	case "", "dial", "dial number":
		return trim(f, 3)
	}
	return trim(f, 2) + " " + singular(unit, f)
}

func (v Voice) gauge(f float64, unit string) string {
	what := strings.Fields(unit)[0]
	if v.Unit == "in" {
		return trim(f*0.254, 2) + " " + singular(what, f*0.254) + " to the inch"
	}
	what = singular(what, f)
	return trim(f, 2) + " " + what + " in 10 cm"
}

func (v Voice) metres(f float64) string {
	if v.Unit == "in" {
		return trim(f/0.9144, 0) + " yd"
	}
	return trim(f, 0) + " m"
}

func singular(unit string, f float64) string {
	if f == 1 {
		switch unit {
		case "stitches":
			return "stitch"
		}
		return strings.TrimSuffix(unit, "s")
	}
	return unit
}

func (v Voice) unit(k engine.Key) string {
	if c, ok := v.Book.Key(k); ok {
		return c.Unit
	}
	if c, ok := v.Book.Result(k); ok {
		return c.Unit
	}
	return ""
}
