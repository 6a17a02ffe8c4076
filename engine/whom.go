package engine

import (
	"strconv"
	"strings"
)

// Whom is the person that the garment is for, as far as it was said. The zero
// value is nobody. Its text is a value of KeyWearer: "5 years", "girl 18
// months", "woman 12", "man L".
type Whom struct {
	Adult  bool
	Sex    string // "female", "male" or "" where it was not said
	Months int    // age of a child; 0 is newborn
	Size   string // of an adult: a number of the women's standard, or XS to XXL
}

// grownMonths is where the published tables of children end: 19 years.
const grownMonths = 19 * 12

// letterSizes are the sizes that go by letters, smallest first.
var letterSizes = [...]string{"XS", "S", "M", "L", "XL", "XXL"}

// String is the text of w as ParseWhom reads it.
func (w Whom) String() string {
	words := map[string]string{"female": "girl", "male": "boy"}
	if w.Adult {
		words = map[string]string{"female": "woman", "male": "man", "": "adult"}
	}
	var parts []string
	if s := words[w.Sex]; s != "" {
		parts = append(parts, s)
	}
	switch {
	case w.Adult && w.Size != "":
		parts = append(parts, w.Size)
	case w.Adult:
	case w.Months%12 == 0 && w.Months > 0:
		parts = append(parts, itoa(w.Months/12), plural(w.Months/12, "year"))
	default:
		parts = append(parts, itoa(w.Months), plural(w.Months, "month"))
	}
	return strings.Join(parts, " ")
}

func plural(n int, word string) string {
	if n == 1 {
		return word
	}
	return word + "s"
}

// ParseWhom reads what String writes; ok is false for a text that names nobody.
func ParseWhom(s string) (w Whom, ok bool) {
	words := strings.Fields(s)
	if len(words) == 0 {
		return Whom{}, false
	}
	switch words[0] {
	case "woman", "man", "adult":
		w = Whom{Adult: true, Sex: map[string]string{"woman": "female", "man": "male"}[words[0]]}
		if len(words) == 2 {
			w.Size = words[1]
		}
		return w, len(words) <= 2 && (w.Size == "" || isSize(w.Size, w.Sex))
	case "girl", "boy":
		w.Sex = map[string]string{"girl": "female", "boy": "male"}[words[0]]
		words = words[1:]
	}
	if len(words) != 2 {
		return Whom{}, false
	}
	n, err := strconv.Atoi(words[0])
	switch strings.TrimSuffix(words[1], "s") {
	case "year":
		w.Months = 12 * n
	case "month":
		w.Months = n
	default:
		return Whom{}, false
	}
	return w, err == nil && n >= 0 && w.Months < grownMonths
}

// isSize reports a letter size, or for a woman one of the sizes of the
// standard table, 00 and the even ones to 20.
func isSize(s, sex string) bool {
	for _, l := range letterSizes {
		if s == l {
			return true
		}
	}
	n, err := strconv.Atoi(s)
	return sex == "female" && err == nil && (s == "00" || s == itoa(n) && n >= 0 && n <= 20 && n%2 == 0)
}
