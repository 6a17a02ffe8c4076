package listen

import (
	"strings"

	"foldrow/engine"
	"foldrow/rules"
)

// wearerOf reads whose body a question is about: "a 4 year old", "a baby of 6
// months", "a man". false where nobody is named.
func wearerOf(line string) (rules.Wearer, bool) {
	words := strings.FieldsFunc(strings.ToLower(line), func(r rune) bool {
		return r != '.' && (r < '0' || r > '9') && (r < 'a' || r > 'z')
	})
	w := rules.Wearer{}
	found := false
	for i, s := range words {
		switch s {
		case "woman", "women", "lady", "wife", "mother", "grown":
			w.Sex, w.Adult, found = rules.Female, true, true
		case "man", "men", "husband", "father", "dad":
			w.Sex, w.Adult, found = rules.Male, true, true
		case "adult":
			w.Adult, found = true, true
		case "girl", "daughter":
			w.Sex = rules.Female
		case "boy", "son":
			w.Sex = rules.Male
		case "newborn":
			w.Years, found = engine.Num{}, true
		case "baby", "toddler":
			if !found {
				w.Years, found = map[string]engine.Num{"baby": engine.Frac(1, 2), "toddler": engine.Int(2)}[s], true
			}
		case "year", "years", "yr", "yo":
			if n, ok := number(words, i-1); ok {
				w.Years, found = engine.Int(int64(n)), true
			}
		case "month", "months":
			if n, ok := number(words, i-1); ok {
				w.Years, found = engine.Frac(int64(n), 12), true
			}
		}
	}
	return w, found
}

func number(words []string, i int) (int, bool) {
	if i < 0 {
		return 0, false
	}
	n := 0
	for _, c := range words[i] {
		if c < '0' || c > '9' || n > 100 {
			return spelt(words[i])
		}
		n = 10*n + int(c-'0')
	}
	return n, true
}

func spelt(w string) (int, bool) {
	for n, s := range []string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"} {
		if s == w {
			return n, true
		}
	}
	return 0, false
}
