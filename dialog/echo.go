package dialog

import (
	"fmt"
	"slices"
	"strings"

	"foldrow/dialog/answer"
	"foldrow/dialog/listen"
	"foldrow/dialog/listen/quantity"
	"foldrow/engine"
)

// echo says in brackets what was taken, and marks what is unusual.
func (c *turn) echo(a applied) string {
	var parts []string
	for i, s := range c.m.Sets {
		if last(c.m.Sets, i) {
			parts = append(parts, c.echoOne(a.in, s))
		}
	}
	if hasKey(a.keys, engine.MainTension) && !slices.ContainsFunc(c.m.Sets, func(s listen.Set) bool { return s.Key == engine.MainTension }) {
		parts = append(parts, c.echoOne(a.in, listen.Set{Key: engine.MainTension})) // the mark it names now
	}
	text := "(" + strings.Join(parts, "; ") + ")"
	if len(c.m.Left) > 0 {
		text += "\n\n" + c.notTaken()
	}
	if a.offMark {
		text += "\n\n" + c.betweenMarks(a.in)
	}
	for _, k := range a.unusual {
		card, _ := c.book.Key(k)
		text += fmt.Sprintf("\n\nThat is unusual for the %s: mostly %s. Taken all the same; say *undo* if it was a slip.",
			card.Label, c.span(k, card.Usual))
	}
	return text
}

// notTaken begins the sentence that names what was typed and not taken.
const notTaken = "I did not take: "

func (c *turn) notTaken() string {
	return notTaken + "*" + strings.Join(c.m.Left, "*, *") + "*. Say what it is of."
}

// last reports whether set i is the last one for its key.
func last(sets []listen.Set, i int) bool {
	for _, s := range sets[i+1:] {
		if s.Key == sets[i].Key {
			return false
		}
	}
	return true
}

func (c *turn) echoOne(in engine.Inputs, s listen.Set) string {
	label := c.voice().Label(s.Key)
	switch s.Key {
	case engine.KeyGarment:
		return "a " + string(in.Garment)
	case engine.KeyRib:
		return in.Rib.String() + ribWord(in.Rib)
	}
	if s.Key == engine.KeyWearer {
		return "for " + c.voice().Text(s.Key, in.Text(s.Key))
	}
	if engine.IsText(s.Key) {
		return label + ": " + c.voice().Text(s.Key, in.Text(s.Key))
	}
	value := c.exact(s.Key, in.Num(s.Key), s.Unit)
	switch {
	case s.Key == engine.DepthRows:
		total := in.Int(engine.DepthRows) * c.layers(in)
		return fmt.Sprintf("%s a layer, %d in all", answer.Count(in.Int(engine.DepthRows), "row", "rows"), total)
	case s.Bare && (s.Unit == "cm" || s.Unit == "in") && !s.Relative:
		return fmt.Sprintf("taking the %s as %s", label, value)
	}
	return c.voice().Echo(s.Key, in.Num(s.Key), value)
}

func ribWord(r engine.Rib) string {
	if r.IsPlain() {
		return ", no rib"
	}
	return " rib"
}

func (c *turn) layers(in engine.Inputs) int { return c.filled(in).Int(engine.Layers) }

// exact writes a value as it is kept, in the unit it was said in.
func (c *turn) exact(k engine.Key, v engine.Num, unit quantity.Unit) string {
	card, _ := c.book.Key(k)
	voice := c.voice()
	if unit == "cm" || unit == "in" {
		voice.Unit = unit
	}
	switch card.Unit {
	case "cm":
		return voice.Exact(v, voice.Unit)
	case "g":
		if v.Mul(engine.Int(10)).IsInt() {
			return quantity.Print(v, "g")
		}
		return quantity.Print(engine.Frac(int64(v.Mul(engine.Int(10)).Round()), 10), "g") // ounces make no round grams
	}
	return voice.Figure(k, v.Float())
}

// span is a plausible span in words.
func (c *turn) span(k engine.Key, s [2]engine.Num) string {
	v := c.voice()
	low, high := v.Figure(k, s[0].Float()), v.Figure(k, s[1].Float())
	if card, _ := c.book.Key(k); card.Unit == "g" {
		low = trimNum(s[0]) + " g" // half a gram is the least, not none
	}
	a, b := strings.Fields(low), strings.Fields(high)
	for len(a) > 1 && len(b) > 1 && a[len(a)-1] == b[len(b)-1] {
		a, b = a[:len(a)-1], b[:len(b)-1]
	}
	return strings.Join(a, " ") + " to " + high
}

// betweenMarks tells that the dial number is none that the dial can be set to.
func (c *turn) betweenMarks(in engine.Inputs) string {
	v := c.voice()
	text := fmt.Sprintf("Dial %s lies between two marks: the plan reckons with %s to a number.",
		v.Figure(engine.MainTension, in.Num(engine.MainTension).Float()), answer.Count(c.filled(in).Int(engine.ClicksPerNumber), "mark", "marks"))
	if c.filled(in).Int(engine.ClicksPerNumber) != 3 {
		return text + " If yours has thirds, say *dial in thirds*: 6 1/3 and 6 2/3, or 6.1 and 6.2."
	}
	return text + " Say the nearest mark, like *dial 6 1/3*, or how yours is marked: *dial in halves*."
}
