package quantity

import "foldrow/engine"

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
