package quantity

import "foldrow/engine"

// numberWord is the value of a number word below a hundred. tens is set for
// the words that take a unit after them: "twenty".
func numberWord(w string) (n int64, tens, ok bool) {
	switch w {
	case "zero", "nought", "naught":
		return 0, false, true
	case "one":
		return 1, false, true
	case "two":
		return 2, false, true
	case "three":
		return 3, false, true
	case "four":
		return 4, false, true
	case "five":
		return 5, false, true
	case "six":
		return 6, false, true
	case "seven":
		return 7, false, true
	case "eight":
		return 8, false, true
	case "nine":
		return 9, false, true
	case "ten":
		return 10, false, true
	case "eleven":
		return 11, false, true
	case "twelve":
		return 12, false, true
	case "thirteen":
		return 13, false, true
	case "fourteen":
		return 14, false, true
	case "fifteen":
		return 15, false, true
	case "sixteen":
		return 16, false, true
	case "seventeen":
		return 17, false, true
	case "eighteen":
		return 18, false, true
	case "nineteen":
		return 19, false, true
	}
	n, ok = tensWord(w)
	return n, true, ok
}

func tensWord(w string) (int64, bool) {
	switch w {
	case "twenty":
		return 20, true
	case "thirty":
		return 30, true
	case "forty", "fourty":
		return 40, true
	case "fifty":
		return 50, true
	case "sixty":
		return 60, true
	case "seventy":
		return 70, true
	case "eighty":
		return 80, true
	case "ninety":
		return 90, true
	}
	return 0, false
}

// multiplier is what "hundred" and its like multiply by.
func multiplier(w string) (int64, bool) {
	switch w {
	case "hundred":
		return 100, true
	case "thousand":
		return 1000, true
	case "dozen":
		return 12, true
	}
	return 0, false
}

// ordinalWord is the place that w names: "third", "twentieth". "first" is not
// here, since "first" is mostly no number; item.go reads it before a unit.
func ordinalWord(w string) (int64, bool) {
	switch w {
	case "second":
		return 2, true
	case "third":
		return 3, true
	case "fourth":
		return 4, true
	case "fifth":
		return 5, true
	case "sixth":
		return 6, true
	case "seventh":
		return 7, true
	case "eighth":
		return 8, true
	case "ninth":
		return 9, true
	case "tenth":
		return 10, true
	case "eleventh":
		return 11, true
	case "twelfth":
		return 12, true
	case "sixteenth":
		return 16, true
	case "twentieth":
		return 20, true
	case "thirtieth":
		return 30, true
	}
	return 0, false
}

// denominator is the parts that w cuts a whole into; many is set for the
// plural.
func denominator(w string) (d int64, many, ok bool) {
	switch w {
	case "half":
		return 2, false, true
	case "halves":
		return 2, true, true
	case "quarter":
		return 4, false, true
	}
	if n := len(w); n > 1 && w[n-1] == 's' {
		w, many = w[:n-1], true
	}
	switch w {
	case "quarter":
		return 4, many, true
	case "third", "fifth", "sixth", "eighth", "tenth", "twelfth", "sixteenth":
		d, ok = ordinalWord(w)
		return d, many, ok
	}
	return 0, false, false
}

// cardinal reads a number in words from token i: "a hundred and forty",
// "twenty-eight", "two dozen". It reads "a" only before "hundred" and its
// like.
func (s *scanner) cardinal(i int) (v int64, next int, ok bool) {
	total, cur, i, ok := s.cardinalHead(i)
	if !ok {
		return 0, i, false
	}
	for cur <= 9999 {
		m, isMul := multiplier(s.text(i))
		switch {
		case isMul && m == 1000 && total == 0:
			total, cur, i = cur*1000, 0, i+1
		case isMul && m != 1000 && cur > 0 && (m == 100 && cur < 100 || m == 12):
			cur, i = cur*m, i+1
		default:
			n, j, found := s.remainder(i, total, cur)
			if !found {
				return total + cur, i, true
			}
			cur, i = cur+n, j
		}
	}
	return total + cur, i, true
}

// cardinalHead reads what a cardinal begins with. Where that is "a thousand",
// the loop in cardinal reads the thousand.
func (s *scanner) cardinalHead(i int) (total, cur int64, next int, ok bool) {
	if s.at(i).isWord("a", "an") {
		if _, ok := multiplier(s.text(i + 1)); ok {
			return 0, 1, i + 1, true
		}
		return 0, 0, i, false
	}
	if _, ok := multiplier(s.text(i)); ok {
		return 0, 1, i, true
	}
	n, j, ok := s.belowHundred(i)
	return 0, n, j, ok
}

// belowHundred reads "twenty-eight", "twenty", "eight".
func (s *scanner) belowHundred(i int) (int64, int, bool) {
	n, tens, ok := numberWord(s.text(i))
	if !ok {
		return 0, i, false
	}
	i++
	if !tens {
		return n, i, true
	}
	j := s.hyphen(i)
	if u, uTens, ok := numberWord(s.text(j)); ok && !uTens && u > 0 && u < 10 {
		return n + u, j + 1, true
	}
	return n, i, true
}

// remainder reads what follows "hundred" or "thousand": "and forty", "forty".
// "one hundred and one hundred" are two numbers, so a remainder that goes on
// to be multiplied is left alone.
func (s *scanner) remainder(i int, total, cur int64) (int64, int, bool) {
	if !(cur >= 100 && cur%100 == 0) && !(total > 0 && cur == 0) {
		return 0, i, false
	}
	j := s.hyphen(i)
	if s.at(j).isWord("and") {
		j = s.hyphen(j + 1)
	}
	n, k, ok := s.belowHundred(j)
	if !ok || n == 0 {
		return 0, i, false
	}
	if _, again := multiplier(s.text(k)); again && !(total > 0 && cur == 0 && j == i) {
		return 0, i, false
	}
	return n, k, true
}

// hyphen is the token after a hyphen glued on both sides at i, else i.
func (s *scanner) hyphen(i int) int {
	if s.at(i).is("-") && !s.at(i).gap && !s.at(i+1).gap {
		return i + 1
	}
	return i
}

// pointDigits reads "point five", "point two five" after a whole number.
func (s *scanner) pointDigits(i int) (engine.Num, int, bool) {
	if !s.at(i).isWord("point") {
		return engine.Num{}, i, false
	}
	n, d, j := int64(0), int64(1), i+1
	for d < 1_000_000 {
		u, tens, ok := numberWord(s.text(j))
		if !ok || tens || u > 9 {
			break
		}
		n, d, j = n*10+u, d*10, j+1
	}
	return engine.Frac(n, d), j, j > i+1
}
