package quantity

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
