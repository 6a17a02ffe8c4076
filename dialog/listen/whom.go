package listen

import (
	"strings"

	"foldrow/engine"
)

// whom is what the words of a line say about a person.
type whom struct {
	b                *binder
	at               int // first token of it
	sex              string
	child, adult     bool
	aged             bool
	months           engine.Num
	ages             []engine.Num // every age said, in months, under 19 years
	size             engine.Num
	sizeText, letter string
	sizeWord         bool
	usual            string // the age of a baby or a toddler where none is said
	used             map[int]bool
	problem          string
}

func (w *whom) found() bool {
	return w.aged || w.adult || w.sizeWord || w.usual != "" || w.child
}

func (w *whom) scan() {
	w.used, w.at = map[int]bool{}, -1
	for i, t := range w.b.l.tokens {
		if t.q != nil {
			w.number(i)
			continue
		}
		if w.person(t.text) || w.sizeOf(i) {
			w.mark(i)
		}
	}
	switch {
	case w.problem != "":
	case w.letter != "" && w.sex == "" && !w.adult && !w.aged:
		w.problem = "wearer-sex"
	case w.child && !w.aged && w.usual == "" && w.sizeWord:
		w.problem = "wearer-size"
	case w.child && !w.aged && w.usual == "":
		w.problem = "wearer-age"
	}
}

func (w *whom) mark(i int) {
	if w.at < 0 || i < w.at {
		w.at = i
	}
	w.used[i] = true
}

func (w *whom) use() {
	for i := range w.used {
		w.b.used[i] = true
	}
}

// person takes a word that names somebody.
func (w *whom) person(word string) bool {
	word = strings.TrimSuffix(strings.TrimSuffix(word, "'s"), "’s")
	switch word {
	case "girl", "daughter", "granddaughter", "niece", "goddaughter":
		w.sex, w.child = "female", true
	case "boy", "son", "grandson", "nephew", "godson":
		w.sex, w.child = "male", true
	case "child", "kid", "grandchild", "teenager":
		w.child = true
	case "woman", "women", "womens", "lady", "ladies", "wife", "mother", "mum", "mom", "grandmother", "granny", "aunt", "girlfriend", "misses":
		w.sex, w.adult = "female", true
	case "man", "men", "mens", "husband", "father", "dad", "grandfather", "grandad", "granddad", "uncle", "boyfriend":
		w.sex, w.adult = "male", true
	case "adult", "adults":
		w.adult = true
	case "baby", "infant":
		w.usual = "6 months"
	case "toddler":
		w.usual = "2 years"
	case "newborn":
		w.usual = "0 months"
	default:
		return false
	}
	return true
}

// number takes an age or a size: by the word after it, the word before it, or
// bare beside a child.
func (w *whom) number(i int) {
	q := w.b.l.tokens[i].q
	if q.Rib || q.Sign < 0 || q.Range || q.Problem != "" || q.Unit != "" && q.Unit != "number" || q.Over.Sign() > 0 || q.Value.Sign() < 0 {
		return
	}
	months := engine.Num{}
	switch next := w.word(i + 1); {
	case next == "year" || next == "years" || next == "yr" || next == "yrs" || next == "yo" || next == "y":
		months = q.Value.Mul(engine.Int(12))
		w.mark(i + 1)
	case next == "month" || next == "months" || next == "mo" || next == "mos" || next == "mth" || next == "mths":
		months = q.Value
		w.mark(i + 1)
	case next == "week" || next == "weeks":
		months = engine.Int(int64(q.Value.Mul(engine.Frac(12, 52)).Round()))
		w.mark(i + 1)
	case w.before(i, "aged", "age", "turning", "turned") || w.child && !w.aged && w.bareAge(i):
		months = q.Value.Mul(engine.Int(12))
	case w.before(i, "size", "us") || next == "us" && w.b.l.has("size"):
		w.sizeNumber(i)
		return
	default:
		return
	}
	if engine.Int(120 * 12).Less(months) {
		w.problem = "wearer"
	}
	w.aged, w.months = true, months
	if months.Cmp(engine.Int(19*12)) < 0 {
		w.ages = append(w.ages, months)
	}
	w.mark(i)
}

// bareAge: "my granddaughter, 3" and "my son is 7": a small bare number right
// after the child.
func (w *whom) bareAge(i int) bool {
	if w.b.l.tokens[i].q.Value.Cmp(engine.Int(19)) >= 0 || w.b.l.tokens[i].q.Unit != "" {
		return false
	}
	for j := i - 1; j >= 0 && j >= i-3; j-- {
		if w.used[j] {
			return true
		}
		switch w.word(j) {
		case "of", "is", "who", "who's", "she", "he", "she's", "he's", "just", "now", "almost", "nearly", "about":
		default:
			return false
		}
	}
	return false
}

// sizeNumber takes a size. Only US women's sizes are in the table: a size of
// another country, or one beyond it, is asked about.
func (w *whom) sizeNumber(i int) {
	q := w.b.l.tokens[i].q
	w.sizeWord, w.size = true, q.Value
	w.sizeText = strings.TrimPrefix(q.Value.String(), "+")
	if raw := strings.TrimSpace(w.b.l.text[q.Start:q.End]); raw == "00" {
		w.sizeText = raw
	}
	w.mark(i)
	n := q.Value.Floor()
	if !q.Value.IsInt() || n > 20 || n%2 == 1 || w.b.l.has("eu", "european", "uk", "british", "german", "french", "italian") || w.child || w.sex == "male" {
		w.problem = "wearer-size"
	}
}

// sizeOf takes the word "size" and sizes by letters.
func (w *whom) sizeOf(i int) bool {
	word := w.word(i)
	if word == "us" || word == "size" || word == "sized" {
		if l := letterOf(w.word(i + 1)); l != "" {
			w.letter, w.sizeWord = l, true
		}
		return w.letter != ""
	}
	l := letterOf(word)
	if l == "" || !w.adult && !w.sizeWord && w.word(i+1) != "woman" && w.word(i+1) != "man" && w.word(i+1) != "adult" {
		return false
	}
	if i > 0 && w.word(i-1) == "extra" {
		l = map[string]string{"S": "XS", "L": "XL"}[l]
	}
	w.letter = l
	return l != ""
}

// letterOf is the letter of a size, "" where the word is none.
func letterOf(word string) string {
	switch word {
	case "xs", "s", "m", "l", "xl", "xxl":
		return strings.ToUpper(word)
	case "2xl":
		return "XXL"
	case "small":
		return "S"
	case "medium":
		return "M"
	case "large":
		return "L"
	}
	return ""
}

func (w *whom) word(i int) string {
	if i < 0 || i >= len(w.b.l.tokens) || w.b.l.tokens[i].q != nil {
		return ""
	}
	return w.b.l.tokens[i].text
}

func (w *whom) before(i int, words ...string) bool {
	for _, x := range words {
		if w.word(i-1) == x {
			return true
		}
	}
	return false
}

// text is the person as engine.ParseWhom reads it; "" where it does not come
// together.
func (w *whom) text() string {
	if w.aged && w.months.Cmp(engine.Int(19*12)) < 0 {
		return engine.Whom{Sex: w.sex, Months: w.months.Floor()}.String()
	}
	if w.usual != "" && !w.aged {
		return strings.TrimSpace(map[string]string{"female": "girl ", "male": "boy "}[w.sex] + w.usual)
	}
	who := engine.Whom{Adult: true, Sex: w.sex, Size: w.letter}
	if w.sizeText != "" {
		who.Size = w.sizeText
	}
	if w.sizeWord && who.Size != "" && who.Sex == "" && w.sizeText != "" {
		who.Sex = "female"
	}
	if w.sizeWord && who.Size == "" {
		return ""
	}
	return who.String()
}

// whom is the person that a question names.
func (r *reading) whom() (engine.Whom, bool) {
	w := &whom{b: r.b}
	w.scan()
	if !w.found() || w.problem != "" {
		return engine.Whom{}, false
	}
	return engine.ParseWhom(w.text())
}
