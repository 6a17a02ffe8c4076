package rules

import (
	"strings"

	"foldrow/engine"
)

// Dimension says what kind of thing an input is, and so which units and words
// it takes.
type Dimension string

// The dimensions of keys.md.
const (
	Choice      Dimension = "choice" // a word: garment, rib
	Girth       Dimension = "girth"  // cm around a body or an opening
	Length      Dimension = "length-cm"
	Millimetres Dimension = "mm"
	Gauge       Dimension = "gauge" // per 10 cm
	Rows        Dimension = "rows"
	Stitches    Dimension = "stitches"
	Needles     Dimension = "needles"
	Bumps       Dimension = "bumps" // every n-th
	LayersDim   Dimension = "layers"
	Clicks      Dimension = "clicks"
	Dial        Dimension = "dial"
	Percent     Dimension = "percent"
	Ratio       Dimension = "ratio"
	Grams       Dimension = "g"
	YarnCount   Dimension = "m/100g"
	PerStitch   Dimension = "cm/stitch"
	Hours       Dimension = "hours"
	Person      Dimension = "wearer" // a word: whom it is for
	Count       Dimension = "count"  // of stages, times: a bare whole number
	ListOf      Dimension = "list"   // numbers by stage, or rows of a chart
)

var dimensions = map[Dimension]bool{
	Choice: true, Girth: true, Length: true, Millimetres: true, Gauge: true,
	Rows: true, Stitches: true, Needles: true, Bumps: true, LayersDim: true,
	Clicks: true, Dial: true, Percent: true, Ratio: true, Grams: true,
	YarnCount: true, PerStitch: true, Hours: true, Person: true, Count: true, ListOf: true,
}

// KeyCard is one input: how it is named, asked, measured and judged.
type KeyCard struct {
	Key         engine.Key
	Label, Unit string
	// Echo is how a value is said back, with {value} for it; EchoNone is for
	// nothing of it. "" where label and value say it well.
	Echo, EchoNone string
	Dimension      Dimension
	Default        engine.Num
	HasDefault     bool
	DefaultText    string // of a choice or a list, "" where it has none
	// Part is the work around the band that the input belongs to, "" for the
	// band itself: its default holds only once something of the part was said.
	Part    string
	Rule    string       // how it follows from other inputs where it was not said
	Choices []ChoiceCard // the words that a choice may be
	gives   map[string][]string
	Texts   map[string]string // more about a choice, by its value
	// Usual and Possible are the lowest and highest plausible value: within
	// Usual a value is taken, within Possible with a remark, beyond asked.
	Usual, Possible [2]engine.Num
	HasSpan         bool
	SpanReason      string
	Words           []string
	Question        string // one line; only the five asked have one
	// QuestionPullover and MeasurePullover stand in for a pullover, "" where they are the same.
	QuestionPullover, MeasurePullover string
	Example                           string
	Inches                            string // the example for a knitter who thinks in inches, "" where it is the same
	Measure                           string // how it is measured, Markdown
	UsualText                         string // what is usual
	Why                               string // why it is asked
	Source                            []string
}

// asked are the inputs the interview asks for; gauge is one question.
var asked = []engine.Key{engine.KeyGarment, engine.StitchGauge, engine.Neck, engine.KeyRib, engine.Depth}

func (b *Book) readKeys(bad *faults) {
	read := map[engine.Key]KeyCard{}
	cards := map[engine.Key]Card{}
	for _, c := range b.cards["keys"] {
		k := engine.Key(c.ID)
		read[k], cards[k] = readKey(c, bad), c
	}
	b.byKey = map[engine.Key]int{}
	for _, k := range engine.InputKeys() {
		card, ok := read[k]
		if !ok {
			bad.add(Error{File: "keys.md", Problem: MissingCard, Card: string(k)})
			continue
		}
		checkKey(cards[k], card, bad)
		b.byKey[k] = len(b.Keys)
		b.Keys = append(b.Keys, card)
	}
	for _, c := range b.cards["keys"] {
		if _, ok := b.byKey[engine.Key(c.ID)]; !ok {
			bad.card(c, UnknownKey, "")
		}
	}
}

func readKey(c Card, bad *faults) KeyCard {
	k := KeyCard{
		Key: engine.Key(c.ID), Label: c.Fields["label"], Unit: c.Fields["unit"],
		Dimension: Dimension(c.Fields["dimension"]), SpanReason: c.Fields["reason"],
		Words: c.List("words"), Echo: c.Fields["echo"], EchoNone: c.Fields["echo-none"], Question: c.Fields["question"], Example: c.Fields["example"],
		Inches:  c.Fields["inches"],
		Measure: c.Section("measure"), UsualText: c.Section("usual"), Why: c.Section("why"),
		Source: c.List("source"),
	}
	k.QuestionPullover, k.MeasurePullover = c.Fields["question-pullover"], c.Section("measure-pullover")
	k.Part, k.Rule = c.Fields["part"], c.Fields["rule"]
	k.Choices = readChoices(c, k.Key)
	k.gives, k.Texts = readGives(c, k.Choices), map[string]string{}
	for _, ch := range k.Choices {
		if text := c.Section(ch.Value); text != "" {
			k.Texts[ch.Value] = text
		}
	}
	switch text := c.Fields["default"]; {
	case text == "":
	case engine.IsText(k.Key):
		k.DefaultText = text
	default:
		k.Default, k.HasDefault = number(c, "default", text, bad), true
	}
	usual, okU := span(c, "usual", bad)
	possible, okP := span(c, "possible", bad)
	k.Usual, k.Possible, k.HasSpan = usual, possible, okU && okP
	return k
}

// checkKey wants of every input words, a label, help and, of a number, a span
// with the default inside.
func checkKey(c Card, k KeyCard, bad *faults) {
	for _, name := range []string{"label", "words", "source"} {
		if c.Fields[name] == "" {
			bad.card(c, MissingField, name)
		}
	}
	for _, name := range []string{"measure", "usual", "why"} {
		if c.Section(name) == "" {
			bad.card(c, MissingField, "## "+name)
		}
	}
	if !dimensions[k.Dimension] {
		bad.card(c, MissingField, "dimension "+string(k.Dimension))
	}
	for _, a := range asked {
		if a == k.Key && (k.Question == "" || k.Example == "") {
			bad.card(c, MissingField, "question or example")
		}
	}
	if engine.IsNumber(k.Key) {
		checkSpan(c, k, bad)
	}
	checkChoices(c, k, bad)
	checkGives(c, k, bad)
}

func checkSpan(c Card, k KeyCard, bad *faults) {
	if !k.HasSpan {
		bad.card(c, MissingField, "usual or possible")
		return
	}
	u, p := k.Usual, k.Possible
	if u[1].Less(u[0]) || u[0].Less(p[0]) || p[1].Less(u[1]) {
		bad.card(c, BadSpan, "usual "+c.Fields["usual"]+", possible "+c.Fields["possible"])
	}
	if k.HasDefault && (k.Default.Less(p[0]) || p[1].Less(k.Default)) {
		bad.card(c, BadSpan, "default "+c.Fields["default"]+" is not possible")
	}
}

// span reads "34 to 60". An absent field is no span.
func span(c Card, field string, bad *faults) ([2]engine.Num, bool) {
	text := c.Fields[field]
	if text == "" {
		return [2]engine.Num{}, false
	}
	low, high, found := strings.Cut(text, " to ")
	if !found {
		bad.card(c, BadNumber, field+" is not written as low to high: "+text)
		return [2]engine.Num{}, false
	}
	return [2]engine.Num{number(c, field, low, bad), number(c, field, high, bad)}, true
}

func number(c Card, field, text string, bad *faults) engine.Num {
	n, ok := decimal(strings.TrimSpace(text))
	if !ok {
		bad.card(c, BadNumber, field+": "+text)
	}
	return n
}
