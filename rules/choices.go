package rules

import (
	"strings"

	"foldrow/engine"
)

// ChoiceCard is one word that an input may be. A card writes it as
//
//	is-VALUE: label ; words ...         words that choose it wherever they stand
//	beside-VALUE: words ...             words that choose it beside the input's name only
//	good-VALUE: a sentence              what it is good for
type ChoiceCard struct {
	Value, Label  string
	Words, Beside []string
	Good          string
}

func readChoices(c Card, k engine.Key) []ChoiceCard {
	var out []ChoiceCard
	for _, v := range engine.TextChoices(k) {
		ch := ChoiceCard{Value: v, Words: c.List("is-" + v), Beside: c.List("beside-" + v), Good: c.Fields["good-"+v]}
		if len(ch.Words) > 0 {
			ch.Label = ch.Words[0]
		}
		out = append(out, ch)
	}
	return out
}

// checkChoices wants words for every choice, each in the form in which words
// are looked up, and no field for a choice that there is not.
func checkChoices(c Card, k KeyCard, bad *faults) {
	known := map[string]bool{}
	for _, ch := range k.Choices {
		known[ch.Value] = true
		if ch.Label == "" {
			bad.card(c, MissingField, "is-"+ch.Value)
		}
		for _, w := range append(append([]string(nil), ch.Words...), ch.Beside...) {
			if !isWord(w) {
				bad.card(c, BadWord, w)
			}
		}
	}
	for field := range c.Fields {
		for _, prefix := range []string{"is-", "beside-", "good-"} {
			if v, ok := strings.CutPrefix(field, prefix); ok && !known[v] {
				bad.card(c, UnknownKey, field)
			}
		}
	}
	if k.DefaultText != "" {
		if _, ok := (engine.Inputs{}).WithText(k.Key, k.DefaultText); !ok {
			bad.card(c, BadSpan, "default "+k.DefaultText+" is no value of it")
		}
	}
}

// ChoiceLabel is what people call value v of the input, v itself where the
// card has no word for it.
func (k KeyCard) ChoiceLabel(v string) string {
	for _, ch := range k.Choices {
		if ch.Value == v {
			return ch.Label
		}
	}
	if parts := strings.Split(v, "+"); len(parts) > 1 {
		for i, p := range parts {
			parts[i] = strings.TrimSuffix(k.ChoiceLabel(p), " yarn")
		}
		return "a blend of " + strings.Join(parts, " and ")
	}
	return v
}

// ChoiceGood is what value v of the input is good for, "" where the card does
// not say.
func (k KeyCard) ChoiceGood(v string) string {
	for _, ch := range k.Choices {
		if ch.Value == v {
			return ch.Good
		}
	}
	return ""
}
